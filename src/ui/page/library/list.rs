//! What the list shows, taken out of the library.

use crate::domain::{Entry, Substance};
use crate::quantity::format::DecimalMark;
use crate::record::content::revision::Standing;
use crate::record::content::summary::{self, SortOrder};
use crate::record::file::log_csv::library_csv;
use crate::record::{Library, RecipeId, RevisionId, Store, Summary};

/// A recipe in the list.
#[derive(Debug, Clone, PartialEq)]
pub struct ListedRecipe {
    /// The recipe.
    pub recipe: RecipeId,
    /// Its newest head.
    pub head: Head,
    /// Its name.
    pub name: String,
    /// Its note.
    pub note: String,
    /// Its tags.
    pub tags: Vec<String>,
    /// Other heads, that stand beside the newest.
    pub others: Vec<Head>,
}

/// A revision at a glance.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Head {
    /// The revision.
    pub id: RevisionId,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub saved_at: u64,
    /// The author's initials.
    pub author: String,
    /// What the author remarked on this save.
    pub remark: String,
    /// Whether it is released for the line.
    pub released: bool,
    /// What its liquids are.
    pub substances: Vec<Substance>,
    /// Board thickness as typed.
    pub thickness: Entry,
    /// Board density as typed.
    pub density: Entry,
}

impl Head {
    /// What there is to see of a revision.
    pub fn of(summary: &Summary) -> Self {
        Self {
            id: summary.id,
            saved_at: summary.saved_at,
            author: summary.author.clone(),
            remark: summary.remark.clone(),
            released: summary.released,
            substances: summary.substances.clone(),
            thickness: summary.thickness.clone(),
            density: summary.density.clone(),
        }
    }
}

impl ListedRecipe {
    /// What a line is known by: one that went on by a revision is another one.
    pub fn key(&self) -> String {
        format!("{} {} {}", self.recipe, self.head.id, self.others.len())
    }
}

/// What was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// The lines shown.
    pub lines: Vec<ListedRecipe>,
    /// How many recipes match.
    pub matching: usize,
    /// How many there are.
    pub all: usize,
    /// How many were removed.
    pub removed: usize,
}

/// The first `most` recipes that match.
pub fn find(library: &Library<impl Store>, query: &str, order: SortOrder, most: usize) -> Found {
    let mut recipes = library.recipes();
    let before = recipes.len();
    recipes.retain(|listed| listed.standing() == Standing::Kept);
    let all = recipes.len();
    let matching = summary::find(&recipes, query, order);
    let line = |listed: &summary::Listed<'_>| {
        let head = listed.head;
        ListedRecipe {
            recipe: listed.recipe,
            head: Head::of(head),
            name: head.name.clone(),
            note: head.note.clone(),
            tags: head.tags.clone(),
            others: listed.others.iter().map(|other| Head::of(other)).collect(),
        }
    };
    Found {
        lines: matching.iter().take(most).map(line).collect(),
        matching: matching.len(),
        all,
        removed: before - all,
    }
}

/// The recipes that match, as a table to take away.
pub fn csv(library: &Library<impl Store>, query: &str, order: SortOrder, mark: DecimalMark) -> String {
    let mut recipes = library.recipes();
    recipes.retain(|listed| listed.standing() == Standing::Kept);
    library_csv(&summary::find(&recipes, query, order), mark)
}

/// The last `most` recipes that were removed: each with its name and when it was.
pub fn removed(library: &Library<impl Store>, most: usize) -> Vec<(RecipeId, String, u64)> {
    let mut recipes = library.recipes();
    recipes.retain(|listed| listed.standing() == Standing::Removed);
    let found = summary::find(&recipes, "", SortOrder::Newest);
    found.iter().take(most).map(|listed| (listed.recipe, listed.head.name.clone(), listed.head.saved_at)).collect()
}
