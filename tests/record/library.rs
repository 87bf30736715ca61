//! Saving, naming, copying, removing and restoring, and what happens to records that cannot be read.

use crate::faulty::{Fault, FaultyStore};
use crate::sample::{draft, stamp, title};
use haulm::record::content::revision::{Revision, Standing};
use haulm::record::refusal::Refusal;
use haulm::record::store::library::{Library, SaveError, Unread};
use haulm::record::store::{Store, StoreError};
use haulm::record::{RecipeId, RevisionId};
use serde_json::{Value, json};

fn new_library() -> (FaultyStore, Library<FaultyStore>) {
    let store = FaultyStore::default();
    (store.clone(), Library::open(store).unwrap())
}

fn saved(library: &mut Library<FaultyStore>, name: &str, at: u64) -> (RevisionId, RecipeId) {
    let revision = Revision::first(title(name), draft("680"), stamp(at)).unwrap();
    let recipe = revision.recipe();
    (library.save(revision).unwrap(), recipe)
}

fn names(library: &Library<FaultyStore>, standing: Standing) -> Vec<&str> {
    let recipes = library.recipes();
    let mut names: Vec<&str> = recipes
        .iter()
        .filter(|listed| listed.standing() == standing)
        .map(|listed| listed.head.summary.name.as_str())
        .collect();
    names.sort_unstable();
    names
}

#[test]
fn a_saved_recipe_is_there_after_a_reload() {
    let (store, mut library) = new_library();
    let (id, recipe) = saved(&mut library, "Straw 16", 1);
    let again = Library::open(store).unwrap();
    let revision = again.revision(id).unwrap();
    assert_eq!(revision.content().draft, draft("680"));
    assert_eq!(revision.title(), title("Straw 16"));
    assert_eq!(revision.recipe(), recipe);
    assert_eq!(again.recipes().len(), 1);
    assert_eq!(again.unreadable().count(), 0);
}

/// An id may never change: it is what links revisions on all machines.
#[test]
fn ids_are_stable() {
    let first = Revision::first(title("Straw 16"), draft("680"), stamp(1_700_000_000_000)).unwrap();
    let next = first.next(title("Straw 16 b"), draft("700"), stamp(1_700_000_100_000)).unwrap();
    let copy =
        next.copy("Copy".to_owned(), stamp(1_700_000_200_000), next.title(), next.content().draft.clone()).unwrap();
    insta::assert_snapshot!(format!("{}\n{}\n{}\n\n{}", first.id(), next.id(), copy.id(), copy.text()));
}

/// Source: FIPS 180-4 by way of NIST's example values: SHA-256 of "abc" is ba7816bf 8f01cfea 414140de
/// 5dae2223 b00361a3 …, the first 128 bits of which are kept.
#[test]
fn ids_are_truncated_sha_256() {
    assert_eq!(haulm::record::id::Id::of("abc").to_string(), "ba7816bf8f01cfea414140de5dae2223");
}

#[test]
fn each_save_follows_the_last_and_keeps_it() {
    let (_, mut library) = new_library();
    let (first, recipe) = saved(&mut library, "Straw 16", 1);
    let next = library.revision(first).unwrap().next(title("Straw 16"), draft("700"), stamp(2)).unwrap();
    let second = library.save(next).unwrap();
    let third = library.rename(second, "Straw 16 mm".to_owned(), stamp(3)).unwrap();
    let history: Vec<RevisionId> = library.history(recipe).iter().map(|version| version.summary.id).collect();
    assert_eq!(history, [third, second, first]);
    assert_eq!(library.revision(third).unwrap().content().draft, draft("700"));
    assert_eq!(library.revision(third).unwrap().content().parents, [second]);
    assert_eq!(names(&library, Standing::Kept), ["Straw 16 mm"]);

    let fourth = library.restore(first, third, stamp(4)).unwrap();
    let restored = library.revision(fourth).unwrap();
    assert_eq!((restored.content().draft.clone(), restored.title()), (draft("680"), title("Straw 16")));
    assert_eq!(restored.content().parents, [third]);
    assert_eq!(library.recipe(recipe).unwrap().head.summary.id, fourth);
    assert!(library.recipe(recipe).unwrap().others.is_empty());
}

#[test]
fn a_copy_is_a_recipe_of_its_own() {
    let (_, mut library) = new_library();
    let (first, recipe) = saved(&mut library, "Straw 16", 1);
    let copy = library.duplicate(first, "Straw 18".to_owned(), stamp(2)).unwrap();
    let copied = library.revision(copy).unwrap();
    assert_ne!(copied.recipe(), recipe);
    assert_eq!((copied.content().copy_of, &copied.content().draft), (Some(first), &draft("680")));
    assert_eq!(names(&library, Standing::Kept), ["Straw 16", "Straw 18"]);
    library.remove(recipe, &stamp(3)).unwrap();
    assert_eq!(names(&library, Standing::Kept), ["Straw 18"]);
}

#[test]
fn a_removal_can_be_undone_after_a_reload() {
    let (store, mut library) = new_library();
    let (_, recipe) = saved(&mut library, "Straw 16", 1);
    library.remove(recipe, &stamp(2)).unwrap();
    let mut library = Library::open(store).unwrap();
    assert_eq!((names(&library, Standing::Kept), names(&library, Standing::Removed)), (vec![], vec!["Straw 16"]));
    library.put_back(recipe, &stamp(3)).unwrap();
    assert_eq!(names(&library, Standing::Kept), ["Straw 16"]);
    assert_eq!(library.history(recipe).len(), 3);
    // Once more changes nothing.
    library.put_back(recipe, &stamp(4)).unwrap();
    assert_eq!(library.history(recipe).len(), 3);
}

#[test]
fn two_tabs_at_worst_make_two_heads() {
    let (store, mut left) = new_library();
    let (first, recipe) = saved(&mut left, "Straw 16", 1);
    let mut right = Library::open(store).unwrap();
    let ours = left.rename(first, "left".to_owned(), stamp(2)).unwrap();
    right.remove(recipe, &stamp(3)).unwrap();
    assert_eq!(left.refresh(), Ok(1));
    assert_eq!(right.refresh(), Ok(1));
    for library in [&left, &right] {
        let listed = library.recipe(recipe).unwrap();
        assert_eq!(listed.others.len(), 1);
        assert_eq!(listed.others[0].summary.id, ours);
        assert_eq!(listed.standing(), Standing::Kept, "a removal does not take what another tab changed");
    }
    // Removing takes both heads, putting back brings both.
    left.remove(recipe, &stamp(4)).unwrap();
    assert_eq!(left.recipe(recipe).unwrap().standing(), Standing::Removed);
    left.put_back(recipe, &stamp(5)).unwrap();
    assert_eq!(left.recipe(recipe).unwrap().others.len(), 1);
}

#[test]
fn saving_the_same_twice_is_one() {
    let (_, mut library) = new_library();
    assert_eq!(saved(&mut library, "Straw 16", 1), saved(&mut library, "Straw 16", 1));
    assert_eq!(library.recipes().len(), 1);
}

/// Whatever happens to a write, an `Ok` means it is there, an error means nothing else changed, and
/// the next attempt works.
#[test]
fn a_failed_write_says_so_and_changes_nothing_else() {
    for fault in Fault::ALL {
        let (store, mut library) = new_library();
        let (first, recipe) = saved(&mut library, "Straw 16", 1);
        let before = store.used();
        store.fail_write(0, *fault);
        let outcome = library.rename(first, "new".to_owned(), stamp(2));
        if *fault == Fault::WrittenError {
            assert!(outcome.is_ok(), "it is there, so it is saved");
            continue;
        }
        let expected = match fault {
            Fault::Full => SaveError::Store(StoreError::Full),
            Fault::Blocked => SaveError::Store(StoreError::Blocked),
            Fault::TornError => SaveError::Store(StoreError::Other("broke off".to_owned())),
            _ => SaveError::NotKept,
        };
        assert_eq!(outcome, Err(expected), "{fault:?}");
        assert_eq!(store.used(), before, "{fault:?}");
        assert_eq!(library.recipe(recipe).unwrap().head.summary.id, first, "{fault:?}");
        assert!(library.rename(first, "new".to_owned(), stamp(2)).is_ok(), "{fault:?}: the next attempt works");
        assert_eq!(Library::open(store).unwrap().recipe(recipe).unwrap().head.summary.name, "new", "{fault:?}");
    }
}

#[test]
fn a_full_store_keeps_what_it_has_and_takes_more_once_there_is_room() {
    let (store, mut library) = new_library();
    let (first, _) = saved(&mut library, "Straw 16", 1);
    store.set_room(store.used() + 100);
    let full = Err(SaveError::Store(StoreError::Full));
    assert_eq!(library.rename(first, "new".to_owned(), stamp(2)), full);
    store.repair();
    assert!(library.rename(first, "new".to_owned(), stamp(2)).is_ok());
}

#[test]
fn a_blocked_store_does_not_open_and_a_library_that_is_open_goes_on() {
    let (store, mut library) = new_library();
    let (first, _) = saved(&mut library, "Straw 16", 1);
    store.block();
    assert_eq!(Library::open(store.clone()).err(), Some(StoreError::Blocked));
    assert_eq!(library.rename(first, "new".to_owned(), stamp(2)), Err(SaveError::Store(StoreError::Blocked)));
    assert_eq!(library.refresh(), Err(StoreError::Blocked));
    assert!(library.revision(first).is_some(), "what was read is still on screen");
}

#[test]
fn what_was_read_stays_when_the_store_is_cleared_behind_the_back() {
    let (store, mut library) = new_library();
    let (first, recipe) = saved(&mut library, "Straw 16", 1);
    library.rename(first, "new".to_owned(), stamp(2)).unwrap();
    store.clear();
    assert_eq!(library.refresh(), Ok(0));
    assert!(library.revision(first).is_some());
    assert_eq!(library.history(recipe).len(), 2);
}

/// Puts `text` where the first revision is, reopens, and sees that it is shown and left alone.
fn check_unreadable(spoil: impl FnOnce(&str) -> String) -> Unread {
    let (store, mut library) = new_library();
    let (spoilt, _) = saved(&mut library, "Straw 16", 1);
    let (sound, _) = saved(&mut library, "Straw 18", 2);
    let key = format!("haulm/revision/{spoilt}");
    let text = spoil(&store.inner.read(&key).unwrap().unwrap());
    store.inner.write(&key, &text).unwrap();

    let reopened = FaultyStore::over(store.inner.clone());
    let mut library = Library::open(reopened.clone()).unwrap();
    assert_eq!(library.verify(usize::MAX), 0);
    assert!(library.revision(sound).is_some());
    assert!(library.revision(spoilt).is_none());
    let unreadable: Vec<_> = library.unreadable().cloned().collect();
    assert_eq!(unreadable.len(), 1);
    assert_eq!((&unreadable[0].key, unreadable[0].text.as_ref()), (&key, Some(&text)));

    // Saving what had that name is refused rather than written over it.
    let again = Revision::first(title("Straw 16"), draft("680"), stamp(1)).unwrap();
    assert_eq!(library.save(again), Err(SaveError::Occupied { key: key.clone() }));
    library.rename(sound, "new".to_owned(), stamp(3)).unwrap();
    library.refresh().unwrap();
    assert!(!reopened.touched(&key));
    assert_eq!(reopened.inner.read(&key).unwrap().as_deref(), Some(text.as_str()));
    unreadable[0].why.clone()
}

fn edited(text: &str, edit: impl FnOnce(&mut Value)) -> String {
    let mut value = serde_json::from_str(text).unwrap();
    edit(&mut value);
    value.to_string()
}

#[test]
fn records_that_cannot_be_read_are_shown_and_left_alone() {
    let cut = check_unreadable(|text| text[..text.len() / 2].to_owned());
    assert!(matches!(cut, Unread::Refused(Refusal::NotJson { cut_short: true, .. })), "{cut:?}");
    let empty = check_unreadable(|_| String::new());
    assert_eq!(empty, Unread::Refused(Refusal::Empty));
    let altered = check_unreadable(|text| text.replace("680", "860"));
    assert!(matches!(altered, Unread::Refused(Refusal::Altered { .. })), "{altered:?}");
    let newer = check_unreadable(|text| edited(text, |value| value["version"] = json!(7)));
    assert_eq!(newer, Unread::Refused(Refusal::Newer { version: 7, known: 1 }));
    let foreign = check_unreadable(|_| r#"{"theirs": 1}"#.to_owned());
    assert_eq!(foreign, Unread::Refused(Refusal::Foreign));
    let other = check_unreadable(|text| edited(text, |value| value["haulm"] = json!("system")));
    assert_eq!(other, Unread::Refused(Refusal::OtherKind { kind: "system".to_owned() }));
    let damaged =
        check_unreadable(|text| edited(text, |value| value["draft"]["plain"]["thickness"]["unit"] = json!("ell")));
    assert!(
        matches!(&damaged, Unread::Refused(Refusal::Damaged { what, .. }) if what.starts_with("unknown variant `ell`")),
        "{damaged:?}"
    );
}

#[test]
fn other_keys_are_not_ours() {
    let (store, mut library) = new_library();
    saved(&mut library, "Straw 16", 1);
    for key in ["theirs", "haulm", "haulm/later/1", "haulmrevision/1"] {
        store.inner.write(key, "x").unwrap();
    }
    store.inner.write("haulm/revision/none", "x").unwrap();
    let library = Library::open(store).unwrap();
    let unreadable: Vec<_> = library.unreadable().map(|record| (record.key.as_str(), record.why.clone())).collect();
    assert_eq!(unreadable, [("haulm/revision/none", Unread::BadKey)]);
}

/// Laid out anew by an editor or another program: the same record still.
#[test]
fn layout_is_not_content() {
    let (store, mut library) = new_library();
    let (id, _) = saved(&mut library, "Straw 16", 1);
    let key = format!("haulm/revision/{id}");
    let value: Value = serde_json::from_str(&store.inner.read(&key).unwrap().unwrap()).unwrap();
    store.inner.write(&key, &serde_json::to_string_pretty(&value).unwrap()).unwrap();
    assert!(Library::open(store).unwrap().revision(id).is_some());
}

#[test]
fn unknown_keys_live_on_in_later_revisions() {
    let first = Revision::first(title("Straw 16"), draft("680"), stamp(1)).unwrap();
    let mut extra = serde_json::Map::new();
    extra.insert("trial".to_owned(), json!({ "boards": 3 }));
    extra.insert("parents".to_owned(), json!("never ours"));
    extra.insert("version".to_owned(), json!("nor this"));
    let with = Revision::with(first.into_content(), extra).unwrap();
    let read = Revision::read(with.id(), with.text()).unwrap();
    let next = read.next(title("Straw 16"), draft("700"), stamp(2)).unwrap();
    let value: Value = serde_json::from_str(next.text()).unwrap();
    assert_eq!(value["trial"], json!({ "boards": 3 }));
    assert_eq!(value["parents"], json!([with.id()]));
    assert_eq!((&value["haulm"], &value["version"]), (&json!("revision"), &json!(1)));
}

/// Opening takes a glance; reading whole comes afterwards, a few at a time, and finds what was
/// altered.
#[test]
fn what_a_glance_does_not_see_is_found_afterwards() {
    let (store, mut library) = new_library();
    let (spoilt, _) = saved(&mut library, "Straw 16", 1);
    for at in 2..=7 {
        saved(&mut library, &format!("Straw {at}"), at);
    }
    assert_eq!(library.verify(0), 0, "what was saved here need not be read");
    let key = format!("haulm/revision/{spoilt}");
    let text = store.inner.read(&key).unwrap().unwrap().replace("680", "860");
    store.inner.write(&key, &text).unwrap();

    let mut library = Library::open(store).unwrap();
    assert_eq!((library.recipes().len(), library.unreadable().count()), (7, 0));
    assert!(library.revision(spoilt).is_none(), "never given out unread");
    assert_eq!((library.verify(3), library.verify(3), library.verify(3)), (4, 1, 0));
    assert_eq!(library.recipes().len(), 6);
    let unreadable: Vec<_> = library.unreadable().collect();
    assert_eq!((unreadable[0].key.as_str(), unreadable[0].text.as_deref()), (key.as_str(), Some(text.as_str())));
}
