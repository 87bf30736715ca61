//! What was typed on the weigh sheet, raw, and the choices made.

use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::Limit;
use crate::domain::trial::weigh_sheet::field::{WeighBoxes, WeighField};
use serde::{Deserialize, Serialize};

/// Which thickness is typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum ThicknessWay {
    /// Of the finished board; the recipe's sanding comes on top.
    #[default]
    Finished,
    /// As it leaves the press, and not sanded.
    Pressed,
}

impl ThicknessWay {
    /// All ways, in the order in which they are offered.
    pub const ALL: &'static [ThicknessWay] = &[Self::Finished, Self::Pressed];
}

/// Of which mass the overage is a share.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum OverageOf {
    /// Of the moist mass: moist · (1 + e) is weighed out.
    #[default]
    Moist,
    /// Of the oven-dry mass: moist + e · oven-dry is weighed out.
    OvenDry,
}

impl OverageOf {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [OverageOf] = &[Self::Moist, Self::OvenDry];
}

/// What the overage is weighed out of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum OverageOn {
    /// Of everything: resinated furnish is lost on the way to the mat, and all doses hold.
    #[default]
    Furnish,
    /// Of the fibre alone: fibre is spilled before the liquids are on it, which are weighed for what
    /// is left.
    Fibre,
}

impl OverageOn {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [OverageOn] = &[Self::Furnish, Self::Fibre];
}

/// When the water is sprayed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum WaterPlace {
    /// After all other liquids.
    #[default]
    Last,
    /// Before all other liquids.
    First,
}

impl WaterPlace {
    /// Both, in the order in which they are offered.
    pub const ALL: &'static [WaterPlace] = &[Self::Last, Self::First];
}

/// By what the flow of the spray is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum SprayWay {
    /// Volume per time, as of a pump.
    #[default]
    Volume,
    /// Mass per time, as of a nozzle that was caught and weighed.
    Mass,
}

impl SprayWay {
    /// Both, in the order in which they are offered.
    pub const ALL: &'static [SprayWay] = &[Self::Volume, Self::Mass];
}

/// Everything on the weigh sheet as entered.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(default)]
pub struct SheetDraft {
    /// Which thickness is typed.
    pub thickness_way: ThicknessWay,
    /// Of which mass the overage is a share.
    pub overage_of: OverageOf,
    /// What the overage is weighed out of.
    pub overage_on: OverageOn,
    /// When the water is sprayed.
    pub water_place: WaterPlace,
    /// By what the flow of the spray is known.
    pub spray_way: SprayWay,
    /// The numbers.
    pub boxes: WeighBoxes,
}

impl SheetDraft {
    /// The entry of a field.
    #[must_use]
    pub fn entry(&self, field: WeighField) -> &Entry {
        self.boxes.entry(field)
    }

    /// What a box may hold. A pressed thickness has none to fall back on in the recipe and must be typed.
    #[must_use]
    pub fn limit(&self, field: WeighField) -> Limit {
        match (field, self.thickness_way) {
            (WeighField::Thickness, ThicknessWay::Pressed) => Limit { optional: false, ..field.limit() },
            _ => field.limit(),
        }
    }

    /// The entry of a field, to type into.
    pub fn entry_mut(&mut self, field: WeighField) -> &mut Entry {
        self.boxes.entry_mut(field)
    }
}
