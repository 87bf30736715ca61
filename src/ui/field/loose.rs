//! A box for a number that belongs to no recipe.

use super::number::{in_brackets, unit_choice};
use super::number_text::{Offer, entry_offers, entry_read_as, in_box};
use crate::browser::page;
use crate::domain::check::{read_entry, unusual};
use crate::domain::finding::What;
use crate::domain::limit::Limit;
use crate::domain::{Entry, Grade};
use crate::quantity::{Amount, Kind, format};
use crate::ui::erased::{attr, flag, live, memo, on, prop};
use crate::ui::part::finding::told;
use crate::ui::state::{State, state};
use crate::ui::text::{FieldWords, Loose, unit_shown};
use leptos::prelude::*;

/// What the box is, and where its entry lives.
pub struct LooseBox {
    /// `data-field` on the page, and the end of its id.
    pub key: String,
    /// Label and hint.
    pub words: FieldWords,
    /// What stands in the label's place out of sight, where a table's heading says the rest.
    pub named: Option<String>,
    /// What it measures.
    pub kind: Kind,
    /// What it may hold.
    pub limit: Limit,
    /// The entry as it is.
    pub entry: Signal<Entry>,
    /// Takes the entry as typed.
    pub put: Callback<Entry>,
}

/// The box with label, unit, and what is wrong or unusual about it.
pub fn number(this: LooseBox) -> AnyView {
    let state = state();
    let LooseBox { key, words, named, kind, limit, entry, put } = this;
    let id = format!("field-{key}");
    let (aside_id, says_id) = (format!("{id}-aside"), format!("{id}-says"));
    let described = format!("{aside_id} {says_id}");
    let kind_of = memo(move || kind);
    let unit = memo(move || state.unit(kind));
    let found = memo(move || entry.with(|entry| judge(entry, kind, &limit)));
    let grade = move || found.get().map(|(grade, _)| grade);
    let text = memo(move || state.units.with(|units| entry.with(|entry| in_box(entry, kind, units))));
    let name = named.clone().unwrap_or_else(|| words.label.to_owned());
    let unit_text = move || unit_shown(unit.get(), &state.currency.get()).into_owned();
    let blank = move || entry.with(Entry::is_blank);
    let aside = move || {
        let standing = match (blank(), entry.with(|entry| entry.preset)) {
            (false, true) => ("mark-preset", state.words.tools.preset),
            (true, _) if limit.optional => ("mark-optional", state.words.tools.optional),
            (true, true) => ("mark-to-fill-in", state.words.tools.to_fill_in),
            _ => ("", ""),
        };
        (!standing.1.is_empty()).then(|| view! { <span class=standing.0>{standing.1}</span> })
    };
    let says = {
        let (name, key) = (name.clone(), key.clone());
        move || found.get().map(|(grade, what)| say(state, &name, &key, grade, what, (kind, limit), entry, put))
    };
    let next = key.clone();
    let label = match named {
        Some(named) => view! { <label class="out-of-sight" for=id.clone()>{named}</label> }.into_any(),
        None => view! {
            <label for=id.clone()>
                {words.label} <span class="unit-named">{live(move || in_brackets(&unit_text()))}</span>
            </label>
        }
        .into_any(),
    };
    view! {
        <div
            class="field"
            class:stop=flag(move || grade() == Some(Grade::Stop))
            class:unusual=flag(move || grade() == Some(Grade::Unusual))
            class:preset=flag(move || entry.with(|entry| entry.preset && !entry.is_blank()))
            class:to-fill-in=flag(move || !limit.optional && entry.with(|entry| entry.preset && entry.is_blank()))
        >
            {label}
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
                    aria-invalid=attr(move || (grade() == Some(Grade::Stop)).then_some("true"))
                    prop:value=prop(move || text.get())
                    on:input=on(move |event| put.run(Entry::typed(event_target_value(&event), unit.get_untracked())))
                    on:keydown=on(move |event: leptos::ev::KeyboardEvent| {
                        if event.key() == "Enter" {
                            page::focus_after(&next);
                        }
                    })
                />
                {unit_choice(state, Signal::stored(name), &id, kind_of.into(), unit.into())}
            </div>
            <p class="aside" id=aside_id>
                {aside} {live(move || read_as(state, entry, kind))} {(!words.hint.is_empty()).then(|| view! { <span>{words.hint}</span> })}
            </p>
            <div class="says" id=says_id>{says}</div>
        </div>
    }
    .into_any()
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

/// What a typed unit was read as.
fn read_as(state: State, entry: Signal<Entry>, kind: Kind) -> Option<String> {
    let units = state.units.get();
    let amount = entry.with(|entry| entry_read_as(entry, kind, &units))?;
    let unit = units.unit(kind);
    Some(format!("{} {}\u{a0}{}", state.words.tools.read_as, format::amount(amount, unit, units.mark), unit.symbol()))
}

/// The finding in words, with a button for each entry that may have been meant.
#[allow(clippy::too_many_arguments, reason = "what is found, of which box, and where the entry lives")]
fn say(
    state: State,
    name: &str,
    key: &str,
    grade: Grade,
    what: What,
    (kind, limit): (Kind, Limit),
    entry: Signal<Entry>,
    put: Callback<Entry>,
) -> AnyView {
    let units = state.units.get();
    let entry = entry.get();
    let loose = Loose { name, typed: &entry.text, kind, limit };
    let message = state.with_context(|context| (state.words.loose_entry)(&what, &loose, context));
    let button = |offer: Offer| {
        let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", offer.unit.symbol()) };
        let words = format!("{}: {}{unit}", state.words.tools.use_this, offer.text);
        let key = key.to_owned();
        let take = move |_| {
            put.run(Entry::typed(offer.text.clone(), offer.unit));
            page::focus_field(&key);
        };
        view! { <button type="button" class="offer" on:click=take>{words}</button> }
    };
    view! { {told(grade, message)} {entry_offers(&entry, &what, &units).into_iter().map(button).collect_view()} }
        .into_any()
}
