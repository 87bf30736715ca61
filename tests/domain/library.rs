//! The starting library and the example: what they say must hold together and be marked for what it is.

use haulm::domain::chemistry::solute::Solute;
use haulm::domain::chemistry::solution_density::density_at_20c;
use haulm::domain::recipe::binder_system::{SystemKey, add_liquids};
use haulm::domain::recipe::draft::LiquidDraft;
use haulm::domain::{
    Draft, Entry, Field, Figure, Grade, LiquidField, LiquidFigure, Place, Substance, What, example, work_out,
};
use haulm::quantity::Unit;
use std::collections::HashSet;
use uom::si::f64::Ratio;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::ratio::percent;

/// A recipe without liquids on well dried fibre.
fn plain_recipe() -> Draft {
    let mut draft = Draft::default();
    for (field, text, unit) in [
        (Field::FibreFlow, "10000", Unit::KilogramPerHour),
        (Field::FibreMoisture, "2", Unit::PercentDryBasis),
        (Field::MatMoisture, "11.5", Unit::PercentDryBasis),
        (Field::BoardDensity, "700", Unit::KilogramPerCubicMetre),
        (Field::BoardMoisture, "7", Unit::PercentDryBasis),
        (Field::Thickness, "16", Unit::Millimetre),
        (Field::SandTop, "0.4", Unit::Millimetre),
        (Field::SandBottom, "0.4", Unit::Millimetre),
    ] {
        *draft.entry_mut(field).unwrap() = Entry::typed(text, unit);
    }
    draft
}

fn number(entry: &Entry) -> f64 {
    entry.text.parse().unwrap()
}

#[test]
fn every_system_solves_without_advice() {
    for key in SystemKey::ALL {
        let mut draft = plain_recipe();
        add_liquids(&mut draft, &key.system().liquids);
        let outcome = work_out(&draft);
        assert!(outcome.case.is_some(), "{key:?}: {:?}", outcome.findings);
        assert_eq!(outcome.findings, [], "{key:?}");
        let dose = outcome.case.unwrap().figure(Figure::WaterDose).unwrap();
        assert!(dose.get(Unit::KilogramPerHour) > 0.0, "{key:?}: no water dose");
    }
}

#[test]
fn every_value_is_marked_and_says_where_it_comes_from() {
    for key in SystemKey::ALL {
        for liquid in key.system().liquids {
            let name = &liquid.name;
            assert!(!name.is_empty(), "{key:?}");
            assert!(liquid.source.starts_with("Typical."), "{name}: {}", liquid.source);
            for word in ["ose", "olids", "ensity"] {
                let said = liquid.source.contains(word) || (word == "olids" && liquid.source.contains("oncentration"));
                assert!(said, "{name} does not say where its {word} comes from");
            }
            for part in LiquidField::ALL {
                let entry = liquid.entry(*part);
                assert!(entry.preset, "{name} {part:?}");
            }
        }
    }
}

/// The typical doses lie where the literature named beside each puts them.
#[test]
fn doses_lie_where_the_sources_say() {
    let dose = |key: SystemKey, at: usize| number(&key.system().liquids[at].dose);
    assert!((9.0..=12.0).contains(&dose(SystemKey::Uf, 0)), "Yousefi (2009)");
    assert!((14.0..=17.0).contains(&dose(SystemKey::Muf, 0)), "Halvarsson et al. (2008)");
    assert!((3.0..=5.0).contains(&dose(SystemKey::Pmdi, 0)), "Halvarsson et al. (2010)");
    assert!((0.85..=3.0).contains(&dose(SystemKey::Uf, 1)), "Čuk et al. (2011)");
    assert!((0.5..=1.0).contains(&dose(SystemKey::Pmdi, 1)), "Wood Handbook (2010)");
    let solids = number(&SystemKey::Uf.system().liquids[0].solids);
    assert!((65.0..=67.0).contains(&solids), "Dunky (1998)");
}

/// Source: CRC Handbook of Chemistry and Physics, 102nd ed.: ammonium sulfate 20 % 1.1154, urea 40 %
/// 1.1106 g/cm³ at 20 °C.
#[test]
fn solutions_have_the_density_of_their_concentration() {
    let mut seen = 0;
    for liquid in SystemKey::ALL.iter().flat_map(|key| key.system().liquids) {
        let solute = match liquid.substance {
            Substance::AmmoniumSulfate => Solute::AmmoniumSulfate,
            Substance::Urea => Solute::Urea,
            _ => continue,
        };
        let table = density_at_20c(solute, Ratio::new::<percent>(number(&liquid.solids))).unwrap();
        approx::assert_relative_eq!(
            table.get::<kilogram_per_cubic_meter>(),
            number(&liquid.density),
            max_relative = 1e-9
        );
        seen += 1;
    }
    assert!(seen >= 4);
}

#[test]
fn keys_are_distinct() {
    let keys: HashSet<_> = SystemKey::ALL.iter().map(|key| key.key()).collect();
    assert_eq!(keys.len(), SystemKey::ALL.len());
}

/// Numbers taken by a recipe are not taken twice, and a dose stays on the liquid it was meant on.
#[test]
fn systems_keep_their_bases_in_a_recipe() {
    let mut draft = plain_recipe();
    add_liquids(&mut draft, &SystemKey::Uf.system().liquids);
    draft.liquids.remove(2);
    add_liquids(&mut draft, &SystemKey::Tannin.system().liquids);
    let ids: HashSet<_> = draft.liquids.iter().map(|liquid| liquid.id).collect();
    assert_eq!(ids.len(), draft.liquids.len());
    let base = |name: &str| {
        let liquid = draft.liquids.iter().find(|liquid| liquid.name == name).unwrap();
        match liquid.dose_way {
            haulm::domain::DoseWay::SolidsOnLiquid(base) => draft.liquid(base).unwrap().name.clone(),
            other => panic!("{other:?}"),
        }
    };
    assert_eq!(base("Ammonium sulfate solution"), "UF resin");
    assert_eq!(base("Hexamine solution"), "Tannin adhesive");
}

/// The hybrid's doses are below what each binder has alone, and only there pass as usual.
#[test]
fn a_binder_beside_another_may_be_less() {
    let unusual = |liquids: &[LiquidDraft]| {
        let mut draft = plain_recipe();
        add_liquids(&mut draft, liquids);
        let not_usual = |finding: &&haulm::domain::Finding| matches!(finding.what, What::NotUsual { .. });
        work_out(&draft).findings.iter().filter(not_usual).map(|finding| finding.place).collect::<Vec<_>>()
    };
    let hybrid = SystemKey::UfPmdi.system().liquids;
    assert_eq!(unusual(&hybrid), []);
    let pmdi = hybrid.iter().find(|liquid| liquid.substance == Substance::Pmdi).unwrap();
    let alone = unusual(std::slice::from_ref(pmdi));
    assert!(matches!(alone[..], [Place::Field(Field::Liquid(_, LiquidField::Dose))]), "{alone:?}");
}

#[test]
fn the_example_shows_a_whole_recipe() {
    let draft = example();
    let outcome = work_out(&draft);
    let grave = outcome.findings.iter().filter(|finding| finding.grade != Grade::Note).count();
    assert!(grave <= 1, "{:?}", outcome.findings);
    let case = outcome.case.unwrap();
    for figure in Figure::PLAIN {
        assert!(case.figure(*figure).is_some(), "{figure:?}");
    }
    let get = |figure: Figure, unit: Unit| case.figure(figure).unwrap().get(unit);
    assert!(get(Figure::WaterDose, Unit::KilogramPerHour) > 50.0);
    assert!((7.0..14.0).contains(&get(Figure::PressFactor, Unit::SecondPerMillimetre)));
    assert!((5.0..30.0).contains(&get(Figure::LineSpeed, Unit::MetrePerMinute)));
    assert!((100.0..500.0).contains(&get(Figure::Cost, Unit::PerCubicMetre)));
    assert_eq!(case.solved.capacities.len(), 4);
    for liquid in &draft.liquids {
        let cost = case.figure(Figure::Liquid(liquid.id, LiquidFigure::Cost)).unwrap();
        assert!(cost.base > 0.0);
        let touched = [LiquidField::Dose, LiquidField::Solids, LiquidField::Density, LiquidField::Price];
        assert!(touched.iter().all(|part| !liquid.entry(*part).preset), "{}", liquid.name);
    }
}
