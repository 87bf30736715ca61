//! Words of the emission sheet.

use super::{FieldWords, Message};
use crate::domain::chemistry::emission::{EmissionError, LimitedArticle, Market};
use crate::domain::compare::emission::EmissionField;

/// Labels and headings.
#[derive(Debug, Clone, Copy)]
#[allow(missing_docs, reason = "each is the label of that name")]
pub struct EmissionWords {
    pub field: fn(EmissionField) -> FieldWords,
    pub error: fn(EmissionError) -> Message,
    pub market: fn(Market) -> &'static str,
    pub article: fn(LimitedArticle) -> &'static str,
    pub title: &'static str,
    /// That a test decides, and that the current local limit is to be checked.
    pub caution: &'static str,
    pub ratio: &'static str,
    pub amino_ratio: &'static str,
    pub urea: &'static str,
    pub concentration: &'static str,
    pub perforator: &'static str,
    pub from: &'static str,
    pub to: &'static str,
    pub source: &'static str,
    pub structure: &'static str,
    pub perforator_source: &'static str,
    pub limits: &'static str,
    pub valid_from: &'static str,
}
