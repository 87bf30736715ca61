//! What the paper of the bench is made of.

use super::desk::{Desk, at_box};
use crate::browser::element::View;
use crate::domain::Draft;
use crate::domain::trial::{SheetDraft, TrialFinding};
use crate::ui::part::finding::told as finding_told;

pub use super::sheet::text::{shown, signed};
pub use crate::ui::page::compare::parts::table;

/// Findings in words, but for those that stand at their boxes.
pub fn findings<'a>(
    desk: Desk,
    all: impl IntoIterator<Item = &'a TrialFinding>,
    recipe: &Draft,
    typed: &SheetDraft,
) -> View {
    let told = |finding: &TrialFinding| finding_told(finding.grade, desk.message(finding, recipe, typed));
    all.into_iter().filter(|finding| !at_box(finding)).map(told).collect()
}
