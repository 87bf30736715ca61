//! A box for a number of the trial, and what is wrong or unusual about it.

use super::context::{TrialDesk, with_bench};
use crate::browser::page;
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::finding::What;
use crate::domain::trial::{TrialFinding, TrialProblem};
use crate::domain::{Entry, Grade};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::{BoxMessage, BoxState, Mark, NumberBox, UnitChoice};
use crate::ui::field::number_text::{Suggestion, entry_offers, entry_other_basis, entry_read_as, in_box};
use crate::ui::state::State;
use crate::ui::text::{Message, symbol_shown, unit_short, words};
use leptos::prelude::*;

/// The box of a field of the trial, with its unit unless the column's head has it.
#[component]
pub fn TrialBox(
    /// The field.
    field: TrialField,
    /// Its label in sight.
    #[prop(optional, into)]
    label: Option<Signal<String>>,
    /// The grid column it is in.
    #[prop(optional)]
    column: Option<&'static str>,
    /// Whether the head of the column has its unit.
    #[prop(optional)]
    unit_in_head: bool,
    /// What is below the number while nothing else is to be said there.
    #[prop(optional, into)]
    aside: Signal<String>,
    /// A width of its own.
    #[prop(optional)]
    class: &'static str,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let kind = Memo::new(move |_| state.bench.open.with(|open| open.trial.kind(field)));
    let unit = Memo::new(move |_| state.unit(kind.get()));
    let remark = Memo::new(move |before: Option<&Option<BoxRemark>>| {
        // As it was at the last pause, so that nothing comes and goes between two keys.
        if desk.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        remark(state, field)
    });
    let shown = Memo::new(move |_| {
        let units = state.units.get();
        let entry = state.bench.open.with(|open| open.trial.entry(field));
        let remark = remark.get();
        BoxState {
            text: in_box(&entry, kind.get(), &units),
            typical: entry.preset && !entry.is_blank(),
            aside: below(state, &entry, kind.get(), remark.as_ref()).unwrap_or_else(|| aside.get()),
            message: remark.map(|remark| BoxMessage {
                grade: remark.grade,
                words: format!("{} {}", remark.message.what, remark.message.fix),
            }),
        }
    });
    let name = Signal::derive(move || with_bench(state, |context| words::bench::place(field.place(), context)));
    let on_input = Callback::new(move |text: String| desk.type_into(state, field, text));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| desk.choose_unit(state, kind.get_untracked(), unit));
    let has_unit = Memo::new(move |_| !unit_in_head && kind.get() != Kind::Count);
    view! {
        <NumberBox
            key=field.key()
            label=label
            name=name
            state=shown
            column=column
            class=class
            on_input=on_input
            on_leave=Callback::new(move |()| desk.leave())
        >
            <Show when=move || has_unit.get()>
                <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/>
            </Show>
        </NumberBox>
    }
}

/// The unit of a column of boxes, to choose.
#[component]
pub fn ColumnUnit(
    /// What the column is.
    #[prop(into)]
    name: Signal<String>,
    /// What it measures.
    kind: Kind,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let unit = Memo::new(move |_| state.unit(kind));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| desk.choose_unit(state, kind, unit));
    view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }
}

/// What is wrong or unusual about an entry.
#[derive(Debug, Clone, PartialEq)]
struct BoxRemark {
    grade: Grade,
    what: What,
    message: Message,
}

/// What there is to say about an entry; what is missing and was never touched is nothing.
fn remark(state: State, field: TrialField) -> Option<BoxRemark> {
    let (what, grade) = state.bench.open.with(|open| {
        let (entry, kind, limit) = (open.trial.entry(field), open.trial.kind(field), open.trial.limit(field)?);
        match read_entry(&entry, kind, &limit) {
            Err(What::Missing) if entry.preset => None,
            Err(what) => Some((what, Grade::Stop)),
            Ok(Some(base)) => unusual(Amount::from_base(kind, base), &limit).map(|what| (what, Grade::Unusual)),
            Ok(None) => None,
        }
    })?;
    let finding = TrialFinding { grade, place: field.place(), what: TrialProblem::Entry(what) };
    let message = with_bench(state, |context| words::bench::finding(&finding, context));
    Some(BoxRemark { grade, what, message })
}

/// The findings of some boxes' entries.
pub fn entry_findings(state: State, fields: &[TrialField]) -> Vec<(TrialField, Grade, Message)> {
    let one = |field: &TrialField| remark(state, *field).map(|remark| (*field, remark.grade, remark.message));
    fields.iter().filter_map(one).collect()
}

/// The line below the number: what was read, or the other basis. `None` where there is nothing of the kind to say.
fn below(state: State, entry: &Entry, kind: Kind, remark: Option<&BoxRemark>) -> Option<String> {
    let units = state.units.get();
    let show =
        |amount, unit: Unit| format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), unit_short(unit, ""));
    let mark = match remark.map(|remark| remark.grade) {
        Some(Grade::Stop) => return Some(t!("common-error")),
        Some(Grade::Unusual) => format!("⚠ {} ", t!("common-warning")),
        _ => String::new(),
    };
    if let Some(amount) = entry_read_as(entry, kind, &units) {
        return Some(t!("common-read-as", amount = show(amount, units.unit(kind))));
    }
    if let Some((amount, unit)) = entry_other_basis(entry, kind, &units) {
        return Some(format!("{mark}{}", show(amount, unit)));
    }
    (!mark.is_empty()).then_some(mark)
}

/// The errors and questions of some boxes, below them; the place is kept free, so that nothing moves.
#[component]
pub fn TrialMessages(
    /// The boxes.
    #[prop(into)]
    fields: Signal<Vec<TrialField>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let found = Memo::new(move |before: Option<&Vec<(TrialField, BoxRemark, Vec<Suggestion>)>>| {
        if desk.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        let units = state.units.get();
        let one = |field: TrialField| {
            let remark = remark(state, field)?;
            let entry = state.bench.open.with(|open| open.trial.entry(field));
            let offers = entry_offers(&entry, &remark.what, &units);
            (remark.grade == Grade::Stop || !offers.is_empty()).then_some((field, remark, offers))
        };
        fields.get().into_iter().filter_map(one).collect()
    });
    let line = move |(field, remark, offers): (TrialField, BoxRemark, Vec<Suggestion>)| {
        let offers = offers.into_iter().map(|offer| view! { <TrialOffer field=field offer=offer/> }).collect_view();
        view! { <p><Mark grade=remark.grade/> " " {remark.message.what} " " {remark.message.fix} " " {offers}</p> }
    };
    view! { <div class="box-messages">{move || found.get().into_iter().map(line).collect_view()}</div> }
}

/// One of the numbers that may have been meant.
#[component]
fn TrialOffer(
    /// The field.
    field: TrialField,
    /// What is put in.
    offer: Suggestion,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", symbol_shown(offer.unit)) };
    let words = t!("common-use", entry = format!("{}{unit}", offer.text));
    let put = move |_| {
        state.bench.edit(|trial| trial.enter(field, Entry::typed(offer.text.clone(), offer.unit)));
        page::focus_field(&field.key());
    };
    view! { <button type="button" class="offer" on:click=put>{words}</button> }
}

/// A column pasted from a spreadsheet is one step, with one Undo.
pub fn paste_column(state: State, cells: Vec<(TrialField, String)>) {
    let cells: Vec<(TrialField, Entry)> = state.bench.open.with_untracked(|open| {
        let unit = |field| state.units.with_untracked(|units| units.unit(open.trial.kind(field)));
        cells.into_iter().map(|(field, text)| (field, Entry::typed(text, unit(field)))).collect()
    });
    let count = cells.len();
    let mut before = None;
    state.bench.edit(|trial| before = Some(trial.enter_column(cells)));
    let Some(before) = before else { return };
    let undo = move || state.bench.edit(|trial| trial.take_back_column(&before));
    state.tell_undo(t!("trial-pasted", count = count), undo);
}
