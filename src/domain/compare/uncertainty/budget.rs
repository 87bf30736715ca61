//! The first-order uncertainty of a figure (JCGM 100): standard uncertainty, interval, and the share of
//! each source.

use crate::domain::compare::rounding::without_noise;
use crate::domain::compare::uncertainty::drawn_shares::DrawnShare;
use crate::domain::compare::uncertainty::study::{RequestedFigure, Study};
use crate::domain::recipe::field::Field;
use crate::statistics::coverage::{Combined, Contribution, combine, factor};
use crate::statistics::distribution::CONFIDENCE;

/// One source's part in a figure's uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// The source's place in the study.
    pub source: usize,
    /// What one standard uncertainty of the source changes in the figure, c·u, with its sign, in the
    /// base unit of the figure. Where it acts on several numbers, all of them move at once.
    pub part: f64,
    /// Sensitivity and standard uncertainty by themselves; `None` where the source acts on several numbers.
    pub single: Option<Single>,
    /// Its share of the figure's variance, (c·u)²/u_c², from 0 to 1; all shares add up to 1.
    pub share: f64,
}

/// A source that acts on one number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Single {
    /// The system that the number belongs to.
    pub system: usize,
    /// The number.
    pub field: Field,
    /// Sensitivity c = ∂y/∂x, base unit of the figure per base unit of the number.
    pub slope: f64,
    /// Standard uncertainty u of the number, in its base unit.
    pub standard: f64,
}

/// A figure with its uncertainty to first order. Numbers are in the base unit of the figure's kind.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    /// The figure.
    pub asked: RequestedFigure,
    /// Its value y.
    pub value: f64,
    /// Combined standard uncertainty u_c.
    pub standard: f64,
    /// Effective degrees of freedom; `None` where they are without limit.
    pub freedom: Option<f64>,
    /// Coverage factor k for 95 %.
    pub factor: f64,
    /// Expanded uncertainty U = k·u_c: y − U to y + U.
    pub expanded: f64,
    /// The sources that act on the figure, the largest share first.
    pub shares: Vec<Share>,
}

impl Study {
    /// The uncertainty of a figure to first order. Sensitivities are exact derivatives of the balance's
    /// formulas (see [`Tape::derivatives`](crate::domain::compare::uncertainty::tape::Tape::derivatives)); sources are independent of
    /// each other. `None` where there is no such figure, or none of its derivatives is a number.
    ///
    /// Source: JCGM 100, equations 10, 11a, 12, G.2b; clause 6 and annex G for the interval.
    #[must_use]
    pub fn budget(&self, asked: usize) -> Option<Budget> {
        let (terms, figure) = (self.terms.get(asked)?, *self.asked.get(asked)?);
        let (mut value, mut size) = (0.0, 0.0);
        let mut parts = vec![0.0; self.sources.len()];
        let mut acts: Vec<Vec<Single>> = vec![Vec::new(); self.sources.len()];
        for (system, output, sign) in terms.iter().flatten() {
            let part = self.parts.get(*system)?;
            let (of_system, slopes) = part.tape.derivatives(&part.point(), *output)?;
            value += sign * of_system;
            size += of_system.abs();
            for (varied, slope) in part.varied.iter().zip(slopes) {
                for (source, standard) in &varied.sources {
                    let single =
                        Single { system: *system, field: varied.field, slope: sign * slope, standard: *standard };
                    *parts.get_mut(*source)? += single.slope * standard;
                    acts.get_mut(*source)?.push(single);
                }
            }
        }
        let value = without_noise(value, size);
        // What one source changes in both systems alike cancels; rounding is no uncertainty.
        for (part, acts) in parts.iter_mut().zip(&acts) {
            *part = without_noise(*part, acts.iter().map(|single| (single.slope * single.standard).abs()).sum());
        }
        let independent: Vec<Contribution> = parts
            .iter()
            .zip(&self.sources)
            .map(|(part, (_, freedom))| Contribution { part: *part, freedom: *freedom })
            .collect();
        let Combined { standard, freedom } = combine(&independent);
        if !standard.is_finite() || !value.is_finite() {
            return None;
        }
        let share = |part: f64| if standard > 0.0 { (part / standard).powi(2) } else { 0.0 };
        // Put in where it belongs: a few shares are not worth a sorting routine of their own.
        let mut shares: Vec<Share> = Vec::with_capacity(parts.len());
        for (source, part) in parts.into_iter().enumerate().filter(|(_, part)| *part != 0.0) {
            let single = match acts.get(source).map(Vec::as_slice) {
                Some([single]) => Some(*single),
                _ => None,
            };
            let share = share(part);
            let place = shares.partition_point(|other| other.share >= share);
            shares.insert(place, Share { source, part, single, share });
        }
        let factor = factor(CONFIDENCE, freedom);
        Some(Budget { asked: figure, value, standard, freedom, factor, expanded: factor * standard, shares })
    }
}

/// What it would bring to improve one source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Improvement {
    /// The source.
    pub source: usize,
    /// Its share of the variance now.
    pub share: f64,
    /// Combined standard uncertainty once the source's own is halved.
    pub halved: f64,
    /// Combined standard uncertainty once the source were exact: no instrument there brings more.
    pub exact: f64,
}

impl Budget {
    /// The same for so many times the figure: a cost a year from a cost an hour.
    #[must_use]
    pub fn times(mut self, factor: f64) -> Self {
        self.value *= factor;
        self.standard *= factor;
        self.expanded *= factor;
        for share in &mut self.shares {
            share.part *= factor;
            share.single = share.single.map(|single| Single { slope: single.slope * factor, ..single });
        }
        self
    }

    /// The same with the shares that draws give, for a figure that does not follow its inputs everywhere.
    #[must_use]
    pub fn with_drawn_shares(mut self, drawn: &[DrawnShare], standard: f64) -> Self {
        self.standard = standard;
        let share = |drawn: &DrawnShare| Share {
            source: drawn.source,
            part: drawn.sign * standard * drawn.share.sqrt(),
            single: None,
            share: drawn.share,
        };
        self.shares = drawn.iter().map(share).collect();
        self
    }

    /// Which source to improve first, and what that brings; `None` where nothing is uncertain.
    ///
    /// u_c² − ¾·(c·u)² with the uncertainty halved, u_c² − (c·u)² without it.
    #[must_use]
    pub fn improve_first(&self) -> Option<Improvement> {
        let first = self.shares.first()?;
        let left = |share: f64| self.standard * (1.0 - share).max(0.0).sqrt();
        Some(Improvement {
            source: first.source,
            share: first.share,
            halved: left(0.75 * first.share),
            exact: left(first.share),
        })
    }
}
