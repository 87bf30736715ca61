//! What the user typed, raw: every number as text with the unit of its box, and the choices made.

pub use crate::domain::form::Entry;

use crate::domain::chemistry::equilibrium_moisture::at_standard_climate;
use crate::domain::form::entries_of;
use crate::domain::recipe::field::{Field, LiquidField, Plain};
use crate::domain::recipe::liquid::{DoseWay, Faces, LiquidId, Role, Substance};
use crate::domain::recipe::product::{BoardKind, Furnish, Product};
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

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
    /// There is no flow: a laboratory recipe, of doses and a mat weight.
    None,
}

impl FeedWay {
    /// All ways, in the order in which they are offered.
    pub const ALL: &'static [FeedWay] = &[Self::OvenDry, Self::Belt, Self::LineSpeed, Self::PressFactor, Self::None];
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
    /// What the furnish is made of.
    #[serde(default)]
    pub furnish: Furnish,
    /// The kind of board.
    #[serde(default)]
    pub board_kind: BoardKind,
    /// What fixes the fibre flow.
    pub feed_way: FeedWay,
    /// What fixes the water dose.
    pub water_way: WaterWay,
    /// The faces of the mat that water is sprayed on.
    #[serde(default)]
    pub sprayed_faces: Faces,
    /// The liquids, in order of addition.
    pub liquids: Vec<LiquidDraft>,
    /// The other numbers.
    pub plain: Plain,
}

impl Default for Draft {
    /// A blank recipe: nothing typed, the usual values filled in.
    fn default() -> Self {
        Self {
            furnish: Furnish::default(),
            board_kind: BoardKind::default(),
            feed_way: FeedWay::OvenDry,
            water_way: WaterWay::ToMatMoisture,
            sprayed_faces: Faces::default(),
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
}

entries_of! {
    LiquidDraft by LiquidField { Dose: dose, Solids: solids, Density: density, SpraySolids: spray_solids, Price: price }
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

    /// The ways to enter the dose of a liquid, in the order in which they are offered: on fibre, on each other liquid of the furnish,
    /// per board, and on the faces for what may be sprayed there. The way that was chosen is always among them.
    #[must_use]
    pub fn dose_ways(&self, id: LiquidId) -> Vec<DoseWay> {
        let others = self.liquids.iter().filter(|other| other.id != id && !other.dose_way.is_on_faces());
        let sprayed = self.liquid(id).is_some_and(|liquid| {
            liquid.dose_way.is_on_faces() || matches!(liquid.role, Role::ReleaseAgent | Role::Other)
        });
        let faces = Faces::ALL.iter().filter(|_| sprayed).map(|faces| DoseWay::LiquidOnFaces(*faces));
        let mut ways: Vec<DoseWay> = std::iter::once(DoseWay::SolidsOnFibre)
            .chain(others.map(|other| DoseWay::SolidsOnLiquid(other.id)))
            .chain([DoseWay::LiquidOnFibre, DoseWay::LiquidPerBoard])
            .chain(faces)
            .collect();
        // A base that is gone is still what was chosen.
        ways.extend(self.liquid(id).map(|liquid| liquid.dose_way).filter(|now| !ways.contains(now)));
        ways
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

    /// Enters the moisture of solid wood at 20 °C and 65 % as that of the board, to a tenth of a percent. Straw and bonded board take up
    /// less: it is a start, and no measurement.
    pub fn enter_standard_climate(&mut self) {
        if let Some(moisture) = at_standard_climate() {
            let percent = (Unit::PercentDryBasis.from_base(moisture.dry_basis().value) * 10.0).round() / 10.0;
            self.plain.board_moisture = Entry::typed(editable(percent, DecimalMark::Point), Unit::PercentDryBasis);
        }
    }

    /// What is made of what.
    #[must_use]
    pub const fn product(&self) -> Product {
        Product { furnish: self.furnish, board: self.board_kind }
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
