//! Monte Carlo propagation of distributions (JCGM 101), in slices: a page hands out a few thousand
//! draws at a time, shows how far it is, and drops the run to cancel it.

use crate::domain::compare::rounding::without_noise;
use crate::domain::compare::uncertainty::drawn_shares::{Correlations, DrawnShare, SHARE_DRAWS};
use crate::domain::compare::uncertainty::input_uncertainty::Shape;
use crate::domain::compare::uncertainty::study::{SignedOutput, Study, Varied};
use crate::domain::compare::uncertainty::tape::{Block, LANES, Lane};
use crate::statistics::draws::DrawSummary;
use crate::statistics::ends::{Ends, pilot};
use rand_distr::{Distribution, StandardNormal, StudentT};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};

/// How many draws a run takes as a rule. The ends of a 95 % interval then waver by less than 1 % of
/// the standard uncertainty (JCGM 101, 7.2.2 asks for 10⁶ where two digits are to be sure).
pub const USUAL_DRAWS: usize = 100_000;

/// A run.
#[derive(Debug, Clone)]
pub struct MonteCarloRun {
    study: Study,
    random: Xoshiro256PlusPlus,
    wanted: usize,
    drawn: usize,
    left_out: usize,
    /// Registers, a set for each system.
    blocks: Vec<Block>,
    /// What each source draws, as a multiple of its standard uncertainty.
    deviates: Vec<Lane>,
    /// The draws of each figure asked for.
    columns: Vec<Ends>,
}

/// How far a run is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Progress {
    /// Draws made.
    pub drawn: usize,
    /// Draws wanted.
    pub wanted: usize,
    /// Draws for which some system has no balance or a number is outside what physics allows. They
    /// count as drawn and are left out of every figure.
    pub left_out: usize,
}

impl Progress {
    /// Whether all draws are made.
    #[must_use]
    pub const fn is_done(self) -> bool {
        self.drawn >= self.wanted
    }
}

impl MonteCarloRun {
    /// A run of `draws` draws. The same study, seed and number of draws give the same figures on every
    /// machine, in slices of whatever size.
    #[must_use]
    pub fn new(study: Study, seed: u64, draws: usize) -> Self {
        let blocks = study.parts.iter().map(|part| part.tape.block()).collect();
        Self {
            random: Xoshiro256PlusPlus::seed_from_u64(seed),
            wanted: draws,
            drawn: 0,
            left_out: 0,
            blocks,
            deviates: vec![[0.0; LANES]; study.sources.len()],
            // One pilot ends after the other: the work at its end is not done for all figures at once.
            columns: (0..study.asked.len()).map(|at| Ends::new(draws, pilot(draws) + at * LANES)).collect(),
            study,
        }
    }

    /// Makes at least `most` more draws, to the next whole block, unless fewer are wanted. Nothing is
    /// allocated.
    pub fn step(&mut self, most: usize) -> Progress {
        let until = self.drawn.saturating_add(most).min(self.wanted);
        while self.drawn < until {
            let count = LANES.min(self.wanted - self.drawn);
            self.draw_block(count);
            self.drawn += count;
        }
        self.progress()
    }

    /// How far the run is.
    #[must_use]
    pub const fn progress(&self) -> Progress {
        Progress { drawn: self.drawn, wanted: self.wanted, left_out: self.left_out }
    }

    /// What the run is about.
    #[must_use]
    pub const fn study(&self) -> &Study {
        &self.study
    }

    /// What the run was about, once nothing more is asked of it.
    #[must_use]
    pub fn into_study(self) -> Study {
        self.study
    }

    /// What the draws of a figure asked for say; `None` for fewer than
    /// [`FEWEST_DRAWS`](crate::statistics::draws::FEWEST_DRAWS).
    #[must_use]
    pub fn summary(&mut self, asked: usize) -> Option<DrawSummary> {
        self.columns.get_mut(asked)?.summary(self.left_out)
    }

    /// The share of each source in a figure asked for, from [`SHARE_DRAWS`] draws of its own.
    ///
    /// Squared correlations of the sources with the figure: where the figure is linear they are the shares of JCGM 100.
    #[must_use]
    pub fn shares(study: &Study, asked: usize, seed: u64) -> Vec<DrawnShare> {
        let mut run = Self::new(study.clone(), seed, SHARE_DRAWS);
        run.columns.clear();
        let mut found = Correlations::new(study.sources.len());
        let Some(terms) = study.terms.get(asked) else { return Vec::new() };
        let mut room = [0.0; LANES];
        for _ in 0..SHARE_DRAWS / LANES {
            let out = run.draw_inputs();
            let Some(lane) = figure_lane(&run.study, &run.blocks, terms, &mut room) else { continue };
            for at in (0..LANES).filter(|at| !out[*at]) {
                found.add(run.deviates.iter().map(|deviate| deviate[at]), lane[at]);
            }
        }
        found.shares()
    }

    /// Draws the inputs of one block and evaluates all systems; which draws are impossible.
    fn draw_inputs(&mut self) -> [bool; LANES] {
        for ((shape, _), lane) in self.study.sources.iter().zip(&mut self.deviates) {
            draw(&mut self.random, *shape, lane);
        }
        let mut impossible = [false; LANES];
        for (part, block) in self.study.parts.iter().zip(&mut self.blocks) {
            for (at, varied) in part.varied.iter().enumerate() {
                if let Some(lane) = block.input_mut(at) {
                    put(varied, &self.deviates, lane, &mut impossible);
                }
            }
            part.tape.run(block);
            part.tape.mark_impossible(block, &mut impossible);
        }
        impossible
    }

    fn draw_block(&mut self, count: usize) {
        let impossible = self.draw_inputs();
        let out = impossible.iter().take(count).filter(|out| **out).count();
        let mut room = [0.0; LANES];
        for (terms, column) in self.study.terms.iter().zip(&mut self.columns) {
            let lane = figure_lane(&self.study, &self.blocks, terms, &mut room);
            let Some(drawn) = lane.and_then(|lane| lane.get(..count)) else { continue };
            if out == 0 {
                column.extend(drawn);
                continue;
            }
            for (draw, _) in drawn.iter().zip(&impossible).filter(|(_, out)| !**out) {
                column.extend(std::slice::from_ref(draw));
            }
        }
        self.left_out += out;
    }
}

/// The draws of a figure; a difference in `room`, in which rounding is zero.
fn figure_lane<'a>(
    study: &Study,
    blocks: &'a [Block],
    terms: &[Option<SignedOutput>; 2],
    room: &'a mut Lane,
) -> Option<&'a Lane> {
    let lane_of = |(system, output, _): &SignedOutput| {
        let (part, block) = study.parts.get(*system).zip(blocks.get(*system))?;
        part.tape.output(block, *output)
    };
    match terms {
        [Some(one), None] => lane_of(one),
        [Some(one), Some(other)] => {
            let (a, b) = lane_of(one).zip(lane_of(other))?;
            for at in 0..LANES {
                room[at] = without_noise(one.2 * a[at] + other.2 * b[at], a[at].abs() + b[at].abs());
            }
            Some(room)
        }
        _ => None,
    }
}

/// One block of draws with mean 0 and standard deviation 1 (Student's: with scale 1).
fn draw(random: &mut Xoshiro256PlusPlus, shape: Shape, lane: &mut Lane) {
    match shape {
        Shape::Rectangular => {
            let width = 2.0 * 3.0_f64.sqrt();
            lane.fill_with(|| width * (unit(random) - 0.5));
        }
        // A part of a degree is cut off, as for the coverage factor.
        Shape::Student(freedom) => match StudentT::new(freedom.floor().max(1.0)) {
            Ok(student) => lane.fill_with(|| student.sample(random)),
            Err(_) => lane.fill(f64::NAN),
        },
        Shape::Normal => lane.fill_with(|| StandardNormal.sample(random)),
    }
}

/// Above 0 and below 1, each step of 2⁻⁵³ as likely as the next; the middle of each step, so that both
/// ends are as far away.
fn unit(random: &mut Xoshiro256PlusPlus) -> f64 {
    ((random.next_u64() >> 11) as f64 + 0.5) * (1.0 / 9_007_199_254_740_992.0)
}

/// An input's draws: its value and what each source adds.
fn put(varied: &Varied, deviates: &[Lane], lane: &mut Lane, impossible: &mut [bool; LANES]) {
    lane.fill(varied.at);
    for (source, standard) in &varied.sources {
        if let Some(deviates) = deviates.get(*source) {
            for at in 0..LANES {
                lane[at] += standard * deviates[at];
            }
        }
    }
    if let Some(reach) = varied.reach {
        for at in 0..LANES {
            impossible[at] |= !reach.allows(lane[at]);
        }
    }
}
