//! A figure: label, basis, number with unit, and its working on demand.

use super::working;
use crate::browser::element::{Part, View, button, el, many};
use crate::domain::Figure;
use crate::quantity::{Unit, format};
use crate::ui::part::amount::joined;
use crate::ui::signal::{RwSignal, Signal};
use crate::ui::state::{State, state};
use crate::ui::text::unit_shown;

/// How much room a figure takes.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum FigureSize {
    /// One among many.
    Plain,
    /// To be read from two metres.
    Big,
}

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

/// A figure in its cell. It takes no room where the recipe does not give it.
pub fn figure(figure: Figure, size: FigureSize) -> View {
    let state = state();
    let words = (state.words.figure)(figure);
    cell(figure, words.label.to_owned().into(), words.note, size)
}

/// A figure in its cell, under another label than its usual one.
pub fn cell(figure: Figure, label: Signal<String>, note: &'static str, size: FigureSize) -> View {
    let state = state();
    let there = state
        .cell(move || state.shown.with(|shown| shown.case.as_ref().is_some_and(|case| case.figure(figure).is_some())));
    let open = RwSignal::new(false);
    let key = figure.key();
    let (label_id, working_id) = (format!("figure-{key}"), format!("working-{key}"));
    el("div")
        .class("figure")
        .class_if("big", size == FigureSize::Big)
        .class_if("open", move || open.get())
        .set("hidden", move || !there.get())
        .child(
            el("dt")
                .set("id", label_id.clone())
                .child(move || label.get())
                .child((!note.is_empty()).then(|| el("span").class("note").child(note))),
        )
        .child(
            el("dd")
                .child(
                    button()
                        .class("value")
                        .set("title", state.words.recipe_page.show_working)
                        .set("aria-describedby", label_id)
                        .set("aria-expanded", move || if open.get() { "true" } else { "false" })
                        .set("aria-controls", working_id.clone())
                        .on_click(move || open.update(|open| *open = !*open))
                        .child(el("span").set("data-figure", key).child(value(state, figure, None, size))),
                )
                .child(
                    el("div")
                        .class("working")
                        .set("id", working_id)
                        .set("hidden", move || !open.get())
                        .child(move || open.get().then(|| working::view(figure))),
                ),
        )
        .view()
}

/// Number and unit of a figure. Where they are big, the unit is smaller, so that the number is what is
/// seen.
pub fn value(state: State, figure: Figure, unit: Option<fn(State) -> Unit>, size: FigureSize) -> View {
    let unit = move || unit.map(|unit| unit(state));
    let number = move || parts(state, figure, unit()).0;
    let number = if size == FigureSize::Big { state.first_cell(number) } else { state.cell(number) };
    let symbol = state.cell(move || match parts(state, figure, unit()).1 {
        none if none.is_empty() => none,
        symbol => format!("\u{a0}{symbol}"),
    });
    many([(move || number.get()).view(), el("span").class("unit-of-figure").child(move || symbol.get()).view()]).view()
}

/// A list of figures. Those that the recipe does not give are left out.
pub fn list(figures: &[Figure], size: FigureSize) -> View {
    el("dl").class("figures").child(figures.iter().map(|each| figure(*each, size)).collect::<View>()).view()
}
