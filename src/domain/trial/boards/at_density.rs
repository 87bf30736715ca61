//! Strength brought to the target density by a regression over the test pieces.

use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::Property;
use crate::statistics::distribution::{CONFIDENCE, two_sided_t};
use crate::statistics::regression::{DataPoint, Fit, Model};

/// A strength at the target density.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AtDensity {
    /// The property.
    pub property: Property,
    /// The strength on the line at the target density.
    pub value: f64,
    /// Half the width of the 95 % confidence interval of the line there.
    pub half_width: f64,
    /// Strength per density.
    pub slope: f64,
    /// How many pieces are in it.
    pub pieces: usize,
    /// Whether the target density lies outside the densities of the pieces.
    pub outside: bool,
}

/// The strength f = a + b·ρ of all pieces of these boards whose density was measured, at the target density; `None` for
/// properties that are no strength, for fewer than three pieces, and for pieces of one density.
#[must_use]
pub fn at_density(property: Property, boards: &[MeasuredBoard], target: f64) -> Option<AtDensity> {
    let mut points = Vec::new();
    for board in boards {
        match property {
            Property::BendingStrength => points.extend(board.bending.iter().filter_map(|(_, piece)| {
                piece.density.map(|density| DataPoint { x: density.value, y: piece.strength().value })
            })),
            Property::InternalBond => points.extend(board.bond.iter().filter_map(|(_, piece)| {
                piece.density.map(|density| DataPoint { x: density.value, y: piece.strength().value })
            })),
            _ => return None,
        }
    }
    let fit = Fit::through(&points, Model::WithIntercept).ok()?;
    let t = two_sided_t(CONFIDENCE, f64::from(fit.freedom()))?;
    let half_width = t * fit.sd_of_mean(target)?;
    let outside = !(fit.tested.low..=fit.tested.high).contains(&target);
    let value = fit.at(target);
    (value.is_finite() && half_width.is_finite()).then_some(AtDensity {
        property,
        value,
        half_width,
        slope: fit.slope,
        pieces: points.len(),
        outside,
    })
}
