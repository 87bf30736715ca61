//! The comparison: names, answers, uncertainty.

mod answer;
mod economy;
mod emission;
mod name;
mod side;
mod uncertainty;

use crate::ui::text::compare::{CompareWords, SheetWords};

pub(super) const COMPARE: CompareWords = CompareWords {
    output: name::output,
    obstacle: name::obstacle,
    difference: side::difference,
    economy: economy::ECONOMY,
    emission: emission::EMISSION,
    sheet: SheetWords {
        side_by_side: "Side by side",
        sensitivity: "Sensitivity",
        assumptions: "Assumptions",
        uncertainty: "Uncertainty",
        exact: "exact",
        figure: "Figure",
        input: "Input",
        unit: "Unit",
        more_than_reference: "Difference to the reference:",
        value: "Value",
        standard: "Standard uncertainty, first order",
        expanded: "Expanded uncertainty, 95 %",
        standard_drawn: "Standard uncertainty, Monte Carlo",
        freedom: "Degrees of freedom",
        factor: "Coverage factor",
        both: "Both methods",
        sources: "Sources of uncertainty",
        shares: "Shares of the variance",
        low: "95 % interval from, Monte Carlo",
        high: "95 % interval to, Monte Carlo",
        draws: "Draws",
        seed: "Seed",
        source: "Source of uncertainty",
        share: "Share of the variance, %",
    },
    not_side_by_side: side::not_side_by_side,
    unpriced: side::unpriced,
    answer: answer::answer,
    no_answer: answer::no_answer,
    break_even: answer::break_even,
    no_price: answer::no_price,
    no_range: answer::no_range,
    limited: answer::limited,
    form: name::form,
    instrument: name::instrument,
    uncertain: uncertainty::uncertain,
    no_study: uncertainty::no_study,
    agreement_note: uncertainty::agreement_note,
    why: uncertainty::why,
};
