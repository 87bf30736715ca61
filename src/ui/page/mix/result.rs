//! Results: label, number with unit, and how it came about.

use crate::browser::element::{Part, View, el};

/// One result.
pub struct ResultLine {
    /// `data-figure` on the page.
    pub key: &'static str,
    /// What it is, with its basis.
    pub label: &'static str,
    /// The number with its unit.
    pub value: String,
    /// Formula and numbers, or nothing.
    pub worked: String,
}

/// A list of results.
pub fn list(lines: impl IntoIterator<Item = ResultLine>) -> View {
    let line = |ResultLine { key, label, value, worked }: ResultLine| {
        el("div").class("figure").child(el("dt").child(label)).child(
            el("dd")
                .child(el("span").class("value").set("data-figure", key).child(value))
                .child((!worked.is_empty()).then(|| el("p").class("worked").child(worked))),
        )
    };
    el("dl").class("figures").child(lines.into_iter().map(line).collect::<View>()).view()
}

/// "concentration · solution = 20 % · 100.0 kg"
pub fn worked(formula: &str, numbers: &str) -> String {
    format!("{formula} = {numbers}")
}
