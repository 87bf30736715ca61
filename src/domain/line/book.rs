//! What a mill's line is: pumps, tanks, transport times, tolerances, and what is read off it, as typed.

use super::entries::{
    ConditionEntries, DeliveryEntries, RunningEntries, TableEntries, TableRows, ToleranceEntries, TransportEntries,
    UncertaintyEntries,
};
use super::field::LineField;
use crate::domain::line::period::draft::PeriodDraft;
use crate::domain::line::pumps::catch_test::{CalibrationDraft, CalibrationId, RowDraft, RowId};
use crate::domain::line::pumps::pump::{PumpDraft, PumpId};
use crate::domain::line::pumps::setting::SettingUnit;
use crate::domain::line::tanks::feeds::Feeds;
use crate::domain::line::tanks::tank::{TankDraft, TankId};
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Kind;
use serde::{Deserialize, Serialize};

/// The recipe and the time of readings.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReadOn {
    /// The recipe's name.
    pub recipe: String,
    /// When, milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
}

/// One mill's line as entered. Everything typed is kept as typed.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct LineBook {
    /// The pumps, in the order of the page.
    pub pumps: Vec<PumpDraft>,
    /// The tanks, in the order of the page.
    pub tanks: Vec<TankDraft>,
    /// Transport times.
    pub transport: TransportEntries,
    /// Tolerances.
    pub tolerances: ToleranceEntries,
    /// Uncertainties.
    pub uncertainties: UncertaintyEntries,
    /// What is read now; the pumps' readings are with the pumps.
    pub running: RunningEntries,
    /// On which recipe, and when, the last of that was read.
    pub read_on: Option<ReadOn>,
    /// A remark on what is read now.
    pub remark: String,
    /// At what the pumps are set, where that is not as in the recipe.
    pub conditions: ConditionEntries,
    /// On which recipe, and when, the last of that was entered.
    pub conditions_on: Option<ReadOn>,
    /// What the rows of the settings table mean.
    pub table_rows: TableRows,
    /// The settings table.
    pub table: TableEntries,
    /// Which liquid of the recipe is delivered anew.
    pub delivered: Option<LiquidId>,
    /// Into which tank, where several hold it; the first one as long as none is chosen.
    pub delivered_into: Option<TankId>,
    /// What its certificate says.
    pub delivery: DeliveryEntries,
    /// The batch that its certificate names.
    pub delivered_batch: String,
    /// What was read over a shift or a week.
    pub period: PeriodDraft,
}

impl LineBook {
    /// The pump with that number.
    #[must_use]
    pub fn pump(&self, id: PumpId) -> Option<&PumpDraft> {
        self.pumps.iter().find(|pump| pump.id == id)
    }

    /// The pump with that number, to change.
    pub fn pump_mut(&mut self, id: PumpId) -> Option<&mut PumpDraft> {
        self.pumps.iter_mut().find(|pump| pump.id == id)
    }

    /// The tank with that number.
    #[must_use]
    pub fn tank(&self, id: TankId) -> Option<&TankDraft> {
        self.tanks.iter().find(|tank| tank.id == id)
    }

    /// The tank with that number, to change.
    pub fn tank_mut(&mut self, id: TankId) -> Option<&mut TankDraft> {
        self.tanks.iter_mut().find(|tank| tank.id == id)
    }

    /// Adds a blank pump.
    pub fn add_pump(&mut self, feeds: Feeds, unit: SettingUnit) -> PumpId {
        let id = PumpId(self.pumps.iter().map(|pump| pump.id.0).max().map_or(1, |most| most.saturating_add(1)));
        self.pumps.push(PumpDraft::blank(id, feeds, unit));
        id
    }

    /// Adds a blank tank.
    pub fn add_tank(&mut self, feeds: Feeds) -> TankId {
        let id = TankId(self.tanks.iter().map(|tank| tank.id.0).max().map_or(1, |most| most.saturating_add(1)));
        self.tanks.push(TankDraft::blank(id, feeds));
        id
    }

    /// The catch test of a pump.
    #[must_use]
    pub fn calibration(&self, pump: PumpId, id: CalibrationId) -> Option<&CalibrationDraft> {
        self.pump(pump)?.calibration(id)
    }

    /// A row of a catch test.
    #[must_use]
    pub fn row(&self, pump: PumpId, calibration: CalibrationId, row: RowId) -> Option<&RowDraft> {
        self.calibration(pump, calibration)?.row(row)
    }

    /// What the box of a field shows: its entry, or in the spare row of a catch test what is carried down to it.
    #[must_use]
    pub fn entry_shown(&self, field: LineField) -> Option<Entry> {
        let spare = || match field {
            LineField::Row(pump, calibration, row, part) => {
                let pump = self.pump(pump)?;
                let spare = pump.calibration(calibration)?.spare_row(pump.unit)?;
                (spare.id == row).then(|| spare.entry(part).clone())
            }
            _ => None,
        };
        self.entry(field).cloned().or_else(spare)
    }

    /// Adds the spare row of a catch test where the field belongs to it, to be typed into.
    pub fn open_row(&mut self, field: LineField) {
        if let LineField::Row(pump, calibration, row, _) = field
            && let Some(pump) = self.pump_mut(pump)
        {
            let unit = pump.unit;
            if let Some(test) = pump.calibration_mut(calibration) {
                test.open_row(row, unit);
            }
        }
    }

    /// The entry of a field; `None` for something that is not there.
    #[must_use]
    pub fn entry(&self, field: LineField) -> Option<&Entry> {
        Some(match field {
            LineField::Pump(id, part) => self.pump(id)?.entry(part),
            LineField::Calibration(pump, id, part) => self.calibration(pump, id)?.entry(part),
            LineField::Row(pump, calibration, row, part) => self.row(pump, calibration, row)?.entry(part),
            LineField::Tank(id, part) => self.tank(id)?.entry(part),
            LineField::Transport(part) => self.transport.entry(part),
            LineField::Tolerance(part) => self.tolerances.entry(part),
            LineField::Uncertainty(part) => self.uncertainties.entry(part),
            LineField::Running(part) => self.running.entry(part),
            LineField::Condition(part) => self.conditions.entry(part),
            LineField::Table(part) => self.table.entry(part),
            LineField::Delivery(part) => self.delivery.entry(part),
            LineField::Period(part) => self.period.entries.entry(part),
            LineField::PeriodLiquid(id, part) => self.period.liquid(id)?.entries.entry(part),
        })
    }

    /// The entry of a field, to type into; `None` for something that is not there.
    pub fn entry_mut(&mut self, field: LineField) -> Option<&mut Entry> {
        Some(match field {
            LineField::Pump(id, part) => self.pump_mut(id)?.entry_mut(part),
            LineField::Calibration(pump, id, part) => self.pump_mut(pump)?.calibration_mut(id)?.entry_mut(part),
            LineField::Row(pump, calibration, row, part) => {
                self.pump_mut(pump)?.calibration_mut(calibration)?.row_mut(row)?.entry_mut(part)
            }
            LineField::Tank(id, part) => self.tank_mut(id)?.entry_mut(part),
            LineField::Transport(part) => self.transport.entry_mut(part),
            LineField::Tolerance(part) => self.tolerances.entry_mut(part),
            LineField::Uncertainty(part) => self.uncertainties.entry_mut(part),
            LineField::Running(part) => self.running.entry_mut(part),
            LineField::Condition(part) => self.conditions.entry_mut(part),
            LineField::Table(part) => self.table.entry_mut(part),
            LineField::Delivery(part) => self.delivery.entry_mut(part),
            LineField::Period(part) => self.period.entries.entry_mut(part),
            LineField::PeriodLiquid(id, part) => self.period.liquid_mut(id)?.entries.entry_mut(part),
        })
    }

    /// What a field measures.
    #[must_use]
    pub fn kind(&self, field: LineField) -> Kind {
        let unit = |pump| self.pump(pump).map_or(SettingUnit::Percent, |pump| pump.unit);
        match field {
            LineField::Pump(id, part) => self.pump(id).map_or(Kind::Ratio, |pump| pump.kind(part)),
            LineField::Calibration(_, _, part) => part.kind(),
            LineField::Row(pump, _, _, part) => part.kind_on(unit(pump)),
            LineField::Tank(id, part) => self.tank(id).map_or(Kind::Ratio, |tank| tank.kind(part)),
            LineField::Transport(part) => part.kind(),
            LineField::Tolerance(part) => part.kind(),
            LineField::Uncertainty(part) => part.kind(),
            LineField::Running(part) => part.kind(),
            LineField::Condition(part) => part.kind(),
            LineField::Table(part) => part.kind(),
            LineField::Delivery(part) => part.kind(),
            LineField::Period(part) => part.kind(),
            LineField::PeriodLiquid(_, part) => part.kind(),
        }
    }
}
