//! The share of each source in a figure that does not follow its inputs everywhere, such as a water dose at zero: from
//! draws, for its first derivatives say nothing there.

/// The share of one source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DrawnShare {
    /// The source's place in the study.
    pub source: usize,
    /// Its share, from 0 to 1; all shares add up to 1.
    pub share: f64,
    /// 1 where the figure grows with the source, else −1.
    pub sign: f64,
}

/// Draws that the shares rest on: a correlation wavers by about 1/√n.
pub const SHARE_DRAWS: usize = 16_384;

/// Less of the draws' correlation is chance: four times its standard error.
const CHANCE: f64 = 4.0;

/// Collects what each source and the figure do together.
#[derive(Debug, Clone)]
pub(in crate::domain::compare) struct Correlations {
    count: f64,
    figure: f64,
    squares: f64,
    /// For each source the sums of x, x² and x·y.
    sources: Vec<[f64; 3]>,
    /// The first draw, taken off each: what is summed stays small.
    first: Option<f64>,
}

impl Correlations {
    pub(in crate::domain::compare) fn new(sources: usize) -> Self {
        Self { count: 0.0, figure: 0.0, squares: 0.0, sources: vec![[0.0; 3]; sources], first: None }
    }

    /// Takes one draw: of the sources, as multiples of their standard uncertainty, and of the figure.
    pub(in crate::domain::compare) fn add(&mut self, deviates: impl Iterator<Item = f64>, figure: f64) {
        let figure = figure - *self.first.get_or_insert(figure);
        self.count += 1.0;
        self.figure += figure;
        self.squares += figure * figure;
        for (sums, deviate) in self.sources.iter_mut().zip(deviates) {
            sums[0] += deviate;
            sums[1] += deviate * deviate;
            sums[2] += deviate * figure;
        }
    }

    /// The shares, the largest first: squared correlations, in proportion. Empty where the figure does not vary.
    pub(in crate::domain::compare) fn shares(&self) -> Vec<DrawnShare> {
        let variance = self.squares / self.count - (self.figure / self.count).powi(2);
        let correlation = |sums: &[f64; 3]| {
            let [mean, square, product] = sums.map(|sum| sum / self.count);
            let own = square - mean * mean;
            (product - mean * self.figure / self.count) / (own * variance).sqrt()
        };
        let least = CHANCE / self.count.sqrt();
        let mut found: Vec<DrawnShare> = (0..)
            .zip(self.sources.iter().map(correlation))
            .filter(|(_, correlation)| correlation.is_finite() && correlation.abs() > least)
            .map(|(source, correlation): (usize, f64)| DrawnShare {
                source,
                share: correlation * correlation,
                sign: correlation.signum(),
            })
            .collect();
        let sum: f64 = found.iter().map(|share| share.share).sum();
        for share in &mut found {
            share.share /= sum;
        }
        found.sort_by(|one, other| other.share.total_cmp(&one.share));
        found
    }
}
