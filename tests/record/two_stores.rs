//! A quick store with little room before a large one that answers later: whatever was told as saved is
//! there after any failure, and nothing is ever written over.

use crate::faulty::{Fault, FaultyStore};
use crate::sample::{draft, stamp, title};
use haulm::record::revision::Revision;
use haulm::record::store::{MemoryStore, Store, StoreError};
use haulm::record::two_stores::Large;
use haulm::record::{RevisionId, Shelf, TwoStores};
use proptest::prelude::*;
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

/// The large store as one tab sees it. The disk is shared.
#[derive(Debug, Clone, Default)]
struct LargeTab {
    disk: Rc<RefCell<BTreeMap<String, String>>>,
    tab: Rc<RefCell<Tab>>,
}

#[derive(Debug, Default)]
struct Tab {
    pending: Vec<(String, String)>,
    holds: BTreeSet<String>,
    alone: BTreeMap<String, String>,
    gone: bool,
}

impl LargeTab {
    /// What was on its way arrives, or fails.
    fn settle(&self, fails: bool) {
        let mut tab = self.tab.borrow_mut();
        let pending = std::mem::take(&mut tab.pending);
        if !fails {
            for (key, text) in pending {
                self.disk.borrow_mut().insert(key.clone(), text);
                tab.holds.insert(key);
            }
        }
    }

    /// What src/start.js does at the start, and when records are missing: knows what is on the disk, gives out what the quick store
    /// has not, and copies what has no copy.
    fn look(&self, quick: &FaultyStore) {
        let mut tab = self.tab.borrow_mut();
        if tab.gone {
            return;
        }
        tab.holds = self.disk.borrow().keys().cloned().collect();
        for (key, text) in &*self.disk.borrow() {
            if quick.inner.read(key).unwrap().is_none() {
                tab.alone.insert(key.clone(), text.clone());
            }
        }
        for key in quick.inner.keys().unwrap() {
            if key.starts_with("haulm/revision/") && !tab.holds.contains(&key) {
                let text = quick.inner.read(&key).unwrap().unwrap();
                tab.pending.push((key, text));
            }
        }
        let late = tab.alone.clone().into_iter().filter(|(key, _)| !tab.holds.contains(key)).collect::<Vec<_>>();
        tab.pending.extend(late);
    }
}

impl Large for LargeTab {
    fn is_there(&self) -> bool {
        !self.tab.borrow().gone
    }
    fn put(&self, key: &str, text: &str) {
        self.tab.borrow_mut().pending.push((key.to_owned(), text.to_owned()));
    }
    fn put_open(&self, _: &str, _: &str) {}
    fn holds(&self, key: &str) -> bool {
        self.tab.borrow().holds.contains(key)
    }
    fn stand_in(&self, key: &str, text: &str) {
        self.tab.borrow_mut().alone.insert(key.to_owned(), text.to_owned());
    }
    fn stand_back(&self, key: &str) {
        self.tab.borrow_mut().alone.remove(key);
    }
    fn alone(&self, key: &str) -> Option<String> {
        self.tab.borrow().alone.get(key).cloned()
    }
    fn keys_alone(&self) -> Vec<String> {
        self.tab.borrow().alone.keys().cloned().collect()
    }
    fn size_alone(&self) -> usize {
        self.tab.borrow().alone.iter().map(|(key, text)| key.len() + text.len()).sum()
    }
}

type Home = TwoStores<FaultyStore, LargeTab>;

/// Two tabs over one quick and one large store.
struct Mill {
    quick: FaultyStore,
    /// The quick store as the disk has it: some seconds behind.
    flushed: BTreeMap<String, String>,
    disk: Rc<RefCell<BTreeMap<String, String>>>,
    tabs: Vec<(Shelf<Home>, LargeTab)>,
    /// Told as saved, with their texts.
    told: BTreeMap<RevisionId, String>,
    /// Keys and texts of records that were on a disk once, told or not: they stay.
    seen: BTreeMap<String, String>,
    /// Saved, and not told yet.
    waiting: Vec<(usize, RevisionId, String)>,
    now: u64,
}

#[derive(Debug, Clone)]
enum Step {
    Save,
    Draft,
    Settle(bool),
    Level(usize),
    Refresh,
    Room(usize),
    Fail(Fault),
    NoLarge,
    ClearQuick,
    Flush,
    Kill,
}

fn step() -> impl Strategy<Value = (usize, Step)> {
    let fault = proptest::sample::select(Fault::ALL);
    let step = prop_oneof![
        8 => Just(Step::Save),
        1 => Just(Step::Draft),
        4 => prop::bool::weighted(0.2).prop_map(Step::Settle),
        2 => (0_usize..30_000).prop_map(Step::Level),
        2 => Just(Step::Refresh),
        2 => (0_usize..15_000).prop_map(Step::Room),
        1 => fault.prop_map(Step::Fail),
        1 => Just(Step::NoLarge),
        1 => Just(Step::ClearQuick),
        2 => Just(Step::Flush),
        2 => Just(Step::Kill),
    ];
    (0_usize..2, step)
}

impl Mill {
    fn new() -> Self {
        let mut mill = Self {
            quick: FaultyStore::default(),
            flushed: BTreeMap::new(),
            disk: Rc::default(),
            tabs: Vec::new(),
            told: BTreeMap::new(),
            seen: BTreeMap::new(),
            waiting: Vec::new(),
            now: 0,
        };
        mill.start();
        mill
    }

    fn start(&mut self) {
        self.quick.mend();
        self.waiting.clear();
        self.tabs.clear();
        for _ in 0..2 {
            let large = LargeTab { disk: self.disk.clone(), tab: Rc::default() };
            large.look(&self.quick);
            let shelf = Shelf::open(TwoStores::new(self.quick.clone(), large.clone())).unwrap();
            self.tabs.push((shelf, large));
        }
    }

    fn all_of_quick(&self) -> BTreeMap<String, String> {
        let texts = self.quick.inner.keys().unwrap().into_iter();
        texts.map(|key| (key.clone(), self.quick.inner.read(&key).unwrap().unwrap())).collect()
    }

    fn take(&mut self, tab: usize, step: &Step) {
        self.now += 1;
        let (shelf, large) = &mut self.tabs[tab];
        match step {
            Step::Save => {
                let name = format!("{tab} {}", self.now);
                let revision = Revision::first(title(&name), draft("680"), stamp(self.now)).unwrap();
                let text = revision.text().to_owned();
                if let Ok(id) = shelf.save(revision) {
                    assert_eq!(shelf.revision(id).unwrap().text(), text);
                    self.waiting.push((tab, id, text));
                }
            }
            Step::Draft => drop(shelf.store().write("haulm/draft", &"x".repeat(500))),
            Step::Settle(fails) => {
                large.settle(*fails);
                // What the page tells: that it is on the disk, or that it is not.
                let told = self.waiting.extract_if(.., |(of, ..)| *of == tab).collect::<Vec<_>>();
                for (_, id, text) in told {
                    if large.holds(&format!("haulm/revision/{id}")) {
                        self.told.insert(id, text);
                    } else if large.alone(&format!("haulm/revision/{id}")).is_some() {
                        assert!(shelf.store().is_unsure(), "not told that {id} is nowhere");
                    }
                }
            }
            Step::Level(room) => drop(shelf.store().level(*room)),
            Step::Refresh => {
                if let Ok(changes) = shelf.refresh()
                    && changes.missing > 0
                {
                    large.look(&self.quick);
                    shelf.refresh().unwrap();
                }
            }
            Step::Room(left) => self.quick.set_room(self.quick.used() + left),
            Step::Fail(fault) => self.quick.fail_write(0, *fault),
            Step::NoLarge => large.tab.borrow_mut().gone = true,
            Step::ClearQuick => {
                self.quick.clear();
                self.flushed.clear();
                self.seen.retain(|key, _| self.disk.borrow().contains_key(key));
            }
            Step::Flush => {
                self.flushed = self.all_of_quick();
                let revisions = self.flushed.iter().filter(|(key, _)| key.starts_with("haulm/revision/"));
                self.seen.extend(revisions.map(|(key, text)| (key.clone(), text.clone())));
            }
            Step::Kill => {
                self.quick.clear();
                for (key, text) in &self.flushed {
                    self.quick.inner.write(key, text).unwrap();
                }
                self.start();
            }
        }
        assert!(!self.quick.overwritten(), "a record was written over");
    }

    /// Whatever was told is there in a fresh start.
    fn check(&mut self) {
        self.start();
        let (shelf, _) = &self.tabs[0];
        for (id, text) in &self.told {
            assert_eq!(shelf.revision(*id).expect("told as saved and not there").text(), text);
        }
        for (key, text) in &self.seen {
            assert_eq!(shelf.store().read(key).unwrap().as_ref(), Some(text), "was on the disk: {key}");
        }
        let keys = shelf.store().keys().unwrap();
        assert_eq!(keys.iter().collect::<BTreeSet<_>>().len(), keys.len(), "a key is listed twice");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: crate::faults::cases(250), ..ProptestConfig::default() })]

    #[test]
    fn what_was_told_as_saved_outlasts_full_stores_and_kills(steps in prop::collection::vec(step(), 1..60)) {
        let mut mill = Mill::new();
        for (tab, step) in &steps {
            mill.take(*tab, step);
        }
        mill.check();
    }
}

fn save(shelf: &mut Shelf<Home>, n: u64) -> RevisionId {
    shelf.save(Revision::first(title(&n.to_string()), draft("680"), stamp(n)).unwrap()).unwrap()
}

#[test]
fn records_move_to_the_large_store_when_the_quick_one_fills_and_stay_on_the_shelf() {
    let (quick, large) = (FaultyStore::default(), LargeTab::default());
    let mut shelf = Shelf::open(TwoStores::new(quick.clone(), large.clone())).unwrap();
    let ids: Vec<RevisionId> = (0..40).map(|n| save(&mut shelf, n)).collect();
    let all = quick.used();
    large.settle(false);

    // Twice as much as should be there: it goes down to half of what should.
    shelf.store().level(all / 2).unwrap();
    assert!(quick.used() <= all / 4 + 4_000, "{} of {all}", quick.used());
    assert_eq!(shelf.refresh().unwrap().missing, 0);

    // The next start finds all of them, and again leaves them where they are.
    let large = LargeTab { disk: large.disk, tab: Rc::default() };
    large.look(&quick);
    let shelf = Shelf::open(TwoStores::new(quick.clone(), large)).unwrap();
    let before = quick.used();
    assert_eq!(shelf.store().level(all / 2), Ok(0));
    assert_eq!(quick.used(), before);
    assert!(ids.iter().all(|id| shelf.revision(*id).is_some()));

    // With room for all of them they are written back.
    assert!(shelf.store().level(2 * all).unwrap() > 0);
    assert_eq!(quick.used(), all);
}

#[test]
fn a_full_quick_store_does_not_stop_a_save() {
    let (quick, large) = (FaultyStore::default(), LargeTab::default());
    let mut shelf = Shelf::open(TwoStores::new(quick.clone(), large.clone())).unwrap();
    quick.set_room(3_000);
    let ids: Vec<RevisionId> = (0..20).map(|n| save(&mut shelf, n)).collect();
    assert!(shelf.store().is_unsure());
    large.settle(false);
    assert!(!shelf.store().is_unsure());
    assert!(ids.iter().all(|id| shelf.store().read(&format!("haulm/revision/{id}")).unwrap().is_some()));
    // And makes room for what can stand nowhere else.
    shelf.store().write("haulm/draft", &"x".repeat(2_500)).unwrap();
}

#[test]
fn without_a_large_store_a_full_one_is_told() {
    let (quick, large) = (FaultyStore::over(MemoryStore::default()), LargeTab::default());
    large.tab.borrow_mut().gone = true;
    let store = TwoStores::new(quick.clone(), large);
    quick.set_room(100);
    assert_eq!(store.write(&format!("haulm/revision/{}", "0".repeat(32)), &"x".repeat(200)), Err(StoreError::Full));
    assert!(!store.is_unsure());
}

/// README says what a record takes of the browser's room.
#[test]
fn a_revision_takes_a_good_two_kilobytes() {
    let revision = Revision::first(title("Straw 15 mm"), haulm::domain::recipe::example::example(), stamp(1)).unwrap();
    assert!((2_000..2_600).contains(&revision.text().len()), "{}", revision.text().len());
}
