//! What the user has chosen for the app as a whole.

use crate::domain::trial::SheetDraft;
use crate::quantity::format::DecimalMark;
use crate::quantity::kind::UnitSystem;
use crate::quantity::{Kind, Unit, Units};
use crate::record::content::sealed::{Extra, Headed};
use crate::record::content::search::SortOrder;
use crate::record::refusal::{self, HEAD, Refusal};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use serde_json::Value;
use std::collections::BTreeMap;

/// The format version of the settings.
const VERSION: u32 = 1;
/// The key `haulm` of their text.
const KIND: &str = "settings";
/// The longest text that is read, in bytes.
const LARGEST: usize = 100_000;

/// Light or dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
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

/// The language of what the app says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
pub enum Language {
    /// As the browser says, English where the app does not speak its language.
    #[default]
    #[serde(rename = "browser")]
    Browser,
    /// English.
    #[serde(rename = "en")]
    English,
    /// German.
    #[serde(rename = "de")]
    German,
}

impl Language {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [Language] = &[Self::Browser, Self::English, Self::German];

    /// Its code (BCP 47), by which its folder of texts is called. `None` for the browser's.
    #[must_use]
    pub const fn code(self) -> Option<&'static str> {
        match self {
            Self::Browser => None,
            Self::English => Some("en"),
            Self::German => Some("de"),
        }
    }

    /// What its speakers call it. `None` for the browser's.
    #[must_use]
    pub const fn own_name(self) -> Option<&'static str> {
        match self {
            Self::Browser => None,
            Self::English => Some("English"),
            Self::German => Some("Deutsch"),
        }
    }

    /// What is spoken: what was chosen, or the nearest to the browser's language, such as "de-AT".
    #[must_use]
    pub fn spoken(self, browser: &str) -> Self {
        let main = browser.split('-').next().unwrap_or_default();
        let near = |each: &&Self| each.code().is_some_and(|code| main.eq_ignore_ascii_case(code));
        match self {
            Self::Browser => Self::ALL.iter().find(near).copied().unwrap_or(Self::English),
            chosen => chosen,
        }
    }
}

/// The settings. One that is missing or means nothing here is the usual one; keys that this app does
/// not know are written back as they were.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// The units that numbers are typed and shown in, and the decimal mark.
    #[serde(serialize_with = "write_units", deserialize_with = "read_units")]
    pub units: Units,
    /// The basis chosen for the moisture of single boxes, by the key of the field. Boxes without one follow `units`.
    #[serde(deserialize_with = "or_default", skip_serializing_if = "BTreeMap::is_empty")]
    pub bases: BTreeMap<String, Unit>,
    /// What stands for the money in prices and costs.
    #[serde(deserialize_with = "read_currency")]
    pub currency: String,
    /// The language.
    #[serde(deserialize_with = "or_default")]
    pub language: Language,
    /// Light or dark.
    #[serde(deserialize_with = "or_default")]
    pub theme: Theme,
    /// The user's initials, put on every save.
    #[serde(deserialize_with = "or_default")]
    pub initials: String,
    /// How the library is sorted.
    #[serde(deserialize_with = "or_default")]
    pub order: SortOrder,
    /// When the last copy of the library went to a file: milliseconds since 1970-01-01 00:00 UTC.
    #[serde(deserialize_with = "or_default")]
    pub copied_at: Option<u64>,
    /// The laboratory's balances, blender and spray, which every new trial begins with; none before somebody entered one.
    #[serde(deserialize_with = "or_default", skip_serializing_if = "Option::is_none")]
    pub lab: Option<SheetDraft>,
    /// Keys that this app does not know.
    #[serde(flatten)]
    pub extra: Extra,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            units: Units::default(),
            bases: BTreeMap::new(),
            currency: "€".to_owned(),
            language: Language::Browser,
            theme: Theme::System,
            initials: String::new(),
            order: SortOrder::default(),
            copied_at: None,
            lab: None,
            extra: Extra::new(),
        }
    }
}

impl Settings {
    /// Their text in the store.
    ///
    /// # Errors
    /// When they have no JSON form. None lack one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        Headed::new(KIND, VERSION, self).text()
    }

    /// Reads a stored text.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let mut settings: Self = refusal::read(text, LARGEST, KIND, VERSION)?;
        settings.extra.retain(|key, _| !HEAD.contains(&key.as_str()));
        Ok(settings)
    }
}

/// A value, or none where it means nothing here.
fn known<'de, D: Deserializer<'de>, T: DeserializeOwned>(from: D) -> Result<Option<T>, D::Error> {
    Ok(serde_json::from_value(Value::deserialize(from)?).ok())
}

/// A value, or the default where it means nothing here.
fn or_default<'de, D: Deserializer<'de>, T: DeserializeOwned + Default>(from: D) -> Result<T, D::Error> {
    Ok(known(from)?.unwrap_or_default())
}

fn read_currency<'de, D: Deserializer<'de>>(from: D) -> Result<String, D::Error> {
    Ok(known(from)?.unwrap_or_else(|| Settings::default().currency))
}

/// [`Units`] as they are stored: keys and symbols, so that a text of another version still says most of it.
#[derive(Default, Serialize, Deserialize)]
#[serde(default)]
struct StoredUnits<Own> {
    #[serde(deserialize_with = "or_default")]
    system: UnitSystem,
    #[serde(deserialize_with = "or_default")]
    mark: DecimalMark,
    /// The units chosen for single kinds.
    units: Own,
}

fn write_units<S: Serializer>(units: &Units, to: S) -> Result<S::Ok, S::Error> {
    let own: BTreeMap<Kind, Unit> = units.chosen().collect();
    StoredUnits { system: units.system, mark: units.mark, units: own }.serialize(to)
}

fn read_units<'de, D: Deserializer<'de>>(from: D) -> Result<Units, D::Error> {
    let stored: StoredUnits<Value> = or_default(from)?;
    let mut units = Units::default();
    units.set_system(stored.system);
    units.mark = stored.mark;
    // Kinds and units that are not known here are left out, one by one.
    for (kind, unit) in stored.units.as_object().into_iter().flatten() {
        if let (Ok(kind), Ok(unit)) = (serde_json::from_value(kind.as_str().into()), Unit::deserialize(unit)) {
            units.choose(kind, unit);
        }
    }
    Ok(units)
}
