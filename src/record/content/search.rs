//! Finding recipes among many, and the order in which they are listed.

use crate::record::content::lineage::Listed;
use crate::record::content::summary::Summary;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;

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
    let mut found: Vec<Listed<'a>> =
        listed.iter().filter(|line| line.heads().any(|head| head.summary.holds(&words))).cloned().collect();
    let by = |a: &Listed<'_>, b: &Listed<'_>| {
        let (a, b) = (a.head.summary, b.head.summary);
        let by_name = || by_name(&a.name, &b.name);
        match order {
            SortOrder::Newest => Ordering::Equal,
            SortOrder::Oldest => newest_first(b, a),
            SortOrder::Name => by_name(),
            SortOrder::NameBackwards => by_name().reverse(),
        }
        .then_with(|| newest_first(a, b))
    };
    found.sort_by(by);
    found
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
