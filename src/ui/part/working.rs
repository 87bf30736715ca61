//! How a figure came about: formula, numbers put in, result to more digits, and source.

use crate::browser::element::{Part, View, button, el};
use crate::browser::page;
use crate::domain::working::{Ground, Origin, Symbol, Working};
use crate::domain::{Draft, Figure};
use crate::quantity::{Amount, Coherent, format};
use crate::ui::math::{Style, letters, numbers, symbol};
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::state::State;
use crate::ui::text::unit_shown;
use leptos::reactive::prelude::*;

/// A working in full. `name` says what a number put in is, and leads to where it was entered.
pub fn told<F, O>(state: State, working: &Working<F, O>, name: impl Fn(&O) -> View) -> View {
    let units = state.units.get();
    let currency = state.currency.get();
    let style = Style { set: Coherent::from(units.system), mark: units.mark, currency: &currency };
    let givens = working.givens.iter().map(|given| put_in(state, given.symbol, given.amount, name(&given.origin)));
    let math = (letters(working), numbers(working, style));
    laid(state, working.result, math, givens.collect(), working.ground)
}

fn laid(state: State, result: Amount, (letters, numbers): (String, String), givens: View, ground: Ground) -> View {
    let words = &state.words.recipe_page;
    el("dl")
        .class("told")
        .child(el("dt").child(words.in_full))
        .child(el("dd").child(in_full(state, result)))
        .child(el("dt").child(words.formula))
        .child(el("dd").class("math").markup(&letters))
        .child(el("dt").child(words.numbers_put_in))
        .child(el("dd").class("math").markup(&numbers))
        .child(el("dd").child(el("ul").class("givens").child(givens)))
        .child(el("dt").child(state.words.tools.source))
        .child(el("dd").child((state.words.ground)(ground)))
        .view()
}

/// A number with all its digits, in the unit shown.
#[must_use]
pub fn in_full(state: State, amount: Amount) -> String {
    let units = state.units.get();
    let unit = units.unit(amount.kind);
    let number = format::full(amount.get(unit), units.mark);
    state.currency.with(|currency| joined(&number, &unit_shown(unit, currency)))
}

/// What a number put into a working of the recipe is, and with `links` the way to where it was entered, which
/// must be on the page.
#[must_use]
pub fn origin_name(state: State, origin: Origin, draft: &Draft, links: bool) -> View {
    match origin {
        Origin::Field(field) if !links => (state.words.field_name)(field, draft).view(),
        Origin::Field(field) => {
            let name = (state.words.field_name)(field, draft);
            let go = move |_| page::focus_field(&field.key());
            button().class("link").on("click", go).child(name).view()
        }
        Origin::Figure(figure) => name_in(state, figure, draft).view(),
        Origin::Constant(constant) => (state.words.constant)(constant).view(),
    }
}

/// A number put in: its letter, and what it is.
fn put_in(state: State, letter: Symbol, amount: Amount, name: View) -> View {
    el("li")
        .child(el("span").class("math").markup(&symbol(letter)))
        .text(" = ")
        .child(with_unit(state, amount, None))
        .text(" ")
        .child(name)
        .view()
}

/// A figure by its name, a liquid's with the liquid's.
#[must_use]
pub fn figure_name(state: State, figure: Figure) -> String {
    state.draft.with(|draft| name_in(state, figure, draft))
}

/// A figure of a recipe by its name.
#[must_use]
pub fn name_in(state: State, figure: Figure, draft: &Draft) -> String {
    let label = (state.words.figure)(figure).label;
    match figure {
        Figure::Liquid(id, _) => match draft.liquid(id) {
            Some(liquid) => format!("{}: {label}", (state.words.liquid)(liquid)),
            None => label.to_owned(),
        },
        _ => label.to_owned(),
    }
}
