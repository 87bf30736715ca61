//! What is chosen for the whole app: system of units at once, and behind a button the rest.

use crate::quantity::format::DecimalMark;
use crate::quantity::kind::UnitSystem;
use crate::quantity::{Kind, Unit};
use crate::record::Settings;
use crate::record::content::settings::{Language, Theme};
use crate::ui::components::{Choice, ChoiceOption, TextBox};
use crate::ui::persistence;
use crate::ui::state::State;
use crate::ui::text::words;
use crate::{label, t};
use leptos::prelude::*;

/// Of a currency's symbol and of a person's initials, in characters.
const LONGEST_SIGN: usize = 8;

/// Metric or US customary, all at once.
#[component]
pub fn SystemChoice() -> impl IntoView {
    let all = [("metric", UnitSystem::Metric), ("us", UnitSystem::Us)];
    let option = |(value, system)| ChoiceOption::new(value, words::system(system));
    view! {
        <SettingChoice
            id="system"
            name=t!("frame-units")
            labelled=false
            options=all.map(option).to_vec()
            read=|settings| if settings.units.system == UnitSystem::Us { "us" } else { "metric" }
            write=|settings, value| {
                settings.units.set_system(if value == "us" { UnitSystem::Us } else { UnitSystem::Metric });
            }
        />
    }
}

/// What is behind the button.
#[component]
pub fn Preferences() -> impl IntoView {
    let state = expect_context::<State>();
    let languages = Language::ALL.iter().map(|language| match (language.code(), language.own_name()) {
        (Some(code), Some(name)) => ChoiceOption::new(code, name),
        _ => ChoiceOption::new("browser", t!("common-language-browser")),
    });
    let languages: Vec<_> = languages.collect();
    let language =
        Memo::new(move |_| state.settings.with(|settings| settings.language.code().unwrap_or("browser").to_owned()));
    let speak = Callback::new(move |value: String| {
        let chosen = Language::ALL.iter().find(|language| language.code() == Some(value.as_str()));
        persistence::speak(state, chosen.copied().unwrap_or_default());
    });
    let bases = Kind::Moisture.units().map(|unit| ChoiceOption::new(unit.symbol(), moisture_words(unit))).collect();
    view! {
        <Choice id="language" labelled=true name=t!("common-language") options=languages value=language on_choose=speak/>
        <SettingChoice
            id="decimal-mark"
            name=t!("frame-decimal-mark")
            options=vec![
                ChoiceOption::new("point", t!("frame-decimal-point")),
                ChoiceOption::new("comma", t!("frame-decimal-comma")),
            ]
            read=|settings| if settings.units.mark == DecimalMark::Comma { "comma" } else { "point" }
            write=|settings, value| {
                settings.units.mark = if value == "comma" { DecimalMark::Comma } else { DecimalMark::Point };
            }
        />
        // Of moistures among the results, and of boxes that have no basis of their own.
        <SettingChoice
            id="moisture-basis"
            name=t!("common-moisture-shown")
            options=bases
            read=|settings| settings.units.unit(Kind::Moisture).symbol()
            write=|settings, value| {
                if let Some(unit) = Unit::from_symbol(value) {
                    settings.units.choose(Kind::Moisture, unit);
                }
            }
        />
        <SettingChoice
            id="theme"
            name=t!("frame-theme")
            options=vec![
                ChoiceOption::new("system", t!("frame-theme-system")),
                ChoiceOption::new("light", t!("frame-theme-light")),
                ChoiceOption::new("dark", t!("frame-theme-dark")),
            ]
            read=|settings| match settings.theme {
                Theme::System => "system",
                Theme::Light => "light",
                Theme::Dark => "dark",
            }
            write=|settings, value| {
                settings.theme = match value {
                    "light" => Theme::Light,
                    "dark" => Theme::Dark,
                    _ => Theme::System,
                };
            }
        />
        <SettingText
            id="currency"
            label=label!("frame-currency")
            read=|settings| settings.currency.clone()
            write=|settings, text| settings.currency = text
        />
        <SettingText
            id="initials"
            label=label!("frame-initials")
            read=|settings| settings.initials.clone()
            write=|settings, text| settings.initials = text
        />
    }
}

fn moisture_words(unit: Unit) -> String {
    match unit {
        Unit::PercentWetBasis => t!("common-on-wet-basis"),
        _ => t!("common-on-dry-basis"),
    }
}

/// A setting with a few values.
#[component]
fn SettingChoice(
    /// Its id.
    id: &'static str,
    /// What it is called.
    #[prop(into)]
    name: String,
    /// Whether that is above it.
    #[prop(default = true)]
    labelled: bool,
    /// What is offered.
    options: Vec<ChoiceOption>,
    /// The value that is chosen.
    read: fn(&Settings) -> &'static str,
    /// Chooses another one.
    write: fn(&mut Settings, &str),
) -> impl IntoView {
    let state = expect_context::<State>();
    let value = Memo::new(move |_| state.settings.with(read).to_owned());
    let choose = Callback::new(move |value: String| state.settings.update(|settings| write(settings, &value)));
    view! { <Choice id=id name=name labelled=labelled options=options value=value on_choose=choose/> }
}

/// A setting of a few letters.
#[component]
fn SettingText(
    /// Its id.
    id: &'static str,
    /// What it is called.
    label: &'static str,
    /// The text.
    read: fn(&Settings) -> String,
    /// Puts another one in its place.
    write: fn(&mut Settings, String),
) -> impl IntoView {
    let state = expect_context::<State>();
    let value = Memo::new(move |_| state.settings.with(read));
    let put = Callback::new(move |text: String| state.settings.update(|settings| write(settings, text)));
    view! {
        <TextBox id=id label=label value=value longest=LONGEST_SIGN on_input=put on_leave=Callback::new(|()| {})/>
    }
}
