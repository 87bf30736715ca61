//! The rows of the results: each with its ± by both methods, rounded as its group is.

use super::study::PageStudy;
use crate::domain::compare::Output;
use crate::domain::compare::uncertainty::agreement::{Agreement, DisagreementCause, compare, is_exact};
use crate::domain::compare::uncertainty::budget::Budget;
use crate::domain::compare::uncertainty::study::RequestedFigure;
use crate::quantity::format;
use crate::statistics::draws::DrawSummary;
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::words::{signed_fixed, unit_name};
use crate::ui::text::{in_unit, trimmed_to, words};
use leptos::prelude::*;

/// A row.
#[derive(Debug, Clone, PartialEq)]
pub struct ResultRowText {
    /// Its place in the study.
    pub at: usize,
    /// The system's place in the comparison; `None` for a difference.
    pub system: Option<usize>,
    /// The system, or the letters of both.
    pub name: String,
    /// Its value.
    pub value: String,
    /// The half-width of its 95 % interval by first order.
    pub expanded: String,
    /// That interval.
    pub first_order: String,
    /// The interval by Monte Carlo; blank before a run.
    pub drawn: String,
    /// Which of both to use, and why.
    pub usage: String,
    /// Below its name: how often it is at a bound.
    pub note: String,
    /// Numbers of the drawing: value, first-order interval, drawn interval.
    pub numbers: (f64, (f64, f64), Option<(f64, f64)>),
}

/// The rows of one figure.
#[derive(Debug, Clone, PartialEq)]
pub struct ResultGroup {
    /// The figure, or its differences, with the unit.
    pub title: String,
    /// The key of the figure.
    pub key: String,
    /// The rows.
    pub rows: Vec<ResultRowText>,
}

/// A figure by both methods, in the unit shown.
struct Measured {
    at: usize,
    budget: Budget,
    summary: Option<DrawSummary>,
    value: f64,
    expanded: f64,
    drawn: Option<(f64, f64)>,
}

/// All rows, figure by figure, the differences of a figure in a group of their own.
pub fn result_groups(context: CompareContext, known: &PageStudy) -> Vec<ResultGroup> {
    let mut groups: Vec<(Output, bool, Vec<Measured>)> = Vec::new();
    for at in 0..known.budgets.len() {
        let Some(one) = measured(context, known, at) else { continue };
        let output = one.budget.asked.output();
        let is_difference = matches!(one.budget.asked, RequestedFigure::Difference { .. });
        match groups.last_mut() {
            Some((other, difference, rows)) if other.key() == output.key() && *difference == is_difference => {
                rows.push(one)
            }
            _ => groups.push((output, is_difference, vec![one])),
        }
    }
    groups
        .into_iter()
        .map(|(output, is_difference, rows)| group(context, known, output, is_difference, &rows))
        .collect()
}

fn measured(context: CompareContext, known: &PageStudy, at: usize) -> Option<Measured> {
    let state = context.state;
    let hours = context.hours.get();
    let budget = known.budget(at, hours)?;
    let unit = state.unit(budget.asked.kind());
    let around = known.around(budget.asked, hours);
    let (value, expanded) = in_unit(unit, budget.value, budget.expanded, around);
    let summary = state.compare.found.with(|found| known.summary(at, found, hours).filter(|_| known.is_of(found)));
    let end = |value: f64| in_unit(unit, value, 0.0, around).0;
    let drawn = summary.map(|summary| (end(summary.low), end(summary.high)));
    Some(Measured { at, budget, summary, value, expanded, drawn })
}

fn group(
    context: CompareContext,
    known: &PageStudy,
    output: Output,
    is_difference: bool,
    rows: &[Measured],
) -> ResultGroup {
    let label = words::compare::output(output).label.to_owned();
    let title = if is_difference { t!("compare-difference-of", figure = label) } else { label };
    let unit = unit_name(context.state, output.kind());
    // Two digits of the largest ±, the same place for all.
    let widths = || {
        rows.iter()
            .map(|row| row.expanded)
            .chain(rows.iter().filter_map(|row| row.drawn.map(|(low, high)| (high - low) / 2.0)))
    };
    let decimals = if widths().all(|width| width <= 0.0) {
        format::column_decimals(output.kind().digits(), rows.iter().map(|row| row.value))
    } else {
        format::column_decimals(2, widths())
    };
    ResultGroup {
        title: if unit.is_empty() { title } else { format!("{title}, {unit}") },
        key: output.key(),
        rows: rows.iter().map(|row| row_text(context, known, row, decimals)).collect(),
    }
}

fn row_text(context: CompareContext, known: &PageStudy, row: &Measured, decimals: u8) -> ResultRowText {
    let state = context.state;
    let mark = state.units.get().mark;
    let number = |value: f64| format::fixed(value, decimals, mark);
    let is_difference = matches!(row.budget.asked, RequestedFigure::Difference { .. });
    let system = match row.budget.asked {
        RequestedFigure::Of { system, .. } => known.places.get(system).copied(),
        RequestedFigure::Difference { .. } => None,
    };
    let around = known.around(row.budget.asked, Some(1)).unwrap_or(row.budget.value);
    let exact = is_exact(&row.budget, row.summary.as_ref(), around);
    let between = |low: f64, high: f64| t!("compare-from-to", from = number(low), to = number(high));
    let is_spread = row.expanded > 0.0 && !exact;
    let agreement = row.summary.filter(|_| !exact).zip(known.study.as_ref().ok());
    let agreement = agreement.map(|(summary, study)| compare(study, &row.budget, &summary, 1));
    let held = agreement.as_ref().and_then(|agreement| {
        agreement.why.iter().find_map(|why| match why {
            DisagreementCause::AtBound(share) => Some(trimmed_to(share * 100.0, 2, mark)),
            _ => None,
        })
    });
    ResultRowText {
        at: row.at,
        system,
        name: known.name(row.budget.asked),
        value: if is_difference { signed_fixed(state, row.value, decimals) } else { number(row.value) },
        expanded: match () {
            () if exact => t!("compare-exact"),
            () if is_spread => format!("±\u{a0}{}", smallest(row.expanded, decimals, &number)),
            () => "–".to_owned(),
        },
        first_order: if is_spread {
            between(row.value - row.expanded, row.value + row.expanded)
        } else {
            "–".to_owned()
        },
        drawn: match row.drawn {
            Some((low, high)) if !exact => between(low, high),
            Some(_) => t!("compare-exact"),
            None => String::new(),
        },
        usage: agreement.map_or_else(String::new, |agreement| usage(&agreement)),
        note: held.map_or_else(String::new, |share| t!("compare-at-bound", share = share)),
        numbers: (row.value, (row.value - row.expanded, row.value + row.expanded), row.drawn),
    }
}

/// A ± that the group's decimals would show as zero is shown as the smallest that they show.
fn smallest(width: f64, decimals: u8, number: &impl Fn(f64) -> String) -> String {
    let text = number(width);
    if text == "0" { number(10_f64.powi(-i32::from(decimals))) } else { text }
}

/// Which interval to use, and why in a few words.
fn usage(agreement: &Agreement) -> String {
    if agreement.agree {
        return t!("compare-use-either");
    }
    if agreement.noisy {
        return t!("compare-use-more-draws");
    }
    let why = |why: &DisagreementCause| match why {
        DisagreementCause::AtBound(_) => t!("compare-why-bound"),
        DisagreementCause::LeftOut(_) => t!("compare-why-left-out"),
        DisagreementCause::Curved => t!("compare-why-curved"),
        DisagreementCause::Rectangular => t!("compare-why-limits"),
        DisagreementCause::FewDegrees => t!("compare-why-few-degrees"),
    };
    let why = agreement.why.first().map(why).unwrap_or_default();
    t!("compare-use-drawn", why = why)
}

impl PageStudy {
    /// The place of the budget of a figure's key and the number of its row; else of the first.
    #[must_use]
    pub fn chosen(&self, (key, of): &(String, usize)) -> Option<usize> {
        let of_key = |(at, budget): (usize, &Option<Budget>)| {
            budget.as_ref().filter(|budget| budget.asked.output().key() == *key).map(|_| at)
        };
        let places: Vec<usize> = self.budgets.iter().enumerate().filter_map(of_key).collect();
        let first = || self.budgets.iter().position(Option::is_some);
        places.get(*of).or(places.first()).copied().or_else(first)
    }

    /// The key of a row's figure, and its number among those of the figure.
    #[must_use]
    pub fn selection(&self, at: usize) -> Option<(String, usize)> {
        let key = self.budgets.get(at)?.as_ref()?.asked.output().key();
        let before = self.budgets.iter().take(at).flatten().filter(|budget| budget.asked.output().key() == key).count();
        Some((key, before))
    }
}
