//! A caution in words.

use crate::domain::Caution;
use crate::ui::state::state;
use leptos::prelude::*;

/// Cautions with what they are about, what can happen and what to do, and the rule that goes before
/// all of them. Nothing where there are none.
pub fn list(cautions: Vec<Caution>) -> Option<AnyView> {
    let state = state();
    let told = move |caution: Caution| {
        let words = (state.words.caution)(caution);
        view! {
            <li>
                <h3>{words.title}</h3>
                <p>{words.text}</p>
                {(!words.limits.is_empty()).then(|| view! { <p class="note">{words.limits}</p> })}
            </li>
        }
    };
    (!cautions.is_empty()).then(|| {
        view! {
            <div class="cautions">
                <ul>{cautions.into_iter().map(told).collect_view()}</ul>
                <p class="note">{state.words.tools.caution_rule}</p>
            </div>
        }
        .into_any()
    })
}
