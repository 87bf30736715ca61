//! Records in memory before the database: nothing counts as written that the database has not confirmed.

use crate::sample::{draft, stamp, title};
use haulm::record::content::revision::Revision;
use haulm::record::store::{MemoryStore, Store, StoreError};
use haulm::record::{Cache, Library};
use proptest::prelude::*;
use std::collections::BTreeMap;

fn revision(density: &str) -> (String, String, Revision) {
    let revision = Revision::first(title("Straw 16"), draft(density), stamp(1)).unwrap();
    (format!("haulm/revision/{}", revision.id()), revision.text().to_owned(), revision)
}

#[test]
fn a_save_waits_until_the_database_has_it() {
    let mut library = Library::blank(Cache::new(MemoryStore::default()));
    let (key, text, saved) = revision("680");
    let id = library.save(saved).unwrap();
    // It is in the library at once, and not yet on the disk.
    assert!(library.revision(id).is_some());
    assert_eq!(library.store().waiting(), [(key.clone(), text)]);
    assert!(!library.store().is_written(&key));
    library.store().written([key.clone()]);
    assert!(library.store().is_written(&key) && library.store().waiting().is_empty());
}

#[test]
fn what_the_database_has_comes_in_and_waits_for_nothing() {
    let (key, text, saved) = revision("680");
    let (other, other_text, _) = revision("690");
    let mut library = Library::blank(Cache::new(MemoryStore::default()));
    library.save(saved).unwrap();
    let open = ("haulm/draft".to_owned(), "{}".to_owned());
    assert_eq!(library.store().load([(other.clone(), other_text), (key.clone(), text), open]), 1);
    assert!(library.store().waiting().is_empty(), "the database has it after all");
    assert_eq!(library.store().read("haulm/draft"), Ok(None), "no record");
    library.refresh().unwrap();
    assert_eq!(library.recipes().len(), 2);
    let third = "haulm/trial/00".to_owned();
    assert_eq!(library.store().unknown(&[key, other, third.clone(), "haulm/draft".to_owned()]), [third]);
}

#[test]
fn what_the_database_has_lost_is_counted_and_can_be_written_again() {
    let mut library = Library::blank(Cache::new(MemoryStore::default()));
    let (key, _, first) = revision("680");
    let (waiting, _, second) = revision("690");
    library.save(first).unwrap();
    library.store().written([key.clone()]);
    library.save(second).unwrap();
    assert_eq!(library.store().compare(std::slice::from_ref(&key)), 0, "what waits is not lost");
    assert_eq!(library.store().compare(&[]), 1);
    assert!(!library.store().is_written(&key));
    assert_eq!(library.store().write_back(), 1);
    let keys: Vec<String> = library.store().waiting().into_iter().map(|(key, _)| key).collect();
    assert!(keys.contains(&key) && keys.contains(&waiting) && keys.len() == 2);
    assert_eq!(library.store().write_back(), 0);
}

#[test]
fn a_small_store_that_is_blocked_takes_no_record_with_it() {
    #[derive(Default)]
    struct Blocked;
    impl Store for Blocked {
        fn keys(&self) -> Result<Vec<String>, StoreError> {
            Err(StoreError::Blocked)
        }
        fn read(&self, _: &str) -> Result<Option<String>, StoreError> {
            Err(StoreError::Blocked)
        }
        fn write(&self, _: &str, _: &str) -> Result<(), StoreError> {
            Err(StoreError::Blocked)
        }
        fn remove(&self, _: &str) -> Result<(), StoreError> {
            Err(StoreError::Blocked)
        }
    }
    let mut library = Library::blank(Cache::new(Blocked));
    let (key, _, saved) = revision("680");
    library.save(saved).unwrap();
    assert_eq!(library.store().keys(), Ok(vec![key]));
    assert_eq!(library.store().write("haulm/draft", "{}"), Err(StoreError::Blocked));
    assert_eq!(library.library_file().unwrap().1, 1);
}

proptest! {
    /// The database is cleared, and attempts to write back fail: nothing is lost as long as the tab is open, and one attempt that
    /// works brings all of it back.
    #[test]
    fn a_cleared_database_is_filled_again_however_often_that_fails(
        saves in 1_u8..12,
        cleared_after in 0_u8..12,
        works in prop::collection::vec(any::<bool>(), 0..8),
    ) {
        let mut database: BTreeMap<String, String> = BTreeMap::new();
        let mut library = Library::blank(Cache::new(MemoryStore::default()));
        let write = |library: &Library<Cache<MemoryStore>>, database: &mut BTreeMap<String, String>| {
            let waiting = library.store().waiting();
            database.extend(waiting.iter().cloned());
            library.store().written(waiting.into_iter().map(|(key, _)| key));
        };
        let mut all = BTreeMap::new();
        for n in 0..saves {
            let (key, text, saved) = revision(&format!("{}", 600 + u32::from(n)));
            library.save(saved).unwrap();
            all.insert(key, text);
            if n < cleared_after {
                write(&library, &mut database);
            }
        }
        let before = database.len();
        database.clear();
        prop_assert_eq!(library.store().compare(&[]), before);
        for works in works {
            library.store().write_back();
            if works {
                write(&library, &mut database);
            }
            let keys: Vec<String> = database.keys().cloned().collect();
            library.store().compare(&keys);
        }
        library.store().write_back();
        write(&library, &mut database);
        prop_assert_eq!(&database, &all);
        prop_assert!(library.store().waiting().is_empty());
        prop_assert_eq!(library.recipes().len(), usize::from(saves));
    }
}
