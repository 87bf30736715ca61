//! What there is to say about a trial, as lines of the warning slot.

use super::context::{TrialDesk, with_bench};
use super::figure::{board_name, signed_share};
use super::trial_box::entry_findings;
use crate::browser::page;
use crate::domain::Grade;
use crate::domain::trial::boards::density::{DensityTarget, OFF_TARGET, density_target};
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::{BoardId, TrialFinding, TrialPlace, TrialProblem};
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::page::bench::sheet::word;
use crate::ui::state::State;
use crate::ui::text::{Message, words};
use leptos::prelude::*;
use uom::si::f64::Ratio;

/// Whether a finding is one of a box's own entry, which its box says.
fn is_of_entry(finding: &TrialFinding) -> bool {
    matches!(finding.what, TrialProblem::Entry(_))
}

/// Findings and what is wrong in `fields`, as they were at the last pause, so that nothing comes and
/// goes between two keys.
pub fn slot_lines(
    state: State,
    desk: TrialDesk,
    findings: impl Fn() -> Vec<TrialFinding> + Send + Sync + 'static,
    fields: impl Fn() -> Vec<TrialField> + Send + Sync + 'static,
    with_boards: bool,
) -> Signal<Vec<SlotLine>> {
    let lines = Memo::new(move |before: Option<&Vec<SlotLine>>| {
        if desk.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        let said = findings().into_iter().filter(|finding| !is_of_entry(finding)).map(|finding| {
            let message = with_bench(state, |context| words::bench::finding(&finding, context));
            line(desk, finding.grade, finding.place, message)
        });
        let entries = entry_findings(state, &fields());
        let entries = entries.into_iter().map(|(field, grade, message)| line(desk, grade, field.place(), message));
        let off = if with_boards { off_target_boards(state, desk) } else { Vec::new() };
        said.chain(entries).chain(off).collect()
    });
    lines.into()
}

fn line(desk: TrialDesk, grade: Grade, place: TrialPlace, message: Message) -> SlotLine {
    let show = match place {
        TrialPlace::Board(id, field) => Some((Some(id), TrialField::Board(id, field).key())),
        TrialPlace::Series(SeriesField::Factor(id)) => {
            Some((None, TrialField::Series(SeriesField::Level(id, 0)).key()))
        }
        TrialPlace::Series(field) => Some((None, TrialField::Series(field).key())),
        _ => None,
    };
    let show = show.map(|(board, key)| Callback::new(move |()| go(desk, board, key.clone())));
    SlotLine { grade, word: word(grade), words: format!("{} {}", message.what, message.fix), show }
}

/// Goes to a box; of a board's once the board is shown.
fn go(desk: TrialDesk, board: Option<BoardId>, key: String) {
    if board.is_some() {
        desk.board.set(board);
    }
    request_animation_frame(move || page::focus_field(&key));
}

/// The single boards whose density misses its target, with what that comes from.
fn off_target_boards(state: State, desk: TrialDesk) -> Vec<SlotLine> {
    let off = desk.tested.with(|tested| {
        let one = |board: &MeasuredBoard| {
            if board.doubtful {
                return None;
            }
            let target = density_target(tested.sheet(board.id)?, std::slice::from_ref(board))?;
            (target.split.total.value.abs() > OFF_TARGET).then_some((board.id, target))
        };
        tested.boards.iter().filter_map(one).collect::<Vec<_>>()
    });
    let said = |(id, target): (BoardId, DensityTarget)| {
        let share = |share: Ratio| signed_share(state, share.value);
        let words = t!(
            "trial-board-off-target",
            board = board_name(state, id),
            deviation = share(target.split.total),
            thickness = share(target.split.thickness),
            mass = share(target.split.mass),
            moisture = share(target.split.moisture)
        );
        let key = TrialField::Board(id, BoardField::Mass).key();
        SlotLine {
            grade: Grade::Unusual,
            word: word(Grade::Unusual),
            words,
            show: Some(Callback::new(move |()| go(desk, Some(id), key.clone()))),
        }
    };
    off.into_iter().map(said).collect()
}
