//! The range of one input for a sweep or a map: as entered, else around what the recipe holds.

use crate::domain::compare::draft::RangeDraft;
use crate::domain::compare::number_key::number_of;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::sweep::Axis;
use crate::domain::compare::variable;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::Limit;

/// Why there is no range.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RangeError {
    /// The recipe does not use the input.
    NotUsed,
    /// An end cannot be read, or is outside what physics allows.
    NotReadable,
    /// Both ends are the same.
    Equal,
    /// It begins above where it ends.
    Reversed,
}

/// What an end of a range may hold: what the number may hold; left blank it is as it starts.
#[must_use]
pub fn end_limit(limit: &Limit) -> Limit {
    Limit { optional: true, usual: None, ..*limit }
}

/// The range of the number of that key. A blank end is as it starts.
///
/// # Errors
/// [`RangeError`]: a range that was entered wrongly is never replaced by another one.
pub fn range(
    system: &ComparedSystem,
    key: &str,
    entered: Option<&RangeDraft>,
    points: usize,
) -> Result<Axis, RangeError> {
    let case = system.case().ok_or(RangeError::NotUsed)?;
    let field = number_of(&system.draft, case, key).ok_or(RangeError::NotUsed)?;
    let axis = Axis::around(case, field, points).ok_or(RangeError::NotUsed)?;
    let (kind, limit) = (system.draft.kind(field), end_limit(&variable::limit(&case.input, field)));
    let end = |entry: Option<&Entry>, start: f64| match entry {
        None => Ok(start),
        Some(entry) => match read_entry(entry, kind, &limit) {
            Ok(read) => Ok(read.unwrap_or(start)),
            Err(_) => Err(RangeError::NotReadable),
        },
    };
    let from = end(entered.and_then(|range| range.from.as_ref()), axis.from)?;
    let to = end(entered.and_then(|range| range.to.as_ref()), axis.to)?;
    if (to - from).abs() <= 1e-9 * to.abs().max(from.abs()) {
        return Err(RangeError::Equal);
    }
    if to < from {
        return Err(RangeError::Reversed);
    }
    Ok(Axis { from, to, ..axis })
}
