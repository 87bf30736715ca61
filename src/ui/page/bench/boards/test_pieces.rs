//! The test pieces of the board that is shown, a grid a test.

use super::piece_grid::PieceGrid;
use crate::domain::trial::boards::field::{BoardField, BoardTest};
use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::{BoardDraft, BoardId};
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::page::bench::entry::board_name;
use crate::ui::page::bench::entry::{BoardsFigure, BoardsWorking, TrialDesk, TrialMessages};
use crate::ui::state::State;
use crate::ui::text::lower_first;
use leptos::prelude::*;

/// The tests, the widest in the middle.
const TESTS: [BoardTest; 3] = [BoardTest::Bond, BoardTest::Bending, BoardTest::Swelling];

/// The panel.
#[component]
pub fn TestPieces() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let all_columns = RwSignal::new(false);
    let phone_test = RwSignal::new(0_usize);
    // Columns that hold something are never out of sight.
    let shows_all = Memo::new(move |_| {
        all_columns.get()
            || desk.board.get().is_some_and(|id| {
                state.bench.open.with(|open| {
                    open.trial.board(id).is_some_and(|board| {
                        let is_filled = |field: BoardField| {
                            field.is_seldom()
                                && board.entry(field).is_some_and(|entry| !entry.is_blank() && !entry.preset)
                        };
                        board.fields().into_iter().any(is_filled)
                    })
                })
            })
    });
    let title = move || desk.board.get().map(|id| t!("trial-test-pieces", board = lower_first(&board_name(state, id))));
    let pick = move |(at, test): (usize, &BoardTest)| {
        view! {
            <button
                type="button"
                aria-pressed=move || if phone_test.get() == at { "true" } else { "false" }
                on:click=move |_| phone_test.set(at)
            >
                {super::column::test_name(*test).0}
            </button>
        }
    };
    let grids = move || desk.board.get().map(|id| view! { <Grids id=id shows_all=shows_all phone_test=phone_test/> });
    view! {
        <section class="panel test-pieces" aria-labelledby="test-pieces">
            <div class="tools">
                <h3 id="test-pieces">{title}</h3>
                <span class="note">{t!("trial-paste-hint")}</span>
                <button
                    type="button"
                    class="bare"
                    aria-pressed=move || if shows_all.get() { "true" } else { "false" }
                    on:click=move |_| all_columns.update(|all| *all = !*all)
                >
                    {t!("trial-all-columns")}
                </button>
            </div>
            <div class="pick" role="group" aria-label=t!("trial-test")>{TESTS.iter().enumerate().map(pick).collect_view()}</div>
            {grids}
        </section>
    }
}

/// The grids of one board.
#[component]
fn Grids(
    /// The board.
    id: BoardId,
    /// Whether the columns that are seldom filled in are shown.
    shows_all: Memo<bool>,
    /// The test that a phone shows.
    phone_test: RwSignal<usize>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let fields = Memo::new(move |_| {
        let own = state.bench.open.with(|open| open.trial.board(id).map_or_else(Vec::new, BoardDraft::fields));
        let is_here = |field: &BoardField| field.test().is_some_and(|test| TESTS.contains(&test));
        own.into_iter().filter(is_here).map(|field| TrialField::Board(id, field)).collect::<Vec<_>>()
    });
    let grid = move |(at, test): (usize, &BoardTest)| {
        let test = *test;
        view! {
            <div class="piece-test" class:off=move || phone_test.get() != at>
                <PieceGrid id=id test=test shows_all=shows_all/>
            </div>
        }
    };
    view! {
        <div class="trio" class:stacked=move || shows_all.get()>{TESTS.iter().enumerate().map(grid).collect_view()}</div>
        <TrialMessages fields=fields/>
        <BoardsWorking belongs=is_of_piece/>
    }
}

const fn is_of_piece(figure: BoardsFigure) -> bool {
    matches!(
        figure,
        BoardsFigure::Of(
            _,
            BoardFigure::BendingStrength(_)
                | BoardFigure::BendingModulus(_)
                | BoardFigure::InternalBond(_)
                | BoardFigure::Swelling(_)
        )
    )
}
