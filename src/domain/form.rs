//! One declaration a form and a field: what a box is called, measures, may hold, starts with, and where it is.
//!
//! [`form!`](crate::domain::form) takes a table with one row a field, and makes of it the enum of the fields, the struct of what is typed
//! with its serde, and the way from the one to the other. A new field is a new row.

use crate::quantity::Unit;
use serde::{Deserialize, Serialize};

/// One box: the text as typed, never tidied up, and the unit that was beside it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct Entry {
    /// What was typed.
    pub text: String,
    /// The unit beside the box when it was typed.
    #[cfg_attr(test, schemars(with = "String"))]
    pub unit: Unit,
    /// Filled in by the app and not yet touched by the user.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub preset: bool,
}

impl Entry {
    /// A typed entry.
    #[must_use]
    pub fn typed(text: impl Into<String>, unit: Unit) -> Self {
        Self { text: text.into(), unit, preset: false }
    }

    /// A value that the app filled in.
    #[must_use]
    pub fn preset(text: impl Into<String>, unit: Unit) -> Self {
        Self { text: text.into(), unit, preset: true }
    }

    /// An empty box.
    #[must_use]
    pub fn empty(unit: Unit) -> Self {
        Self::preset("", unit)
    }

    /// Whether nothing was typed.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }

    /// Whether the same was typed into both boxes, whether the app filled it in or not.
    #[must_use]
    pub fn says_same(&self, other: &Self) -> bool {
        (&self.text, self.unit) == (&other.text, other.unit) || self.is_blank() && other.is_blank()
    }
}

/// Declares a form. `form! { enum Field at Spot { … } struct Entries; }`, each row being
///
/// ```text
/// /// What it is.
/// Variant: key, Kind, Unit of the empty box, "value it starts with", place, limit;
/// ```
///
/// makes
/// - the enum with a variant a row, and `ALL`, `key`, `kind`, `place` and `limit` of it;
/// - the struct with an [`Entry`] a row, read and written by serde under its key, its `Default`, `entry` and `entry_mut`.
///
/// A form whose boxes need no place leaves out `at Spot` and the column `place`. What a field measures or may hold can depend on
/// another choice, such as the scale of a drive: the table then has that of the first choice, and the form's own code the others.
///
/// After a `+` stand variants that address boxes of another form. What the table says of a field is then an `Option`, by the names
/// `FORM`, `declared_key`, `declared_kind`, `declared_place` and `declared_limit`, and is `None` for them.
macro_rules! form {
    (
        $(#[$enum_doc:meta])*
        enum $Field:ident at $Place:ty {
            $( $(#[$doc:meta])* $Variant:ident: $key:ident, $kind:ident, $unit:ident, $preset:literal, $place:expr, $limit:expr; )*
        }
        $(#[$struct_doc:meta])*
        struct $Entries:ident;
    ) => {
        $crate::domain::form::form! {
            $(#[$enum_doc])*
            enum $Field { $( $(#[$doc])* $Variant: $key, $kind, $unit, $preset, $limit; )* }
            $(#[$struct_doc])*
            struct $Entries;
        }

        impl $Field {
            /// Where its box is.
            #[must_use]
            pub const fn place(self) -> $Place {
                match self { $( Self::$Variant => $place, )* }
            }
        }
    };
    (
        $(#[$enum_doc:meta])*
        enum $Field:ident {
            $( $(#[$doc:meta])* $Variant:ident: $key:ident, $kind:ident, $unit:ident, $preset:literal, $limit:expr; )*
        }
        $(#[$struct_doc:meta])*
        struct $Entries:ident;
    ) => {
        $(#[$enum_doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum $Field { $( $(#[$doc])* $Variant, )* }

        impl $Field {
            /// All of them, in the order of the page.
            pub const ALL: &'static [$Field] = &[$( Self::$Variant, )*];

            /// The stable key of the field: where it is stored, and as `data-field` on the page.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $( Self::$Variant => stringify!($key), )* }
            }

            /// What the field measures.
            #[must_use]
            pub const fn kind(self) -> $crate::quantity::Kind {
                match self { $( Self::$Variant => $crate::quantity::Kind::$kind, )* }
            }

            /// What the field may hold, and what is typical.
            #[must_use]
            pub const fn limit(self) -> $crate::domain::limit::Limit {
                match self { $( Self::$Variant => $limit, )* }
            }
        }

        $crate::domain::form::form! { @entries $(#[$struct_doc])* $Entries { $( $key: $unit, $preset; )* } }

        impl $Entries {
            /// The entry of a field.
            #[must_use]
            pub const fn entry(&self, field: $Field) -> &$crate::domain::form::Entry {
                match field { $( $Field::$Variant => &self.$key, )* }
            }

            /// The entry of a field, to type into.
            pub const fn entry_mut(&mut self, field: $Field) -> &mut $crate::domain::form::Entry {
                match field { $( $Field::$Variant => &mut self.$key, )* }
            }
        }
    };
    (
        $(#[$enum_doc:meta])*
        enum $Field:ident at $Place:ty {
            $( $(#[$doc:meta])* $Variant:ident: $key:ident, $kind:ident, $unit:ident, $preset:literal, $place:expr, $limit:expr; )*
            $( + $(#[$other_doc:meta])* $Other:ident($($inner:ty),*); )+
        }
        $(#[$struct_doc:meta])*
        struct $Entries:ident;
    ) => {
        $(#[$enum_doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum $Field {
            $( $(#[$doc])* $Variant, )*
            $( $(#[$other_doc])* $Other($($inner),*), )+
        }

        impl $Field {
            const FORM: &'static [$Field] = &[$( Self::$Variant, )*];

            const fn declared_key(self) -> Option<&'static str> {
                match self { $( Self::$Variant => Some(stringify!($key)), )* $( Self::$Other(..) => None, )+ }
            }

            const fn declared_kind(self) -> Option<$crate::quantity::Kind> {
                match self { $( Self::$Variant => Some($crate::quantity::Kind::$kind), )* $( Self::$Other(..) => None, )+ }
            }

            const fn declared_place(self) -> Option<$Place> {
                match self { $( Self::$Variant => Some($place), )* $( Self::$Other(..) => None, )+ }
            }

            const fn declared_limit(self) -> Option<$crate::domain::limit::Limit> {
                match self { $( Self::$Variant => Some($limit), )* $( Self::$Other(..) => None, )+ }
            }
        }

        $crate::domain::form::form! { @entries $(#[$struct_doc])* $Entries { $( $key: $unit, $preset; )* } }

        impl $Entries {
            /// The entry of a field; `None` for one of another form.
            #[must_use]
            pub const fn entry(&self, field: $Field) -> Option<&$crate::domain::form::Entry> {
                match field { $( $Field::$Variant => Some(&self.$key), )* $( $Field::$Other(..) => None, )+ }
            }

            /// The entry of a field, to type into; `None` for one of another form.
            pub const fn entry_mut(&mut self, field: $Field) -> Option<&mut $crate::domain::form::Entry> {
                match field { $( $Field::$Variant => Some(&mut self.$key), )* $( $Field::$Other(..) => None, )+ }
            }
        }
    };
    (@entries $(#[$struct_doc:meta])* $Entries:ident { $( $key:ident: $unit:ident, $preset:literal; )* }) => {
        $(#[$struct_doc])*
        #[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
        #[cfg_attr(test, derive(schemars::JsonSchema))]
        #[serde(default)]
        #[allow(missing_docs, reason = "each is the field of the same name")]
        pub struct $Entries { $( pub $key: $crate::domain::form::Entry, )* }

        impl Default for $Entries {
            /// The boxes of a new form: what they start with, the rest blank.
            fn default() -> Self {
                Self { $( $key: $crate::domain::form::Entry::preset($preset, $crate::quantity::Unit::$unit), )* }
            }
        }

        impl $Entries {
            /// Whether every box is blank.
            #[must_use]
            pub fn is_blank(&self) -> bool {
                [$( &self.$key, )*].into_iter().all($crate::domain::form::Entry::is_blank)
            }
        }
    };
}
pub(in crate::domain) use form;

/// The way from a field to its entry for a struct that holds more than entries: `entries_of! { LiquidDraft by LiquidField { Dose: dose } }`.
macro_rules! entries_of {
    ($Holder:ident by $Field:ident { $( $Variant:ident: $key:ident ),* $(,)? }) => {
        impl $Holder {
            /// The entry of a field.
            #[must_use]
            pub const fn entry(&self, field: $Field) -> &$crate::domain::form::Entry {
                match field { $( $Field::$Variant => &self.$key, )* }
            }

            /// The entry of a field, to type into.
            pub const fn entry_mut(&mut self, field: $Field) -> &mut $crate::domain::form::Entry {
                match field { $( $Field::$Variant => &mut self.$key, )* }
            }
        }
    };
}
pub(in crate::domain) use entries_of;
