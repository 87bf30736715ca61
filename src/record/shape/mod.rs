//! How records are read and written: one piece of machine code for all of them.
//!
//! serde's derive makes a reader and a writer of its own for every type, which was a sixth of the
//! download. Here a type only lays open its parts, as a [`Part`], and one reader and one writer do the
//! rest. The texts are parsed and written by `serde_json` as before. The derives stay beside the types
//! for native use, and a test holds the two against each other.

mod bench;
mod compare;
mod line;
mod mix;
mod plain;
mod read;
mod recipe;
#[cfg(test)]
mod same;
mod write;

pub use read::read;
pub use write::value;

use crate::domain::Entry;
use serde_json::Value;

/// A value that is kept in JSON.
pub trait Shape {
    /// The value before anything was read: what parts that may be missing are taken to be.
    fn blank() -> Self
    where
        Self: Sized;

    /// Makes it [`blank`](Self::blank), where that makes a difference to what is then read over it.
    fn reset(&mut self) {}

    /// Its parts, to be read over or to be written.
    fn open(&mut self) -> Part<'_>;
}

/// What a value is made of.
pub enum Part<'a> {
    /// Any text.
    Text(&'a mut String),
    /// A text of a certain kind.
    Named(&'a mut dyn Named),
    /// Yes or no.
    Flag(&'a mut bool),
    /// A whole number.
    Whole(Whole<'a>),
    /// A choice.
    Choice(&'a mut dyn Choice),
    /// Anything.
    Any(&'a mut Value),
    /// Something or null.
    Maybe(&'a mut dyn Room),
    /// A list.
    List(&'a mut dyn Room),
    /// An object.
    Fields(Fields<'a>),
}

/// The fields of an object.
pub struct Fields<'a> {
    /// Their names.
    pub names: &'static [&'static str],
    /// Whether each has to be there, in the same order. What is not said may be missing.
    pub needs: &'static [Need],
    /// The fields, in the same order.
    pub fields: Vec<&'a mut dyn Shape>,
}

/// The boxes of a form. Each may be missing.
fn boxes<'a>(names: &'static [&'static str], boxes: Vec<&'a mut Entry>) -> Part<'a> {
    let fields = boxes.into_iter().map(|entry| -> &'a mut dyn Shape { entry }).collect();
    Part::Fields(Fields { names, needs: &[], fields })
}

/// A whole number, by what it can hold.
pub enum Whole<'a> {
    /// Up to 255.
    U8(&'a mut u8),
    /// Up to 65 535.
    U16(&'a mut u16),
    /// Up to 4 294 967 295.
    U32(&'a mut u32),
    /// Up to 18 446 744 073 709 551 615.
    U64(&'a mut u64),
}

/// Whether a field has to be there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Need {
    /// A text without it is refused.
    Must,
    /// It may be missing.
    May,
    /// It may be missing, and is left out where it says nothing: no, a blank text, an empty list.
    Spare,
}

/// A text of a certain kind.
pub trait Named {
    /// The text.
    fn name(&self) -> String;

    /// Sets it from a text.
    ///
    /// # Errors
    /// What is wrong with the text.
    fn set_name(&mut self, name: &str) -> Result<(), String>;
}

/// One of several, some of which hold something.
pub trait Choice {
    /// The words for all of them.
    fn words(&self) -> &'static [&'static str];

    /// The word for this one.
    fn word(&self) -> &'static str;

    /// Makes it the one at that place among the words, holding something blank.
    fn choose(&mut self, place: usize);

    /// What it holds.
    fn held(&mut self) -> Option<&mut dyn Shape> {
        None
    }
}

/// Room for values of one kind.
pub trait Room {
    /// Puts a blank one behind those that are there.
    fn add(&mut self);

    /// The one at a place, from 0.
    fn at(&mut self, place: usize) -> Option<&mut dyn Shape>;
}

/// Declares the fields of a struct, each with its [`Need`]. Those behind the semicolon are not kept.
/// `default` before the name: what is missing is as in the struct's default.
macro_rules! fields {
    ($name:ident { $($need:ident $field:ident),* $(; $($other:ident),*)? }) => {
        impl $crate::record::shape::Shape for $name {
            fn blank() -> Self {
                Self {
                    $($field: $crate::record::shape::Shape::blank(),)*
                    $($($other: Default::default(),)*)?
                }
            }

            $crate::record::shape::fields!(@open $($need $field),* $(; $($other),*)?);
        }
    };
    (default $name:ident { $($need:ident $field:ident),* $(; $($other:ident),*)? }) => {
        impl $crate::record::shape::Shape for $name {
            fn blank() -> Self {
                Self::default()
            }

            $crate::record::shape::fields!(@open $($need $field),* $(; $($other),*)?);
        }
    };
    (@open $($need:ident $field:ident),* $(; $($other:ident),*)?) => {
        fn reset(&mut self) {
            *self = $crate::record::shape::Shape::blank();
        }

        fn open(&mut self) -> $crate::record::shape::Part<'_> {
            // A field that is forgotten here does not compile.
            let Self { $($field,)* $($($other: _,)*)? } = self;
            $crate::record::shape::Part::Fields($crate::record::shape::Fields {
                names: &[$(stringify!($field)),*],
                needs: &[$($crate::record::shape::Need::$need),*],
                fields: vec![$($field),*],
            })
        }
    };
}

/// Declares the words for the values of an enum, some of which hold something.
macro_rules! choice {
    ($name:ident { $($variant:ident $(($held:ident: $of:ty))? = $word:literal),* $(,)? }) => {
        impl $name {
            const BLANK: &[fn() -> Self] =
                &[$(|| Self::$variant $((<$of as $crate::record::shape::Shape>::blank()))?),*];
        }

        impl $crate::record::shape::Choice for $name {
            fn words(&self) -> &'static [&'static str] {
                &[$($word),*]
            }

            fn word(&self) -> &'static str {
                match self { $(Self::$variant { .. } => $word,)* }
            }

            fn choose(&mut self, place: usize) {
                if let Some(blank) = Self::BLANK.get(place) {
                    *self = blank();
                }
            }

            fn held(&mut self) -> Option<&mut dyn $crate::record::shape::Shape> {
                match self {
                    $($(Self::$variant($held) => Some($held),)?)*
                    _ => None,
                }
            }
        }

        $crate::record::shape::choice!(@shape $name Self::BLANK[0]());
    };
    (plain $name:ident { $($variant:ident = $word:literal),* $(,)? }) => {
        impl $crate::record::shape::Choice for $name {
            fn words(&self) -> &'static [&'static str] {
                &[$($word),*]
            }

            fn word(&self) -> &'static str {
                match self { $(Self::$variant => $word,)* }
            }

            fn choose(&mut self, place: usize) {
                if let Some(chosen) = [$(Self::$variant),*].get(place) {
                    *self = *chosen;
                }
            }
        }

        $crate::record::shape::choice!(@shape $name [$(Self::$variant),*][0]);
    };
    (@shape $name:ident $first:expr) => {
        impl $crate::record::shape::Shape for $name {
            fn blank() -> Self {
                $first
            }

            fn open(&mut self) -> $crate::record::shape::Part<'_> {
                $crate::record::shape::Part::Choice(self)
            }
        }
    };
}

/// Declares structs that are kept as their one field.
macro_rules! through {
    ($($name:ident $field:tt),* $(,)?) => {$(
        impl $crate::record::shape::Shape for $name {
            fn blank() -> Self {
                Self { $field: $crate::record::shape::Shape::blank() }
            }

            fn reset(&mut self) {
                self.$field.reset();
            }

            fn open(&mut self) -> $crate::record::shape::Part<'_> {
                self.$field.open()
            }
        }
    )*};
}

/// Declares structs whose fields are boxes of a form and nothing else.
macro_rules! forms {
    ($($name:ident),* $(,)?) => {$(
        impl $crate::record::shape::Shape for $name {
            fn blank() -> Self {
                Self::default()
            }

            fn reset(&mut self) {
                *self = Self::default();
            }

            fn open(&mut self) -> $crate::record::shape::Part<'_> {
                $crate::record::shape::boxes(Self::NAMES, self.all_mut())
            }
        }
    )*};
}

pub(in crate::record) use {choice, fields, forms, through};
