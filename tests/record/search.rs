//! Finding and sorting, and how long it takes.

use crate::sample::{draft, stamp, title};
use haulm::domain::{Draft, Entry, LiquidDraft, LiquidId, Role};
use haulm::quantity::Unit;
use haulm::record::content::revision::{Revision, Title};
use haulm::record::content::search::{SortOrder, find};
use haulm::record::store::MemoryStore;
use haulm::record::store::library::Library;

fn library() -> Library<MemoryStore> {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    for (at, name) in ["Straw 9 mm", "straw 12 mm", "Wood 9 mm", "Straw 009 mm, thin", "Ähre"].iter().enumerate() {
        let mut title = title(name);
        if *name == "Wood 9 mm" {
            title.tags = vec!["Summer".to_owned()];
        }
        let density = if at == 1 { "720" } else { "680" };
        library.save(Revision::first(title, draft(density), stamp(at as u64)).unwrap()).unwrap();
    }
    library
}

#[track_caller]
fn check(query: &str, order: SortOrder, expected: &[&str]) {
    let library = library();
    let found = find(&library.recipes(), query, order);
    let names: Vec<&str> = found.iter().map(|listed| listed.head.summary.name.as_str()).collect();
    assert_eq!(names, expected, "{query:?} by {order:?}");
}

#[test]
fn every_word_has_to_occur_somewhere() {
    check("straw 12", SortOrder::Name, &["straw 12 mm"]);
    check("  STRAW   mm ", SortOrder::Name, &["Straw 9 mm", "Straw 009 mm, thin", "straw 12 mm"]);
    check("summer", SortOrder::Name, &["Wood 9 mm"]);
    check("720", SortOrder::Name, &["straw 12 mm"]);
    check("ähre pmdi", SortOrder::Name, &["Ähre"]);
    check("isocyanate wax emulsion screen summer ab wood", SortOrder::Name, &["Wood 9 mm"]);
    check("nothing of that", SortOrder::Name, &[]);
    check("thick", SortOrder::Name, &[]);
}

#[test]
fn sorted_by_name_and_time() {
    let by_name = ["Straw 9 mm", "Straw 009 mm, thin", "straw 12 mm", "Wood 9 mm", "Ähre"];
    check("", SortOrder::Name, &by_name);
    check("", SortOrder::NameBackwards, &by_name.iter().rev().copied().collect::<Vec<_>>());
    check("", SortOrder::Newest, &["Ähre", "Straw 009 mm, thin", "Wood 9 mm", "straw 12 mm", "Straw 9 mm"]);
    check("", SortOrder::Oldest, &["Straw 9 mm", "straw 12 mm", "Wood 9 mm", "Straw 009 mm, thin", "Ähre"]);
}

/// A recipe with everything filled in and four liquids.
fn full(n: usize) -> (Title, Draft) {
    let mut draft = Draft::default();
    for field in haulm::domain::Field::PLAIN {
        draft.entry_mut(*field).unwrap().text = format!("{}.{}", n % 700, n % 10);
    }
    for id in 1..=4 {
        let mut liquid = LiquidDraft::blank(LiquidId(id), Role::Binder);
        liquid.name = format!("Liquid {id} of {n}");
        liquid.dose = Entry::typed("4.5", Unit::Percent);
        liquid.source = "certificate of last month".to_owned();
        draft.liquids.push(liquid);
    }
    (title(&format!("Recipe {n} of the mill")), draft)
}

/// How fast: `tests/bench/record.rs`, and in the browser `tests/browser/budget/library.test.mjs`.
#[test]
fn two_thousand_recipes_open_and_are_searched() {
    let store = MemoryStore::default();
    let mut library = Library::open(store.clone()).unwrap();
    for n in 0..2_000 {
        let (title, draft) = full(n);
        library.save(Revision::first(title, draft, stamp(n as u64)).unwrap()).unwrap();
    }
    let library = Library::open(store).unwrap();
    let listed = library.recipes();
    let found = find(&listed, "recipe liquid 1234", SortOrder::Name).len();
    assert_eq!((listed.len(), found), (2_000, 1));
}
