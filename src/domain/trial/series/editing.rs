//! Changing the factors of a series.

use crate::domain::recipe::draft::{Draft, LiquidDraft};
use crate::domain::trial::series::draft::{FactorDraft, LevelDraft, MAX_FACTORS, MAX_LEVELS, SeriesDraft, kind_of};
use crate::domain::trial::series::factor::OwnFactor;
use crate::domain::trial::series::field::{FactorId, Of};
use crate::quantity::kind::UnitSystem;

/// What the factor with that number can change.
#[must_use]
pub fn offered(recipe: &Draft, id: FactorId) -> Vec<Of> {
    let doses = recipe.liquids.iter().map(|liquid| Of::Dose(liquid.id));
    doses.chain([Of::BoardDensity, Of::MatMoisture, Of::PressFactor, Of::System, Of::Own(id)]).collect()
}

fn blank_level(of: Of, recipe: &Draft) -> LevelDraft {
    LevelDraft::blank(kind_of(of, recipe).unit_in(UnitSystem::Metric))
}

fn blank_levels(of: Of, recipe: &Draft) -> Vec<LevelDraft> {
    vec![blank_level(of, recipe); 2]
}

impl SeriesDraft {
    /// Adds the first factor that is not there yet, with two blank levels; `made` as [`free_id`](Self::free_id) asks for it.
    pub fn add_factor(&mut self, recipe: &Draft, made: &[FactorId]) -> Option<FactorId> {
        let id = self.free_id(made);
        let of = offered(recipe, id).into_iter().find(|of| !self.factors.iter().any(|factor| factor.of == *of))?;
        if self.factors.len() >= MAX_FACTORS {
            return None;
        }
        self.factors.push(FactorDraft { id, of, own: OwnFactor::default(), levels: blank_levels(of, recipe) });
        Some(id)
    }

    /// The factor of that name, to change.
    pub fn factor_mut(&mut self, id: FactorId) -> Option<&mut FactorDraft> {
        self.factors.iter_mut().find(|factor| factor.id == id)
    }

    /// Lets a factor change something else, with blank levels.
    pub fn choose_factor(&mut self, id: FactorId, of: Of, recipe: &Draft) {
        if let Some(factor) = self.factor_mut(id) {
            (factor.of, factor.levels) = (of, blank_levels(of, recipe));
        }
    }

    /// Adds a blank level to a factor, up to [`MAX_LEVELS`].
    pub fn add_level(&mut self, id: FactorId, recipe: &Draft) {
        if let Some(factor) = self.factor_mut(id)
            && factor.levels.len() < MAX_LEVELS
        {
            factor.levels.push(blank_level(factor.of, recipe));
        }
    }

    /// Makes a level of a factor a binder system.
    pub fn choose_system(&mut self, id: FactorId, level: u8, name: String, liquids: Vec<LiquidDraft>) {
        if let Some(level) = self.factor_mut(id).and_then(|factor| factor.levels.get_mut(usize::from(level))) {
            (level.name, level.liquids) = (name, liquids);
        }
    }
}
