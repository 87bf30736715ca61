//! A figure of the recipe as text.

use crate::domain::Figure;
use crate::quantity::{Unit, format};
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::unit_shown;
use leptos::reactive::prelude::*;

/// A figure of the result shown, rounded as its kind is: number and unit. Both blank where the recipe
/// does not give it.
pub fn parts(state: State, figure: Figure, unit: Option<Unit>) -> (String, String) {
    let amount = state.shown.with(|shown| shown.case.as_ref().and_then(|case| case.figure(figure)));
    amount.map_or_else(Default::default, |amount| {
        let units = state.units.get();
        let unit = unit.unwrap_or_else(|| units.unit(amount.kind));
        let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
        (format::amount(amount, unit, units.mark), symbol)
    })
}

/// A figure of the result shown with its unit. `None` where the recipe does not give it.
#[must_use]
pub fn text(state: State, figure: Figure) -> Option<String> {
    let (number, unit) = parts(state, figure, None);
    (!number.is_empty()).then(|| joined(&number, &unit))
}
