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
pub struct StripStream {
    /// Oven-dry mass flow.
    pub solids: f64,
    /// Water.
    pub water: f64,
}

impl StripStream {
    fn total(self) -> f64 {
        self.solids + self.water
    }
}

/// What passes a station.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Leg {
    /// What comes from the station before.
    pub arrives: StripStream,
    /// What is added here.
    pub added: StripStream,
    /// What leaves the line here.
    pub lost: StripStream,
    /// What goes on to the next station.
    pub goes_on: StripStream,
}

/// The outlines of all streams, each the `d` of an SVG path: solids and water apart, and what joins
/// or leaves the main stream apart from it, as it lies behind. Blank where nothing flows.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Outlines {
    /// Solids that join or leave.
    pub side_solids: String,
    /// Water that joins or leaves.
    pub side_water: String,
    /// Solids of the main stream.
    pub solids: String,
    /// Water of the main stream.
    pub water: String,
}

/// The outlines of the whole strip.
#[must_use]
pub fn outlines(legs: &[Leg]) -> Outlines {
    let mut all = Outlines::default();
    let Some(scale) = scale(legs) else { return all };
    let most = legs.iter().map(|leg| leg.arrives.total().max(leg.goes_on.total())).fold(0.0, f64::max);
    let floor = MARGIN + GAP + most * scale;
    for (at, leg) in legs.iter().enumerate() {
        let left = at as f64 * WIDTH;
        let thick = |stream: StripStream| StripStream { solids: stream.solids * scale, water: stream.water * scale };
        let (arrives, goes_on) = (thick(leg.arrives), thick(leg.goes_on));
        let (added, lost) = (thick(leg.added), thick(leg.lost));
        if added.total() > 0.0 {
            let from = floor - arrives.total() - GAP - added.total();
            let to = floor - goes_on.total();
            all.side(added, |top, thick| joining(left, from + top, to + top, thick));
        }
        if lost.total() > 0.0 {
            let from = floor - lost.total();
            all.side(lost, |top, thick| leaving(left, from + top, floor + GAP + top, thick));
        }
        for (outlines, lower, upper) in [
            (&mut all.solids, (0.0, 0.0), (arrives.solids, goes_on.solids)),
            (&mut all.water, (arrives.solids, goes_on.solids), (arrives.total(), goes_on.total())),
        ] {
            if upper.0 > lower.0 || upper.1 > lower.1 {
                let edge = |heights: (f64, f64)| (floor - heights.0, floor - heights.1);
                outlines.push_str(&passing(left, edge(upper), edge(lower)));
            }
        }
    }
    all
}

impl Outlines {
    /// Water above, solids below, each drawn from its upper edge and thickness.
    fn side(&mut self, stream: StripStream, outline: impl Fn(f64, f64) -> String) {
        let parts = [(&mut self.side_water, 0.0, stream.water), (&mut self.side_solids, stream.water, stream.solids)];
        for (outlines, top, thick) in parts {
            if thick > 0.0 {
                outlines.push_str(&outline(top, thick));
            }
        }
    }
}

/// Thickness per mass flow, so that the thickest stream and the thickest loss fit.
fn scale(legs: &[Leg]) -> Option<f64> {
    let most = |of: fn(&Leg) -> f64| legs.iter().map(of).fold(0.0, f64::max);
    let main = most(|leg| leg.arrives.total().max(leg.goes_on.total()));
    let all = main + most(|leg| leg.lost.total());
    let scale = (HEIGHT - 2.0 * (MARGIN + GAP)) / all;
    (main > 0.0 && scale.is_finite()).then_some(scale)
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

    fn stream(solids: f64, water: f64) -> StripStream {
        StripStream { solids, water }
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

    fn spread(outline: &str) -> f64 {
        let heights = heights(outline);
        heights.iter().copied().fold(f64::MIN, f64::max) - heights.iter().copied().fold(f64::MAX, f64::min)
    }

    /// The outlines of single streams, one after the other.
    fn single(outlines: &str) -> Vec<&str> {
        outlines.split_inclusive('Z').collect()
    }

    #[test]
    fn thickness_is_mass_flow_by_one_scale() {
        let outlines = outlines(&legs());
        let (solids, water) = (single(&outlines.solids), single(&outlines.water));
        assert_eq!((solids.len(), water.len()), (3, 3));
        let per_mass = spread(solids[0]) / 100.0;
        assert!((per_mass * (120.0 + 12.0) - (HEIGHT - 16.0)).abs() < 0.1);
        assert!((spread(water[0]) / 5.0 / per_mass - 1.0).abs() < 0.01);
        assert_eq!((single(&outlines.side_solids).len(), single(&outlines.side_water).len()), (2, 2));
    }

    #[test]
    fn everything_stays_inside_the_drawing() {
        let mut heavy = legs();
        heavy[2].lost = stream(100.0, 9.0);
        heavy[2].goes_on = stream(10.0, 1.0);
        let mut light = legs();
        light[1] = Leg { arrives: stream(1.0, 0.0), added: stream(100.0, 19.0), ..light[1] };
        for case in [legs(), heavy, light] {
            let all = outlines(&case);
            for outline in [all.solids, all.water, all.side_solids, all.side_water] {
                for height in heights(&outline) {
                    assert!((0.0..=HEIGHT).contains(&height), "{height} in {outline}");
                }
            }
        }
    }

    #[test]
    fn nothing_is_drawn_of_nothing() {
        assert_eq!(outlines(&[]), Outlines::default());
        assert_eq!(outlines(&[Leg::default()]), Outlines::default());
        let broken = Leg { arrives: stream(f64::NAN, 0.0), ..Leg::default() };
        assert_eq!(outlines(&[broken]), Outlines::default());
        let dry = Leg { arrives: stream(1.0, 0.0), goes_on: stream(1.0, 0.0), ..Leg::default() };
        let drawn = outlines(&[dry]);
        assert!(!drawn.solids.is_empty());
        assert_eq!(drawn, Outlines { solids: drawn.solids.clone(), ..Outlines::default() });
    }
}
