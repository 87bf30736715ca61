//! What is chosen for the whole app: system of units at once, and behind a button the rest.

use crate::quantity::format::DecimalMark;
use crate::quantity::kind::System;
use crate::record::settings::Theme;
use crate::ui::erased::{derive, on, prop};
use crate::ui::field::choice::{Choice, labelled, select};
use crate::ui::state::state;
use leptos::prelude::*;

/// The system of units in sight, the others folded away.
pub fn preferences() -> AnyView {
    let state = state();
    let tools = &state.words.tools;
    view! {
        <div class="preferences">
            {system()}
            <details class="fold">
                <summary>{tools.settings}</summary>
                <div class="sheet-of-settings">{mark()} {theme()} {currency()} {initials()}</div>
            </details>
        </div>
    }
    .into_any()
}

/// A choice for the whole app: what it is called, what is offered, and what is chosen.
struct Asked {
    id: &'static str,
    label: &'static str,
    choices: Vec<(&'static str, &'static str)>,
}

impl Asked {
    fn choices(&self) -> Signal<Vec<Choice>> {
        let choices: Vec<Choice> =
            self.choices.iter().map(|(value, words)| ((*value).to_owned(), (*words).to_owned())).collect();
        Signal::stored(choices)
    }
}

/// Metric or US customary, all at once.
fn system() -> AnyView {
    let state = state();
    let words = state.words;
    let asked = Asked {
        id: "system",
        label: words.tools.units,
        choices: vec![("metric", (words.system)(System::Metric)), ("us", (words.system)(System::Us))],
    };
    let now = derive(move || if state.units.get().system == System::Us { "us" } else { "metric" }.to_owned());
    let choose = Callback::new(move |value: String| {
        let system = if value == "us" { System::Us } else { System::Metric };
        state.settings.update(|settings| settings.units.set_system(system));
    });
    select(asked.id.to_owned(), Signal::stored(asked.label.to_owned()), asked.choices(), now, choose)
}

fn mark() -> AnyView {
    let state = state();
    let tools = &state.words.tools;
    let asked = Asked {
        id: "decimal-mark",
        label: tools.decimal_mark,
        choices: vec![("point", tools.point), ("comma", tools.comma)],
    };
    let now = derive(move || if state.units.get().mark == DecimalMark::Comma { "comma" } else { "point" }.to_owned());
    let choose = Callback::new(move |value: String| {
        let mark = if value == "comma" { DecimalMark::Comma } else { DecimalMark::Point };
        state.settings.update(|settings| settings.units.mark = mark);
    });
    labelled(asked.id.to_owned(), Signal::stored(asked.label.to_owned()), asked.choices(), now, choose)
}

fn theme() -> AnyView {
    let state = state();
    let tools = &state.words.tools;
    let asked = Asked {
        id: "theme",
        label: tools.theme,
        choices: vec![("system", tools.theme_system), ("light", tools.theme_light), ("dark", tools.theme_dark)],
    };
    let now = derive(move || {
        match state.settings.with(|settings| settings.theme) {
            Theme::System => "system",
            Theme::Light => "light",
            Theme::Dark => "dark",
        }
        .to_owned()
    });
    let choose = Callback::new(move |value: String| {
        let theme = match value.as_str() {
            "light" => Theme::Light,
            "dark" => Theme::Dark,
            _ => Theme::System,
        };
        state.settings.update(|settings| settings.theme = theme);
    });
    labelled(asked.id.to_owned(), Signal::stored(asked.label.to_owned()), asked.choices(), now, choose)
}

fn currency() -> AnyView {
    let state = state();
    short_text(
        "currency",
        state.words.tools.currency,
        state.currency.into(),
        Callback::new(move |text: String| {
            state.settings.update(|settings| settings.currency = text);
        }),
    )
}

fn initials() -> AnyView {
    let state = state();
    let now = derive(move || state.settings.with(|settings| settings.initials.clone()));
    short_text(
        "initials",
        state.words.tools.initials,
        now,
        Callback::new(move |text: String| {
            state.settings.update(|settings| settings.initials = text);
        }),
    )
}

fn short_text(id: &'static str, label: &'static str, now: Signal<String>, put: Callback<String>) -> AnyView {
    view! {
        <div class="field">
            <label for=id>{label}</label>
            <div class="box">
                <input
                    id=id
                    type="text"
                    maxlength="8"
                    autocomplete="off"
                    prop:value=prop(move || now.get())
                    on:input=on(move |event| put.run(event_target_value(&event)))
                />
            </div>
        </div>
    }
    .into_any()
}
