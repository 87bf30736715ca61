//! Which system is compared.

use serde::{Deserialize, Serialize};
use std::fmt;

/// A system to compare. A saved recipe is compared as one of its revisions, so that a later save changes no comparison.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
pub enum SystemChoice {
    /// The open recipe, as it is now.
    OpenRecipe,
    /// A system of the library that comes with the app, by its key.
    Library(String),
    /// A binder system of the mill's own, by its id.
    OwnSystem(String),
    /// A revision of a saved recipe, by the revision's id.
    Revision(String),
}

/// A text that names no system.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SystemChoiceError;

impl fmt::Display for SystemChoiceError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not a system to compare")
    }
}

impl SystemChoice {
    /// The key, on the page and in the store.
    #[must_use]
    pub fn key(&self) -> String {
        match self {
            Self::OpenRecipe => "open".to_owned(),
            Self::Library(key) => format!("library:{key}"),
            Self::OwnSystem(id) => format!("own:{id}"),
            Self::Revision(id) => format!("revision:{id}"),
        }
    }

    /// The choice of a key.
    #[must_use]
    pub fn parse(key: &str) -> Option<Self> {
        if key == "open" {
            return Some(Self::OpenRecipe);
        }
        let (kind, rest) = key.split_once(':').filter(|(_, rest)| !rest.is_empty())?;
        match kind {
            "library" => Some(Self::Library(rest.to_owned())),
            "own" => Some(Self::OwnSystem(rest.to_owned())),
            "revision" => Some(Self::Revision(rest.to_owned())),
            _ => None,
        }
    }
}

impl From<SystemChoice> for String {
    fn from(choice: SystemChoice) -> Self {
        choice.key()
    }
}

impl TryFrom<String> for SystemChoice {
    type Error = SystemChoiceError;
    fn try_from(key: String) -> Result<Self, SystemChoiceError> {
        Self::parse(&key).ok_or(SystemChoiceError)
    }
}
