//! A figure without its static type: what fields hold once read, and what the view shows.

use super::{Kind, Unit};

/// A number of a [`Kind`], held in the base unit (see [`Unit::to_base`]).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// What is measured.
    pub kind: Kind,
    /// The number in the base unit.
    pub base: f64,
}

impl Amount {
    /// `value` in `unit`. `unit` is taken at its word: a unit of another dimension than the kind's
    /// gives a number without meaning, which [`number::read`](super::number::read) never lets in.
    #[must_use]
    pub fn new(kind: Kind, value: f64, unit: Unit) -> Self {
        debug_assert_eq!(kind.dimension(), unit.dimension());
        Self { kind, base: unit.to_base(value) }
    }

    /// A number already in the base unit.
    #[must_use]
    pub const fn from_base(kind: Kind, base: f64) -> Self {
        Self { kind, base }
    }

    /// The number in `unit`.
    #[must_use]
    pub fn get(self, unit: Unit) -> f64 {
        unit.from_base(self.base)
    }
}
