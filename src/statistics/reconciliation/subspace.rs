//! Directions in which errors of readings show.
//!
//! In the space of the independent constraints an error of a reading moves the scores along its signature. Leaving
//! the reading out removes that direction, and χ² falls by the square of the scores' part along it. Two readings
//! whose signatures are parallel cannot be told from each other, whatever the data.

use super::result::ErrorSpace;
use nalgebra::{DMatrix, DVector};

/// The square of the sine below which two signatures are parallel.
pub(super) const PARALLEL: f64 = 1e-12;

/// Signatures of unit length, and the scores.
#[derive(Debug, Clone)]
pub(super) struct Signatures {
    /// Quantity of each signature.
    pub quantities: Vec<usize>,
    pub directions: DMatrix<f64>,
    pub scores: DVector<f64>,
}

impl Signatures {
    /// Those of the checked readings.
    pub(super) fn new(basis: &ErrorSpace) -> Self {
        let places: Vec<usize> = (0..basis.measured.len()).filter(|place| basis.checked[*place]).collect();
        let mut directions = basis.signatures.select_columns(&places);
        for mut direction in directions.column_iter_mut() {
            let length = direction.norm();
            if length > 0.0 {
                direction /= length;
            }
        }
        let quantities = places.iter().map(|place| basis.measured[*place]).collect();
        Self { quantities, directions, scores: basis.scores.clone() }
    }

    /// The same with the readings of some places left out. A signature that lies within theirs becomes zero.
    pub(super) fn without(&self, places: &[usize]) -> Self {
        let mut left = self.clone();
        for place in places {
            let direction = left.directions.column(*place).into_owned();
            let part = left.scores.dot(&direction);
            left.scores.axpy(-part, &direction, 1.0);
            for mut column in left.directions.column_iter_mut() {
                remove(&mut column, &direction);
            }
        }
        left
    }

    /// Part of the scores along a signature: the statistic of the measurement test.
    pub(super) fn statistic(&self, place: usize) -> f64 {
        self.directions.column(place).dot(&self.scores).abs()
    }

    /// Whether the errors of two readings show alike. Nothing is like a reading that does not show.
    pub(super) fn parallel(&self, first: usize, second: usize) -> bool {
        let (first, second) = (self.directions.column(first), self.directions.column(second));
        first.norm() > 0.0 && second.norm() > 0.0 && sine_squared(&first.into_owned(), &second.into_owned()) <= PARALLEL
    }
}

/// Removes the part along `direction`, which is of unit length or zero, and restores unit length.
fn remove<S: nalgebra::StorageMut<f64, nalgebra::Dyn>>(
    column: &mut nalgebra::Matrix<f64, nalgebra::Dyn, nalgebra::U1, S>,
    direction: &DVector<f64>,
) {
    let part = column.dot(direction);
    column.axpy(-part, direction, 1.0);
    let length = column.norm();
    if length > PARALLEL.sqrt() {
        column.scale_mut(1.0 / length);
    } else {
        column.fill(0.0);
    }
}

/// The square of the sine between two directions of any length.
pub(super) fn sine_squared(first: &DVector<f64>, second: &DVector<f64>) -> f64 {
    let (first, second) = (first.normalize(), second.normalize());
    let cosine = first.dot(&second);
    (second - first * cosine).norm_squared()
}
