//! Ranges and examples, in the units chosen.

use crate::domain::recipe::limit::{Limit, Window};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::t;
use crate::ui::text::show::{with_unit, without_zeros};
use crate::ui::text::{Context, trimmed};

/// A bound of a limit as a number in the unit chosen.
fn bound(value: f64, unit: Unit, kind: Kind, context: &Context<'_>) -> String {
    trimmed(Amount::from_base(kind, unit.to_base(value)), context)
}

/// An end of what is usual: nobody draws that line finer than to three digits.
fn end(value: f64, unit: Unit, kind: Kind, context: &Context<'_>) -> String {
    let chosen = context.units.unit(kind);
    rounded(Amount::from_base(kind, unit.to_base(value)).get(chosen), context)
}

fn rounded(value: f64, context: &Context<'_>) -> String {
    without_zeros(&format::significant(value, 3, context.units.mark), context.units.mark.char())
}

fn unit_behind(number: &str, kind: Kind, context: &Context<'_>) -> String {
    with_unit(number, context.units.unit(kind), context.currency)
}

/// What is allowed: "Enter a value of exactly 100 %.", "Enter a value from 0 to 200 % dry basis."
pub(super) fn enter_allowed(limit: &Limit, kind: Kind, context: &Context<'_>) -> String {
    let most = unit_behind(&bound(limit.most, limit.unit, kind, context), kind, context);
    if limit.least.to_bits() == limit.most.to_bits() {
        return t!("finding-enter-exactly", value = most);
    }
    let least = bound(limit.least, limit.unit, kind, context);
    match (limit.above_least, limit.below_most) {
        (false, false) => t!("finding-enter-from-to", least = least, most = most),
        (false, true) => t!("finding-enter-from-to-below", least = least, most = most),
        (true, false) => t!("finding-enter-above-to", least = least, most = most),
        (true, true) => t!("finding-enter-above-to-below", least = least, most = most),
    }
}

/// What is usual: "1 to 12 % dry basis".
pub(super) fn usual(window: Window, kind: Kind, unit: Unit, context: &Context<'_>) -> String {
    let low = end(window.low, unit, kind, context);
    let high = end(window.high, unit, kind, context);
    let with_unit = unit_behind(&high, kind, context);
    if low == high { with_unit } else { t!("finding-range", low = low, high = with_unit) }
}

/// An amount that is compared with bounds: with more digits where rounding would make it look like
/// one of them.
pub(super) fn beside(amount: Amount, bounds: &[f64], unit: Unit, context: &Context<'_>) -> String {
    let short = trimmed(amount, context);
    let chosen = context.units.unit(amount.kind);
    let coarse = rounded(amount.get(chosen), context);
    let looks_like = bounds.iter().any(|value| end(*value, unit, amount.kind, context) == coarse);
    let number = if looks_like { format::full(amount.get(chosen), context.units.mark) } else { short };
    unit_behind(&number, amount.kind, context)
}

/// A number that would do in the box, with its unit.
pub(super) fn example(limit: &Limit, kind: Kind, context: &Context<'_>) -> String {
    unit_behind(&example_number(limit, kind, context), kind, context)
}

/// A number that would do in the box, in the unit chosen, as it can be typed.
pub(super) fn example_number(limit: &Limit, kind: Kind, context: &Context<'_>) -> String {
    let base = example_base(limit, kind);
    format::editable(two_digits(context.units.unit(kind).from_base(base)), context.units.mark)
}

/// An ordinary value for the box: the middle of what is usual, by ratio where that spans from above
/// zero, or one for its kind.
fn example_base(limit: &Limit, kind: Kind) -> f64 {
    if limit.least.to_bits() == limit.most.to_bits() {
        return limit.unit.to_base(limit.least);
    }
    if let Some(window) = limit.usual {
        let middle =
            if window.low > 0.0 { (window.low * window.high).sqrt() } else { f64::midpoint(window.low, window.high) };
        return limit.unit.to_base(middle);
    }
    let (value, unit) = match kind {
        Kind::FibreFlow => (12_000.0, Unit::KilogramPerHour),
        Kind::LiquidFlow => (450.0, Unit::KilogramPerHour),
        Kind::LineSpeed => (25.0, Unit::MetrePerMinute),
        Kind::PressFactor => (9.0, Unit::SecondPerMillimetre),
        Kind::UsePerVolume => (60.0, Unit::KilogramPerCubicMetre),
        Kind::Price => (650.0, Unit::PerTonne),
        Kind::Solids => (45.0, Unit::Percent),
        Kind::Dose => (8.0, Unit::Percent),
        other => return other.unit_in(crate::quantity::kind::UnitSystem::Metric).to_base(10.0),
    };
    unit.to_base(value)
}

/// Rounded to two significant digits. Zero and what is not finite stay as they are.
fn two_digits(value: f64) -> f64 {
    if value == 0.0 || !value.is_finite() {
        return value;
    }
    let step = 10_f64.powi(value.abs().log10().floor() as i32 - 1);
    let rounded = (value / step).round() * step;
    // Below one the step itself is not exact; this drops what is left of it.
    (rounded * 1e9).round() / 1e9
}
