//! Cautions in words.

use crate::domain::Caution;
use crate::t;
use crate::ui::text::words;
use leptos::prelude::*;

/// Each with what it is about, what can happen and what to do, and the rule that applies to all of them.
#[component]
pub fn Cautions(
    /// The cautions that apply.
    #[prop(into)]
    all: Signal<Vec<Caution>>,
) -> impl IntoView {
    let caution = move |caution| {
        let words = words::caution(caution);
        let limits = words.limits.into_iter().map(|limit| view! { <p class="note">{limit}</p> }).collect_view();
        view! { <li><h3>{words.title}</h3><p>{words.text}</p>{limits}</li> }
    };
    view! {
        <div class="cautions">
            <ul>{move || all.get().into_iter().map(caution).collect_view()}</ul>
            <p class="note">{t!("frame-caution-rule")}</p>
        </div>
    }
}
