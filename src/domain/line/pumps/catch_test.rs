//! Catch tests: a pump runs at a setting, and what it delivers in some seconds is caught and weighed.

use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::limit::Source::CommonPractice;
use crate::domain::line::entries::{density, temperature};
use crate::domain::line::pumps::curve::Curve;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::recipe::draft::Entry;
use crate::quantity::{Kind, Unit, Unit as U};
use crate::statistics::regression::{DataPoint, Fit, FitError, Model};
use serde::{Deserialize, Serialize};
use uom::si::f64::{Mass, MassDensity, MassRate, ThermodynamicTemperature, Time};

/// Least number of rows that a catch test counts with.
pub const LEAST_ROWS: usize = 3;

/// Names a catch test of a pump.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct CalibrationId(pub u16);

/// Names a row of a catch test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct RowId(pub u16);

form! {
    /// A number of a row. The setting is on the scale of the drive, here in percent.
    enum RowField {
        /// The setting.
        Setting: setting, SettingPercent, Percent, "", SettingUnit::Percent.limit();
        /// How long was caught.
        Seconds: seconds, RunTime, Second, "",
            Limit::above_to(U::Second, 0.0, 36_000.0).usually(10.0, 600.0, CommonPractice);
        /// What the scale showed.
        Mass: mass, BatchMass, Kilogram, "",
            Limit::from_to(U::Kilogram, 0.0, 10_000.0).usually(0.2, 500.0, CommonPractice);
        /// The empty vessel; blank when the scale was set to zero with it.
        Tare: tare, BatchMass, Kilogram, "", Limit::from_to(U::Kilogram, 0.0, 10_000.0).optional();
    }

    /// The numbers of a row as entered.
    struct RowEntries;
}

impl RowField {
    /// What the field measures on this drive.
    #[must_use]
    pub const fn kind_on(self, unit: SettingUnit) -> Kind {
        match self {
            Self::Setting => unit.kind(),
            other => other.kind(),
        }
    }

    /// What the field may hold on this drive.
    #[must_use]
    pub const fn limit_on(self, unit: SettingUnit) -> Limit {
        match self {
            Self::Setting => unit.limit(),
            other => other.limit(),
        }
    }
}

form! {
    /// A number of a catch test as a whole.
    enum CalibrationField {
        /// Density of the liquid that was caught.
        Density: density, LiquidDensity, KilogramPerCubicMetre, "", density();
        /// Its temperature, for the record.
        Temperature: temperature, Temperature, Celsius, "", temperature();
    }

    /// The numbers of a catch test as entered.
    struct CalibrationEntries;
}

/// One row as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct RowDraft {
    /// Its number within the catch test.
    pub id: RowId,
    /// Its numbers.
    pub entries: RowEntries,
    /// Excluded by the user: kept and shown, but left out of the fit.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub excluded: bool,
    /// Why it was excluded.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub reason: String,
}

impl RowDraft {
    /// A blank row.
    #[must_use]
    pub fn blank(id: RowId, unit: SettingUnit) -> Self {
        let mut row = Self { id, entries: RowEntries::default(), excluded: false, reason: String::new() };
        row.entries.setting.unit = unit.unit();
        row
    }

    /// Whether nothing was typed into it, whatever was carried down to it: such a row waits for its test.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        RowField::ALL.iter().all(|field| self.entry(*field).is_blank() || self.entry(*field).preset)
    }

    /// The entry of a field.
    #[must_use]
    pub const fn entry(&self, field: RowField) -> &Entry {
        self.entries.entry(field)
    }

    /// The entry of a field, to type into.
    pub const fn entry_mut(&mut self, field: RowField) -> &mut Entry {
        self.entries.entry_mut(field)
    }
}

/// A catch test as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CalibrationDraft {
    /// Its number within the pump.
    pub id: CalibrationId,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// Its numbers.
    pub entries: CalibrationEntries,
    /// Initials of who made it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub by: String,
    /// A remark.
    #[serde(default)]
    pub remark: String,
    /// The rows, in the order in which they were caught.
    pub rows: Vec<RowDraft>,
}

impl CalibrationDraft {
    /// A catch test with as many blank rows as it needs.
    #[must_use]
    pub fn blank(id: CalibrationId, at: u64, unit: SettingUnit) -> Self {
        let rows = (1..=LEAST_ROWS as u16).map(|id| RowDraft::blank(RowId(id), unit)).collect();
        Self { id, at, entries: CalibrationEntries::default(), by: String::new(), remark: String::new(), rows }
    }

    /// Whether nothing was caught yet.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.rows.iter().all(RowDraft::is_blank)
    }

    /// The row behind the others, with the time and the vessel of the last one.
    fn next_row(&self, unit: SettingUnit) -> RowDraft {
        let id = RowId(self.rows.iter().map(|row| row.id.0).max().map_or(1, |most| most.saturating_add(1)));
        let mut row = RowDraft::blank(id, unit);
        if let Some(last) = self.rows.last() {
            row.entries.seconds = carried(&last.entries.seconds);
            row.entries.tare = carried(&last.entries.tare);
        }
        row
    }

    /// Puts a row behind the others, with the time and the vessel of the last one.
    pub fn add_row(&mut self, unit: SettingUnit) -> RowId {
        let row = self.next_row(unit);
        let id = row.id;
        self.rows.push(row);
        id
    }

    /// The row into which the next catch can be typed; `None` while the last one is blank itself.
    #[must_use]
    pub fn spare_row(&self, unit: SettingUnit) -> Option<RowDraft> {
        self.rows.last().is_none_or(|last| !last.is_blank()).then(|| self.next_row(unit))
    }

    /// Adds the spare row where it has that number.
    pub fn open_row(&mut self, id: RowId, unit: SettingUnit) {
        if self.row(id).is_none() {
            self.rows.extend(self.spare_row(unit).filter(|spare| spare.id == id));
        }
    }

    /// Enters texts down a column from a row on, with as many new rows as that takes.
    pub fn fill_column(&mut self, from: RowId, field: RowField, texts: &[String], entered: Unit, unit: SettingUnit) {
        self.open_row(from, unit);
        let Some(first) = self.rows.iter().position(|row| row.id == from) else { return };
        for (at, text) in (first..).zip(texts) {
            if at == self.rows.len() {
                self.add_row(unit);
            }
            if let Some(row) = self.rows.get_mut(at) {
                *row.entry_mut(field) = Entry::typed(text.trim(), entered);
            }
        }
    }

    /// Carries a number of a row down to the rows below that have none of their own.
    pub fn carry_down(&mut self, from: RowId, field: RowField) {
        let Some(at) = self.rows.iter().position(|row| row.id == from) else { return };
        let (above, below) = self.rows.split_at_mut(at + 1);
        let Some(own) = above.last().map(|row| carried(row.entry(field))) else { return };
        for row in below {
            let entry = row.entry_mut(field);
            if !(entry.preset || entry.is_blank()) {
                break;
            }
            *entry = own.clone();
        }
    }

    /// The row with that number.
    #[must_use]
    pub fn row(&self, id: RowId) -> Option<&RowDraft> {
        self.rows.iter().find(|row| row.id == id)
    }

    /// The row with that number, to change.
    pub fn row_mut(&mut self, id: RowId) -> Option<&mut RowDraft> {
        self.rows.iter_mut().find(|row| row.id == id)
    }

    /// The entry of a field.
    #[must_use]
    pub const fn entry(&self, field: CalibrationField) -> &Entry {
        self.entries.entry(field)
    }

    /// The entry of a field, to type into.
    pub const fn entry_mut(&mut self, field: CalibrationField) -> &mut Entry {
        self.entries.entry_mut(field)
    }
}

/// An entry as it is carried to the next row: filled in, and not typed there.
fn carried(entry: &Entry) -> Entry {
    if entry.is_blank() { entry.clone() } else { Entry::preset(entry.text.clone(), entry.unit) }
}

/// One row that was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Caught {
    /// The row.
    pub row: RowId,
    /// The setting.
    pub setting: Setting,
    /// How long was caught.
    pub time: Time,
    /// What the scale showed.
    pub gross: Mass,
    /// The empty vessel; zero when the scale was set to zero with it.
    pub tare: Mass,
}

impl Caught {
    /// What was caught, without the vessel.
    #[must_use]
    pub fn net(&self) -> Mass {
        self.gross - self.tare
    }

    /// Mass flow, net mass per time.
    #[must_use]
    pub fn flow(&self) -> MassRate {
        self.net() / self.time
    }

    /// How far the flow is above a line of its test, kg/s on the setting's base unit.
    #[must_use]
    pub fn residual(&self, fit: &Fit) -> MassRate {
        let line = MassRate { value: fit.at(self.setting.0), ..self.flow() };
        self.flow() - line
    }

    fn point(&self) -> DataPoint {
        DataPoint { x: self.setting.0, y: self.flow().value }
    }
}

/// A row far off the line. It is marked and still counts, until the user excludes it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SuspectCatch {
    /// The row.
    pub row: RowId,
    /// Its externally studentised residual.
    pub studentised: f64,
    /// From which size on a row is pointed at.
    pub from: f64,
}

/// A catch test with its line. Counts when it has [`LEAST_ROWS`] rows; before that the line is a preview.
#[derive(Debug, Clone, PartialEq)]
pub struct Calibration {
    /// Its number within the pump.
    pub id: CalibrationId,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// Density of the liquid that was caught.
    pub density: MassDensity,
    /// Its temperature.
    pub temperature: Option<ThermodynamicTemperature>,
    /// The rows that count.
    pub rows: Vec<Caught>,
    /// The line through them.
    pub curve: Curve,
}

/// Lays the line through rows. By mass flow on setting, in base units.
///
/// # Errors
/// [`FitError`].
pub fn fit(rows: &[Caught], model: Model) -> Result<Fit, FitError> {
    Fit::through(&rows.iter().map(Caught::point).collect::<Vec<_>>(), model)
}

/// The rows far off a line: those whose externally studentised residual only one line in twenty has
/// anywhere (see [`Fit::suspicious_from`]). Leverage counts: a row at the end of the tested settings pulls
/// the line to itself, and its residual is judged the more strictly.
#[must_use]
pub fn suspects(rows: &[Caught], fit: &Fit) -> Vec<SuspectCatch> {
    let Some(from) = fit.suspicious_from() else { return Vec::new() };
    let points: Vec<_> = rows.iter().map(Caught::point).collect();
    let judged = rows.iter().zip(fit.residuals(&points));
    judged
        .filter_map(|(row, residual)| {
            let studentised = residual.studentised.filter(|size| size.abs() > from)?;
            Some(SuspectCatch { row: row.row, studentised, from })
        })
        .collect()
}
