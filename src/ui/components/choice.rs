//! A choice among a few, as a select.

use leptos::prelude::*;

/// One thing to choose: what represents it, and its words.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct ChoiceOption {
    /// What represents it.
    pub value: String,
    /// Its words.
    pub words: String,
}

impl ChoiceOption {
    /// A choice.
    pub fn new(value: impl Into<String>, words: impl Into<String>) -> Self {
        Self { value: value.into(), words: words.into() }
    }
}

/// A select. Without a label in sight, `name` is its name.
#[component]
pub fn Choice(
    /// Its id.
    #[prop(into)]
    id: String,
    /// Its name.
    #[prop(into)]
    name: Signal<String>,
    /// Whether its name is above it.
    #[prop(optional)]
    labelled: bool,
    /// What is offered.
    #[prop(into)]
    options: Signal<Vec<ChoiceOption>>,
    /// The value chosen.
    #[prop(into)]
    value: Signal<String>,
    /// Hears of another choice.
    on_choose: Callback<String>,
) -> impl IntoView {
    let label_for = id.clone();
    let offered = move || {
        let option = |ChoiceOption { value: own, words }: ChoiceOption| {
            let value_of = own.clone();
            view! { <option value=value_of prop:selected=move || value.with(|value| *value == own)>{words}</option> }
        };
        options.get().into_iter().map(option).collect_view()
    };
    view! {
        <div class="labelled">
            {labelled.then(|| view! { <label for=label_for>{move || name.get()}</label> })}
            <span class="entry-box">
                <select
                    id=id
                    aria-label=move || (!labelled).then(|| name.get())
                    on:change=move |event| on_choose.run(event_target_value(&event))
                >
                    {offered}
                </select>
            </span>
        </div>
    }
}
