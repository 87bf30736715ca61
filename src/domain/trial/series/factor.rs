//! A factor that was read, with its levels.

use crate::domain::trial::finding::TrialProblem;
use crate::domain::trial::series::field::{FactorId, Of};
use crate::quantity::number::{Reading, read};
use crate::quantity::{Amount, Kind, Unit};
use serde::{Deserialize, Serialize};

/// A factor that changes nothing computed, such as the press temperature or the fibre lot.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(default)]
pub struct OwnFactor {
    /// Its name.
    pub name: String,
    /// The unit of its levels, any text. With a unit the levels are numbers, without one they are words.
    pub unit: String,
}

/// A level of a factor.
#[derive(Debug, Clone, PartialEq)]
pub enum Level {
    /// A number that recipe or weigh sheet are computed with.
    Value(Amount),
    /// A binder system, by its name.
    System(String),
    /// A number that nothing is computed with.
    Number {
        /// The number.
        value: f64,
        /// Its unit, as typed.
        unit: String,
    },
    /// Words.
    Text(String),
}

/// A factor.
#[derive(Debug, Clone, PartialEq)]
pub struct Factor {
    /// Its number within the series.
    pub id: FactorId,
    /// What it changes.
    pub of: Of,
    /// Name and unit of a factor that changes nothing computed; blank for the others.
    pub own: OwnFactor,
    /// Its levels, in the order entered.
    pub levels: Vec<Level>,
}

impl OwnFactor {
    fn is_blank(&self) -> bool {
        *self == Self::default()
    }

    /// Whether there is nothing to write down.
    #[must_use]
    pub(in crate::domain::trial) fn is_absent(own: &Self) -> bool {
        own.is_blank()
    }

    /// Reads a level: a number where the factor has a unit, which may also stand behind the number; words otherwise.
    ///
    /// # Errors
    /// [`LevelBlank`](TrialProblem::LevelBlank) and [`LevelNotANumber`](TrialProblem::LevelNotANumber).
    pub fn read(&self, typed: &str) -> Result<Level, TrialProblem> {
        let (typed, unit) = (typed.trim(), self.unit.trim());
        if typed.is_empty() {
            return Err(TrialProblem::LevelBlank);
        }
        if unit.is_empty() {
            return Ok(Level::Text(typed.to_owned()));
        }
        let number = typed.strip_suffix(unit).unwrap_or(typed);
        match read(number, Kind::Ratio, Unit::One) {
            Ok(Reading { value, unit_typed: false, .. }) => Ok(Level::Number { value, unit: unit.to_owned() }),
            _ => Err(TrialProblem::LevelNotANumber),
        }
    }
}
