//! Where two recipes differ, field by field, and how the one takes over what the other says.

use crate::domain::recipe::draft::{Draft, LiquidDraft};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::liquid::{DoseWay, LiquidId, Role, Substance};
use crate::domain::recipe::liquid_pairs::{LiquidPair, LiquidPairs};

/// A choice about a liquid, or its texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LiquidChoice {
    /// The mill's name for it.
    Name,
    /// What it is for.
    Role,
    /// What it is made of.
    Substance,
    /// How its dose is entered.
    DoseWay,
    /// Where its values come from.
    Source,
}

impl LiquidChoice {
    const ALL: [Self; 5] = [Self::Name, Self::Role, Self::Substance, Self::DoseWay, Self::Source];

    fn same(self, old: &LiquidDraft, new: &LiquidDraft, pairs: &LiquidPairs) -> bool {
        match self {
            Self::Name => old.name == new.name,
            Self::Role => old.role == new.role,
            Self::Substance => old.substance == new.substance,
            Self::DoseWay => match (old.dose_way, new.dose_way) {
                // On the same liquid, whatever its number is.
                (DoseWay::SolidsOnLiquid(old), DoseWay::SolidsOnLiquid(new)) => pairs.is_same_base(old, new),
                (old, new) => old == new,
            },
            Self::Source => old.source == new.source,
        }
    }

    fn take(self, to: &mut LiquidDraft, from: &LiquidDraft, dose_way: DoseWay) {
        match self {
            Self::Name => to.name.clone_from(&from.name),
            Self::Role => to.role = from.role,
            Self::Substance => to.substance = from.substance,
            Self::DoseWay => to.dose_way = dose_way,
            Self::Source => to.source.clone_from(&from.source),
        }
    }
}

/// One thing in which an old and a new recipe differ.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Difference {
    /// What the furnish is made of.
    Furnish,
    /// The kind of board.
    BoardKind,
    /// What fixes the fibre flow.
    FeedWay,
    /// What fixes the water dose.
    WaterWay,
    /// The faces that water is sprayed on.
    SprayedFaces,
    /// What is typed in a box that is no liquid's.
    Entry(Field),
    /// What is typed in a box of a liquid that both have.
    LiquidEntry(LiquidPair, LiquidField),
    /// A choice about a liquid that both have.
    Choice(LiquidPair, LiquidChoice),
    /// Another liquid does what this one did.
    Replaced(LiquidPair),
    /// A liquid of the old recipe that the new one has not.
    Removed(LiquidId),
    /// A liquid of the new recipe that the old one has not.
    Added(LiquidId),
}

/// Where two recipes differ, in the order of the page. Liquids are compared by what they are, see [`LiquidPairs`]. Only the
/// order in which they are added is not looked at.
#[must_use]
pub fn differences(old: &Draft, new: &Draft) -> Vec<Difference> {
    let mut found = Vec::new();
    if old.furnish != new.furnish {
        found.push(Difference::Furnish);
    }
    if old.board_kind != new.board_kind {
        found.push(Difference::BoardKind);
    }
    if old.feed_way != new.feed_way {
        found.push(Difference::FeedWay);
    }
    if old.water_way != new.water_way {
        found.push(Difference::WaterWay);
    }
    if old.sprayed_faces != new.sprayed_faces {
        found.push(Difference::SprayedFaces);
    }
    let plain = |field: &Field| match (old.entry(*field), new.entry(*field)) {
        (Some(old), Some(new)) => !old.says_same(new),
        _ => false,
    };
    found.extend(Field::PLAIN.iter().copied().filter(plain).map(Difference::Entry));
    let pairs = LiquidPairs::of(old, new);
    for liquid in &old.liquids {
        if let Some(pair) = pairs.replaced.iter().find(|pair| pair.old == liquid.id) {
            found.push(Difference::Replaced(*pair));
        } else if let Some(pair) = pairs.same.iter().find(|pair| pair.old == liquid.id).copied() {
            let Some(same) = new.liquid(pair.new) else { continue };
            let choices = LiquidChoice::ALL.into_iter().filter(|choice| !choice.same(liquid, same, &pairs));
            found.extend(choices.map(|choice| Difference::Choice(pair, choice)));
            let fields = LiquidField::ALL.iter().filter(|part| !liquid.entry(**part).says_same(same.entry(**part)));
            found.extend(fields.map(|part| Difference::LiquidEntry(pair, *part)));
        } else {
            found.push(Difference::Removed(liquid.id));
        }
    }
    found.extend(pairs.added.iter().copied().map(Difference::Added));
    found
}

/// Makes `new` say what `old` says, in those of their differences that are chosen.
pub fn take_over(new: &mut Draft, old: &Draft, chosen: &[Difference]) {
    let mut pairs = LiquidPairs::of(old, new);
    // Liquids first: a dose may be on one that comes in.
    for difference in chosen {
        match *difference {
            Difference::Replaced(pair) => {
                if let (Some(to), Some(from)) = (new.liquid_mut(pair.new), old.liquid(pair.old)) {
                    *to = LiquidDraft { id: to.id, ..from.clone() };
                }
            }
            Difference::Removed(id) => {
                if let Some(from) = old.liquid(id) {
                    let added = unused_id(new, old, id);
                    new.liquids.push(LiquidDraft { id: added, ..from.clone() });
                    pairs.same.push(LiquidPair { old: id, new: added });
                }
            }
            Difference::Added(id) => new.liquids.retain(|liquid| liquid.id != id),
            _ => {}
        }
    }
    let dose_way = |from: &LiquidDraft, new: &Draft| match from.dose_way {
        // On a liquid that did not come in: a number that no liquid has, so that the check asks for one.
        DoseWay::SolidsOnLiquid(base) => {
            DoseWay::SolidsOnLiquid(pairs.new_of(base).unwrap_or_else(|| unused_id(new, old, base)))
        }
        other => other,
    };
    for difference in chosen {
        match *difference {
            Difference::Furnish => new.furnish = old.furnish,
            Difference::BoardKind => new.board_kind = old.board_kind,
            Difference::FeedWay => new.feed_way = old.feed_way,
            Difference::WaterWay => new.water_way = old.water_way,
            Difference::SprayedFaces => new.sprayed_faces = old.sprayed_faces,
            Difference::Entry(field) => {
                if let (Some(entry), Some(taken)) = (new.entry_mut(field), old.entry(field)) {
                    entry.clone_from(taken);
                }
            }
            Difference::LiquidEntry(pair, part) => {
                if let (Some(to), Some(from)) = (new.liquid_mut(pair.new), old.liquid(pair.old)) {
                    to.entry_mut(part).clone_from(from.entry(part));
                }
            }
            Difference::Choice(pair, choice) => {
                let Some(from) = old.liquid(pair.old) else { continue };
                let way = dose_way(from, new);
                if let Some(to) = new.liquid_mut(pair.new) {
                    choice.take(to, from, way);
                }
            }
            Difference::Replaced(LiquidPair { old: id, .. }) | Difference::Removed(id) => {
                let Some(from) = old.liquid(id) else { continue };
                let way = dose_way(from, new);
                if let Some(to) = pairs.new_of(id).and_then(|id| new.liquid_mut(id)) {
                    to.dose_way = way;
                }
            }
            Difference::Added(_) => {}
        }
    }
}

/// A number for a liquid that comes in: its own, unless something of the recipe has it or is dosed on it.
fn unused_id(new: &Draft, old: &Draft, own: LiquidId) -> LiquidId {
    let free = |id: &LiquidId| {
        let uses = |liquid: &LiquidDraft| liquid.id == *id || liquid.dose_way == DoseWay::SolidsOnLiquid(*id);
        !new.liquids.iter().any(uses)
    };
    let mut others = (1..=u16::MAX).map(LiquidId).filter(|id| old.liquid(*id).is_none());
    if free(&own) { own } else { others.find(free).unwrap_or(own) }
}

/// Whether the new recipe has other binders than the old one: what makes it another recipe. One that had none yet is not asked
/// about, nor is a binder that nothing is known of.
#[must_use]
pub fn other_binders(old: &Draft, new: &Draft) -> bool {
    let binders = |draft: &Draft| -> Vec<(Substance, String)> {
        let known = draft.liquids.iter().filter(|liquid| liquid.role == Role::Binder).map(|liquid| {
            let name =
                if liquid.substance == Substance::Other { liquid.name.trim().to_lowercase() } else { String::new() };
            (liquid.substance, name)
        });
        known.filter(|(substance, name)| *substance != Substance::Other || !name.is_empty()).collect()
    };
    let (old, new) = (binders(old), binders(new));
    let within =
        |some: &[(Substance, String)], all: &[(Substance, String)]| some.iter().all(|binder| all.contains(binder));
    let same = within(&old, &new) && within(&new, &old);
    !old.is_empty() && !same
}
#[cfg(test)]
mod tests {
    use super::{Difference, LiquidChoice, differences, take_over};
    use crate::domain::recipe::draft::FeedWay;
    use crate::domain::recipe::example::example;
    use crate::domain::recipe::liquid_pairs::LiquidPair;
    use crate::domain::{Draft, Entry, Faces, Field, LiquidDraft, LiquidField, LiquidId, Role};
    use crate::quantity::Unit;

    fn changed() -> Draft {
        let mut draft = example();
        draft.feed_way = FeedWay::LineSpeed;
        draft.sprayed_faces = Faces::Top;
        draft.plain.board_density = Entry::typed("712", Unit::KilogramPerCubicMetre);
        if let Some(liquid) = draft.liquids.first_mut() {
            liquid.name.push_str(" II");
            liquid.solids = Entry::typed("61", Unit::Percent);
        }
        draft.liquids.push(LiquidDraft::blank(LiquidId(99), Role::Wax));
        draft
    }

    #[test]
    fn every_change_is_found_and_nothing_else() {
        let (old, new) = (example(), changed());
        let first = old.liquids.first().map_or(LiquidId(0), |liquid| liquid.id);
        let first = LiquidPair { old: first, new: first };
        assert_eq!(
            differences(&old, &new),
            [
                Difference::FeedWay,
                Difference::SprayedFaces,
                Difference::Entry(Field::BoardDensity),
                Difference::Choice(first, LiquidChoice::Name),
                Difference::LiquidEntry(first, LiquidField::Solids),
                Difference::Added(LiquidId(99)),
            ]
        );
        assert_eq!(differences(&new, &new), []);
    }

    #[test]
    fn what_is_taken_over_differs_no_more() {
        for (one, other) in [(example(), changed()), (changed(), example())] {
            for difference in differences(&one, &other) {
                let mut taken = other.clone();
                take_over(&mut taken, &one, &[difference]);
                let left = differences(&one, &taken);
                assert!(!left.contains(&difference), "{difference:?}");
                assert_eq!(left.len() + 1, differences(&one, &other).len(), "{difference:?}");
            }
            let mut all = other.clone();
            take_over(&mut all, &one, &differences(&one, &other));
            assert_eq!(differences(&one, &all), []);
        }
    }
}
