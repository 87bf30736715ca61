//! Random lives of a library, two tabs and a store that fails: no confirmed revision is ever lost.

use crate::faulty::{Fault, FaultyStore};
use crate::sample::{draft, stamp, title};
use haulm::record::content::revision::{Revision, Standing};
use haulm::record::document::open_draft::{OpenDraft, RECIPE};
use haulm::record::store::Store;
use haulm::record::store::library::{Library, SaveError, Unread};
use haulm::record::{RevisionId, Stored};
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

/// What happens next. Numbers pick among what there is.
#[derive(Debug, Clone)]
enum Step {
    Create(u8),
    Edit(usize),
    Rename(usize),
    Duplicate(usize),
    Restore(usize, usize),
    Remove(usize),
    PutBack(usize),
    Work,
    Refresh,
    Reopen,
    Fail(usize, Fault),
    Fill(usize),
    Block,
    HideList,
    Repair,
    Spoil(usize),
}

fn step() -> impl Strategy<Value = Step> {
    let pick = any::<u8>().prop_map(usize::from);
    let fault = proptest::sample::select(Fault::ALL);
    prop_oneof![
        4 => any::<u8>().prop_map(Step::Create),
        4 => pick.clone().prop_map(Step::Edit),
        2 => pick.clone().prop_map(Step::Rename),
        2 => pick.clone().prop_map(Step::Duplicate),
        1 => (pick.clone(), pick.clone()).prop_map(|(old, head)| Step::Restore(old, head)),
        2 => pick.clone().prop_map(Step::Remove),
        1 => pick.clone().prop_map(Step::PutBack),
        1 => Just(Step::Work),
        2 => Just(Step::Refresh),
        2 => Just(Step::Reopen),
        4 => (0_usize..3, fault).prop_map(|(away, fault)| Step::Fail(away, fault)),
        1 => (0_usize..6_000).prop_map(Step::Fill),
        1 => Just(Step::Block),
        1 => Just(Step::HideList),
        3 => Just(Step::Repair),
        1 => pick.prop_map(Step::Spoil),
    ]
}

/// The store, the tabs, and what the app has told its user.
struct Life {
    store: FaultyStore,
    tabs: [Library<FaultyStore>; 2],
    /// Every revision that a save has confirmed, with its text.
    confirmed: BTreeMap<RevisionId, String>,
    /// Those that someone has spoilt in the store, with what is there now.
    spoilt: BTreeMap<RevisionId, String>,
    now: u64,
}

impl Life {
    fn new() -> Self {
        let store = FaultyStore::default();
        let tab = || Library::open(store.clone()).unwrap();
        Self { tabs: [tab(), tab()], store, confirmed: BTreeMap::new(), spoilt: BTreeMap::new(), now: 1 }
    }

    /// Whatever is new on a tab was confirmed by it, or by the other one.
    fn confirm(&mut self, tab: usize, outcome: Result<RevisionId, SaveError>) {
        if let Ok(id) = outcome {
            let text = self.tabs[tab].revision(id).unwrap().text().to_owned();
            self.confirmed.insert(id, text);
        }
    }

    fn pick(&self, tab: usize, n: usize) -> Option<RevisionId> {
        let mut known: Vec<RevisionId> = Vec::new();
        for listed in self.tabs[tab].recipes() {
            known.extend(self.tabs[tab].history(listed.recipe).iter().map(|version| version.summary.id));
        }
        if known.is_empty() { None } else { Some(known[n % known.len()]) }
    }

    fn take(&mut self, tab: usize, step: &Step) {
        self.now += 1;
        let stamp = stamp(self.now);
        match step {
            Step::Create(n) => {
                let revision = Revision::first(title(&n.to_string()), draft(&n.to_string()), stamp).unwrap();
                let outcome = self.tabs[tab].save(revision);
                self.confirm(tab, outcome);
            }
            Step::Edit(n) => {
                let Some(id) = self.pick(tab, *n) else { return };
                let old = self.tabs[tab].revision(id).unwrap();
                let outcome = self.tabs[tab].save(old.next(title("edited"), draft("700"), stamp).unwrap());
                self.confirm(tab, outcome);
            }
            Step::Rename(n) => {
                let Some(id) = self.pick(tab, *n) else { return };
                let outcome = self.tabs[tab].rename(id, format!("name {n}"), stamp);
                self.confirm(tab, outcome);
            }
            Step::Duplicate(n) => {
                let Some(id) = self.pick(tab, *n) else { return };
                let outcome = self.tabs[tab].duplicate(id, format!("copy {n}"), stamp);
                self.confirm(tab, outcome);
            }
            Step::Restore(old, head) => {
                let (Some(old), Some(head)) = (self.pick(tab, *old), self.pick(tab, *head)) else { return };
                let outcome = self.tabs[tab].restore(old, head, stamp);
                self.confirm(tab, outcome);
            }
            Step::Remove(n) | Step::PutBack(n) => {
                let Some(id) = self.pick(tab, *n) else { return };
                let recipe = self.tabs[tab].revision(id).unwrap().recipe();
                let before: BTreeSet<RevisionId> = self.ids(tab);
                let _ = match step {
                    Step::Remove(_) => self.tabs[tab].remove(recipe, &stamp),
                    _ => self.tabs[tab].put_back(recipe, &stamp),
                };
                for id in self.ids(tab).difference(&before) {
                    self.confirm(tab, Ok(*id));
                }
            }
            Step::Work => {
                let work = OpenDraft {
                    from: None,
                    title: title("work"),
                    draft: draft("1"),
                    remark: String::new(),
                    example: false,
                };
                let work = Stored::new(work);
                if self.tabs[tab].keep(&RECIPE, &work).is_ok() {
                    assert_eq!(self.tabs[tab].document(&RECIPE), Ok(Some(work)));
                }
            }
            Step::Refresh => drop(self.tabs[tab].refresh()),
            Step::Reopen => {
                if let Ok(library) = Library::open(self.store.clone()) {
                    self.tabs[tab] = library;
                }
            }
            Step::Fail(away, fault) => self.store.fail_write(*away, *fault),
            Step::Fill(left) => self.store.set_room(self.store.used() + left),
            Step::Block => self.store.block(),
            Step::HideList => self.store.hide_list(),
            Step::Repair => self.store.repair(),
            Step::Spoil(n) => {
                let Some(id) = self.pick(tab, *n) else { return };
                let key = format!("haulm/revision/{id}");
                let Some(text) = self.store.inner.read(&key).unwrap() else { return };
                let text = format!("{}?", &text[..text.len() / 2]);
                self.store.inner.write(&key, &text).unwrap();
                self.spoilt.insert(id, text);
            }
        }
    }

    fn ids(&self, tab: usize) -> BTreeSet<RevisionId> {
        let library = &self.tabs[tab];
        let recipes = library.recipes();
        recipes.iter().flat_map(|listed| library.history(listed.recipe)).map(|version| version.summary.id).collect()
    }

    fn check(&self) {
        assert!(!self.store.overwritten(), "a record was written over");
        for (id, text) in &self.confirmed {
            let there = self.store.inner.read(&format!("haulm/revision/{id}")).unwrap();
            let expected = self.spoilt.get(id).unwrap_or(text);
            assert!(there.as_ref() == Some(expected), "confirmed and not there: {id}");
        }
    }

    /// A fresh start after all of it.
    fn check_reopened(&self) {
        self.store.repair();
        let mut library = Library::open(self.store.clone()).unwrap();
        library.verify(usize::MAX);
        for (id, text) in &self.confirmed {
            if let Some(raw) = self.spoilt.get(id) {
                let shown = library.unreadable().find(|record| record.key == format!("haulm/revision/{id}")).unwrap();
                assert!(shown.text.as_ref() == Some(raw) && matches!(shown.why, Unread::Refused(_)));
            } else {
                assert!(library.revision(*id).unwrap().text() == text, "confirmed and another: {id}");
                let recipe = library.revision(*id).unwrap().recipe();
                assert!(library.history(recipe).iter().any(|version| version.summary.id == *id));
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: cases(250), ..ProptestConfig::default() })]

    #[test]
    fn no_confirmed_revision_is_ever_lost(steps in proptest::collection::vec((0_usize..2, step()), 1..60)) {
        let mut life = Life::new();
        for (tab, step) in &steps {
            life.take(*tab, step);
            life.check();
        }
        life.check_reopened();
    }
}

fn texts(store: &FaultyStore) -> BTreeMap<String, String> {
    let keys = store.inner.keys().unwrap();
    keys.into_iter().map(|key| (key.clone(), store.inner.read(&key).unwrap().unwrap())).collect()
}

// --- two libraries become one --------------------------------------------------------------------

/// What one mill's laptop did to a library, from the same beginning as the others.
fn laptop(steps: &[(u8, u8)]) -> Library<FaultyStore> {
    let store = FaultyStore::default();
    let mut library = Library::open(store).unwrap();
    let mut known = Vec::new();
    for n in 0..2_u8 {
        known.push(library.save(Revision::first(title(&n.to_string()), draft("680"), stamp(1)).unwrap()).unwrap());
    }
    for (what, pick) in steps {
        let of = known[usize::from(*pick) % known.len()];
        let stamp = stamp(u64::from(*pick) % 4);
        let recipe = library.revision(of).unwrap().recipe();
        match what % 5 {
            0 => known.push(library.rename(of, format!("name {}", pick % 3), stamp).unwrap()),
            1 => known.push(library.duplicate(of, "copy".to_owned(), stamp).unwrap()),
            2 => library.remove(recipe, &stamp).unwrap(),
            3 => library.put_back(recipe, &stamp).unwrap(),
            _ => {
                let next =
                    library.revision(of).unwrap().next(title("edited"), draft(&pick.to_string()), stamp).unwrap();
                known.push(library.save(next).unwrap());
            }
        }
    }
    library
}

/// All that both have, on a library of its own, saved as anything else is.
fn union(a: &Library<FaultyStore>, b: &Library<FaultyStore>) -> Library<FaultyStore> {
    let mut both = Library::open(FaultyStore::default()).unwrap();
    for library in [a, b] {
        for listed in library.recipes() {
            for version in library.history(listed.recipe) {
                both.save(library.revision(version.summary.id).unwrap()).unwrap();
            }
        }
    }
    assert!(!both.store().overwritten());
    both
}

/// The texts, and what a list shows of them: each recipe with its head, its other heads and its standing.
type Seen = (BTreeMap<String, String>, Vec<(RevisionId, Vec<RevisionId>, bool)>);

fn seen(library: &Library<FaultyStore>) -> Seen {
    let mut listed: Vec<_> = library
        .recipes()
        .iter()
        .map(|listed| {
            let others = listed.others.iter().map(|head| head.summary.id).collect();
            (listed.head.summary.id, others, listed.standing() == Standing::Kept)
        })
        .collect();
    listed.sort();
    (texts(library.store()), listed)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: cases(80), ..ProptestConfig::default() })]

    #[test]
    fn a_union_does_not_depend_on_who_comes_first(
        a in proptest::collection::vec(any::<(u8, u8)>(), 0..8),
        b in proptest::collection::vec(any::<(u8, u8)>(), 0..8),
        c in proptest::collection::vec(any::<(u8, u8)>(), 0..8),
    ) {
        let [a, b, c] = [a, b, c].map(|steps| laptop(&steps));
        prop_assert_eq!(seen(&union(&a, &a)), seen(&a));
        prop_assert_eq!(seen(&union(&a, &b)), seen(&union(&b, &a)));
        prop_assert_eq!(seen(&union(&union(&a, &b), &c)), seen(&union(&a, &union(&b, &c))));
        let ab = union(&a, &b);
        prop_assert_eq!(seen(&union(&ab, &b)), seen(&ab));
        for library in [&a, &b] {
            for (key, text) in texts(library.store()) {
                prop_assert_eq!(ab.store().inner.read(&key).unwrap(), Some(text));
            }
        }
    }
}

/// `PROPTEST_CASES` for a long run.
pub fn cases(usual: u32) -> u32 {
    std::env::var("PROPTEST_CASES").ok().and_then(|cases| cases.parse().ok()).unwrap_or(usual)
}
