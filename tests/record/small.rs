//! The open draft, the settings, and the mill's own binder systems.

use crate::faulty::{Fault, FaultyStore};
use crate::sample::{draft, stamp, title};
use haulm::domain::Entry;
use haulm::domain::compare::draft::CompareDraft;
use haulm::domain::compare::system_choice::SystemChoice;
use haulm::domain::mixing::{MixDraft, MixField, PartKey};
use haulm::quantity::format::DecimalMark;
use haulm::quantity::kind::UnitSystem;
use haulm::quantity::{Kind, Unit, Units};
use haulm::record::content::binder_system::SystemRevision;
use haulm::record::content::comparison::COMPARISON;
use haulm::record::content::mixing::MIXING;
use haulm::record::content::revision::{Revision, Standing};
use haulm::record::content::search::{SortColumn, SortOrder};
use haulm::record::content::settings::{Settings, Theme};
use haulm::record::document::open_draft::{OpenDraft, RECIPE};
use haulm::record::id::RevisionId;
use haulm::record::store::Store;
use haulm::record::store::library::{Library, SETTINGS, SaveError, Unread};
use haulm::record::{Document, Stored};
use serde_json::{Value, json};

fn new_library() -> (FaultyStore, Library<FaultyStore>) {
    let store = FaultyStore::default();
    (store.clone(), Library::open(store).unwrap())
}

fn work(density: &str) -> OpenDraft {
    let from = RevisionId::parse("00112233445566778899aabbccddeeff");
    OpenDraft { from, title: title("Straw 16"), draft: draft(density), remark: "dry day".to_owned(), example: false }
}

/// What an open document says in the store.
fn kept<T: serde::Serialize + serde::de::DeserializeOwned>(
    library: &Library<FaultyStore>,
    document: &Document<T>,
) -> Result<Option<T>, Unread> {
    Ok(library.document(document)?.map(|stored| stored.content))
}

fn keep(library: &Library<FaultyStore>, density: &str) -> Result<(), SaveError> {
    library.keep(&RECIPE, &Stored::new(work(density)))
}

#[test]
fn the_work_in_hand_survives_a_reload() {
    let (store, library) = new_library();
    assert_eq!(kept(&library, &RECIPE), Ok(None));
    keep(&library, "680").unwrap();
    keep(&library, "7,3 0").unwrap();
    assert_eq!(kept(&Library::open(store).unwrap(), &RECIPE), Ok(Some(work("7,3 0"))));
}

#[test]
fn the_last_work_in_hand_stays_when_the_next_is_refused() {
    let (store, library) = new_library();
    keep(&library, "680").unwrap();
    for fault in [Fault::Full, Fault::Blocked, Fault::Dropped] {
        store.fail_write(0, fault);
        assert!(keep(&library, "700").is_err(), "{fault:?}");
        assert_eq!(kept(&library, &RECIPE), Ok(Some(work("680"))), "{fault:?}");
    }
}

#[test]
fn a_document_says_how_often_it_was_written_and_keeps_what_a_later_app_put_there() {
    let (store, library) = new_library();
    library.keep(&RECIPE, &Stored { edition: 7, ..Stored::new(work("680")) }).unwrap();
    let mut text: Value = serde_json::from_str(&store.inner.read(RECIPE.key).unwrap().unwrap()).unwrap();
    text["later"] = json!([1, 2]);
    store.inner.write(RECIPE.key, &text.to_string()).unwrap();
    let stored = library.document(&RECIPE).unwrap().unwrap();
    assert_eq!((stored.edition, &stored.extra["later"]), (7, &json!([1, 2])));
    library.keep(&RECIPE, &Stored { edition: 8, content: work("690"), ..stored }).unwrap();
    let again = library.document(&RECIPE).unwrap().unwrap();
    assert_eq!((again.edition, again.content, again.extra.len()), (8, work("690"), 1));
}

/// What cannot be read is set aside before it is written over; where that fails, it is not.
#[test]
fn what_cannot_be_read_is_set_aside_before_it_is_written_over() {
    for key in [RECIPE.key, SETTINGS, MIXING.key] {
        let (store, library) = new_library();
        let keep = || match key {
            SETTINGS => library.keep_settings(&Settings::default()),
            _ if key == RECIPE.key => keep(&library, "680"),
            _ => library.keep(&MIXING, &Stored::new(MixDraft::default())),
        };
        store.inner.write(key, "half a tex").unwrap();
        let refused = match key {
            SETTINGS => library.settings().err(),
            _ if key == RECIPE.key => kept(&library, &RECIPE).err(),
            _ => kept(&library, &MIXING).err(),
        };
        assert!(matches!(refused, Some(Unread::Refused(_))), "{key}");
        store.fail_write(0, Fault::Full);
        assert!(keep().is_err());
        assert_eq!(store.inner.read(key).unwrap().as_deref(), Some("half a tex"));
        keep().unwrap();
        keep().unwrap();
        let aside = library.aside().unwrap();
        assert_eq!(aside.iter().map(|(_, text)| text.as_str()).collect::<Vec<_>>(), ["half a tex"]);
    }
}

#[test]
fn what_cannot_be_read_at_the_start_is_set_aside_at_once() {
    let (store, library) = new_library();
    store.inner.write(RECIPE.key, "half a tex").unwrap();
    store.fail_write(0, Fault::Full);
    assert!(library.set_aside(RECIPE.key).is_err());
    assert_eq!(store.inner.read(RECIPE.key).unwrap().as_deref(), Some("half a tex"), "no room: it stays");
    library.set_aside(RECIPE.key).unwrap();
    assert_eq!(kept(&library, &RECIPE), Ok(None));
    assert_eq!(library.aside().unwrap()[0].1, "half a tex");
}

#[test]
fn what_is_typed_for_solutions_and_glues_is_kept() {
    let (store, library) = new_library();
    let mut typed = MixDraft::default();
    typed.entry_mut(MixField::Concentration).text = "22,5".to_owned();
    typed.part_mut(&PartKey::Liquid("UF, winter".to_owned())).in_tank = Some(false);
    typed.part_mut(&PartKey::Water).in_tank = Some(true);
    library.keep(&MIXING, &Stored::new(typed.clone())).unwrap();
    assert_eq!(kept(&Library::blank(store.clone()), &MIXING), Ok(Some(typed)));
    // A later app may leave something out.
    store.inner.write(MIXING.key, r#"{"haulm":"mix","version":1,"solute":"urea"}"#).unwrap();
    assert_eq!(kept(&library, &MIXING).unwrap().unwrap().entry(MixField::Nco).text, "31");
}

/// A comparison names a saved recipe by its revision: a later save is another one.
#[test]
fn a_compared_revision_stays_as_it_was_saved() {
    let (_, mut library) = new_library();
    let first = library.save(Revision::first(title("Straw 16"), draft("680"), stamp(1)).unwrap()).unwrap();
    let before = library.compared_revision(&first.to_string()).unwrap();
    assert_eq!((before.name.as_str(), before.number, &before.draft), ("Straw 16", 1, &draft("680")));
    let second = library.rename(first, "Straw 18".to_owned(), stamp(2)).unwrap();
    assert_eq!(library.compared_revision(&first.to_string()).unwrap(), before);
    let after = library.compared_revision(&second.to_string()).unwrap();
    assert_eq!((after.name.as_str(), after.number), ("Straw 18", 2));
    let other = library.save(Revision::first(title("Other"), draft("700"), stamp(3)).unwrap()).unwrap();
    assert!(library.same_recipe(&first.to_string(), &second.to_string()));
    assert!(!library.same_recipe(&first.to_string(), &other.to_string()));
    assert_eq!((library.compared_revision("no id"), library.same_recipe("no id", "no id")), (None, false));
}

#[test]
fn what_is_chosen_to_compare_is_kept() {
    let (store, library) = new_library();
    let systems = vec![SystemChoice::OpenRecipe, SystemChoice::Library("uf".to_owned())];
    let mut typed = CompareDraft { systems, ..Default::default() };
    typed.solve.input = "fibre_flow".to_owned();
    typed.uncertainty.seed = Entry::typed("7", Unit::One);
    typed.map.ranges.entry("fibre_flow".to_owned()).or_default().to = Some(Entry::typed("9,5", Unit::TonnePerHour));
    library.keep(&COMPARISON, &Stored::new(typed.clone())).unwrap();
    let again = kept(&Library::blank(store.clone()), &COMPARISON).unwrap().unwrap();
    assert_eq!(again, typed);
    assert_eq!((again.solve.input.as_str(), again.solve.output.as_str()), ("fibre_flow", ""));
    // The sweep's range of the same input is its own.
    assert!(again.sweep.ranges.is_empty());
    // A later app may leave something out; what cannot be read is set aside and not lost.
    store.inner.write(COMPARISON.key, r#"{"haulm":"compare","version":1,"systems":["open"]}"#).unwrap();
    assert_eq!(kept(&library, &COMPARISON).unwrap().unwrap().systems, [SystemChoice::OpenRecipe]);
    store.inner.write(COMPARISON.key, "half a tex").unwrap();
    assert!(matches!(kept(&library, &COMPARISON), Err(Unread::Refused(_))));
    library.keep(&COMPARISON, &Stored::new(typed)).unwrap();
    assert_eq!(library.aside().unwrap().len(), 1);
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
        "theme": "sepia", "units": [3], "currency": 5, "order": {"column": "name", "descending": false}, "copied_at": -1, "initials": "CD", "later": [1, 2],
    }));
    assert_eq!(
        (some.theme, some.currency.as_str(), some.order),
        (Theme::System, "€", SortOrder::first(SortColumn::Name))
    );
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
    assert_eq!((us.system, us.mark, us.chosen().count()), (UnitSystem::Us, DecimalMark::Point, 0));
}

#[test]
fn settings_are_kept() {
    let (store, library) = new_library();
    assert_eq!(library.settings(), Ok(Settings::default()));
    let mut units = Units::default();
    units.set_system(UnitSystem::Us);
    units.choose(Kind::Moisture, Unit::PercentWetBasis);
    units.mark = DecimalMark::Comma;
    let settings = Settings {
        units,
        currency: "kr".to_owned(),
        theme: Theme::Dark,
        initials: "CD".to_owned(),
        order: SortOrder { column: SortColumn::Name, descending: true },
        copied_at: Some(5),
        ..Settings::default()
    };
    library.keep_settings(&settings).unwrap();
    assert_eq!(Library::open(store).unwrap().settings(), Ok(settings));
}

#[test]
fn binder_systems_are_kept_changed_and_removed() {
    let (store, mut library) = new_library();
    let names = |library: &Library<FaultyStore>| -> Vec<String> {
        library.systems().iter().map(|system| system.content().name.clone()).collect()
    };
    let liquids = draft("680").liquids;
    let first =
        SystemRevision::first("Own pMDI".to_owned(), "certificate".to_owned(), liquids.clone(), stamp(1)).unwrap();
    let id = library.save_system(first.clone()).unwrap();
    library
        .save_system(SystemRevision::first("A second".to_owned(), String::new(), vec![], stamp(2)).unwrap())
        .unwrap();
    assert_eq!(names(&library), ["A second", "Own pMDI"]);

    let changed = first.follow(stamp(3), |content| content.name = "Own pMDI b".to_owned()).unwrap();
    library.save_system(changed.clone()).unwrap();
    let mut library = Library::open(store).unwrap();
    assert_eq!(names(&library), ["A second", "Own pMDI b"]);
    assert_eq!(library.system(id).unwrap().content().liquids, liquids, "the earlier save is still there");

    let removed = changed.follow(stamp(4), |content| content.standing = Standing::Removed).unwrap();
    library.save_system(removed).unwrap();
    assert_eq!(names(&library), ["A second"]);
    assert_eq!(library.recipes().len(), 0);
}
