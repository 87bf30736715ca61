//! Boxes for words.

use leptos::prelude::*;

/// A box for one line, with its label above it.
#[component]
pub fn TextBox(
    /// Its id.
    #[prop(into)]
    id: String,
    /// Its label.
    #[prop(into)]
    label: String,
    /// What it holds.
    #[prop(into)]
    value: Signal<String>,
    /// The longest text that it takes, in characters.
    longest: usize,
    /// A hint below it.
    #[prop(optional, into)]
    hint: String,
    /// Whether it hears of a text only when it is left, as where the text is taken apart.
    #[prop(optional)]
    when_left: bool,
    /// Hears of each change.
    on_input: Callback<String>,
    /// Hears when it is left.
    on_leave: Callback<()>,
) -> impl IntoView {
    let (label_for, hint_id) = (id.clone(), format!("{id}-hint"));
    let described = (!hint.is_empty()).then(|| hint_id.clone());
    let hint = (!hint.is_empty()).then(|| view! { <p class="also" id=hint_id>{hint}</p> });
    let input = move |event| {
        if !when_left {
            on_input.run(event_target_value(&event));
        }
    };
    // As in a number box, both may be gone with the page.
    let left = move |event| {
        if when_left {
            _ = on_input.try_run(event_target_value(&event));
        }
        _ = on_leave.try_run(());
    };
    view! {
        <div class="labelled">
            <label for=label_for>{label}</label>
            <span class="entry-box">
                <input
                    id=id
                    class="words"
                    type="text"
                    autocomplete="off"
                    maxlength=longest.to_string()
                    aria-describedby=described
                    prop:value=move || value.get()
                    on:input=input
                    on:change=left
                />
            </span>
            {hint}
        </div>
    }
}

/// A box for several lines, with its label above it.
#[component]
pub fn TextArea(
    /// Its id.
    id: &'static str,
    /// Its label.
    #[prop(into)]
    label: String,
    /// What it holds.
    #[prop(into)]
    value: Signal<String>,
    /// The longest text that it takes, in characters.
    longest: usize,
    /// Hears of each change.
    on_input: Callback<String>,
    /// Hears when it is left.
    on_leave: Callback<()>,
) -> impl IntoView {
    view! {
        <div class="labelled">
            <label for=id>{label}</label>
            <textarea
                id=id
                rows="2"
                maxlength=longest.to_string()
                prop:value=move || value.get()
                on:input=move |event| on_input.run(event_target_value(&event))
                on:change=move |_| _ = on_leave.try_run(())
            ></textarea>
        </div>
    }
}
