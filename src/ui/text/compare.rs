//! What the comparison says in words.

use super::compare_economy::EconomyWords;
use super::compare_emission::EmissionWords;
use super::{Context, FieldWords, FigureWords, Message};
use crate::domain::Field;
use crate::domain::compare::Output;
use crate::domain::compare::break_even::{BreakEvenAnswer, BreakEvenError};
use crate::domain::compare::feasibility::Obstacle;
use crate::domain::compare::range::RangeError;
use crate::domain::compare::side::{ComparedSystem, SideBySideError, SystemDifference};
use crate::domain::compare::solve_for::{SolveForError, SolvedInput};
use crate::domain::compare::uncertainty::agreement::{Agreement, DisagreementCause};
use crate::domain::compare::uncertainty::input_uncertainty::Form;
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::domain::compare::uncertainty::study::{StudyError, UncertainInput};
use crate::quantity::Amount;

/// The words of the comparison.
#[allow(clippy::struct_field_names, reason = "a form is a noun here")]
pub struct CompareWords {
    /// Label and basis of what is compared.
    pub output: fn(Output) -> FigureWords,
    /// What prevents running a recipe, a few words.
    pub obstacle: fn(Obstacle) -> &'static str,
    /// What differs between systems beside their liquids, each system by its name, and what to do.
    pub difference: fn(&SystemDifference, &[ComparedSystem], &Context<'_>) -> Message,
    /// The economy of a change, limits and answers.
    pub economy: EconomyWords,
    /// The emission sheet.
    pub emission: EmissionWords,
    /// Sheets and headings of what is taken away.
    pub sheet: SheetWords,
    /// Why systems cannot stand side by side.
    pub not_side_by_side: fn(SideBySideError) -> Message,
    /// Prices that a system has no cost without; `None` where all are there.
    pub unpriced: fn(&ComparedSystem) -> Option<Message>,
    /// What a solved-for input comes to, and how it was found. The context's draft is the system's.
    pub answer: fn(&SolvedInput, &Context<'_>) -> Message,
    /// Why nothing can be solved for. The context's draft is the system's.
    pub no_answer: fn(SolveForError, Field, Output, &Context<'_>) -> Message,
    /// The price at which two systems, named, cost the same. The context's draft is the first one's.
    pub break_even: fn(&BreakEvenAnswer, Field, [&ComparedSystem; 2], &Context<'_>) -> Message,
    /// Why there is no such price.
    pub no_price: fn(&BreakEvenError, [&ComparedSystem; 2]) -> Message,
    /// Why there is no range to sweep.
    pub no_range: fn(RangeError) -> Message,
    /// A limit of a system, by its name, between two values of the input.
    pub limited: fn(&str, Obstacle, [Amount; 2], &Context<'_>) -> String,
    /// What a stated ± means: label and hint.
    pub form: fn(Form) -> FieldWords,
    /// What a number is measured with.
    pub instrument: fn(Instrument) -> &'static str,
    /// A source of uncertainty by its instrument and what it acts on.
    pub uncertain: fn(&UncertainInput, &[ComparedSystem]) -> String,
    /// Why there is no uncertainty to show.
    pub no_study: fn(StudyError, &[ComparedSystem]) -> Message,
    /// Whether both methods agree, in a few words with the reasons, for a table.
    pub agreement_note: fn(&Agreement, &Context<'_>) -> String,
    /// Why both methods differ.
    pub why: fn(DisagreementCause, &Context<'_>) -> String,
}

/// Names of sheets and headings of a comparison that is taken away.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs, reason = "each is the heading of that name")]
pub struct SheetWords {
    pub side_by_side: &'static str,
    pub sensitivity: &'static str,
    pub assumptions: &'static str,
    pub uncertainty: &'static str,
    pub exact: &'static str,
    pub figure: &'static str,
    pub input: &'static str,
    pub unit: &'static str,
    /// Before the name of a system, over what it has more than the reference.
    pub more_than_reference: &'static str,
    pub value: &'static str,
    pub standard: &'static str,
    pub expanded: &'static str,
    pub standard_drawn: &'static str,
    pub freedom: &'static str,
    pub factor: &'static str,
    pub both: &'static str,
    pub sources: &'static str,
    pub shares: &'static str,
    pub low: &'static str,
    pub high: &'static str,
    pub draws: &'static str,
    pub seed: &'static str,
    pub source: &'static str,
    pub share: &'static str,
}
