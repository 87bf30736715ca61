//! How many nozzles to open.

use crate::domain::line::pumps::pump::Nozzles;
use uom::ConstZero;
use uom::si::f64::{Ratio, VolumeRate};
use uom::si::ratio::ratio;

/// What the nozzles have to do.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Opened {
    /// How many to open.
    pub open: u32,
    /// Flow of each.
    pub each: VolumeRate,
    /// Whether that is within what one may spray.
    pub fits: Fits,
}

/// How a nozzle's flow stands to what one may spray.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fits {
    /// Within.
    Within,
    /// Above, though all are open.
    TooFew,
    /// Below, though but one is open.
    TooMany,
    /// No whole number fits: with one more each sprays too little.
    Between,
}

/// The number of nozzles to open for a flow: of those that keep each within its window, the one whose flow
/// is nearest the middle of it. `None` when nothing flows.
#[must_use]
pub fn open(nozzles: &Nozzles, flow: VolumeRate) -> Option<Opened> {
    if flow <= VolumeRate::ZERO {
        return None;
    }
    let with = |open: u32, fits| Opened { open, each: flow / f64::from(open), fits };
    // A rounding error does not close a nozzle.
    let slack = 1e-9;
    let count = |each: VolumeRate| (flow / each).get::<ratio>();
    let fewest = (count(nozzles.most) * (1.0 - slack)).ceil().max(1.0);
    let most = (count(nozzles.least) * (1.0 + slack)).floor();
    let there = f64::from(nozzles.count);
    if fewest > there {
        return Some(with(nozzles.count, Fits::TooFew));
    }
    if most < 1.0 {
        return Some(with(1, Fits::TooMany));
    }
    if most < fewest {
        // Both whole and within the number there is.
        return Some(with(most as u32, Fits::Between));
    }
    let middle: Ratio = flow / ((nozzles.least + nozzles.most) / 2.0);
    Some(with(middle.value.round().clamp(fewest, most.min(there)) as u32, Fits::Within))
}
