//! A box for a number of the recipe.

use super::context::SheetContext;
use crate::browser::page;
use crate::domain::recipe::check::limit_of;
use crate::domain::{Draft, Field, Grade, Place};
use crate::quantity::{Kind, Unit, Units, format};
use crate::t;
use crate::ui::components::{BoxMessage, BoxState, Mark, NumberBox, UnitChoice};
use crate::ui::field::number_text::{Suggestion, in_box, offers, other_basis, read_as};
use crate::ui::state::{Said, Session, State};
use crate::ui::text::{symbol_shown, unit_short, words};
use leptos::prelude::*;

/// The box of a field, with its unit unless the column's head has it.
#[component]
pub fn FieldBox(
    /// The field.
    field: Field,
    /// Its label in sight.
    #[prop(optional, into)]
    label: Option<Signal<String>>,
    /// The grid column it is in.
    #[prop(optional)]
    column: Option<&'static str>,
    /// Whether the head of the column has its unit.
    #[prop(optional)]
    unit_in_head: bool,
    /// A width of its own.
    #[prop(optional)]
    class: &'static str,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let shown = sheet.memo(move || field_view(state, sheet, field));
    let kind = Signal::derive(move || shown.with(|shown| shown.kind));
    let unit = Signal::derive(move || shown.with(|shown| shown.unit));
    let name = Signal::derive(move || shown.with(|shown| shown.name.clone()));
    let content = Signal::derive(move || shown.with(|shown| shown.content.clone()));
    let on_input = Callback::new(move |text: String| {
        state.enter(Some(Session::Field(field)), field, &text, unit.get_untracked());
    });
    let on_leave = Callback::new(move |()| state.leave());
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| state.choose_unit_at(field, unit));
    view! {
        <NumberBox
            key=field.key()
            label=label
            name=name
            state=content
            column=column
            class=class
            on_input=on_input
            on_leave=on_leave
        >
            <Show when=move || !unit_in_head>
                <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/>
            </Show>
        </NumberBox>
    }
}

/// A box as it is shown.
#[derive(PartialEq)]
struct FieldView {
    kind: Kind,
    unit: Unit,
    name: String,
    content: BoxState,
}

fn field_view(state: State, sheet: SheetContext, field: Field) -> FieldView {
    state.draft.with(|draft| {
        let kind = draft.kind(field);
        let units = state.units_at(field, kind);
        let content = draft.entry(field).map(|entry| {
            let said = sheet.said_at(Place::Field(field));
            BoxState {
                text: in_box(entry, kind, &units),
                typical: entry.preset && !entry.is_blank(),
                aside: aside(draft, field, &units, said.as_ref()),
                message: said.map(|said| BoxMessage {
                    grade: said.finding.grade,
                    words: format!("{} {}", said.message.what, said.message.fix),
                }),
            }
        });
        FieldView {
            kind,
            unit: units.unit(kind),
            name: words::field_name(field, draft),
            content: content.unwrap_or_default(),
        }
    })
}

/// The one line below the box: what was read, or the other basis, or how the entry is meant.
fn aside(draft: &Draft, field: Field, units: &Units, said: Option<&Said>) -> String {
    let show =
        |amount, unit: Unit| format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), unit_short(unit, ""));
    let word = match said.map(|said| said.finding.grade) {
        Some(Grade::Stop) => return t!("common-error"),
        Some(Grade::Unusual) => format!("⚠ {} ", t!("common-warning")),
        _ => String::new(),
    };
    if let Some(amount) = read_as(draft, field, units) {
        return t!("common-read-as", amount = show(amount, units.unit(amount.kind)));
    }
    if let Some((amount, unit)) = other_basis(draft, field, units) {
        return format!("{word}{}", show(amount, unit));
    }
    let Some(entry) = draft.entry(field) else { return word };
    match (entry.is_blank(), entry.preset) {
        (true, _) if limit_of(draft, field).optional => t!("common-optional"),
        (true, _) => t!("common-required"),
        (false, true) if field.starts_neutral() => t!("common-no-allowance"),
        (false, true) => t!("common-typical"),
        (false, false) => word,
    }
}

/// The errors and questions of some boxes, below them: the place is kept free, so that nothing moves.
#[component]
pub fn BoxMessages(
    /// Whether a field is one of the boxes.
    belongs: fn(Field) -> bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let found = Memo::new(move |_| {
        let here = |said: &Said| match said.finding.place {
            Place::Field(field) if belongs(field) => Some((field, said.clone(), offers_for(state, field, said))),
            _ => None,
        };
        let mut found = sheet.said.with(|said| said.iter().filter_map(here).collect::<Vec<_>>());
        found.retain(|(_, said, offers)| said.finding.grade == Grade::Stop || !offers.is_empty());
        found
    });
    let line = move |(field, said, offers): (Field, Said, Vec<Suggestion>)| {
        let offers = offers.into_iter().map(|offer| view! { <OfferButton field=field offer=offer/> }).collect_view();
        view! {
            <p>
                <Mark grade=said.finding.grade/>
                " "
                {said.message.what}
                " "
                {said.message.fix}
                " "
                {offers}
            </p>
        }
    };
    view! { <div class="box-messages">{move || found.get().into_iter().map(line).collect_view()}</div> }
}

fn offers_for(state: State, field: Field, said: &Said) -> Vec<Suggestion> {
    state.draft.with(|draft| offers(draft, field, &said.finding.what, &state.units_at(field, draft.kind(field))))
}

/// One of the numbers that may have been meant.
#[component]
fn OfferButton(
    /// The field.
    field: Field,
    /// What is put in.
    offer: Suggestion,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", symbol_shown(offer.unit)) };
    let words = t!("common-use", entry = format!("{}{unit}", offer.text));
    let put = move |_| {
        state.enter(None, field, &offer.text, offer.unit);
        page::focus_field(&field.key());
    };
    view! { <button type="button" class="offer" on:click=put>{words}</button> }
}
