//! A revision at a glance, and finding one among many.

use super::id::{RecipeId, RevisionId};
use super::revision::{Revision, Standing};
use crate::domain::{Entry, Substance};
use std::cmp::{Ordering, Reverse};

/// What a list shows of a revision, and what a search looks through.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Summary {
    /// The revision.
    pub id: RevisionId,
    /// Its recipe.
    pub recipe: RecipeId,
    /// What it was made from.
    pub parents: Vec<RevisionId>,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub saved_at: u64,
    /// The author's initials.
    pub author: String,
    /// The recipe's name.
    pub name: String,
    /// The note.
    pub note: String,
    /// The tags.
    pub tags: Vec<String>,
    /// Whether the recipe is kept.
    pub standing: Standing,
    /// Names of the liquids, as the mill calls them.
    pub liquids: Vec<String>,
    /// What the liquids are, each once, in the order of the recipe.
    pub substances: Vec<Substance>,
    /// Board density as typed, with its unit.
    pub density: Entry,
    /// Board thickness as typed, with its unit.
    pub thickness: Entry,
    /// All of it that can be searched, in lower case.
    haystack: String,
}

impl Summary {
    /// The summary of a revision.
    #[must_use]
    pub fn of(revision: &Revision) -> Self {
        let content = revision.content();
        let (density, thickness) = (&content.draft.plain.board_density, &content.draft.plain.thickness);
        let mut substances = Vec::new();
        for liquid in &content.draft.liquids {
            if !substances.contains(&liquid.substance) {
                substances.push(liquid.substance);
            }
        }
        let mut haystack = String::new();
        let mut add = |text: &str| {
            haystack.push_str(&text.to_lowercase());
            // No search word holds a line break, so none reaches across two texts.
            haystack.push('\n');
        };
        add(&content.name);
        add(&content.note);
        content.tags.iter().for_each(|tag| add(tag));
        add(&content.author);
        content.draft.liquids.iter().for_each(|liquid| add(&liquid.name));
        substances.iter().for_each(|substance| add(&format!("{substance:?}")));
        for entry in [density, thickness] {
            if !entry.is_blank() {
                add(&format!("{} {}", entry.text.trim(), entry.unit.symbol()));
            }
        }
        Self {
            id: revision.revision(),
            recipe: revision.recipe(),
            parents: content.parents.clone(),
            saved_at: content.saved_at,
            author: content.author.clone(),
            name: content.name.clone(),
            note: content.note.clone(),
            tags: content.tags.clone(),
            standing: content.standing,
            liquids: content.draft.liquids.iter().map(|liquid| liquid.name.clone()).collect(),
            substances,
            density: density.clone(),
            thickness: thickness.clone(),
            haystack,
        }
    }
}

/// A recipe on the shelf: its heads, that is the revisions that nothing follows, newest first.
/// One as a rule; more after two people changed it apart from each other.
#[derive(Debug, Clone)]
pub struct Listed<'a> {
    /// The recipe.
    pub recipe: RecipeId,
    /// The newest head, which stands for the recipe.
    pub head: &'a Summary,
    /// The other heads.
    pub others: Vec<&'a Summary>,
}

impl<'a> Listed<'a> {
    /// A recipe with its heads in any order; `None` when there are none.
    #[must_use]
    pub fn of(recipe: RecipeId, mut heads: Vec<&'a Summary>) -> Option<Self> {
        heads.sort_by_key(|head| (Reverse(head.saved_at), head.id));
        let mut heads = heads.into_iter();
        let head = heads.next()?;
        Some(Self { recipe, head, others: heads.collect() })
    }

    /// Removed is a recipe only when all its heads are: a change made meanwhile keeps it.
    #[must_use]
    pub fn standing(&self) -> Standing {
        let mut heads = std::iter::once(self.head).chain(self.others.iter().copied());
        if heads.all(|head| head.standing == Standing::Removed) { Standing::Removed } else { Standing::Kept }
    }
}

/// How a list is sorted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Order {
    /// Last saved first.
    #[default]
    Newest,
    /// First saved first.
    Oldest,
    /// By name, numbers by their size: "9 mm" before "12 mm".
    Name,
    /// By name, backwards.
    NameBackwards,
}

/// The recipes in which every word of `query` occurs: in name, note, tags, author, the liquids'
/// names or substances, density or thickness. Capitals do not matter; a blank query finds all.
#[must_use]
pub fn find<'a>(listed: &[Listed<'a>], query: &str, order: Order) -> Vec<Listed<'a>> {
    let query = query.to_lowercase();
    let words: Vec<&str> = query.split_whitespace().collect();
    let holds = |summary: &Summary| words.iter().all(|word| summary.haystack.contains(word));
    let mut found: Vec<Listed<'a>> = listed
        .iter()
        .filter(|line| holds(line.head) || line.others.iter().any(|other| holds(other)))
        .cloned()
        .collect();
    found.sort_by(|a, b| {
        let by_time = || b.head.saved_at.cmp(&a.head.saved_at);
        let by_name = || by_name(&a.head.name, &b.head.name);
        match order {
            Order::Newest => by_time(),
            Order::Oldest => by_time().reverse(),
            Order::Name => by_name(),
            Order::NameBackwards => by_name().reverse(),
        }
        // The same list whatever order the store gave the records in.
        .then_with(by_time)
        .then(a.recipe.cmp(&b.recipe))
    });
    found
}

/// Compares names without regard to capitals, runs of digits by their size.
fn by_name(a: &str, b: &str) -> Ordering {
    let (mut a, mut b) = (a, b);
    loop {
        let (Some(x), Some(y)) = (a.chars().next(), b.chars().next()) else {
            return a.len().cmp(&b.len());
        };
        if x.is_ascii_digit() && y.is_ascii_digit() {
            let (run_a, rest_a) = digits(a);
            let (run_b, rest_b) = digits(b);
            match run_a.len().cmp(&run_b.len()).then(run_a.cmp(run_b)) {
                Ordering::Equal => (a, b) = (rest_a, rest_b),
                unequal => return unequal,
            }
        } else {
            match x.to_lowercase().cmp(y.to_lowercase()) {
                Ordering::Equal => {
                    (a, b) = (a.get(x.len_utf8()..).unwrap_or_default(), b.get(y.len_utf8()..).unwrap_or_default());
                }
                unequal => return unequal,
            }
        }
    }
}

/// The digits that `text` begins with, without leading noughts, and what follows them.
fn digits(text: &str) -> (&str, &str) {
    let end = text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    let (run, rest) = text.split_at(end);
    (run.trim_start_matches('0'), rest)
}
