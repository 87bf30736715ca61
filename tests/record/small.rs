//! The open draft, the settings, and the mill's own binder systems.

use crate::faulty::{Fault, FaultyStore};
use crate::sample::{draft, stamp, title};
use haulm::domain::Entry;
use haulm::domain::compare::draft::CompareDraft;
use haulm::domain::compare::system_choice::SystemChoice;
use haulm::domain::mixing::{MixDraft, MixField, PartKey};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::kind::System;
use haulm::quantity::{Kind, Unit, Units};
use haulm::record::compare::COMPARISON;
use haulm::record::id::RevisionId;
use haulm::record::mix::MIXING;
use haulm::record::open_draft::{OpenDraft, RECIPE};
use haulm::record::revision::{Revision, Standing};
use haulm::record::settings::{Settings, Theme};
use haulm::record::shelf::{SETTINGS, SaveError, Shelf, Unread};
use haulm::record::store::Store;
use haulm::record::summary::Order;
use haulm::record::system::BinderSystem;
use haulm::record::{Document, Stored};
use serde_json::{Value, json};

fn new_shelf() -> (FaultyStore, Shelf<FaultyStore>) {
    let store = FaultyStore::default();
    (store.clone(), Shelf::open(store).unwrap())
}

fn work(density: &str) -> OpenDraft {
    let from = RevisionId::parse("00112233445566778899aabbccddeeff");
    OpenDraft { from, title: title("Straw 16"), draft: draft(density), remark: "dry day".to_owned(), example: false }
}

/// What an open document says in the store.
fn kept<T: serde::Serialize + serde::de::DeserializeOwned>(
    shelf: &Shelf<FaultyStore>,
    document: &Document<T>,
) -> Result<Option<T>, Unread> {
    Ok(shelf.document(document)?.map(|stored| stored.content))
}

fn keep(shelf: &Shelf<FaultyStore>, density: &str) -> Result<(), SaveError> {
    shelf.keep(&RECIPE, &Stored::new(work(density)))
}

#[test]
fn the_work_in_hand_survives_a_reload() {
    let (store, shelf) = new_shelf();
    assert_eq!(kept(&shelf, &RECIPE), Ok(None));
    keep(&shelf, "680").unwrap();
    keep(&shelf, "7,3 0").unwrap();
    assert_eq!(kept(&Shelf::open(store).unwrap(), &RECIPE), Ok(Some(work("7,3 0"))));
}

#[test]
fn the_last_work_in_hand_stays_when_the_next_is_refused() {
    let (store, shelf) = new_shelf();
    keep(&shelf, "680").unwrap();
    for fault in [Fault::Full, Fault::Blocked, Fault::Dropped] {
        store.fail_write(0, fault);
        assert!(keep(&shelf, "700").is_err(), "{fault:?}");
        assert_eq!(kept(&shelf, &RECIPE), Ok(Some(work("680"))), "{fault:?}");
    }
}

#[test]
fn a_document_says_how_often_it_was_written_and_keeps_what_a_later_app_put_there() {
    let (store, shelf) = new_shelf();
    shelf.keep(&RECIPE, &Stored { edition: 7, ..Stored::new(work("680")) }).unwrap();
    let mut text: Value = serde_json::from_str(&store.inner.read(RECIPE.key).unwrap().unwrap()).unwrap();
    text["later"] = json!([1, 2]);
    store.inner.write(RECIPE.key, &text.to_string()).unwrap();
    let stored = shelf.document(&RECIPE).unwrap().unwrap();
    assert_eq!((stored.edition, &stored.extra["later"]), (7, &json!([1, 2])));
    shelf.keep(&RECIPE, &Stored { edition: 8, content: work("690"), ..stored }).unwrap();
    let again = shelf.document(&RECIPE).unwrap().unwrap();
    assert_eq!((again.edition, again.content, again.extra.len()), (8, work("690"), 1));
}

/// What cannot be read is set aside before it is written over; where that fails, it is not.
#[test]
fn what_cannot_be_read_is_set_aside_before_it_is_written_over() {
    for key in [RECIPE.key, SETTINGS, MIXING.key] {
        let (store, shelf) = new_shelf();
        let keep = || match key {
            SETTINGS => shelf.keep_settings(&Settings::default()),
            _ if key == RECIPE.key => keep(&shelf, "680"),
            _ => shelf.keep(&MIXING, &Stored::new(MixDraft::default())),
        };
        store.inner.write(key, "half a tex").unwrap();
        let refused = match key {
            SETTINGS => shelf.settings().err(),
            _ if key == RECIPE.key => kept(&shelf, &RECIPE).err(),
            _ => kept(&shelf, &MIXING).err(),
        };
        assert!(matches!(refused, Some(Unread::Refused(_))), "{key}");
        store.fail_write(0, Fault::Full);
        assert!(keep().is_err());
        assert_eq!(store.inner.read(key).unwrap().as_deref(), Some("half a tex"));
        keep().unwrap();
        keep().unwrap();
        let aside = shelf.aside().unwrap();
        assert_eq!(aside.iter().map(|(_, text)| text.as_str()).collect::<Vec<_>>(), ["half a tex"]);
    }
}

#[test]
fn what_cannot_be_read_at_the_start_is_set_aside_at_once() {
    let (store, shelf) = new_shelf();
    store.inner.write(RECIPE.key, "half a tex").unwrap();
    store.fail_write(0, Fault::Full);
    assert!(shelf.set_aside(RECIPE.key).is_err());
    assert_eq!(store.inner.read(RECIPE.key).unwrap().as_deref(), Some("half a tex"), "no room: it stays");
    shelf.set_aside(RECIPE.key).unwrap();
    assert_eq!(kept(&shelf, &RECIPE), Ok(None));
    assert_eq!(shelf.aside().unwrap()[0].1, "half a tex");
}

#[test]
fn what_is_typed_for_solutions_and_glues_is_kept() {
    let (store, shelf) = new_shelf();
    let mut typed = MixDraft::default();
    typed.entry_mut(MixField::Concentration).text = "22,5".to_owned();
    typed.part_mut(&PartKey::Liquid("UF 66".to_owned())).in_tank = Some(false);
    typed.part_mut(&PartKey::Water).in_tank = Some(true);
    shelf.keep(&MIXING, &Stored::new(typed.clone())).unwrap();
    assert_eq!(kept(&Shelf::blank(store.clone()), &MIXING), Ok(Some(typed)));
    // A later app may leave something out.
    store.inner.write(MIXING.key, r#"{"haulm":"mix","version":1,"solute":"urea"}"#).unwrap();
    assert_eq!(kept(&shelf, &MIXING).unwrap().unwrap().entry(MixField::Nco).text, "31");
}

/// A comparison names a saved recipe by its revision: a later save is another one.
#[test]
fn a_compared_revision_stays_as_it_was_saved() {
    let (_, mut shelf) = new_shelf();
    let first = shelf.save(Revision::first(title("Straw 16"), draft("680"), stamp(1)).unwrap()).unwrap();
    let before = shelf.compared_revision(&first.to_string()).unwrap();
    assert_eq!((before.name.as_str(), before.number, &before.draft), ("Straw 16", 1, &draft("680")));
    let second = shelf.rename(first, "Straw 18".to_owned(), stamp(2)).unwrap();
    assert_eq!(shelf.compared_revision(&first.to_string()).unwrap(), before);
    let after = shelf.compared_revision(&second.to_string()).unwrap();
    assert_eq!((after.name.as_str(), after.number), ("Straw 18", 2));
    let other = shelf.save(Revision::first(title("Other"), draft("700"), stamp(3)).unwrap()).unwrap();
    assert!(shelf.same_recipe(&first.to_string(), &second.to_string()));
    assert!(!shelf.same_recipe(&first.to_string(), &other.to_string()));
    assert_eq!((shelf.compared_revision("no id"), shelf.same_recipe("no id", "no id")), (None, false));
}

#[test]
fn what_is_chosen_to_compare_is_kept() {
    let (store, shelf) = new_shelf();
    let systems = vec![SystemChoice::OpenRecipe, SystemChoice::Library("uf".to_owned())];
    let mut typed = CompareDraft { systems, ..Default::default() };
    typed.solve.input = "fibre_flow".to_owned();
    typed.uncertainty.seed = Entry::typed("7", Unit::One);
    typed.map.ranges.entry("fibre_flow".to_owned()).or_default().to = Some(Entry::typed("9,5", Unit::TonnePerHour));
    shelf.keep(&COMPARISON, &Stored::new(typed.clone())).unwrap();
    let again = kept(&Shelf::blank(store.clone()), &COMPARISON).unwrap().unwrap();
    assert_eq!(again, typed);
    assert_eq!((again.solve.input.as_str(), again.solve.output.as_str()), ("fibre_flow", ""));
    // The sweep's range of the same input is its own.
    assert!(again.sweep.ranges.is_empty());
    // A later app may leave something out; what cannot be read is set aside and not lost.
    store.inner.write(COMPARISON.key, r#"{"haulm":"compare","version":1,"systems":["open"]}"#).unwrap();
    assert_eq!(kept(&shelf, &COMPARISON).unwrap().unwrap().systems, [SystemChoice::OpenRecipe]);
    store.inner.write(COMPARISON.key, "half a tex").unwrap();
    assert!(matches!(kept(&shelf, &COMPARISON), Err(Unread::Refused(_))));
    shelf.keep(&COMPARISON, &Stored::new(typed)).unwrap();
    assert_eq!(shelf.aside().unwrap().len(), 1);
}

fn read_settings(value: &Value) -> Settings {
    Settings::read(&value.to_string()).unwrap()
}

#[test]
fn settings_take_what_they_know_and_keep_the_rest() {
    let usual = Settings::default();
    assert_eq!(usual.currency, "€");
    assert_eq!(read_settings(&json!({ "haulm": "settings", "version": 1 })), usual);
    let some = read_settings(&json!({
        "haulm": "settings", "version": 1,
        "theme": "sepia", "units": [3], "currency": 5, "order": "name", "copied_at": -1, "initials": "CD", "later": [1, 2],
    }));
    assert_eq!((some.theme, some.currency.as_str(), some.order), (Theme::System, "€", Order::Name));
    assert_eq!((some.copied_at, some.initials.as_str(), some.units), (None, "CD", Units::default()));
    let written: Value = serde_json::from_str(&some.text().unwrap()).unwrap();
    assert_eq!((&written["later"], &written["haulm"]), (&json!([1, 2]), &json!("settings")));
    assert_eq!(Settings::read(&some.text().unwrap()), Ok(some));
}

/// Each unit is read for itself, as each setting is.
#[test]
fn units_of_settings_take_what_they_know() {
    let with = |units: Value| read_settings(&json!({ "haulm": "settings", "version": 1, "units": units })).units;
    let mut expected = Units::default();
    expected.mark = DecimalMark::Comma;
    expected.choose(Kind::Moisture, Unit::PercentWetBasis);
    let own = json!({ "moisture": "% wet basis", "dose": "ell", "thickness": "kg/h", "extent": 5, "later": "m" });
    assert_eq!(with(json!({ "system": "imperial", "mark": "comma", "units": own })), expected);
    let us = with(json!({ "system": "us", "mark": { "mark": 1 }, "units": "none" }));
    assert_eq!((us.system, us.mark, us.chosen().count()), (System::Us, DecimalMark::Point, 0));
}

#[test]
fn settings_are_kept() {
    let (store, shelf) = new_shelf();
    assert_eq!(shelf.settings(), Ok(Settings::default()));
    let mut units = Units::default();
    units.set_system(System::Us);
    units.choose(Kind::Moisture, Unit::PercentWetBasis);
    units.mark = DecimalMark::Comma;
    let settings = Settings {
        units,
        currency: "kr".to_owned(),
        theme: Theme::Dark,
        initials: "CD".to_owned(),
        order: Order::NameBackwards,
        copied_at: Some(5),
        ..Settings::default()
    };
    shelf.keep_settings(&settings).unwrap();
    assert_eq!(Shelf::open(store).unwrap().settings(), Ok(settings));
}

#[test]
fn binder_systems_are_kept_changed_and_removed() {
    let (store, mut shelf) = new_shelf();
    let names = |shelf: &Shelf<FaultyStore>| -> Vec<String> {
        shelf.systems().iter().map(|system| system.content().name.clone()).collect()
    };
    let liquids = draft("680").liquids;
    let first =
        BinderSystem::first("Own pMDI".to_owned(), "certificate".to_owned(), liquids.clone(), stamp(1)).unwrap();
    let id = shelf.save_system(first.clone()).unwrap();
    shelf.save_system(BinderSystem::first("A second".to_owned(), String::new(), vec![], stamp(2)).unwrap()).unwrap();
    assert_eq!(names(&shelf), ["A second", "Own pMDI"]);

    let changed = first.follow(stamp(3), |content| content.name = "Own pMDI b".to_owned()).unwrap();
    shelf.save_system(changed.clone()).unwrap();
    let mut shelf = Shelf::open(store).unwrap();
    assert_eq!(names(&shelf), ["A second", "Own pMDI b"]);
    assert_eq!(shelf.system(id).unwrap().content().liquids, liquids, "the earlier save is still there");

    let removed = changed.follow(stamp(4), |content| content.standing = Standing::Removed).unwrap();
    shelf.save_system(removed).unwrap();
    assert_eq!(names(&shelf), ["A second"]);
    assert_eq!(shelf.recipes().len(), 0);
}
