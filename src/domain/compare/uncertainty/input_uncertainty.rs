//! How uncertain one input is: its ±, in one of three ways to state it.

use crate::quantity::Unit;
use crate::statistics::coverage::factor;
use crate::statistics::distribution::CONFIDENCE;
use serde::{Deserialize, Serialize};

/// What a stated ± means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// One standard uncertainty u (JCGM 100, 2.3.1): the standard deviation of a mean, or a certificate's u.
    Standard,
    /// The half-width a of a range in which every value is as likely as the next, and none outside:
    /// u = a/√3 (JCGM 100, 4.3.7). An error limit, or what a last digit hides.
    HalfWidth,
    /// The half-width U of an interval that holds the value with 95 %: u = U/k (JCGM 100, 4.3.4).
    Interval95,
}

impl Form {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [Form] = &[Self::Standard, Self::HalfWidth, Self::Interval95];
}

/// How large a stated ± is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Size {
    /// In the base unit of the input's kind.
    Absolute(f64),
    /// A share of the input's value.
    Relative(f64),
}

/// How an input's possible values are distributed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shape {
    /// Normal (JCGM 101, 6.4.7).
    Normal,
    /// Student's with so many degrees of freedom, scaled and shifted (JCGM 101, 6.4.9).
    Student(f64),
    /// Rectangular (JCGM 101, 6.4.2).
    Rectangular,
}

/// The uncertainty of one input.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InputUncertainty {
    /// What the ± means.
    pub form: Form,
    /// The ±, above 0.
    pub size: Size,
    /// Degrees of freedom ν of the ±, 1 or more; `None` where it is taken to be exactly known.
    pub freedom: Option<f64>,
}

impl InputUncertainty {
    /// A ± without degrees of freedom. `None` unless `size` is above 0, finite, and with its degrees
    /// of freedom at least 1.
    #[must_use]
    pub fn new(form: Form, size: Size, freedom: Option<f64>) -> Option<Self> {
        let (Size::Absolute(width) | Size::Relative(width)) = size;
        let sized = width > 0.0 && width.is_finite();
        let free = freedom.is_none_or(|freedom| freedom >= 1.0 && freedom.is_finite());
        (sized && free).then_some(Self { form, size, freedom })
    }

    /// The ± in the base unit, for an input of the value `at`.
    #[must_use]
    pub fn stated(self, at: f64) -> f64 {
        match self.size {
            Size::Absolute(width) => width,
            Size::Relative(share) => share * at.abs(),
        }
    }

    /// Standard uncertainty u in the base unit, for an input of the value `at`.
    #[must_use]
    pub fn standard(self, at: f64) -> f64 {
        match self.form {
            Form::Standard => self.stated(at),
            Form::HalfWidth => self.stated(at) / 3.0_f64.sqrt(),
            Form::Interval95 => self.stated(at) / factor(CONFIDENCE, self.freedom),
        }
    }

    /// How the possible values are distributed. A half-width stays rectangular, whatever its degrees of
    /// freedom: how well the width itself is known counts in the first-order method only.
    #[must_use]
    pub fn shape(self) -> Shape {
        match (self.form, self.freedom) {
            (Form::HalfWidth, _) => Shape::Rectangular,
            (Form::Standard | Form::Interval95, Some(freedom)) => Shape::Student(freedom),
            (Form::Standard | Form::Interval95, None) => Shape::Normal,
        }
    }
}

/// A ± typed in `unit` around the value `at` (in the base unit), as a ± in the base unit: half of
/// what lies between both ends, which matters where a unit is no multiple of the base, such as a
/// moisture on the wet basis.
#[must_use]
pub fn width_from(unit: Unit, width: f64, at: f64) -> f64 {
    let middle = unit.from_base(at);
    (unit.to_base(middle + width) - unit.to_base(middle - width)) / 2.0
}

/// The ± of [`width_from`] the other way round.
#[must_use]
pub fn width_in(unit: Unit, width: f64, at: f64) -> f64 {
    (unit.from_base(at + width) - unit.from_base(at - width)) / 2.0
}
