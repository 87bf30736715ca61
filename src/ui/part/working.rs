//! Names of figures, and numbers with all their digits.

use crate::domain::{Draft, Figure};
use crate::quantity::{Amount, format};
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{unit_shown, words};
use leptos::reactive::prelude::*;

/// A number with all its digits, in the unit shown.
#[must_use]
pub fn in_full(state: State, amount: Amount) -> String {
    let units = state.units.get();
    let unit = units.unit(amount.kind);
    let number = format::full(amount.get(unit), units.mark);
    state.currency.with(|currency| joined(&number, &unit_shown(unit, currency)))
}

/// A figure by its name, a liquid's with the liquid's.
#[must_use]
pub fn figure_name(state: State, figure: Figure) -> String {
    state.draft.with(|draft| name_in(figure, draft))
}

/// A figure of a recipe by its name.
#[must_use]
pub fn name_in(figure: Figure, draft: &Draft) -> String {
    let label = words::figure(figure).label;
    match figure {
        Figure::Liquid(id, _) => match draft.liquid(id) {
            Some(liquid) => format!("{}: {label}", words::liquid(liquid)),
            None => label.to_owned(),
        },
        _ => label.to_owned(),
    }
}
