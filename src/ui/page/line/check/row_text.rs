//! A row of the table in words and numbers.

use super::now::{CheckNow, field_of};
use crate::domain::line::{
    Check, CheckRow, Deviation, FlowSource, LineField, PumpAction, PumpCorrection, PumpId, PumpRow, RangeStatus,
    RunFigure, Setting, Verdict,
};
use crate::quantity::{Amount, Kind, Unit, Units, format};
use crate::t;
use crate::ui::page::line::settings::context::{beyond, setting_parts};
use crate::ui::page::line::settings_text::{pump_name, signed};
use crate::ui::state::State;
use crate::ui::text::{unit_shown, words};
use leptos::prelude::*;

/// What to set instead.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum NewSetting {
    /// Nothing to say.
    #[default]
    Blank,
    /// A number, its unit and a remark.
    Number(String, String, String),
    /// A few words in a quiet tone.
    Words(String),
    /// What prevents it, and by how much.
    Flag(String, String),
}

/// A row as it is shown.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CheckRowText {
    /// The target, without its unit.
    pub target: String,
    /// What was read, where no box of its own has it.
    pub actual: String,
    /// The deviation and its unit; blank where there is none.
    pub deviation: (String, String),
    /// Deviation per tolerance.
    pub offset: Option<f64>,
    /// The tolerance, without its unit.
    pub tolerance: String,
    /// OK, low, high or not read.
    pub status: String,
    /// Whether it is outside its tolerance.
    pub is_outside: bool,
    /// The reconciled value and half of its 95 % interval.
    pub reconciled: (String, String),
    /// The present setting, where no box of its own has it.
    pub now: String,
    /// The new one.
    pub new: NewSetting,
}

/// What a row is called: the thing, and what is said of it in a quieter tone.
pub fn row_name(state: State, figure: RunFigure) -> (String, String) {
    match figure {
        RunFigure::Flow(id) => {
            let fed = state.line.checked.with(|line| {
                state.draft.with(|draft| Some(words::line::fed(line.pump(id)?.feeds.within(draft)?, draft)))
            });
            (pump_name(state, id), fed.unwrap_or_default())
        }
        _ => {
            let words = words::line::run_figure(figure);
            let note = match figure {
                RunFigure::MatMoisture => String::new(),
                RunFigure::MatWeight => t!("check-oven-dry"),
                _ => words.note.to_owned(),
            };
            (words.label.to_owned(), note)
        }
    }
}

/// The name in one line.
pub fn full_name(state: State, figure: RunFigure) -> String {
    match row_name(state, figure) {
        (name, note) if note.is_empty() => name,
        (name, note) if matches!(figure, RunFigure::Flow(_)) => format!("{name} {note}"),
        (name, note) => format!("{name}, {note}"),
    }
}

/// The units of a row: a moisture has the basis of its own box.
pub fn row_units(state: State, figure: RunFigure, kind: Kind) -> Units {
    match field_of(figure) {
        Some(field) => state.line_units_at(field, kind),
        None => state.units.get(),
    }
}

/// All of a row but its boxes.
pub fn row_text(state: State, now: &CheckNow, figure: RunFigure) -> CheckRowText {
    let Some(row) = now.row(figure) else { return CheckRowText::default() };
    let units = row_units(state, figure, row.kind);
    let unit = units.unit(row.kind);
    let number = |amount: Amount| format::amount(amount, unit, units.mark);
    let check = row.check.filter(|check| check.verdict() != Verdict::NotRead);
    let (settings_now, new) = settings(state, now, row);
    CheckRowText {
        target: row.target.map_or_else(String::new, number),
        actual: row.check.map_or_else(String::new, |check| number(check.actual)),
        deviation: check.map_or_else(Default::default, |check| deviation(&check, unit, &units)),
        offset: check.map(|check| check.deviation.value() / check.tolerance.value),
        tolerance: row.tolerance.map_or_else(String::new, |tolerance| {
            format!("±\u{a0}{}", format::editable(Unit::Percent.from_base(tolerance.value), units.mark))
        }),
        // Without belt scale and moisture nothing is compared, whatever else was read.
        status: if now.check.is_some() { status(row) } else { String::new() },
        is_outside: row.verdict() == Verdict::Outside,
        reconciled: reconciled(row, unit, &units).unwrap_or_default(),
        now: settings_now,
        new,
    }
}

/// A deviation with one decimal, so that a column has the same; with two where one would hide that it is outside.
pub fn deviation(check: &Check, unit: Unit, units: &Units) -> (String, String) {
    let (value, name) = match check.deviation {
        Deviation::Relative(by) => (100.0 * by.value, "%".to_owned()),
        Deviation::Points(_) => (check.actual.get(unit) - check.target.get(unit), t!("check-points")),
    };
    let tenths = (value * 10.0).round() / 10.0;
    let hides = check.verdict() == Verdict::Outside && tenths.abs() <= 100.0 * check.tolerance.value + 1e-9;
    let step = if hides { 0.01 } else { 0.1 };
    let rounded = (value / step).round() * step;
    // What rounds to nothing has no sign.
    let sign = if rounded > 0.5 * step { "+" } else { "" };
    let value = if rounded.abs() < 0.5 * step { 0.0 } else { rounded };
    // A zero has the decimals of its column.
    let number = if value == 0.0 {
        format::in_steps(1.0, step, units.mark).replacen('1', "0", 1)
    } else {
        format::in_steps(value, step, units.mark)
    };
    (format!("{sign}{number}"), name)
}

/// A deviation in one line, in the units of its row.
pub fn deviation_line(state: State, row: &CheckRow) -> String {
    let units = row_units(state, row.figure, row.kind);
    row.check.map_or_else(String::new, |check| {
        let (number, unit) = deviation(&check, units.unit(row.kind), &units);
        format!("{number}\u{a0}{unit}")
    })
}

fn status(row: &CheckRow) -> String {
    let by_setting = row.check.is_some_and(|check| check.source == FlowSource::Inferred);
    let is_high = row.check.is_some_and(|check| check.deviation.value() > 0.0);
    match row.verdict() {
        Verdict::NotRead => t!("check-not-read"),
        Verdict::Within if by_setting => t!("check-ok-by-setting"),
        Verdict::Within => t!("check-ok"),
        Verdict::Outside if is_high => t!("check-high"),
        Verdict::Outside => t!("check-low"),
    }
}

/// Value and half interval with as many decimals as the interval has meaning: its first two digits.
fn reconciled(row: &CheckRow, unit: Unit, units: &Units) -> Option<(String, String)> {
    let found = row.reconciled?;
    let half = found.half_interval();
    let shown = |base: f64| Amount::from_base(row.kind, base).get(unit);
    let width = (shown(found.value + half) - shown(found.value - half)).abs() / 2.0;
    let step = 10.0_f64.powf(width.log10().floor() - 1.0);
    (step.is_finite() && step > 0.0).then(|| {
        let number = |value: f64| format::in_steps((value / step).round() * step, step.min(1.0), units.mark);
        (number(shown(found.value)), format!("±\u{a0}{}", number(width)))
    })
}

fn settings(state: State, now: &CheckNow, row: &CheckRow) -> (String, NewSetting) {
    let former = now.check.as_ref().and_then(|check| check.former);
    match row.figure {
        RunFigure::Flow(id) => (String::new(), pump_setting(state, now, id)),
        RunFigure::LineSpeed => {
            let units = state.units.get();
            let unit = units.unit(Kind::LineSpeed);
            let speed = |speed: uom::si::f64::Velocity| {
                format::amount(Amount::from_base(Kind::LineSpeed, speed.value), unit, units.mark)
            };
            let present = former.and_then(|former| former.line_speed_now).map(speed).unwrap_or_default();
            let symbol = unit_shown(unit, "").into_owned();
            let new = former.and_then(|former| {
                Some(if former.keep {
                    NewSetting::Number(present.clone(), symbol, t!("check-keep"))
                } else {
                    NewSetting::Number(speed(former.line_speed?), symbol, t!("check-or-former"))
                })
            });
            (present, new.unwrap_or_default())
        }
        RunFigure::MatWeight => {
            let new = former.map(|former| {
                if former.keep {
                    NewSetting::Words(t!("check-keep-former"))
                } else {
                    NewSetting::Words(t!("check-former", change = signed(state, former.factor.value - 1.0)))
                }
            });
            (String::new(), new.unwrap_or_default())
        }
        _ => Default::default(),
    }
}

fn pump_setting(state: State, now: &CheckNow, id: PumpId) -> NewSetting {
    let planned = now.settings.as_ref().and_then(|settings| settings.rows.iter().find(|row| row.pump == id));
    let Some(correction) = now.correction(id) else {
        return planned.map_or(NewSetting::Blank, |row| not_read(state, row));
    };
    let number = |setting: Setting, remark: String| {
        let (number, unit) = setting_parts(state, id, setting, correction.unit);
        NewSetting::Number(number, unit, remark)
    };
    match correction.action {
        PumpAction::Set { setting, status: RangeStatus::Within } => number(setting, String::new()),
        PumpAction::Set { setting, status } => number(setting, words::line::range_status(status).to_owned()),
        PumpAction::Keep => correction
            .setting_now
            .map_or_else(|| NewSetting::Words(t!("check-keep")), |now| number(now, t!("check-keep"))),
        PumpAction::Stop => NewSetting::Flag(t!("check-stop"), String::new()),
        PumpAction::CatchTestFirst { .. } | PumpAction::NoCatchTest | PumpAction::Distrusted => {
            NewSetting::Flag(t!("check-catch-test-first"), String::new())
        }
        PumpAction::Cannot { status } => {
            NewSetting::Flag(t!("check-cannot"), cannot(state, correction, status).unwrap_or_default())
        }
        PumpAction::EnterSetting => NewSetting::Words(t!("check-enter-now")),
        PumpAction::NotRead => planned.map_or(NewSetting::Blank, |row| not_read(state, row)),
        PumpAction::Unsettled => NewSetting::Flag(t!("check-readings-first"), String::new()),
    }
}

fn limit(state: State, id: PumpId, status: RangeStatus) -> Option<Setting> {
    state.line.checked.with(|line| {
        let pump = line.pump(id)?;
        match status {
            RangeStatus::BelowLimit => pump.least,
            RangeStatus::AboveLimit => pump.most,
            _ => None,
        }
    })
}

/// The setting that a pump would take, of the limit that it passes.
fn cannot(state: State, correction: &PumpCorrection, status: RangeStatus) -> Option<String> {
    let limit = limit(state, correction.pump, status)?;
    let number = |at| setting_parts(state, correction.pump, at, correction.unit);
    let (limit, unit) = number(limit);
    Some(t!("line-beyond", needed = number(correction.setting_needed?).0, limit = format!("{limit}\u{a0}{unit}")))
}

/// A pump that was not read still says that it cannot do what the recipe takes.
fn not_read(state: State, row: &PumpRow) -> NewSetting {
    match beyond(state, row, limit(state, row.pump, row.range_status)) {
        Some(words) => NewSetting::Flag(t!("check-cannot"), words),
        None => NewSetting::Blank,
    }
}

/// What holds while the box of a row is blank: the flow by the pump's setting, the recipe's mat width, the moisture by the flows.
pub fn while_blank(state: State, now: &CheckNow, figure: RunFigure, field: LineField) -> String {
    let Some(row) = now.row(figure) else { return String::new() };
    let units = state.line_units_at(field, row.kind);
    let number = |amount: Amount| format::amount(amount, units.unit(row.kind), units.mark);
    match figure {
        RunFigure::Flow(_) => row
            .check
            .filter(|check| check.source == FlowSource::Inferred)
            .map_or_else(String::new, |check| number(check.actual)),
        RunFigure::MatWidth => row.target.map_or_else(String::new, number),
        RunFigure::MatMoisture => now.check.as_ref().map_or_else(String::new, |check| {
            let by_flows = check.actual.mat_moisture.dry_basis().value;
            number(Amount::from_base(Kind::Moisture, by_flows))
        }),
        _ => String::new(),
    }
}
