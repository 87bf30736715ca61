//! What is typed for a comparison, and what comes of it: prices filled in, sources of uncertainty.

use haulm::domain::compare::draft::{CompareDraft, UncertaintyDraft};
use haulm::domain::compare::number_key::{number_key, number_of};
use haulm::domain::compare::price::{fill_prices, price_key};
use haulm::domain::compare::side::{ComparedSystem, with_liquids};
use haulm::domain::compare::uncertainty::input_uncertainty::{Form, Size};
use haulm::domain::compare::uncertainty::source;
use haulm::domain::compare::uncertainty::statement::Statement;
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Draft, Entry, Field, LiquidField, example};
use haulm::quantity::Unit;

fn uf() -> Draft {
    with_liquids(&example(), &SystemKey::Uf.system().liquids)
}

fn systems() -> Vec<ComparedSystem> {
    vec![ComparedSystem::new("pMDI", example()), ComparedSystem::new("UF", uf())]
}

#[test]
fn a_price_is_taken_from_the_open_recipe_or_as_typed_and_never_spoils_a_system() {
    let (open, mut system) = (example(), uf());
    let resin = price_key(&system.liquids[0]);
    let mut typed = CompareDraft::default();
    let price = |draft: &Draft, name: &str| {
        draft.liquids.iter().find(|liquid| liquid.name == name).map(|liquid| liquid.price.text.clone()).unwrap()
    };
    typed.prices.insert(resin.clone(), Entry::typed("much", Unit::PerTonne));
    fill_prices(&typed, &open, &mut system);
    // The example's wax costs 900 a tonne; what cannot be read is left blank.
    assert_eq!((price(&system, "Wax emulsion").as_str(), price(&system, "UF resin").as_str()), ("900", ""));
    assert!(ComparedSystem::new("UF", system.clone()).case().is_some());
    typed.prices.insert(resin, Entry::typed("450", Unit::PerTonne));
    fill_prices(&typed, &open, &mut system);
    assert_eq!(price(&system, "UF resin"), "450");
    // A price that is there stays.
    typed.prices.insert("pMDI".to_owned(), Entry::typed("1", Unit::PerTonne));
    let mut own = example();
    fill_prices(&typed, &open, &mut own);
    assert_eq!(own, example());
}

#[test]
fn a_number_is_found_again_by_its_key_in_another_system() {
    for system in systems() {
        let case = system.case().unwrap();
        for field in haulm::domain::compare::variable::used(&case.input) {
            assert_eq!(number_of(&system.draft, case, &number_key(&system.draft, field)), Some(field));
        }
    }
    let [pmdi, uf] = systems().try_into().unwrap();
    let wax = |system: &ComparedSystem| {
        let liquid = system.draft.liquids.iter().find(|liquid| liquid.name == "Wax emulsion").unwrap();
        Field::Liquid(liquid.id, LiquidField::Dose)
    };
    let key = number_key(&pmdi.draft, wax(&pmdi));
    assert_ne!(wax(&pmdi), wax(&uf));
    assert_eq!(number_of(&uf.draft, uf.case().unwrap(), &key), Some(wax(&uf)));
    assert_eq!(number_of(&uf.draft, uf.case().unwrap(), "dose: pMDI"), None);
}

#[test]
fn a_source_starts_from_the_usual_and_goes_by_what_is_typed() {
    let mut typed = UncertaintyDraft::default();
    let systems = systems();
    let find =
        |typed: &UncertaintyDraft, key: &str| source::all(typed, &systems).into_iter().find(|source| source.key == key);
    let belt = find(&typed, "fibre_flow").unwrap();
    assert_eq!(belt.targets, [(0, Field::FibreFlow), (1, Field::FibreFlow)]);
    assert_eq!(belt.spread(&typed).unwrap().size, Size::Relative(0.01));
    assert_eq!(belt.stated(&typed), Statement { form: Form::HalfWidth, relative: true });
    assert_eq!(belt.width(&typed, Unit::KilogramPerHour), Some(1.0));

    // Stated another way it is as wide as it was: 1 % of 8500 kg/h.
    belt.state(&mut typed, Statement { form: Form::Standard, relative: false }, Unit::KilogramPerHour, |n| {
        n.to_string()
    });
    assert_eq!(typed.source("fibre_flow").unwrap().statement.unwrap().key(), "standard");
    assert_eq!(typed.source("fibre_flow").unwrap().size.as_ref().unwrap().text, "85");
    let spread = belt.spread(&typed).unwrap();
    assert_eq!(spread.form, Form::Standard);
    assert!((spread.stated(belt.at) - Unit::KilogramPerHour.to_base(85.0)).abs() < 1e-12);

    // Blank, below zero and unreadable are taken as exact, and the source stays on the page.
    for text in ["", "0", "-1", "much"] {
        typed.source_mut("fibre_flow").size = Some(Entry::typed(text, Unit::KilogramPerHour));
        let belt = find(&typed, "fibre_flow").unwrap();
        assert_eq!((belt.spread(&typed), belt.uncertain(&typed)), (None, None), "{text}");
    }

    // Board density is a target and has no ± to start from; one that is typed acts on all systems.
    assert!(find(&typed, "board_density").is_none());
    typed.source_mut("board_density").size = Some(Entry::typed("5", Unit::KilogramPerCubicMetre));
    let density = find(&typed, "board_density").unwrap();
    assert_eq!((density.start, density.targets.len()), (None, 2));
    assert_eq!(density.uncertain(&typed).unwrap().spread.size, Size::Absolute(5.0));
    typed.forget("board_density");
    assert!(find(&typed, "board_density").is_none());
}

/// A ± on the wet basis is not the same number on the dry basis: (1 + ω)² at ω = 0.045 is 1.092.
#[test]
fn a_width_holds_in_the_unit_it_was_typed_in() {
    let mut typed = UncertaintyDraft::default();
    typed.source_mut("fibre_moisture").size = Some(Entry::typed("1", Unit::PercentWetBasis));
    let systems = systems();
    let all = source::all(&typed, &systems);
    let meter = all.iter().find(|source| source.key == "fibre_moisture").unwrap();
    let dry = meter.width(&typed, Unit::PercentDryBasis).unwrap();
    assert!((dry - 1.092).abs() < 1e-3, "{dry}");
    let wet = meter.width(&typed, Unit::PercentWetBasis).unwrap();
    assert!((wet - 1.0).abs() < 3e-4, "{wet}");
}
