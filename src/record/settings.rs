//! What the user has chosen for the app as a whole.

use super::refusal::{self, Refusal};
use super::sealed::Extra;
use super::summary::Order;
use crate::quantity::Units;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Deserializer, Serialize};

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

/// The settings. One that is missing or means nothing here is the usual one; keys that this app does
/// not know are written back as they were.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Settings {
    /// The units that numbers are typed and shown in, and the decimal mark.
    #[serde(deserialize_with = "lenient")]
    pub units: Units,
    /// What stands for the money in prices and costs.
    #[serde(deserialize_with = "currency")]
    pub currency: String,
    /// Light or dark.
    #[serde(deserialize_with = "lenient")]
    pub theme: Theme,
    /// The user's initials, put on every save.
    #[serde(deserialize_with = "lenient")]
    pub initials: String,
    /// How the shelf is sorted.
    #[serde(deserialize_with = "lenient")]
    pub order: Order,
    /// When the last copy of the shelf went to a file: milliseconds since 1970-01-01 00:00 UTC.
    #[serde(deserialize_with = "lenient")]
    pub copied_at: Option<u64>,
    /// Keys that this app does not know.
    #[serde(flatten)]
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

impl Settings {
    /// Their text in the store.
    ///
    /// # Errors
    /// When they have no JSON form. None lack one.
    pub fn text(&self) -> Result<String, serde_json::Error> {
        let mut value = serde_json::to_value(self)?;
        if let Some(fields) = value.as_object_mut() {
            fields.insert("haulm".to_owned(), KIND.into());
            fields.insert("version".to_owned(), VERSION.into());
        }
        Ok(value.to_string())
    }

    /// Reads a stored text.
    ///
    /// # Errors
    /// Every [`Refusal`] but [`Altered`](Refusal::Altered).
    pub fn read(text: &str) -> Result<Self, Refusal> {
        let mut settings: Self = refusal::read(text, LARGEST, KIND, VERSION, |_, text| serde_json::from_str(text))?;
        settings.extra.retain(|key, _| !matches!(key.as_str(), "haulm" | "version"));
        Ok(settings)
    }
}

/// Any value is taken: one that means nothing here becomes the usual one, and the others live on.
fn lenient<'de, D: Deserializer<'de>, T: DeserializeOwned + Default>(deserializer: D) -> Result<T, D::Error> {
    let value = serde_json::Value::deserialize(deserializer)?;
    Ok(serde_json::from_value(value).unwrap_or_default())
}

/// As [`lenient`], with the usual currency in place of none.
fn currency<'de, D: Deserializer<'de>>(deserializer: D) -> Result<String, D::Error> {
    let text: Option<String> = lenient(deserializer)?;
    Ok(text.unwrap_or_else(|| Settings::default().currency))
}
