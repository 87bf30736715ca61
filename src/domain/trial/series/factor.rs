//! A factor that was read, with its levels.

use crate::domain::trial::series::field::{FactorId, Of};
use crate::quantity::Amount;

/// A level of a factor.
#[derive(Debug, Clone, PartialEq)]
pub enum Level {
    /// A number.
    Value(Amount),
    /// A binder system, by its name.
    System(String),
}

/// A factor.
#[derive(Debug, Clone, PartialEq)]
pub struct Factor {
    /// Its number within the series.
    pub id: FactorId,
    /// What it changes.
    pub of: Of,
    /// Its levels, in the order entered.
    pub levels: Vec<Level>,
}
