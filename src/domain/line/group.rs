//! Boxes that stand together: one declaration gives the struct, the addresses, and the way between.

/// Declares a struct of entries and the enum that names them. For each box: its name, its address, what it
/// measures, the unit beside it, and what is filled in at first.
macro_rules! group {
    (
        $(#[$doc:meta])* $group:ident,
        $(#[$field_doc:meta])* $field:ident;
        $( $(#[$box_doc:meta])* $name:ident: $variant:ident, $kind:ident, $unit:ident, $preset:literal; )*
    ) => {
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
        #[serde(default)]
        pub struct $group { $( $(#[$box_doc])* pub $name: $crate::domain::Entry, )* }

        $(#[$field_doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum $field { $( $(#[$box_doc])* $variant, )* }

        impl Default for $group {
            fn default() -> Self {
                Self { $( $name: $crate::domain::Entry::preset($preset, $crate::quantity::Unit::$unit), )* }
            }
        }

        impl $group {
            /// The entry of a field.
            #[must_use]
            pub const fn entry(&self, field: $field) -> &$crate::domain::Entry {
                match field { $( $field::$variant => &self.$name, )* }
            }

            /// The entry of a field, to type into.
            pub const fn entry_mut(&mut self, field: $field) -> &mut $crate::domain::Entry {
                match field { $( $field::$variant => &mut self.$name, )* }
            }
        }

        impl $field {
            /// All of them, in the order of the page.
            pub const ALL: &'static [Self] = &[ $( Self::$variant, )* ];

            /// The stable key of the field.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $( Self::$variant => stringify!($name), )* }
            }

            /// What the field measures.
            #[must_use]
            pub const fn kind(self) -> $crate::quantity::Kind {
                match self { $( Self::$variant => $crate::quantity::Kind::$kind, )* }
            }
        }
    };
}

pub(super) use group;
