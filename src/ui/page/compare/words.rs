//! Names and numbers as the page writes them.

use super::context::CompareContext;
use crate::domain::Draft;
use crate::domain::balance::figure::Figure;
use crate::domain::compare::Output;
use crate::domain::compare::overview::key_figures::{KeyFigure, KeyGroup, KeyMark};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{trimmed_to, unit_short, words};
use leptos::prelude::*;

/// The unit shown for a kind, in words.
pub fn unit_name(state: State, kind: Kind) -> String {
    let unit = state.unit(kind);
    state.currency.with(|currency| unit_short(unit, currency))
}

/// A label with the unit of its kind behind a comma.
pub fn with_unit_named(state: State, label: &str, kind: Kind) -> String {
    match unit_name(state, kind) {
        unit if unit.is_empty() => label.to_owned(),
        unit => format!("{label}, {unit}"),
    }
}

/// An amount in the unit shown with the unit, zeros at the end left out.
pub fn amount_text(state: State, amount: Amount) -> String {
    let units = state.units.get();
    let number = trimmed_to(amount.get(units.unit(amount.kind)), amount.kind.digits(), units.mark);
    joined(&number, &unit_name(state, amount.kind))
}

/// A number with its sign in front, in three digits.
pub fn signed(state: State, number: f64) -> String {
    let text = trimmed_to(number, 3, state.units.get().mark);
    if number > 0.0 { format!("+{text}") } else { text }
}

/// A difference with so many decimals and its sign.
pub fn signed_fixed(state: State, number: f64, decimals: u8) -> String {
    let text = format::fixed(number, decimals, state.units.get().mark);
    if number > 0.0 && text != "0" { format!("+{text}") } else { text }
}

/// A figure by its label, a liquid's with the liquid's name.
pub fn output_name(output: Output, draft: &Draft) -> String {
    let label = words::compare::output(output).label;
    match output {
        Output::Figure(Figure::Liquid(id, _)) => match draft.liquid(id) {
            Some(liquid) => format!("{}: {label}", words::liquid(liquid)),
            None => label.to_owned(),
        },
        _ => label.to_owned(),
    }
}

/// A key figure.
pub fn key_name(figure: KeyFigure) -> String {
    match figure {
        KeyFigure::WaterDose => t!("compare-water-dose"),
        KeyFigure::WaterExcess => t!("compare-water-excess"),
        KeyFigure::FibreMoisture => t!("compare-fibre-moisture-for-none"),
        KeyFigure::BoardOutput => t!("compare-board-output"),
        KeyFigure::PressFactor => t!("compare-press-factor"),
        KeyFigure::PressVapour => t!("compare-press-vapour"),
        KeyFigure::Cost => t!("compare-cost"),
        KeyFigure::CostWithAgent => t!("compare-cost-with-agent"),
    }
}

/// A group of key figures.
pub fn group_name(group: KeyGroup) -> String {
    match group {
        KeyGroup::Water => t!("compare-group-water"),
        KeyGroup::Press => t!("compare-group-press"),
        KeyGroup::Cost => t!("compare-group-cost"),
    }
}

/// What marks a system out, in a word or two.
pub fn mark_name(mark: KeyMark) -> String {
    match mark {
        KeyMark::TooWet => t!("compare-mark-too-wet"),
        KeyMark::High => t!("compare-mark-high"),
        KeyMark::Low => t!("compare-mark-low"),
        KeyMark::OverLimit(machine) => t!("compare-mark-over", machine = words::machine(machine)),
    }
}

impl CompareContext {
    /// Letters of some systems: "A and C".
    pub fn letters(self, places: &[usize]) -> String {
        let letters: Vec<String> = places.iter().map(|at| crate::ui::chart::series::letter(*at).to_string()).collect();
        match letters.as_slice() {
            [] => String::new(),
            [one] => one.clone(),
            [first @ .., last] => t!("compare-and", first = first.join(", "), last = last.clone()),
        }
    }
}
