//! Finds a recipe, a page, a station or a field by its name, from the keyboard.

use super::search::{Goal, Hit, go, search};
use crate::t;
use crate::ui::state::State;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The box with its list, a combobox as the WAI-ARIA practices describe it.
#[component]
pub fn Find() -> impl IntoView {
    let state = expect_context::<State>();
    let query = RwSignal::new(String::new());
    let open = RwSignal::new(false);
    let at = RwSignal::new(0_usize);
    let hits = Memo::new(move |_| if open.get() { query.with(|query| search(state, query)) } else { Vec::new() });
    let is_empty = Memo::new(move |_| hits.with(Vec::is_empty));
    let close = move || {
        open.set(false);
        query.set(String::new());
        at.set(0);
    };
    let follow = move |goal: Goal| {
        close();
        go(state, goal);
    };
    let keys = move |event: KeyboardEvent| {
        let count = hits.with_untracked(Vec::len);
        match event.key().as_str() {
            "ArrowDown" if count > 0 => at.update(|at| *at = (*at + 1) % count),
            "ArrowUp" if count > 0 => at.update(|at| *at = (*at + count - 1) % count),
            "Enter" => {
                let goal = hits.with_untracked(|hits| hits.get(at.get_untracked()).map(|hit| hit.goal));
                if let Some(goal) = goal {
                    follow(goal);
                }
            }
            "Escape" => close(),
            _ => return,
        }
        event.prevent_default();
    };
    let typed = move |event| {
        query.set(event_target_value(&event));
        at.set(0);
        open.set(true);
    };
    let option = move |(place, hit): (usize, Hit)| {
        view! {
            <li
                id=format!("hit-{place}")
                role="option"
                aria-selected=move || if at.get() == place { "true" } else { "false" }
                on:mousedown=move |event| {
                    // Before the box loses the focus and the list closes.
                    event.prevent_default();
                    follow(hit.goal);
                }
            >
                <span>{hit.name}</span>
                <span class="note">{hit.place}</span>
            </li>
        }
    };
    let nothing = Memo::new(move |_| open.get() && query.with(|query| !query.trim().is_empty()) && is_empty.get());
    view! {
        <div class="find">
            <input
                id="find"
                type="text"
                role="combobox"
                autocomplete="off"
                spellcheck="false"
                aria-label=t!("frame-find")
                aria-autocomplete="list"
                aria-controls="hits"
                aria-expanded=move || if is_empty.get() { "false" } else { "true" }
                aria-activedescendant=move || (!is_empty.get()).then(|| format!("hit-{}", at.get()))
                placeholder=format!("{}…  /", t!("frame-find"))
                prop:value=move || query.get()
                on:input=typed
                on:keydown=keys
                on:blur=move |_| close()
            />
            <ul id="hits" role="listbox" aria-label=t!("frame-find-hint") hidden=move || is_empty.get()>
                {move || hits.get().into_iter().enumerate().map(option).collect_view()}
            </ul>
            <p class="nothing" role="status" hidden=move || !nothing.get()>
                {move || nothing.get().then(|| t!("frame-nothing-found"))}
            </p>
        </div>
    }
}
