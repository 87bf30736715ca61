//! Names of records, made from what the records say.

use serde::de::{self, Unexpected, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use sha2::{Digest, Sha256};
use std::fmt;

/// The first 128 bits of the SHA-256 (FIPS 180-4) of a record's text, shown as 32 lower-case
/// hexadecimal digits. 128 bits are far past any chance meeting: with 10⁹ records the chance of two
/// alike is below 10⁻²⁰.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Id(u128);

impl Id {
    /// The name of a record with that text.
    #[must_use]
    pub fn of(text: &str) -> Self {
        let digest = Sha256::digest(text.as_bytes());
        Self(digest.iter().take(16).fold(0, |id, byte| id << 8 | u128::from(*byte)))
    }

    /// The name written as 32 lower-case hexadecimal digits; `None` for anything else.
    #[must_use]
    pub fn parse(hex: &str) -> Option<Self> {
        let id = Self(u128::from_str_radix(hex, 16).ok()?);
        // A sign, capitals or fewer digits are other spellings of the same number.
        (id.to_string() == hex).then_some(id)
    }
}

impl fmt::Display for Id {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:032x}", self.0)
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
        deserializer.deserialize_str(Spelling)
    }
}

/// Reads an id from its text. A visitor, so that a refusal names the place of that text.
struct Spelling;

impl Visitor<'_> for Spelling {
    type Value = Id;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("32 hexadecimal digits")
    }

    fn visit_str<E: de::Error>(self, hex: &str) -> Result<Id, E> {
        Id::parse(hex).ok_or_else(|| E::invalid_value(Unexpected::Str(hex), &self))
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
    /// Names one release of a revision for the line, or its withdrawal.
    ReleaseId;
    /// Names one save of a binder system of the mill's own.
    SystemId;
    /// Names one check of the running line.
    CheckId;
    /// Names one save of a trial.
    TrialId;
    /// Names one save of a line in the library.
    KeptLineId;
}

#[cfg(test)]
mod tests {
    use super::Id;

    #[test]
    fn an_id_has_one_spelling() {
        let id = Id::of("a record");
        assert_eq!(id.to_string(), "9b700ce8298dbf0750b1d83f36b07334");
        assert_eq!(Id::parse(&id.to_string()), Some(id));
        assert_eq!(Id::parse(&Id(1).to_string()), Some(Id(1)));
        let long = "0".repeat(33);
        for other in ["", "1", "9B700CE8298DBF0750B1D83F36B07334", "+b700ce8298dbf0750b1d83f36b07334", &long, "é"] {
            assert_eq!(Id::parse(other), None, "{other}");
        }
    }
}
