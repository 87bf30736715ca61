//! A setting as the drive takes it.

use crate::domain::line::pumps::curve::Curve;
use crate::domain::line::pumps::pump::Pump;
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::pumps::setting::Setting;

/// Where a setting lies; the limits of the pump come before what was tested. A rounding error is not outside.
#[must_use]
pub fn range_status(pump: &Pump, curve: &Curve, setting: Setting) -> RangeStatus {
    let tested = curve.tested();
    let slack = 1e-9 * tested.high.0.abs().max(setting.0.abs());
    let below = |bound: Setting| setting.0 < bound.0 - slack;
    let above = |bound: Setting| setting.0 > bound.0 + slack;
    if setting.0 < -slack || pump.least.is_some_and(below) {
        RangeStatus::BelowLimit
    } else if pump.most.is_some_and(above) {
        RangeStatus::AboveLimit
    } else if below(tested.low) {
        RangeStatus::BelowTested
    } else if above(tested.high) {
        RangeStatus::AboveTested
    } else {
        RangeStatus::Within
    }
}

/// A setting rounded to the drive's step; `None` where the pump must not run. Rounding never leaves the limits.
#[must_use]
pub fn dial(pump: &Pump, setting: Setting, status: RangeStatus) -> Option<Setting> {
    status.is_allowed().then(|| {
        let steps = setting.0 / pump.step.0;
        let nearest = Setting(steps.round() * pump.step.0);
        if pump.most.is_some_and(|most| nearest > most) {
            Setting(steps.floor() * pump.step.0)
        } else if pump.least.is_some_and(|least| nearest < least) {
            Setting(steps.ceil() * pump.step.0)
        } else {
            nearest
        }
    })
}
