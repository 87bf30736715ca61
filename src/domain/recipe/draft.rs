//! What the user typed, raw: every number as text with the unit of its box, and the choices made.

use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::liquid::{DoseWay, LiquidId, Role, Substance};
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

/// One box: the text as typed, never tidied up, and the unit that stood beside it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct Entry {
    /// What was typed.
    pub text: String,
    /// The unit beside the box when it was typed.
    #[cfg_attr(test, schemars(with = "String"))]
    pub unit: Unit,
    /// Filled in by the app and not yet touched by the user.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub preset: bool,
}

impl Entry {
    /// A typed entry.
    #[must_use]
    pub fn typed(text: impl Into<String>, unit: Unit) -> Self {
        Self { text: text.into(), unit, preset: false }
    }

    /// A value that the app filled in.
    #[must_use]
    pub fn preset(text: impl Into<String>, unit: Unit) -> Self {
        Self { text: text.into(), unit, preset: true }
    }

    /// An empty box.
    #[must_use]
    pub fn empty(unit: Unit) -> Self {
        Self::preset("", unit)
    }

    /// Whether nothing was typed.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }
}

/// What fixes the fibre flow.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FeedWay {
    /// An oven-dry fibre flow is given.
    OvenDry,
    /// A belt scale's reading of moist fibre is given.
    Belt,
    /// The line speed is given, the fibre flow follows.
    LineSpeed,
    /// The press factor is given, the fibre flow follows.
    PressFactor,
}

impl FeedWay {
    /// All ways, in the order in which they are offered.
    pub const ALL: &'static [FeedWay] = &[Self::OvenDry, Self::Belt, Self::LineSpeed, Self::PressFactor];
}

/// What fixes the water dose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum WaterWay {
    /// As much as the mat moisture wanted needs.
    ToMatMoisture,
    /// A fixed dose per oven-dry fibre.
    OnFibre,
    /// A fixed flow.
    Flow,
    /// No water is dosed.
    None,
}

impl WaterWay {
    /// All ways, in the order in which they are offered.
    pub const ALL: &'static [WaterWay] = &[Self::ToMatMoisture, Self::OnFibre, Self::Flow, Self::None];
}

/// One liquid as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct LiquidDraft {
    /// Its number within the recipe.
    pub id: LiquidId,
    /// The mill's name for it.
    pub name: String,
    /// What it is for.
    pub role: Role,
    /// What it is made of.
    pub substance: Substance,
    /// How its dose is entered.
    pub dose_way: DoseWay,
    /// The dose, in the way of `dose_way`.
    pub dose: Entry,
    /// Solids as delivered.
    pub solids: Entry,
    /// Density as delivered.
    pub density: Entry,
    /// Solids at the spray nozzle, blank when it is sprayed as delivered.
    pub spray_solids: Entry,
    /// Price as delivered, blank when unknown.
    pub price: Entry,
    /// Where the values come from, such as a certificate; free text.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub source: String,
}

/// Everything on the recipe page as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct Draft {
    /// What fixes the fibre flow.
    pub feed_way: FeedWay,
    /// What fixes the water dose.
    pub water_way: WaterWay,
    /// The liquids, in order of addition.
    pub liquids: Vec<LiquidDraft>,
    /// The other numbers.
    pub plain: Plain,
}

/// Declares the entries outside the liquids once: the struct, and the way from a [`Field`] to them.
macro_rules! plain {
    ($( $name:ident: $field:ident, $unit:ident, $preset:literal; )*) => {
        /// The numbers outside the liquids.
        #[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
        #[cfg_attr(test, derive(schemars::JsonSchema))]
        #[serde(default)]
        #[allow(missing_docs, reason = "each is the field of the same name")]
        pub struct Plain { $( pub $name: Entry, )* }

        impl Default for Plain {
            /// The boxes of a new recipe: the usual values filled in, the rest blank.
            fn default() -> Self {
                Self { $( $name: Entry::preset($preset, Unit::$unit), )* }
            }
        }

        impl Plain {
            fn entry(&self, field: Field) -> Option<&Entry> {
                match field { $( Field::$field => Some(&self.$name), )* Field::Liquid(..) => None }
            }

            fn entry_mut(&mut self, field: Field) -> Option<&mut Entry> {
                match field { $( Field::$field => Some(&mut self.$name), )* Field::Liquid(..) => None }
            }
        }
    };
}

plain! {
    fibre_flow: FibreFlow, KilogramPerHour, "";
    wanted_line_speed: WantedLineSpeed, MetrePerMinute, "";
    wanted_press_factor: WantedPressFactor, SecondPerMillimetre, "";
    fibre_moisture: FibreMoisture, PercentDryBasis, "";
    fibre_price: FibrePrice, PerTonne, "";
    mat_moisture: MatMoisture, PercentDryBasis, "";
    drying_loss: DryingLoss, Percent, "0";
    water_on_fibre: WaterOnFibre, Percent, "";
    water_flow: WaterFlow, KilogramPerHour, "";
    board_density: BoardDensity, KilogramPerCubicMetre, "";
    board_moisture: BoardMoisture, PercentDryBasis, "7";
    thickness: Thickness, Millimetre, "";
    sand_top: SandTop, Millimetre, "0";
    sand_bottom: SandBottom, Millimetre, "0";
    surface_ratio: SurfaceRatio, One, "1";
    mat_width: MatWidth, Metre, "";
    spread_width: SpreadWidth, Metre, "";
    press_length: PressLength, Metre, "";
    reject: Reject, Percent, "0";
    area_yield: AreaYield, Percent, "100";
    exit_moisture: ExitMoisture, PercentDryBasis, "";
    mat_bulk_density: MatBulkDensity, KilogramPerCubicMetre, "";
    mat_temperature: MatTemperature, Celsius, "30";
    surface_spray: SurfaceSpray, GramPerSquareMetre, "0";
    shift_hours: ShiftHours, Hour, "8";
    fibre_supply: FibreSupply, KilogramPerHour, "";
    blender_capacity: BlenderCapacity, KilogramPerHour, "";
    least_press_factor: LeastPressFactor, SecondPerMillimetre, "";
    top_line_speed: TopLineSpeed, MetrePerMinute, "";
}

impl Default for Draft {
    /// A blank recipe: nothing typed, the usual values filled in.
    fn default() -> Self {
        Self {
            feed_way: FeedWay::OvenDry,
            water_way: WaterWay::ToMatMoisture,
            liquids: Vec::new(),
            plain: Plain::default(),
        }
    }
}

impl LiquidDraft {
    /// A blank liquid.
    #[must_use]
    pub fn blank(id: LiquidId, role: Role) -> Self {
        Self {
            id,
            name: String::new(),
            role,
            substance: Substance::Other,
            dose_way: DoseWay::SolidsOnFibre,
            dose: Entry::empty(Unit::Percent),
            solids: Entry::empty(Unit::Percent),
            density: Entry::empty(Unit::KilogramPerCubicMetre),
            spray_solids: Entry::empty(Unit::Percent),
            price: Entry::empty(Unit::PerTonne),
            source: String::new(),
        }
    }

    /// The entry of a field.
    #[must_use]
    pub fn entry(&self, field: LiquidField) -> &Entry {
        match field {
            LiquidField::Dose => &self.dose,
            LiquidField::Solids => &self.solids,
            LiquidField::Density => &self.density,
            LiquidField::SpraySolids => &self.spray_solids,
            LiquidField::Price => &self.price,
        }
    }

    /// The entry of a field, to type into.
    pub fn entry_mut(&mut self, field: LiquidField) -> &mut Entry {
        match field {
            LiquidField::Dose => &mut self.dose,
            LiquidField::Solids => &mut self.solids,
            LiquidField::Density => &mut self.density,
            LiquidField::SpraySolids => &mut self.spray_solids,
            LiquidField::Price => &mut self.price,
        }
    }
}

impl Draft {
    /// The liquid with that number, if it is there.
    #[must_use]
    pub fn liquid(&self, id: LiquidId) -> Option<&LiquidDraft> {
        self.liquids.iter().find(|liquid| liquid.id == id)
    }

    /// The liquid with that number, to change.
    pub fn liquid_mut(&mut self, id: LiquidId) -> Option<&mut LiquidDraft> {
        self.liquids.iter_mut().find(|liquid| liquid.id == id)
    }

    /// A number that no liquid of this recipe has.
    #[must_use]
    pub fn free_id(&self) -> LiquidId {
        let taken = |id: &u16| self.liquids.iter().any(|liquid| liquid.id.0 == *id);
        LiquidId((1..=u16::MAX).find(|id| !taken(id)).unwrap_or(u16::MAX))
    }

    /// The entry of a field; `None` for a liquid that is not there.
    #[must_use]
    pub fn entry(&self, field: Field) -> Option<&Entry> {
        match field {
            Field::Liquid(id, part) => self.liquid(id).map(|liquid| liquid.entry(part)),
            plain => self.plain.entry(plain),
        }
    }

    /// The entry of a field, to type into; `None` for a liquid that is not there.
    pub fn entry_mut(&mut self, field: Field) -> Option<&mut Entry> {
        match field {
            Field::Liquid(id, part) => self.liquid_mut(id).map(|liquid| liquid.entry_mut(part)),
            plain => self.plain.entry_mut(plain),
        }
    }

    /// What a field measures.
    #[must_use]
    pub fn kind(&self, field: Field) -> Kind {
        match field {
            Field::Liquid(id, part) => self.liquid(id).map_or(Kind::Ratio, |liquid| part.kind(liquid.dose_way)),
            plain => plain.kind(),
        }
    }
}
