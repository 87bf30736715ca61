//! What the draws of a figure say: mean, standard deviation, and the interval that holds 95 % of them.

/// A figure by its draws. Numbers are in the base unit of the figure's kind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DrawSummary {
    /// Draws that count.
    pub draws: usize,
    /// Draws left out: they have no value.
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

impl DrawSummary {
    /// The same for so many times the figure, above zero.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        let [mean, standard, low, high, low_error, high_error] =
            [self.mean, self.standard, self.low, self.high, self.low_error, self.high_error].map(|of| of * factor);
        Self { mean, standard, low, high, low_error, high_error, ..self }
    }
}
