//! Showing a number. Formatting comes last: nothing is computed from what was rounded here.

use super::{Amount, Dimension, Unit};
use serde::{Deserialize, Serialize};

/// The mark between whole and fraction.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DecimalMark {
    /// 1.5
    #[default]
    Point,
    /// 1,5
    Comma,
}

impl DecimalMark {
    /// The mark itself.
    #[must_use]
    pub const fn char(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }
}

/// Between groups of three digits: the narrow no-break space (ISO 80000-1, 7.3.1: a small gap, never a
/// point or a comma).
const GAP: char = '\u{202f}';
/// The true minus sign, as wide as a digit.
const MINUS: char = '\u{2212}';
/// Stands where there is no number.
const NOTHING: &str = "–";

/// `value` rounded to `digits` significant digits, trailing zeros kept, and never rounded before the
/// decimal mark. Whole parts of five digits or more are grouped in threes; from 10⁹ up and below
/// 10⁻⁵ a power of ten is split off. "–" for what is not finite.
///
/// Rounds half away from zero, on the shortest decimal that represents the number, so that
/// 0.012345 becomes 0.01235 as on paper.
#[must_use]
pub fn significant(value: f64, digits: u8, mark: DecimalMark) -> String {
    let Some(exact) = Decimal::of(value) else { return NOTHING.to_owned() };
    if exact.digits == [0] {
        return "0".to_owned();
    }
    let digits = i32::from(digits.max(1));
    let plain = exact.rounded(digits.max(exact.exponent + 1));
    if (-5..9).contains(&plain.exponent) {
        return plain.shown((digits - 1 - plain.exponent).max(0), mark);
    }
    exact.rounded(digits).shown_with_power(digits - 1, mark)
}

/// `value` with up to 12 significant digits, trailing zeros trimmed, grouped; a power of ten from
/// 10¹² up and below 10⁻⁵. "–" for what is not finite.
#[must_use]
pub fn full(value: f64, mark: DecimalMark) -> String {
    let Some(exact) = Decimal::of(value) else { return NOTHING.to_owned() };
    let rounded = exact.rounded(12).trimmed();
    if (-5..12).contains(&rounded.exponent) {
        rounded.shown(rounded.decimals(), mark)
    } else {
        rounded.shown_with_power(rounded.last(), mark)
    }
}

/// `value` for an input box: up to 7 significant digits but every whole digit, trimmed, no grouping,
/// plain characters, "e" only from 10¹² up and below 10⁻⁶. Empty for what is not finite.
///
/// [`read`](super::number::read) understands it without asking: where a comma and exactly three
/// decimals could be a thousand ("1,234"), a zero follows ("1,2340").
#[must_use]
pub fn editable(value: f64, mark: DecimalMark) -> String {
    let Some(exact) = Decimal::of(value) else { return String::new() };
    let mut text = String::new();
    let plain = exact.rounded(7.max(exact.exponent + 1)).trimmed();
    if plain.negative {
        text.push('-');
    }
    if (-6..12).contains(&plain.exponent) {
        plain.push_digits(&mut text, plain.exponent, plain.decimals(), mark, false);
    } else {
        let short = exact.rounded(7).trimmed();
        short.push_digits(&mut text, 0, short.last(), mark, false);
        text.push_str(&format!("e{}", short.exponent));
    }
    text
}

/// The number of `amount` in `unit` with the digits of its kind. The unit is left to the view.
///
/// A temperature has at most one decimal: its zero is a convention, so digits after it say nothing
/// about how well it is known.
#[must_use]
pub fn amount(amount: Amount, unit: Unit, mark: DecimalMark) -> String {
    let value = amount.get(unit);
    let digits = amount.kind.digits();
    if unit.dimension() != Dimension::Temperature {
        return significant(value, digits, mark);
    }
    let value = (value * 10.0).round() / 10.0;
    let whole = Decimal::of(value).map_or(0, |number| number.exponent + 1);
    significant(value, digits.min(u8::try_from(whole + 1).unwrap_or(1)), mark)
}

/// `value` with as many decimals as `step` has, up to six digits of it: what a drive takes in steps of 0.5 has one decimal. "–" for
/// what is not finite.
#[must_use]
pub fn in_steps(value: f64, step: f64, mark: DecimalMark) -> String {
    let Some(step) = Decimal::of(step) else { return NOTHING.to_owned() };
    let step = step.rounded(6).trimmed();
    let decimals = (i32::try_from(step.digits.len()).unwrap_or(1) - 1 - step.exponent).max(0);
    // Rounded first: 99.96 in steps of 0.1 has one more digit than it seems, and 0.6 in whole steps is 1.
    let power = 10_f64.powi(decimals);
    let value = (value * power).round() / power;
    let Some(exact) = Decimal::of(value) else { return NOTHING.to_owned() };
    let digits = exact.exponent + 1 + decimals;
    significant(value, u8::try_from(digits).unwrap_or(u8::MAX), mark)
}

/// As many decimals as show the largest of the numbers of a column with `digits` significant digits.
#[must_use]
pub fn column_decimals(digits: u8, numbers: impl Iterator<Item = f64>) -> u8 {
    let largest = numbers.filter(|number| number.is_finite()).fold(0.0_f64, |most, number| most.max(number.abs()));
    if largest <= 0.0 {
        return 0;
    }
    let first = largest.log10().floor() as i32;
    u8::try_from((i32::from(digits) - 1 - first).clamp(0, 9)).unwrap_or(0)
}

/// `value` rounded to so many decimals.
#[must_use]
pub fn rounded(value: f64, decimals: u8) -> f64 {
    let power = 10_f64.powi(i32::from(decimals));
    (value * power).round() / power
}

/// `value` with so many decimals; a zero is "0". "–" for what is not finite.
#[must_use]
pub fn fixed(value: f64, decimals: u8, mark: DecimalMark) -> String {
    let value = rounded(value, decimals);
    if value == 0.0 {
        return "0".to_owned();
    }
    let Some(exact) = Decimal::of(value) else { return NOTHING.to_owned() };
    let digits = exact.exponent + 1 + i32::from(decimals);
    significant(value, u8::try_from(digits.max(1)).unwrap_or(u8::MAX), mark)
}

/// A time in minutes and seconds, "2:40"; "–" for what is not finite.
#[must_use]
pub fn minutes(seconds: f64) -> String {
    if !seconds.is_finite() {
        return NOTHING.to_owned();
    }
    let whole = seconds.abs().round();
    let sign = if seconds < 0.0 && whole > 0.0 { "\u{2212}" } else { "" };
    format!("{sign}{}:{:02}", (whole / 60.0).floor(), whole % 60.0)
}

/// A finite number in decimal digits d₀.d₁d₂… × 10^exponent. Zero is a single 0.
#[derive(Debug, Clone)]
struct Decimal {
    negative: bool,
    digits: Vec<u8>,
    exponent: i32,
}

impl Decimal {
    /// The shortest decimal that reads back as `value`. `None` when not finite.
    fn of(value: f64) -> Option<Self> {
        let value = super::number::finite(value)?;
        let text = format!("{:e}", value.abs());
        let (mantissa, exponent) = text.split_once('e')?;
        let digits = mantissa.bytes().filter(u8::is_ascii_digit).map(|byte| byte - b'0').collect();
        Some(Self { negative: value < 0.0, digits, exponent: exponent.parse().ok()? })
    }

    /// Rounded to at most `keep` digits (one or more), half away from zero.
    fn rounded(&self, keep: i32) -> Self {
        let keep = usize::try_from(keep).unwrap_or(1).max(1);
        let mut rounded = self.clone();
        rounded.digits.truncate(keep);
        if self.digits.get(keep).is_some_and(|next| *next >= 5) {
            let nines = rounded.digits.iter().rev().take_while(|digit| **digit == 9).count();
            rounded.digits.truncate(keep - nines);
            match rounded.digits.last_mut() {
                Some(digit) => *digit += 1,
                None => {
                    rounded.digits.push(1);
                    rounded.exponent += 1;
                }
            }
        }
        rounded
    }

    /// Without zeros at the end.
    fn trimmed(mut self) -> Self {
        while self.digits.len() > 1 && self.digits.last() == Some(&0) {
            self.digits.pop();
        }
        self
    }

    /// The place of the last digit.
    fn last(&self) -> i32 {
        i32::try_from(self.digits.len()).unwrap_or(i32::MAX) - 1
    }

    /// How many decimals it takes to write every digit.
    fn decimals(&self) -> i32 {
        (self.last() - self.exponent).max(0)
    }

    /// Writes the digits with the decimal mark behind the place `units`, zeros where there are none.
    fn push_digits(&self, text: &mut String, units: i32, decimals: i32, mark: DecimalMark, show: bool) {
        let digit = |place: i32| {
            let digit = usize::try_from(place).ok().and_then(|place| self.digits.get(place));
            char::from(b'0' + digit.copied().unwrap_or(0))
        };
        for place in units.min(0)..=units {
            let left = units - place;
            text.push(digit(place));
            if show && units >= 4 && left > 0 && left % 3 == 0 {
                text.push(GAP);
            }
        }
        if decimals > 0 {
            text.push(mark.char());
            text.extend((units + 1..=units + decimals).map(digit));
        }
        let as_thousand = decimals == 3 && (0..3).contains(&units) && digit(0) != '0';
        if !show && as_thousand && mark == DecimalMark::Comma {
            text.push('0');
        }
    }

    /// As shown on screen, without a power of ten.
    fn shown(&self, decimals: i32, mark: DecimalMark) -> String {
        let mut text = if self.negative { MINUS.to_string() } else { String::new() };
        self.push_digits(&mut text, self.exponent, decimals, mark, true);
        text
    }

    /// As shown on screen, with its power of ten.
    fn shown_with_power(&self, decimals: i32, mark: DecimalMark) -> String {
        let mut text = if self.negative { MINUS.to_string() } else { String::new() };
        self.push_digits(&mut text, 0, decimals, mark, true);
        text.push_str(" × 10");
        text.extend(self.exponent.to_string().chars().map(|c| match c {
            '-' => '⁻',
            '1' => '¹',
            '2' => '²',
            '3' => '³',
            digit => char::from_u32(digit as u32 - '0' as u32 + '⁰' as u32).unwrap_or(digit),
        }));
        text
    }
}
