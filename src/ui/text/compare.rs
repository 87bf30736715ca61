//! What the comparison says in words.

use super::{Context, FieldWords, FigureWords, Message};
use crate::domain::Field;
use crate::domain::chemistry::emission::{EmissionError, LimitedArticle, Market};
use crate::domain::compare::Output;
use crate::domain::compare::break_even::{BreakEvenAnswer, BreakEvenError};
use crate::domain::compare::economy::field::{EconomyField, SystemEconomyField};
use crate::domain::compare::emission::EmissionField;
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
    /// Label, with its unit after the currency, and hint of a field of the economy.
    pub economy_field: fn(EconomyField) -> FieldWords,
    /// The same of a field that each system has of its own.
    pub system_economy_field: fn(SystemEconomyField) -> FieldWords,
    /// Label and hint of a field of the emission sheet.
    pub emission_field: fn(EmissionField) -> FieldWords,
    /// What is wrong with an entry of the emission sheet.
    pub emission_error: fn(EmissionError) -> Message,
    /// A market with limits of its own.
    pub market: fn(Market) -> &'static str,
    /// What a limit is for.
    pub article: fn(LimitedArticle) -> &'static str,
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
