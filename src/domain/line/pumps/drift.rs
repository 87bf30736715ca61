//! How far a pump has moved since an earlier catch test.

use crate::domain::line::pumps::catch_test::{Calibration, CalibrationId};
use crate::domain::line::pumps::curve::Curve;
use crate::domain::line::pumps::pump::Pump;
use crate::domain::line::pumps::setting::Setting;
use crate::statistics::coverage::{Combined, Contribution, combine, factor};
use crate::statistics::distribution::CONFIDENCE;
use uom::ConstZero;
use uom::si::f64::{MassDensity, MassRate, Ratio};

/// The last catch test against an earlier one, at one setting and one density.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drift {
    /// The earlier catch test.
    pub since: CalibrationId,
    /// When it was, milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// Mass flow by its line.
    pub then: MassRate,
    /// Mass flow by the line of the last one.
    pub now: MassRate,
    /// now/then − 1; `None` when the earlier line gave no flow there.
    pub change: Option<Ratio>,
    /// Whether the two lines differ there by more than their scatter explains: |now − then| above
    /// t·√(u₁² + u₂²), with the standard deviations of the lines and Welch's degrees of freedom. `None` where
    /// the rows are too few to tell.
    pub certain: Option<bool>,
}

/// A catch test among those before it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TestedFlow {
    /// The catch test.
    pub test: CalibrationId,
    /// Mass flow by its line.
    pub flow: MassRate,
    /// Against the one before; `None` for the first.
    pub drift: Option<Drift>,
}

/// Every sound catch test of a pump against the one before it, the newest first, at a setting and for a liquid of that
/// density.
#[must_use]
pub fn tested_flows(pump: &Pump, setting: Setting, density: MassDensity) -> Vec<TestedFlow> {
    let before = std::iter::once(None).chain(pump.calibrations.iter().map(Some));
    let one = |(test, before): (&Calibration, Option<&Calibration>)| TestedFlow {
        test: test.id,
        flow: test.curve.at_density(pump.metering, test.density, density).flow(setting),
        drift: before.map(|before| since(pump, before, test, (setting, density))),
    };
    let mut all: Vec<TestedFlow> = pump.calibrations.iter().zip(before).map(one).collect();
    all.reverse();
    all
}

/// The last catch test of a pump against each earlier one, the newest first, at a setting and for a liquid
/// of that density.
#[must_use]
pub fn drift(pump: &Pump, setting: Setting, density: MassDensity) -> Vec<Drift> {
    let Some((last, earlier)) = pump.calibrations.split_last() else { return Vec::new() };
    earlier.iter().rev().map(|old| since(pump, old, last, (setting, density))).collect()
}

fn since(pump: &Pump, old: &Calibration, new: &Calibration, (setting, density): (Setting, MassDensity)) -> Drift {
    let curve = |of: &Calibration| of.curve.at_density(pump.metering, of.density, density);
    let (old_curve, new_curve) = (curve(old), curve(new));
    let (then, now) = (old_curve.flow(setting), new_curve.flow(setting));
    let certain = differ(then - now, (&old_curve, old), (&new_curve, new), setting);
    let change = (then > MassRate::ZERO).then(|| (now - then) / then);
    Drift { since: old.id, at: old.at, then, now, change, certain }
}

/// Source: Welch (1947), Biometrika 34, for the degrees of freedom (from memory).
fn differ(
    difference: MassRate,
    (old, old_test): (&Curve, &Calibration),
    (new, new_test): (&Curve, &Calibration),
    setting: Setting,
) -> Option<bool> {
    let part = |curve: &Curve, test: &Calibration| {
        let deviation = curve.sd_of_mean(setting)?.value;
        Some(Contribution { part: deviation, freedom: Some(f64::from(test.curve.fit.freedom())) })
    };
    let Combined { standard, freedom } = combine(&[part(old, old_test)?, part(new, new_test)?]);
    if standard <= 0.0 {
        // Two exact lines: any difference is one, but for rounding.
        return Some(difference.value.abs() > 1e-9 * old_test.curve.flow(setting).value.abs());
    }
    Some(difference.value.abs() > factor(CONFIDENCE, freedom) * standard)
}
