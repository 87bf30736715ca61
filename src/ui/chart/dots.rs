//! Values of several systems on one axis: where each mark, label, end and range is. Geometry only.

use super::scale::{LinearScale, Ticks};
use super::series::letter;
use crate::quantity::format::DecimalMark;

/// Height of a strip.
pub const HEIGHT: f64 = 44.0;
/// Height of its axis.
pub const AXIS: f64 = 30.0;
/// Room for the number at either end.
const END: f64 = 64.0;
/// Marks nearer to each other than this have one label.
const APART: f64 = 15.0;

/// What is drawn, in the unit shown.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct DotValues {
    /// The value of each system; `None` where it has none.
    pub values: Vec<Option<f64>>,
    /// A value of now, beside which they are read.
    pub now: Option<f64>,
    /// A typical range.
    pub typical: Option<(f64, f64)>,
}

/// Where everything is.
#[derive(Debug, Clone, PartialEq)]
pub struct DotStrip {
    /// Both ends of the axis.
    pub axis: (f64, f64),
    /// The numbers at its ends.
    pub ends: (String, String),
    /// The place of each system's mark, by its place in the comparison.
    pub marks: Vec<(usize, f64)>,
    /// The letters above them, joined where marks are close.
    pub labels: Vec<(f64, String)>,
    /// The value of now.
    pub now: Option<f64>,
    /// The part of the typical range that is on the axis.
    pub typical: Option<(f64, f64)>,
}

/// The strip for a width; `None` with fewer than two values.
#[must_use]
pub fn dot_strip(width: f64, of: &DotValues, mark: DecimalMark) -> Option<DotStrip> {
    let values = || of.values.iter().flatten().copied();
    if values().count() < 2 || width < 3.0 * END {
        return None;
    }
    let (left, right) = (END, width - END);
    let numbers = || values().chain(of.now);
    let low = numbers().fold(f64::INFINITY, f64::min);
    let high = numbers().fold(f64::NEG_INFINITY, f64::max);
    let around = LinearScale::new((low, high), (left, right))?.domain;
    let ticks = Ticks::new(around.0, around.1, 4)?;
    // Both ends are round numbers.
    let domain = ((around.0 / ticks.step).floor() * ticks.step, (around.1 / ticks.step).ceil() * ticks.step);
    let scale = LinearScale::new(domain, (left, right))?;
    let ends = (ticks.label(domain.0, mark), ticks.label(domain.1, mark));
    let mut marks: Vec<(usize, f64)> =
        of.values.iter().enumerate().filter_map(|(at, value)| value.map(|value| (at, scale.place(value)))).collect();
    let mut by_place = marks.clone();
    by_place.sort_by(|one, other| one.1.total_cmp(&other.1));
    let mut labels: Vec<(f64, f64, String)> = Vec::new();
    for (at, place) in by_place {
        match labels.last_mut().filter(|(_, last, _)| place - *last < APART) {
            Some((_, last, words)) => {
                *last = place;
                words.push(' ');
                words.push(letter(at));
            }
            None => labels.push((place, place, letter(at).to_string())),
        }
    }
    // The reference's hollow mark lies below the others.
    marks.reverse();
    let inside = |number: f64| scale.place(number).clamp(left, right);
    let typical = of.typical.map(|(low, high)| (inside(low), inside(high))).filter(|(from, to)| to - from > 0.5);
    Some(DotStrip {
        axis: (left, right),
        ends,
        marks,
        labels: labels.into_iter().map(|(first, last, words)| (f64::midpoint(first, last), words)).collect(),
        now: of.now.map(|now| scale.place(now)),
        typical,
    })
}
