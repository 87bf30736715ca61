//! A box for a number: the field is all it needs to know.

use super::choice;
use super::number_text::{Offer, in_box, offers, other_basis, read_as};
use crate::browser::page;
use crate::domain::{Field, Finding, Grade, Place};
use crate::quantity::{Kind, Unit, format};
use crate::ui::part::finding::says;
use crate::ui::state::{Session, State, state};
use crate::ui::text::unit_shown;
use crate::ui::erased::{attr, derive, flag, live, memo, on, prop};
use leptos::prelude::*;

/// How an entry stands there.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Standing {
    /// Still to be filled in, and never touched.
    ToFillIn,
    /// Blank, and may stay so.
    Blank,
    /// Filled in by the app.
    Preset,
    /// Typed.
    Typed,
}

/// A box for the number of `field`, with label, unit, the other basis of a moisture, and what was
/// found about it.
pub fn number(field: Field) -> AnyView {
    let state = state();
    let key = field.key();
    let id = format!("field-{key}");
    let (aside_id, says_id) = (format!("{id}-aside"), format!("{id}-says"));
    let described = format!("{aside_id} {says_id}");
    let kind = memo(move || state.draft.with(|draft| draft.kind(field)));
    let unit = memo(move || state.unit(kind.get()));
    let label = memo(move || state.draft.with(|draft| (state.words.field)(field, draft)));
    let finding = memo(move || found(state, field));
    let standing = memo(move || standing(state, field));
    let text = memo(move || {
        state.units.with(|units| {
            state.draft.with(|draft| {
                draft.entry(field).map_or_else(String::new, |entry| in_box(entry, draft.kind(field), units))
            })
        })
    });
    let name = derive(move || state.draft.with(|draft| (state.words.field_name)(field, draft)));
    let unit_text = move || unit_shown(unit.get(), &state.currency.get()).into_owned();
    let wrong = move || finding.get().is_some_and(|finding| finding.grade == Grade::Stop);
    let next = key.clone();
    view! {
        <div
            class="field"
            class:stop=wrong
            class:unusual=flag(move || finding.get().is_some_and(|finding| finding.grade == Grade::Unusual))
            class:preset=flag(move || standing.get() == Standing::Preset)
            class:to-fill-in=flag(move || standing.get() == Standing::ToFillIn)
        >
            <label for=id.clone() title=attr(move || label.get().hint)>
                {live(move || label.get().label)}
                <span class="unit-named">{live(move || in_brackets(&unit_text()))}</span>
            </label>
            <div class="box">
                <input
                    id=id.clone()
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    data-field=key
                    aria-describedby=described
                    aria-invalid=attr(move || wrong().then_some("true"))
                    prop:value=prop(move || text.get())
                    on:input=on(move |event| {
                        state.enter(Some(Session::Field(field)), field, &event_target_value(&event), unit.get_untracked());
                    })
                    on:change=on(move |_| state.leave())
                    on:keydown=on(move |event: leptos::ev::KeyboardEvent| {
                        if event.key() == "Enter" {
                            page::focus_after(&next);
                        }
                    })
                />
                {unit_choice(state, name, &id, kind, unit)}
            </div>
            <p class="aside" id=aside_id>
                {live(move || standing_words(state, standing.get()))} {live(move || aside(state, field))}
            </p>
            <div class="says" id=says_id>{live(move || finding.get().map(|finding| told(state, field, finding)))}</div>
        </div>
    }
    .into_any()
}

/// The gravest finding about the field.
fn found(state: State, field: Field) -> Option<Finding> {
    state.findings(|finding| finding.place == Place::Field(field)).first().copied()
}

fn standing(state: State, field: Field) -> Standing {
    state.draft.with(|draft| {
        let Some(entry) = draft.entry(field) else { return Standing::Blank };
        match (entry.is_blank(), entry.preset) {
            (false, true) => Standing::Preset,
            (false, false) => Standing::Typed,
            (true, _) if crate::domain::check::limit_of(draft, field).optional => Standing::Blank,
            (true, true) => Standing::ToFillIn,
            (true, false) => Standing::Typed,
        }
    })
}

fn standing_words(state: State, standing: Standing) -> Option<AnyView> {
    let (class, words) = match standing {
        Standing::Preset => ("mark-preset", state.words.tools.preset),
        Standing::ToFillIn => ("mark-to-fill-in", state.words.tools.to_fill_in),
        Standing::Blank => ("mark-optional", state.words.tools.optional),
        Standing::Typed => return None,
    };
    Some(view! { <span class=class>{words}</span> }.into_any())
}

/// What a typed unit was read as, or the other basis of a moisture.
fn aside(state: State, field: Field) -> Option<String> {
    let units = state.units.get();
    let show = |amount, unit: Unit| format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), unit.symbol());
    state.draft.with(|draft| {
        let read = read_as(draft, field, &units)
            .map(|amount| format!("{} {}", state.words.tools.read_as, show(amount, units.unit(amount.kind))));
        let basis = other_basis(draft, field, &units).map(|(amount, unit)| format!("= {}", show(amount, unit)));
        match (read, basis) {
            (Some(read), Some(basis)) => Some(format!("{read} {basis}")),
            (read, basis) => read.or(basis),
        }
    })
}

/// The finding in words, with a button for each entry that may have been meant.
fn told(state: State, field: Field, finding: Finding) -> AnyView {
    let units = state.units.get();
    let offers = state.draft.with(|draft| offers(draft, field, &finding.what, &units));
    let button = move |offer: Offer| {
        let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", offer.unit.symbol()) };
        let words = format!("{}: {}{unit}", state.words.tools.use_this, offer.text);
        let put = move |_| {
            state.enter(None, field, &offer.text, offer.unit);
            page::focus_field(&field.key());
        };
        view! { <button type="button" class="offer" on:click=put>{words}</button> }
    };
    view! {
        {says(finding)}
        {offers.into_iter().map(button).collect_view()}
    }
    .into_any()
}

/// The unit beside the box of that name: to choose where there are several.
pub fn unit_choice(state: State, name: Signal<String>, id: &str, kind: Memo<Kind>, unit: Memo<Unit>) -> AnyView {
    let several = memo(move || kind.get().units().count() > 1);
    let symbol = move |unit: Unit| unit_shown(unit, &state.currency.get()).into_owned();
    let id = format!("{id}-unit");
    let choice = move || {
        if !several.get() {
            return view! { <span class="unit" aria-hidden="true">{live(move || symbol(unit.get()))}</span> }.into_any();
        }
        let name = derive(move || {
            format!("{} {}", state.words.tools.unit_of, name.with(|name| lower_first(name)))
        });
        let choices =
            derive(move || kind.get().units().map(|unit| (unit.symbol().to_owned(), symbol(unit))).collect());
        let now = derive(move || unit.get().symbol().to_owned());
        let choose = Callback::new(move |symbol: String| {
            if let Some(unit) = Unit::from_symbol(&symbol) {
                state.settings.update(|settings| settings.units.choose(kind.get_untracked(), unit));
            }
        });
        choice::select(id.clone(), name, choices, now, choose)
    };
    view! { <div class="unit-choice">{choice}</div> }.into_any()
}

/// A name within a phrase; one that begins with two capitals is an abbreviation and stays.
fn lower_first(name: &str) -> String {
    let mut chars = name.chars();
    match (chars.next(), chars.next()) {
        (Some(first), Some(second)) if !second.is_uppercase() => {
            first.to_lowercase().chain([second]).chain(chars).collect()
        }
        _ => name.to_owned(),
    }
}

/// A unit behind a label.
#[must_use]
pub fn in_brackets(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" ({unit})") }
}
