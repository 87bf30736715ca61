//! Values with their ±, rounded so that both end at the same place.

use super::Context;
use super::show::with_unit;
use crate::domain::compare::uncertainty::input_uncertainty::width_in;
use crate::quantity::{Kind, Unit, format};

/// A value and its ±, both as numbers in the unit chosen, without the unit: the ± with two significant
/// digits, the value to the same place. "–" for what is not finite. A ± of zero leaves the value as it is
/// usually shown.
///
/// `around` is for a difference: the value in the base unit near which it lies, for in a unit that is no
/// multiple of the base (a temperature, a moisture on the wet basis) a difference is not converted as a
/// value is.
///
/// Source: JCGM 100, 7.2.6.
#[must_use]
pub fn plus_minus(kind: Kind, value: f64, width: f64, around: Option<f64>, context: &Context<'_>) -> (String, String) {
    let mark = context.units.mark;
    let (shown, width) = in_unit(context.units.unit(kind), value, width, around);
    if !(width > 0.0 && width.is_finite() && shown.is_finite()) {
        return (format::significant(shown, kind.digits(), mark), format::significant(width, 2, mark));
    }
    // 9.96 rounds to 10 and so to one place less.
    let first = width.log10().floor() as i32;
    let carried = (width / 10.0_f64.powi(first - 1)).round() >= 100.0;
    let last = if carried { first } else { first - 1 };
    let round = |number: f64| {
        // Divided by a power, not multiplied by its inverse, which would not be exact.
        let (up, down) = if last < 0 { (10.0_f64.powi(-last), 1.0) } else { (1.0, 10.0_f64.powi(last)) };
        (number * up / down).round() * down / up
    };
    let text = |number: f64| {
        let rounded = round(number);
        if rounded == 0.0 {
            return "0".to_owned();
        }
        let digits = rounded.abs().log10().floor() as i32 + 1 - last.min(0);
        format::significant(rounded, u8::try_from(digits.clamp(1, 15)).unwrap_or(15), mark)
    };
    (text(shown), text(width))
}

/// A value and its ± in a unit, not rounded; `around` as for [`plus_minus`].
#[must_use]
pub fn in_unit(unit: Unit, value: f64, width: f64, around: Option<f64>) -> (f64, f64) {
    let shown = match around {
        None => unit.from_base(value),
        Some(at) => 2.0 * width_in(unit, value / 2.0, at + value / 2.0),
    };
    (shown, width_in(unit, width, around.unwrap_or(value)).abs())
}

/// A ± with its unit, two significant digits, for a sentence.
#[must_use]
pub fn width_shown(kind: Kind, width: f64, at: f64, context: &Context<'_>) -> String {
    let unit = context.units.unit(kind);
    let number = format::significant(width_in(unit, width, at).abs(), 2, context.units.mark);
    with_unit(&number, unit, context.currency)
}
