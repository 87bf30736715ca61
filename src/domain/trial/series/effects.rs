//! What a series tells: effects of the factors and of their pairs, with intervals, and the analysis of
//! variance, by least squares.
//!
//! Each run counts once, with the mean of its boards: boards from one batch are not replicates of each
//! other.

use crate::domain::trial::boards::property::Property;
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::series::run::Run;
use crate::domain::trial::series::runs::Series;
use crate::domain::trial::series::word::Word;
use crate::statistics::distribution::{CONFIDENCE, f_tail, two_sided_t};
use crate::statistics::least_squares::{LeastSquaresFit, fit};
use serde::{Deserialize, Serialize};

/// A term whose F is so large by chance in fewer cases than this is significant.
pub const SIGNIFICANCE: f64 = 0.05;

/// Which terms the model has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum ModelWay {
    /// Main effects and two-factor interactions.
    #[default]
    Pairs,
    /// Main effects only; what interactions there are goes into the scatter.
    Mains,
}

impl ModelWay {
    /// Both, in the order in which they are offered.
    pub const ALL: &'static [ModelWay] = &[Self::Pairs, Self::Mains];
}

/// A term of the model. Factors by their place, from 0.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Term {
    /// Differences between blocks.
    Blocks,
    /// The main effect of a factor.
    Main(usize),
    /// The interaction of two factors.
    Pair(usize, usize),
}

/// A number with the half width of its 95 % interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EffectEstimate {
    /// The number.
    pub value: f64,
    /// Half the width of the interval; `None` without degrees of freedom.
    pub half_width: Option<f64>,
}

/// What one term comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct TermResult {
    /// The term.
    pub term: Term,
    /// Degrees of freedom; 0 for a term aliased with earlier terms.
    pub freedom: u32,
    /// Sum of squares, given all other terms.
    pub squares: f64,
    /// Share of the total sum of squares.
    pub share: f64,
    /// F, mean square over residual mean square; `None` without either's degrees of freedom.
    pub f: Option<f64>,
    /// P(F > f).
    pub p: Option<f64>,
    /// Of a main effect of two levels: the high level's mean less the low one's. Of a pair of two levels
    /// each: half the difference that one makes to the other's effect.
    pub effect: Option<EffectEstimate>,
    /// Other effects up to third order that share its column in a fraction.
    pub aliases: Vec<Word>,
}

/// By how much a level lies above or below the mean of its factor's levels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LevelEffect {
    /// The factor's place, from 0.
    pub factor: usize,
    /// The level, from 0.
    pub level: u8,
    /// Above the mean of the levels.
    pub above: EffectEstimate,
    /// Mean of the runs at that level, as measured.
    pub mean: f64,
}

/// What a series tells of one property.
#[derive(Debug, Clone, PartialEq)]
pub struct Effects {
    /// The property.
    pub property: Property,
    /// How many runs are in it.
    pub runs: usize,
    /// Mean of the runs.
    pub mean: f64,
    /// The terms: blocks, main effects, pairs.
    pub terms: Vec<TermResult>,
    /// The levels of each factor.
    pub levels: Vec<LevelEffect>,
    /// Degrees of freedom of the residuals.
    pub residual_freedom: u32,
    /// Sum of squares of the residuals.
    pub residual_squares: f64,
    /// Total sum of squares about the mean.
    pub total_squares: f64,
}

/// What comes of results.
#[derive(Debug, Clone, PartialEq)]
pub struct EffectsOutcome {
    /// The effects, when there are enough results.
    pub effects: Option<Effects>,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
}

/// A result: the place of its run in the run order, and the board's value.
pub type RunResult = (u16, f64);

/// Analyses results of a series. Several boards of one run count as their mean; a run without a board is
/// left out.
///
/// The model has an intercept, blocks, main effects and, where asked for, pairs, each factor coded to sum
/// to zero over its levels. A term aliased with earlier terms is left out and says so.
/// Sums of squares are of each term given all others; in a whole design they add up to the total.
#[must_use]
pub fn effects(property: Property, series: &Series, outcomes: &[RunResult], way: ModelWay) -> EffectsOutcome {
    let place = TrialPlace::Property(property);
    let mut findings = Vec::new();
    let strange = outcomes.iter().filter(|(run, _)| series.run(*run).is_none()).count();
    if strange > 0 {
        findings.push(TrialFinding::unusual(place, TrialProblem::BoardsWithoutRun { count: strange }));
    }
    let mut rows: Vec<(&Run, f64)> = Vec::new();
    let planned = || series.runs.iter().filter(|run| run.is_in_design());
    for run in planned() {
        let own: Vec<f64> = outcomes.iter().filter(|(place, _)| *place == run.place).map(|(_, value)| *value).collect();
        let mean = own.iter().sum::<f64>() / own.len() as f64;
        if mean.is_finite() {
            rows.push((run, mean));
        }
    }
    let missing = planned().count() - rows.len();
    if missing > 0 && !rows.is_empty() {
        findings.push(TrialFinding::unusual(place, TrialProblem::RunsMissing { count: missing }));
    }
    let model = Model::new(series, &rows, way);
    let values: Vec<f64> = rows.iter().map(|(_, value)| *value).collect();
    if values.len() < 3 {
        findings.push(TrialFinding::stop(place, TrialProblem::TooFewResults));
        return EffectsOutcome { effects: None, findings };
    }
    let mean = values.iter().sum::<f64>() / values.len() as f64;
    // About the mean, so that results far from zero lose no digits. The intercept is not shown.
    let centred: Vec<f64> = values.iter().map(|value| value - mean).collect();
    let total: f64 = centred.iter().map(|value| value * value).sum();
    let noise = 1e-24 * mean * mean * values.len() as f64;
    if total <= noise || !total.is_finite() {
        findings.push(TrialFinding::stop(place, TrialProblem::NoVariation));
        return EffectsOutcome { effects: None, findings };
    }
    let effects = model.solve(&centred).map(|(terms, levels, whole)| Effects {
        property,
        runs: rows.len(),
        mean,
        terms,
        levels,
        residual_freedom: whole.freedom,
        residual_squares: whole.residual,
        total_squares: total,
    });
    match &effects {
        None => findings.push(TrialFinding::stop(place, TrialProblem::TooFewResults)),
        Some(effects) if effects.residual_freedom == 0 => {
            findings.push(TrialFinding::note(place, TrialProblem::NoFreedom));
        }
        Some(_) => {}
    }
    EffectsOutcome { effects, findings }
}

struct Model<'a> {
    series: &'a Series,
    rows: &'a [(&'a Run, f64)],
    /// The intercept, then the columns of each term.
    columns: Vec<Vec<f64>>,
    /// The terms with the places of their columns.
    terms: Vec<(Term, std::ops::Range<usize>)>,
}

/// The code of a level: one column a level but the first, which is the negative of them all.
fn code(level: u8, levels: usize) -> Vec<f64> {
    let column = |own: usize| match usize::from(level) {
        0 => -1.0,
        level if level == own => 1.0,
        _ => 0.0,
    };
    (1..levels).map(column).collect()
}

impl<'a> Model<'a> {
    fn new(series: &'a Series, rows: &'a [(&'a Run, f64)], way: ModelWay) -> Self {
        let mut model = Self { series, rows, columns: vec![vec![1.0; rows.len()]], terms: Vec::new() };
        let factors = series.factors.len();
        if series.blocks > 1 {
            let blocks = usize::from(series.blocks);
            model.add(Term::Blocks, |run| code(u8::try_from(run.block.saturating_sub(1)).unwrap_or(u8::MAX), blocks));
        }
        let own = |run: &Run, factor: usize| {
            let levels = series.factors.get(factor).map_or(0, |factor| factor.levels.len());
            code(run.levels.get(factor).copied().unwrap_or(0), levels)
        };
        for factor in 0..factors {
            model.add(Term::Main(factor), |run| own(run, factor));
        }
        if way == ModelWay::Pairs {
            for one in 0..factors {
                for other in one + 1..factors {
                    model.add(Term::Pair(one, other), |run| {
                        let (left, right) = (own(run, one), own(run, other));
                        left.iter().flat_map(|l| right.iter().map(move |r| l * r)).collect()
                    });
                }
            }
        }
        model
    }

    fn add(&mut self, term: Term, codes: impl Fn(&Run) -> Vec<f64>) {
        let coded: Vec<Vec<f64>> = self.rows.iter().map(|(run, _)| codes(run)).collect();
        let width = coded.first().map_or(0, Vec::len);
        let from = self.columns.len();
        for column in 0..width {
            self.columns.push(coded.iter().filter_map(|row| row.get(column).copied()).collect());
        }
        self.terms.push((term, from..self.columns.len()));
    }

    fn solve(&self, y: &[f64]) -> Option<(Vec<TermResult>, Vec<LevelEffect>, LeastSquaresFit)> {
        let whole = fit(&self.columns, y)?;
        let total: f64 = y.iter().map(|value| value * value).sum();
        let terms = self.terms.iter().map(|(term, columns)| self.term(*term, columns, &whole, y, total));
        let terms: Vec<TermResult> = terms.collect::<Option<_>>()?;
        Some((terms, self.levels(&whole), whole))
    }

    fn term(
        &self,
        term: Term,
        columns: &std::ops::Range<usize>,
        whole: &LeastSquaresFit,
        y: &[f64],
        total: f64,
    ) -> Option<TermResult> {
        let told: Vec<usize> = columns.clone().filter(|at| whole.coefficients[*at].is_some()).collect();
        // Put last, so that what it adds is given all others.
        let others = (0..self.columns.len()).filter(|at| whole.coefficients[*at].is_some() && !columns.contains(at));
        let order: Vec<usize> = others.chain(told.iter().copied()).collect();
        let sorted: Vec<Vec<f64>> = order.iter().map(|at| self.columns[*at].clone()).collect();
        let last = fit(&sorted, y)?;
        let added = last.added.iter().skip(order.len() - told.len()).flatten();
        let squares: f64 = added.map(|added| added * added).sum();
        let freedom = u32::try_from(told.len()).ok()?;
        let f = whole
            .variance()
            .filter(|_| freedom > 0)
            .and_then(|variance| crate::quantity::number::finite(squares / f64::from(freedom) / variance));
        Some(TermResult {
            term,
            freedom,
            squares,
            share: squares / total,
            f,
            p: f.and_then(|f| f_tail(f, freedom, whole.freedom)),
            effect: self.effect(term, columns, whole),
            aliases: self.aliases(term),
        })
    }

    /// Twice the coefficient of a term with a single column of ±1.
    fn effect(&self, term: Term, columns: &std::ops::Range<usize>, whole: &LeastSquaresFit) -> Option<EffectEstimate> {
        if columns.len() != 1 || term == Term::Blocks {
            return None;
        }
        let mut weights = vec![0.0; self.columns.len()];
        *weights.get_mut(columns.start)? = 2.0;
        estimate(whole, &weights)
    }

    fn aliases(&self, term: Term) -> Vec<Word> {
        let word = match term {
            Term::Blocks => return Vec::new(),
            Term::Main(factor) => Word::main(factor),
            Term::Pair(one, other) => Word::pair(one, other),
        };
        let mut words = self.series.design.aliases(word);
        words.retain(|word| word.order() <= 3);
        words
    }

    fn levels(&self, whole: &LeastSquaresFit) -> Vec<LevelEffect> {
        let mut all = Vec::new();
        for (term, columns) in &self.terms {
            let Term::Main(factor) = *term else { continue };
            for (level, code) in (0..=columns.len()).zip(0_u8..) {
                let mut weights = vec![0.0; self.columns.len()];
                for at in columns.clone() {
                    let own = at - columns.start + 1 == level;
                    if let Some(weight) = weights.get_mut(at) {
                        *weight = if level == 0 { -1.0 } else { f64::from(u8::from(own)) };
                    }
                }
                let here: Vec<f64> = self
                    .rows
                    .iter()
                    .filter(|(run, _)| run.levels.get(factor) == Some(&code))
                    .map(|(_, value)| *value)
                    .collect();
                let mean = here.iter().sum::<f64>() / here.len() as f64;
                if let Some(above) = estimate(whole, &weights).filter(|_| mean.is_finite()) {
                    all.push(LevelEffect { factor, level: code, above, mean });
                }
            }
        }
        all
    }
}

fn estimate(whole: &LeastSquaresFit, weights: &[f64]) -> Option<EffectEstimate> {
    let (value, deviation) = whole.combination(weights)?;
    let half_width =
        deviation.zip(two_sided_t(CONFIDENCE, f64::from(whole.freedom))).map(|(deviation, t)| t * deviation);
    Some(EffectEstimate { value, half_width })
}

impl Effects {
    /// Share of the total sum of squares that the model explains, R².
    #[must_use]
    pub fn explained(&self) -> f64 {
        1.0 - self.residual_squares / self.total_squares
    }

    /// Residual standard deviation; `None` without degrees of freedom.
    #[must_use]
    pub fn residual_deviation(&self) -> Option<f64> {
        (self.residual_freedom > 0).then(|| (self.residual_squares / f64::from(self.residual_freedom)).sqrt())
    }

    /// What a term comes to.
    #[must_use]
    pub fn term(&self, term: Term) -> Option<&TermResult> {
        self.terms.iter().find(|result| result.term == term)
    }

    /// The factors and pairs by the share that they explain, the largest first; blocks are no answer to
    /// what was asked and left out, and so are aliased terms.
    #[must_use]
    pub fn ranking(&self) -> Vec<&TermResult> {
        let mut ranking: Vec<&TermResult> =
            self.terms.iter().filter(|result| result.term != Term::Blocks && result.freedom > 0).collect();
        ranking.sort_by(|one, other| other.squares.total_cmp(&one.squares));
        ranking
    }
}

impl TermResult {
    /// Whether it is significant; `None` when there is no telling.
    #[must_use]
    pub fn is_significant(&self) -> Option<bool> {
        self.p.map(|p| p < SIGNIFICANCE)
    }
}
