//! What is seldom entered of a board: its label, its run, its surface, the furnish laid for it.

use crate::browser::page;
use crate::domain::Entry;
use crate::domain::trial::boards::board::MAX_PIECES;
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::{BoardDraft, BoardId};
use crate::quantity::Unit;
use crate::record::content::trial::field::TrialField;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::TextBox;
use crate::ui::page::bench::entry::{PlaceChoice, TrialBox, TrialDesk};
use crate::ui::state::State;
use leptos::prelude::*;

/// The boxes and actions of one board.
#[component]
pub fn BoardDetails(
    /// The board.
    id: BoardId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let bench = state.bench;
    let read = move |read: fn(&BoardDraft) -> String| {
        Signal::derive(move || bench.open.with(|open| open.trial.board(id).map(read).unwrap_or_default()))
    };
    let change = move |change: &dyn Fn(&mut BoardDraft)| {
        bench.edit(|trial| {
            if let Some(board) = trial.board_mut(id) {
                change(board);
            }
        });
    };
    let rename = Callback::new(move |text: String| change(&|board| board.name.clone_from(&text)));
    let note = Callback::new(move |text: String| change(&|board| board.note.clone_from(&text)));
    let left = Callback::new(|()| ());
    let runs = Memo::new(move |_| {
        let runs = desk.planned.with(|planned| planned.sheets.len());
        let run = |at: usize| t!("trial-run-n", number = at);
        std::iter::once(t!("trial-no-run")).chain((1..=runs).map(run)).collect::<Vec<_>>()
    });
    let run = Memo::new(move |_| {
        bench.open.with(|open| open.trial.board(id).and_then(|board| board.run)).map_or(0, usize::from)
    });
    let choose_run =
        Callback::new(move |at: usize| change(&|board| board.run = u16::try_from(at).ok().filter(|run| *run > 0)));
    let sanded =
        Memo::new(move |_| bench.open.with(|open| open.trial.board(id).map_or(0, |board| usize::from(board.sanded))));
    let choose_finish = Callback::new(move |at: usize| change(&|board| board.sanded = at == 1));
    let add_point = move |_| {
        change(&|board| {
            if board.thickness.len() < MAX_PIECES {
                board.thickness.push(Entry::empty(Unit::Millimetre));
            }
        });
    };
    let remove = move |_| {
        let mut removed = None;
        bench.edit(|trial| removed = trial.remove_board(id));
        page::focus("add-board");
        let Some(removed) = removed else { return };
        state.tell_undo(t!("trial-board-removed"), move || bench.edit(|trial| trial.put_back_board(&removed)));
    };
    view! {
        <div class="boxes">
            <TextBox
                id=format!("board-name-{}", id.0)
                label=t!("trial-board-label")
                value=read(|board| board.name.clone())
                longest=LONGEST_NAME
                on_input=rename
                on_leave=left
            />
            <PlaceChoice
                id=format!("board-run-{}", id.0)
                name=t!("trial-run")
                labelled=true
                offered=runs
                chosen=run
                on_choose=choose_run
            />
            <PlaceChoice
                id=format!("board-sanded-{}", id.0)
                name=t!("trial-surface")
                labelled=true
                offered=vec![t!("trial-unsanded"), t!("trial-sanded")]
                chosen=sanded
                on_choose=choose_finish
            />
            <TrialBox
                field=TrialField::Board(id, BoardField::Laid)
                label=t!("trial-laid")
                aside=t!("trial-laid-hint")
            />
            <TextBox
                id=format!("board-note-{}", id.0)
                label=t!("trial-note")
                value=read(|board| board.note.clone())
                longest=LONGEST_NAME
                on_input=note
                on_leave=left
            />
        </div>
        <div class="actions">
            <button type="button" on:click=add_point>{t!("trial-add-point")}</button>
            <button type="button" on:click=remove>{t!("trial-remove-board")}</button>
        </div>
    }
}
