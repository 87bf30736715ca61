//! Finding and sorting, and how long it takes.

use crate::sample::{draft, stamp, title};
use haulm::domain::{Draft, Entry, LiquidDraft, LiquidId, Role};
use haulm::quantity::Unit;
use haulm::record::content::revision::{Revision, Title};
use haulm::record::content::search::{SortColumn, SortOrder, find};
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
    check("straw 12", SortOrder::first(SortColumn::Name), &["straw 12 mm"]);
    check("  STRAW   mm ", SortOrder::first(SortColumn::Name), &["Straw 9 mm", "Straw 009 mm, thin", "straw 12 mm"]);
    check("summer", SortOrder::first(SortColumn::Name), &["Wood 9 mm"]);
    check("720", SortOrder::first(SortColumn::Name), &["straw 12 mm"]);
    check("ähre pmdi", SortOrder::first(SortColumn::Name), &["Ähre"]);
    check("isocyanate wax emulsion screen summer ab wood", SortOrder::first(SortColumn::Name), &["Wood 9 mm"]);
    check("nothing of that", SortOrder::first(SortColumn::Name), &[]);
    check("thick", SortOrder::first(SortColumn::Name), &[]);
}

#[test]
fn sorted_by_name_and_time() {
    let by_name = ["Straw 9 mm", "Straw 009 mm, thin", "straw 12 mm", "Wood 9 mm", "Ähre"];
    check("", SortOrder::first(SortColumn::Name), &by_name);
    check(
        "",
        SortOrder { column: SortColumn::Name, descending: true },
        &by_name.iter().rev().copied().collect::<Vec<_>>(),
    );
    check("", SortOrder::default(), &["Ähre", "Straw 009 mm, thin", "Wood 9 mm", "straw 12 mm", "Straw 9 mm"]);
    check(
        "",
        SortOrder { column: SortColumn::Saved, descending: false },
        &["Straw 9 mm", "straw 12 mm", "Wood 9 mm", "Straw 009 mm, thin", "Ähre"],
    );
}

/// By density 680 four times, the newest first, and 720; a second press turns the column round; ties stay with the newest.
#[test]
fn sorted_by_a_number_with_its_unit() {
    let density = SortOrder::first(SortColumn::Density);
    check("", density, &["Ähre", "Straw 009 mm, thin", "Wood 9 mm", "Straw 9 mm", "straw 12 mm"]);
    check(
        "",
        density.pressed(SortColumn::Density),
        &["straw 12 mm", "Ähre", "Straw 009 mm, thin", "Wood 9 mm", "Straw 9 mm"],
    );
    assert_eq!(density.pressed(SortColumn::Saved), SortOrder::default());
    // Another unit, and a recipe without a thickness, which comes last either way.
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let thick = [("b", "1", Unit::Inch), ("a", "18", Unit::Millimetre), ("none", "", Unit::Millimetre)];
    for (at, (name, text, unit)) in thick.into_iter().enumerate() {
        let mut draft = draft("680");
        *draft.entry_mut(haulm::domain::Field::Thickness).unwrap() = Entry::typed(text, unit);
        library.save(Revision::first(title(name), draft, stamp(at as u64)).unwrap()).unwrap();
    }
    let thickness = SortOrder::first(SortColumn::Thickness);
    for (order, expected) in
        [(thickness, ["a", "b", "none"]), (thickness.pressed(SortColumn::Thickness), ["b", "a", "none"])]
    {
        let found = find(&library.recipes(), "", order);
        assert_eq!(found.iter().map(|listed| listed.head.summary.name.as_str()).collect::<Vec<_>>(), expected);
    }
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
    let found = find(&listed, "recipe liquid 1234", SortOrder::first(SortColumn::Name)).len();
    assert_eq!((listed.len(), found), (2_000, 1));
}
