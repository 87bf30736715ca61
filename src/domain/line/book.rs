//! What a mill's line is: pumps, tanks, transport times, tolerances, and what is read off it, as typed.

use super::field::LineField;
use super::group::group;
use crate::domain::line::pumps::catch_test::{
    CalibrationDraft, CalibrationField, CalibrationId, RowDraft, RowField, RowId,
};
use crate::domain::line::pumps::pump::{PumpDraft, PumpId};
use crate::domain::line::pumps::setting::SettingUnit;
use crate::domain::line::tanks::feeds::Feeds;
use crate::domain::line::tanks::tank::{TankDraft, TankId};
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Kind;
use serde::{Deserialize, Serialize};

group! {
    /// How long material travels.
    TransportDraft,
    /// A time of the transport.
    TransportField;
    /// From the blender to the former, bunker included.
    blender_to_former: BlenderToFormer, RunTime, Second, "";
    /// From the former to the press.
    former_to_press: FormerToPress, RunTime, Second, "";
    /// From the press exit to the saw.
    press_to_saw: PressToSaw, RunTime, Second, "";
    /// How long old and new furnish mix in blender, bunker and former.
    mixing: Mixing, RunTime, Second, "0";
    /// Between two groups of steps of a changeover.
    step_gap: StepGap, RunTime, Second, "10";
}

group! {
    /// How far what runs may be from the recipe.
    ToleranceDraft,
    /// A tolerance.
    ToleranceField;
    /// A dose, relative.
    dose: Dose, Share, Percent, "3";
    /// A moisture, in points.
    moisture: Moisture, Share, Percent, "0.5";
    /// The oven-dry mat weight, relative.
    mat_weight: MatWeight, Share, Percent, "2";
    /// The board density, relative.
    density: Density, Share, Percent, "3";
}

group! {
    /// What is read off the running line beside the pumps.
    RunningDraft,
    /// A reading.
    RunningField;
    /// Reading of the belt scale, moist fibre.
    belt: Belt, FibreFlow, KilogramPerHour, "";
    /// Moisture of that fibre.
    moisture: Moisture, Moisture, PercentDryBasis, "";
    /// Area of a mat sample.
    sample_area: SampleArea, SampleArea, SquareMetre, "";
    /// Its mass, moist.
    sample_mass: SampleMass, BatchMass, Kilogram, "";
    /// Its moisture.
    sample_moisture: SampleMoisture, Moisture, PercentDryBasis, "";
}

group! {
    /// The rows and columns of a rate card.
    CardDraft,
    /// A number of the rate card.
    CardField;
    /// Lowest fibre flow.
    flow_from: FlowFrom, FibreFlow, KilogramPerHour, "";
    /// Highest fibre flow.
    flow_to: FlowTo, FibreFlow, KilogramPerHour, "";
    /// From one row to the next.
    flow_step: FlowStep, FibreFlow, KilogramPerHour, "";
    /// Lowest fibre moisture.
    moisture_from: MoistureFrom, Moisture, PercentDryBasis, "";
    /// Highest fibre moisture.
    moisture_to: MoistureTo, Moisture, PercentDryBasis, "";
    /// From one column to the next, in points of dry-basis moisture.
    moisture_step: MoistureStep, Share, Percent, "1";
}

group! {
    /// What a certificate says of a new delivery. Blank boxes change nothing.
    DeliveryDraft,
    /// A number of a new delivery.
    DeliveryField;
    /// Solids.
    solids: Solids, Solids, Percent, "";
    /// Density at the certificate's temperature.
    density: Density, LiquidDensity, KilogramPerCubicMetre, "";
    /// Temperature at which the density was measured.
    measured_at: MeasuredAt, Temperature, Celsius, "20";
    /// Temperature at which it will be pumped.
    pumped_at: PumpedAt, Temperature, Celsius, "";
    /// How much its volume grows per degree.
    expansion: Expansion, Expansion, PercentPerKelvin, "";
}

/// What the rows of a rate card mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CardRows {
    /// Oven-dry fibre flow.
    OvenDry,
    /// What the belt scale reads.
    #[default]
    Belt,
}

impl CardRows {
    /// Both, in the order in which they are offered.
    pub const ALL: &'static [CardRows] = &[Self::Belt, Self::OvenDry];
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
    pub transport: TransportDraft,
    /// Tolerances.
    pub tolerances: ToleranceDraft,
    /// What is read now; the pumps' readings stand with the pumps.
    pub running: RunningDraft,
    /// A remark on what is read now.
    pub remark: String,
    /// What the rows of the rate card mean.
    pub card_rows: CardRows,
    /// The rate card.
    pub card: CardDraft,
    /// Which liquid of the recipe is delivered anew.
    pub delivered: Option<LiquidId>,
    /// What its certificate says.
    pub delivery: DeliveryDraft,
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
            LineField::Running(part) => self.running.entry(part),
            LineField::Card(part) => self.card.entry(part),
            LineField::Delivery(part) => self.delivery.entry(part),
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
            LineField::Running(part) => self.running.entry_mut(part),
            LineField::Card(part) => self.card.entry_mut(part),
            LineField::Delivery(part) => self.delivery.entry_mut(part),
        })
    }

    /// What a field measures.
    #[must_use]
    pub fn kind(&self, field: LineField) -> Kind {
        let unit = |pump| self.pump(pump).map_or(SettingUnit::Percent, |pump| pump.unit);
        match field {
            LineField::Pump(id, part) => self.pump(id).map_or(Kind::Ratio, |pump| pump.kind(part)),
            LineField::Calibration(_, _, part) => CalibrationField::kind(part),
            LineField::Row(pump, _, _, part) => RowField::kind(part, unit(pump)),
            LineField::Tank(id, part) => self.tank(id).map_or(Kind::Ratio, |tank| tank.kind(part)),
            LineField::Transport(part) => part.kind(),
            LineField::Tolerance(part) => part.kind(),
            LineField::Running(part) => part.kind(),
            LineField::Card(part) => part.kind(),
            LineField::Delivery(part) => part.kind(),
        }
    }
}
