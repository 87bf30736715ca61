//! Random lives of a shelf, two tabs and a store that fails: no confirmed revision is ever lost.

use crate::faulty::{Fault, FaultyStore};
use crate::sample::{draft, stamp, title};
use haulm::record::RevisionId;
use haulm::record::open_draft::OpenDraft;
use haulm::record::revision::Revision;
use haulm::record::shelf::{SaveError, Shelf, Unread};
use haulm::record::store::Store;
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
    Mend,
    Spoil(usize),
    Clear,
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
        3 => Just(Step::Mend),
        1 => pick.prop_map(Step::Spoil),
        1 => Just(Step::Clear),
    ]
}

/// The store, the tabs, and what the app has told its user.
struct Life {
    store: FaultyStore,
    tabs: [Shelf<FaultyStore>; 2],
    /// Every revision that a save has confirmed, with its text.
    confirmed: BTreeMap<RevisionId, String>,
    /// Those that someone has spoilt in the store, with what is there now.
    spoilt: BTreeMap<RevisionId, String>,
    now: u64,
}

impl Life {
    fn new() -> Self {
        let store = FaultyStore::default();
        let tab = || Shelf::open(store.clone()).unwrap();
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
            known.extend(self.tabs[tab].history(listed.recipe).iter().map(|summary| summary.id));
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
                let work = OpenDraft { from: None, title: title("work"), draft: draft("1"), example: false };
                if self.tabs[tab].keep_draft(&work).is_ok() {
                    assert_eq!(self.tabs[tab].open_draft(), Ok(Some(work)));
                }
            }
            Step::Refresh => drop(self.tabs[tab].refresh()),
            Step::Reopen => {
                if let Ok(shelf) = Shelf::open(self.store.clone()) {
                    self.tabs[tab] = shelf;
                }
            }
            Step::Fail(away, fault) => self.store.fail_write(*away, *fault),
            Step::Fill(left) => self.store.set_room(self.store.used() + left),
            Step::Block => self.store.block(),
            Step::Mend => self.store.mend(),
            Step::Spoil(n) => {
                let Some(id) = self.pick(tab, *n) else { return };
                let key = format!("haulm/revision/{id}");
                let Some(text) = self.store.inner.read(&key).unwrap() else { return };
                let text = format!("{}?", &text[..text.len() / 2]);
                self.store.inner.write(&key, &text).unwrap();
                self.spoilt.insert(id, text);
            }
            Step::Clear => {
                // The tabs see it and write back what they have; what was spoilt is whole again if a
                // tab had read it before.
                self.store.mend();
                self.store.clear();
                for tab in &mut self.tabs {
                    tab.refresh().unwrap();
                    tab.fill_again().unwrap();
                }
                let known: BTreeSet<RevisionId> = self.ids(0).union(&self.ids(1)).copied().collect();
                for id in self.spoilt.keys().copied().collect::<Vec<_>>() {
                    self.spoilt.remove(&id);
                    if !known.contains(&id) {
                        self.confirmed.remove(&id);
                    }
                }
            }
        }
    }

    fn ids(&self, tab: usize) -> BTreeSet<RevisionId> {
        let shelf = &self.tabs[tab];
        let recipes = shelf.recipes();
        recipes.iter().flat_map(|listed| shelf.history(listed.recipe)).map(|summary| summary.id).collect()
    }

    fn check(&self) {
        for (id, text) in &self.confirmed {
            let there = self.store.inner.read(&format!("haulm/revision/{id}")).unwrap();
            let expected = self.spoilt.get(id).unwrap_or(text);
            assert!(there.as_ref() == Some(expected), "confirmed and not there: {id}");
        }
    }

    /// A fresh start after all of it.
    fn check_reopened(&self) {
        self.store.mend();
        let mut shelf = Shelf::open(self.store.clone()).unwrap();
        shelf.verify(usize::MAX);
        for (id, text) in &self.confirmed {
            if let Some(raw) = self.spoilt.get(id) {
                let shown = shelf.unreadable().find(|record| record.key == format!("haulm/revision/{id}")).unwrap();
                assert!(shown.text.as_ref() == Some(raw) && matches!(shown.why, Unread::Refused(_)));
            } else {
                assert!(shelf.revision(*id).unwrap().text() == text, "confirmed and another: {id}");
                let recipe = shelf.revision(*id).unwrap().recipe();
                assert!(shelf.history(recipe).iter().any(|summary| summary.id == *id));
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: cases(100), ..ProptestConfig::default() })]

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

/// `PROPTEST_CASES` for a long run.
pub fn cases(usual: u32) -> u32 {
    std::env::var("PROPTEST_CASES").ok().and_then(|cases| cases.parse().ok()).unwrap_or(usual)
}
