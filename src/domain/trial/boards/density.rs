//! Density of boards against the target of their own run, split into mass, thickness and moisture, and the furnish for
//! the next mat.

use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::Property;
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::weigh_sheet::sheet::WeighSheet;
use crate::quantity::{Amount, Kind};
use crate::statistics::sample::SampleSummary;
use uom::si::f64::{Length, Mass, Ratio};

/// A mean density that misses its target by more than this share of it is pointed out.
///
/// Common practice, no source.
pub const OFF_TARGET: f64 = 0.03;

/// What the deviation of the measured density comes from. The parts add up to the whole.
///
/// ρ/ρ* = (m/m*)·(t*/t)·((1+ω)/(1+ω*)), with m the oven-dry mass per area. Each factor f has the share
/// d·ln f/Σ ln f of the deviation d: the logarithmic-mean split, exact and independent of the order of the factors.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DensitySplit {
    /// Measured density over target − 1.
    pub total: Ratio,
    /// From the oven-dry mass per area.
    pub mass: Ratio,
    /// From the thickness: a thicker board is lighter per volume.
    pub thickness: Ratio,
    /// From the moisture at which the board was measured.
    pub moisture: Ratio,
}

/// Density against the target.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DensityTarget {
    /// Target density at the target board moisture.
    pub target: f64,
    /// Mean density of the boards, brought to that moisture where their own was measured.
    pub made: f64,
    /// Target thickness: pressed, or finished where the boards are sanded.
    pub target_thickness: Length,
    /// Mean thickness of the boards.
    pub thickness: Length,
    /// Whether the boards' own moisture was measured. Otherwise they count as being at the target.
    pub moisture_known: bool,
    /// made/target − 1.
    pub deviation: Ratio,
    /// What the deviation of the measured density comes from.
    pub split: DensitySplit,
    /// Furnish really laid for a mat, the mean of the boards that have it recorded.
    pub laid: Option<Mass>,
    /// By how much the next mat is to be multiplied: target over actual oven-dry mass per area. The thickness is the
    /// stops' affair and not corrected with furnish.
    pub correction: Ratio,
    /// Resinated furnish for the next mat: what was laid, or else the sheet's, times the correction.
    pub next_mat: Mass,
}

/// Compares boards of one run, or of runs with the same target, with their weigh sheet; `None` without a density and a
/// thickness.
///
/// The mean oven-dry density of the boards, ρ₀, is brought to the target board moisture as ρ₀·(1+ω_b), which takes the
/// board's volume at both moistures for the same.
#[must_use]
pub fn density_target(sheet: &WeighSheet, boards: &[MeasuredBoard]) -> Option<DensityTarget> {
    let board = &sheet.plan.case.input.board;
    let mean = |property| {
        let values: Vec<f64> = boards.iter().filter_map(|board| board.mean(property)).collect();
        SampleSummary::of(&values).map(|summary| summary.mean)
    };
    let dry = mean(Property::OvenDryDensity).map(|dry| dry * board.moisture.wet_per_dry().value);
    let measured = mean(Property::Density)?;
    let made = dry.unwrap_or(measured);
    let thickness = mean(Property::Thickness)?;
    let sanded = boards.iter().all(|board| board.sanded);
    let target_thickness = if sanded { board.thickness } else { sheet.stops };
    // Before sanding the faces are in it, which may be denser than the mean.
    let target = if sanded { board.density.value } else { (sheet.mat.raw_board / sheet.mat.area / sheet.stops).value };
    let target_area = target * target_thickness.value;
    let mass = made * thickness / target_area;
    let moisture = measured / made;
    let whole = measured / target;
    // Mass and moisture are measured; the rest of the deviation is the thickness.
    let slim = whole / (mass * moisture);
    let shares = shares(whole, [mass, slim, moisture]);
    let laid: Vec<f64> = boards.iter().filter_map(|board| board.laid).map(|laid| laid.value).collect();
    let laid = SampleSummary::of(&laid).map(|summary| si!(Mass, summary.mean));
    let correction = si!(Ratio, 1.0 / mass);
    let target = DensityTarget {
        target,
        made,
        target_thickness,
        thickness: si!(Length, thickness),
        moisture_known: dry.is_some(),
        deviation: si!(Ratio, made / target - 1.0),
        split: DensitySplit {
            total: si!(Ratio, whole - 1.0),
            mass: si!(Ratio, shares[0]),
            thickness: si!(Ratio, shares[1]),
            moisture: si!(Ratio, shares[2]),
        },
        laid,
        correction,
        next_mat: laid.unwrap_or(sheet.mat.moist) * correction,
    };
    (correction.value.is_normal() && target.next_mat.is_finite()).then_some(target)
}

/// The share of each factor in whole − 1; the factors multiply to the whole.
fn shares(whole: f64, factors: [f64; 3]) -> [f64; 3] {
    let log = whole.ln();
    // The limit of (w − 1)/ln w at w = 1.
    let scale = if log.abs() < 1e-12 { 1.0 } else { (whole - 1.0) / log };
    factors.map(|factor| scale * factor.ln())
}

/// What the target gives to say.
#[must_use]
pub fn off_target(target: &DensityTarget) -> Option<TrialFinding> {
    let amount = |base| Amount::from_base(Kind::BoardDensity, base);
    let what = TrialProblem::OffTarget { value: amount(target.made), target: amount(target.target) };
    (target.deviation.value.abs() > OFF_TARGET)
        .then(|| TrialFinding::unusual(TrialPlace::Property(Property::Density), what))
}
