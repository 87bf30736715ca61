//! What the parts of the tab share beside the app's state.

use crate::domain::line::working::{drift_working, line_working, pump_working};
use crate::domain::line::{LineFigure, LineWorking, PumpId, PumpRow, Setting, SettingUnit};
use crate::domain::{Case, Figure};
use crate::quantity::{Amount, format};
use crate::ui::page::line::settings_now::SettingsNow;
use crate::ui::page::line::settings_text::{no_setting, signed};
use crate::ui::state::State;
use crate::ui::text::unit_shown;
use leptos::prelude::*;

/// What the parts of the tab share.
#[derive(Clone, Copy)]
pub struct SettingsSheet {
    /// The settings.
    pub now: Memo<SettingsNow>,
    /// The figure whose working is open.
    pub open_figure: RwSignal<Option<SheetFigure>>,
    /// The pump whose details are open.
    pub open_pump: RwSignal<Option<PumpId>>,
}

/// A figure of the tab.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SheetFigure {
    /// A pump's.
    Pump(PumpId, LineFigure),
    /// The recipe's, at what was entered.
    Recipe(Figure),
}

impl SheetFigure {
    /// `data-figure` on the page.
    pub fn key(self) -> String {
        match self {
            Self::Pump(id, figure) => format!("pump.{}.{}", id.0, figure.key()),
            Self::Recipe(figure) => format!("line.{}", figure.key()),
        }
    }
}

impl SettingsSheet {
    /// Number and unit of a figure; both blank where there is none.
    pub fn text(self, state: State, figure: SheetFigure) -> (String, String) {
        self.now.with(|now| match figure {
            SheetFigure::Recipe(figure) => {
                let amount = now.case.as_ref().and_then(|case| case.figure(figure));
                amount.map_or_else(Default::default, |amount| parts(state, amount))
            }
            SheetFigure::Pump(id, figure) => {
                now.row(id).map_or_else(Default::default, |row| pump_text(state, row, figure))
            }
        })
    }
}

fn pump_text(state: State, row: &PumpRow, figure: LineFigure) -> (String, String) {
    use LineFigure as Fig;
    match figure {
        Fig::Setting(unit) => row.set_to.map_or_else(
            || (no_setting(row).to_owned(), String::new()),
            |found| setting_parts(state, row.pump, found, unit),
        ),
        Fig::Drift => row
            .drift
            .and_then(|drift| drift.change)
            .map_or_else(Default::default, |change| (signed(state, change.value), String::new())),
        Fig::Prediction => amount(row, figure).map_or_else(Default::default, |amount| {
            let (number, unit) = parts(state, amount);
            (format!("± {number}"), unit)
        }),
        _ => amount(row, figure).map_or_else(Default::default, |amount| parts(state, amount)),
    }
}

/// A figure of a pump; `None` where the row does not have it.
fn amount(row: &PumpRow, figure: LineFigure) -> Option<Amount> {
    use LineFigure as Fig;
    let base = match figure {
        Fig::Wanted => row.mass.value,
        Fig::WantedVolume => row.volume.value,
        Fig::Spray => Some(row.spray.value).filter(|spray| *spray > row.volume.value * (1.0 + 1e-9))?,
        Fig::OpenNozzles => f64::from(row.nozzles?.open),
        Fig::NozzleFlow => row.nozzles?.each.value,
        Fig::PerFibre => row.per_fibre.value,
        Fig::VolumePerFibre => row.volume_per_fibre.value,
        Fig::LeastFibre => row.reach?.least.value,
        Fig::MostFibre => row.reach?.most.value,
        Fig::Prediction => return Some(line_working(figure, &row.curve?, row.unit, row.setting?.setting)?.result),
        _ => return None,
    };
    Some(Amount::from_base(figure.kind(), base))
}

/// How a figure of a pump was computed.
pub fn line_figure_working(row: &PumpRow, figure: LineFigure, case: &Case) -> Option<LineWorking> {
    match figure {
        LineFigure::Prediction => line_working(figure, &row.curve?, row.unit, row.setting?.setting),
        LineFigure::Drift => drift_working(&row.drift?),
        _ => pump_working(figure, row, case),
    }
}

/// A setting in as many digits as the drive takes, and its unit.
pub fn setting_parts(state: State, pump: PumpId, at: Setting, unit: SettingUnit) -> (String, String) {
    let step = state.line.checked.with(|line| line.pump(pump).map(|pump| pump.step));
    let (number, symbol) = parts(state, at.amount(unit));
    let Some(step) = step.filter(|step| step.0 > 0.0) else { return (number, symbol) };
    let units = state.units.get();
    let shown = units.unit(unit.kind());
    let (value, step) = (at.amount(unit).get(shown), step.amount(unit).get(shown));
    (format::in_steps(value, step, units.mark), symbol)
}

/// Number and unit of an amount.
pub fn parts(state: State, amount: Amount) -> (String, String) {
    let units = state.units.get();
    let unit = units.unit(amount.kind);
    let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
    (format::amount(amount, unit, units.mark), symbol)
}

/// From where to where one catch may well lie, without the unit.
pub fn interval(state: State, row: &PumpRow) -> String {
    let interval = row.setting.and_then(|found| found.interval);
    interval.map_or_else(String::new, |interval| {
        let number = |at: Setting| setting_parts(state, row.pump, at, row.unit).0;
        format!("{}–{}", number(interval.low), number(interval.high))
    })
}

/// The setting that a pump cannot run at beside the limit that it passes: "37.9 of 30 Hz".
pub fn beyond(state: State, row: &PumpRow, limit: Option<Setting>) -> Option<String> {
    let needed = row.setting.filter(|_| row.set_to.is_none() && !row.range_status.is_allowed())?.setting;
    let (needed, unit) = setting_parts(state, row.pump, needed, row.unit);
    let units = state.units.get();
    let limit = format::editable(limit?.amount(row.unit).get(units.unit(row.unit.kind())), units.mark);
    Some(crate::t!("line-beyond", needed = needed, limit = format!("{limit}\u{a0}{unit}")))
}

/// The figures whose workings open in the fold below the table.
pub const IN_FOLD: [LineFigure; 6] = [
    LineFigure::PerFibre,
    LineFigure::VolumePerFibre,
    LineFigure::LeastFibre,
    LineFigure::MostFibre,
    LineFigure::Prediction,
    LineFigure::Drift,
];

/// Whether a figure is in the fold below the table.
pub fn is_in_fold(figure: SheetFigure) -> bool {
    matches!(figure, SheetFigure::Pump(_, figure) if IN_FOLD.contains(&figure))
}
