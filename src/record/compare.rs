//! What is chosen and typed where systems are compared, kept from visit to visit.

use super::document::Document;
use crate::domain::compare::draft::CompareDraft;

/// The comparison.
pub const COMPARISON: Document<CompareDraft> = Document::new("haulm/compare", "compare", 1, 400_000);
