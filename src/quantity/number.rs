//! Reading a number that a person typed, with or without a unit behind it.
//!
//! Point and comma both mark decimals, spaces and apostrophes group. Where the two marks leave more
//! than one reading the text is not guessed at: [`ReadError::Ambiguous`] carries both, and the view
//! asks in words.

use super::{Amount, Dimension, Kind, Unit};
use std::borrow::Cow;
use std::sync::LazyLock;

/// The largest magnitude that is taken, in the base unit. Far above anything a mill weighs; keeps
/// what is computed from it finite.
pub const LARGEST: f64 = 1.0e12;
/// No unit is spelled with more bytes, blanks and dots between counted in.
const LONGEST_UNIT: usize = 200;

/// The number, unless it is NaN or infinite.
#[must_use]
pub fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}

/// Why a text is not a number of its kind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ReadError {
    /// Nothing but spaces.
    Empty,
    /// No number, or something beside it that is no unit: "abc", "1 2", "4-5".
    NotANumber,
    /// A second decimal mark, and no way to take the first for grouping: "1.2.3", "12,5.0".
    SecondDecimalMark,
    /// The first mark may be the decimal mark or may group thousands: "1,234", "1.234,5",
    /// "1,234,567". Both numbers are in the unit as typed.
    Ambiguous {
        /// The first mark is the decimal mark (and any other mark a slip): 1.234, 1.2345, 1.234567.
        decimal: f64,
        /// The first mark groups thousands: 1234, 1234.5, 1234567.
        grouped: f64,
    },
    /// A word behind the number that is no unit known here.
    UnknownUnit,
    /// A unit that measures something else than the field holds.
    OtherUnit {
        /// The unit that was typed.
        unit: Unit,
    },
    /// Beyond [`LARGEST`], or not finite in the base unit (as 100 % water on the wet basis).
    TooLarge,
}

/// A number as read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// The number in [`unit`](Self::unit).
    pub value: f64,
    /// The unit typed behind the number, or else the one beside the box.
    pub unit: Unit,
    /// Whether the text named the unit. A bare "%" behind a moisture, a bare "°" behind a
    /// temperature and a bare currency behind a price do not: the unit beside the box says the rest.
    pub unit_typed: bool,
}

impl Reading {
    /// The number as an amount of `kind`, the kind it was read as.
    #[must_use]
    pub fn amount(self, kind: Kind) -> Amount {
        Amount::new(kind, self.value, self.unit)
    }
}

/// Reads a number of `kind` from what was typed beside a box that shows `unit_in_box`, a unit of
/// the kind's dimension.
///
/// - Digits: ASCII, Arabic-Indic (U+0660, U+06F0) with their own decimal and grouping marks, and full-width forms, as an
///   input method for Chinese or Japanese writes them.
/// - Decimal mark: point or comma. The point is the default mark: "1.234" is a decimal, while
///   "1,234" is asked about. A zero in front settles it: "0,655".
/// - Grouping: spaces of any width and apostrophes, between one to three digits and groups of three.
/// - A sign in front, ASCII or typographic; powers of ten as "1e3" or "1.2 × 10⁻³".
/// - A unit behind, in any case: every symbol and alias of [`Unit`], "per" for the stroke, "2" for
///   "²". Any unit of the kind's dimension converts, offered or not.
/// - Behind and before money a currency sign or a three-letter code is passed over.
///
/// Range checks are the field's. Never panics; what is read is finite.
///
/// # Errors
/// See [`ReadError`]. The number is judged before the unit.
pub fn read(text: &str, kind: Kind, unit_in_box: Unit) -> Result<Reading, ReadError> {
    let text = with_ascii_digits(text.trim_matches(is_blank));
    let text = text.as_ref();
    if text.is_empty() {
        return Err(ReadError::Empty);
    }
    let money = matches!(kind.dimension(), Dimension::Price | Dimension::Cost | Dimension::YearCost);
    let text = if money { skip_currency(text) } else { text };
    let (value, rest) = read_number(text)?;
    let rest = rest.trim_matches(is_blank);
    let rest = if money { skip_currency(rest) } else { rest };
    let typed = read_unit(rest, kind)?;
    let unit = typed.unwrap_or(unit_in_box);
    let base = unit.to_base(value);
    // There and back: minus a million million percent on the wet basis is all but -100 % on the dry one, and no number again.
    if !base.is_finite() || base.abs() > LARGEST || !unit.from_base(base).is_finite() {
        return Err(ReadError::TooLarge);
    }
    Ok(Reading { value, unit, unit_typed: typed.is_some() })
}

/// White space, and the invisible marks that come along when a cell of a sheet is pasted.
#[must_use]
pub fn is_blank(c: char) -> bool {
    c.is_whitespace() || matches!(c, '\u{200b}'..='\u{200f}' | '\u{2060}' | '\u{feff}')
}

/// `text` with the digits of other keyboards as ASCII, and the marks that belong to them.
fn with_ascii_digits(text: &str) -> Cow<'_, str> {
    let ascii = |c: char| {
        let from = |zero: char| char::from_digit(u32::from(c) - u32::from(zero), 10);
        let shown = match c {
            '\u{660}'..='\u{669}' => from('\u{660}'),
            '\u{6f0}'..='\u{6f9}' => from('\u{6f0}'),
            '\u{66b}' => Some('.'),
            '\u{66c}' => Some('\''),
            // Every full-width form is 0xFEE0 above its ASCII character.
            '\u{ff01}'..='\u{ff5e}' => char::from_u32(u32::from(c) - 0xfee0),
            _ => None,
        };
        shown.unwrap_or(c)
    };
    if text.chars().all(|c| ascii(c) == c) { Cow::Borrowed(text) } else { text.chars().map(ascii).collect() }
}

/// What may separate two groups of digits.
fn is_grouping(c: char) -> bool {
    (c.is_whitespace() && !c.is_control()) || matches!(c, '\'' | '\u{2019}')
}

/// What is before a run of digits.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Before {
    Start,
    Grouping,
    Point,
    Comma,
}

/// Digits and what is before them.
type Run<'a> = (Before, &'a str);

/// The number in front of `text` and what follows it.
fn read_number(text: &str) -> Result<(f64, &str), ReadError> {
    let unsigned = text.strip_prefix(['+', '-', '\u{2212}', '\u{2013}']);
    let sign = if unsigned.is_some() && !text.starts_with('+') { -1.0 } else { 1.0 };
    let (runs, rest) = split_runs(unsigned.unwrap_or(text).trim_start_matches(is_blank));
    if runs.iter().all(|(_, digits)| digits.is_empty()) {
        return Err(ReadError::NotANumber);
    }
    let (exponent, rest) = read_exponent(rest);
    let number = |whole: &[Run<'_>], fraction: &[Run<'_>]| -> Result<f64, ReadError> {
        let digits = |runs: &[Run<'_>]| runs.iter().map(|(_, digits)| *digits).collect::<String>();
        // The zeros keep ".5" and "5." readable.
        let digits = format!("0{}.{}0e{exponent}", digits(whole), digits(fraction));
        let value = digits.parse().ok().and_then(finite);
        value.map(|value| sign * value).ok_or(ReadError::TooLarge)
    };
    let marks: Vec<usize> = (0..runs.len()).filter(|at| matches!(runs[*at].0, Before::Point | Before::Comma)).collect();
    match marks[..] {
        [] if runs.len() == 1 || groups(&runs) => Ok((number(&runs, &[])?, rest)),
        [mark] if mark + 1 == runs.len() && (mark == 1 || groups(&runs[..mark])) => {
            let (whole, fraction) = runs.split_at(mark);
            if mark == 1 && fraction[0].0 == Before::Comma && groups(&runs) {
                return Err(ReadError::Ambiguous { decimal: number(whole, fraction)?, grouped: number(&runs, &[])? });
            }
            Ok((number(whole, fraction)?, rest))
        }
        [] | [_] => Err(ReadError::NotANumber),
        [first, .., last] => {
            // All marks but the last group, and the last either groups as well or marks decimals.
            let grouping = |runs: &[Run<'_>]| groups(runs) && runs[1..].iter().all(|run| run.0 == runs[1].0);
            let decimal = || number(&runs[..first], &runs[first..]);
            if grouping(&runs) {
                Err(ReadError::Ambiguous { decimal: decimal()?, grouped: number(&runs, &[])? })
            } else if last + 1 == runs.len() && grouping(&runs[..last]) && runs[last].0 != runs[first].0 {
                Err(ReadError::Ambiguous { decimal: decimal()?, grouped: number(&runs[..last], &runs[last..])? })
            } else {
                Err(ReadError::SecondDecimalMark)
            }
        }
    }
}

/// Splits the digits, marks and grouping in front of `text` from the rest. At least one run.
fn split_runs(text: &str) -> (Vec<Run<'_>>, &str) {
    let mut runs = Vec::with_capacity(2);
    let mut before = Before::Start;
    let mut rest = text;
    loop {
        let end = rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len());
        let (digits, tail) = rest.split_at(end);
        runs.push((before, digits));
        let mut chars = tail.chars();
        before = match chars.next() {
            Some('.') => Before::Point,
            Some(',') => Before::Comma,
            Some(c)
                if is_grouping(c) && !digits.is_empty() && chars.as_str().starts_with(|n: char| n.is_ascii_digit()) =>
            {
                Before::Grouping
            }
            _ => return (runs, tail),
        };
        rest = chars.as_str();
    }
}

/// Whether the runs are a number in groups: one to three digits, not starting with zero, then groups of three.
fn groups(runs: &[Run<'_>]) -> bool {
    let Some(((_, first), others)) = runs.split_first() else { return false };
    !others.is_empty()
        && (1..=3).contains(&first.len())
        && !first.starts_with('0')
        && others.iter().all(|(_, digits)| digits.len() == 3)
}

/// The power of ten in front of `text`, 0 if there is none, and what follows it.
fn read_exponent(text: &str) -> (i32, &str) {
    let shown = || {
        let tail = text.trim_start_matches(is_blank).strip_prefix(['×', 'x', '*', '·'])?;
        let tail = tail.trim_start_matches(is_blank).strip_prefix("10")?;
        tail.strip_prefix('^').or_else(|| tail.starts_with(|c| superscript(c) != c).then_some(tail))
    };
    let Some(tail) = text.strip_prefix(['e', 'E']).or_else(shown) else { return (0, text) };
    let unsigned = tail.strip_prefix(['+', '-', '\u{2212}', '⁻', '⁺']);
    let negative = unsigned.is_some() && !tail.starts_with(['+', '⁺']);
    let mut rest = unsigned.unwrap_or(tail);
    let mut exponent: Option<i32> = None;
    while let Some(digit) = rest.chars().next().and_then(|c| superscript(c).to_digit(10)) {
        // Far enough out for every number to be infinite or zero.
        exponent = Some((exponent.unwrap_or(0) * 10 + i32::try_from(digit).unwrap_or(0)).min(9_999));
        rest = &rest[rest.chars().next().map_or(0, char::len_utf8)..];
    }
    match exponent {
        Some(exponent) => (if negative { -exponent } else { exponent }, rest),
        None => (0, text),
    }
}

/// The plain character of a superscript digit or sign; any other one as it is.
fn superscript(c: char) -> char {
    match c {
        '⁰' => '0',
        '¹' => '1',
        '²' => '2',
        '³' => '3',
        '⁴'..='⁹' => char::from_u32(c as u32 - '⁴' as u32 + '4' as u32).unwrap_or(c),
        '⁻' => '-',
        '⁺' => '+',
        _ => c,
    }
}

/// `text` without the currency in front: a sign, with up to two letters before it ("US$"), or a
/// code of three letters. Cents are no currency: passing over them would be wrong by a hundred.
fn skip_currency(text: &str) -> &str {
    let letters = text.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(text.len());
    let (word, tail) = text.split_at(letters);
    let signed = tail.strip_prefix(['$', '£', '¥', '¤']).or_else(|| tail.strip_prefix(|c| ('₠'..='⃏').contains(&c)));
    match signed {
        Some(tail) if letters <= 2 => tail.trim_start_matches(is_blank),
        _ if letters == 3 && !word.eq_ignore_ascii_case("per") && spelled(&fold(word), None).is_none() => {
            tail.trim_start_matches(is_blank)
        }
        _ => text,
    }
}

/// The unit that `text`, what is after the number, names. `None` when it leaves it to the box.
fn read_unit(text: &str, kind: Kind) -> Result<Option<Unit>, ReadError> {
    let Some(first) = text.chars().next() else { return Ok(None) };
    // What was pasted by mistake may be a whole file.
    let folded = if text.len() > LONGEST_UNIT { String::new() } else { fold(text) };
    let dimension = kind.dimension();
    if matches!((dimension, folded.as_str()), (Dimension::Moisture, "%") | (Dimension::Temperature, "deg")) {
        return Ok(None);
    }
    match spelled(&folded, Some(dimension)) {
        Some(unit) if unit.dimension() == dimension => Ok(Some(unit)),
        Some(unit) => Err(ReadError::OtherUnit { unit }),
        // "4-5", "3/4 in" and "4;" are no numbers with odd units.
        None if first == '/' && text[1..].starts_with(|c: char| c.is_ascii_digit()) => Err(ReadError::NotANumber),
        None if first.is_alphabetic() || "%/°\"'′″’($£€¥¢".contains(first) => Err(ReadError::UnknownUnit),
        None => Err(ReadError::NotANumber),
    }
}

/// Every spelling, folded, and its unit.
static SPELLINGS: LazyLock<Vec<(String, Unit)>> = LazyLock::new(|| {
    let spellings = |unit: &Unit| {
        let unit = *unit;
        std::iter::once(unit.symbol()).chain(unit.aliases().iter().copied()).map(move |text| (fold(text), unit))
    };
    Unit::ALL.iter().flat_map(spellings).filter(|(text, _)| !text.is_empty()).collect()
});

/// The unit spelled so, one of `wanted` dimension before any other.
fn spelled(folded: &str, wanted: Option<Dimension>) -> Option<Unit> {
    let all = || SPELLINGS.iter().filter(|(text, _)| text == folded).map(|(_, unit)| *unit);
    all().find(|unit| Some(unit.dimension()) == wanted).or_else(|| all().next())
}

/// One form for all spellings of a unit: lower case, no dots, brackets or superscripts, one word for
/// each measure, the stroke for "per", single spaces and none beside the stroke.
fn fold(text: &str) -> String {
    let mut loose = String::with_capacity(text.len() + 4);
    for c in text.chars().filter(|c| !matches!(c, '.' | '(' | ')' | '^')).flat_map(char::to_lowercase) {
        match c {
            '/' => loose.push_str(" / "),
            '%' => loose.push_str(" % "),
            '°' => loose.push_str(" deg "),
            '′' | '’' => loose.push('\''),
            '″' | '”' => loose.push('"'),
            c if is_blank(c) => loose.push(' '),
            c => loose.push(superscript(c)),
        }
    }
    let mut folded = String::with_capacity(loose.len());
    for word in loose.split_whitespace().map(measure) {
        if word != "/" && !folded.is_empty() && !folded.ends_with('/') {
            folded.push(' ');
        }
        folded.push_str(word);
    }
    folded
}

/// The usual short form of a measure's word, or the word itself.
fn measure(word: &str) -> &str {
    match word {
        "per" => "/",
        "hr" | "hrs" | "hour" | "hours" => "h",
        "mins" | "minute" | "minutes" => "min",
        "sec" | "secs" | "second" | "seconds" => "s",
        "kgs" | "kilogram" | "kilograms" => "kg",
        "gram" | "grams" => "g",
        "tonne" | "tonnes" => "t",
        "tons" => "ton",
        "lbs" | "pound" | "pounds" => "lb",
        "litre" | "litres" | "liter" | "liters" => "l",
        "gallon" | "gallons" => "gal",
        "metre" | "metres" | "meter" | "meters" => "m",
        "inch" | "inches" | "''" => "in",
        "foot" | "feet" => "ft",
        "degree" | "degrees" => "deg",
        other => other,
    }
}
