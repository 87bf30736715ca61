//! Successive linearisation with step control.
//!
//! Each iteration linearises the constraints at the present point and steps to the least-squares solution of that
//! (Narasimhan and Jordache, section 5.2). A step is halved until it lowers ½‖z‖² + μ·Σ|residual| (Nocedal and Wright,
//! *Numerical Optimization*, 2006, section 18.3), so that a strongly curved constraint cannot make it diverge.

use super::constraints::Constraints;
use super::error::ReconciliationError;
use super::linearisation::Linearisation;
use super::problem::{Measurements, Problem, Quantity};
use super::result::Reconciliation;
use nalgebra::{DMatrix, DVector};

/// Most iterations. Balances take two to five.
const MOST_ITERATIONS: usize = 60;
/// Most halvings of a step.
const MOST_HALVINGS: usize = 30;
/// A constraint holds when its residual is below this part of its terms.
const HOLDS: f64 = 1e-11;
/// The iteration ends when no reading moves by more than this part of its uncertainty …
const STILL_IN_UNCERTAINTIES: f64 = 1e-8;
/// … or any quantity by more than this part of itself.
const STILL: f64 = 1e-12;
/// The same for a quantity that is inferred, which is less exact by the condition of the projection.
const STILL_INFERRED: f64 = 1e-9;

/// What is solved.
struct System<'a, C> {
    problem: &'a Problem,
    readings: Measurements,
    constraints: &'a C,
}

/// A point of the iteration.
struct Iterate {
    /// Adjustments of the readings, in readings of unit variance.
    z: DVector<f64>,
    /// Unmeasured quantities.
    u: DVector<f64>,
    x: Vec<f64>,
    residuals: DVector<f64>,
    jacobian: DMatrix<f64>,
}

impl Iterate {
    /// The first constraint that has no finite value or derivative here.
    fn fault(&self) -> Option<usize> {
        let finite = |row: usize| {
            self.residuals[row].is_finite() && self.jacobian.row(row).iter().all(|element| element.is_finite())
        };
        (0..self.residuals.len()).find(|row| !finite(*row))
    }

    fn residual_sum(&self, scales: &[f64]) -> f64 {
        self.residuals.iter().zip(scales).map(|(residual, scale)| (residual * scale).abs()).sum()
    }
}

/// Where a linearisation points to.
struct Step {
    z: DVector<f64>,
    u: DVector<f64>,
}

impl Problem {
    /// Adjusts the readings to the constraints and infers what was not measured.
    ///
    /// # Errors
    /// [`ReconciliationError`] says what is wrong with the readings or the constraints, or that the iteration did not
    /// end.
    pub fn reconcile<C: Constraints>(&self, constraints: &C) -> Result<Reconciliation, ReconciliationError> {
        solve(self, constraints)
    }
}

fn solve<C: Constraints>(problem: &Problem, constraints: &C) -> Result<Reconciliation, ReconciliationError> {
    let system = System { problem, readings: problem.readings()?, constraints };
    if !constraints.fits(problem.quantities.len()) {
        return Err(ReconciliationError::Shape);
    }
    let mut point = system.start();
    if let Some(constraint) = point.fault() {
        return Err(ReconciliationError::ConstraintNotFinite { constraint });
    }
    let mut penalty = 1.0;
    let mut iterations = 0;
    loop {
        iterations += 1;
        let linear = system.linearise(&point);
        let step = system.step(&linear, &point);
        let still = system.is_still(&linear, &step);
        let worst = if linear.residuals.is_empty() { 0 } else { linear.residuals.iamax() };
        let residual = linear.residuals.get(worst).map_or(0.0, |residual| residual.abs());
        if still && residual <= HOLDS {
            return Reconciliation::new(problem, &system.readings, &linear, &point.x, iterations);
        }
        let next = system.descend(&linear, &point, &step, &mut penalty).filter(|_| iterations < MOST_ITERATIONS);
        match next {
            Some(next) if !(still && linear.dependent) => point = next,
            _ if linear.dependent && residual > HOLDS => {
                return Err(ReconciliationError::Inconsistent { constraint: worst });
            }
            _ => return Err(ReconciliationError::NotConverged { iterations, residual }),
        }
    }
}

impl<C: Constraints> System<'_, C> {
    fn start(&self) -> Iterate {
        let start = self.readings.unmeasured.iter().map(|index| match self.problem.quantities[*index] {
            Quantity::Measured { value, .. } => value,
            Quantity::Unmeasured { start } => start,
        });
        let u = DVector::from_iterator(self.readings.unmeasured.len(), start);
        self.point(DVector::zeros(self.readings.measured.len()), u)
    }

    fn point(&self, z: DVector<f64>, u: DVector<f64>) -> Iterate {
        let mut x = self.spread(&z, &u);
        for (x, quantity) in x.iter_mut().zip(&self.problem.quantities) {
            if let Quantity::Measured { value, .. } = quantity {
                *x += value;
            }
        }
        let mut residuals = DVector::zeros(self.constraints.count());
        let mut jacobian = DMatrix::zeros(self.constraints.count(), x.len());
        self.constraints.evaluate(&x, &mut residuals, &mut jacobian);
        Iterate { z, u, x, residuals, jacobian }
    }

    /// Adjustments and unmeasured quantities in the order of all quantities.
    fn spread(&self, z: &DVector<f64>, u: &DVector<f64>) -> Vec<f64> {
        let mut all = vec![0.0; self.problem.quantities.len()];
        for (index, moved) in self.readings.measured.iter().zip((&self.readings.factor * z).iter()) {
            all[*index] = *moved;
        }
        for (index, u) in self.readings.unmeasured.iter().zip(u.iter()) {
            all[*index] = *u;
        }
        all
    }

    fn linearise(&self, point: &Iterate) -> Linearisation {
        let size = |(x, quantity): (&f64, &Quantity)| match quantity {
            Quantity::Measured { uncertainty, .. } => x.abs().max(*uncertainty),
            Quantity::Unmeasured { start } => Some(x.abs().max(start.abs())).filter(|size| *size > 0.0).unwrap_or(1.0),
        };
        let sizes = point.x.iter().zip(&self.problem.quantities).map(size).collect();
        Linearisation::new(&self.readings, sizes, &point.residuals, &point.jacobian, &point.z)
    }

    fn step(&self, linear: &Linearisation, point: &Iterate) -> Step {
        let z = linear.adjustments() - &point.z;
        let u = linear.unmeasured_step(&self.readings, &z);
        Step { z, u }
    }

    fn is_still(&self, linear: &Linearisation, step: &Step) -> bool {
        let moved = self.spread(&step.z, &step.u);
        let still = |((moved, size), quantity): ((&f64, &f64), &Quantity)| match quantity {
            Quantity::Measured { uncertainty, .. } => {
                moved.abs() <= (STILL_IN_UNCERTAINTIES * uncertainty).max(STILL * size)
            }
            Quantity::Unmeasured { .. } => moved.abs() <= STILL_INFERRED * size,
        };
        moved.iter().zip(&linear.sizes).zip(&self.problem.quantities).all(still)
    }

    /// The point after the whole step, or after a part of it that lowers the merit.
    fn descend(&self, linear: &Linearisation, point: &Iterate, step: &Step, penalty: &mut f64) -> Option<Iterate> {
        let change = DVector::from_vec(self.spread(&step.z, &step.u));
        let now = point.residual_sum(&linear.scales);
        let left = &point.residuals + &point.jacobian * change;
        let gain = now - left.iter().zip(&linear.scales).map(|(left, scale)| (left * scale).abs()).sum::<f64>();
        let uphill = point.z.dot(&step.z);
        if gain > 0.0 {
            *penalty = penalty.max(2.0 * (uphill + 0.5 * step.z.norm_squared()) / gain);
        }
        let merit = |point: &Iterate| 0.5 * point.z.norm_squared() + *penalty * point.residual_sum(&linear.scales);
        let before = merit(point);
        let slope = (uphill - *penalty * gain).min(0.0);
        // Rounding must not look like a rise.
        let rounding = 1e-10 * (1.0 + before) + *penalty * 1e-12;
        let mut part = 1.0;
        for _ in 0..MOST_HALVINGS {
            let next = self.point(&point.z + &step.z * part, &point.u + &step.u * part);
            if next.fault().is_none() && merit(&next) <= before + 1e-4 * part * slope + rounding {
                return Some(next);
            }
            part *= 0.5;
        }
        None
    }
}
