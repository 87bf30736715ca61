//! What differs between two recipes: liquids are compared by what they are, whatever their numbers and places.

use haulm::domain::recipe::difference::{Difference, differences, other_binders, take_over};
use haulm::domain::recipe::liquid_pairs::{LiquidPair, LiquidPairs};
use haulm::domain::{DoseWay, Draft, Entry, LiquidDraft, LiquidField, LiquidId, Role, Substance};
use haulm::quantity::Unit;
use proptest::prelude::*;

fn liquid(id: u16, role: Role, substance: Substance, name: &str, dose: &str) -> LiquidDraft {
    let mut liquid = LiquidDraft::blank(LiquidId(id), role);
    (liquid.substance, liquid.name) = (substance, name.to_owned());
    liquid.dose = Entry::typed(dose, Unit::Percent);
    liquid
}

fn recipe(liquids: impl IntoIterator<Item = LiquidDraft>) -> Draft {
    Draft { liquids: liquids.into_iter().collect(), ..Draft::default() }
}

const fn pair(old: u16, new: u16) -> LiquidPair {
    LiquidPair { old: LiquidId(old), new: LiquidId(new) }
}

/// Two people begin the same recipe apart from each other: the wax is number 2 here and number 1 there.
#[test]
fn liquids_are_the_same_by_what_they_are_not_by_their_numbers() {
    let old = recipe([
        liquid(1, Role::Binder, Substance::Pmdi, "pMDI", "4"),
        liquid(2, Role::Wax, Substance::WaxEmulsion, "Wax 55", "0.8"),
    ]);
    let new = recipe([
        liquid(1, Role::Wax, Substance::WaxEmulsion, "Wax 55", "0.9"),
        liquid(2, Role::Binder, Substance::Pmdi, "pMDI", "4"),
    ]);
    assert_eq!(differences(&old, &new), [Difference::LiquidEntry(pair(2, 1), LiquidField::Dose)]);
}

#[test]
fn another_liquid_with_the_same_function_replaces_the_old_one() {
    let old = recipe([
        liquid(1, Role::Binder, Substance::Uf, "UF resin", "10"),
        liquid(2, Role::Wax, Substance::WaxEmulsion, "Wax 55", "0.8"),
    ]);
    let new = recipe([
        liquid(1, Role::Binder, Substance::Pmdi, "pMDI", "4"),
        liquid(3, Role::ReleaseAgent, Substance::Other, "Release agent", "0.2"),
    ]);
    let found = differences(&old, &new);
    let expected = [Difference::Replaced(pair(1, 1)), Difference::Removed(LiquidId(2)), Difference::Added(LiquidId(3))];
    assert_eq!(found, expected);
    assert!(other_binders(&old, &new));
}

/// A name that was corrected, or a material that was entered later, is the same liquid still.
#[test]
fn two_of_material_function_and_name_make_the_same_liquid() {
    let old = liquid(1, Role::Binder, Substance::Uf, "Resin A", "10");
    for (role, substance, name, same) in [
        (Role::Binder, Substance::Uf, "Resin B", true),
        (Role::Binder, Substance::Muf, " resin a ", true),
        (Role::Other, Substance::Uf, "Resin A", true),
        (Role::Binder, Substance::Muf, "Resin B", false),
        (Role::Other, Substance::Uf, "Resin B", false),
        (Role::Binder, Substance::Muf, "", false),
    ] {
        let pairs = LiquidPairs::of(&recipe([old.clone()]), &recipe([liquid(7, role, substance, name, "10")]));
        assert_eq!(!pairs.same.is_empty(), same, "{role:?} {substance:?} {name}");
    }
    // Nothing is known of either: they agree in nothing but their function.
    let unknown = |name| recipe([liquid(1, Role::Other, Substance::Other, name, "1")]);
    assert_eq!(LiquidPairs::of(&unknown("Dye"), &unknown("Biocide")).replaced, [pair(1, 1)]);
    assert_eq!(LiquidPairs::of(&unknown(""), &unknown("")).same, [pair(1, 1)]);
}

/// The hardener is dosed on the resin in both, whatever the resin's number is.
#[test]
fn a_dose_on_the_same_liquid_is_the_same() {
    let with = |resin: u16, hardener: u16| {
        let mut salt = liquid(hardener, Role::Hardener, Substance::AmmoniumSulfate, "Hardener", "1");
        salt.dose_way = DoseWay::SolidsOnLiquid(LiquidId(resin));
        recipe([liquid(resin, Role::Binder, Substance::Uf, "UF resin", "10"), salt])
    };
    assert_eq!(differences(&with(1, 2), &with(2, 1)), []);
    let mut on_itself = with(2, 1);
    on_itself.liquids[1].dose_way = DoseWay::SolidsOnLiquid(LiquidId(1));
    assert_eq!(differences(&with(1, 2), &on_itself).len(), 1);
}

/// Taken over alone, the dose must not come to be on whatever liquid has the number here.
#[test]
fn a_dose_on_a_liquid_that_is_not_here_is_on_no_liquid() {
    let mut salt = liquid(2, Role::Hardener, Substance::AmmoniumSulfate, "Hardener", "1");
    salt.dose_way = DoseWay::SolidsOnLiquid(LiquidId(1));
    let old = recipe([liquid(1, Role::Scavenger, Substance::Urea, "Urea", "2"), salt.clone()]);
    salt.dose_way = DoseWay::SolidsOnFibre;
    let mut new = recipe([liquid(1, Role::Binder, Substance::Uf, "UF resin", "10"), salt]);
    let found = differences(&old, &new);
    let choice = found.iter().find(|each| matches!(each, Difference::Choice(..))).copied().unwrap();
    take_over(&mut new, &old, &[choice]);
    let DoseWay::SolidsOnLiquid(base) = new.liquids[1].dose_way else { panic!("{:?}", new.liquids[1]) };
    assert!(new.liquid(base).is_none(), "{base:?}");
}

#[test]
fn other_binders_make_another_recipe() {
    let binders = |all: &[(Substance, &str)]| {
        recipe((1..).zip(all).map(|(id, (substance, name))| liquid(id, Role::Binder, *substance, name, "5")))
    };
    let (uf, pmdi, glue) = ((Substance::Uf, "a"), (Substance::Pmdi, "b"), (Substance::Other, "Glue"));
    for (old, new, other) in [
        (&[uf][..], &[pmdi][..], true),
        (&[uf], &[uf, pmdi], true),
        (&[uf, pmdi], &[pmdi], true),
        (&[uf], &[], true),
        (&[glue], &[(Substance::Other, "Other glue")], true),
        (&[uf], &[(Substance::Uf, "another name")], false),
        (&[uf, pmdi], &[pmdi, uf], false),
        (&[], &[uf], false),
        (&[uf], &[uf, (Substance::Other, " ")], false),
        (&[glue], &[(Substance::Other, "glue ")], false),
    ] {
        assert_eq!(other_binders(&binders(old), &binders(new)), other, "{old:?} {new:?}");
    }
}

/// Up to six liquids with numbers of their own, some dosed on another one.
fn any_recipe() -> impl Strategy<Value = Draft> {
    let one = (
        prop::sample::select(Role::ALL),
        prop::sample::select(Substance::ALL),
        prop::sample::select(vec!["", "A", "B"]),
        "[1-3]",
        prop::option::of(0_usize..6),
    );
    let numbers = prop::sample::subsequence((1_u16..12).collect::<Vec<_>>(), 6).prop_shuffle();
    (prop::collection::vec(one, 0..6), numbers).prop_map(|(all, numbers)| {
        let count = all.len();
        recipe(all.into_iter().enumerate().map(|(at, (role, substance, name, dose, on))| {
            let mut liquid = liquid(numbers[at], role, substance, name, &dose);
            if let Some(on) = on.filter(|on| *on < count && *on != at) {
                liquid.dose_way = DoseWay::SolidsOnLiquid(LiquidId(numbers[on]));
            }
            liquid
        }))
    })
}

proptest! {
    #[test]
    fn every_liquid_is_somewhere_once(old in any_recipe(), new in any_recipe()) {
        let LiquidPairs { same, replaced, removed, added } = LiquidPairs::of(&old, &new);
        let both = || same.iter().chain(&replaced);
        let mut of_old: Vec<LiquidId> = both().map(|pair| pair.old).chain(removed).collect();
        let mut of_new: Vec<LiquidId> = both().map(|pair| pair.new).chain(added).collect();
        let ids = |draft: &Draft| {
            let mut ids: Vec<LiquidId> = draft.liquids.iter().map(|liquid| liquid.id).collect();
            ids.sort();
            ids
        };
        of_old.sort();
        of_new.sort();
        prop_assert_eq!((of_old, of_new), (ids(&old), ids(&new)));
    }

    #[test]
    fn what_is_taken_over_from_the_old_recipe_differs_no_more(old in any_recipe(), new in any_recipe()) {
        let mut all = new.clone();
        take_over(&mut all, &old, &differences(&old, &new));
        prop_assert_eq!(differences(&old, &all), []);
        let mut ids: Vec<LiquidId> = all.liquids.iter().map(|liquid| liquid.id).collect();
        ids.sort();
        ids.dedup();
        prop_assert_eq!(ids.len(), all.liquids.len(), "two liquids with one number");
    }

    /// Other numbers and another order are no difference, where no two liquids are alike.
    #[test]
    fn numbers_and_places_do_not_matter(old in any_recipe(), more in 20_u16..40) {
        let kind = |liquid: &LiquidDraft| (liquid.role, liquid.substance, liquid.name.clone());
        let alike = |one: &LiquidDraft| old.liquids.iter().filter(|other| kind(other) == kind(one)).count() > 1;
        prop_assume!(!old.liquids.iter().any(alike));
        let mut new = old.clone();
        for liquid in &mut new.liquids {
            liquid.id.0 += more;
            if let DoseWay::SolidsOnLiquid(base) = &mut liquid.dose_way {
                base.0 += more;
            }
        }
        new.liquids.reverse();
        prop_assert_eq!(differences(&old, &new), []);
    }
}
