//! Pieces for density and moisture of the board that is shown, and its density profile.

use super::piece_grid::PieceGrid;
use super::profile::Profile;
use crate::domain::trial::BoardDraft;
use crate::domain::trial::boards::field::{BoardField, BoardTest};
use crate::domain::trial::boards::working::BoardFigure;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::{BoardsFigure, BoardsWorking, TrialDesk, TrialMessages, board_name};
use crate::ui::state::State;
use crate::ui::text::lower_first;
use leptos::prelude::*;

/// The fold.
#[component]
pub fn DensityFold() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let count = Memo::new(move |_| {
        let id = desk.board.get()?;
        let count =
            state.bench.open.with(|open| open.trial.board(id).map_or(0, |board| board.count(BoardTest::Density)));
        Some((id, count))
    });
    let note = Signal::derive(move || match count.get() {
        Some((id, 0)) => t!("trial-no-density-pieces", board = lower_first(&board_name(state, id))),
        Some((id, count)) => t!("trial-density-pieces-of", board = lower_first(&board_name(state, id)), count = count),
        None => String::new(),
    });
    let fields = Memo::new(move |_| {
        let Some(id) = desk.board.get() else { return Vec::new() };
        let own = state.bench.open.with(|open| open.trial.board(id).map_or_else(Vec::new, BoardDraft::fields));
        let is_here = |field: &BoardField| field.test() == Some(BoardTest::Density);
        own.into_iter().filter(is_here).map(|field| TrialField::Board(id, field)).collect()
    });
    let shows_all = Memo::new(|_| true);
    view! {
        <Fold title=t!("trial-density-profile") note=note id="density-pieces">
            {move || desk.board.get().map(|id| view! {
                <div class="density-pieces">
                    <div class="piece-test"><PieceGrid id=id test=BoardTest::Density shows_all=shows_all/></div>
                    <Profile id=id/>
                </div>
            })}
            <TrialMessages fields=fields/>
            <BoardsWorking belongs=is_of_density_piece/>
        </Fold>
    }
}

const fn is_of_density_piece(figure: BoardsFigure) -> bool {
    matches!(
        figure,
        BoardsFigure::Of(_, BoardFigure::Density(_) | BoardFigure::Moisture(_) | BoardFigure::OvenDryDensity(_))
    )
}
