//! Boards and their test pieces: what was measured, and what the standards' formulas make of it.

mod board_details;
mod board_row;
mod boards_grid;
mod column;
mod density_fold;
mod foot;
mod next_mat;
mod piece_grid;
mod profile;
mod requirements;
mod results;
mod test_pieces;

use crate::domain::trial::BoardId;
use crate::domain::trial::TrialProblem;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::WarningSlot;
use crate::ui::page::bench::entry::{TrialDesk, slot_lines};
use crate::ui::state::State;
use boards_grid::BoardsGrid;
use density_fold::DensityFold;
use foot::BoardsFoot;
use leptos::prelude::*;
use next_mat::NextMat;
use requirements::Requirements;
use results::Results;
use test_pieces::TestPieces;

/// The tab.
#[component]
pub fn BoardsTab() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = TrialDesk::new(state);
    provide_context(desk);
    let ids = Memo::new(move |_| {
        state.bench.open.with(|open| open.trial.boards.iter().map(|board| board.id).collect::<Vec<_>>())
    });
    // The board that is shown: the one chosen while it is there, else the first of the run chosen, else the first one.
    let first = move || {
        let (run, _) = state.bench.place();
        state.bench.open.with(|open| {
            let boards = &open.trial.boards;
            let own = boards.iter().find(|board| run.is_some() && board.run == run);
            own.or(boards.first()).map(|board| board.id)
        })
    };
    desk.board.set(untrack(first));
    Effect::new(move |_| {
        let chosen = desk.board.get();
        if chosen.is_none_or(|id| ids.with(|ids| !ids.contains(&id))) {
            let other = untrack(first);
            if other != chosen {
                desk.board.set(other);
            }
        }
    });
    let findings = move || {
        desk.tested.with(|tested| {
            // Of a single board its own line says it.
            let is_single = |at: usize| tested.combinations.get(at).is_some_and(|own| own.group.boards.len() == 1);
            let of_groups = tested.combinations.iter().enumerate().flat_map(|(at, own)| {
                let is_said =
                    move |what: &TrialProblem| matches!(what, TrialProblem::OffTarget { .. }) && is_single(at);
                own.findings.iter().filter(move |finding| !is_said(&finding.what))
            });
            tested.findings.iter().chain(of_groups).copied().collect()
        })
    };
    let lines = slot_lines(state, desk, findings, move || board_fields(state), true);
    view! {
        <section class="bench-tab boards-tab" aria-labelledby="bench-section">
            <h2 id="bench-section" class="out-of-sight" tabindex="-1">{t!("trial-boards")}</h2>
            <WarningSlot lines=lines/>
            <BoardsGrid ids=ids/>
            <Show when=move || desk.board.get().is_some()><TestPieces/></Show>
            <Results/>
            <section class="panel"><NextMat/><Requirements/><DensityFold/></section>
            <BoardsFoot lines=lines/>
        </section>
    }
}

/// Every box of every board.
fn board_fields(state: State) -> Vec<TrialField> {
    state.bench.open.with(|open| {
        let own = |id: BoardId, fields: Vec<_>| fields.into_iter().map(move |field| TrialField::Board(id, field));
        open.trial.boards.iter().flat_map(|board| own(board.id, board.fields())).collect()
    })
}
