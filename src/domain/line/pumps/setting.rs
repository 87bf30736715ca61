//! What a pump's drive is set to.

use crate::domain::limit::Limit;
use crate::domain::limit::Source::CommonPractice;
use crate::quantity::{Amount, Kind, Unit};
use serde::{Deserialize, Serialize};

/// The scale on a pump's drive. Fixed by the pump: 30 Hz at the inverter says nothing about percent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SettingUnit {
    /// Percent of the full setting.
    Percent,
    /// Frequency of the inverter, Hz.
    Hertz,
    /// Speed of the shaft, turns a minute.
    Rpm,
}

impl SettingUnit {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [SettingUnit] = &[Self::Percent, Self::Hertz, Self::Rpm];

    /// The unit of the boxes.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::Percent => Unit::Percent,
            Self::Hertz => Unit::Hertz,
            Self::Rpm => Unit::TurnPerMinute,
        }
    }

    /// What a setting measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Percent => Kind::SettingPercent,
            Self::Hertz => Kind::SettingFrequency,
            Self::Rpm => Kind::SettingRotation,
        }
    }

    /// The step of a drive that was not entered. Common practice, no source: 0.1 %, 0.1 Hz, 1 rpm.
    #[must_use]
    pub const fn usual_step(self) -> Setting {
        match self {
            Self::Percent => Setting(0.001),
            Self::Hertz => Setting(0.1),
            Self::Rpm => Setting(1.0),
        }
    }

    /// The settings that a drive of this scale can be at.
    #[must_use]
    pub const fn limit(self) -> Limit {
        match self {
            Self::Percent => Limit::from_to(Unit::Percent, 0.0, 150.0).usually(5.0, 100.0, CommonPractice),
            Self::Hertz => Limit::from_to(Unit::Hertz, 0.0, 400.0).usually(5.0, 70.0, CommonPractice),
            Self::Rpm => Limit::from_to(Unit::TurnPerMinute, 0.0, 20_000.0).usually(5.0, 3_600.0, CommonPractice),
        }
    }

    /// The steps that it can have; blank for the usual one.
    #[must_use]
    pub const fn step_limit(self) -> Limit {
        match self {
            Self::Percent => Limit::above_to(Unit::Percent, 0.0, 10.0),
            Self::Hertz => Limit::above_to(Unit::Hertz, 0.0, 10.0),
            Self::Rpm => Limit::above_to(Unit::TurnPerMinute, 0.0, 100.0),
        }
        .optional()
    }

    /// What mass flow per setting measures. In percent it is the flow per full setting, 100 %.
    #[must_use]
    pub const fn slope_kind(self) -> Kind {
        match self {
            Self::Percent => Kind::LiquidFlow,
            Self::Hertz => Kind::FlowPerFrequency,
            Self::Rpm => Kind::FlowPerRotation,
        }
    }
}

/// A setting on its pump's scale, in the scale's base unit: a fraction of full, Hz, turns a minute.
///
/// No uom quantity: three scales of drives share the type, and they never meet but in one pump.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Setting(pub f64);

impl Setting {
    /// The setting with its unit.
    #[must_use]
    pub const fn amount(self, unit: SettingUnit) -> Amount {
        Amount::from_base(unit.kind(), self.0)
    }
}

/// From one setting to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SettingRange {
    /// Lowest.
    pub low: Setting,
    /// Highest.
    pub high: Setting,
}
