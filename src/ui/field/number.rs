//! A box for a number: the field is all it needs to know.

use super::choice;
use super::number_text::{Suggestion, in_box, offers, other_basis, read_as};
use crate::browser::element::{Part, View, button, el, many};
use crate::browser::graph::*;
use crate::browser::page;
use crate::domain::recipe::check::limit_of;
use crate::domain::{Draft, Field, Grade, Place};
use crate::quantity::{Kind, Unit, Units, format};
use crate::record::limits::LONGEST_TEXT;
use crate::ui::part::finding::says;
use crate::ui::signal::{Signal, memo};
use crate::ui::state::{Said, Session, State, state};
use crate::ui::text::{self, FieldWords, unit_shown};

/// How an entry is meant.
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

/// All that is shown of a field, but for its unit.
#[derive(Clone, PartialEq)]
struct Shown {
    text: String,
    words: FieldWords,
    standing: Standing,
    /// Whether the value filled in assumes nothing.
    neutral: bool,
    /// What a typed unit was read as, and the other basis of a moisture.
    aside: String,
    said: Option<Said>,
    offers: Vec<Suggestion>,
}

impl Shown {
    fn of(state: State, field: Field) -> Self {
        let units = state.units.get();
        let said = state.said(|finding| finding.place == Place::Field(field)).into_iter().next();
        state.draft.with(|draft| Self {
            text: draft.entry(field).map_or_else(String::new, |entry| in_box(entry, draft.kind(field), &units)),
            words: (state.words.field)(field, draft),
            standing: standing(draft, field),
            neutral: field.starts_neutral(),
            aside: aside(state, draft, field, &units),
            offers: said.as_ref().map_or_else(Vec::new, |said| offers(draft, field, &said.finding.what, &units)),
            said,
        })
    }

    fn grade(&self) -> Option<Grade> {
        self.said.as_ref().map(|said| said.finding.grade)
    }

    fn class(&self) -> &'static str {
        match (self.grade(), self.standing) {
            (Some(Grade::Stop), _) => "field stop",
            (Some(Grade::Unusual), Standing::Preset) => "field unusual preset",
            (Some(Grade::Unusual), _) => "field unusual",
            (_, Standing::Preset) => "field preset",
            (_, Standing::ToFillIn) => "field to-fill-in",
            _ => "field",
        }
    }
}

/// A box for the number of `field`, with label, unit, the other basis of a moisture, and what was
/// found about it.
pub fn number(field: Field) -> View {
    let state = state();
    let key = field.key();
    let id = format!("field-{key}");
    let (aside_id, says_id) = (format!("{id}-aside"), format!("{id}-says"));
    let described = format!("{aside_id} {says_id}");
    let shown = state.cell(move || Shown::of(state, field));
    let kind = state.cell(move || state.draft.with(|draft| draft.kind(field)));
    let unit = state.cell(move || state.draft.with(|draft| state.unit(draft.kind(field))));
    let name = state.cell(move || state.draft.with(|draft| (state.words.field_name)(field, draft)));
    let next = key.clone();
    el("div")
        .class(move || shown.with(Shown::class))
        .child(
            el("label")
                .set("for", id.clone())
                .set("title", move || shown.with(|shown| shown.words.hint))
                .child(move || shown.with(|shown| shown.words.label))
                .child(
                    el("span")
                        .class("unit-named")
                        .child(move || in_brackets(&unit_shown(unit.get(), &state.currency.get()))),
                ),
        )
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
                        .set("aria-invalid", move || {
                            shown.with(|shown| (shown.grade() == Some(Grade::Stop)).then_some("true"))
                        })
                        .property("value", move || shown.with(|shown| shown.text.clone()))
                        .on("input", move |event| {
                            state.enter(
                                Some(Session::Field(field)),
                                field,
                                &event_target_value(&event),
                                unit.get_untracked(),
                            );
                        })
                        .on("change", move |_| state.leave())
                        .on_key(move |event| {
                            if event.key() == "Enter" {
                                page::focus_after(&next);
                            }
                        }),
                )
                .child(unit_choice(state, name, &id, kind, unit)),
        )
        .child(el("p").class("aside").set("id", aside_id).child(move || shown.with(|shown| beside(state, shown))))
        .child(el("div").class("says").set("id", says_id).child(move || shown.with(|shown| told(state, field, shown))))
        .view()
}

fn standing(draft: &Draft, field: Field) -> Standing {
    let Some(entry) = draft.entry(field) else { return Standing::Blank };
    match (entry.is_blank(), entry.preset) {
        (false, true) => Standing::Preset,
        (false, false) => Standing::Typed,
        (true, _) if limit_of(draft, field).optional => Standing::Blank,
        (true, true) => Standing::ToFillIn,
        (true, false) => Standing::Typed,
    }
}

/// What a typed unit was read as, or the other basis of a moisture.
fn aside(state: State, draft: &Draft, field: Field, units: &Units) -> String {
    let show = |amount, unit: Unit| format!("{}\u{a0}{}", format::amount(amount, unit, units.mark), unit.symbol());
    let read = read_as(draft, field, units)
        .map(|amount| format!("{} {}", state.words.tools.read_as, show(amount, units.unit(amount.kind))));
    let basis = other_basis(draft, field, units).map(|(amount, unit)| format!("= {}", show(amount, unit)));
    match (read, basis) {
        (Some(read), Some(basis)) => format!("{read} {basis}"),
        (read, basis) => read.or(basis).unwrap_or_default(),
    }
}

/// The line below the box: how the entry is meant, and its other readings.
fn beside(state: State, shown: &Shown) -> View {
    let (class, words) = match shown.standing {
        Standing::Preset if shown.neutral => ("mark-preset", state.words.tools.neutral),
        Standing::Preset => ("mark-preset", state.words.tools.preset),
        Standing::ToFillIn => ("mark-to-fill-in", state.words.tools.to_fill_in),
        Standing::Blank => ("mark-optional", state.words.tools.optional),
        Standing::Typed => ("", ""),
    };
    many([
        ((!words.is_empty()).then(|| el("span").class(class).child(words))).view(),
        ((!shown.aside.is_empty()).then(|| el("span").child(shown.aside.clone()))).view(),
    ])
    .view()
}

/// The finding in words, with a button for each entry that may have been meant.
fn told(state: State, field: Field, shown: &Shown) -> Option<View> {
    let said = shown.said.clone()?;
    let button = move |offer: Suggestion| {
        let unit = if offer.has_unit { String::new() } else { format!("\u{a0}{}", offer.unit.symbol()) };
        let words = format!("{}: {}{unit}", state.words.tools.use_this, offer.text);
        let put = move || {
            state.enter(None, field, &offer.text, offer.unit);
            page::focus_field(&field.key());
        };
        button().class("offer").on_click(put).child(words)
    };
    let offers = shown.offers.iter().cloned().map(button).collect::<View>();
    Some(many([says(said).view(), offers.view()]).view())
}

/// The unit beside the box of that name: to choose where there are several.
pub fn unit_choice(state: State, name: Signal<String>, id: &str, kind: Signal<Kind>, unit: Signal<Unit>) -> View {
    let several = move || kind.get().units().count() > 1;
    let symbol = move |unit: Unit| unit_shown(unit, &state.currency.get()).into_owned();
    let id = format!("{id}-unit");
    let choice = move || {
        if !several() {
            return el("span").class("unit").set("aria-hidden", "true").child(move || symbol(unit.get())).view();
        }
        let name = memo(move || format!("{} {}", state.words.tools.unit_of, name.with(|name| lower_first(name))));
        let choices = memo(move || kind.get().units().map(|unit| (unit.symbol().to_owned(), symbol(unit))).collect());
        let now = memo(move || unit.get().symbol().to_owned());
        let choose = Callback::new(move |symbol: String| {
            if let Some(unit) = Unit::from_symbol(&symbol) {
                state.settings.update(|settings| settings.units.choose(kind.get_untracked(), unit));
            }
        });
        choice::select(id.clone(), name, choices, now, choose)
    };
    el("div").class("unit-choice").child(choice).view()
}

/// A name within a phrase; one that begins with two capitals is an abbreviation and stays.
fn lower_first(name: &str) -> String {
    match name.chars().nth(1) {
        Some(second) if !second.is_uppercase() => text::lower_first(name),
        _ => name.to_owned(),
    }
}

/// A unit behind a label.
#[must_use]
pub fn in_brackets(unit: &str) -> String {
    if unit.is_empty() { String::new() } else { format!(" ({unit})") }
}
