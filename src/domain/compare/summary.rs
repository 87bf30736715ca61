//! What the draws of a figure say: mean, standard deviation, and the interval that holds 95 % of them.

use super::coverage::COVERAGE;
use super::monte_carlo::Run;

/// A figure by its draws. Numbers are in the base unit of the figure's kind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Summary {
    /// Draws that count.
    pub draws: usize,
    /// Draws left out, see [`Progress`](super::monte_carlo::Progress).
    pub left_out: usize,
    /// Mean.
    pub mean: f64,
    /// Standard deviation.
    pub standard: f64,
    /// Lower end of the probabilistically symmetric 95 % interval (JCGM 101, 7.7.2): 2.5 % of the draws are below.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// How far the lower end wavers from one seed to the next: its standard error.
    pub low_error: f64,
    /// How far the upper end wavers.
    pub high_error: f64,
    /// Share of the draws that are exactly as small as the smallest: a dose held at zero.
    pub held: f64,
}

/// The fewest draws that a summary is made of.
pub const FEWEST_DRAWS: usize = 1_000;

impl Run {
    /// What the draws of a figure asked for say; `None` for fewer than [`FEWEST_DRAWS`].
    ///
    /// The order of the draws is lost: nothing else needs it.
    #[must_use]
    pub fn summary(&mut self, asked: usize) -> Option<Summary> {
        let left_out = self.progress().left_out;
        let draws = self.draws_mut(asked);
        if draws.len() < FEWEST_DRAWS {
            return None;
        }
        let (mean, standard) = mean_and_standard(draws);
        let count = draws.len() as f64;
        let (below, above) = symmetric(draws.len());
        // A rank wavers with √(n·p·(1−p)); the draws at the ranks that far away say how much that is.
        let off = (count * (1.0 - COVERAGE) / 2.0 * f64::midpoint(1.0, COVERAGE)).sqrt().round() as usize;
        let [low, low_error, held] = end(draws, below, off, |draw| draw, mean - TAIL * standard);
        let from_top = draws.len() - 1 - above;
        let [high, high_error, _] = end(draws, from_top, off, |draw| -draw, -(mean + TAIL * standard));
        Some(Summary {
            draws: draws.len(),
            left_out,
            mean,
            standard,
            low,
            high: -high,
            low_error,
            high_error,
            held: if held > 1.0 { held / count } else { 0.0 },
        })
    }

    /// The shortest interval that holds 95 % of the draws of a figure (JCGM 101, 7.7.4), which differs
    /// from the symmetric one where the draws lean to one side. `None` for fewer than [`FEWEST_DRAWS`].
    #[must_use]
    pub fn shortest(&mut self, asked: usize) -> Option<(f64, f64)> {
        let draws = self.draws_mut(asked);
        if draws.len() < FEWEST_DRAWS {
            return None;
        }
        draws.sort_unstable_by(f64::total_cmp);
        let span = within(draws.len());
        let ends = draws.iter().zip(draws.iter().skip(span));
        ends.map(|(low, high)| (*low, *high)).min_by(|a, b| (a.1 - a.0).total_cmp(&(b.1 - b.0)))
    }

    /// How many draws of a figure fall into each of `bins` equal steps from its lowest to its highest
    /// within four standard deviations of the mean, with both ends: for a drawing.
    #[must_use]
    pub fn histogram(&self, asked: usize, bins: usize) -> Option<(f64, f64, Vec<u32>)> {
        let draws = self.draws(asked);
        if draws.len() < FEWEST_DRAWS || bins == 0 {
            return None;
        }
        let (mean, standard) = mean_and_standard(draws);
        let low = draws.iter().copied().fold(f64::INFINITY, f64::min).max(mean - 4.0 * standard);
        let high = draws.iter().copied().fold(f64::NEG_INFINITY, f64::max).min(mean + 4.0 * standard);
        (high > low).then_some(())?;
        let mut counts = vec![0; bins];
        for draw in draws.iter().filter(|draw| **draw >= low && **draw <= high) {
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 0 to bins")]
            let at = ((draw - low) / (high - low) * bins as f64) as usize;
            if let Some(count) = counts.get_mut(at.min(bins - 1)) {
                *count += 1;
            }
        }
        Some((low, high, counts))
    }
}

/// How many steps between ranks an interval spans: q = pM, to the nearest whole (JCGM 101, 7.7.1).
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a share of a count")]
fn within(count: usize) -> usize {
    (COVERAGE * count as f64 + 0.5).floor() as usize
}

/// Ranks, from 0, of both ends of the symmetric interval (JCGM 101, 7.7.2).
fn symmetric(count: usize) -> (usize, usize) {
    let span = within(count);
    let below = (count - span).div_ceil(2).max(1) - 1;
    (below, (below + span).min(count - 1))
}

/// Mean and standard deviation, in one pass over deviations from the first draw, which is near enough
/// to the mean for nothing to be lost.
fn mean_and_standard(draws: &[f64]) -> (f64, f64) {
    let first = draws.first().copied().unwrap_or(f64::NAN);
    let (mut sum, mut squares) = (0.0, 0.0);
    for draw in draws {
        let off = draw - first;
        sum += off;
        squares += off * off;
    }
    let count = draws.len() as f64;
    let variance = (squares - sum * sum / count) / (count - 1.0);
    (first + sum / count, variance.max(0.0).sqrt())
}

/// How many standard deviations from the mean the ends are looked for: most draws are nearer and need
/// not be sorted.
const TAIL: f64 = 1.6;

/// The draw of a rank counted from the lowest of `key`, half of what lies between the draws `off` ranks
/// away on both sides, and how many draws are as low as the lowest.
fn end(draws: &[f64], rank: usize, off: usize, key: impl Fn(f64) -> f64, limit: f64) -> [f64; 3] {
    let mut tail: Vec<f64> = Vec::with_capacity(draws.len() / 8);
    tail.extend(draws.iter().map(|draw| key(*draw)).filter(|draw| *draw <= limit));
    let last = rank + off;
    if tail.len() <= last {
        // So lopsided that the end lies nearer to the mean.
        tail.clear();
        tail.extend(draws.iter().map(|draw| key(*draw)));
    }
    tail.sort_unstable_by(f64::total_cmp);
    let at = |rank: usize| tail.get(rank.min(tail.len() - 1)).copied().unwrap_or(f64::NAN);
    let least = at(0);
    let held = tail.partition_point(|value| *value <= least);
    [at(rank), (at(last) - at(rank.saturating_sub(off))) / 2.0, held as f64]
}
