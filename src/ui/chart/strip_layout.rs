//! The balance drawn to scale along the stations: how thick each stream is and where it runs.
//!
//! Thickness is mass flow, everywhere by the same scale. Lengths along the line say nothing, so the
//! drawing may be stretched sideways.

use std::fmt::Write;

/// Width of a station's part of the drawing.
pub const WIDTH: f64 = 100.0;
/// Height of the drawing.
pub const HEIGHT: f64 = 72.0;
/// Between the main stream and what joins or leaves it.
const GAP: f64 = 6.0;
/// Above the topmost and below the lowest stream.
const MARGIN: f64 = 2.0;

/// Solids and water of a stream, in any unit of mass flow.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Stream {
    /// Oven-dry mass flow.
    pub solids: f64,
    /// Water.
    pub water: f64,
}

impl Stream {
    fn total(self) -> f64 {
        self.solids + self.water
    }
}

/// What passes a station.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Leg {
    /// What comes from the station before.
    pub arrives: Stream,
    /// What is added here.
    pub added: Stream,
    /// What leaves the line here.
    pub lost: Stream,
    /// What goes on to the next station.
    pub goes_on: Stream,
}

/// What a shape stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// Solids.
    Solids,
    /// Water.
    Water,
}

/// One filled shape.
#[derive(Debug, Clone, PartialEq)]
pub struct Shape {
    /// What it stands for.
    pub part: Part,
    /// The outline, as the `d` of an SVG path.
    pub outline: String,
}

/// The shapes of the whole strip, those behind first. Empty where nothing flows.
#[must_use]
pub fn shapes(legs: &[Leg]) -> Vec<Shape> {
    let Some(scale) = scale(legs) else { return Vec::new() };
    let most = legs.iter().map(|leg| leg.arrives.total().max(leg.goes_on.total())).fold(0.0, f64::max);
    let floor = MARGIN + GAP + most * scale;
    let mut behind = Vec::new();
    let mut before = Vec::new();
    for (at, leg) in legs.iter().enumerate() {
        let left = at as f64 * WIDTH;
        let thick = |stream: Stream| Stream { solids: stream.solids * scale, water: stream.water * scale };
        let (arrives, goes_on) = (thick(leg.arrives), thick(leg.goes_on));
        let (added, lost) = (thick(leg.added), thick(leg.lost));
        if added.total() > 0.0 {
            let from = floor - arrives.total() - GAP - added.total();
            let to = floor - goes_on.total();
            pair(&mut behind, added, |top, thick| joining(left, from + top, to + top, thick));
        }
        if lost.total() > 0.0 {
            let from = floor - lost.total();
            pair(&mut behind, lost, |top, thick| leaving(left, from + top, floor + GAP + top, thick));
        }
        for (part, before_edge, after_edge, upper_before, upper_after) in [
            (Part::Solids, 0.0, 0.0, arrives.solids, goes_on.solids),
            (Part::Water, arrives.solids, goes_on.solids, arrives.total(), goes_on.total()),
        ] {
            if upper_before > before_edge || upper_after > after_edge {
                let outline = passing(
                    left,
                    (floor - upper_before, floor - upper_after),
                    (floor - before_edge, floor - after_edge),
                );
                before.push(Shape { part, outline });
            }
        }
    }
    behind.append(&mut before);
    behind
}

/// Thickness per mass flow, so that the thickest stream and the thickest loss fit.
fn scale(legs: &[Leg]) -> Option<f64> {
    let most = |of: fn(&Leg) -> f64| legs.iter().map(of).fold(0.0, f64::max);
    let main = most(|leg| leg.arrives.total().max(leg.goes_on.total()));
    let all = main + most(|leg| leg.lost.total());
    let scale = (HEIGHT - 2.0 * (MARGIN + GAP)) / all;
    (main > 0.0 && scale.is_finite()).then_some(scale)
}

/// Water above, solids below, each drawn from its upper edge and thickness.
fn pair(shapes: &mut Vec<Shape>, stream: Stream, outline: impl Fn(f64, f64) -> String) {
    for (part, top, thick) in [(Part::Water, 0.0, stream.water), (Part::Solids, stream.water, stream.solids)] {
        if thick > 0.0 {
            shapes.push(Shape { part, outline: outline(top, thick) });
        }
    }
}

/// The main stream through a station: both edges pass from one height to another in its middle.
fn passing(left: f64, top: (f64, f64), bottom: (f64, f64)) -> String {
    let (a, b, middle, right) = (left + 40.0, left + 60.0, left + 50.0, left + WIDTH);
    let mut path = String::new();
    _ = write!(path, "M{left:.2},{:.2}H{a:.2}C{middle:.2},{:.2} {middle:.2},{:.2} ", top.0, top.0, top.1);
    _ = write!(path, "{b:.2},{:.2}H{right:.2}V{:.2}H{b:.2}", top.1, bottom.1);
    _ = write!(path, "C{middle:.2},{:.2} {middle:.2},{:.2} {a:.2},{:.2}H{left:.2}Z", bottom.1, bottom.0, bottom.0);
    path
}

/// A stream that comes in above the main one and joins it.
fn joining(left: f64, from: f64, to: f64, thick: f64) -> String {
    bent((left + 8.0, left + 24.0), (left + 52.0, left + 56.0), (from, to), thick)
}

/// A stream that parts from the main one and leaves below it.
fn leaving(left: f64, from: f64, to: f64, thick: f64) -> String {
    bent((left + 44.0, left + 48.0), (left + 76.0, left + 92.0), (from, to), thick)
}

/// A stream at one height along `before`, at another along `after`, and bent in between.
fn bent(before: (f64, f64), after: (f64, f64), tops: (f64, f64), thick: f64) -> String {
    let middle = f64::midpoint(before.1, after.0);
    let (low, high) = (tops.0 + thick, tops.1 + thick);
    let mut path = String::new();
    _ = write!(path, "M{:.2},{:.2}H{:.2}", before.0, tops.0, before.1);
    _ = write!(path, "C{middle:.2},{:.2} {middle:.2},{:.2} {:.2},{:.2}", tops.0, tops.1, after.0, tops.1);
    _ = write!(path, "H{:.2}V{high:.2}H{:.2}", after.1, after.0);
    _ = write!(path, "C{middle:.2},{high:.2} {middle:.2},{low:.2} {:.2},{low:.2}H{:.2}Z", before.1, before.0);
    path
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    fn stream(solids: f64, water: f64) -> Stream {
        Stream { solids, water }
    }

    /// A blender that adds and a sifter that rejects.
    fn legs() -> Vec<Leg> {
        vec![
            Leg { arrives: stream(100.0, 5.0), goes_on: stream(100.0, 5.0), ..Leg::default() },
            Leg {
                arrives: stream(100.0, 5.0),
                added: stream(10.0, 5.0),
                goes_on: stream(110.0, 10.0),
                ..Leg::default()
            },
            Leg { arrives: stream(110.0, 10.0), lost: stream(11.0, 1.0), goes_on: stream(99.0, 9.0), ..Leg::default() },
        ]
    }

    /// The vertical coordinates that a path names, in order.
    fn heights(path: &str) -> Vec<f64> {
        let mut heights: Vec<f64> = path.split(',').skip(1).filter_map(number).collect();
        heights.extend(path.split('V').skip(1).filter_map(number));
        heights
    }

    fn number(text: &str) -> Option<f64> {
        let end = text.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == '-')).unwrap_or(text.len());
        text[..end].parse().ok()
    }

    fn spread(shape: &Shape) -> f64 {
        let heights = heights(&shape.outline);
        heights.iter().copied().fold(f64::MIN, f64::max) - heights.iter().copied().fold(f64::MAX, f64::min)
    }

    #[test]
    fn thickness_is_mass_flow_by_one_scale() {
        let shapes = shapes(&legs());
        // Main streams lie before the others: solids and water of three stations, then nothing.
        let main: Vec<&Shape> = shapes.iter().skip(4).collect();
        assert_eq!(main.len(), 6);
        let per_mass = spread(main[0]) / 100.0;
        assert!((per_mass * (120.0 + 12.0) - (HEIGHT - 16.0)).abs() < 0.1);
        assert!((spread(main[1]) / 5.0 / per_mass - 1.0).abs() < 0.01);
    }

    #[test]
    fn everything_stays_inside_the_drawing() {
        let mut heavy = legs();
        heavy[2].lost = stream(100.0, 9.0);
        heavy[2].goes_on = stream(10.0, 1.0);
        let mut light = legs();
        light[1] = Leg { arrives: stream(1.0, 0.0), added: stream(100.0, 19.0), ..light[1] };
        for case in [legs(), heavy, light] {
            for shape in shapes(&case) {
                for height in heights(&shape.outline) {
                    assert!((0.0..=HEIGHT).contains(&height), "{height} in {}", shape.outline);
                }
            }
        }
    }

    #[test]
    fn nothing_is_drawn_of_nothing() {
        assert_eq!(shapes(&[]), []);
        assert_eq!(shapes(&[Leg::default()]), []);
        let broken = Leg { arrives: stream(f64::NAN, 0.0), ..Leg::default() };
        assert_eq!(shapes(&[broken]), []);
        let dry = Leg { arrives: stream(1.0, 0.0), goes_on: stream(1.0, 0.0), ..Leg::default() };
        assert_eq!(shapes(&[dry]).iter().map(|shape| shape.part).collect::<Vec<_>>(), [Part::Solids]);
    }
}
