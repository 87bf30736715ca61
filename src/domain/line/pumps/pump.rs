//! Pumps, as entered and as checked.

use crate::domain::line::pumps::catch_test::{Calibration, CalibrationDraft, CalibrationId};
use crate::domain::line::pumps::metering::Metering;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::line::tanks::feeds::Feeds;
use crate::domain::recipe::draft::Entry;
use crate::quantity::{Kind, Unit};
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

/// A number of a pump.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PumpField {
    /// Lowest setting that the pump may run at.
    LeastSetting,
    /// Highest setting that the pump may run at.
    MostSetting,
    /// Share of the liquid's flow that this pump delivers.
    Share,
    /// How many nozzles it can feed.
    Nozzles,
    /// Least flow of one nozzle.
    NozzleLeast,
    /// Greatest flow of one nozzle.
    NozzleMost,
    /// Volume of the pipe from the valve to the nozzles.
    PipeVolume,
    /// Step of the drive's setting.
    SettingStep,
    /// Reading of its flow meter, in the way of its [`ReadingWay`].
    Reading,
    /// Setting at which it runs now.
    PresentSetting,
}

impl PumpField {
    /// All of them, in the order of the page.
    pub const ALL: &'static [PumpField] = &[
        Self::LeastSetting,
        Self::MostSetting,
        Self::Share,
        Self::Nozzles,
        Self::NozzleLeast,
        Self::NozzleMost,
        Self::PipeVolume,
        Self::SettingStep,
        Self::Reading,
        Self::PresentSetting,
    ];

    /// The stable key of the field.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::LeastSetting => "least_setting",
            Self::MostSetting => "most_setting",
            Self::Share => "share",
            Self::Nozzles => "nozzles",
            Self::NozzleLeast => "nozzle_least",
            Self::NozzleMost => "nozzle_most",
            Self::PipeVolume => "pipe_volume",
            Self::SettingStep => "setting_step",
            Self::Reading => "reading",
            Self::PresentSetting => "present_setting",
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
    /// Lowest setting, blank without a limit.
    pub least_setting: Entry,
    /// Highest setting, blank without a limit.
    pub most_setting: Entry,
    /// Share of the liquid's flow.
    pub share: Entry,
    /// Number of nozzles, blank to leave them out.
    pub nozzles: Entry,
    /// Least flow of one nozzle.
    pub nozzle_least: Entry,
    /// Greatest flow of one nozzle.
    pub nozzle_most: Entry,
    /// Volume of the pipe from the valve to the nozzles.
    pub pipe_volume: Entry,
    /// Step of the drive's setting, blank for the usual one.
    pub setting_step: Entry,
    /// Reading of its flow meter.
    pub reading: Entry,
    /// Setting at which it runs now.
    pub present_setting: Entry,
    /// Its catch tests, the oldest first; the last one counts.
    #[serde(default)]
    pub calibrations: Vec<CalibrationDraft>,
}

impl PumpDraft {
    /// A pump without a name or a catch test.
    #[must_use]
    pub fn blank(id: PumpId, feeds: Feeds, unit: SettingUnit) -> Self {
        Self {
            id,
            name: String::new(),
            feeds,
            unit,
            metering: Metering::Volume,
            model: Model::WithIntercept,
            reading_way: ReadingWay::MassMeter,
            least_setting: Entry::empty(unit.unit()),
            most_setting: Entry::empty(unit.unit()),
            share: Entry::preset("100", Unit::Percent),
            nozzles: Entry::empty(Unit::One),
            nozzle_least: Entry::empty(Unit::LitrePerHour),
            nozzle_most: Entry::empty(Unit::LitrePerHour),
            pipe_volume: Entry::empty(Unit::Litre),
            setting_step: Entry::empty(unit.unit()),
            reading: Entry::empty(Unit::KilogramPerHour),
            present_setting: Entry::empty(unit.unit()),
            calibrations: Vec::new(),
        }
    }

    /// Changes the scale of the drive. The numbers typed stay, and now stand on the new scale.
    pub fn set_unit(&mut self, unit: SettingUnit) {
        self.unit = unit;
        self.least_setting.unit = unit.unit();
        self.most_setting.unit = unit.unit();
        self.setting_step.unit = unit.unit();
        self.present_setting.unit = unit.unit();
        for row in self.calibrations.iter_mut().flat_map(|calibration| &mut calibration.rows) {
            row.setting.unit = unit.unit();
        }
    }

    /// Changes how its flow is read. A number of another kind makes no sense there and goes.
    pub fn set_reading_way(&mut self, way: ReadingWay) {
        if way != self.reading_way {
            self.reading_way = way;
            self.reading = Entry::empty(match way {
                ReadingWay::MassMeter => Unit::KilogramPerHour,
                ReadingWay::VolumeMeter => Unit::LitrePerHour,
            });
        }
    }

    /// The entry of a field.
    #[must_use]
    pub const fn entry(&self, field: PumpField) -> &Entry {
        match field {
            PumpField::LeastSetting => &self.least_setting,
            PumpField::MostSetting => &self.most_setting,
            PumpField::Share => &self.share,
            PumpField::Nozzles => &self.nozzles,
            PumpField::NozzleLeast => &self.nozzle_least,
            PumpField::NozzleMost => &self.nozzle_most,
            PumpField::PipeVolume => &self.pipe_volume,
            PumpField::SettingStep => &self.setting_step,
            PumpField::Reading => &self.reading,
            PumpField::PresentSetting => &self.present_setting,
        }
    }

    /// The entry of a field, to type into.
    pub const fn entry_mut(&mut self, field: PumpField) -> &mut Entry {
        match field {
            PumpField::LeastSetting => &mut self.least_setting,
            PumpField::MostSetting => &mut self.most_setting,
            PumpField::Share => &mut self.share,
            PumpField::Nozzles => &mut self.nozzles,
            PumpField::NozzleLeast => &mut self.nozzle_least,
            PumpField::NozzleMost => &mut self.nozzle_most,
            PumpField::PipeVolume => &mut self.pipe_volume,
            PumpField::SettingStep => &mut self.setting_step,
            PumpField::Reading => &mut self.reading,
            PumpField::PresentSetting => &mut self.present_setting,
        }
    }

    /// What a field measures.
    #[must_use]
    pub const fn kind(&self, field: PumpField) -> Kind {
        match field {
            PumpField::LeastSetting | PumpField::MostSetting | PumpField::SettingStep | PumpField::PresentSetting => {
                self.unit.kind()
            }
            PumpField::Share => Kind::Share,
            PumpField::Nozzles => Kind::Ratio,
            PumpField::NozzleLeast | PumpField::NozzleMost => Kind::PumpFlow,
            PumpField::PipeVolume => Kind::BatchVolume,
            PumpField::Reading => match self.reading_way {
                ReadingWay::MassMeter => Kind::LiquidFlow,
                ReadingWay::VolumeMeter => Kind::PumpFlow,
            },
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
        let last = self.calibrations.last().map(|test| &test.density).filter(|density| !density.is_blank());
        let offered = last.or(density).map(|density| Entry::preset(density.text.clone(), density.unit));
        let id = self.start_calibration(at);
        if let Some((test, density)) = self.calibration_mut(id).zip(offered) {
            test.density = density;
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
