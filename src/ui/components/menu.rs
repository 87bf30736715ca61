//! A button that opens a panel below it: further actions, or what belongs to one.

use crate::browser::page;
use leptos::ev::{self, FocusEvent, KeyboardEvent};
use leptos::prelude::*;

/// A button with a panel, which closes with Esc, with a press elsewhere, and when the focus leaves it.
#[component]
pub fn Menu(
    /// What the button says, and the name of the panel.
    #[prop(into)]
    label: String,
    /// A sign on the button in place of the label, which is then its name only.
    #[prop(optional)]
    sign: Option<&'static str>,
    /// The id of the panel; the button's has `-open` behind it.
    id: &'static str,
    /// What is in the panel. Made when it is opened.
    children: ChildrenFn,
) -> impl IntoView {
    let open = RwSignal::new(false);
    let button = format!("{id}-open");
    let opener = button.clone();
    let close = move |event: KeyboardEvent| {
        if event.key() == "Escape" && open.get_untracked() {
            event.stop_propagation();
            open.set(false);
            page::focus(&opener);
        }
    };
    let left = move |event: FocusEvent| {
        if page::leaves(&event) {
            open.set(false);
        }
    };
    let own = format!("[data-menu={id}]");
    let elsewhere = window_event_listener(ev::pointerdown, move |event| {
        if open.get_untracked() && page::is_outside(&event, &own) {
            open.set(false);
        }
    });
    on_cleanup(move || elsewhere.remove());
    let name = label.clone();
    view! {
        <div class="menu" data-menu=id on:keydown=close on:focusout=left>
            <button
                type="button"
                id=button
                class:bare=sign.is_some()
                aria-expanded=move || if open.get() { "true" } else { "false" }
                aria-controls=id
                aria-label=sign.map(|_| name.clone())
                on:click=move |_| open.update(|open| *open = !*open)
            >
                {sign.map_or(label, str::to_owned)}
            </button>
            <div class="menu-panel" id=id role="group" aria-label=name.clone() hidden=move || !open.get()>
                <Show when=move || open.get()>{children()}</Show>
            </div>
        </div>
    }
}
