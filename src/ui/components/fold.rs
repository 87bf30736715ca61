//! A section that is folded away until somebody opens it.

use leptos::prelude::*;

/// A fold with a heading. What is in it is made when it is first opened, and stays.
#[component]
pub fn Fold(
    /// The heading.
    #[prop(into)]
    title: String,
    /// What is in it, in a few words, beside the heading.
    #[prop(optional, into)]
    note: Signal<String>,
    /// Its id on the page.
    id: &'static str,
    /// Whether it is open at first.
    #[prop(optional)]
    open: bool,
    /// Whether what is in it is made at once, so that a link can lead there.
    #[prop(optional)]
    ready: bool,
    /// What is in it.
    children: ChildrenFn,
) -> impl IntoView {
    let opened = RwSignal::new(open || ready);
    view! {
        <details class="fold-section" id=id open=open on:toggle=move |_| opened.set(true)>
            <summary>
                <h2>{title}</h2>
                <span class="note">{move || note.get()}</span>
            </summary>
            <Show when=move || opened.get()>{children()}</Show>
        </details>
    }
}
