//! Boards made against what was wanted: density with the correction for the next mat, requirements, and
//! the profile within a board.

use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::Limit;
use crate::domain::trial::boards::field::{BoardField, PieceField};
use crate::domain::trial::boards::measured::Board;
use crate::domain::trial::boards::property::{Property, Tail};
use crate::domain::trial::finding::{Finding, Place, What};
use crate::domain::trial::weigh_sheet::sheet::Sheet;
use crate::quantity::{Amount, Kind, Unit};
use crate::statistics::sample::SampleSummary;
use serde::{Deserialize, Serialize};
use uom::si::f64::{Length, Mass, Ratio};

/// Density within a board may differ by so much from its mean, a share of it (EN 622-1).
pub const DENSITY_SPREAD: f64 = 0.07;
/// A mean density that misses the one wanted by more than this share of it is pointed out.
///
/// Common practice, no source.
pub const OFF_TARGET: f64 = 0.03;

/// A property over all boards: each board counts once, with the mean of its pieces.
#[derive(Debug, Clone, PartialEq)]
pub struct PropertyResult {
    /// The property.
    pub property: Property,
    /// The mean of each board that gives it, with the board's place in the list.
    pub boards: Vec<(usize, f64)>,
    /// What the means come to.
    pub summary: SampleSummary,
}

/// What several boards come to, of every property that any of them gives.
#[must_use]
pub fn results(boards: &[Board]) -> Vec<PropertyResult> {
    let of = |property: &Property| {
        let means: Vec<(usize, f64)> =
            boards.iter().enumerate().filter_map(|(at, board)| Some((at, board.mean(*property)?))).collect();
        let values: Vec<f64> = means.iter().map(|(_, mean)| *mean).collect();
        Some(PropertyResult { property: *property, boards: means, summary: SampleSummary::of(&values)? })
    };
    Property::ALL.iter().filter_map(of).collect()
}

/// Density against the one wanted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DensityTarget {
    /// Density wanted at the board moisture wanted.
    pub wanted: f64,
    /// Mean density of the boards, brought to that moisture where their own was measured.
    pub made: f64,
    /// Whether the boards' own moisture was measured. Otherwise they count as being at the one wanted.
    pub moisture_known: bool,
    /// made/wanted − 1.
    pub deviation: Ratio,
    /// By how much the next mat is to be multiplied, wanted/made, pressed to the same thickness.
    pub correction: Ratio,
    /// Resinated furnish for the next mat: the sheet's times the correction.
    pub next_mat: Mass,
}

/// Holds the boards' density against the sheet's.
///
/// The mean oven-dry density of the boards, ρ₀, is brought to the board moisture wanted as ρ₀·(1+ω_b),
/// which takes the board's volume at both moistures for the same. The mat for the next board, pressed to
/// the same thickness, is the sheet's times wanted/made: density follows mass where the volume stays.
/// `None` without a density.
#[must_use]
pub fn density_target(sheet: &Sheet, boards: &[Board]) -> Option<DensityTarget> {
    let board = &sheet.plan.case.input.board;
    let wanted = board.density.value;
    let mean = |property| {
        let values: Vec<f64> = boards.iter().filter_map(|board| board.mean(property)).collect();
        SampleSummary::of(&values).map(|summary| summary.mean)
    };
    let dry = mean(Property::OvenDryDensity).map(|dry| dry * board.moisture.wet_per_dry().value);
    let made = dry.or_else(|| mean(Property::Density))?;
    let correction = si!(Ratio, wanted / made);
    let target = DensityTarget {
        wanted,
        made,
        moisture_known: dry.is_some(),
        deviation: si!(Ratio, made / wanted - 1.0),
        correction,
        next_mat: sheet.mat.moist * correction,
    };
    (correction.value.is_normal() && target.next_mat.is_finite()).then_some(target)
}

/// What the target gives to say.
#[must_use]
pub fn off_target(target: &DensityTarget) -> Option<Finding> {
    let amount = |base| Amount::from_base(Kind::BoardDensity, base);
    let what = What::OffTarget { value: amount(target.made), wanted: amount(target.wanted) };
    (target.deviation.value.abs() > OFF_TARGET).then(|| Finding::unusual(Place::Property(Property::Density), what))
}

/// A requirement as typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct RequirementDraft {
    /// Of which property; only those with a [`Tail`] can be required.
    pub property: Property,
    /// At least or at most so much.
    pub value: Entry,
}

/// What a required property comes to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Judged {
    /// The property.
    pub property: Property,
    /// What is required.
    pub required: f64,
    /// What is held against it: the quantile on the requirement's side.
    pub value: Option<f64>,
    /// Whether it is met; `None` with too few boards to tell.
    pub met: Option<bool>,
}

/// What a requirement may hold.
#[must_use]
pub const fn requirement_limit(property: Property) -> Limit {
    match property.kind() {
        Kind::Strength => Limit::above_to(Unit::NewtonPerSquareMillimetre, 0.0, 100_000.0).optional(),
        _ => Limit::above_to(Unit::Percent, 0.0, 500.0).optional(),
    }
}

/// Holds the boards against what is required. Requirements of standards are meant for the 5 % quantile
/// on the means of boards (EN 622-1 and EN 326-1, from memory), so they are held against that one.
#[must_use]
pub fn judge(results: &[PropertyResult], requirements: &[RequirementDraft]) -> (Vec<Judged>, Vec<Finding>) {
    let (mut judged, mut findings) = (Vec::new(), Vec::new());
    for requirement in requirements {
        let property = requirement.property;
        let place = Place::Property(property);
        let Some(tail) = property.tail() else { continue };
        let required = match read_entry(&requirement.value, property.kind(), &requirement_limit(property)) {
            Ok(Some(required)) => required,
            Ok(None) => continue,
            Err(what) => {
                findings.push(Finding::stop(place, What::Entry(what)));
                continue;
            }
        };
        let Some(result) = results.iter().find(|result| result.property == property) else { continue };
        let value = match tail {
            Tail::Lower => result.summary.lower,
            Tail::Upper => result.summary.upper,
        };
        let met = value.map(|value| match tail {
            Tail::Lower => value >= required,
            Tail::Upper => value <= required,
        });
        match (met, value) {
            (Some(false), Some(value)) => {
                let amount = |base| Amount::from_base(property.kind(), base);
                let what = What::MissesRequirement { value: amount(value), required: amount(required) };
                findings.push(Finding::unusual(place, what));
            }
            (None, _) => findings.push(Finding::note(place, What::TooFewBoards)),
            _ => {}
        }
        judged.push(Judged { property, required, value, met });
    }
    (judged, findings)
}

/// Density at one place of a board.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProfilePoint {
    /// The piece, by its place among the entries.
    pub piece: u8,
    /// Place, from one edge.
    pub position: Length,
    /// Density there.
    pub density: f64,
    /// Its share above or below the mean of the profile.
    pub deviation: f64,
}

/// Density over the positions of a board's pieces, in their order; empty without positions.
#[must_use]
pub fn profile(board: &Board) -> Vec<ProfilePoint> {
    let placed: Vec<(u8, Length, f64)> = board
        .pieces
        .iter()
        .filter_map(|(at, piece)| Some((*at, piece.position?, piece.density().value)))
        .filter(|(.., density)| density.is_finite())
        .collect();
    let mean = placed.iter().map(|(.., density)| density).sum::<f64>() / placed.len() as f64;
    let mut profile: Vec<ProfilePoint> = placed
        .into_iter()
        .map(|(piece, position, density)| ProfilePoint { piece, position, density, deviation: density / mean - 1.0 })
        .collect();
    profile.sort_by(|one, other| one.position.value.total_cmp(&other.position.value));
    profile
}

/// What a profile gives to say.
#[must_use]
pub fn uneven(board: &Board) -> Option<Finding> {
    let worst = profile(board).into_iter().max_by(|a, b| a.deviation.abs().total_cmp(&b.deviation.abs()))?;
    let what = What::UnevenProfile { deviation: Amount::from_base(Kind::Share, worst.deviation) };
    let place = Place::Board(board.id, BoardField::Piece(worst.piece, PieceField::Position));
    (worst.deviation.abs() > DENSITY_SPREAD).then(|| Finding::unusual(place, what))
}
