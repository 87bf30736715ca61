//! Revisions by descent: which follows which, the number of each within its recipe, and which one is released.
//!
//! Clocks of two laptops differ, so no order here is taken from the time of a save: a revision is later than another one
//! when it descends from it.

use crate::record::content::release::Release;
use crate::record::content::revision::Standing;
use crate::record::content::summary::Summary;
use crate::record::id::{RecipeId, ReleaseId, RevisionId};
use std::cmp::Ordering;
use std::collections::{BTreeMap, BTreeSet};

/// Who did something, and when.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct By {
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// The initials, blank when not given.
    pub author: String,
}

impl By {
    fn of(release: &Release) -> Self {
        Self { at: release.content().at, author: release.content().author.clone() }
    }
}

/// That a revision was released.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Released {
    /// By whom, and when.
    pub by: By,
    /// Who withdrew it, and when; `None` as long as it holds.
    pub withdrawn: Option<By>,
}

/// A revision in its place within the recipe.
#[derive(Debug, Clone, PartialEq)]
pub struct Version<'a> {
    /// The revision at a glance.
    pub summary: &'a Summary,
    /// One more than the longest line of descent that leads to it: 1 for the first save. A merge has one more than the
    /// higher of the numbers that it merges. A revision that is not here counts as number 1.
    pub number: u32,
    /// Whether another revision of the recipe has the same number, because two were saved apart from each other.
    pub twin: bool,
    /// Its last release, if it was ever released.
    pub released: Option<Released>,
}

impl Version<'_> {
    /// Whether it is released, and the release was not withdrawn.
    #[must_use]
    pub fn is_released(&self) -> bool {
        self.released.as_ref().is_some_and(|released| released.withdrawn.is_none())
    }
}

/// A recipe in the library: its heads, that is the revisions that nothing follows. One as a rule; more after two people
/// changed it apart from each other.
#[derive(Debug, Clone, PartialEq)]
pub struct Listed<'a> {
    /// The recipe.
    pub recipe: RecipeId,
    /// The latest head, which stands for the recipe.
    pub head: Version<'a>,
    /// The other heads.
    pub others: Vec<Version<'a>>,
    /// The latest revision that is released.
    pub released: Option<Version<'a>>,
}

impl<'a> Listed<'a> {
    /// All heads, the latest first.
    pub fn heads(&self) -> impl Iterator<Item = &Version<'a>> {
        std::iter::once(&self.head).chain(&self.others)
    }

    /// Removed is a recipe only when all its heads are: a change made meanwhile keeps it.
    #[must_use]
    pub fn standing(&self) -> Standing {
        let removed = self.heads().all(|head| head.summary.standing == Standing::Removed);
        if removed { Standing::Removed } else { Standing::Kept }
    }
}

/// Revisions by descent, of one recipe or of all.
#[derive(Debug, Clone, Default)]
pub struct Lineage<'a> {
    versions: BTreeMap<RevisionId, Version<'a>>,
    /// What some revision was made from.
    followed: BTreeSet<RevisionId>,
}

impl<'a> Lineage<'a> {
    /// The lineage of these revisions, all of a recipe's or of several recipes', with the releases that there are.
    #[must_use]
    pub fn of(revisions: impl Iterator<Item = &'a Summary>, releases: impl Iterator<Item = &'a Release>) -> Self {
        let mut lineage = Self::default();
        for summary in revisions {
            lineage.followed.extend(summary.parents.iter().copied());
            let version = Version { summary, number: 0, twin: false, released: None };
            lineage.versions.insert(summary.id, version);
        }
        lineage.number();
        lineage.mark_twins();
        lineage.mark_released(releases);
        lineage
    }

    /// The parent, where it is here and of the same recipe.
    fn parent(&self, of: &Summary, parent: RevisionId) -> Option<&Version<'a>> {
        self.versions.get(&parent).filter(|version| version.summary.recipe == of.recipe)
    }

    /// Numbers each revision after all its parents, without recursion: a recipe may have thousands of saves.
    fn number(&mut self) {
        let mut begun = BTreeSet::new();
        let all: Vec<&'a Summary> = self.versions.values().map(|version| version.summary).collect();
        for summary in all {
            let mut path = if begun.insert(summary.id) { vec![summary] } else { Vec::new() };
            while let Some(&last) = path.last() {
                // One that was begun and has no number yet is further down the path: a circle, which only a damaged
                // record can make. It counts as a revision that is not here.
                let open = last.parents.iter().filter_map(|parent| self.parent(last, *parent));
                let next = open.map(|parent| parent.summary).find(|parent| !begun.contains(&parent.id));
                if let Some(next) = next {
                    begun.insert(next.id);
                    path.push(next);
                    continue;
                }
                let of_parent = |id: &RevisionId| self.parent(last, *id).map_or(1, |parent| parent.number.max(1));
                let number = last.parents.iter().map(of_parent).max().map_or(1, |most| most.saturating_add(1));
                if let Some(version) = self.versions.get_mut(&last.id) {
                    version.number = number;
                }
                path.pop();
            }
        }
    }

    fn mark_twins(&mut self) {
        let mut count: BTreeMap<(RecipeId, u32), u32> = BTreeMap::new();
        for version in self.versions.values() {
            *count.entry((version.summary.recipe, version.number)).or_default() += 1;
        }
        for version in self.versions.values_mut() {
            version.twin = count.get(&(version.summary.recipe, version.number)).is_some_and(|count| *count > 1);
        }
    }

    /// Of several releases of one revision the one that holds counts, else the last one.
    fn mark_released(&mut self, releases: impl Iterator<Item = &'a Release>) {
        let (withdrawals, releases): (Vec<&Release>, Vec<&Release>) =
            releases.partition(|release| release.content().withdraws.is_some());
        let withdrawn: BTreeMap<ReleaseId, &Release> =
            withdrawals.into_iter().filter_map(|by| Some((by.content().withdraws?, by))).collect();
        for release in releases {
            let Some(version) = self.versions.get_mut(&release.content().revision) else { continue };
            let released =
                Released { by: By::of(release), withdrawn: withdrawn.get(&release.release()).map(|by| By::of(by)) };
            let rank = |released: &Released| (released.withdrawn.is_none(), released.by.at, released.by.author.clone());
            if version.released.as_ref().is_none_or(|before| rank(before) < rank(&released)) {
                version.released = Some(released);
            }
        }
    }

    /// A revision in its place; `None` where it is not here.
    #[must_use]
    pub fn version(&self, id: RevisionId) -> Option<&Version<'a>> {
        self.versions.get(&id)
    }

    /// All revisions, the latest first: each is before everything that it descends from.
    #[must_use]
    pub fn into_history(self) -> Vec<Version<'a>> {
        let mut history: Vec<Version<'a>> = self.versions.into_values().collect();
        history.sort_by(latest_first);
        history
    }

    /// The recipes with their heads, in the order of their ids.
    #[must_use]
    pub fn recipes(&self) -> Vec<Listed<'a>> {
        let mut released: BTreeMap<RecipeId, &Version<'a>> = BTreeMap::new();
        for version in self.versions.values().filter(|version| version.is_released()) {
            let latest = released.entry(version.summary.recipe).or_insert(version);
            if latest_first(version, latest).is_lt() {
                *latest = version;
            }
        }
        let mut heads: Vec<&Version<'a>> =
            self.versions.values().filter(|version| !self.followed.contains(&version.summary.id)).collect();
        heads.sort_by(|a, b| a.summary.recipe.cmp(&b.summary.recipe).then_with(|| latest_first(a, b)));
        let mut listed: Vec<Listed<'a>> = Vec::new();
        for head in heads {
            let recipe = head.summary.recipe;
            match listed.last_mut() {
                Some(last) if last.recipe == recipe => last.others.push(head.clone()),
                _ => listed.push(Listed {
                    recipe,
                    head: head.clone(),
                    others: Vec::new(),
                    released: released.get(&recipe).map(|version| (*version).clone()),
                }),
            }
        }
        listed
    }

    /// The heads that descend from a revision, the latest first; none where it is a head itself.
    #[must_use]
    pub fn heads_after(&self, id: RevisionId) -> Vec<Version<'a>> {
        let mut after: Vec<Version<'a>> = self
            .versions
            .values()
            .filter(|head| !self.followed.contains(&head.summary.id) && self.descends(head.summary, id))
            .cloned()
            .collect();
        after.sort_by(latest_first);
        after
    }

    /// Whether `summary` was made from the revision, straight or through others.
    fn descends(&self, summary: &Summary, from: RevisionId) -> bool {
        let mut seen = BTreeSet::new();
        let mut open = summary.parents.clone();
        while let Some(parent) = open.pop() {
            if parent == from {
                return true;
            }
            if seen.insert(parent)
                && let Some(version) = self.versions.get(&parent)
            {
                open.extend(version.summary.parents.iter().copied());
            }
        }
        false
    }
}

/// The later by descent first. What does not descend from each other is ordered by number, then by its time, and the same
/// way whatever order it came in.
fn latest_first(a: &Version<'_>, b: &Version<'_>) -> Ordering {
    let by_number = b.number.cmp(&a.number);
    by_number.then(b.summary.saved_at.cmp(&a.summary.saved_at)).then(a.summary.id.cmp(&b.summary.id))
}
