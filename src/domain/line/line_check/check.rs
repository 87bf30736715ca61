//! The line check: readings against the recipe, which of them to distrust, and what to correct.

use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::{CheckedLine, Tolerances};
use crate::domain::line::entries::TableRows;
use crate::domain::line::finding::LineFinding;
use crate::domain::line::line_check::actual::Actual;
use crate::domain::line::line_check::correction::{
    FormerCorrection, PumpCorrection, former_correction, pump_corrections,
};
use crate::domain::line::line_check::deviation::{Check, RunFigure, checks};
use crate::domain::line::line_check::flows::actual;
use crate::domain::line::line_check::reading::Readings;
use crate::domain::line::line_check::reconcile::model::LineModel;
use crate::domain::line::line_check::reconcile::quantity::LineQuantity;
use crate::domain::line::line_check::reconcile::verdict::{LineDensitySplit, LineReconciliation};
use crate::domain::line::pumps::settings_table::at;
use crate::domain::recipe::draft::Draft;
use crate::quantity::Moisture;

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
    /// The readings reconciled with the balances; `None` where that did not come to an end.
    pub reconciliation: Option<LineReconciliation>,
    /// How a density deviation of the raw board comes about; `None` where it is not known.
    pub density_split: Option<LineDensitySplit>,
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
    let model = LineModel::new(case, &target, &actual, readings, &readings.uncertainties);
    let reconciliation = model.and_then(|model| LineReconciliation::of(model).ok());
    let reconciled = reconciliation.as_ref();
    let fibre = reconciled.and_then(|found| {
        let flow = found.value(LineQuantity::Fibre).filter(|flow| *flow > 0.0)?;
        let moisture = Moisture::from_dry_basis(found.value(LineQuantity::FibreMoisture)?)?;
        at(case, TableRows::OvenDry, si!(MassRate, flow), moisture)
    });
    let corrections = pump_corrections(&actual, line, fibre.as_ref().unwrap_or(&target), reconciled);
    let former = former_correction(&actual, case, reconciled);
    let thickness = readings.board.thickness.is_some();
    let density_split = reconciled.filter(|_| thickness).and_then(|found| found.density_split(case));
    Some(LineCheck { actual, checks, corrections, former, reconciliation, density_split, findings })
}

impl LineCheck {
    /// The check of a figure.
    #[must_use]
    pub fn check(&self, figure: RunFigure) -> Option<&Check> {
        self.checks.iter().find(|check| check.figure == figure)
    }
}
