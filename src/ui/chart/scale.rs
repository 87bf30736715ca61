//! From numbers to places on a drawing, and back; ticks and their labels.

use crate::quantity::format::{DecimalMark, full, significant};

/// A straight scale from numbers to places.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LinearScale {
    /// The numbers at both ends.
    pub domain: (f64, f64),
    /// The places at both ends, in the drawing's units. A range that falls turns the scale round, as an
    /// upward axis on a page needs.
    pub range: (f64, f64),
}

impl LinearScale {
    /// A scale. A domain without width is widened around its number, so that one number lies in the middle.
    /// `None` for what is not finite.
    #[must_use]
    pub fn new(domain: (f64, f64), range: (f64, f64)) -> Option<Self> {
        let numbers = [domain.0, domain.1, range.0, range.1, domain.1 - domain.0];
        if !numbers.iter().all(|number| number.is_finite()) {
            return None;
        }
        // Not so close together that ticks would look the same.
        let size = domain.0.abs().max(domain.1.abs());
        let narrow = (domain.1 - domain.0).abs() <= size * 1e-9;
        let half = if size > 0.0 { size * 0.05 } else { 1.0 };
        let middle = f64::midpoint(domain.0, domain.1);
        let domain = if narrow { (middle - half, middle + half) } else { domain };
        Some(Self { domain, range })
    }

    /// A scale that holds all these numbers and begins and ends at a tick. `None` without numbers.
    #[must_use]
    pub fn around(numbers: impl IntoIterator<Item = f64>, range: (f64, f64), about: usize) -> Option<(Self, Ticks)> {
        let finite = numbers.into_iter().filter(|number| number.is_finite());
        let (low, high) =
            finite.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), number| (a.min(number), b.max(number)));
        let scale = Self::new((low, high), range)?;
        let ticks = Ticks::new(scale.domain.0, scale.domain.1, about)?;
        let (first, last) = (ticks.at(0), ticks.at(ticks.count - 1));
        Some((Self { domain: (first.min(scale.domain.0), last.max(scale.domain.1)), range }, ticks))
    }

    /// The place of a number.
    #[must_use]
    pub fn place(&self, number: f64) -> f64 {
        let share = (number - self.domain.0) / (self.domain.1 - self.domain.0);
        self.range.0 + share * (self.range.1 - self.range.0)
    }

    /// The number at a place.
    #[must_use]
    pub fn number(&self, place: f64) -> f64 {
        let share = (place - self.range.0) / (self.range.1 - self.range.0);
        self.domain.0 + share * (self.domain.1 - self.domain.0)
    }
}

/// Evenly spaced round numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ticks {
    /// The first, in steps from zero: whole, so that every tick is as exact as its step.
    first: f64,
    /// How far apart they are.
    pub step: f64,
    /// By how much of a step they are counted: a step of 2 with ticks at 1, 3, 5 counts by halves.
    parts: f64,
    /// How many.
    pub count: usize,
}

/// Steps, the nicest first.
const NICE: [f64; 6] = [1.0, 5.0, 2.0, 2.5, 4.0, 3.0];
/// The weights of simplicity, coverage, density and legibility; the last is the same for all here.
const WEIGHTS: [f64; 4] = [0.25, 0.2, 0.5, 0.05];

/// How good a set of ticks is, each part up to 1.
fn score(simplicity: f64, coverage: f64, density: f64) -> f64 {
    WEIGHTS[0] * simplicity + WEIGHTS[1] * coverage + WEIGHTS[2] * density + WEIGHTS[3]
}

impl Ticks {
    /// About `about` ticks for the range from `low` to `high`, near both ends but not always up to them.
    /// `None` unless `low` is below `high` and both are finite.
    ///
    /// Source: Talbot, Lin and Hanrahan, An Extension of Wilkinson's Algorithm for Positioning Tick
    /// Labels on Axes, IEEE Trans. Visualization and Computer Graphics 16 (2010) 1036. Legibility is
    /// left out: all labels have one form.
    #[must_use]
    pub fn new(low: f64, high: f64, about: usize) -> Option<Self> {
        if !(low < high && (high - low).is_finite()) {
            return None;
        }
        let wanted = about.clamp(2, 20) as f64;
        let mut search = Search { low, high, wanted, best: f64::NEG_INFINITY, found: None };
        // Ticks at every skip-th multiple of a nice step. Each loop ends where even the best that is
        // still to come scores less; twenty rounds are far more than any range takes.
        for skip in 1..20 {
            let skip = f64::from(skip);
            for (place, nice) in NICE.iter().enumerate() {
                let simple = 1.0 - place as f64 / (NICE.len() - 1) as f64 - skip + 1.0;
                if score(simple, 1.0, 1.0) < search.best {
                    return search.found;
                }
                search.counts(skip, *nice, simple);
            }
        }
        search.found
    }

    /// The tick at a place from 0.
    #[must_use]
    pub fn at(&self, place: usize) -> f64 {
        // Whole numbers first, so that 0.3 is not 0.30000000000000004.
        let whole = self.first + place as f64 * self.parts;
        let tick = whole * (self.step / self.parts);
        // What is left of a zero.
        if whole == 0.0 { 0.0 } else { tick }
    }

    /// All ticks.
    pub fn iter(&self) -> impl Iterator<Item = f64> {
        let ticks = *self;
        (0..ticks.count).map(move |place| ticks.at(place))
    }

    /// The label of a tick: as many decimals as the step takes, the same for all; a power of ten where the
    /// numbers are very large or very small.
    #[must_use]
    pub fn label(&self, tick: f64, mark: DecimalMark) -> String {
        let largest = self.at(0).abs().max(self.at(self.count.saturating_sub(1)).abs());
        if !(1e-5..1e9).contains(&largest) {
            return full(tick, mark);
        }
        // The digits behind the mark that step and first tick need, at most nine.
        let decimals = (0..9).find(|decimals| {
            let scale = 10.0_f64.powi(*decimals);
            [self.step, self.at(0)].iter().all(|number| ((number * scale).round() - number * scale).abs() < 1e-6)
        });
        let decimals = decimals.unwrap_or(9);
        let rounded = (tick * 10.0_f64.powi(decimals)).round() / 10.0_f64.powi(decimals);
        let whole = if rounded == 0.0 { 0 } else { rounded.abs().log10().floor() as i32 + 1 };
        significant(rounded, u8::try_from((whole + decimals).max(1)).unwrap_or(12), mark)
    }
}

struct Search {
    low: f64,
    high: f64,
    wanted: f64,
    best: f64,
    found: Option<Ticks>,
}

impl Search {
    fn counts(&mut self, skip: f64, nice: f64, simple: f64) {
        for count in 2..100 {
            let count = f64::from(count);
            let dense = if count >= self.wanted { 2.0 - (count - 1.0) / (self.wanted - 1.0) } else { 1.0 };
            if score(simple, 1.0, dense) < self.best {
                return;
            }
            let delta = (self.high - self.low) / (count + 1.0) / skip / nice;
            let first_power = delta.log10().ceil() as i32;
            for power in first_power..first_power + 40 {
                let step = skip * nice * 10.0_f64.powi(power);
                if score(simple, self.best_coverage(step * (count - 1.0)), dense) < self.best {
                    break;
                }
                self.starts(skip, step, count, simple - 1.0);
            }
        }
    }

    fn starts(&mut self, skip: f64, step: f64, count: f64, simple: f64) {
        let from = (self.high / step).floor() * skip - (count - 1.0) * skip;
        let to = (self.low / step).ceil() * skip;
        // At most a handful, for the step is about the range over the count.
        for start in (0..200).map(|at| from + f64::from(at)).take_while(|start| *start <= to) {
            let first = start * (step / skip);
            let last = first + step * (count - 1.0);
            let on_zero = start % skip == 0.0 && first <= 0.0 && last >= 0.0;
            let simplicity = simple + if on_zero { 1.0 } else { 0.0 };
            let found = score(simplicity, self.coverage(first, last), self.density(count, first, last));
            if found > self.best {
                self.best = found;
                #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 2 to 100")]
                let count = count as usize;
                self.found = Some(Ticks { first: start, step, parts: skip, count });
            }
        }
    }

    fn coverage(&self, first: f64, last: f64) -> f64 {
        let tenth = 0.1 * (self.high - self.low);
        1.0 - 0.5 * ((self.high - last).powi(2) + (self.low - first).powi(2)) / tenth.powi(2)
    }

    fn best_coverage(&self, span: f64) -> f64 {
        let range = self.high - self.low;
        let half = ((span - range) / 2.0).max(0.0);
        1.0 - half.powi(2) / (0.1 * range).powi(2)
    }

    fn density(&self, count: f64, first: f64, last: f64) -> f64 {
        let own = (count - 1.0) / (last - first);
        let wanted = (self.wanted - 1.0) / (last.max(self.high) - first.min(self.low));
        2.0 - (own / wanted).max(wanted / own)
    }
}
