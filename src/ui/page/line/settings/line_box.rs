//! A box for a number of the line.

use crate::browser::page;
use crate::domain::line::limit::limit;
use crate::domain::line::{LineField, LineFinding, LineFindingKind, LinePlace};
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::finding::What;
use crate::domain::{Entry, Grade};
use crate::quantity::{Amount, Unit, format};
use crate::t;
use crate::ui::components::{BoxMessage, BoxState, Mark, NumberBox, UnitChoice};
use crate::ui::field::number_text::{Suggestion, entry_offers, entry_other_basis, entry_read_as, in_box};
use crate::ui::page::line::context::with_context;
use crate::ui::state::State;
use crate::ui::text::{Message, symbol_shown, unit_short, words};
use leptos::prelude::*;

/// The box of a field of the line, with its unit.
#[component]
pub fn LineFieldBox(
    /// The field.
    field: LineField,
    /// Its label in sight; none in a grid, whose head says it.
    #[prop(optional, into)]
    label: Option<Signal<String>>,
    /// The grid column it is in.
    #[prop(optional)]
    column: Option<&'static str>,
    /// Whether the head of the column has its unit.
    #[prop(optional)]
    unit_in_head: bool,
    /// What holds while it is blank.
    #[prop(optional, into)]
    placeholder: Signal<String>,
    /// What is below the number while nothing else is to be said there.
    #[prop(optional, into)]
    aside: Signal<String>,
    /// A width of its own.
    #[prop(optional)]
    class: &'static str,
) -> impl IntoView {
    let state = expect_context::<State>();
    let kind = Memo::new(move |_| state.line.book(|book| book.kind(field)));
    let unit = Memo::new(move |_| state.line_units_at(field, kind.get()).unit(kind.get()));
    let said = said_at_rest(state, field);
    let others = beside_others(state, field);
    let shown = Memo::new(move |_| {
        let message = said.get().map(|(grade, _, message)| (grade, message)).or_else(|| others.get());
        let grade = message.as_ref().map(|(grade, _)| *grade);
        let entry = entry(state, field);
        let aside = below(state, &entry, field, grade).unwrap_or_else(|| aside.get());
        box_state(state, field, &entry, aside, message)
    });
    let name = Memo::new(move |_| with_context(state, |context| words::line::field_name(field, context)));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let on_input = Callback::new(move |text: String| state.type_into_line(field, &text, unit.get_untracked()));
    let choose = Callback::new(move |unit: Unit| state.choose_line_unit(field, unit));
    view! {
        <NumberBox
            key=field.key()
            label=label
            name=name
            state=shown
            column=column
            class=class
            placeholder=placeholder
            on_input=on_input
            on_leave=Callback::new(move |()| state.leave_line())
        >
            <Show when=move || !unit_in_head>
                <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/>
            </Show>
        </NumberBox>
    }
}

/// What a box of the line shows.
pub fn box_state(
    state: State,
    field: LineField,
    entry: &Entry,
    aside: String,
    said: Option<(Grade, Message)>,
) -> BoxState {
    let kind = state.line.book(|book| book.kind(field));
    BoxState {
        text: in_box(entry, kind, &state.line_units_at(field, kind)),
        typical: entry.preset && !entry.is_blank(),
        aside,
        message: said.map(|(grade, message)| BoxMessage { grade, words: format!("{} {}", message.what, message.fix) }),
    }
}

/// What was typed into a box, or what is carried down to it; blank for one that is not there.
pub fn entry(state: State, field: LineField) -> Entry {
    state.line.book(|book| book.entry_shown(field)).unwrap_or_else(|| Entry::empty(Unit::One))
}

/// What is wrong or unusual about an entry.
pub type Remark = (Grade, What, Message);

/// What is said about a box: as it was at the last pause, so that nothing comes and goes between two keys.
pub fn said_at_rest(state: State, field: LineField) -> Memo<Option<Remark>> {
    Memo::new(move |before: Option<&Option<Remark>>| {
        if state.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        let (what, grade) = state.line.book(|book| {
            let kind = book.kind(field);
            let limit = limit(field, book);
            match read_entry(book.entry(field)?, kind, &limit) {
                // A catch waits until it is complete.
                Err(What::Missing) if matches!(field, LineField::Row(..)) => None,
                Err(What::Missing) if book.entry(field).is_some_and(|entry| entry.preset) => None,
                Err(what) => Some((what, Grade::Stop)),
                Ok(Some(base)) => unusual(Amount::from_base(kind, base), &limit).map(|what| (what, Grade::Unusual)),
                Ok(None) => None,
            }
        })?;
        let finding = LineFinding::new(grade, LinePlace::Field(field), LineFindingKind::Entry(what));
        let message = with_context(state, |context| words::line::finding(&finding, context));
        Some((grade, what, message))
    })
}

/// What is said about a number beside others, such as a mass below its tare; as it was at the last pause.
fn beside_others(state: State, field: LineField) -> Memo<Option<(Grade, Message)>> {
    Memo::new(move |before: Option<&Option<(Grade, Message)>>| {
        if state.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        let is_here = |found: &&LineFinding| {
            found.place == LinePlace::Field(field) && !matches!(found.what, LineFindingKind::Entry(_))
        };
        let finding = state.line.checked.with(|line| line.findings.iter().find(is_here).cloned())?;
        Some((finding.grade, with_context(state, |context| words::line::finding(&finding, context))))
    })
}

/// The line below the number: what was read, or the other basis. `None` where there is nothing of the kind to say.
pub fn below(state: State, entry: &Entry, field: LineField, grade: Option<Grade>) -> Option<String> {
    let kind = state.line.book(|book| book.kind(field));
    let units = state.line_units_at(field, kind);
    let show =
        |amount, unit: Unit| format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), unit_short(unit, ""));
    if grade == Some(Grade::Stop) {
        return Some(t!("common-error"));
    }
    let mark = if grade == Some(Grade::Unusual) { format!("⚠ {} ", t!("common-warning")) } else { String::new() };
    if let Some(amount) = entry_read_as(entry, kind, &units) {
        return Some(t!("common-read-as", amount = show(amount, units.unit(kind))));
    }
    if let Some((amount, unit)) = entry_other_basis(entry, kind, &units) {
        return Some(format!("{mark}{}", show(amount, unit)));
    }
    if mark.is_empty() && entry.preset && !entry.is_blank() {
        return Some(t!("common-typical"));
    }
    (!mark.is_empty()).then_some(mark)
}

/// The errors and questions of some boxes, below them.
#[component]
pub fn LineMessages(
    /// The boxes.
    fields: &'static [LineField],
) -> impl IntoView {
    fields.iter().map(|field| view! { <LineMessage field=*field/> }).collect_view()
}

/// The error or the question of a box.
#[component]
pub fn LineMessage(
    /// The box.
    field: LineField,
    /// What is said about it, where that is not all.
    #[prop(optional)]
    said: Option<Memo<Option<Remark>>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let said = said.unwrap_or_else(|| said_at_rest(state, field));
    move || {
        let (grade, what, message) = said.get()?;
        let kind = state.line.book(|book| book.kind(field));
        let offers = entry_offers(&entry(state, field), &what, &state.line_units_at(field, kind));
        let shown = grade == Grade::Stop || !offers.is_empty();
        shown.then(|| {
            let offers = offers.into_iter().map(|offer| view! { <LineOffer field=field offer=offer/> }).collect_view();
            view! { <p><Mark grade=grade/> " " {message.what} " " {message.fix} " " {offers}</p> }
        })
    }
}

/// One of the numbers that may have been meant.
#[component]
pub fn LineOffer(
    /// The field.
    field: LineField,
    /// What is put in.
    offer: Suggestion,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", symbol_shown(offer.unit)) };
    let words = t!("common-use", entry = format!("{}{unit}", offer.text));
    let put = move |_| {
        state.enter_line(field, &offer.text, offer.unit);
        page::focus_field(&field.key());
    };
    view! { <button type="button" class="offer" on:click=put>{words}</button> }
}
