//! A revision at a glance, and finding one among many.

use crate::domain::{Entry, Substance};
use crate::quantity::Unit;
use crate::record::content::revision::{Revision, RevisionContent, Standing};
use crate::record::content::sealed::Content;
use crate::record::id::{RecipeId, RevisionId};
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;

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
    /// What the author remarked on this save.
    pub remark: String,
    /// The recipe's name.
    pub name: String,
    /// The note.
    pub note: String,
    /// The tags.
    pub tags: Vec<String>,
    /// Whether the recipe is kept.
    pub standing: Standing,
    /// Whether it is released for the line.
    pub released: bool,
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

/// The parts of a revision's text that a summary is made of. Skipping the rest takes a fifth of the
/// time of reading it whole, which is what a library of thousands opens in.
#[derive(Deserialize)]
struct RevisionExcerpt {
    haulm: String,
    version: u32,
    recipe: Option<RecipeId>,
    #[serde(default)]
    parents: Vec<RevisionId>,
    saved_at: u64,
    #[serde(default)]
    author: String,
    #[serde(default)]
    remark: String,
    name: String,
    #[serde(default)]
    note: String,
    #[serde(default)]
    tags: Vec<String>,
    #[serde(default)]
    standing: Standing,
    #[serde(default)]
    released: bool,
    draft: DraftExcerpt,
}

#[derive(Deserialize)]
struct DraftExcerpt {
    liquids: Vec<LiquidExcerpt>,
    plain: PlainExcerpt,
}

#[derive(Deserialize)]
struct LiquidExcerpt {
    name: String,
    substance: Substance,
}

#[derive(Deserialize)]
struct PlainExcerpt {
    board_density: Option<Entry>,
    thickness: Option<Entry>,
}

impl Summary {
    /// The summary of a revision.
    #[must_use]
    pub fn of(revision: &Revision) -> Option<Self> {
        Self::glance(revision.revision(), revision.text())
    }

    /// The summary of the revision `id` with that text; `None` where it is no revision of the present
    /// format. That the rest of it can be read is not said by it.
    #[must_use]
    pub fn glance(id: RevisionId, text: &str) -> Option<Self> {
        let RevisionExcerpt {
            haulm,
            version,
            recipe,
            parents,
            saved_at,
            author,
            remark,
            name,
            note,
            tags,
            standing,
            released,
            draft: DraftExcerpt { liquids, plain: PlainExcerpt { board_density, thickness } },
        } = serde_json::from_str(text).ok()?;
        if haulm != RevisionContent::KIND || version != RevisionContent::VERSION {
            return None;
        }
        let mut haystack = String::new();
        let mut add = |text: &str| {
            haystack.push_str(&text.to_lowercase());
            // No search word holds a line break, so none reaches across two texts.
            haystack.push('\n');
        };
        [&name, &note, &author, &remark].into_iter().chain(&tags).for_each(|text| add(text));
        let mut substances = Vec::new();
        for liquid in &liquids {
            add(&liquid.name);
            if !substances.contains(&liquid.substance) {
                substances.push(liquid.substance);
                add(&format!("{:?}", liquid.substance));
            }
        }
        for entry in [&board_density, &thickness].into_iter().flatten().filter(|entry| !entry.is_blank()) {
            add(&format!("{} {}", entry.text.trim(), entry.unit.symbol()));
        }
        Some(Self {
            id,
            recipe: recipe.unwrap_or(RecipeId(id.0)),
            parents,
            saved_at,
            author,
            remark,
            name,
            note,
            tags,
            standing,
            released,
            liquids: liquids.into_iter().map(|liquid| liquid.name).collect(),
            substances,
            density: board_density.unwrap_or(Entry::empty(Unit::KilogramPerCubicMetre)),
            thickness: thickness.unwrap_or(Entry::empty(Unit::Millimetre)),
            haystack,
        })
    }
}

/// A recipe in the library: its heads, that is the revisions that nothing follows, newest first.
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
    /// The recipes of some heads, in the order of their ids.
    #[must_use]
    pub fn of(heads: &[&'a Summary]) -> Vec<Self> {
        let mut listed: Vec<Self> = Vec::new();
        let mut heads = heads.to_vec();
        heads.sort_by(|a, b| a.recipe.cmp(&b.recipe).then_with(|| newest_first(a, b)));
        for head in heads {
            match listed.last_mut() {
                Some(last) if last.recipe == head.recipe => last.others.push(head),
                _ => listed.push(Self { recipe: head.recipe, head, others: Vec::new() }),
            }
        }
        listed
    }

    /// Removed is a recipe only when all its heads are: a change made meanwhile keeps it.
    #[must_use]
    pub fn standing(&self) -> Standing {
        let mut heads = std::iter::once(self.head).chain(self.others.iter().copied());
        if heads.all(|head| head.standing == Standing::Removed) { Standing::Removed } else { Standing::Kept }
    }
}

/// How a list is sorted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SortOrder {
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

impl SortOrder {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [SortOrder] = &[Self::Newest, Self::Oldest, Self::Name, Self::NameBackwards];
}

/// The recipes in which every word of `query` occurs: in name, note, tags, author, the liquids'
/// names or substances, density or thickness. Capitals do not matter; a blank query finds all.
#[must_use]
pub fn find<'a>(listed: &[Listed<'a>], query: &str, order: SortOrder) -> Vec<Listed<'a>> {
    let query = query.to_lowercase();
    let words: Vec<&str> = query.split_whitespace().collect();
    let holds = |summary: &Summary| words.iter().all(|word| summary.haystack.contains(word));
    let found = listed.iter().filter(|line| holds(line.head) || line.others.iter().any(|other| holds(other)));
    let mut found: Vec<Listed<'a>> = found.cloned().collect();
    let by = |a: &Listed<'_>, b: &Listed<'_>| {
        let by_name = || by_name(&a.head.name, &b.head.name);
        match order {
            SortOrder::Newest => Ordering::Equal,
            SortOrder::Oldest => newest_first(b.head, a.head),
            SortOrder::Name => by_name(),
            SortOrder::NameBackwards => by_name().reverse(),
        }
        .then_with(|| newest_first(a.head, b.head))
    };
    found.sort_by(by);
    found
}

/// The newest first, and the same way whatever order they came in.
pub(in crate::record) fn newest_first(a: &Summary, b: &Summary) -> Ordering {
    b.saved_at.cmp(&a.saved_at).then(a.id.cmp(&b.id))
}

/// Compares names without regard to capitals, runs of digits by their size.
pub(in crate::record) fn by_name(a: &str, b: &str) -> Ordering {
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
