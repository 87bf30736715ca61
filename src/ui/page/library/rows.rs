//! What the table of recipes shows, taken out of the library: plain texts, made for the rows in sight only.

use crate::browser::clock;
use crate::domain::{Entry, Substance};
use crate::quantity::Kind;
use crate::quantity::format::DecimalMark;
use crate::record::content::lineage::Listed;
use crate::record::content::revision::Standing;
use crate::record::content::search::{self, SortOrder};
use crate::record::file::log_csv::library_csv;
use crate::record::{Library, RecipeId, RevisionId, Store, Version};
use crate::ui::field::number_text::in_box;
use crate::ui::part::amount::joined;
use crate::ui::part::save::when;
use crate::ui::part::version::Seen;
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, words};
use leptos::prelude::*;
use std::collections::BTreeSet;

/// A recipe in the table.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct LibraryRow {
    /// The recipe.
    pub recipe: RecipeId,
    /// Its latest head.
    pub head: RevisionId,
    /// Its other heads.
    pub others: Vec<RevisionId>,
    /// Its name.
    pub name: String,
    /// Its binders by name.
    pub binder: String,
    /// Board thickness and its unit.
    pub thickness: (String, String),
    /// Board density and its unit.
    pub density: (String, String),
    /// When it was last saved.
    pub saved: String,
    /// By whom, of all heads.
    pub authors: String,
    /// The number of the revision.
    pub revision: u32,
    /// The released revision: which, and since when.
    pub released: Option<(RevisionId, String)>,
    /// By whom and when each head was saved, where there are several.
    pub versions: Option<String>,
}

/// What was found.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Found {
    /// The rows shown.
    pub rows: Vec<LibraryRow>,
    /// How many recipes match.
    pub matching: usize,
    /// How many there are.
    pub all: usize,
    /// How many were deleted.
    pub deleted: usize,
    /// The recipes with several versions, by name.
    pub conflicts: Vec<(RecipeId, String)>,
    /// How many were saved after the last backup.
    pub changed: usize,
}

/// What is asked for.
pub struct Asked<'a> {
    /// The words.
    pub query: &'a str,
    /// Whether a revision has to be released.
    pub only_released: bool,
    /// The order.
    pub order: SortOrder,
    /// So many rows.
    pub most: usize,
    /// The time of the last backup.
    pub backup: Option<u64>,
}

/// The first `most` recipes that match.
pub fn find(state: State, library: &Library<impl Store>, asked: &Asked<'_>) -> Found {
    let mut recipes = library.recipes();
    let before = recipes.len();
    recipes.retain(|listed| listed.standing() == Standing::Kept);
    let all = recipes.len();
    let conflicts = recipes.iter().filter(|listed| !listed.others.is_empty());
    let conflicts = conflicts.map(|listed| (listed.recipe, listed.head.summary.name.clone())).collect();
    let changed =
        recipes.iter().filter(|listed| asked.backup.is_none_or(|at| listed.head.summary.saved_at > at)).count();
    if asked.only_released {
        recipes.retain(|listed| listed.released.is_some());
    }
    let matching = search::find(&recipes, asked.query, asked.order);
    Found {
        rows: matching.iter().take(asked.most).map(|listed| row(state, listed)).collect(),
        matching: matching.len(),
        all,
        deleted: before - all,
        conflicts,
        changed,
    }
}

fn row(state: State, listed: &Listed<'_>) -> LibraryRow {
    let head = listed.head.summary;
    let mut authors: Vec<&str> = Vec::new();
    for version in listed.heads() {
        let author = version.summary.author.as_str();
        if !author.is_empty() && !authors.contains(&author) {
            authors.push(author);
        }
    }
    let versions = versions_in_words(listed).join(", ");
    let released = listed
        .released
        .as_ref()
        .and_then(|version| Some((version.summary.id, clock::date(version.released.as_ref()?.by.at))));
    LibraryRow {
        recipe: listed.recipe,
        head: head.id,
        others: listed.others.iter().map(|version| version.summary.id).collect(),
        name: state.called(&head.name),
        binder: binders(&head.substances),
        thickness: entered(state, &head.thickness, Kind::Thickness),
        density: entered(state, &head.density, Kind::BoardDensity),
        saved: when(head.saved_at),
        authors: authors.join(", "),
        revision: listed.head.number,
        released,
        versions: (!listed.others.is_empty()).then_some(versions),
    }
}

/// "AB 10:42", of each head: what distinguishes it from the others before it is opened, to the second where it takes that.
fn versions_in_words(listed: &Listed<'_>) -> Vec<String> {
    let say = |version: &Version<'_>, at: String| {
        let author = &version.summary.author;
        if author.is_empty() { at } else { format!("{author} {at}") }
    };
    let words: Vec<String> = listed.heads().map(|head| say(head, when(head.summary.saved_at))).collect();
    let distinct: BTreeSet<&String> = words.iter().collect();
    if distinct.len() == words.len() {
        return words;
    }
    let exact = |at: u64| format!("{} {}", clock::date(at), clock::time_exact(at));
    listed.heads().map(|head| say(head, exact(head.summary.saved_at))).collect()
}

fn binders(substances: &[Substance]) -> String {
    let binders: Vec<&str> =
        substances.iter().filter(|each| each.is_binder()).map(|each| words::substance(*each)).collect();
    binders.join(" + ")
}

/// What was entered, in the unit chosen, and that unit; as it was entered where it is no such quantity.
fn entered(state: State, entry: &Entry, kind: Kind) -> (String, String) {
    let units = state.units.get();
    if entry.is_blank() {
        return Default::default();
    }
    if entry.unit.dimension() != kind.dimension() {
        return (entry.text.clone(), symbol_shown(entry.unit).to_owned());
    }
    (in_box(entry, kind, &units), symbol_shown(units.unit(kind)).to_owned())
}

/// "UF resin · 15 mm · 680 kg/m³", of any revision.
pub fn facts(state: State, version: &Version<'_>) -> String {
    let summary = version.summary;
    let with_unit = |entry: &Entry, kind: Kind| {
        let (number, unit) = entered(state, entry, kind);
        joined(&number, &unit)
    };
    let parts = [
        binders(&summary.substances),
        with_unit(&summary.thickness, Kind::Thickness),
        with_unit(&summary.density, Kind::BoardDensity),
    ];
    parts.iter().filter(|part| !part.is_empty()).map(String::as_str).collect::<Vec<_>>().join(" · ")
}

/// A revision at a glance, for its history and among several heads.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RevisionRow {
    /// The revision.
    pub seen: Seen,
    /// Its name.
    pub name: String,
    /// What it is made of.
    pub facts: String,
}

impl RevisionRow {
    /// What there is to see of a revision.
    pub fn of(state: State, version: &Version<'_>) -> Self {
        Self { seen: Seen::from(version), name: version.summary.name.clone(), facts: facts(state, version) }
    }
}

/// The recipes that match, as a table to take away.
pub fn csv(library: &Library<impl Store>, query: &str, order: SortOrder, mark: DecimalMark) -> String {
    let mut recipes = library.recipes();
    recipes.retain(|listed| listed.standing() == Standing::Kept);
    library_csv(&search::find(&recipes, query, order), mark)
}

/// The last `most` recipes that were deleted: each with its name and when it was.
pub fn deleted(library: &Library<impl Store>, most: usize) -> Vec<(RecipeId, String, u64)> {
    if !library.has_removed() {
        return Vec::new();
    }
    let mut recipes = library.recipes();
    recipes.retain(|listed| listed.standing() == Standing::Removed);
    let found = search::find(&recipes, "", SortOrder::default());
    let deleted = |listed: &Listed<'_>| {
        let head = listed.head.summary;
        (listed.recipe, head.name.clone(), head.saved_at)
    };
    found.iter().take(most).map(deleted).collect()
}
