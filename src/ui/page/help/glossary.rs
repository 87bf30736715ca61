//! The terms of the app with what each means.

use super::terms;
use crate::t;
use leptos::prelude::*;

/// The terms by area.
#[component]
pub fn Glossary() -> impl IntoView {
    let areas = [
        (t!("help-terms-general"), t!("help-terms-general-list")),
        (t!("help-terms-board"), t!("help-terms-board-list")),
        (t!("help-terms-line"), t!("help-terms-line-list")),
        (t!("help-terms-bench"), t!("help-terms-bench-list")),
        (t!("help-terms-compare"), t!("help-terms-compare-list")),
    ];
    let term = |(term, meaning): (String, String)| view! { <div><dt>{term}</dt><dd>{meaning}</dd></div> };
    let area = move |(title, text): (String, String)| {
        view! {
            <h3>{title}</h3>
            <dl class="terms">{terms(&text).into_iter().map(term).collect_view()}</dl>
        }
    };
    areas.into_iter().map(area).collect_view()
}
