//! A revision at a glance.

use crate::domain::{Entry, Substance};
use crate::quantity::Unit;
use crate::record::content::revision::{Revision, RevisionContent, Standing};
use crate::record::content::sealed::Content;
use crate::record::id::{RecipeId, RevisionId};
use serde::Deserialize;

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
            liquids: liquids.into_iter().map(|liquid| liquid.name).collect(),
            substances,
            density: board_density.unwrap_or(Entry::empty(Unit::KilogramPerCubicMetre)),
            thickness: thickness.unwrap_or(Entry::empty(Unit::Millimetre)),
            haystack,
        })
    }

    /// Whether each of these words, in lower case, occurs somewhere in it.
    pub(in crate::record) fn holds(&self, words: &[&str]) -> bool {
        words.iter().all(|word| self.haystack.contains(word))
    }
}
