//! What is chosen for the whole app: system of units at once, and behind a button the rest.

use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::*;
use crate::quantity::format::DecimalMark;
use crate::quantity::kind::UnitSystem;
use crate::quantity::{Kind, Unit};
use crate::record::content::settings::Theme;
use crate::t;
use crate::ui::field::choice::{Choice, labelled, select};
use crate::ui::signal::{Signal, memo};
use crate::ui::state::state;

/// What is behind the button.
pub fn others() -> View {
    many([mark(), moisture(), theme(), currency(), initials()]).view()
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
pub fn system() -> View {
    let state = state();
    let words = state.words;
    let asked = Asked {
        id: "system",
        label: words.tools.units,
        choices: vec![("metric", (words.system)(UnitSystem::Metric)), ("us", (words.system)(UnitSystem::Us))],
    };
    let now = memo(move || if state.units.get().system == UnitSystem::Us { "us" } else { "metric" }.to_owned());
    let choose = Callback::new(move |value: String| {
        let system = if value == "us" { UnitSystem::Us } else { UnitSystem::Metric };
        state.settings.update(|settings| settings.units.set_system(system));
    });
    select(asked.id.to_owned(), Signal::stored(asked.label.to_owned()), asked.choices(), now, choose)
}

fn mark() -> View {
    let state = state();
    let tools = &state.words.tools;
    let asked = Asked {
        id: "decimal-mark",
        label: tools.decimal_mark,
        choices: vec![("point", tools.point), ("comma", tools.comma)],
    };
    let now = memo(move || if state.units.get().mark == DecimalMark::Comma { "comma" } else { "point" }.to_owned());
    let choose = Callback::new(move |value: String| {
        let mark = if value == "comma" { DecimalMark::Comma } else { DecimalMark::Point };
        state.settings.update(|settings| settings.units.mark = mark);
    });
    labelled(asked.id.to_owned(), Signal::stored(asked.label.to_owned()), asked.choices(), now, choose)
}

/// The basis that moistures among the results are shown on, and boxes that have none of their own.
fn moisture() -> View {
    let state = state();
    let words = |unit: Unit| match unit {
        Unit::PercentWetBasis => t!("common-on-wet-basis"),
        _ => t!("common-on-dry-basis"),
    };
    let choices = Kind::Moisture.units().map(|unit| (unit.symbol().to_owned(), words(unit))).collect::<Vec<Choice>>();
    let now = memo(move || state.unit(Kind::Moisture).symbol().to_owned());
    let choose = Callback::new(move |symbol: String| {
        if let Some(unit) = Unit::from_symbol(&symbol) {
            state.settings.update(|settings| settings.units.choose(Kind::Moisture, unit));
        }
    });
    let label = Signal::stored(t!("common-moisture-shown"));
    labelled("moisture-basis".to_owned(), label, Signal::stored(choices), now, choose)
}

fn theme() -> View {
    let state = state();
    let tools = &state.words.tools;
    let asked = Asked {
        id: "theme",
        label: tools.theme,
        choices: vec![("system", tools.theme_system), ("light", tools.theme_light), ("dark", tools.theme_dark)],
    };
    let now = memo(move || {
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

fn currency() -> View {
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

fn initials() -> View {
    let state = state();
    let now = memo(move || state.settings.with(|settings| settings.initials.clone()));
    short_text(
        "initials",
        state.words.tools.initials,
        now,
        Callback::new(move |text: String| {
            state.settings.update(|settings| settings.initials = text);
        }),
    )
}

fn short_text(id: &'static str, label: &'static str, now: Signal<String>, put: Callback<String>) -> View {
    el("div")
        .class("field")
        .child(el("label").set("for", id).child(label))
        .child(
            el("div").class("box").child(
                el("input")
                    .set("id", id)
                    .set("type", "text")
                    .set("maxlength", "8")
                    .set("autocomplete", "off")
                    .property("value", move || now.get())
                    .on("input", move |event| put.run(event_target_value(&event))),
            ),
        )
        .view()
}
