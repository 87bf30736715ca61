//! The line check: readings against the recipe, which of them to distrust, and what to correct.

use crate::domain::balance::outcome::Case;
use crate::domain::line::book::TableRows;
use crate::domain::line::checked::{CheckedLine, Tolerances};
use crate::domain::line::finding::LineFinding;
use crate::domain::line::line_check::actual::Actual;
use crate::domain::line::line_check::correction::{
    FormerCorrection, PumpCorrection, former_correction, pump_corrections,
};
use crate::domain::line::line_check::deviation::{Check, RunFigure, checks};
use crate::domain::line::line_check::flows::actual;
use crate::domain::line::line_check::reading::Readings;
use crate::domain::line::pumps::settings_table::at;
use crate::domain::recipe::draft::Draft;

/// A line check.
#[derive(Debug, Clone, PartialEq)]
pub struct LineCheck {
    /// What runs, each reading taken as right.
    pub actual: Actual,
    /// Every figure that is compared with the recipe.
    pub checks: Vec<Check>,
    /// What brings the pumps back to the recipe at this fibre.
    pub corrections: Vec<PumpCorrection>,
    /// What brings the mat weight back.
    pub former: Option<FormerCorrection>,
    /// What there is to say.
    pub findings: Vec<LineFinding>,
}

/// Compares readings with the recipe. `None` when the recipe has no balance at this fibre, or a figure leaves the
/// range of numbers.
#[must_use]
pub fn check_readings(
    draft: &Draft,
    case: &Case,
    line: &CheckedLine,
    tolerances: &Tolerances,
    readings: &Readings,
) -> Option<LineCheck> {
    let target = at(case, TableRows::Belt, readings.belt, readings.moisture)?;
    let mut findings = Vec::new();
    let actual = actual(draft, case, &target, line, readings, &mut findings)?;
    let checks = checks(&actual, case, &target, tolerances);
    let corrections = pump_corrections(&actual, line, &target);
    let former = former_correction(&actual, case);
    Some(LineCheck { actual, checks, corrections, former, findings })
}

impl LineCheck {
    /// The check of a figure.
    #[must_use]
    pub fn check(&self, figure: RunFigure) -> Option<&Check> {
        self.checks.iter().find(|check| check.figure == figure)
    }
}
