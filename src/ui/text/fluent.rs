//! Words in Fluent resources (Fluent syntax 1.0), one file an area under `en/`.
//!
//! Why `fluent-bundle` itself: `leptos-fluent` brings macros and a loader of its own for what are two functions
//! here, and `i18n-embed-fl` checks at compile time but not for messages that nothing asks for. A test
//! (`tests/text/fluent.rs`) reads every `t!` of the code and checks both ways. Numbers and units are formatted by
//! [`crate::quantity::format`] and handed in as text.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::sync::LazyLock;

/// The resources of English, by file name.
pub const ENGLISH_RESOURCES: &[(&str, &str)] = &[
    ("bench.ftl", include_str!("en/bench.ftl")),
    ("common.ftl", include_str!("en/common.ftl")),
    ("compare.ftl", include_str!("en/compare.ftl")),
    ("help.ftl", include_str!("en/help.ftl")),
    ("library.ftl", include_str!("en/library.ftl")),
    ("line.ftl", include_str!("en/line.ftl")),
    ("line_catch.ftl", include_str!("en/line_catch.ftl")),
    ("line_change.ftl", include_str!("en/line_change.ftl")),
    ("line_check.ftl", include_str!("en/line_check.ftl")),
    ("line_tanks.ftl", include_str!("en/line_tanks.ftl")),
    ("mixing.ftl", include_str!("en/mixing.ftl")),
    ("paper.ftl", include_str!("en/paper.ftl")),
    ("recipe.ftl", include_str!("en/recipe.ftl")),
    ("trial.ftl", include_str!("en/trial.ftl")),
];

static ENGLISH: LazyLock<FluentBundle<FluentResource>> = LazyLock::new(|| {
    let mut bundle = FluentBundle::new_concurrent(vec!["en".parse().unwrap_or_default()]);
    // The marks that isolate a variable's direction would stand in names, titles and files.
    bundle.set_use_isolating(false);
    for (_, text) in ENGLISH_RESOURCES {
        // What cannot be parsed is left out; a test checks that nothing is.
        let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(partial, _)| partial);
        bundle.add_resource_overriding(resource);
    }
    bundle
});

/// The message `id` with its variables; the id itself where there is no such message.
#[must_use]
pub fn message(id: &str, variables: &[(&'static str, FluentValue<'_>)]) -> String {
    let Some(pattern) = ENGLISH.get_message(id).and_then(|message| message.value()) else { return id.to_owned() };
    let args: FluentArgs<'_> = variables.iter().cloned().collect();
    ENGLISH.format_pattern(pattern, Some(&args), &mut Vec::new()).into_owned()
}

/// The message with an id that is written out, and its variables: `t!("recipe-totals", count = 3)`.
#[macro_export]
macro_rules! t {
    ($id:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::ui::text::fluent::message(
            $id,
            &[$((stringify!($name), ::fluent_bundle::FluentValue::from($value))),*],
        )
    };
}
pub use t;
