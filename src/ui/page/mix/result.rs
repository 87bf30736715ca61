//! Results: label, number with unit, and how it came about.

use leptos::prelude::*;

/// One result.
pub struct Line {
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
pub fn list(lines: impl IntoIterator<Item = Line>) -> AnyView {
    let line = |Line { key, label, value, worked }: Line| {
        view! {
            <div class="figure">
                <dt>{label}</dt>
                <dd>
                    <span class="value" data-figure=key>{value}</span>
                    {(!worked.is_empty()).then(|| view! { <p class="worked">{worked}</p> })}
                </dd>
            </div>
        }
    };
    view! { <dl class="figures">{lines.into_iter().map(line).collect_view()}</dl> }.into_any()
}

/// "concentration · solution = 20 % · 100.0 kg"
pub fn worked(formula: &str, numbers: &str) -> String {
    format!("{formula} = {numbers}")
}
