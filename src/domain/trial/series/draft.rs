//! A series as entered: factors with their levels, the design, replicates, blocks and the seed.

use crate::domain::recipe::check::limit_of;
use crate::domain::recipe::draft::{Draft, Entry, LiquidDraft};
use crate::domain::recipe::field::{Field as RecipeField, LiquidField};
use crate::domain::recipe::limit::Limit;
use crate::domain::recipe::limit::Source::CommonPractice;
use crate::domain::trial::WeighField;
use crate::domain::trial::series::factor::OwnFactor;
use crate::domain::trial::series::field::{FactorId, Of, SeriesField};
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

/// Maximum number of factors of a series.
pub const MAX_FACTORS: usize = 8;
/// Maximum number of levels of a factor.
pub const MAX_LEVELS: usize = 6;
/// Maximum number of runs of a series, replicates counted.
pub const MAX_RUNS: usize = 256;

/// Which combinations are made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum DesignWay {
    /// All.
    #[default]
    Full,
    /// 1/2^p of them, with so many generators p.
    Fraction(u8),
}

/// How runs are put into blocks, such as days.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum BlockWay {
    /// Not at all.
    #[default]
    None,
    /// Each replicate is a block.
    Replicate,
    /// Each replicate is split into two blocks.
    Halves,
    /// Each replicate is split into four blocks.
    Quarters,
}

impl BlockWay {
    /// All ways, in the order in which they are offered.
    pub const ALL: &'static [BlockWay] = &[Self::None, Self::Replicate, Self::Halves, Self::Quarters];
}

/// A level of a factor.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct LevelDraft {
    /// Its number; blank for a binder system.
    pub value: Entry,
    /// Its name; that of the binder system.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// The liquids of a binder system.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub liquids: Vec<LiquidDraft>,
}

/// A factor.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct FactorDraft {
    /// Its number within the series.
    pub id: FactorId,
    /// What it changes.
    pub of: Of,
    /// Name and unit of a factor that changes nothing computed.
    #[serde(default, skip_serializing_if = "OwnFactor::is_absent")]
    pub own: OwnFactor,
    /// Its levels, low to high as entered.
    pub levels: Vec<LevelDraft>,
}

/// A series as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(default)]
pub struct SeriesDraft {
    /// The factors, A first.
    pub factors: Vec<FactorDraft>,
    /// Which combinations are made.
    pub design: DesignWay,
    /// How runs are put into blocks.
    pub blocks: BlockWay,
    /// How often each combination is made.
    pub replicates: Entry,
    /// The seed of the run order.
    pub seed: Entry,
    /// What is ordered beyond what the sheets say.
    pub margin: Entry,
}

impl Default for SeriesDraft {
    fn default() -> Self {
        Self {
            factors: Vec::new(),
            design: DesignWay::Full,
            blocks: BlockWay::None,
            replicates: Entry::preset("1", Unit::One),
            seed: Entry::preset("1", Unit::One),
            margin: Entry::preset("10", Unit::Percent),
        }
    }
}

impl LevelDraft {
    /// A level with nothing typed.
    #[must_use]
    pub fn blank(unit: Unit) -> Self {
        Self { value: Entry::empty(unit), name: String::new(), liquids: Vec::new() }
    }
}

impl SeriesDraft {
    /// A series that begins with a run order of its own: the seed is drawn once, shown and kept.
    #[must_use]
    pub fn begin(seed: u64) -> Self {
        Self { seed: Entry::typed((seed % 1_000_000).to_string(), Unit::One), ..Self::default() }
    }

    /// A number that no factor of this series has, nor any of those that runs were made with.
    #[must_use]
    pub fn free_id(&self, made: &[FactorId]) -> FactorId {
        let taken = |id: &u8| made.contains(&FactorId(*id)) || self.factors.iter().any(|factor| factor.id.0 == *id);
        FactorId((1..=u8::MAX).find(|id| !taken(id)).unwrap_or(u8::MAX))
    }

    /// The factor of that name.
    #[must_use]
    pub fn factor(&self, id: FactorId) -> Option<&FactorDraft> {
        self.factors.iter().find(|factor| factor.id == id)
    }

    /// The entry of a field; `None` for a factor or a level that is not there, and for a factor as a whole.
    #[must_use]
    pub fn entry(&self, field: SeriesField) -> Option<&Entry> {
        match field {
            SeriesField::Replicates => Some(&self.replicates),
            SeriesField::Seed => Some(&self.seed),
            SeriesField::Margin => Some(&self.margin),
            SeriesField::Factor(_) => None,
            SeriesField::Level(id, level) => self.factor(id)?.levels.get(usize::from(level)).map(|level| &level.value),
        }
    }

    /// The entry of a field, to type into.
    pub fn entry_mut(&mut self, field: SeriesField) -> Option<&mut Entry> {
        match field {
            SeriesField::Replicates => Some(&mut self.replicates),
            SeriesField::Seed => Some(&mut self.seed),
            SeriesField::Margin => Some(&mut self.margin),
            SeriesField::Factor(_) => None,
            SeriesField::Level(id, level) => {
                let factor = self.factors.iter_mut().find(|factor| factor.id == id)?;
                factor.levels.get_mut(usize::from(level)).map(|level| &mut level.value)
            }
        }
    }

    /// The boxes of all levels that are numbers which recipe or weigh sheet are computed with.
    pub fn number_levels(&self) -> impl Iterator<Item = SeriesField> + '_ {
        let numbers = self.factors.iter().filter(|factor| !matches!(factor.of, Of::System | Of::Own(_)));
        numbers.flat_map(|factor| {
            (0..=u8::MAX).take(factor.levels.len()).map(|level| SeriesField::Level(factor.id, level))
        })
    }

    /// What a field measures.
    #[must_use]
    pub fn kind(&self, field: SeriesField, recipe: &Draft) -> Kind {
        match field {
            SeriesField::Level(id, _) => self.factor(id).map_or(Kind::Ratio, |factor| kind_of(factor.of, recipe)),
            plain => plain.plain_kind(),
        }
    }

    /// What a field may hold.
    #[must_use]
    pub fn limit(&self, field: SeriesField, recipe: &Draft) -> Limit {
        match field {
            SeriesField::Replicates => Limit::from_to(Unit::One, 1.0, 20.0).usually(1.0, 5.0, CommonPractice),
            SeriesField::Seed => Limit::from_to(Unit::One, 0.0, 999_999_999.0),
            SeriesField::Margin => Limit::from_to(Unit::Percent, 0.0, 500.0).usually(0.0, 50.0, CommonPractice),
            SeriesField::Factor(_) => Limit::from_to(Unit::One, 0.0, 0.0),
            SeriesField::Level(id, _) => {
                self.factor(id).map_or(Limit::from_to(Unit::One, 0.0, 0.0), |factor| limit_of_level(factor.of, recipe))
            }
        }
    }
}

/// The recipe's field that a factor changes; `None` for what is no field of the recipe.
#[must_use]
pub const fn recipe_field(of: Of) -> Option<RecipeField> {
    match of {
        Of::Dose(id) => Some(RecipeField::Liquid(id, LiquidField::Dose)),
        Of::BoardDensity => Some(RecipeField::BoardDensity),
        Of::MatMoisture => Some(RecipeField::MatMoisture),
        Of::PressFactor | Of::System | Of::Own(_) => None,
    }
}

/// What a factor's levels measure.
#[must_use]
pub fn kind_of(of: Of, recipe: &Draft) -> Kind {
    match (recipe_field(of), of) {
        (Some(field), _) => recipe.kind(field),
        (None, Of::Own(_)) => Kind::Ratio,
        (None, _) => Kind::PressFactor,
    }
}

pub(in crate::domain::trial) fn limit_of_level(of: Of, recipe: &Draft) -> Limit {
    match recipe_field(of) {
        Some(field) => limit_of(recipe, field),
        None => Limit { optional: false, ..WeighField::PressFactor.limit() },
    }
}
