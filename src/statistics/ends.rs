//! The draws of one figure, of which only the ends are kept: an interval of 95 % needs no more, and dozens
//! of figures of hundreds of thousands of draws each find room in a page.
//!
//! The first draws, the pilot, are all kept. They say where the outer parts begin, with a margin; of the later
//! draws only those there are kept. What is asked for is exact: the same as of all draws, sorted.

use super::distribution::CONFIDENCE;
use super::draws::{DrawSummary, FEWEST_DRAWS};

/// How many of so many draws are the pilot.
#[must_use]
pub fn pilot(draws: usize) -> usize {
    (draws / 64).clamp(4_096, 16_384)
}

/// The share of the draws that each outer part is to hold, by a pilot of so many draws: that outside an end of
/// the interval, and seven times as far as the pilot's share wavers. An end falls short in one of 10¹¹ figures.
fn outer(pilot: usize) -> f64 {
    (1.0 - CONFIDENCE) / 2.0 + 7.0 * (0.05 * 0.95 / pilot as f64).sqrt()
}

/// The draws of one figure.
#[derive(Debug, Clone)]
pub struct Ends {
    count: usize,
    first: f64,
    /// Sum of the deviations from the first draw, and of their squares.
    sum: f64,
    squares: f64,
    /// How many draws the pilot takes.
    first_draws: usize,
    /// The pilot, until it has said where the outer parts begin.
    pilot: Vec<f64>,
    low: Outer,
    high: Outer,
}

/// The draws at one end, upside down at the upper one.
#[derive(Debug, Clone)]
struct Outer {
    /// Where it begins: draws below are kept, those that are equal are counted.
    from: f64,
    below: Vec<f64>,
    equal: usize,
}

impl Outer {
    fn new(draws: usize, pilot: usize) -> Self {
        // A little more than it is to hold.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a share of a count")]
        let room = if draws > pilot { (draws as f64 * (outer(pilot) + 0.01)) as usize } else { draws };
        Self { from: f64::INFINITY, below: Vec::with_capacity(room), equal: 0 }
    }

    fn put(&mut self, draw: f64) {
        if draw < self.from {
            self.below.push(draw);
        } else if draw <= self.from {
            self.equal += 1;
        }
    }

    /// The draws at three rising ranks, how many are as low as the lowest, or `None` where it does not reach so far.
    fn at(&mut self, ranks: [usize; 3]) -> Option<([f64; 3], usize)> {
        let kept = self.below.len();
        if ranks[2] >= kept + self.equal {
            return None;
        }
        let mut found = [self.from; 3];
        let mut part = self.below.as_mut_slice();
        // From the highest rank down, each among what is below the one before.
        for (found, rank) in found.iter_mut().zip(ranks).rev() {
            if rank < part.len() {
                *found = select(part, rank);
                part = part.get_mut(..=rank)?;
            }
        }
        let least = self.below.iter().copied().fold(self.from, f64::min);
        let held = self.below.iter().filter(|draw| **draw <= least).count();
        Some((found, if least < self.from { held } else { self.equal }))
    }
}

/// The draw of a rank; what is lower is moved before it.
fn select(draws: &mut [f64], rank: usize) -> f64 {
    *draws.select_nth_unstable_by(rank, f64::total_cmp).1
}

impl Ends {
    /// Room for so many draws, of which the first ones are the pilot: [`pilot`], or a few more.
    #[must_use]
    pub fn new(draws: usize, pilot: usize) -> Self {
        Self {
            count: 0,
            first: f64::NAN,
            sum: 0.0,
            squares: 0.0,
            first_draws: pilot,
            pilot: Vec::with_capacity(pilot.min(draws)),
            low: Outer::new(draws, pilot),
            high: Outer::new(draws, pilot),
        }
    }

    /// Takes draws. Nothing is allocated.
    pub fn extend(&mut self, draws: &[f64]) {
        if self.count == 0
            && let Some(draw) = draws.first()
        {
            self.first = *draw;
        }
        self.count += draws.len();
        // Plain loops, for nearly all of the time of a run of many figures goes by here.
        let (first, mut sum, mut squares) = (self.first, self.sum, self.squares);
        for draw in draws {
            let off = draw - first;
            sum += off;
            squares += off * off;
        }
        (self.sum, self.squares) = (sum, squares);
        let pilot = draws.len().min(self.first_draws.saturating_sub(self.count - draws.len()));
        let (pilot, rest) = draws.split_at(pilot);
        if !pilot.is_empty() {
            self.pilot.extend_from_slice(pilot);
            if self.count >= self.first_draws {
                self.settle();
            }
        }
        let (low, high) = (self.low.from, -self.high.from);
        for draw in rest {
            if *draw <= low || *draw >= high {
                self.put(*draw);
            }
        }
    }

    fn put(&mut self, draw: f64) {
        self.low.put(draw);
        self.high.put(-draw);
    }

    /// How many draws it has taken.
    #[must_use]
    pub const fn count(&self) -> usize {
        self.count
    }

    /// Ends the pilot: finds where the outer parts begin.
    fn settle(&mut self) {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a share of a count")]
        let rank = (outer(self.first_draws) * self.first_draws as f64) as usize;
        let last = self.pilot.len().saturating_sub(1);
        if rank < last {
            self.low.from = select(&mut self.pilot, rank);
            self.high.from = -select(&mut self.pilot, last - rank);
        }
        self.hand_over();
    }

    fn hand_over(&mut self) {
        for draw in std::mem::take(&mut self.pilot) {
            self.put(draw);
        }
    }

    /// What the draws say, with those that were left out; `None` for fewer than [`FEWEST_DRAWS`], and where an outer part falls short.
    #[must_use]
    pub fn summary(&mut self, left_out: usize) -> Option<DrawSummary> {
        if self.count < FEWEST_DRAWS {
            return None;
        }
        if !self.pilot.is_empty() {
            // So few draws that all were kept. More may still come.
            let mut all = self.clone();
            all.hand_over();
            return all.summary(left_out);
        }
        let count = self.count as f64;
        let (below, above) = symmetric(self.count);
        // A rank wavers with √(n·p·(1−p)); the draws at the ranks that far away say how much that is.
        let off = (count * (1.0 - CONFIDENCE) / 2.0 * f64::midpoint(1.0, CONFIDENCE)).sqrt().round() as usize;
        let around = |rank: usize| [rank.saturating_sub(off), rank, rank + off];
        let ([before, low, after], held) = self.low.at(around(below))?;
        let ([high_before, high, high_after], _) = self.high.at(around(self.count - 1 - above))?;
        let variance = (self.squares - self.sum * self.sum / count) / (count - 1.0);
        Some(DrawSummary {
            draws: self.count,
            left_out,
            mean: self.first + self.sum / count,
            standard: variance.max(0.0).sqrt(),
            low,
            high: -high,
            low_error: (after - before) / 2.0,
            high_error: (high_after - high_before) / 2.0,
            held: if held > 1 { held as f64 / count } else { 0.0 },
        })
    }
}

/// Ranks, from 0, of both ends of the symmetric interval (JCGM 101, 7.7.2), which spans q = pM ranks to the
/// nearest whole (7.7.1).
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a share of a count")]
fn symmetric(count: usize) -> (usize, usize) {
    let span = (CONFIDENCE * count as f64 + 0.5).floor() as usize;
    let below = (count - span).div_ceil(2).max(1) - 1;
    (below, (below + span).min(count - 1))
}
