//! Solving for one input from a wanted value of one figure.
//!
//! Where the figure is known to be a straight line over the input, the answer is that line's. Elsewhere
//! the whole allowed range is looked through, and each change of sign is narrowed down by Brent's
//! method (Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4; the `roots` crate,
//! 0.4 kB). So more than one answer is found, and none is said to be none.

use super::capacity::{BeyondLimit, beyond_limit};
use super::output::Output;
use super::variation::Variation;
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::compare::variable;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::input::{Dosing, Feed, WaterPlan};
use roots::{Convergency, find_root_brent};

/// How an answer was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Method {
    /// In one step: the figure is a straight line over the input.
    Linear,
    /// By narrowing down.
    Search,
}

/// Input values and the figure that all of them give, in base units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reached {
    /// The smallest input.
    pub from: f64,
    /// The largest input; the same as the smallest where only one value gives the figure.
    pub to: f64,
    /// The figure.
    pub gives: f64,
}

/// What was found. Numbers in the base unit of the input's kind.
#[derive(Debug, Clone, PartialEq)]
pub enum Solution {
    /// One value.
    One(f64),
    /// Several, from the smallest.
    Several(Vec<f64>),
    /// Every value of a stretch, such as all fibre moistures that need no water.
    Range {
        /// Where it begins.
        from: f64,
        /// Where it ends; often at the end of what is allowed.
        to: f64,
    },
    /// No value of the input gives the figure wanted.
    Unreachable {
        /// What comes nearest.
        nearest: Reached,
    },
    /// The figure does not depend on the input.
    Independent {
        /// What it is, whatever the input.
        gives: f64,
    },
}

/// An answer.
#[derive(Debug, Clone, PartialEq)]
pub struct SolvedInput {
    /// The input solved for.
    pub field: Field,
    /// The figure.
    pub output: Output,
    /// Its wanted value, in base units.
    pub wanted: f64,
    /// How it was found.
    pub method: Method,
    /// What was found.
    pub found: Solution,
    /// Machines that cannot do what the recipe asks of them at the values found.
    pub over: Vec<BeyondLimit>,
}

/// Why nothing can be solved for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SolveForError {
    /// The recipe does not use the input.
    NotUsed,
    /// The recipe never gives the figure.
    NotGiven,
    /// The value wanted is not a number.
    NotWanted,
}

/// Solves for `field` so that `output` comes to `wanted` (in base units).
///
/// # Errors
/// [`SolveForError`] where the question itself does not fit the recipe.
pub fn solve_for(case: &Case, field: Field, output: Output, wanted: f64) -> Result<SolvedInput, SolveForError> {
    if !wanted.is_finite() {
        return Err(SolveForError::NotWanted);
    }
    let now = variable::get(&case.input, field);
    let mut search = Search { variation: Variation::new(case), field, output, wanted, tolerance: 0.0 };
    // A blank optional field can be solved for, one that the recipe has no place for cannot.
    let range = search.range(case);
    let Some(range) = range.filter(|(from, to)| search.can_set(*from) || search.can_set(*to)) else {
        return Err(SolveForError::NotUsed);
    };
    if is_linear(case, field, output)
        && let Some(found) = search.line(range, now)
    {
        return Ok(search.answer(Method::Linear, found));
    }
    let found = search.look_through(range, now).ok_or(SolveForError::NotGiven)?;
    Ok(search.answer(Method::Search, found))
}

/// Whether the figure is known to be a straight line over the input, from one end of what is allowed
/// to the other. No more than what follows at once from the formulas; everything else is searched.
#[must_use]
pub fn is_linear(case: &Case, field: Field, output: Output) -> bool {
    let cost = matches!(
        output,
        Output::Figure(Figure::Cost | Figure::FibreCost | Figure::Liquid(_, LiquidFigure::Cost))
            | Output::CostPerYear(_)
    );
    let on_board = case
        .input
        .liquids
        .as_slice()
        .iter()
        .any(|liquid| matches!(liquid.dosing, Dosing::LiquidPerBoard(_) | Dosing::LiquidOnFaces(..)));
    match field {
        Field::FibrePrice | Field::Liquid(_, LiquidField::Price) => cost,
        // Everything along the line grows with the fibre flow, unless the water does not.
        Field::FibreFlow => {
            let fixed_water = matches!(case.input.water, WaterPlan::Flow(_));
            let flow =
                matches!(output, Output::LiquidFlow | Output::LiquidWater | Output::DryerWater | Output::DryerHeat)
                    || matches!(output, Output::Figure(figure) if is_flow(figure));
            flow && !fixed_water
        }
        // Water on hand and water needed, as long as the fibre flow does not follow from the moisture.
        Field::FibreMoisture => {
            let water = matches!(
                output,
                Output::Figure(Figure::FibreWater | Figure::WaterOnHand) | Output::DryerWater | Output::DryerHeat
            );
            water && !matches!(case.input.feed, Feed::Belt(_))
        }
        Field::MatMoisture | Field::DryingLoss => {
            matches!(output, Output::Figure(Figure::WaterNeeded) | Output::DryerWater | Output::DryerHeat)
        }
        Field::BoardDensity => matches!(output, Output::Figure(Figure::RawBoard | Figure::MatOvenDry)),
        Field::Thickness => {
            matches!(output, Output::Figure(Figure::RawBoard | Figure::MatOvenDry | Figure::PressedThickness))
        }
        Field::Liquid(_, LiquidField::Dose) => {
            matches!(output, Output::LiquidFlow | Output::BinderOnFibre) && !on_board
        }
        _ => false,
    }
}

const fn is_flow(figure: Figure) -> bool {
    matches!(
        figure,
        Figure::Fibre
            | Figure::FibreWet
            | Figure::FibreWater
            | Figure::Solids
            | Figure::WaterNeeded
            | Figure::WaterOnHand
            | Figure::WaterDose
            | Figure::WaterDoseVolume
            | Figure::WaterExcess
            | Figure::FurnishWet
            | Figure::Reject
            | Figure::NetSolids
            | Figure::LineSpeed
            | Figure::PressVapour
            | Figure::PressHeat
            | Figure::FinishedArea
            | Figure::FinishedVolume
            | Figure::FinishedMass
            | Figure::SanderDust
            | Figure::Offcuts
            | Figure::FibrePerShift
            | Figure::Used(
                crate::domain::balance::machine::Machine::FibreSupply
                    | crate::domain::balance::machine::Machine::Blender
            )
            | Figure::Liquid(
                _,
                LiquidFigure::Solids
                    | LiquidFigure::Liquid
                    | LiquidFigure::Volume
                    | LiquidFigure::Water
                    | LiquidFigure::Thinning
                    | LiquidFigure::Spray
                    | LiquidFigure::PerShift
                    | LiquidFigure::VolumePerShift
            )
    )
}

/// Evenly spaced points of the range.
const EVEN: usize = 160;
/// Points around the recipe's own value, in steps of a factor, for ranges that span many powers of ten.
const AROUND: i32 = 48;
/// That factor: 48 steps of 2^¼ reach from 1/4096 to 4096 times the value.
const FACTOR: f64 = 1.189_207_115_002_721;

struct Search {
    variation: Variation,
    field: Field,
    output: Output,
    wanted: f64,
    /// What counts as reached.
    tolerance: f64,
}

/// A point looked at: the input, and by how much the figure misses; `None` without a balance.
type Evaluation = (f64, Option<f64>);

impl Search {
    /// The answer, with the machines that cannot follow it.
    fn answer(mut self, method: Method, found: Solution) -> SolvedInput {
        let at: Vec<f64> = match &found {
            Solution::One(at) => vec![*at],
            Solution::Several(all) => all.clone(),
            Solution::Range { from, to } => vec![*from, *to],
            Solution::Unreachable { .. } | Solution::Independent { .. } => Vec::new(),
        };
        let mut over = Vec::new();
        for at in at {
            over.extend(beyond_limit(&mut self.variation, self.field, at, self.output));
        }
        SolvedInput { field: self.field, output: self.output, wanted: self.wanted, method, found, over }
    }

    /// What the field may hold, an end that is refused moved in by a billionth.
    fn range(&self, case: &Case) -> Option<(f64, f64)> {
        let limit = variable::limit(&case.input, self.field);
        let (least, most) = (limit.unit.to_base(limit.least), limit.unit.to_base(limit.most));
        let gap = (most - least) * 1e-9;
        let from = if limit.above_least { least + gap } else { least };
        let to = if limit.below_most { most - gap } else { most };
        (to > from).then_some((from, to))
    }

    fn can_set(&self, at: f64) -> bool {
        let mut input = self.variation.case().input.clone();
        variable::set(&mut input, self.field, at).is_ok()
    }

    fn miss(&mut self, at: f64) -> Option<f64> {
        self.variation.value(&[(self.field, at)], self.output).map(|value| value - self.wanted)
    }

    fn reached(&self, miss: f64) -> bool {
        miss.abs() <= self.tolerance
    }

    /// The answer where the figure is a straight line: through the range's ends, or as near to them as
    /// there is a balance.
    fn line(&mut self, (from, to): (f64, f64), now: Option<f64>) -> Option<Solution> {
        let first = now.filter(|now| self.miss(*now).is_some()).unwrap_or(from);
        let second = if (to - first).abs() > (first - from).abs() { first + (to - first) / 2.0 } else { from };
        let (at_first, at_second) = (self.miss(first)?, self.miss(second)?);
        let slope = (at_second - at_first) / (second - first);
        if slope.abs() < f64::MIN_POSITIVE {
            let gives = at_first + self.wanted;
            let tolerance = 1e-12 * gives.abs().max(self.wanted.abs());
            self.miss(from).and(self.miss(to))?;
            return Some(if at_first.abs() <= tolerance {
                Solution::Range { from, to }
            } else {
                Solution::Independent { gives }
            });
        }
        let root = first - at_first / slope;
        self.tolerance = 1e-9 * self.wanted.abs().max(at_first.abs());
        if (from..=to).contains(&root) {
            // The line itself is put to the test: a kink would show here, and the search takes over.
            let miss = self.miss(root)?;
            return self.reached(miss).then_some(Solution::One(root));
        }
        let at = if root < from { from } else { to };
        let gives = self.miss(at)? + self.wanted;
        Some(Solution::Unreachable { nearest: Reached { from: at, to: at, gives } })
    }

    /// The points to look at, in rising order.
    fn points((from, to): (f64, f64), now: Option<f64>) -> Vec<f64> {
        let mut points: Vec<f64> = (0..=EVEN).map(|at| from + (to - from) * at as f64 / EVEN as f64).collect();
        // Without a value of its own, around a hundredth of the range.
        let centre = now.filter(|now| *now > 0.0).unwrap_or((to - from) / 100.0);
        points.extend((-AROUND..=AROUND).map(|step| centre * FACTOR.powi(step)).filter(|at| *at > from && *at < to));
        points.sort_unstable_by(f64::total_cmp);
        points.dedup();
        points
    }

    /// Looks through the whole range; `None` where the recipe never gives the figure.
    fn look_through(&mut self, range: (f64, f64), now: Option<f64>) -> Option<Solution> {
        let points = Self::points(range, now);
        let mut seen: Vec<Evaluation> = points.into_iter().map(|at| (at, self.miss(at))).collect();
        self.add_edges(&mut seen);
        let misses = || seen.iter().filter_map(|(_, miss)| *miss);
        let (least, most) =
            misses().fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), miss| (a.min(miss), b.max(miss)));
        if !least.is_finite() || !most.is_finite() {
            return None;
        }
        self.tolerance = 1e-9 * self.wanted.abs().max(1e-3 * least.abs().max(most.abs()).min(1.0)).max(1e-15);
        if most - least <= 1e-12 * (least + self.wanted).abs().max(self.wanted.abs()) && seen.len() > 2 {
            let gives = least + self.wanted;
            let mut solved = seen.iter().filter(|point| point.1.is_some()).map(|point| point.0);
            let from = solved.next()?;
            let to = solved.next_back().unwrap_or(from);
            return Some(if self.reached(least) {
                Solution::Range { from, to }
            } else {
                Solution::Independent { gives }
            });
        }
        if let Some(stretch) = self.stretch(&seen) {
            return Some(stretch);
        }
        let mut found = self.crossings(&seen);
        if found.is_empty() {
            let nearest = self.nearest(&seen)?;
            if self.reached(nearest.gives - self.wanted) {
                found.push(nearest.from);
            } else {
                return Some(Solution::Unreachable { nearest: self.widened(&seen, nearest) });
            }
        }
        Some(match found.as_slice() {
            [one] => Solution::One(*one),
            _ => Solution::Several(found),
        })
    }

    /// Between a point with a balance and one without, the last with one is looked for, so that what
    /// happens on the way there is not missed.
    fn add_edges(&mut self, seen: &mut Vec<Evaluation>) {
        let mut edges = Vec::new();
        for pair in seen.windows(2) {
            let [(left, at_left), (right, at_right)] = pair else { continue };
            if at_left.is_some() == at_right.is_some() {
                continue;
            }
            let (mut good, mut bad) = if at_left.is_some() { (*left, *right) } else { (*right, *left) };
            for _ in 0..60 {
                let middle = f64::midpoint(good, bad);
                if self.miss(middle).is_some() { good = middle } else { bad = middle }
            }
            edges.push((good, self.miss(good)));
        }
        for edge in edges {
            let place = seen.partition_point(|point| point.0 < edge.0);
            seen.insert(place, edge);
        }
    }

    /// Two or more points in a row that all reach the value: a stretch, its ends narrowed down.
    fn stretch(&mut self, seen: &[Evaluation]) -> Option<Solution> {
        let reaches = |point: &Evaluation| point.1.is_some_and(|miss| self.reached(miss));
        let first = seen.iter().position(reaches)?;
        let length = seen.iter().skip(first).take_while(|point| reaches(point)).count();
        if length < 2 {
            return None;
        }
        let (from, to) = self.ends(seen, first, first + length - 1);
        Some(Solution::Range { from, to })
    }

    /// The ends of a run of points that all reach the value, narrowed down.
    fn ends(&mut self, seen: &[Evaluation], first: usize, last: usize) -> (f64, f64) {
        let mut narrow = |inside: f64, outside: Option<&Evaluation>| {
            let Some((outside, Some(_))) = outside else { return inside };
            let (mut good, mut bad) = (inside, *outside);
            for _ in 0..60 {
                let middle = f64::midpoint(good, bad);
                if self.miss(middle).is_some_and(|miss| self.reached(miss)) { good = middle } else { bad = middle }
            }
            good
        };
        let inside = |at: usize| seen.get(at).map_or(f64::NAN, |point| point.0);
        let from = narrow(inside(first), first.checked_sub(1).and_then(|at| seen.get(at)));
        let to = narrow(inside(last), seen.get(last + 1));
        (from, to)
    }

    /// Where the figure goes through the value.
    fn crossings(&mut self, seen: &[Evaluation]) -> Vec<f64> {
        let mut found: Vec<f64> =
            seen.iter().filter(|(_, miss)| miss.is_some_and(|miss| self.reached(miss))).map(|(at, _)| *at).collect();
        for pair in seen.windows(2) {
            let [(left, Some(at_left)), (right, Some(at_right))] = pair else { continue };
            if self.reached(*at_left) || self.reached(*at_right) || (*at_left < 0.0) == (*at_right < 0.0) {
                continue;
            }
            let root = {
                let field = self.field;
                let (output, wanted) = (self.output, self.wanted);
                let variation = &mut self.variation;
                let mut miss =
                    |at: f64| variation.value(&[(field, at)], output).map_or(f64::NAN, |value| value - wanted);
                find_root_brent(*left, *right, &mut miss, &mut Narrow)
            };
            // A jump across the value is no answer.
            if let Ok(root) = root
                && self.miss(root).is_some_and(|miss| self.reached(miss))
            {
                found.push(root);
            }
        }
        found.sort_unstable_by(f64::total_cmp);
        found.dedup_by(|a, b| (*a - *b).abs() <= 1e-12 * b.abs());
        found
    }

    /// The whole range around what comes nearest that gives as much.
    fn widened(&mut self, seen: &[Evaluation], nearest: Reached) -> Reached {
        let shift = nearest.gives - self.wanted;
        let rebased: Vec<Evaluation> = seen.iter().map(|(at, miss)| (*at, miss.map(|miss| miss - shift))).collect();
        let (wanted, tolerance) = (self.wanted, self.tolerance);
        self.wanted = nearest.gives;
        self.tolerance = 1e-9 * nearest.gives.abs().max(tolerance);
        let place = rebased.partition_point(|point| point.0 < nearest.from);
        let reaches =
            |this: &Self, at: usize| rebased.get(at).and_then(|point| point.1).is_some_and(|miss| this.reached(miss));
        let mut first = place;
        while first > 0 && reaches(self, first - 1) {
            first -= 1;
        }
        let mut after = place;
        while reaches(self, after) {
            after += 1;
        }
        let found = if after > first {
            let (from, to) = self.ends(&rebased, first, after - 1);
            Reached { from: from.min(nearest.from), to: to.max(nearest.to), gives: nearest.gives }
        } else {
            nearest
        };
        (self.wanted, self.tolerance) = (wanted, tolerance);
        found
    }

    /// What comes nearest, looked at more closely between its neighbours (golden section).
    fn nearest(&mut self, seen: &[Evaluation]) -> Option<Reached> {
        let miss = |point: &Evaluation| point.1.map_or(f64::INFINITY, f64::abs);
        let (place, best) = seen.iter().enumerate().min_by(|a, b| miss(a.1).total_cmp(&miss(b.1)))?;
        let near = |at: usize| seen.get(at).filter(|point| point.1.is_some()).map_or(best.0, |point| point.0);
        let (mut low, mut high) = (place.checked_sub(1).map_or(best.0, near), near(place + 1));
        let (mut at, mut least) = (best.0, miss(best));
        let golden = (5.0_f64.sqrt() - 1.0) / 2.0;
        for _ in 0..80 {
            let (left, right) = (high - golden * (high - low), low + golden * (high - low));
            let far = |found: Option<f64>| found.map_or(f64::INFINITY, f64::abs);
            let (at_left, at_right) = (far(self.miss(left)), far(self.miss(right)));
            for (place, miss) in [(left, at_left), (right, at_right)] {
                if miss < least {
                    (at, least) = (place, miss);
                }
            }
            if at_left < at_right { high = right } else { low = left }
        }
        let gives = self.miss(at)? + self.wanted;
        Some(Reached { from: at, to: at, gives })
    }
}

/// Narrows down until the bracket is as narrow as numbers are.
struct Narrow;

impl Convergency<f64> for Narrow {
    fn is_root_found(&mut self, miss: f64) -> bool {
        miss == 0.0
    }

    fn is_converged(&mut self, left: f64, right: f64) -> bool {
        (left - right).abs() <= 4.0 * f64::EPSILON * left.abs().max(right.abs())
    }

    fn is_iteration_limit_reached(&mut self, steps: usize) -> bool {
        steps > 200
    }
}
