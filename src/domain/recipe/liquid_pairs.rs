//! Which liquid of one recipe is which of another: by what they are, not by their numbers or places.

use crate::domain::recipe::draft::{Draft, LiquidDraft};
use crate::domain::recipe::liquid::{LiquidId, Substance};

/// A liquid of an old recipe and one of a new recipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct LiquidPair {
    /// Its number in the old recipe.
    pub old: LiquidId,
    /// Its number in the new recipe.
    pub new: LiquidId,
}

/// The liquids of two recipes beside each other.
///
/// Two liquids are the same when material, function and name agree, or at least two of the three do; what nothing is known
/// of (another material, no name) agrees with nothing. Of those that are left, one replaces another where both have the same
/// function.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LiquidPairs {
    /// Liquids that both recipes have.
    pub same: Vec<LiquidPair>,
    /// A liquid of the old recipe and the one that does its work in the new recipe.
    pub replaced: Vec<LiquidPair>,
    /// Only in the old recipe.
    pub removed: Vec<LiquidId>,
    /// Only in the new recipe.
    pub added: Vec<LiquidId>,
}

impl LiquidPairs {
    /// Pairs the liquids of two recipes.
    #[must_use]
    pub fn of(old: &Draft, new: &Draft) -> Self {
        let mut left: Vec<&LiquidDraft> = old.liquids.iter().collect();
        let mut right: Vec<&LiquidDraft> = new.liquids.iter().collect();
        let mut same = pair_off(&mut left, &mut right, alike);
        same.extend(pair_off(&mut left, &mut right, |old, new| agreeing(old, new) >= 2));
        let replaced = pair_off(&mut left, &mut right, |old, new| old.role == new.role);
        let ids = |liquids: Vec<&LiquidDraft>| liquids.into_iter().map(|liquid| liquid.id).collect();
        Self { same, replaced, removed: ids(left), added: ids(right) }
    }

    /// The liquid of the new recipe that is this one of the old recipe, or does its work.
    #[must_use]
    pub fn new_of(&self, old: LiquidId) -> Option<LiquidId> {
        self.both().find(|pair| pair.old == old).map(|pair| pair.new)
    }

    /// Whether a dose on `old` in the old recipe is on the same liquid as one on `new` in the new recipe.
    #[must_use]
    pub fn is_same_base(&self, old: LiquidId, new: LiquidId) -> bool {
        let in_new = self.added.contains(&new) || self.both().any(|pair| pair.new == new);
        match self.new_of(old) {
            Some(paired) => paired == new,
            // Neither is there, as after the liquid was removed.
            None => old == new && !self.removed.contains(&old) && !in_new,
        }
    }

    fn both(&self) -> impl Iterator<Item = &LiquidPair> {
        self.same.iter().chain(&self.replaced)
    }
}

/// Takes pairs out of both lists: of several that would do, the one with the same number, else the first.
fn pair_off(
    left: &mut Vec<&LiquidDraft>,
    right: &mut Vec<&LiquidDraft>,
    fits: impl Fn(&LiquidDraft, &LiquidDraft) -> bool,
) -> Vec<LiquidPair> {
    let mut pairs = Vec::new();
    for same_number in [true, false] {
        left.retain(|old| {
            let found = right.iter().position(|new| (!same_number || old.id == new.id) && fits(old, new));
            let Some(at) = found else { return true };
            pairs.push(LiquidPair { old: old.id, new: right.remove(at).id });
            false
        });
    }
    pairs
}

fn name(liquid: &LiquidDraft) -> String {
    liquid.name.trim().to_lowercase()
}

/// Whether material, function and name are the same, known or not.
fn alike(old: &LiquidDraft, new: &LiquidDraft) -> bool {
    old.substance == new.substance && old.role == new.role && name(old) == name(new)
}

/// How many of material, function and name agree.
fn agreeing(old: &LiquidDraft, new: &LiquidDraft) -> usize {
    let material = old.substance == new.substance && old.substance != Substance::Other;
    let named = !name(old).is_empty() && name(old) == name(new);
    [material, old.role == new.role, named].into_iter().filter(|agrees| *agrees).count()
}
