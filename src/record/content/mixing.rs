//! What is typed where solutions and glues are made up, kept from visit to visit.

use crate::domain::mixing::MixDraft;
use crate::record::document::Document;

/// Solution and glue.
pub const MIXING: Document<MixDraft> = Document::new("haulm/mix", "mix", 1, 100_000);
