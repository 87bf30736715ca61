//! Words in Fluent resources (Fluent syntax 1.0): a folder a language, one file an area.
//!
//! English is part of the program. Another language is one file beside it, made of its folder by the build, fetched when it is chosen
//! and put in front of English by [`choose`]. A language is chosen once a start.
//!
//! Why `fluent-bundle` itself: `leptos-fluent` brings macros and a loader of its own for what are a few functions here, and
//! `i18n-embed-fl` checks at compile time but not for messages that nothing asks for. A test (`tests/text/fluent.rs`) reads every
//! macro of this file in the code and checks both ways, in all languages. Numbers and units are formatted by
//! [`crate::quantity::format`] and handed in as text.

use super::{FieldWords, FigureWords, Message};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use std::cell::RefCell;
use std::collections::BTreeMap;

/// The resources of English, by file name.
pub const ENGLISH_RESOURCES: &[(&str, &str)] = &[
    ("bench.ftl", include_str!("en/bench.ftl")),
    ("bench_findings.ftl", include_str!("en/bench_findings.ftl")),
    ("bench_words.ftl", include_str!("en/bench_words.ftl")),
    ("cautions.ftl", include_str!("en/cautions.ftl")),
    ("common.ftl", include_str!("en/common.ftl")),
    ("compare.ftl", include_str!("en/compare.ftl")),
    ("compare_words.ftl", include_str!("en/compare_words.ftl")),
    ("findings.ftl", include_str!("en/findings.ftl")),
    ("frame.ftl", include_str!("en/frame.ftl")),
    ("help.ftl", include_str!("en/help.ftl")),
    ("library.ftl", include_str!("en/library.ftl")),
    ("line.ftl", include_str!("en/line.ftl")),
    ("line_catch.ftl", include_str!("en/line_catch.ftl")),
    ("line_change.ftl", include_str!("en/line_change.ftl")),
    ("line_check.ftl", include_str!("en/line_check.ftl")),
    ("line_findings.ftl", include_str!("en/line_findings.ftl")),
    ("line_tanks.ftl", include_str!("en/line_tanks.ftl")),
    ("line_words.ftl", include_str!("en/line_words.ftl")),
    ("make_up.ftl", include_str!("en/make_up.ftl")),
    ("mixing.ftl", include_str!("en/mixing.ftl")),
    ("paper.ftl", include_str!("en/paper.ftl")),
    ("recipe.ftl", include_str!("en/recipe.ftl")),
    ("recipe_words.ftl", include_str!("en/recipe_words.ftl")),
    ("records.ftl", include_str!("en/records.ftl")),
    ("sources.ftl", include_str!("en/sources.ftl")),
    ("systems.ftl", include_str!("en/systems.ftl")),
    ("trial.ftl", include_str!("en/trial.ftl")),
];

/// The values of a message's variables.
pub type Variables<'a> = [(&'static str, FluentValue<'a>)];

/// What is said, and in which language.
struct Texts {
    /// BCP 47.
    code: String,
    /// In the order in which they are asked: the language that was chosen, then English.
    bundles: Vec<FluentBundle<FluentResource>>,
    /// Texts without variables that were asked for. A language is chosen once a start, so they are kept as long as the program runs.
    fixed: BTreeMap<String, &'static str>,
}

impl Texts {
    fn english() -> Self {
        let bundles = vec![bundle("en", ENGLISH_RESOURCES.iter().map(|(_, text)| (*text).to_owned()))];
        Self { code: "en".to_owned(), bundles, fixed: BTreeMap::new() }
    }

    /// The text with an id, or that of an attribute where the id has a point in it. `None` where there is no such text.
    fn say(&self, id: &str, variables: &Variables<'_>) -> Option<String> {
        let (message, attribute) = id.split_once('.').map_or((id, None), |(id, attribute)| (id, Some(attribute)));
        let (bundle, pattern) = self.bundles.iter().find_map(|bundle| {
            let message = bundle.get_message(message)?;
            let pattern = match attribute {
                Some(attribute) => message.get_attribute(attribute)?.value(),
                None => message.value()?,
            };
            Some((bundle, pattern))
        })?;
        let args: FluentArgs<'_> = variables.iter().cloned().collect();
        Some(bundle.format_pattern(pattern, Some(&args), &mut Vec::new()).into_owned())
    }
}

thread_local! {
    static TEXTS: RefCell<Texts> = RefCell::new(Texts::english());
}

fn bundle(code: &str, texts: impl Iterator<Item = String>) -> FluentBundle<FluentResource> {
    let mut bundle = FluentBundle::new(vec![code.parse().unwrap_or_default()]);
    // The marks that isolate a variable's direction would end up in names, titles and files.
    bundle.set_use_isolating(false);
    for text in texts {
        // What cannot be parsed is left out; a test checks that nothing is.
        let resource = FluentResource::try_new(text).unwrap_or_else(|(partial, _)| partial);
        bundle.add_resource_overriding(resource);
    }
    bundle
}

/// Speaks this language from now on, and English where it has no words. To be called before anything is said: what was said stays.
pub fn choose(code: &str, resource: String) {
    let mut texts = Texts::english();
    texts.code = code.to_owned();
    texts.bundles.insert(0, bundle(code, std::iter::once(resource)));
    TEXTS.set(texts);
}

/// The language that is spoken, BCP 47.
#[must_use]
pub fn code() -> String {
    TEXTS.with_borrow(|texts| texts.code.clone())
}

/// The message `id` with its variables; the id itself where there is no such message. Ask by [`t!`](crate::t).
#[must_use]
pub fn message(id: &str, variables: &Variables<'_>) -> String {
    TEXTS.with_borrow(|texts| texts.say(id, variables)).unwrap_or_else(|| id.to_owned())
}

/// A text without variables; the id itself where there is no such text. Ask by [`label!`](crate::label).
#[must_use]
pub fn fixed(id: &str) -> &'static str {
    fixed_or(id, id)
}

/// A text without variables, or another one where there is no such text.
fn fixed_or(id: &str, missing: &str) -> &'static str {
    TEXTS.with_borrow_mut(|texts| {
        if let Some(text) = texts.fixed.get(id) {
            return *text;
        }
        let text: &'static str = texts.say(id, &[]).unwrap_or_else(|| missing.to_owned()).leak();
        texts.fixed.insert(id.to_owned(), text);
        text
    })
}

/// Label and hint of a field. Ask by [`field!`](crate::field).
#[must_use]
pub fn field_words(id: &str) -> FieldWords {
    FieldWords { label: fixed(id), hint: fixed_or(&format!("{id}.hint"), "") }
}

/// Label and basis of a figure. Ask by [`figure!`](crate::figure).
#[must_use]
pub fn figure_words(id: &str) -> FigureWords {
    FigureWords { label: fixed(id), note: fixed_or(&format!("{id}.note"), "") }
}

/// What happened, and how to fix it. Ask by [`told!`](crate::told).
#[must_use]
pub fn message_with_fix(id: &str, variables: &Variables<'_>) -> Message {
    let fix = TEXTS.with_borrow(|texts| texts.say(&format!("{id}.fix"), variables)).unwrap_or_default();
    Message { what: message(id, variables), fix }
}

/// The message with an id that is written out, and its variables: `t!("recipe-totals", count = 3)`. An attribute of a message is asked
/// for by `t!("id.attribute")`.
#[macro_export]
macro_rules! t {
    ($id:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::ui::text::fluent::message(
            $id,
            &[$((stringify!($name), ::fluent_bundle::FluentValue::from($value))),*],
        )
    };
}

/// The message without variables, kept as long as the program runs: `label!("recipe-liquids")`.
#[macro_export]
macro_rules! label {
    ($id:literal) => {
        $crate::ui::text::fluent::fixed($id)
    };
}

/// Label and, as the attribute `.hint`, the hint of a field: `field!("field-board-density")`.
#[macro_export]
macro_rules! field {
    ($id:literal) => {
        $crate::ui::text::fluent::field_words($id)
    };
}

/// Label and, as the attribute `.note`, the basis of a figure: `figure!("figure-mat-weight")`.
#[macro_export]
macro_rules! figure {
    ($id:literal) => {
        $crate::ui::text::fluent::figure_words($id)
    };
}

/// What happened and, as the attribute `.fix`, how to fix it: `told!("finding-too-wet", moisture = text)`.
#[macro_export]
macro_rules! told {
    ($id:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::ui::text::fluent::message_with_fix(
            $id,
            &[$((stringify!($name), ::fluent_bundle::FluentValue::from($value))),*],
        )
    };
}

pub use {field, figure, label, t, told};
