//! How far each line of a batch is: what remains, what is asked, which dose was given.

use crate::domain::trial::finding::{TrialPlace, TrialProblem};
use crate::domain::trial::weigh_sheet::actual::{ActualDose, actual};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::sheet::WeighSheet;
use crate::domain::trial::weigh_sheet::slip::Slip;
use crate::domain::trial::weigh_sheet::weighing::{Answer, BatchDraft, WeighedLine, Weighing};
use uom::si::f64::{Mass, Ratio};

/// How far a line is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LineStatus {
    /// Something is still to be added.
    ToAdd,
    /// Nothing is to be added.
    Done,
    /// The mass looks like a slip and is not used before somebody answers.
    Asked(Slip),
    /// More than planned was weighed.
    Over {
        /// So much more.
        by: Mass,
        /// By how much all lines grow for it, unless it is accepted.
        scale: Ratio,
        /// Whether it is accepted as it is, so that no other line grows.
        accepted: bool,
    },
}

/// A line and how far it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineProgress {
    /// The line.
    pub line: WeighedLine,
    /// How far it is.
    pub status: LineStatus,
    /// The dose that was given; `None` for what is no dose, and until fibre and liquid are weighed and accepted.
    pub dose: Option<ActualDose>,
}

/// How far all lines are, in order of addition.
#[must_use]
pub fn progress(sheet: &WeighSheet, weighing: &Weighing, batch: &BatchDraft) -> Vec<LineProgress> {
    let given = actual(&sheet.plan, |id| weighing.mass_used(id));
    let is_weighed = |id: LineId| {
        let own = weighing.lines.iter().find(|line| line.id == id);
        own.is_some_and(|line| line.weighed.is_some()) && !weighing.is_asked(id)
    };
    let state = |line: &WeighedLine| {
        let dose = match line.id {
            LineId::Liquid(id) if is_weighed(LineId::Fibre) && is_weighed(line.id) => given.dose(id).copied(),
            _ => None,
        };
        LineProgress { line: *line, status: status(sheet, weighing, batch, line), dose }
    };
    weighing.lines.iter().map(state).collect()
}

/// The line that is weighed next: the first one that needs something.
#[must_use]
pub fn next_line(states: &[LineProgress]) -> Option<LineId> {
    states.iter().find(|state| state.status == LineStatus::ToAdd).map(|state| state.line.id)
}

fn status(sheet: &WeighSheet, weighing: &Weighing, batch: &BatchDraft, line: &WeighedLine) -> LineStatus {
    let slip = weighing.findings.iter().find_map(|finding| match finding.what {
        TrialProblem::LikelySlip { slip, .. } if finding.place == TrialPlace::Line(line.id) => Some(slip),
        _ => None,
    });
    if let Some(slip) = slip {
        return LineStatus::Asked(slip);
    }
    let accepted = batch.answer(line.id) == Answer::Accept;
    let planned = sheet.line(line.id).map_or(line.planned, |own| own.mass);
    match line.weighed {
        Some(mass) if mass - line.planned > sheet.plan.tolerance(line.id, line.planned) => {
            // A line that another one has outgrown is to be topped up.
            if accepted || line.to_add.value == 0.0 && line.target.value <= mass.value * (1.0 + 1e-9) {
                return LineStatus::Over { by: mass - line.planned, scale: mass / planned, accepted };
            }
            LineStatus::ToAdd
        }
        _ if line.to_add.value > 0.0 => LineStatus::ToAdd,
        Some(_) => LineStatus::Done,
        None => LineStatus::ToAdd,
    }
}
