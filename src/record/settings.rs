//! What the user has chosen for the app as a whole.

use super::refusal::{self, Refusal};
use super::sealed::{Extra, own_keys};
use super::shape;
use super::summary::Order;
use crate::quantity::format::DecimalMark;
use crate::quantity::kind::System;
use crate::quantity::{Kind, Unit, Units};
use serde_json::Value;

/// The format version of the settings.
const VERSION: u32 = 1;
/// The key `haulm` of their text.
const KIND: &str = "settings";
/// The longest text that is read, in bytes.
const LARGEST: usize = 100_000;

/// Light or dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Theme {
    /// As the device says.
    #[default]
    System,
    /// Light.
    Light,
    /// Dark.
    Dark,
}

impl Theme {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [Theme] = &[Self::System, Self::Light, Self::Dark];
}

impl Theme {
    /// The stable key of the theme.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::System => "system",
            Self::Light => "light",
            Self::Dark => "dark",
        }
    }
}

/// The settings. One that is missing or means nothing here is the usual one; keys that this app does
/// not know are written back as they were.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Settings {
    /// The units that numbers are typed and shown in, and the decimal mark.
    pub units: Units,
    /// What stands for the money in prices and costs.
    pub currency: String,
    /// Light or dark.
    pub theme: Theme,
    /// The user's initials, put on every save.
    pub initials: String,
    /// How the shelf is sorted.
    pub order: Order,
    /// When the last copy of the shelf went to a file: milliseconds since 1970-01-01 00:00 UTC.
    pub copied_at: Option<u64>,
    /// Keys that this app does not know.
    pub extra: Extra,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            units: Units::default(),
            currency: "€".to_owned(),
            theme: Theme::System,
            initials: String::new(),
            order: Order::Newest,
            copied_at: None,
            extra: Extra::new(),
        }
    }
}

// By hand rather than by serde's derive: each setting is read for itself, so that one with a strange
// value does not take the others with it, and it is a third of the code.
impl Settings {
    /// Their text in the store.
    ///
    /// # Errors
    /// When they have no JSON form. None lack one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        let mut fields = self.extra.clone();
        let known: [(&str, Value); 6] = [
            ("units", written(&self.units)),
            ("currency", self.currency.as_str().into()),
            ("theme", self.theme.key().into()),
            ("initials", self.initials.as_str().into()),
            ("order", self.order.key().into()),
            ("copied_at", self.copied_at.map_or(Value::Null, Value::from)),
        ];
        own_keys(&mut fields, KIND, VERSION, object(known));
        Ok(Value::from(fields).to_string())
    }

    /// Reads a stored text.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let read: Value = refusal::read(text, LARGEST, KIND, VERSION, |_, text| shape::read(text))?;
        let Value::Object(mut fields) = read else { return Err(Refusal::Foreign) };
        let mut take = |key: &str| fields.remove(key).unwrap_or_default();
        drop((take("haulm"), take("version")));
        let usual = Self::default();
        let (units, theme, order) = (take("units"), take("theme"), take("order"));
        Ok(Self {
            units: units_of(&units),
            currency: text_of(take("currency")).unwrap_or(usual.currency),
            theme: Theme::ALL.iter().copied().find(|known| theme == known.key()).unwrap_or_default(),
            initials: text_of(take("initials")).unwrap_or_default(),
            order: Order::ALL.iter().copied().find(|known| order == known.key()).unwrap_or_default(),
            copied_at: take("copied_at").as_u64(),
            extra: fields,
        })
    }
}

fn text_of(value: Value) -> Option<String> {
    if let Value::String(text) = value { Some(text) } else { None }
}

fn object<const N: usize>(fields: [(&str, Value); N]) -> Value {
    let mut object = Extra::new();
    for (key, value) in fields {
        object.insert(key.to_owned(), value);
    }
    Value::Object(object)
}

/// Units as they are stored: words, so that a file from another version still says most of it.
fn written(units: &Units) -> Value {
    let mut own = Extra::new();
    for (kind, unit) in units.chosen() {
        own.insert(kind.key().to_owned(), unit.symbol().into());
    }
    let system = match units.system {
        System::Metric => "metric",
        System::Us => "us",
    };
    let mark = match units.mark {
        DecimalMark::Point => "point",
        DecimalMark::Comma => "comma",
    };
    object([("system", system.into()), ("mark", mark.into()), ("units", Value::Object(own))])
}

/// Words that are not known here fall back to the default, one by one.
fn units_of(value: &Value) -> Units {
    let says = |key: &str, word: &str| value.get(key).and_then(Value::as_str) == Some(word);
    let mut units = Units::default();
    units.set_system(if says("system", "us") { System::Us } else { System::Metric });
    units.mark = if says("mark", "comma") { DecimalMark::Comma } else { DecimalMark::Point };
    for kind in Kind::ALL {
        let symbol = value.get("units").and_then(|own| own.get(kind.key())).and_then(Value::as_str);
        if let Some(unit) = symbol.and_then(Unit::from_symbol) {
            units.choose(*kind, unit);
        }
    }
    units
}
