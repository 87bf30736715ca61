//! What a box may hold and what is typical, with where that comes from. The numbers are in the tables of the forms.

use crate::quantity::Unit;

/// Where a usual window comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Source {
    /// A published source.
    Published(&'static str),
    /// Known in the trade, not verified; for what it holds.
    Unverified(&'static str),
    /// Known in the trade; nobody here had a document open.
    FromMemory,
    /// Common practice, no source.
    CommonPractice,
}

/// What is usual; both ends belong to it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// Lower end, in the limit's unit.
    pub low: f64,
    /// Upper end, in the limit's unit.
    pub high: f64,
    /// Where it comes from.
    pub source: Source,
}

/// What a field may hold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// The unit of the numbers here.
    pub unit: Unit,
    /// Least value.
    pub least: f64,
    /// Whether `least` itself is refused.
    pub above_least: bool,
    /// Greatest value.
    pub most: f64,
    /// Whether `most` itself is refused.
    pub below_most: bool,
    /// What is usual, if anything is.
    pub usual: Option<Window>,
    /// Whether the field may stay blank.
    pub optional: bool,
}

impl Limit {
    pub(in crate::domain) const fn from_to(unit: Unit, least: f64, most: f64) -> Self {
        Self { unit, least, above_least: false, most, below_most: false, usual: None, optional: false }
    }

    pub(in crate::domain) const fn above_to(unit: Unit, least: f64, most: f64) -> Self {
        Self { above_least: true, ..Self::from_to(unit, least, most) }
    }

    pub(in crate::domain) const fn below_most(self) -> Self {
        Self { below_most: true, ..self }
    }

    pub(in crate::domain) const fn usually(self, low: f64, high: f64, source: Source) -> Self {
        Self { usual: Some(Window { low, high, source }), ..self }
    }

    /// The same with another typical range.
    #[must_use]
    pub(in crate::domain) const fn within(self, window: Window) -> Self {
        Self { usual: Some(window), ..self }
    }

    pub(in crate::domain) const fn optional(self) -> Self {
        Self { optional: true, ..self }
    }

    /// Whether a value in the base unit is allowed.
    #[must_use]
    pub fn allows(&self, base: f64) -> bool {
        let (least, most) = (self.unit.to_base(self.least), self.unit.to_base(self.most));
        let above = if self.above_least { base > least } else { base >= least };
        let below = if self.below_most { base < most } else { base <= most };
        above && below
    }

    /// The usual window, when a value in the base unit lies outside it. A rounding error does not
    /// count as outside.
    #[must_use]
    pub fn outside_usual(&self, base: f64) -> Option<Window> {
        let slack = 1e-9 * base.abs();
        self.usual.filter(|window| {
            base < self.unit.to_base(window.low) - slack || base > self.unit.to_base(window.high) + slack
        })
    }
}
