//! A panel of a drawing: two scales at right angles, with their ticks as places and labels.

use super::drawing::{path, place};
use super::scale::{LinearScale, Ticks};
use crate::quantity::format::DecimalMark;

/// A tick of an axis.
#[derive(Debug, Clone, PartialEq)]
pub struct TickMark {
    /// Its place on the drawing.
    pub at: f64,
    /// Its number.
    pub label: String,
}

/// A panel.
#[derive(Debug, Clone, PartialEq)]
pub struct ChartPanel {
    /// From numbers to places, to the right.
    pub x: LinearScale,
    /// From numbers to places, upward.
    pub y: LinearScale,
    /// The ticks to the right.
    pub across: Vec<TickMark>,
    /// The ticks upward.
    pub up: Vec<TickMark>,
}

/// A straight line, from one x to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineSegment {
    /// Its y at x = 0.
    pub intercept: f64,
    /// y per x.
    pub slope: f64,
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
}

impl LineSegment {
    /// The line at x, also beyond its ends.
    #[must_use]
    pub fn at(&self, x: f64) -> f64 {
        self.intercept + self.slope * x
    }
}

impl ChartPanel {
    /// A panel whose ticks are those of its scales. `signed` puts a plus before positive numbers of the upward axis.
    #[must_use]
    pub fn new(
        (x, across): (LinearScale, Ticks),
        (y, up): (LinearScale, Ticks),
        mark: DecimalMark,
        signed: bool,
    ) -> Self {
        let label = |tick: f64| {
            let plus = if signed && tick > 0.0 { "+" } else { "" };
            format!("{plus}{}", up.label(tick, mark))
        };
        Self {
            x,
            y,
            across: across.iter().map(|tick| TickMark { at: x.place(tick), label: across.label(tick, mark) }).collect(),
            up: up.iter().map(|tick| TickMark { at: y.place(tick), label: label(tick) }).collect(),
        }
    }

    /// The place of a point.
    #[must_use]
    pub fn place(&self, (x, y): (f64, f64)) -> (f64, f64) {
        (place(self.x.place(x)), place(self.y.place(y)))
    }

    /// Whether a point is within the panel.
    #[must_use]
    pub fn holds(&self, (x, y): (f64, f64)) -> bool {
        let within = |(low, high): (f64, f64), number: f64| (low..=high).contains(&number);
        within(self.x.domain, x) && within(self.y.domain, y)
    }

    /// A path through points.
    #[must_use]
    pub fn path(&self, points: impl IntoIterator<Item = (f64, f64)>) -> String {
        path(points.into_iter().map(|point| Some(self.place(point))))
    }

    /// The part of a straight line that is within the panel, as its two ends; `None` where none is.
    #[must_use]
    pub fn clip(&self, line: &LineSegment) -> Option<[(f64, f64); 2]> {
        let (mut from, mut to) = (line.from.max(self.x.domain.0), line.to.min(self.x.domain.1));
        let (low, high) = self.y.domain;
        if line.slope == 0.0 {
            if !(low..=high).contains(&line.intercept) {
                return None;
            }
        } else {
            let at = |y: f64| (y - line.intercept) / line.slope;
            let (one, other) = (at(low), at(high));
            from = from.max(one.min(other));
            to = to.min(one.max(other));
        }
        (from < to).then(|| [(from, line.at(from)), (to, line.at(to))])
    }
}
