//! What the tab shows, as plain data.

use crate::domain::line::{
    CheckRow, LineCheck, LineField, LineFinding, LineFindingKind, LinePlace, PumpCorrection, PumpField, PumpId,
    PumpSettings, Readings, RunFigure, RunningField, Verdict, at_conditions, blank_rows, check_readings, check_rows,
    on_line, read_running, stale, try_pump_settings,
};
use crate::domain::recipe::finding::What;
use crate::quantity::Moisture;
use crate::ui::page::line::context::solved;
use crate::ui::state::State;
use leptos::prelude::*;

/// What the parts of the tab share.
#[derive(Clone, Copy)]
pub struct CheckSheet {
    /// The line check.
    pub now: Memo<CheckNow>,
    /// The row whose details are open on a phone.
    pub open_row: RwSignal<Option<RunFigure>>,
}

/// The line check of the present readings.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CheckNow {
    /// The rows of the table.
    pub rows: Vec<CheckRow>,
    /// What was read; `None` until belt scale and fibre moisture are.
    pub readings: Option<Readings>,
    /// What it says.
    pub check: Option<LineCheck>,
    /// What the pumps are set to, for those that were not read.
    pub settings: Option<PumpSettings>,
    /// What is wrong or unusual.
    pub findings: Vec<LineFinding>,
    /// Whether the recipe has an error, so that the targets are those from before it.
    pub old: bool,
}

impl CheckNow {
    /// The row of a figure.
    pub fn row(&self, figure: RunFigure) -> Option<&CheckRow> {
        self.rows.iter().find(|row| row.figure == figure)
    }

    /// What to do with a pump.
    pub fn correction(&self, pump: PumpId) -> Option<&PumpCorrection> {
        self.check.as_ref()?.corrections.iter().find(|correction| correction.pump == pump)
    }

    /// Moisture of the mat: of the sample, or else from the flows.
    pub fn mat_moisture(&self) -> Option<Moisture> {
        self.check.as_ref().map(|check| check.actual.sample_moisture.unwrap_or(check.actual.mat_moisture))
    }

    /// How many readings there are.
    pub fn read(&self) -> usize {
        self.rows.iter().filter(|row| row.verdict() != Verdict::NotRead).count()
    }

    /// The rows outside their tolerance.
    pub fn outside(&self) -> impl Iterator<Item = &CheckRow> {
        self.rows.iter().filter(|row| row.verdict() == Verdict::Outside)
    }
}

/// The line check as it is now. Follows the recipe and the line.
pub fn check_now(state: State) -> CheckNow {
    let changed = state.line.record.with(|record| record.planned.as_ref().and_then(|planned| planned.started));
    let name = state.title.with(|title| title.name.clone());
    let old = state.shown.with(|shown| shown.old);
    let found = solved(state, |draft, case, line, book| {
        let (readings, mut findings) = read_running(book);
        findings.extend(stale(book, &name, changed));
        let of_tolerances = |found: &&LineFinding| matches!(found.place, LinePlace::Field(LineField::Tolerance(_)));
        findings.extend(line.findings.iter().filter(of_tolerances).cloned());
        let set_for = at_conditions(case, book, &name).case.unwrap_or_else(|| case.clone());
        let check = readings
            .as_ref()
            .zip(line.tolerances.as_ref())
            .and_then(|(readings, tolerances)| check_readings(draft, case, line, tolerances, readings));
        findings.extend(check.iter().flat_map(|check| check.findings.iter().cloned()));
        findings.retain(|found| !is_untouched(book, found));
        CheckNow {
            rows: check_rows(draft, &set_for, line, book, readings.as_ref(), check.as_ref()),
            settings: try_pump_settings(draft, Some(&set_for), line).ok(),
            readings,
            check,
            findings,
            old,
        }
    });
    found.unwrap_or_else(|| CheckNow {
        rows: state.line.book(blank_rows),
        findings: state.shown.with(|shown| on_line(shown.case.as_ref()).err()).into_iter().collect(),
        ..CheckNow::default()
    })
}

/// When the line was read: as noted with the last reading, or now.
pub fn read_at(state: State) -> u64 {
    let noted = state.line.book(|book| book.read_on.as_ref().map(|on| on.at));
    noted.unwrap_or_else(|| state.line.now.get())
}

/// A required box that nobody has touched is no finding.
fn is_untouched(book: &crate::domain::line::LineBook, found: &LineFinding) -> bool {
    let LinePlace::Field(field) = found.place else { return false };
    found.what == LineFindingKind::Entry(What::Missing) && book.entry(field).is_none_or(|entry| entry.preset)
}

/// Where a row is read; `None` of what is computed from several boxes.
pub const fn field_of(figure: RunFigure) -> Option<LineField> {
    Some(match figure {
        RunFigure::BeltScale => LineField::Running(RunningField::Belt),
        RunFigure::FibreMoisture => LineField::Running(RunningField::Moisture),
        RunFigure::Flow(id) => LineField::Pump(id, PumpField::Reading),
        RunFigure::LineSpeed => LineField::Running(RunningField::LineSpeed),
        RunFigure::MatWidth => LineField::Running(RunningField::MatWidth),
        RunFigure::MatMoisture => LineField::Running(RunningField::SampleMoisture),
        RunFigure::Thickness => LineField::Running(RunningField::BoardThickness),
        RunFigure::BoardMoisture => LineField::Running(RunningField::BoardMoisture),
        _ => return None,
    })
}

/// What a computed row is computed from: mass and area.
pub const fn pair_of(figure: RunFigure) -> Option<[LineField; 2]> {
    Some(match figure {
        RunFigure::MatWeight => {
            [LineField::Running(RunningField::SampleMass), LineField::Running(RunningField::SampleArea)]
        }
        RunFigure::RawDensity => {
            [LineField::Running(RunningField::BoardMass), LineField::Running(RunningField::BoardArea)]
        }
        _ => return None,
    })
}

/// The setting of a pump's row.
pub const fn setting_of(figure: RunFigure) -> Option<LineField> {
    match figure {
        RunFigure::Flow(id) => Some(LineField::Pump(id, PumpField::PresentSetting)),
        _ => None,
    }
}

/// All boxes of the table.
pub fn fields(rows: &[CheckRow]) -> Vec<LineField> {
    let of_row = |row: &CheckRow| {
        let pair = pair_of(row.figure).into_iter().flatten();
        field_of(row.figure).into_iter().chain(setting_of(row.figure)).chain(pair).collect::<Vec<_>>()
    };
    rows.iter().flat_map(of_row).collect()
}
