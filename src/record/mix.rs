//! What is typed where solutions and glues are made up, kept from visit to visit.

use super::document::Document;
use crate::domain::mixing::MixDraft;

/// Solution and glue.
pub const MIXING: Document<MixDraft> = Document::new("haulm/mix", "mix", 1, 100_000);
