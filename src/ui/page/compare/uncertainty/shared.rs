//! What the parts of the tab share.

use super::study::PageStudy;
use leptos::prelude::*;

/// The study, and what is selected in it.
#[derive(Clone, Copy)]
pub struct UncertaintyContext {
    /// The study.
    pub study: Memo<Option<PageStudy>>,
    /// The place of the figure whose budget is shown.
    pub chosen: Memo<Option<usize>>,
}
