//! The plain texts of the bench page. Each key says what its text is for.
#![allow(missing_docs, reason = "each key says what its text is for; the English text shows it")]

/// The bench page.
#[derive(Debug, Clone, Copy)]
pub struct BenchPage {
    pub title: &'static str,
    pub basis: &'static str,
    pub kept: &'static str,
    pub new_begun: &'static str,
    pub open_unread: &'static str,
    pub sheet: &'static str,
    pub order: &'static str,
    pub findings: &'static str,
    pub batch: &'static str,
    pub weighed: &'static str,
    pub line: &'static str,
    pub material: &'static str,
    pub volume: &'static str,
    pub property: &'static str,
    pub count: &'static str,
    pub mean: &'static str,
    pub half_width: &'static str,
    pub lower: &'static str,
    pub upper: &'static str,
    pub next_mat: &'static str,
    pub opened: &'static str,
    pub removed: &'static str,
    pub put_back: &'static str,
}
