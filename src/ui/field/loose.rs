//! A box for a number that belongs to no recipe.

use super::number::{in_brackets, unit_choice};
use super::number_text::{Suggestion, entry_offers, entry_other_basis, entry_read_as, in_box};
use crate::browser::element::{Part, View, button, el, many};
use crate::browser::graph::*;
use crate::browser::page;
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::finding::What;
use crate::domain::recipe::limit::Limit;
use crate::domain::{Entry, Grade};
use crate::quantity::{Amount, Kind, format};
use crate::record::limits::LONGEST_TEXT;
use crate::ui::part::finding::told;
use crate::ui::signal::{Signal, memo};
use crate::ui::state::{State, state};
use crate::ui::text::{FieldWords, Loose, unit_shown};

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
pub fn number(this: LooseBox) -> View {
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
        (!standing.1.is_empty()).then(|| el("span").class(standing.0).child(standing.1))
    };
    let says = {
        let (name, key) = (name.clone(), key.clone());
        move || found.get().map(|(grade, what)| say(state, &name, &key, grade, what, (kind, limit), entry, put))
    };
    let next = key.clone();
    let label = match named {
        Some(named) => el("label").class("out-of-sight").set("for", id.clone()).child(named).view(),
        None => el("label")
            .set("for", id.clone())
            .child(words.label)
            .child(el("span").class("unit-named").child(move || in_brackets(&unit_text())))
            .view(),
    };
    el("div")
        .class("field")
        .class_if("stop", move || grade() == Some(Grade::Stop))
        .class_if("unusual", move || grade() == Some(Grade::Unusual))
        .class_if("preset", move || entry.with(|entry| entry.preset && !entry.is_blank()))
        .class_if("to-fill-in", move || !limit.optional && entry.with(|entry| entry.preset && entry.is_blank()))
        .child(label)
        .child(
            el("div")
                .class("box")
                .child(
                    el("input")
                        .set("id", id.clone())
                        .set("type", "text")
                        .set("maxlength", LONGEST_TEXT.to_string())
                        .set("inputmode", "decimal")
                        .set("autocomplete", "off")
                        .set("autocapitalize", "off")
                        .set("spellcheck", "false")
                        .set("data-field", key)
                        .set("aria-describedby", described)
                        .set("aria-invalid", move || (grade() == Some(Grade::Stop)).then_some("true"))
                        .property("value", move || text.get())
                        .on("input", move |event| {
                            put.run(Entry::typed(event_target_value(&event), unit.get_untracked()))
                        })
                        .on_key(move |event| {
                            if event.key() == "Enter" {
                                page::focus_after(&next);
                            }
                        }),
                )
                .child(unit_choice(state, Signal::stored(name), &id, kind_of, unit)),
        )
        .child(
            el("p")
                .class("aside")
                .set("id", aside_id)
                .child(aside)
                .child(move || read_as(state, entry, kind))
                .child(move || other_basis(state, entry, kind))
                .child((!words.hint.is_empty()).then(|| el("span").child(words.hint))),
        )
        .child(el("div").class("says").set("id", says_id).child(says))
        .view()
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

/// A moisture on the basis that the box does not show.
fn other_basis(state: State, entry: Signal<Entry>, kind: Kind) -> Option<String> {
    let units = state.units.get();
    let (amount, unit) = entry.with(|entry| entry_other_basis(entry, kind, &units))?;
    Some(format!("= {}\u{a0}{}", format::amount(amount, unit, units.mark), unit.symbol()))
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
) -> View {
    let units = state.units.get();
    let entry = entry.get();
    let loose = Loose { name, typed: &entry.text, kind, limit };
    let message = state.with_context(|context| (state.words.loose_entry)(&what, &loose, context));
    let button = |offer: Suggestion| {
        let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", offer.unit.symbol()) };
        let words = format!("{}: {}{unit}", state.words.tools.use_this, offer.text);
        let key = key.to_owned();
        let take = move |_| {
            put.run(Entry::typed(offer.text.clone(), offer.unit));
            page::focus_field(&key);
        };
        button().class("offer").on("click", take).child(words)
    };
    many([
        (told(grade, message)).view(),
        (entry_offers(&entry, &what, &units).into_iter().map(button).collect::<View>()).view(),
    ])
    .view()
}
