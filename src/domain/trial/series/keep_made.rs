//! Made runs in a plan: what is kept of a run, and where it stands when the plan changes.

use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::{Draft, Entry};
use crate::domain::trial::series::design::Design;
use crate::domain::trial::series::draft::{SeriesDraft, kind_of, limit_of_level, recipe_field};
use crate::domain::trial::series::factor::{Factor, Level};
use crate::domain::trial::series::field::Of;
use crate::domain::trial::series::made::{MadeLevel, MadeRun, MadeWith};
use crate::domain::trial::series::run::Run;
use crate::domain::trial::{SheetDraft, WeighField};

/// Two levels are the same if they differ by no more than this share.
const SAME: f64 = 1e-9;

impl MadeRun {
    /// What there is to keep of a run when it is made; `with` as [`of_run`](super::runs::of_run) gives it.
    #[must_use]
    pub fn of(draft: &SeriesDraft, run: &Run, (recipe, sheet): (Draft, SheetDraft)) -> Self {
        let level = |(factor, at): (&super::draft::FactorDraft, &u8)| {
            let level = factor.levels.get(usize::from(*at))?.clone();
            Some(MadeLevel { of: factor.of, own: factor.own.clone(), level })
        };
        Self {
            place: run.place,
            standard: run.standard,
            replicate: run.replicate,
            block: run.block,
            levels: draft.factors.iter().zip(&run.levels).filter_map(level).collect(),
            with: MadeWith { recipe, sheet },
        }
    }

    /// The number that the run has for a factor: its own level, or what its recipe or sheet says where the factor came
    /// later.
    fn entry(&self, of: Of) -> Option<&Entry> {
        match self.levels.iter().find(|own| own.of == of) {
            Some(own) => Some(&own.level.value),
            None => match of {
                Of::PressFactor => Some(self.with.sheet.entry(WeighField::PressFactor)),
                Of::BoardDensity if !self.with.sheet.entry(WeighField::BoardDensity).is_blank() => {
                    Some(self.with.sheet.entry(WeighField::BoardDensity))
                }
                Of::MatMoisture if !self.with.sheet.entry(WeighField::MatMoisture).is_blank() => {
                    Some(self.with.sheet.entry(WeighField::MatMoisture))
                }
                // A run made before such a factor was thought of has no level of it.
                Of::Own(_) => None,
                _ => self.with.recipe.entry(recipe_field(of)?),
            },
        }
    }

    /// The place of the run's level among those of a factor, from 0; `None` if it is none of them.
    fn level(&self, factor: &Factor) -> Option<u8> {
        let at = factor.levels.iter().position(|level| match level {
            Level::System(name) => self.levels.iter().any(|own| own.of == Of::System && own.level.name.trim() == name),
            // As it would be read now: a name or a unit that is put right later moves no run.
            Level::Number { .. } | Level::Text(_) => {
                self.entry(factor.of).is_some_and(|entry| factor.own.read(&entry.text).is_ok_and(|own| own == *level))
            }
            Level::Value(amount) => self
                .entry(factor.of)
                .and_then(|entry| {
                    let recipe = &self.with.recipe;
                    read_entry(entry, kind_of(factor.of, recipe), &limit_of_level(factor.of, recipe)).ok().flatten()
                })
                .is_some_and(|base| (base - amount.base).abs() <= SAME * amount.base.abs().max(base.abs())),
        })?;
        u8::try_from(at).ok()
    }

    /// The levels of the run in a design; `None` if it does not belong to it.
    fn levels_in(&self, factors: &[Factor], design: &Design) -> Option<Vec<u8>> {
        let levels: Vec<u8> = factors.iter().map(|factor| self.level(factor)).collect::<Option<_>>()?;
        design.runs.contains(&levels).then_some(levels)
    }
}

/// Puts the made runs into a drawn order. Each takes the place of a planned run with its levels, of its own block and
/// replicate if there is one, and keeps its number. The runs not made yet fill the numbers left in the order drawn. A made
/// run that belongs to no planned one stays at its number and has no levels in the design.
#[must_use]
pub fn keep_made(drawn: Vec<Run>, made: &[MadeRun], factors: &[Factor], design: &Design) -> Vec<Run> {
    if made.is_empty() {
        return drawn;
    }
    let mut open = drawn;
    let mut kept = Vec::new();
    for own in made {
        let levels = own.levels_in(factors, design);
        let likeness = |run: &Run| (run.block == own.block, run.replicate == own.replicate);
        let slot = levels.as_ref().and_then(|levels| {
            let fitting = open.iter().enumerate().filter(|(_, run)| run.levels == *levels);
            // The first of the best: `max_by_key` would give the last.
            fitting.rev().max_by_key(|(_, run)| likeness(run)).map(|(at, _)| at)
        });
        let run = match slot {
            Some(at) => Run { place: own.place, block: own.block, made: Some(own.clone()), ..open.remove(at) },
            None => Run {
                place: own.place,
                standard: own.standard,
                replicate: own.replicate,
                block: own.block,
                levels: Vec::new(),
                made: Some(own.clone()),
            },
        };
        kept.push(run);
    }
    let taken: Vec<u16> = kept.iter().map(|run| run.place).collect();
    let free = (1..=u16::MAX).filter(|place| !taken.contains(place));
    kept.extend(open.into_iter().zip(free).map(|(run, place)| Run { place, ..run }));
    kept.sort_by_key(|run| run.place);
    kept
}
