//! What the list shows, taken out of the library.

use crate::domain::{Entry, Substance};
use crate::quantity::format::DecimalMark;
use crate::record::content::lineage::Listed;
use crate::record::content::revision::Standing;
use crate::record::content::search::{self, SortOrder};
use crate::record::file::log_csv::library_csv;
use crate::record::{Library, RecipeId, Store, Version};
use crate::ui::part::version::Seen;

/// A recipe in the list.
#[derive(Debug, Clone, PartialEq)]
pub struct ListedRecipe {
    /// The recipe.
    pub recipe: RecipeId,
    /// Its latest head.
    pub head: Head,
    /// The revision that is released for the line.
    pub released: Option<Seen>,
    /// Its name.
    pub name: String,
    /// Its note.
    pub note: String,
    /// Its tags.
    pub tags: Vec<String>,
    /// The other heads.
    pub others: Vec<Head>,
}

/// A revision at a glance.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Head {
    /// The revision.
    pub seen: Seen,
    /// What its liquids are.
    pub substances: Vec<Substance>,
    /// Board thickness as typed.
    pub thickness: Entry,
    /// Board density as typed.
    pub density: Entry,
}

impl Head {
    /// What there is to see of a revision.
    pub fn of(version: &Version<'_>) -> Self {
        let summary = version.summary;
        Self {
            seen: Seen::from(version),
            substances: summary.substances.clone(),
            thickness: summary.thickness.clone(),
            density: summary.density.clone(),
        }
    }
}

impl ListedRecipe {
    /// What a line is known by: one that went on by a revision is another one.
    pub fn key(&self) -> String {
        let released = self.released.as_ref().map(|released| (released.id, &released.released));
        format!("{} {} {} {released:?}", self.recipe, self.head.seen.id, self.others.len())
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
    let matching = search::find(&recipes, query, order);
    let line = |listed: &Listed<'_>| {
        let head = listed.head.summary;
        ListedRecipe {
            recipe: listed.recipe,
            head: Head::of(&listed.head),
            released: listed.released.as_ref().map(Seen::from),
            name: head.name.clone(),
            note: head.note.clone(),
            tags: head.tags.clone(),
            others: listed.others.iter().map(Head::of).collect(),
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
    library_csv(&search::find(&recipes, query, order), mark)
}

/// The last `most` recipes that were removed: each with its name and when it was.
pub fn removed(library: &Library<impl Store>, most: usize) -> Vec<(RecipeId, String, u64)> {
    if !library.has_removed() {
        return Vec::new();
    }
    let mut recipes = library.recipes();
    recipes.retain(|listed| listed.standing() == Standing::Removed);
    let found = search::find(&recipes, "", SortOrder::Newest);
    let removed = |listed: &Listed<'_>| {
        let head = listed.head.summary;
        (listed.recipe, head.name.clone(), head.saved_at)
    };
    found.iter().take(most).map(removed).collect()
}
