//! Revisions by descent: their order, their numbers, and which one is released.

use crate::sample::{draft, stamp, title};
use haulm::quantity::format::DecimalMark;
use haulm::record::content::lineage::By;
use haulm::record::content::revision::{Revision, Stamp};
use haulm::record::content::search::{SortOrder, find};
use haulm::record::file::log_csv::library_csv;
use haulm::record::store::MemoryStore;
use haulm::record::store::library::{Library, SaveError};
use haulm::record::{RecipeId, RevisionId, Store};
use proptest::prelude::*;

type Shelf = Library<MemoryStore>;

fn by(author: &str, at: u64) -> Stamp {
    Stamp { at, author: author.to_owned(), remark: String::new() }
}

fn first(library: &mut Shelf, at: u64) -> (RevisionId, RecipeId) {
    let revision = Revision::first(title("Straw 16"), draft("680"), stamp(at)).unwrap();
    let recipe = revision.recipe();
    (library.save(revision).unwrap(), recipe)
}

fn next(library: &mut Shelf, after: RevisionId, density: &str, stamp: Stamp) -> RevisionId {
    let next = library.revision(after).unwrap().next(title("Straw 16"), draft(density), stamp).unwrap();
    library.save(next).unwrap()
}

fn merge(library: &mut Shelf, head: RevisionId, other: RevisionId, at: u64) -> RevisionId {
    library.merge_heads(head, other, stamp(at), |_, _| ()).unwrap()
}

/// Each revision with its number, and whether another one has that number.
fn history(library: &Shelf, recipe: RecipeId) -> Vec<(RevisionId, u32, bool)> {
    library.history(recipe).iter().map(|at| (at.summary.id, at.number, at.twin)).collect()
}

/// The laptop that goes on from revision 1 has a clock that is years behind.
#[test]
fn a_revision_with_an_earlier_clock_is_later_when_it_descends_from_the_other() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut library, 5_000);
    let two = next(&mut library, one, "690", stamp(10));
    let three = next(&mut library, two, "700", stamp(4_000));
    assert_eq!(history(&library, recipe), [(three, 3, false), (two, 2, false), (one, 1, false)]);
    assert_eq!(library.recipe(recipe).unwrap().head.summary.id, three);
}

/// Two heads 3, distinguished as twins; their merge is 4, and after heads 3 and 4 a merge is 5.
#[test]
fn a_merge_has_one_more_than_the_longest_line_of_descent() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut library, 1);
    let two = next(&mut library, one, "690", stamp(2));
    let mine = next(&mut library, two, "700", by("AB", 9));
    let theirs = next(&mut library, two, "710", by("CD", 3));
    assert_eq!(history(&library, recipe), [(mine, 3, true), (theirs, 3, true), (two, 2, false), (one, 1, false)]);
    let merged = merge(&mut library, mine, theirs, 1);
    assert_eq!(history(&library, recipe)[0], (merged, 4, false));
    let again = next(&mut library, theirs, "720", stamp(5));
    assert_eq!(history(&library, recipe)[..2], [(again, 4, true), (merged, 4, true)]);
    let head = next(&mut library, again, "730", stamp(2));
    let last = merge(&mut library, merged, head, 1);
    assert_eq!(history(&library, recipe)[..2], [(last, 6, false), (head, 5, false)]);
}

#[test]
fn heads_after_a_revision_are_those_that_descend_from_it() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, _) = first(&mut library, 1);
    let mine = next(&mut library, one, "700", by("AB", 2));
    let theirs = next(&mut library, one, "710", by("CD", 3));
    let after = |library: &Shelf, id| library.heads_after(id).iter().map(|head| head.summary.id).collect::<Vec<_>>();
    assert_eq!(after(&library, one), [theirs, mine]);
    assert_eq!(
        (after(&library, mine), after(&library, theirs)),
        (vec![], vec![]),
        "apart from each other, neither is behind"
    );
    let merged = merge(&mut library, mine, theirs, 4);
    for id in [one, mine, theirs] {
        assert_eq!(after(&library, id), [merged]);
    }
    assert!(after(&library, merged).is_empty());
}

/// Only the third one reached this laptop: what it was made from counts as number 1.
#[test]
fn a_parent_that_is_not_here_counts_as_the_first() {
    let mut whole = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut whole, 1);
    let two = next(&mut whole, one, "690", stamp(2));
    let three = next(&mut whole, two, "700", stamp(3));
    let mut part = Library::open(MemoryStore::default()).unwrap();
    part.save(whole.revision(three).unwrap()).unwrap();
    part.save(whole.revision(two).unwrap()).unwrap();
    assert_eq!(history(&part, recipe), [(three, 3, false), (two, 2, false)]);
}

/// Only a record that somebody wrote by hand can name itself or its own descendant as its parent.
#[test]
fn a_circle_of_descent_stops_nothing() {
    let store = MemoryStore::default();
    let mut library = Library::open(store.clone()).unwrap();
    let (one, recipe) = first(&mut library, 1);
    let text = library.revision(one).unwrap().text().to_owned();
    let (a, b) = ("0".repeat(31) + "a", "0".repeat(31) + "b");
    for (id, parent) in [(&a, &b), (&b, &a)] {
        let circled = text.replace("\"parents\":[]", &format!("\"parents\":[\"{parent}\",\"{id}\"]"));
        let circled = circled.replace("\"recipe\":null", &format!("\"recipe\":\"{recipe}\""));
        assert_ne!(circled, text);
        store.write(&format!("haulm/revision/{id}"), &circled).unwrap();
    }
    let library = Library::open(store).unwrap();
    assert_eq!(library.history(recipe).len(), 3);
    assert_eq!(library.recipes().len(), 1);
    assert!(library.heads_after(one).is_empty());
}

#[test]
fn a_release_says_who_and_when_and_stays_after_the_next_save() {
    let store = MemoryStore::default();
    let mut library = Library::open(store.clone()).unwrap();
    let (one, recipe) = first(&mut library, 1);
    library.release(one, by("AB", 50)).unwrap();
    let two = next(&mut library, one, "700", by("CD", 60));
    for library in [&library, &Library::open(store).unwrap()] {
        let listed = library.recipe(recipe).unwrap();
        assert_eq!((listed.head.summary.id, listed.head.is_released()), (two, false));
        let released = listed.released.unwrap();
        assert_eq!((released.summary.id, released.number), (one, 1));
        assert_eq!(released.released.unwrap().by, By { at: 50, author: "AB".to_owned() });
        assert_eq!(history(library, recipe).len(), 2, "a release is no revision");
    }
}

#[test]
fn a_release_can_be_withdrawn_and_both_stay_in_the_history() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut library, 1);
    library.release(one, by("AB", 50)).unwrap();
    library.release(one, by("AB", 55)).unwrap();
    assert_eq!(library.withdraw(one, &by("CD", 60)), Ok(2));
    assert_eq!(library.withdraw(one, &by("CD", 61)), Ok(0), "there is nothing left to withdraw");
    assert!(library.recipe(recipe).unwrap().released.is_none());
    let released = library.version(one).unwrap().released.unwrap();
    assert_eq!((released.by.author.as_str(), released.withdrawn.unwrap().author.as_str()), ("AB", "CD"));
    // Once more: that one holds.
    library.release(one, by("AB", 70)).unwrap();
    assert_eq!(library.recipe(recipe).unwrap().released.unwrap().released.unwrap().by.at, 70);
}

#[test]
fn the_latest_revision_that_is_released_counts() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut library, 1);
    let two = next(&mut library, one, "700", stamp(2));
    library.release(two, by("AB", 50)).unwrap();
    library.release(one, by("AB", 60)).unwrap();
    assert_eq!(library.recipe(recipe).unwrap().released.unwrap().summary.id, two);
    library.withdraw(two, &by("AB", 70)).unwrap();
    assert_eq!(library.recipe(recipe).unwrap().released.unwrap().summary.id, one);
}

#[test]
fn what_is_not_here_cannot_be_released() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, _) = first(&mut library, 1);
    let mut other = Library::open(MemoryStore::default()).unwrap();
    assert_eq!(other.release(one, stamp(2)), Err(SaveError::Unknown));
}

/// A release goes along in the library file, and twice adds nothing.
#[test]
fn a_release_goes_to_the_other_laptop() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut library, 1);
    library.release(one, by("AB", 50)).unwrap();
    let (text, count) = library.library_file().unwrap();
    assert_eq!(count, 2);
    let mut other = Library::open(MemoryStore::default()).unwrap();
    assert_eq!(other.merge_file(&text).unwrap().added, 2);
    assert_eq!(other.merge_file(&text).unwrap().known, 2);
    assert_eq!(other.recipe(recipe).unwrap().released.unwrap().summary.id, one);
}

#[test]
fn the_list_as_a_table_says_number_and_release() {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut library, 1_772_431_200_000);
    library.release(one, by("AB", 1_772_434_800_000)).unwrap();
    let two = next(&mut library, one, "700", Stamp { remark: "drier straw".to_owned(), ..by("CD", 1_772_438_400_000) });
    let recipes = library.recipes();
    let csv = library_csv(&find(&recipes, "", SortOrder::default()), DecimalMark::Point);
    insta::assert_snapshot!(csv.replace('\u{feff}', "").replace("\r\n", "\n").replace(&two.to_string(), "ID").replace(&recipe.to_string(), "RECIPE"), @r#"
    "name","tags","note","liquids","board_density","density_unit","board_thickness","thickness_unit","revision","saved_utc","author","remark","released_revision","released_by","released_utc","versions_side_by_side","revision_id","recipe_id"
    "Straw 16","trial","after the new screen","Neat isocyanate; Wax 55",700,"kg/m³",16,"mm",2,"2026-03-02T08:00:00Z","CD","drier straw",1,"AB","2026-03-02T07:00:00Z",1,"ID","RECIPE"
    "#);
}

// --- any history ------------------------------------------------------------------------------------

/// A recipe made by steps: each goes on from one revision or merges two, at any clock.
fn made(steps: &[(usize, Option<usize>, u64)]) -> (Shelf, RecipeId) {
    let mut library = Library::open(MemoryStore::default()).unwrap();
    let (one, recipe) = first(&mut library, 500);
    let mut all = vec![one];
    for (at, (after, other, clock)) in steps.iter().enumerate() {
        let after = all[after % all.len()];
        let other = other.map(|other| all[other % all.len()]).filter(|other| *other != after);
        all.push(match other {
            Some(other) => merge(&mut library, after, other, *clock),
            None => next(&mut library, after, &(600 + at).to_string(), stamp(*clock)),
        });
    }
    (library, recipe)
}

fn steps() -> impl Strategy<Value = Vec<(usize, Option<usize>, u64)>> {
    prop::collection::vec((any::<usize>(), prop::option::weighted(0.3, any::<usize>()), 0_u64..1_000), 0..25)
}

proptest! {
    #[test]
    fn each_revision_is_later_and_has_a_higher_number_than_what_it_was_made_from(steps in steps()) {
        let (library, recipe) = made(&steps);
        let history = library.history(recipe);
        let place = |id: RevisionId| history.iter().position(|at| at.summary.id == id).unwrap();
        for (at, version) in history.iter().enumerate() {
            let parents = version.summary.parents.iter().map(|parent| place(*parent));
            for parent in parents.clone() {
                prop_assert!(parent > at && history[parent].number < version.number);
            }
            let longest = parents.map(|parent| history[parent].number).max().unwrap_or(0);
            prop_assert_eq!(version.number, longest + 1);
            let same = history.iter().filter(|other| other.number == version.number).count();
            prop_assert_eq!(version.twin, same > 1);
        }
    }

    #[test]
    fn it_does_not_matter_in_which_order_the_records_came(steps in steps(), seed in any::<u64>()) {
        let (library, recipe) = made(&steps);
        let mut order = library.history(recipe);
        order.sort_by_key(|at| (at.number, at.summary.saved_at ^ seed));
        let mut other = Library::open(MemoryStore::default()).unwrap();
        for version in &order {
            other.save(library.revision(version.summary.id).unwrap()).unwrap();
        }
        prop_assert_eq!(history(&other, recipe), history(&library, recipe));
    }
}
