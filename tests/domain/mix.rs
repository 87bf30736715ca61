//! What is typed where solutions and glues are made up: read, judged and worked out.

use haulm::domain::chemistry::solute::Solute;
use haulm::domain::mixing::glue_batch::GlueError;
use haulm::domain::mixing::{
    AmountWay, MixDraft, MixError, MixField, PartKey, PremixCandidate, ShareWay, batch, cautions, enough_for,
    fill_in_shares, formaldehyde_ratio, isocyanate, recipe_solutions, solution, solution_in, tank, weighed_solutions,
};
use haulm::domain::recipe::binder_system::{SystemKey, add_liquids};
use haulm::domain::trial::{SheetDraft, WeighField};
use haulm::domain::{Caution, Draft, Entry, Field, LiquidField, example, work_out};
use haulm::quantity::Unit;
use haulm::quantity::format::DecimalMark;
use proptest::prelude::*;
use uom::si::mass::kilogram;
use uom::si::ratio::{percent, ratio};

fn put(mix: &mut MixDraft, field: MixField, text: &str) {
    let unit = mix.entry(field).unit;
    *mix.entry_mut(field) = Entry::typed(text, unit);
}

/// The example with another binder system, and what its tank may hold.
fn recipe(system: SystemKey) -> Draft {
    let mut draft = example();
    draft.liquids.clear();
    add_liquids(&mut draft, &system.system().liquids);
    draft
}

fn candidates(mix: &MixDraft, draft: &Draft) -> Vec<PremixCandidate> {
    tank(mix, draft, &work_out(draft).case.unwrap())
}

fn inside(candidates: &[PremixCandidate]) -> Vec<&str> {
    fn name(candidate: &PremixCandidate) -> &str {
        match &candidate.key {
            PartKey::Liquid(name) => name,
            PartKey::Thinning => "thinning",
            PartKey::Water => "water",
        }
    }
    candidates.iter().filter(|candidate| candidate.in_tank).map(name).collect()
}

#[test]
fn a_first_visit_shows_a_solution() {
    let made = solution(&MixDraft::default()).unwrap();
    assert!((made.make_up.salt.get::<kilogram>() - 20.0).abs() < 1e-9);
    assert!((made.make_up.water.get::<kilogram>() - 80.0).abs() < 1e-9);
}

#[test]
fn every_field_has_an_entry_of_its_kind_and_a_key_of_its_own() {
    let mix = MixDraft::default();
    let mut keys = Vec::new();
    for field in MixField::ALL {
        assert_eq!(mix.entry(*field).unit.dimension(), field.kind().dimension(), "{field:?}");
        assert_eq!(field.limit().unit.dimension(), field.kind().dimension(), "{field:?}");
        keys.push(field.key());
    }
    keys.sort_unstable();
    keys.dedup();
    assert_eq!(keys.len(), MixField::ALL.len());
}

/// A box that cannot be read says so itself; nothing is computed from it.
#[test]
fn nothing_is_reckoned_from_what_cannot_be_read() {
    for (field, text) in [
        (MixField::Concentration, "much"),
        (MixField::Concentration, "100"),
        (MixField::Coldest, "61"),
        (MixField::SolutionMass, "0"),
        (MixField::MeasuredDensity, "-1"),
    ] {
        let mut mix = MixDraft::default();
        put(&mut mix, field, text);
        assert_eq!(solution(&mix).err(), Some(MixError::Entry), "{field:?} {text}");
    }
    let mut mix = MixDraft::default();
    assert_eq!(formaldehyde_ratio(&mix).err(), Some(MixError::Entry), "two boxes are blank");
    put(&mut mix, MixField::Nco, "0");
    assert_eq!(isocyanate(&mix).err(), Some(MixError::Entry));
}

#[test]
fn what_does_not_dissolve_is_refused() {
    let mut mix = MixDraft::default();
    put(&mut mix, MixField::Concentration, "45");
    assert!(matches!(solution(&mix), Err(MixError::Refused(_))));
}

/// Source: computed from molar masses (IUPAC abridged): 1.480099, and 1.233415 with 100 g more urea.
#[test]
fn formaldehyde_to_urea_of_a_charge() {
    let mut mix = MixDraft::default();
    put(&mut mix, MixField::Formalin, "1000 g");
    put(&mut mix, MixField::Urea, "0,5");
    let (charge, after) = formaldehyde_ratio(&mix).unwrap();
    assert!((charge.get::<ratio>() - 1.480_099).abs() < 5e-7);
    assert_eq!(after, None);
    put(&mut mix, MixField::ExtraUrea, "0.1");
    let (_, after) = formaldehyde_ratio(&mix).unwrap();
    assert!((after.unwrap().get::<ratio>() - 1.233_415).abs() < 5e-7);
}

#[test]
fn what_belongs_together_goes_into_the_tank_by_itself() {
    let mix = MixDraft::default();
    for (system, expected) in [
        (SystemKey::Uf, &["UF resin", "Ammonium sulfate solution", "Urea solution"][..]),
        (SystemKey::Pf, &["PF resin"]),
        (SystemKey::Pmdi, &[]),
        // The water that emulsifies a pMDI at the nozzle stays at the nozzle.
        (SystemKey::PmdiEmulsified, &[]),
        (SystemKey::Tannin, &["Tannin adhesive", "Hexamine solution"]),
    ] {
        assert_eq!(inside(&candidates(&mix, &recipe(system))), expected, "{system:?}");
    }
}

#[test]
fn a_thinned_resin_goes_in_with_the_water_that_thins_it() {
    let mut draft = recipe(SystemKey::Uf);
    let id = draft.liquids[0].id;
    draft.entry_mut(Field::Liquid(id, LiquidField::SpraySolids)).unwrap().text = "55".to_owned();
    let parts = candidates(&MixDraft::default(), &draft);
    assert_eq!(inside(&parts), ["UF resin", "Ammonium sulfate solution", "Urea solution", "thinning"]);
    // 12/0.55 − 12/0.66 per 12/0.66 of resin.
    let per_resin = parts[4].flow / parts[0].flow;
    assert!((per_resin.get::<ratio>() - (0.66 / 0.55 - 1.0)).abs() < 1e-9);
}

/// A choice is of a liquid's name: it holds in another recipe with that liquid, and for no other.
#[test]
fn a_choice_follows_the_name() {
    let mut mix = MixDraft::default();
    mix.part_mut(&PartKey::Liquid("Wax emulsion".to_owned())).in_tank = Some(true);
    for (system, expected) in [
        (SystemKey::Pmdi, &["Wax emulsion"][..]),
        (SystemKey::Muf, &["MUF resin", "Ammonium sulfate solution", "Wax emulsion"]),
    ] {
        assert_eq!(inside(&candidates(&mix, &recipe(system))), expected, "{system:?}");
    }
}

/// Per 100 kg of fibre 12/0.66 = 18.1818 kg resin, 0.24/0.2 = 1.2 kg hardener, 0.36/0.4 = 0.9 kg urea.
#[test]
fn a_glue_in_the_recipes_proportions() {
    let mix = MixDraft::default();
    let batch = batch(&mix, &candidates(&mix, &recipe(SystemKey::Uf))).unwrap();
    let sum = 12.0 / 0.66 + 1.2 + 0.9;
    for (part, of) in batch.parts.iter().zip([12.0 / 0.66, 1.2, 0.9]) {
        assert!((part.mass.get::<kilogram>() - 500.0 * of / sum).abs() < 1e-6);
    }
    assert!((batch.mix.solids.get::<percent>() - 100.0 * 12.6 / sum).abs() < 1e-6);
}

#[test]
fn shares_are_filled_in_as_the_recipe_has_them_and_what_was_typed_stays() {
    let mut mix = MixDraft { share_way: ShareWay::Typed, ..MixDraft::default() };
    let draft = recipe(SystemKey::Uf);
    let hardener = PartKey::Liquid("Ammonium sulfate solution".to_owned());
    mix.part_mut(&PartKey::Liquid("Urea solution".to_owned())).share = Entry::typed("7", Unit::One);
    let parts = candidates(&mix, &draft);
    assert_eq!(batch(&mix, &parts).err(), Some(MixError::Entry), "some shares are blank");
    fill_in_shares(&mut mix, &parts, DecimalMark::Comma);
    let text = |key: &str| mix.part(&PartKey::Liquid(key.to_owned())).unwrap().share.text.clone();
    assert_eq!([text("UF resin"), text("Ammonium sulfate solution"), text("Urea solution")], ["100", "6,6", "7"]);
    assert!(batch(&mix, &parts).is_ok());
    mix.part_mut(&hardener).share.text = "-2".to_owned();
    assert_eq!(batch(&mix, &parts).err(), Some(MixError::Entry));
}

#[test]
fn cautions_are_of_what_is_in_the_tank() {
    let mut mix = MixDraft::default();
    let uf = recipe(SystemKey::Uf);
    assert_eq!(cautions(&candidates(&mix, &uf)), [Caution::Formaldehyde, Caution::AcidCure]);
    mix.part_mut(&PartKey::Liquid("Ammonium sulfate solution".to_owned())).in_tank = Some(false);
    assert_eq!(cautions(&candidates(&mix, &uf)), [Caution::Formaldehyde]);

    let pmdi = recipe(SystemKey::Pmdi);
    mix.part_mut(&PartKey::Liquid("pMDI".to_owned())).in_tank = Some(true);
    let alone = candidates(&mix, &pmdi);
    assert_eq!(cautions(&alone), [Caution::Isocyanate]);
    assert!(batch(&mix, &alone).is_ok());
    mix.part_mut(&PartKey::Water).in_tank = Some(true);
    let refused = batch(&mix, &candidates(&mix, &pmdi)).err();
    assert_eq!(refused, Some(MixError::Refused(GlueError::IsocyanateWithWater)));
}

#[test]
fn an_empty_tank_is_nothing_to_mix() {
    let mix = MixDraft::default();
    let parts = candidates(&mix, &recipe(SystemKey::Pmdi));
    assert_eq!(batch(&mix, &parts).err(), Some(MixError::Refused(GlueError::NothingToMix)));
}

proptest! {
    /// Whatever is typed, nothing panics and what comes out is a number.
    #[test]
    fn whatever_is_typed(texts in prop::collection::vec("[-0-9., e%a-z]{0,9}", 12), volume: bool, share in "[-0-9.,e]{0,9}") {
        let mut mix = MixDraft { share_way: ShareWay::Typed, ..MixDraft::default() };
        if volume {
            (mix.solution_way, mix.glue_way) = (AmountWay::Volume, AmountWay::Volume);
        }
        for (field, text) in MixField::ALL.iter().zip(&texts) {
            put(&mut mix, *field, text);
        }
        mix.part_mut(&PartKey::Liquid("UF resin".to_owned())).share = Entry::typed(share, Unit::One);
        if let Ok(made) = solution(&mix) {
            prop_assert!(made.make_up.salt.value.is_finite() && made.make_up.water.value >= 0.0);
        }
        if let Ok(found) = isocyanate(&mix) {
            prop_assert!(found.equivalent_weight.value.is_finite());
        }
        if let Ok((charge, after)) = formaldehyde_ratio(&mix) {
            prop_assert!(charge.value.is_finite() && after.is_none_or(|after| after <= charge));
        }
        let mut draft = recipe(SystemKey::Uf);
        let id = draft.liquids[0].id;
        draft.entry_mut(Field::Liquid(id, LiquidField::Density)).unwrap().text = "1300".to_owned();
        let parts = candidates(&mix, &draft);
        if let Ok(batch) = batch(&mix, &parts) {
            prop_assert!(batch.parts.iter().all(|part| part.mass.value.is_finite() && part.volume.value.is_finite()));
        }
    }
}

/// While nobody has typed a concentration it is the recipe's; glue and weigh sheet say how much of the solution they take.
#[test]
fn a_solution_follows_recipe_glue_and_weigh_sheet() {
    let mut draft = recipe(SystemKey::Uf);
    let hardener = draft.liquids[1].id;
    *draft.entry_mut(Field::Liquid(hardener, LiquidField::Solids)).unwrap() = Entry::typed("30", Unit::Percent);
    let case = work_out(&draft).case.unwrap();
    let solutions = recipe_solutions(&case);
    let found: Vec<_> = solutions.iter().map(|each| (each.solute, each.solids.get::<percent>().round())).collect();
    assert_eq!(found, [(Solute::AmmoniumSulfate, 30.0), (Solute::Urea, 40.0)]);

    let mut mix = MixDraft::default();
    let in_effect = mix.with_recipe(&solutions, DecimalMark::Comma);
    assert_eq!(in_effect.entry(MixField::Concentration), &Entry::preset("30", Unit::Percent));
    assert!((solution(&in_effect).unwrap().make_up.salt.get::<kilogram>() - 30.0).abs() < 1e-9);
    // The recipe has no solution of another salt.
    mix.solute = Solute::AmmoniumChloride;
    assert_eq!(mix.with_recipe(&solutions, DecimalMark::Point), mix);
    mix.solute = Solute::AmmoniumSulfate;
    put(&mut mix, MixField::Concentration, "25");
    assert_eq!(mix.with_recipe(&solutions, DecimalMark::Point), mix);

    // UF 12 % at 66 %, hardener 2 % of its solids at 30 %, urea 3 % at 40 %: 18.1818, 0.8 and 0.9 of 19.8818 kg.
    let tank = candidates(&mix, &draft);
    let glue = batch(&mix, &tank).unwrap();
    let of_glue = solution_in(&glue, &tank, Solute::AmmoniumSulfate).unwrap().get::<kilogram>();
    assert!((of_glue - 500.0 * 0.8 / 19.8818).abs() < 1e-3, "{of_glue}");
    assert_eq!(solution_in(&glue, &tank, Solute::AmmoniumNitrate), None);
    let fibre = enough_for(&glue, &tank, &case).unwrap().get::<kilogram>();
    assert!((fibre - 500.0 * 100.0 / 19.8818).abs() < 0.1, "{fibre}");

    // On the bench: 0.8 parts of hardener solution to 0.9 of urea, whatever the mat; none without a mat.
    assert_eq!(weighed_solutions(&draft, &SheetDraft::default()), []);
    let mut sheet = SheetDraft::default();
    for field in [WeighField::MatLength, WeighField::MatWidth] {
        *sheet.entry_mut(field) = Entry::typed("350", Unit::Millimetre);
    }
    let weighed = weighed_solutions(&draft, &sheet);
    assert_eq!(weighed.iter().map(|(solute, _)| *solute).collect::<Vec<_>>(), [Solute::AmmoniumSulfate, Solute::Urea]);
    let proportion = (weighed[0].1 / weighed[1].1).get::<ratio>();
    assert!((proportion - 0.8 / 0.9).abs() < 1e-9, "{proportion}");
}
