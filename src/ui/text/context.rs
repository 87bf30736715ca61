//! What words are asked with and what they come as.

use crate::domain::Draft;
use crate::domain::line::LineBook;
use crate::domain::recipe::limit::Limit;
use crate::domain::trial::boards::target::RequirementDraft;
use crate::domain::trial::weigh_sheet::recovery_draft::RecoveryDraft;
use crate::domain::trial::weigh_sheet::weighing::BatchDraft;
use crate::domain::trial::{BoardDraft, SeriesDraft, SheetDraft};
use crate::quantity::{Kind, Units};

/// What a message needs to name things and to show numbers.
#[derive(Debug, Clone, Copy)]
pub struct Context<'a> {
    /// The units chosen.
    pub units: &'a Units,
    /// What was typed.
    pub draft: &'a Draft,
    /// The symbol of money, such as "€".
    pub currency: &'a str,
}

/// A box outside the recipe, to speak of what was typed into it.
#[derive(Debug, Clone, Copy)]
pub struct Loose<'a> {
    /// What the box is called.
    pub name: &'a str,
    /// What was typed.
    pub typed: &'a str,
    /// What it measures.
    pub kind: Kind,
    /// What it may hold.
    pub limit: Limit,
}

/// What happened, and how to fix it: whole sentences each.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Message {
    /// What happened, naming the field or the liquid.
    pub what: String,
    /// How to fix it.
    pub fix: String,
}

/// The words of a field. Its letter in formulas is no word:
/// [`Symbol::of_field`](crate::domain::working::Symbol::of_field).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FieldWords {
    /// What the field holds, with its basis where that is fixed. The unit is beside the box.
    pub label: &'static str,
    /// One short plain sentence; may be empty.
    pub hint: &'static str,
}

/// The words of a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FigureWords {
    /// What the figure is.
    pub label: &'static str,
    /// Its basis, such as "oven-dry" or "as delivered"; may be empty.
    pub note: &'static str,
}

/// The words of a caution.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CautionWords {
    /// What it is about, a few words.
    pub title: &'static str,
    /// What can happen and what to do, whole sentences.
    pub text: &'static str,
    /// Limits of exposure and emission with their regulation, a paragraph each; may be empty.
    pub limits: Vec<String>,
}

/// The words of a binder system.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SystemWords {
    /// Its name.
    pub name: &'static str,
    /// What to know about it, one or two sentences.
    pub note: &'static str,
}

/// What a text that was refused is to the reader.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Carrier {
    /// A file that was chosen.
    File,
    /// A link that was followed or pasted.
    Link,
    /// A record in the browser's store.
    Record,
}

/// What a message at the bench needs to name things and to show numbers.
#[derive(Debug, Clone, Copy)]
pub struct BenchContext<'a> {
    /// Units, currency, and the recipe: that of the run, where a sheet of a series is spoken of.
    pub plain: Context<'a>,
    /// The weigh sheet as typed.
    pub sheet: &'a SheetDraft,
    /// What was typed for a line that is being weighed, so that a slip can be shown as typed.
    pub batch: Option<&'a BatchDraft>,
    /// What was entered of the furnish recovered.
    pub recovered: Option<&'a RecoveryDraft>,
    /// The series as typed.
    pub series: &'a SeriesDraft,
    /// The boards as typed.
    pub boards: &'a [BoardDraft],
    /// The requirements as typed.
    pub requirements: &'a [RequirementDraft],
}

/// What a message at the line needs to name things and to show numbers.
#[derive(Debug, Clone, Copy)]
pub struct LineContext<'a> {
    /// Units, recipe and currency.
    pub plain: Context<'a>,
    /// What was typed about the line.
    pub book: &'a LineBook,
}
