//! Strength brought to the target density by a regression over the test pieces.

use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::Property;
use crate::statistics::covariance::Covariance;
use crate::statistics::distribution::{CONFIDENCE, two_sided_t};
use crate::statistics::regression::{DataPoint, Fit, Model};

/// Slopes that differ so much by chance in fewer cases than this are taken for different.
const DIFFERENT_SLOPES: f64 = 0.05;

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
    /// How many pieces of these boards are in it.
    pub pieces: usize,
    /// Whether the target density lies outside the densities of the pieces.
    pub outside: bool,
    /// How many groups of boards share the slope; 1 where it is that of these boards alone.
    pub groups: usize,
}

/// Density and strength of all pieces of these boards whose density was measured; empty for properties that are no strength.
fn points(property: Property, boards: &[MeasuredBoard]) -> Vec<DataPoint> {
    let point = |density: uom::si::f64::MassDensity, strength: uom::si::f64::Pressure| DataPoint {
        x: density.value,
        y: strength.value,
    };
    let of = |board: &MeasuredBoard| -> Vec<DataPoint> {
        match property {
            Property::BendingStrength => {
                let pieces = board.bending.iter();
                pieces.filter_map(|(_, piece)| Some(point(piece.density?, piece.strength()))).collect()
            }
            Property::InternalBond => {
                let pieces = board.bond.iter();
                pieces.filter_map(|(_, piece)| Some(point(piece.density?, piece.strength()))).collect()
            }
            _ => Vec::new(),
        }
    };
    boards.iter().flat_map(of).collect()
}

/// The strength f = a + b·ρ of all pieces of these boards whose density was measured, at the target density; `None` for
/// properties that are no strength, for fewer than three pieces, and for pieces of one density.
#[must_use]
pub fn at_density(property: Property, boards: &[MeasuredBoard], target: f64) -> Option<AtDensity> {
    let points = points(property, boards);
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
        groups: 1,
    })
}

/// The strength of several groups of boards, each at its own target density. Where their slopes are not different, they share
/// one (analysis of covariance), which makes the most of few pieces; otherwise each group has the line of its own pieces.
#[must_use]
pub fn at_densities(property: Property, groups: &[(&[MeasuredBoard], Option<f64>)]) -> Vec<Option<AtDensity>> {
    let all: Vec<Vec<DataPoint>> = groups.iter().map(|(boards, _)| points(property, boards)).collect();
    let with_points = all.iter().filter(|points| !points.is_empty()).count();
    let shared = Covariance::of(&all).filter(|own| own.slopes_alike.is_none_or(|p| p >= DIFFERENT_SLOPES));
    let one = |(at, (boards, target)): (usize, &(&[MeasuredBoard], Option<f64>))| {
        let target = (*target)?;
        let Some(shared) = &shared else { return at_density(property, boards, target) };
        let mean = shared.at(at, target)?;
        Some(AtDensity {
            property,
            value: mean.value,
            half_width: mean.half_width,
            slope: shared.slope,
            pieces: all.get(at).map_or(0, Vec::len),
            outside: !(shared.tested.low..=shared.tested.high).contains(&target),
            groups: with_points,
        })
    };
    groups.iter().enumerate().map(one).collect()
}
