//! Pumps, as entered and as checked.

use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::line::pumps::catch_test::{Calibration, CalibrationDraft, CalibrationId};
use crate::domain::line::pumps::metering::Metering;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::line::tanks::feeds::Feeds;
use crate::domain::recipe::draft::Entry;
use crate::quantity::{Kind, Unit, Unit as U};
use crate::statistics::regression::Model;
use serde::{Deserialize, Serialize};
use uom::si::f64::{Ratio, Volume, VolumeRate};

/// Names a pump of the mill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct PumpId(pub u16);

/// Which flow meter a pump has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReadingWay {
    /// A flow meter by mass.
    MassMeter,
    /// A flow meter by volume.
    VolumeMeter,
}

impl ReadingWay {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [ReadingWay] = &[Self::MassMeter, Self::VolumeMeter];
}

const fn nozzle() -> Limit {
    Limit::above_to(U::LitrePerHour, 0.0, 100_000.0).optional()
}

form! {
    /// A number of a pump. Settings are on the scale of its drive, here in percent.
    enum PumpField {
        /// Lowest setting that the pump may run at; blank without a limit.
        LeastSetting: least_setting, SettingPercent, Percent, "", SettingUnit::Percent.limit().optional();
        /// Highest setting that the pump may run at; blank without a limit.
        MostSetting: most_setting, SettingPercent, Percent, "", SettingUnit::Percent.limit().optional();
        /// Share of the liquid's flow that this pump delivers.
        Share: share, Share, Percent, "100", Limit::above_to(U::Percent, 0.0, 100.0);
        /// How many nozzles it can feed; blank to leave them out.
        Nozzles: nozzles, Ratio, One, "", Limit::from_to(U::One, 1.0, 500.0).optional();
        /// Minimum flow of one nozzle.
        NozzleLeast: nozzle_least, PumpFlow, LitrePerHour, "", nozzle();
        /// Maximum flow of one nozzle.
        NozzleMost: nozzle_most, PumpFlow, LitrePerHour, "", nozzle();
        /// Volume of the pipe from the valve to the nozzles.
        PipeVolume: pipe_volume, BatchVolume, Litre, "", Limit::above_to(U::Litre, 0.0, 10_000.0).optional();
        /// Step of the drive's setting; blank for the usual one.
        SettingStep: setting_step, SettingPercent, Percent, "", SettingUnit::Percent.step_limit();
        /// Reading of its flow meter, in the way of its [`ReadingWay`], here by mass.
        Reading: reading, LiquidFlow, KilogramPerHour, "", Limit::from_to(U::KilogramPerHour, 0.0, 1e6).optional();
        /// Setting at which it runs now.
        PresentSetting: present_setting, SettingPercent, Percent, "", SettingUnit::Percent.limit().optional();
    }

    /// The numbers of a pump as entered.
    struct PumpEntries;
}

impl PumpField {
    /// Whether it is a number on the scale of the drive.
    const fn is_on_drive(self) -> bool {
        matches!(self, Self::LeastSetting | Self::MostSetting | Self::SettingStep | Self::PresentSetting)
    }

    /// What the field may hold on this drive and with this flow meter.
    #[must_use]
    pub const fn limit_on(self, unit: SettingUnit, way: ReadingWay) -> Limit {
        match (self, way) {
            (Self::LeastSetting | Self::MostSetting | Self::PresentSetting, _) => unit.limit().optional(),
            (Self::SettingStep, _) => unit.step_limit(),
            (Self::Reading, ReadingWay::VolumeMeter) => Limit::from_to(U::LitrePerHour, 0.0, 1e6).optional(),
            _ => self.limit(),
        }
    }
}

/// A pump as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PumpDraft {
    /// Its number within the mill.
    pub id: PumpId,
    /// The mill's name for it.
    pub name: String,
    /// What it delivers.
    pub feeds: Feeds,
    /// The scale of its drive.
    pub unit: SettingUnit,
    /// What its setting fixes.
    pub metering: Metering,
    /// Which line is laid through its catch tests.
    pub model: Model,
    /// Which flow meter it has.
    pub reading_way: ReadingWay,
    /// Its numbers.
    pub entries: PumpEntries,
    /// Its catch tests, the oldest first; the last one counts.
    #[serde(default)]
    pub calibrations: Vec<CalibrationDraft>,
}

impl PumpDraft {
    /// A pump without a name or a catch test.
    #[must_use]
    pub fn blank(id: PumpId, feeds: Feeds, unit: SettingUnit) -> Self {
        let mut pump = Self {
            id,
            name: String::new(),
            feeds,
            unit,
            metering: Metering::Volume,
            model: Model::WithIntercept,
            reading_way: ReadingWay::MassMeter,
            entries: PumpEntries::default(),
            calibrations: Vec::new(),
        };
        pump.set_unit(unit);
        pump
    }

    /// Changes the scale of the drive. The numbers typed stay, and are now on the new scale.
    pub fn set_unit(&mut self, unit: SettingUnit) {
        self.unit = unit;
        for field in PumpField::ALL.iter().filter(|field| field.is_on_drive()) {
            self.entries.entry_mut(*field).unit = unit.unit();
        }
        for row in self.calibrations.iter_mut().flat_map(|calibration| &mut calibration.rows) {
            row.entries.setting.unit = unit.unit();
        }
    }

    /// Changes how its flow is read. A number of another kind makes no sense there and goes.
    pub fn set_reading_way(&mut self, way: ReadingWay) {
        if way != self.reading_way {
            self.reading_way = way;
            self.entries.reading = Entry::empty(match way {
                ReadingWay::MassMeter => Unit::KilogramPerHour,
                ReadingWay::VolumeMeter => Unit::LitrePerHour,
            });
        }
    }

    /// The entry of a field.
    #[must_use]
    pub const fn entry(&self, field: PumpField) -> &Entry {
        self.entries.entry(field)
    }

    /// The entry of a field, to type into.
    pub const fn entry_mut(&mut self, field: PumpField) -> &mut Entry {
        self.entries.entry_mut(field)
    }

    /// What a field measures.
    #[must_use]
    pub const fn kind(&self, field: PumpField) -> Kind {
        match (field, self.reading_way) {
            (PumpField::Reading, ReadingWay::VolumeMeter) => Kind::PumpFlow,
            _ if field.is_on_drive() => self.unit.kind(),
            _ => field.kind(),
        }
    }

    /// The catch test with that number.
    #[must_use]
    pub fn calibration(&self, id: CalibrationId) -> Option<&CalibrationDraft> {
        self.calibrations.iter().find(|calibration| calibration.id == id)
    }

    /// The catch test with that number, to change.
    pub fn calibration_mut(&mut self, id: CalibrationId) -> Option<&mut CalibrationDraft> {
        self.calibrations.iter_mut().find(|calibration| calibration.id == id)
    }

    /// Puts a blank catch test behind the others: `at` milliseconds since 1970-01-01 00:00 UTC.
    pub fn start_calibration(&mut self, at: u64) -> CalibrationId {
        let id = CalibrationId(self.calibrations.iter().map(|c| c.id.0).max().map_or(1, |most| most.saturating_add(1)));
        self.calibrations.push(CalibrationDraft::blank(id, at, self.unit));
        id
    }

    /// The same with the density of the last one, or else `density`, that of the recipe, to be checked.
    pub fn offer_calibration(&mut self, at: u64, density: Option<&Entry>) -> CalibrationId {
        let last = self.calibrations.last().map(|test| &test.entries.density).filter(|density| !density.is_blank());
        let offered = last.or(density).map(|density| Entry::preset(density.text.clone(), density.unit));
        let id = self.start_calibration(at);
        if let Some((test, density)) = self.calibration_mut(id).zip(offered) {
            test.entries.density = density;
        }
        id
    }
}

/// The nozzles behind a pump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nozzles {
    /// How many there are.
    pub count: u32,
    /// Least flow of one.
    pub least: VolumeRate,
    /// Greatest flow of one.
    pub most: VolumeRate,
}

/// A pump that was checked. What was not typed, or not sound, is `None`.
#[derive(Debug, Clone, PartialEq)]
pub struct Pump {
    /// Its number within the mill.
    pub id: PumpId,
    /// What it delivers.
    pub feeds: Feeds,
    /// The scale of its drive.
    pub unit: SettingUnit,
    /// What its setting fixes.
    pub metering: Metering,
    /// Lowest setting that it may run at.
    pub least: Option<Setting>,
    /// Highest setting that it may run at.
    pub most: Option<Setting>,
    /// Share of the liquid's flow that it delivers.
    pub share: Ratio,
    /// Step of its drive.
    pub step: Setting,
    /// Its nozzles.
    pub nozzles: Option<Nozzles>,
    /// Volume of the pipe to the nozzles.
    pub pipe: Option<Volume>,
    /// Its sound catch tests, the oldest first.
    pub calibrations: Vec<Calibration>,
    /// Whether it has catch tests and the last one is not sound: the check of the line says what is wrong with it.
    pub faulty_test: bool,
}

impl Pump {
    /// The last sound catch test.
    #[must_use]
    pub fn last(&self) -> Option<&Calibration> {
        self.calibrations.last()
    }
}
