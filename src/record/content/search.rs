//! Finding recipes among many, and the order in which they are listed.

use crate::domain::{Entry, Substance};
use crate::quantity::Kind;
use crate::quantity::number::read;
use crate::record::content::lineage::Listed;
use crate::record::content::summary::Summary;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;

/// What a list is sorted by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SortColumn {
    /// When the recipe was last saved.
    #[default]
    Saved,
    /// The name, numbers by their size: "9 mm" before "12 mm".
    Name,
    /// The binders, in the order in which substances are offered.
    Binder,
    /// Board thickness; recipes without one last.
    Thickness,
    /// Board density; recipes without one last.
    Density,
    /// The initials of who saved it last; without initials last.
    Author,
    /// The number of the revision.
    Revision,
    /// When the revision that is released was released; recipes without one last.
    Released,
}

/// How a list is sorted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct SortOrder {
    /// By what.
    pub column: SortColumn,
    /// Whether the largest or latest comes first.
    pub descending: bool,
}

impl Default for SortOrder {
    fn default() -> Self {
        Self::first(SortColumn::Saved)
    }
}

impl SortOrder {
    /// The order in which a column is sorted first: times and revisions from the latest, all else from the least.
    #[must_use]
    pub const fn first(column: SortColumn) -> Self {
        let descending = matches!(column, SortColumn::Saved | SortColumn::Revision | SortColumn::Released);
        Self { column, descending }
    }

    /// The order after a press on the head of a column: the other way round where the list is sorted by it already.
    #[must_use]
    pub fn pressed(self, column: SortColumn) -> Self {
        if self.column == column { Self { descending: !self.descending, ..self } } else { Self::first(column) }
    }
}

/// The recipes in which every word of `query` occurs: in name, note, tags, author, the liquids'
/// names or substances, density or thickness. Capitals do not matter; a blank query finds all.
#[must_use]
pub fn find<'a>(listed: &[Listed<'a>], query: &str, order: SortOrder) -> Vec<Listed<'a>> {
    let query = query.to_lowercase();
    let words: Vec<&str> = query.split_whitespace().collect();
    let mut found: Vec<Listed<'a>> =
        listed.iter().filter(|line| line.heads().any(|head| head.summary.holds(&words))).cloned().collect();
    // What is equal in the column stays with the newest first.
    found.sort_by(|a, b| newest_first(a.head.summary, b.head.summary));
    match order.column {
        SortColumn::Saved if order.descending => {}
        SortColumn::Saved => found.reverse(),
        SortColumn::Name => by(&mut found, order, |line| Some(line.head.summary), |a, b| by_name(&a.name, &b.name)),
        SortColumn::Binder => by(&mut found, order, binders, Ord::cmp),
        SortColumn::Thickness => {
            by(&mut found, order, |line| base(&line.head.summary.thickness, Kind::Thickness), f64::total_cmp);
        }
        SortColumn::Density => {
            by(&mut found, order, |line| base(&line.head.summary.density, Kind::BoardDensity), f64::total_cmp);
        }
        SortColumn::Author => by(&mut found, order, author, |a, b| by_name(a, b)),
        SortColumn::Revision => by(&mut found, order, |line| Some(line.head.number), Ord::cmp),
        SortColumn::Released => by(&mut found, order, released_at, Ord::cmp),
    }
    found
}

/// Sorts by a key, computed once a recipe; recipes without one come last either way.
fn by<'a, K>(
    found: &mut Vec<Listed<'a>>,
    order: SortOrder,
    key: impl Fn(&Listed<'a>) -> Option<K>,
    compare: impl Fn(&K, &K) -> Ordering,
) {
    let mut keyed: Vec<(Option<K>, Listed<'a>)> = found.drain(..).map(|line| (key(&line), line)).collect();
    keyed.sort_by(|(a, _), (b, _)| match (a, b) {
        (Some(a), Some(b)) if order.descending => compare(b, a),
        (Some(a), Some(b)) => compare(a, b),
        (a, b) => b.is_some().cmp(&a.is_some()),
    });
    found.extend(keyed.into_iter().map(|(_, line)| line));
}

fn base(entry: &Entry, kind: Kind) -> Option<f64> {
    read(&entry.text, kind, entry.unit).ok().map(|reading| reading.amount(kind).base)
}

/// The places of the binders among the substances.
fn binders(line: &Listed<'_>) -> Option<Vec<usize>> {
    let binders = line.head.summary.substances.iter().filter(|substance| substance.is_binder());
    let places: Vec<usize> =
        binders.filter_map(|binder| Substance::ALL.iter().position(|substance| substance == binder)).collect();
    (!places.is_empty()).then_some(places)
}

fn author<'a>(line: &Listed<'a>) -> Option<&'a str> {
    Some(line.head.summary.author.as_str()).filter(|author| !author.is_empty())
}

fn released_at(line: &Listed<'_>) -> Option<u64> {
    Some(line.released.as_ref()?.released.as_ref()?.by.at)
}

/// The newest first, and the same way whatever order they came in.
fn newest_first(a: &Summary, b: &Summary) -> Ordering {
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
