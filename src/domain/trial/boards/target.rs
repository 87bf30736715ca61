//! Requirements of the boards made, and the density profile within a board.

use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::Limit;
use crate::domain::recipe::product::BoardKind;
use crate::domain::trial::boards::field::{BoardField, PieceField};
use crate::domain::trial::boards::group::PropertyResult;
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::{Property, Tail};
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::quantity::{Amount, Kind, Unit};
use serde::{Deserialize, Serialize};
use uom::si::f64::Length;

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
    /// Whether nobody typed it: it is from memory, and not verified.
    pub unverified: bool,
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
pub fn judge(results: &[PropertyResult], requirements: &[RequirementDraft]) -> (Vec<Judged>, Vec<TrialFinding>) {
    let (mut judged, mut findings) = (Vec::new(), Vec::new());
    for requirement in requirements {
        let property = requirement.property;
        let place = TrialPlace::Property(property);
        let Some(tail) = property.tail() else { continue };
        let required = match read_entry(&requirement.value, property.kind(), &requirement_limit(property)) {
            Ok(Some(required)) => required,
            Ok(None) => continue,
            Err(what) => {
                findings.push(TrialFinding::stop(place, TrialProblem::Entry(what)));
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
                let what = TrialProblem::MissesRequirement { value: amount(value), required: amount(required) };
                findings.push(TrialFinding::unusual(place, what));
            }
            (None, _) => findings.push(TrialFinding::note(place, TrialProblem::TooFewBoards)),
            _ => {}
        }
        judged.push(Judged { property, required, unverified: requirement.value.preset, value, met });
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
pub fn profile(board: &MeasuredBoard) -> Vec<ProfilePoint> {
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

/// What a profile gives to say of a board of that kind; nothing of one without a standard for its density.
#[must_use]
pub fn uneven(board: &MeasuredBoard, kind: BoardKind) -> Option<TrialFinding> {
    let spread = kind.density_spread()?;
    let worst = profile(board).into_iter().max_by(|a, b| a.deviation.abs().total_cmp(&b.deviation.abs()))?;
    let what = TrialProblem::UnevenProfile { deviation: Amount::from_base(Kind::Share, worst.deviation), kind };
    let place = TrialPlace::Board(board.id, BoardField::Piece(worst.piece, PieceField::Position));
    (worst.deviation.abs() > spread).then(|| TrialFinding::unusual(place, what))
}
