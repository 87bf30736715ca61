//! Where two recipes differ, field by field, and how the one takes over what the other says.

use crate::domain::recipe::draft::{Draft, LiquidDraft};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::liquid::LiquidId;

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

    fn same(self, one: &LiquidDraft, other: &LiquidDraft) -> bool {
        match self {
            Self::Name => one.name == other.name,
            Self::Role => one.role == other.role,
            Self::Substance => one.substance == other.substance,
            Self::DoseWay => one.dose_way == other.dose_way,
            Self::Source => one.source == other.source,
        }
    }

    fn take(self, to: &mut LiquidDraft, from: &LiquidDraft) {
        match self {
            Self::Name => to.name.clone_from(&from.name),
            Self::Role => to.role = from.role,
            Self::Substance => to.substance = from.substance,
            Self::DoseWay => to.dose_way = from.dose_way,
            Self::Source => to.source.clone_from(&from.source),
        }
    }
}

/// One thing in which two recipes differ.
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
    /// What is typed in a box; of a liquid that both have.
    Entry(Field),
    /// A choice about a liquid that both have.
    Choice(LiquidId, LiquidChoice),
    /// A liquid that only the one has, or only the other.
    Liquid(LiquidId),
}

/// Where `one` and `other` differ, in the order of the page. Liquids are the same by their number. Only
/// the order in which they are added is not looked at.
#[must_use]
pub fn differences(one: &Draft, other: &Draft) -> Vec<Difference> {
    let mut found = Vec::new();
    if one.furnish != other.furnish {
        found.push(Difference::Furnish);
    }
    if one.board_kind != other.board_kind {
        found.push(Difference::BoardKind);
    }
    if one.feed_way != other.feed_way {
        found.push(Difference::FeedWay);
    }
    if one.water_way != other.water_way {
        found.push(Difference::WaterWay);
    }
    if one.sprayed_faces != other.sprayed_faces {
        found.push(Difference::SprayedFaces);
    }
    let differs = |field: &Field| match (one.entry(*field), other.entry(*field)) {
        (Some(a), Some(b)) => (&a.text, a.unit) != (&b.text, b.unit) && !(a.is_blank() && b.is_blank()),
        _ => false,
    };
    found.extend(Field::PLAIN.iter().copied().filter(differs).map(Difference::Entry));
    for liquid in &one.liquids {
        let Some(same) = other.liquid(liquid.id) else {
            found.push(Difference::Liquid(liquid.id));
            continue;
        };
        let choices = LiquidChoice::ALL.into_iter().filter(|choice| !choice.same(liquid, same));
        found.extend(choices.map(|choice| Difference::Choice(liquid.id, choice)));
        let fields = LiquidField::ALL.iter().map(|part| Field::Liquid(liquid.id, *part));
        found.extend(fields.filter(differs).map(Difference::Entry));
    }
    let only_other = other.liquids.iter().filter(|liquid| one.liquid(liquid.id).is_none());
    found.extend(only_other.map(|liquid| Difference::Liquid(liquid.id)));
    found
}

/// Makes `to` say in one thing what `from` says.
pub fn take(to: &mut Draft, from: &Draft, difference: Difference) {
    match difference {
        Difference::Furnish => to.furnish = from.furnish,
        Difference::BoardKind => to.board_kind = from.board_kind,
        Difference::FeedWay => to.feed_way = from.feed_way,
        Difference::WaterWay => to.water_way = from.water_way,
        Difference::SprayedFaces => to.sprayed_faces = from.sprayed_faces,
        Difference::Entry(field) => {
            if let (Some(entry), Some(taken)) = (to.entry_mut(field), from.entry(field)) {
                entry.clone_from(taken);
            }
        }
        Difference::Choice(id, choice) => {
            if let (Some(liquid), Some(taken)) = (to.liquid_mut(id), from.liquid(id)) {
                choice.take(liquid, taken);
            }
        }
        Difference::Liquid(id) => match from.liquid(id) {
            Some(liquid) if to.liquid(id).is_none() => to.liquids.push(liquid.clone()),
            Some(_) => {}
            None => to.liquids.retain(|liquid| liquid.id != id),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::{Difference, LiquidChoice, differences, take};
    use crate::domain::recipe::draft::FeedWay;
    use crate::domain::recipe::example::example;
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
        assert_eq!(
            differences(&old, &new),
            [
                Difference::FeedWay,
                Difference::SprayedFaces,
                Difference::Entry(Field::BoardDensity),
                Difference::Choice(first, LiquidChoice::Name),
                Difference::Entry(Field::Liquid(first, LiquidField::Solids)),
                Difference::Liquid(LiquidId(99)),
            ]
        );
        assert_eq!(differences(&new, &new), []);
    }

    #[test]
    fn what_is_taken_over_differs_no_more() {
        for (one, other) in [(example(), changed()), (changed(), example())] {
            for difference in differences(&one, &other) {
                let mut taken = one.clone();
                take(&mut taken, &other, difference);
                let left = differences(&taken, &other);
                assert!(!left.contains(&difference), "{difference:?}");
                assert_eq!(left.len() + 1, differences(&one, &other).len(), "{difference:?}");
            }
            let mut all = one.clone();
            differences(&one, &other).into_iter().for_each(|difference| take(&mut all, &other, difference));
            assert_eq!(differences(&all, &other), []);
        }
    }
}
