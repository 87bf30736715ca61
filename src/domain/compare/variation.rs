//! One recipe, solved again and again with some numbers changed.

use super::feasibility::{Feasibility, Obstacle, feasibility};
use super::output::Output;
use crate::domain::balance::outcome::Case;
use crate::domain::balance::solve::solve;
use crate::domain::compare::variable;
use crate::domain::recipe::field::Field;
use crate::domain::recipe::finding::Finding;

/// A recipe whose numbers are changed.
#[derive(Debug, Clone)]
pub struct Variation {
    case: Case,
    findings: Vec<Finding>,
}

impl Variation {
    /// A solved recipe, as it is.
    #[must_use]
    pub fn new(case: &Case) -> Self {
        Self { case: case.clone(), findings: Vec::new() }
    }

    /// Solves the recipe with these numbers. The last ones stay where others are not set.
    ///
    /// # Errors
    /// What prevents any balance; the recipe last solved stays.
    pub fn vary(&mut self, numbers: &[(Field, f64)]) -> Result<&Case, Obstacle> {
        for (field, base) in numbers {
            variable::set(&mut self.case.input, *field, *base).map_err(|_| Obstacle::NotAllowed)?;
        }
        if !variable::consistent(&self.case.input) {
            return Err(Obstacle::NotAllowed);
        }
        self.case.solved = solve(&self.case.input).map_err(|_| Obstacle::NoBalance)?;
        Ok(&self.case)
    }

    /// A figure at these numbers; `None` where there is no balance, or none of the figure.
    pub fn value(&mut self, numbers: &[(Field, f64)], output: Output) -> Option<f64> {
        self.vary(numbers).ok().and_then(|case| output.value(case)).map(|amount| amount.base)
    }

    /// What prevents it at these numbers.
    pub fn feasibility(&mut self, numbers: &[(Field, f64)]) -> Feasibility {
        if let Err(obstacle) = self.vary(numbers) {
            return Feasibility::only(obstacle);
        }
        feasibility(&self.case, &mut self.findings)
    }

    /// The recipe as last solved.
    #[must_use]
    pub const fn case(&self) -> &Case {
        &self.case
    }
}
