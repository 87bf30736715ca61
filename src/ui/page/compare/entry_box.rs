//! A box for a number of the comparison.

use super::context::CompareContext;
use crate::browser::page;
use crate::domain::limit::Limit;
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::finding::What;
use crate::domain::{Entry, Grade};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::t;
use crate::ui::components::{BoxMessage, BoxState, Mark, NumberBox, UnitChoice};
use crate::ui::field::number_text::{Suggestion, entry_offers, entry_other_basis, entry_read_as, in_box};
use crate::ui::text::{Loose, Message, symbol_shown, unit_short, words};
use leptos::prelude::*;

/// What is wrong or unusual about an entry.
type EntryRemark = (Grade, What, Message);

/// The box with its unit, and below it what is wrong with its entry.
#[component]
pub fn CompareBox(
    /// `data-field` on the page, and the end of its id.
    #[prop(into)]
    key: String,
    /// Its label in sight.
    #[prop(optional, into)]
    label: Option<Signal<String>>,
    /// What it is in full.
    #[prop(into)]
    name: Signal<String>,
    /// What it measures.
    kind: Kind,
    /// What it may hold.
    limit: Limit,
    /// The entry as it is.
    #[prop(into)]
    entry: Signal<Entry>,
    /// Takes the entry as typed.
    on_enter: Callback<Entry>,
    /// Its unit where the kind has none of its own, such as money per area.
    #[prop(optional, into)]
    unit_words: Option<Signal<String>>,
    /// What is below the box while nothing else is to be said there.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// What holds while it is blank.
    #[prop(optional, into)]
    placeholder: Signal<String>,
    /// The grid column it is in.
    #[prop(optional)]
    column: Option<&'static str>,
    /// Whether the column's head, or a column of its own, has the unit.
    #[prop(optional)]
    unit_in_head: bool,
    /// A width of its own.
    #[prop(optional)]
    class: &'static str,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let key = slug(&key);
    let unit = Memo::new(move |_| state.unit(kind));
    let said = Memo::new(move |before: Option<&Option<EntryRemark>>| {
        if context.typing.get()
            && let Some(before) = before
        {
            return before.clone();
        }
        let entry = entry.get();
        let (grade, what) = judge(&entry, kind, &limit)?;
        let name = name.get();
        let loose = Loose { name: &name, typed: &entry.text, kind, limit };
        let message = state.with_context(|context| words::loose_entry(&what, &loose, context));
        Some((grade, what, message))
    });
    let shown = Memo::new(move |_| {
        let units = state.units.get();
        let entry = entry.get();
        let found = said.get();
        BoxState {
            text: in_box(&entry, kind, &units),
            typical: entry.preset && !entry.is_blank(),
            aside: below(context, &entry, (kind, limit), found.as_ref().map(|found| found.0), &hint.get()),
            message: found
                .map(|(grade, _, message)| BoxMessage { grade, words: format!("{} {}", message.what, message.fix) }),
        }
    });
    let own = StoredValue::new(key.clone());
    let input = Callback::new(move |text: String| {
        context.typing.set(true);
        context.typed_last.set(Some(own.get_value()));
        on_enter.run(Entry::typed(text, unit.get_untracked()));
    });
    let leave = Callback::new(move |()| {
        state.compare.close_step();
        if context.typing.get_untracked() {
            context.typing.set(false);
        }
    });
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| {
        // A number that was just typed keeps its digits: the unit is what was still to be said.
        if context.typed_last.get_untracked() == Some(own.get_value()) {
            context.typed_last.set(None);
            let typed = entry.get_untracked();
            if !typed.preset {
                on_enter.run(Entry::typed(typed.text, unit));
            }
        }
        state.choose_unit(kind, unit);
    });
    let says = move || {
        let (grade, what, message) = said.get()?;
        let offers = entry_offers(&entry.get(), &what, &state.units.get());
        (grade == Grade::Stop || !offers.is_empty()).then(|| {
            let offer = |offer: Suggestion| {
                let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", symbol_shown(offer.unit)) };
                let words = t!("common-use", entry = format!("{}{unit}", offer.text));
                let put = move |_| {
                    on_enter.run(Entry::typed(offer.text.clone(), offer.unit));
                    page::focus_field(&own.get_value());
                };
                view! { <button type="button" class="offer" on:click=put>{words}</button> }
            };
            let offers = offers.into_iter().map(offer).collect_view();
            view! { <p class="box-says"><Mark grade=grade/> " " {message.what} " " {message.fix} " " {offers}</p> }
        })
    };
    view! {
        <div class=format!("compare-box {class}")>
            <NumberBox
                key=key
                label=label
                name=name
                state=shown
                column=column
                placeholder=placeholder
                on_input=input
                on_leave=leave
            >
                {(!unit_in_head).then(|| match unit_words {
                    Some(words) => view! { <span class="unit">{move || words.get()}</span> }.into_any(),
                    None => view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }.into_any(),
                })}
            </NumberBox>
            {says}
        </div>
    }
}

/// A key as part of an id: ids in a list are separated by blanks.
pub fn slug(key: &str) -> String {
    key.chars()
        .map(|letter| if letter.is_alphanumeric() || matches!(letter, '.' | '_') { letter } else { '-' })
        .collect()
}

/// What there is to say about an entry; what is missing and was never touched is nothing.
fn judge(entry: &Entry, kind: Kind, limit: &Limit) -> Option<(Grade, What)> {
    match read_entry(entry, kind, limit) {
        Err(What::Missing) if entry.preset => None,
        Err(what) => Some((Grade::Stop, what)),
        Ok(Some(base)) => unusual(Amount::from_base(kind, base), limit).map(|what| (Grade::Unusual, what)),
        Ok(None) => None,
    }
}

/// The one line below the box: what was read, or the other basis, or how the entry is meant.
fn below(
    context: CompareContext,
    entry: &Entry,
    (kind, limit): (Kind, Limit),
    grade: Option<Grade>,
    hint: &str,
) -> String {
    let units = context.state.units.get();
    let show =
        |amount, unit: Unit| format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), unit_short(unit, ""));
    let word = match grade {
        Some(Grade::Stop) => return t!("common-error"),
        Some(Grade::Unusual) => format!("⚠ {} ", t!("common-warning")),
        _ => String::new(),
    };
    if let Some(amount) = entry_read_as(entry, kind, &units) {
        return t!("common-read-as", amount = show(amount, units.unit(kind)));
    }
    if let Some((amount, unit)) = entry_other_basis(entry, kind, &units) {
        return format!("{word}{}", show(amount, unit));
    }
    match (entry.is_blank(), entry.preset) {
        _ if !word.is_empty() => word,
        _ if !hint.is_empty() => hint.to_owned(),
        (true, _) if limit.optional => t!("common-optional"),
        (true, _) => t!("common-required"),
        (false, true) => t!("common-typical"),
        (false, false) => String::new(),
    }
}
