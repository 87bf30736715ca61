//! Figures of the weigh sheet as text.

use crate::domain::trial::{LineId, WeighFigure, WeighLineFigure, WeighSheet};
use crate::quantity::format::{self, significant};
use crate::quantity::{Amount, Kind};
use crate::t;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, unit_shown};
use leptos::prelude::*;
use uom::si::f64::Mass;

/// An amount with its unit.
pub fn shown(state: State, kind: Kind, base: f64) -> String {
    with_unit(state, Amount::from_base(kind, base), None)
}

/// The same with its sign.
pub fn signed(state: State, kind: Kind, base: f64) -> String {
    // A hundredth of a percent is less than any balance tells.
    if kind == Kind::Share && base.abs() < 5e-5 {
        return format!("0\u{a0}{}", symbol_shown(state.unit(kind)));
    }
    let sign = if base < 0.0 { '\u{2212}' } else { '+' };
    format!("{sign}{}", shown(state, kind, base.abs()))
}

/// Number and unit of an amount.
pub fn parts(state: State, amount: Amount) -> (String, String) {
    let units = state.units.get();
    let unit = units.unit(amount.kind);
    let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
    (format::amount(amount, unit, units.mark), symbol)
}

/// A figure with its unit, a mass to weigh as the balance shows it; `None` where the sheet does not have it.
pub fn value(state: State, sheet: &WeighSheet, figure: WeighFigure) -> Option<String> {
    let amount = sheet.figure(figure)?;
    Some(match figure {
        WeighFigure::Line(id, WeighLineFigure::Rounded) => on_balance(state, sheet, id, kilograms(amount.base)),
        WeighFigure::Line(_, WeighLineFigure::Deviation) => signed(state, Kind::Share, amount.base),
        _ => with_unit(state, amount, None),
    })
}

/// As [`value`], number and unit apart, times in minutes and seconds; both blank where there is no such figure.
pub fn value_parts(state: State, sheet: &WeighSheet, figure: WeighFigure) -> (String, String) {
    let Some(amount) = sheet.figure(figure) else { return Default::default() };
    match figure {
        WeighFigure::Line(id, WeighLineFigure::Rounded) => balance_parts(state, sheet, id, kilograms(amount.base)),
        WeighFigure::Line(_, WeighLineFigure::Deviation) => (signed(state, Kind::Share, amount.base), String::new()),
        _ if figure.kind() == Kind::PressTime => (format::minutes(amount.base), t!("bench-minutes")),
        _ => parts(state, amount),
    }
}

const fn kilograms(value: f64) -> Mass {
    Mass { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// A mass with the decimals of its balance.
pub fn on_balance(state: State, sheet: &WeighSheet, id: LineId, mass: Mass) -> String {
    let (number, unit) = balance_parts(state, sheet, id, mass);
    joined(&number, &unit)
}

/// As [`on_balance`], number and unit apart.
pub fn balance_parts(state: State, sheet: &WeighSheet, id: LineId, mass: Mass) -> (String, String) {
    let unit = state.unit(Kind::BenchMass);
    let number = unit.from_base(mass.value);
    let Some(step) = sheet.plan.balance(id).step else {
        return parts(state, Amount::from_base(Kind::BenchMass, mass.value));
    };
    let step = unit.from_base(step.value);
    let whole = |decimals: &i32| {
        let scaled = step * 10.0_f64.powi(*decimals);
        scaled > 0.5 && (scaled - scaled.round()).abs() < 1e-6 * scaled
    };
    let decimals =
        (0..6).find(whole).unwrap_or_else(|| (0..6).find(|at| step * 10.0_f64.powi(*at) >= 1.0).unwrap_or(6));
    let before = if number.abs() < 1.0 { 0 } else { number.abs().log10().floor() as i32 + 1 };
    // Below one, zeros behind the mark are no significant digits.
    let zeros = if number.abs() < 1.0 && number != 0.0 { -(number.abs().log10().floor() as i32 + 1) } else { 0 };
    let digits = u8::try_from((before + decimals - zeros).max(1)).unwrap_or(12);
    (significant(number, digits, state.units.get().mark), symbol_shown(unit).to_owned())
}
