//! The words of the line.

use super::{Context, FieldWords, FigureWords, Message};
use crate::domain::Draft;
use crate::domain::line::changeover::{Downstream, Stop};
use crate::domain::line::step::{Change, Pipe, StepReason};
use crate::domain::line::{
    Check, Fed, FlowSource, LineBook, LineDensitySplit, LineField, LineFigure, LineFinding, LinePlace, LineQuantity,
    LineReconciliation, Metering, Model, PeriodBalance, PeriodLiquidId, PumpCorrection, PumpDraft, RSquared,
    RangeStatus, RunFigure, SettingUnit, TableRows, TankDraft, TankWay,
};
use std::borrow::Cow;

/// What a message at the line needs to name things and to show numbers.
#[derive(Debug, Clone, Copy)]
pub struct LineContext<'a> {
    /// Units, recipe and currency.
    pub plain: Context<'a>,
    /// What was typed about the line.
    pub book: &'a LineBook,
}

/// The words of the line in one language.
pub struct LineWords {
    /// Label and hint of a field. A pump's field is labelled without the pump's name.
    pub field: fn(LineField, &LineBook) -> FieldWords,
    /// A field by its full name, as messages call it: with the pump's or the tank's name.
    pub field_name: fn(LineField, &LineContext<'_>) -> String,
    /// Label and basis of a figure.
    pub figure: fn(LineFigure) -> FigureWords,
    /// Label and basis of a figure that is compared with the recipe, a dose without its liquid's name.
    pub run_figure: fn(RunFigure) -> FigureWords,
    /// A deviation with its sign: "+2.1 %" relative, "−0.4 points d.b.".
    pub deviation: fn(&Check, &LineContext<'_>) -> String,
    /// What a place of the line is called, as messages begin.
    pub place: fn(LinePlace, &LineContext<'_>) -> String,
    /// What a pump is called: its own name, or its number while it has none.
    pub pump: fn(&PumpDraft) -> Cow<'_, str>,
    /// What a tank is called: its own name, or its number while it has none.
    pub tank: fn(&TankDraft) -> Cow<'_, str>,
    /// What a pump delivers or a tank holds, in this recipe.
    pub fed: fn(Fed, &Draft) -> String,
    /// What was found, and how to fix it.
    pub finding: fn(&LineFinding, &LineContext<'_>) -> Message,
    /// What to do with a pump, as a sentence to act on.
    pub action: fn(&PumpCorrection, &LineContext<'_>) -> String,
    /// Which reading to distrust, and what to do next.
    pub verdict: fn(&LineReconciliation, &LineContext<'_>) -> Message,
    /// What a quantity of the balances is called.
    pub quantity: fn(LineQuantity, &LineContext<'_>) -> String,
    /// A density deviation by its parts, and what to correct.
    pub split: fn(&LineDensitySplit, &LineContext<'_>) -> Message,
    /// Which meter drifts over a period, and what to do next.
    pub period: fn(&PeriodBalance, &LineContext<'_>) -> Message,
    /// What a liquid of a period is called.
    pub period_liquid: fn(PeriodLiquidId, &LineBook) -> String,
    /// Why a step is where it is, as a sentence.
    pub why: fn(StepReason) -> &'static str,
    /// What changes in a step, as a line to act on.
    pub change: fn(&Change, &LineContext<'_>) -> String,
    /// What changes at former or press, as a line to act on.
    pub downstream: fn(&Downstream, &LineContext<'_>) -> String,
    /// What a pipe needs in a changeover.
    pub pipe: fn(Pipe) -> &'static str,
    /// A place that the new furnish reaches.
    pub stop: fn(Stop) -> &'static str,
    /// Where a setting lies, in a few words to stand beside its mark.
    pub range_status: fn(RangeStatus) -> &'static str,
    /// Where a flow comes from.
    pub source: fn(FlowSource) -> &'static str,
    /// The scale of a drive.
    pub setting_unit: fn(SettingUnit) -> &'static str,
    /// What a pump's setting fixes.
    pub metering: fn(Metering) -> &'static str,
    /// Which line is laid.
    pub model: fn(Model) -> &'static str,
    /// Which coefficient of determination it is.
    pub r_squared: fn(RSquared) -> &'static str,
    /// How a tank's content is read.
    pub tank_way: fn(TankWay) -> &'static str,
    /// What the rows of a settings table mean.
    pub table_rows: fn(TableRows) -> &'static str,
}
