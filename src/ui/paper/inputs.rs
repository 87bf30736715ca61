//! What was typed, apart from typical values that nobody has confirmed.

use super::context::symbol;
use crate::domain::recipe::in_effect::in_effect;
use crate::domain::{Draft, Field, LiquidField};
use crate::quantity::format;
use crate::t;
use crate::ui::field::number_text::other_basis;
use crate::ui::part::amount::joined;
use crate::ui::part::entered::entered_number;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// How a value came into its box.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Origin {
    Typed,
    /// Typed where boxes are folded away that are needed less often.
    Folded,
    /// Filled in, and never confirmed.
    Typical,
    /// Filled in with what assumes nothing.
    Neutral,
}

/// What was entered, with its unit; `None` for a blank box.
pub fn entered(state: State, draft: &Draft, field: Field) -> Option<String> {
    let (number, unit) = entered_number(state, draft, field)?;
    Some(joined(&number, &symbol(state, unit)))
}

/// The same, a moisture on both bases.
fn on_both_bases(state: State, draft: &Draft, field: Field) -> Option<String> {
    let own = entered(state, draft, field)?;
    let units = state.units_at(field, draft.kind(field));
    Some(match other_basis(draft, field, &units) {
        Some((amount, unit)) => {
            let other = joined(&format::amount(amount, unit, units.mark), &symbol(state, unit));
            format!("{own} · {other}")
        }
        None => own,
    })
}

/// Whether the table of doses has it already.
fn is_in_doses(draft: &Draft, field: Field) -> bool {
    match field {
        Field::Liquid(_, LiquidField::Dose) => true,
        Field::Liquid(_, LiquidField::Solids | LiquidField::Density) => {
            draft.entry(field).is_none_or(|entry| !entry.preset)
        }
        _ => false,
    }
}

/// Whether the box is one of those that are needed less often.
fn is_folded(field: Field) -> bool {
    match field {
        Field::Liquid(_, part) => part == LiquidField::Price,
        plain => plain.is_folded(),
    }
}

/// The inputs of a recipe.
#[component]
pub fn Inputs(
    /// The boxes that an error is about. With any, all that was typed is listed, as no table of doses has it.
    #[prop(optional)]
    bad: Vec<Field>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let is_whole = !bad.is_empty();
    let listed = state.draft.with(|draft| {
        let one = |field: Field| {
            let entry = draft.entry(field)?;
            let is_bad = bad.contains(&field);
            let value = match on_both_bases(state, draft, field) {
                Some(value) => value,
                None if is_bad => t!("paper-blank"),
                None => return None,
            };
            let origin = match entry.preset && !is_bad {
                true if field.starts_neutral() => Origin::Neutral,
                true => Origin::Typical,
                false if !is_bad && is_folded(field) => Origin::Folded,
                false => Origin::Typed,
            };
            let is_told = is_whole || !is_in_doses(draft, field);
            is_told.then(|| (origin, words::field_name(field, draft), value, is_bad))
        };
        in_effect(draft).into_iter().filter_map(one).collect::<Vec<_>>()
    });
    let list = |origin: Origin, title: String| {
        let pairs: Vec<_> = listed.iter().filter(|pair| pair.0 == origin).cloned().collect();
        let pair = |(_, name, value, is_bad): (Origin, String, String, bool)| {
            let mark = is_bad.then_some("✕ ");
            view! { <div class:bad=is_bad><dt>{name}</dt><dd>{mark}{value}</dd></div> }
        };
        (!pairs.is_empty()).then(|| {
            view! {
                <section>
                    <h2>{title}</h2>
                    <dl class="print-pairs" class:typical=origin == Origin::Typical>{pairs.into_iter().map(pair).collect_view()}</dl>
                </section>
            }
        })
    };
    let running = |origin: Origin, title: String| {
        let own = listed.iter().filter(|pair| pair.0 == origin);
        let own: Vec<String> = own.map(|(_, name, value, _)| format!("{name}\u{a0}{value}")).collect();
        (!own.is_empty()).then(|| view! { <p class="print-small"><b>{title}</b> " " {own.join("; ")} "."</p> })
    };
    let title = if is_whole { t!("paper-inputs-entered") } else { t!("paper-inputs-typed") };
    view! {
        {list(Origin::Typed, title)}
        {running(Origin::Folded, t!("paper-more-typed"))}
        {list(Origin::Typical, t!("paper-typical"))}
        {running(Origin::Neutral, t!("paper-no-allowance"))}
    }
}
