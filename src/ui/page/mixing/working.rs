//! How figures are computed, folded: what each is, formula and numbers, result.

use crate::t;
use leptos::prelude::*;

/// One figure.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ResultRow {
    /// `data-figure` on the page; none where the figure is shown elsewhere.
    pub key: &'static str,
    /// What it is, with its basis.
    pub label: String,
    /// The number with its unit.
    pub value: String,
    /// Formula and numbers, or the source; blank where there is nothing to say.
    pub worked: String,
}

impl ResultRow {
    /// A figure.
    pub const fn new(key: &'static str, label: String, value: String, worked: String) -> Self {
        Self { key, label, value, worked }
    }
}

/// "concentration · solution = 20 % · 100.0 kg"
pub fn worked(formula: String, numbers: &str) -> String {
    format!("{formula} = {numbers}")
}

/// The fold with the table.
#[component]
pub fn WorkingTable(
    /// The id of the fold.
    id: &'static str,
    /// The figures.
    #[prop(into)]
    rows: Signal<Vec<ResultRow>>,
) -> impl IntoView {
    view! {
        <details class="fold-section" id=id>
            <summary><h3>{t!("mixing-working")}</h3></summary>
            <ResultTable rows=rows/>
        </details>
    }
}

/// The table by itself.
#[component]
pub fn ResultTable(
    /// The figures.
    #[prop(into)]
    rows: Signal<Vec<ResultRow>>,
) -> impl IntoView {
    let row = |ResultRow { key, label, value, worked }: ResultRow| {
        view! {
            <tr>
                <th scope="row" class="l">{label}</th>
                <td data-figure=(!key.is_empty()).then_some(key)>{value}</td>
                <td class="l note">{worked}</td>
            </tr>
        }
    };
    view! {
        <table class="results worked" aria-label=t!("mixing-working")>
            <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
        </table>
    }
}
