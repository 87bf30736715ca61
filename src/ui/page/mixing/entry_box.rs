//! A box for a number of this page, and what there is to say about it.

use super::context::MixingContext;
use crate::browser::page;
use crate::domain::limit::Limit;
use crate::domain::mixing::MixField;
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::{Entry, Grade, What};
use crate::quantity::{Amount, Kind, Unit, Units, format};
use crate::t;
use crate::ui::components::{BoxMessage, BoxState, Mark, NumberBox, UnitChoice};
use crate::ui::field::number_text::{Suggestion, entry_offers, entry_read_as, in_box};
use crate::ui::state::State;
use crate::ui::text::{Loose, Message, symbol_shown, unit_shown, words};
use leptos::prelude::*;

/// What a box is, and where its entry is kept.
#[derive(Clone)]
pub struct EntryField {
    /// `data-field` on the page, and the end of its id.
    pub key: String,
    /// What it is in full.
    pub name: Signal<String>,
    /// What it measures.
    pub kind: Signal<Kind>,
    /// What it may hold.
    pub limit: Signal<Limit>,
    /// The entry in effect.
    pub entry: Memo<Entry>,
    /// Takes the entry as typed.
    pub put: Callback<Entry>,
}

impl EntryField {
    /// A box of the table of fields.
    pub fn of(state: State, sheet: MixingContext, field: MixField, name: impl Into<Signal<String>>) -> Self {
        Self {
            key: field.key().to_owned(),
            name: name.into(),
            kind: Signal::stored(field.kind()),
            limit: Signal::stored(field.limit()),
            entry: Memo::new(move |_| sheet.draft.with(|mix| mix.entry(field).clone())),
            put: Callback::new(move |entry| {
                state.edit_mix(Some(field.key().to_owned()), |mix| *mix.entry_mut(field) = entry);
            }),
        }
    }

    /// What is said about the entry: as it was at the last pause, so that nothing comes and goes between two keys.
    fn remark(&self, state: State, sheet: MixingContext) -> Memo<Option<Remark>> {
        let Self { name, kind, limit, entry, .. } = *self;
        Memo::new(move |before: Option<&Option<Remark>>| {
            if let Some(before) = before.filter(|_| sheet.typing.get()) {
                return before.clone();
            }
            let (kind, limit) = (kind.get(), limit.get());
            let (grade, what) = entry.with(|entry| judged(entry, kind, &limit))?;
            let message = entry.with(|entry| {
                let loose = Loose { name: &name.get(), typed: &entry.text, kind, limit };
                state.with_context(|context| words::loose_entry(&what, &loose, context))
            });
            Some(Remark { grade, what, message })
        })
    }
}

/// What is wrong or unusual about an entry.
#[derive(Debug, Clone, PartialEq)]
struct Remark {
    grade: Grade,
    what: What,
    message: Message,
}

/// What is missing and was never touched is nothing to speak of.
fn judged(entry: &Entry, kind: Kind, limit: &Limit) -> Option<(Grade, What)> {
    match read_entry(entry, kind, limit) {
        Err(What::Missing) if entry.preset => None,
        Err(what) => Some((Grade::Stop, what)),
        Ok(Some(base)) => unusual(Amount::from_base(kind, base), limit).map(|what| (Grade::Unusual, what)),
        Ok(None) => None,
    }
}

/// The box with its unit.
#[component]
pub fn EntryBox(
    /// What it is.
    field: EntryField,
    /// Its label in sight; none in a grid.
    #[prop(optional, into)]
    label: Option<Signal<String>>,
    /// What is below the number while nothing else is to be said there.
    #[prop(optional, into)]
    aside: Signal<String>,
    /// The grid column it is in.
    #[prop(optional)]
    column: Option<&'static str>,
    /// A unit choice of its own in place of that of its kind.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let EntryField { ref key, name, kind, limit, entry, put } = field;
    let remark = field.remark(state, sheet);
    let unit = Memo::new(move |_| state.unit(kind.get()));
    let shown = Memo::new(move |_| {
        let (kind, limit, units) = (kind.get(), limit.get(), state.units.get());
        let message = remark.get().map(|Remark { grade, message, .. }| BoxMessage {
            grade,
            words: format!("{} {}", message.what, message.fix),
        });
        entry.with(|entry| BoxState {
            text: in_box(entry, kind, &units),
            typical: entry.preset && !entry.is_blank(),
            aside: below(entry, kind, &units, &limit, message.as_ref()).unwrap_or_else(|| aside.get()),
            message,
        })
    });
    let (typed, left) = (key.clone(), key.clone());
    let on_input = Callback::new(move |text: String| {
        sheet.typing.set(true);
        sheet.typed_last.set_value(Some(typed.clone()));
        put.run(Entry::typed(text, unit.get_untracked()));
    });
    let on_leave = Callback::new(move |()| {
        sheet.typing.set(false);
        state.leave_mix();
    });
    let symbol = Callback::new(move |unit: Unit| unit_shown(unit, &state.currency.get()).into_owned());
    let choose = Callback::new(move |unit: Unit| {
        // A number that was just typed keeps its digits: the unit is what was still to be said.
        if let Some(text) = sheet.just_typed(&left, entry, kind) {
            put.run(Entry::typed(text, unit));
        }
        state.settings.update(|settings| settings.units.choose(kind.get_untracked(), unit));
    });
    let own_unit = children.map(|children| children());
    let unit_choice = match own_unit {
        Some(own) => own,
        None => view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }.into_any(),
    };
    view! {
        <NumberBox
            key=key.clone()
            label=label
            name=name
            state=shown
            column=column
            on_input=on_input
            on_leave=on_leave
        >
            {unit_choice}
        </NumberBox>
    }
}

/// The line below the number: an error in a word, what was read, or what a blank box means.
fn below(entry: &Entry, kind: Kind, units: &Units, limit: &Limit, message: Option<&BoxMessage>) -> Option<String> {
    match message.map(|message| message.grade) {
        Some(Grade::Stop) => return Some(t!("common-error")),
        Some(Grade::Unusual) => return Some(format!("⚠ {}", t!("common-warning"))),
        _ => {}
    }
    if let Some(amount) = entry_read_as(entry, kind, units) {
        let unit = units.unit(kind);
        let amount = format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), symbol_shown(unit));
        return Some(t!("common-read-as", amount = amount));
    }
    (entry.is_blank() && !limit.optional).then(|| t!("common-required"))
}

/// The errors and questions of some boxes, below them.
#[component]
pub fn EntryMessages(
    /// The boxes.
    #[prop(into)]
    fields: Signal<Vec<EntryField>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let line = move |field: EntryField| {
        let remark = field.remark(state, sheet);
        move || {
            let Remark { grade, what, message } = remark.get()?;
            let offers = field.entry.with(|entry| entry_offers(entry, &what, &state.units.get()));
            let is_question = grade == Grade::Stop || !offers.is_empty();
            is_question.then(|| {
                let offers = offers.into_iter().map(|offer| offer_button(&field, offer)).collect_view();
                view! { <p><Mark grade=grade/> " " {message.what} " " {message.fix} " " {offers}</p> }
            })
        }
    };
    view! { <div class="box-messages" role="status">{move || fields.get().into_iter().map(line).collect_view()}</div> }
}

/// One of the numbers that may have been meant.
fn offer_button(field: &EntryField, offer: Suggestion) -> impl IntoView + use<> {
    let (key, put) = (field.key.clone(), field.put);
    let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", symbol_shown(offer.unit)) };
    let words = t!("common-use", entry = format!("{}{unit}", offer.text));
    let take = move |_| {
        put.run(Entry::typed(offer.text.clone(), offer.unit));
        page::focus_field(&key);
    };
    view! { <button type="button" class="offer" on:click=take>{words}</button> }
}
