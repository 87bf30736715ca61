//! Why there is no result.

use std::error::Error;
use std::fmt;

/// Why a set of readings could not be reconciled. Indices are those of the quantities, or of the constraints.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ReconciliationError {
    /// A reading, an uncertainty or a start value is not a finite number, or a result leaves the range of numbers.
    NotFinite {
        /// The quantity.
        quantity: usize,
    },
    /// A standard uncertainty is zero or below. What is known exactly belongs into the constraints.
    NoUncertainty {
        /// The quantity.
        quantity: usize,
    },
    /// A correlation names something that is not a pair of measured quantities, or the correlations together belong
    /// to no set of readings.
    Correlation,
    /// The level of the tests is not between 0 and 1.
    Level,
    /// The constraints are for another number of quantities.
    Shape,
    /// A constraint or its derivative is not a finite number at the readings and start values.
    ConstraintNotFinite {
        /// The constraint.
        constraint: usize,
    },
    /// The constraints contradict each other, whatever the readings are.
    Inconsistent {
        /// The constraint that is furthest from holding.
        constraint: usize,
    },
    /// The iteration ended before the constraints held.
    NotConverged {
        /// Iterations done.
        iterations: usize,
        /// Largest residual left, as a part of the terms of its constraint.
        residual: f64,
    },
}

impl fmt::Display for ReconciliationError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotFinite { quantity } => write!(f, "quantity {quantity} is not a finite number"),
            Self::NoUncertainty { quantity } => write!(f, "quantity {quantity} has no uncertainty above zero"),
            Self::Correlation => write!(f, "the correlations are not those of measured quantities"),
            Self::Level => write!(f, "the level is not between 0 and 1"),
            Self::Shape => write!(f, "the constraints are for another number of quantities"),
            Self::ConstraintNotFinite { constraint } => write!(f, "constraint {constraint} is not a finite number"),
            Self::Inconsistent { constraint } => write!(f, "constraint {constraint} contradicts the others"),
            Self::NotConverged { iterations, residual } => {
                write!(f, "not converged after {iterations} iterations, largest relative residual {residual:e}")
            }
        }
    }
}

impl Error for ReconciliationError {}
