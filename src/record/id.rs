//! Names of records, made from what the records say.

use serde::{Deserialize, Deserializer, Serialize, Serializer};
use sha2::{Digest, Sha256};
use std::fmt;

/// The first 128 bits of the SHA-256 (FIPS 180-4) of a record's text, shown as 32 lower-case
/// hexadecimal digits. 128 bits are far past any chance meeting: with 10⁹ records the chance of two
/// alike is below 10⁻²⁰.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Id([u8; 16]);

impl Id {
    /// The name of a record with that text.
    #[must_use]
    pub fn of(text: &str) -> Self {
        let digest = Sha256::digest(text.as_bytes());
        let mut short = [0; 16];
        for (to, from) in short.iter_mut().zip(digest) {
            *to = from;
        }
        Self(short)
    }

    /// The name written as 32 lower-case hexadecimal digits; `None` for anything else.
    #[must_use]
    pub fn parse(hex: &str) -> Option<Self> {
        let digits = hex.as_bytes();
        if digits.len() != 32 {
            return None;
        }
        let digit = |byte: u8| match byte {
            b'0'..=b'9' => Some(byte - b'0'),
            b'a'..=b'f' => Some(byte - b'a' + 10),
            _ => None,
        };
        let mut bytes = [0; 16];
        for (to, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
            let [high, low] = pair else { return None };
            *to = digit(*high)? << 4 | digit(*low)?;
        }
        Some(Self(bytes))
    }
}

impl fmt::Display for Id {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl fmt::Debug for Id {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl Serialize for Id {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Id {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let hex = String::deserialize(deserializer)?;
        Self::parse(&hex).ok_or_else(|| serde::de::Error::custom("an id has 32 hexadecimal digits"))
    }
}

/// Declares the name of one kind of record, so that they cannot be mixed up.
macro_rules! named {
    ($( $(#[$doc:meta])* $name:ident; )*) => { $(
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
        #[cfg_attr(test, derive(schemars::JsonSchema))]
        #[serde(transparent)]
        pub struct $name(#[cfg_attr(test, schemars(with = "String"))] pub Id);

        impl $name {
            /// The name written as 32 lower-case hexadecimal digits; `None` for anything else.
            #[must_use]
            pub fn parse(hex: &str) -> Option<Self> {
                Id::parse(hex).map(Self)
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                fmt::Display::fmt(&self.0, f)
            }
        }
    )* };
}

named! {
    /// Names one save of a recipe.
    RevisionId;
    /// Names a recipe through all its saves: the id of its first one.
    RecipeId;
    /// Names one save of a binder system of the mill's own.
    SystemId;
    /// Names one check of the running line.
    CheckId;
    /// Names one save of a trial.
    TrialId;
}
