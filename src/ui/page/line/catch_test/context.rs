//! What the parts of the tab share beside the app's state.

use crate::domain::line::{
    CalibrationId, Curve, Drift, Examined, Fit, LineField, LineFigure, PumpId, PumpRow, RowField, RowId, Setting,
    SettingUnit, TestedFlow, tested_flows,
};
use crate::quantity::{Amount, Kind, format};
use crate::ui::page::line::settings_now::SettingsNow;
use crate::ui::state::State;
use leptos::prelude::*;

/// What all parts share.
#[derive(Clone, Copy)]
pub struct CatchSheet {
    /// The pump settings.
    pub now: Memo<SettingsNow>,
    /// The pump that is shown, with the scale of its drive.
    pub pump: Memo<Option<(PumpId, SettingUnit)>>,
    /// The figure whose working is open.
    pub open_figure: RwSignal<Option<CatchFigure>>,
}

/// A figure of the tab; all are of the pump that is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CatchFigure {
    /// What the pump is set to.
    SetTo,
    /// Of the fitted line.
    Line(LineFigure),
    /// Of a catch.
    Catch(RowId, LineFigure),
    /// The change since a catch test to the one after it.
    Drift(CalibrationId),
}

/// The catch test that is shown.
#[derive(Clone, Copy)]
pub struct OpenTest {
    /// Its pump.
    pub pump: PumpId,
    /// The scale of the pump's drive.
    pub unit: SettingUnit,
    /// The test.
    pub test: CalibrationId,
    /// The test as it is now.
    pub examined: Memo<Option<Examined>>,
}

/// In which steps the numbers of the columns are told.
#[derive(Clone, Copy, PartialEq)]
pub struct ColumnSteps {
    /// Net masses.
    pub net: Option<f64>,
    /// Flows.
    pub flow: Option<f64>,
    /// Residuals.
    pub residual: Option<f64>,
}

impl CatchSheet {
    /// What the settings say of a pump.
    pub fn row(self, pump: PumpId) -> Option<PumpRow> {
        self.now.with(|now| now.row(pump).cloned())
    }

    /// At which setting the flows of a pump's tests are compared, and their flows there, the newest first: at that of now, or in the
    /// middle of what was tested.
    pub fn tested_flows(self, state: State, pump: PumpId) -> Option<(Setting, Vec<TestedFlow>)> {
        let row = self.row(pump);
        state.line.checked.with(|line| {
            let checked = line.pump(pump)?;
            let last = checked.last()?;
            let tested = last.curve.tested();
            let middle = Setting(f64::midpoint(tested.low.0, tested.high.0));
            let at = row.as_ref().and_then(|row| row.setting).map_or(middle, |found| found.setting);
            let density = row.map_or(last.density, |row| row.density);
            Some((at, tested_flows(checked, at, density)))
        })
    }

    /// The change since a test to the one after it.
    pub fn drift_since(self, state: State, pump: PumpId, since: CalibrationId) -> Option<Drift> {
        let (_, flows) = self.tested_flows(state, pump)?;
        flows.into_iter().filter_map(|each| each.drift).find(|drift| drift.since == since)
    }
}

impl OpenTest {
    /// The address of a number of a catch.
    pub const fn field(self, row: RowId, part: RowField) -> LineField {
        LineField::Row(self.pump, self.test, row, part)
    }

    /// The line through the catches.
    pub fn curve(self) -> Option<Curve> {
        self.examined.with(|examined| examined.as_ref()?.fit.map(Curve::as_caught))
    }
}

/// How far apart the numbers of a column are told, so that their decimals align: of the largest one so many digits.
pub fn column_step(values: impl IntoIterator<Item = f64>, digits: i32) -> Option<f64> {
    let largest = values.into_iter().map(f64::abs).filter(|value| value.is_finite()).fold(0.0, f64::max);
    (largest > 0.0).then(|| 10_f64.powi((largest.log10().floor() as i32 + 1 - digits).min(0)))
}

/// A number of a column, with the column's decimals.
pub fn in_column(state: State, amount: Amount, step: Option<f64>) -> String {
    let units = state.units.get();
    let unit = units.unit(amount.kind);
    match step {
        // What is left of a zero has no sign.
        Some(step) => format::in_steps((amount.get(unit) / step).round() * step + 0.0, step, units.mark),
        None => format::amount(amount, unit, units.mark),
    }
}

/// The same with its sign.
pub fn signed_in_column(state: State, amount: Amount, step: Option<f64>) -> String {
    let unit = state.unit(amount.kind);
    let text = in_column(state, amount, step);
    let is_shown_positive = amount.get(unit) > step.map_or(0.0, |step| step / 2.0);
    if is_shown_positive { format!("+{text}") } else { text }
}

/// The step in which flows about a line are told: no finer than half of what they scatter, or without scatter four digits.
pub fn flow_step(state: State, fit: &Fit) -> Option<f64> {
    let unit = state.unit(Kind::LiquidFlow);
    let step = |scatter: f64| 10_f64.powi((unit.from_base(scatter) / 2.0).log10().floor().min(0.0) as i32);
    scatter(fit).map(step).or_else(|| column_step([unit.from_base(fit.at(fit.tested.high))], 4))
}

/// The scatter about a line; `None` where there is none but for rounding.
pub fn scatter(fit: &Fit) -> Option<f64> {
    fit.residual_sd.filter(|sd| *sd > 1e-9 * fit.at(fit.tested.high).abs())
}
