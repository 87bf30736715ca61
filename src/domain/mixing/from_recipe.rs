//! What recipe and weigh sheet say of a solution or a glue that is made up for them.

use crate::domain::balance::outcome::Case;
use crate::domain::chemistry::solute::Solute;
use crate::domain::mixing::draft::MixDraft;
use crate::domain::mixing::field::MixField;
use crate::domain::mixing::glue_batch::{Batch, BatchPart};
use crate::domain::mixing::premix::PremixCandidate;
use crate::domain::recipe::draft::{Draft, Entry};
use crate::domain::recipe::input::Liquid;
use crate::domain::recipe::liquid::{LiquidId, Substance};
use crate::domain::trial::SheetDraft;
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::plan::plan;
use crate::domain::trial::weigh_sheet::sheet::{WeighLine, make_out};
use crate::quantity::Unit;
use crate::quantity::format::{DecimalMark, editable};
use uom::si::f64::{Mass, MassRate, Ratio};
use uom::si::ratio::percent;

/// A solution that the recipe doses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RecipeSolution {
    /// The liquid of the recipe.
    pub liquid: LiquidId,
    /// What is dissolved.
    pub solute: Solute,
    /// Salt per solution, by mass.
    pub solids: Ratio,
}

/// What is dissolved in a liquid of that substance; `None` where it is no solution of crystals.
#[must_use]
pub const fn solute_of(substance: Substance) -> Option<Solute> {
    match substance {
        Substance::AmmoniumSulfate => Some(Solute::AmmoniumSulfate),
        Substance::AmmoniumChloride => Some(Solute::AmmoniumChloride),
        Substance::AmmoniumNitrate => Some(Solute::AmmoniumNitrate),
        Substance::Urea => Some(Solute::Urea),
        _ => None,
    }
}

/// The solutions that the recipe doses, in order of addition.
#[must_use]
pub fn recipe_solutions(case: &Case) -> Vec<RecipeSolution> {
    let liquids = case.input.liquids.as_slice().iter();
    let solution = |liquid: &Liquid| {
        let solute = solute_of(liquid.substance)?;
        Some(RecipeSolution { liquid: liquid.id, solute, solids: liquid.solids.ratio() })
    };
    liquids.filter_map(solution).collect()
}

impl MixDraft {
    /// The draft in effect: while nobody has typed a concentration, it is the recipe's for the salt chosen.
    #[must_use]
    pub fn with_recipe(&self, solutions: &[RecipeSolution], mark: DecimalMark) -> Self {
        let mut draft = self.clone();
        let own = solutions.iter().find(|solution| solution.solute == self.solute);
        if let Some(own) = own.filter(|_| self.follows_recipe()) {
            let text = editable(own.solids.get::<percent>(), mark);
            *draft.entry_mut(MixField::Concentration) = Entry::preset(text, Unit::Percent);
        }
        draft
    }

    /// Whether nobody has typed a concentration.
    #[must_use]
    pub const fn follows_recipe(&self) -> bool {
        self.entry(MixField::Concentration).preset
    }
}

/// How much of each solution one batch of the weigh sheet takes.
#[must_use]
pub fn weighed_solutions(recipe: &Draft, sheet: &SheetDraft) -> Vec<(Solute, Mass)> {
    let sheet = plan(recipe, sheet).plan.and_then(|plan| make_out(plan).sheet);
    let Some(sheet) = sheet else { return Vec::new() };
    let solution = |line: &WeighLine| {
        let LineId::Liquid(id) = line.id else { return None };
        Some((solute_of(recipe.liquid(id)?.substance)?, line.mass))
    };
    sheet.lines.iter().filter_map(solution).collect()
}

/// What a batch has of the candidate at a place; `None` where it stays out.
#[must_use]
pub fn part_of<'a>(batch: &'a Batch, tank: &[PremixCandidate], place: usize) -> Option<&'a BatchPart> {
    tank.get(place).filter(|candidate| candidate.in_tank)?;
    // The batch has only the parts that go in.
    batch.parts.get(tank.iter().take(place).filter(|candidate| candidate.in_tank).count())
}

/// How much of a solution of that salt a batch of glue takes.
#[must_use]
pub fn solution_in(batch: &Batch, tank: &[PremixCandidate], solute: Solute) -> Option<Mass> {
    let own =
        |candidate: &PremixCandidate| candidate.in_tank && candidate.substance.and_then(solute_of) == Some(solute);
    part_of(batch, tank, tank.iter().position(own)?).map(|part| part.mass)
}

/// The oven-dry fibre that a batch is enough for, where its parts are in the recipe's proportions: batch / flow of its parts · F.
#[must_use]
pub fn enough_for(batch: &Batch, tank: &[PremixCandidate], case: &Case) -> Option<Mass> {
    let flow: MassRate = tank.iter().filter(|candidate| candidate.in_tank).map(|candidate| candidate.flow).sum();
    let fibre = batch.mass * (case.solved.fibre / flow);
    (flow.value > 0.0 && fibre.is_finite()).then_some(fibre)
}
