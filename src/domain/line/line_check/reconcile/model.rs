//! A line check as a problem of data reconciliation: its quantities, its balances, and how well each is read.
//!
//! With fibre F, flows L, solids contents s, moistures ω (dry basis), drying loss δ, reject r, line speed v, mat width
//! b, wet mat and raw board per area M and m, pressed thickness t and density ρ:
//! G = F·(1+ω_f); S = F + Σ s·L; S·(ω_mat+δ) = G − F + Σ L·(1−s) + W; S·(1−r)·(1+ω_mat) = v·b·M;
//! m·(1+ω_mat) = (M + q·(1+ω_mat))·(1+ω_b) with the solids q on the faces; m = ρ·t. The flow of a pump may be read twice, by its meter and by its setting.

use super::quantity::LineQuantity;
use super::uncertainty::Uncertainties;
use crate::domain::balance::outcome::Case;
use crate::domain::line::line_check::actual::{Actual, PumpActual};
use crate::domain::line::line_check::reading::{MeterReading, Readings};
use crate::domain::line::tanks::draw::drawn;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::recipe::liquid::LiquidId;
use crate::statistics::reconciliation::{
    CandidateReading, Constraints, Diagnosis, Dual64, Equations, Problem, Quantity, Reconciliation, ReconciliationError,
};
use uom::ConstZero;
use uom::si::f64::MassRate;

/// A line check that can be reconciled.
#[derive(Debug, Clone, PartialEq)]
pub struct LineModel {
    /// The quantities, in the order of the problem's.
    pub quantities: Vec<LineQuantity>,
    /// Readings and start values.
    pub problem: Problem,
    candidates: Vec<CandidateReading>,
    balances: Balances,
}

/// What the balances take: places in the list of quantities.
#[derive(Debug, Clone, PartialEq)]
struct Balances {
    streams: Vec<Stream>,
    /// A pump's flow, and its flow by setting.
    read_twice: Vec<(usize, usize)>,
    /// A pump's flow by mass, by volume, and its density, itself a quantity or known.
    by_volume: Vec<(usize, usize, Density)>,
    reject: f64,
    /// Solids sprayed on the faces, per area; those of the recipe.
    on_faces: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Density {
    At(usize),
    Known(f64),
}

/// One flow into the blender.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Stream {
    flow: usize,
    /// Place of its solids content; `None` for water.
    solids: Option<usize>,
    /// Water that thins it on its way, per flow, where no pump of its own delivers that.
    thinning: f64,
}

/// What a recipe's balance of the furnish takes of streams, in the order of addition.
fn streams(target: &Case) -> Vec<Fed> {
    let mut fed = Vec::new();
    for liquid in target.input.liquids.as_slice().iter().filter(|liquid| liquid.dosing.on_faces().is_none()) {
        fed.push(Fed::Liquid(liquid.id));
        fed.push(Fed::Thinning(liquid.id));
    }
    fed.push(Fed::Water);
    fed
}

struct Builder<'a> {
    case: &'a Case,
    target: &'a Case,
    uncertainties: &'a Uncertainties,
    quantities: Vec<LineQuantity>,
    problem: Vec<Quantity>,
    candidates: Vec<CandidateReading>,
}

impl Builder<'_> {
    /// Adds a quantity, read or not; `typical` is where the search starts.
    fn add(&mut self, quantity: LineQuantity, read: Option<f64>, typical: f64) -> usize {
        let uncertainty = self.uncertainty(quantity, read.unwrap_or(typical), typical);
        self.add_with(quantity, read.map(|value| (value, uncertainty)), typical)
    }

    fn add_with(&mut self, quantity: LineQuantity, read: Option<(f64, f64)>, typical: f64) -> usize {
        let at = self.quantities.len();
        self.quantities.push(quantity);
        self.problem.push(match read {
            Some((value, uncertainty)) => Quantity::Measured { value, uncertainty },
            None => Quantity::Unmeasured { start: typical },
        });
        let has_instrument =
            !matches!(quantity, LineQuantity::Fibre | LineQuantity::FurnishSolids | LineQuantity::Setting(_));
        if has_instrument {
            let uncertainty = self.uncertainty(quantity, typical, typical);
            self.candidates.push(CandidateReading { quantity: at, uncertainty });
        }
        at
    }

    fn uncertainty(&self, quantity: LineQuantity, value: f64, typical: f64) -> f64 {
        // Only flows can be read as zero.
        let least = if matches!(quantity.kind(), crate::quantity::Kind::LiquidFlow) { typical } else { 0.0 };
        self.uncertainties.standard(self.case, quantity, value, least)
    }

    fn density(&mut self, fed: Fed) -> Option<Density> {
        let known = drawn(self.target, fed)?.1.value;
        Some(match fed {
            Fed::Liquid(id) => {
                let quantity = LineQuantity::LiquidDensity(id);
                let there = self.quantities.iter().position(|other| *other == quantity);
                Density::At(there.unwrap_or_else(|| self.add(quantity, Some(known), known)))
            }
            Fed::Thinning(_) | Fed::Water | Fed::FaceWater => Density::Known(known),
        })
    }

    fn pump(&mut self, run: &PumpActual, readings: &Readings, balances: &mut Balances) -> Option<usize> {
        let typical = run.mass.value;
        let meter = readings.pump(run.pump).and_then(|reading| reading.meter);
        let by_mass = match meter {
            Some(MeterReading::Mass(mass)) => Some(mass.value),
            _ => None,
        };
        let flow = self.add(LineQuantity::Meter(run.pump), by_mass, typical);
        if let Some(MeterReading::Volume(volume)) = meter {
            let density = self.density(run.fed)?;
            let volume = self.add(LineQuantity::Volume(run.pump), Some(volume.value), volume.value);
            balances.by_volume.push((flow, volume, density));
        }
        if let Some(by_line) = run.by_line {
            let usual = self.uncertainty(LineQuantity::Setting(run.pump), by_line.value, typical);
            // Half the 95 % interval over 1.96: never below the standard deviation, as t is above 1.96.
            let uncertainty = run.expected.map_or(usual, |expected| (expected.high - expected.low).value / 2.0 / 1.96);
            let read = (by_line.value, uncertainty.max(0.3 * usual));
            let setting = self.add_with(LineQuantity::Setting(run.pump), Some(read), typical);
            balances.read_twice.push((flow, setting));
        }
        Some(flow)
    }

    fn stream(&mut self, fed: Fed, actual: &Actual, readings: &Readings, balances: &mut Balances) -> Option<()> {
        let pumps: Vec<&PumpActual> = actual.pumps.iter().filter(|pump| pump.fed == fed).collect();
        let (whole, _) = drawn(self.target, fed)?;
        let mut flows = Vec::new();
        for run in &pumps {
            flows.push(self.pump(run, readings, balances)?);
        }
        // Thinning water without a pump follows its liquid; other flows without one are not known.
        if flows.is_empty() && !matches!(fed, Fed::Thinning(_)) && whole > MassRate::ZERO {
            flows.push(self.add(LineQuantity::Flow(fed), None, whole.value));
        }
        let solids = match fed {
            Fed::Liquid(id) if !flows.is_empty() => {
                let liquid = self.target.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?;
                let solids = liquid.solids.ratio().value;
                Some(self.add(LineQuantity::Solids(id), Some(solids), solids))
            }
            _ => None,
        };
        let thinning = match fed {
            Fed::Liquid(id) => self.thinning(id, actual),
            Fed::Thinning(_) | Fed::Water | Fed::FaceWater => 0.0,
        };
        balances.streams.extend(flows.into_iter().map(|flow| Stream { flow, solids, thinning }));
        Some(())
    }

    fn thinning(&self, id: LiquidId, actual: &Actual) -> f64 {
        let own = actual.pumps.iter().any(|pump| pump.fed == Fed::Thinning(id));
        let flow = self.target.solved.liquids.iter().find(|flow| flow.id == id);
        flow.filter(|flow| !own && flow.liquid > MassRate::ZERO).map_or(0.0, |flow| (flow.thinning / flow.liquid).value)
    }
}

impl LineModel {
    /// What was not read is inferred where the balances allow it. Solids contents, densities, mat width and drying loss are
    /// those of the recipe, with the uncertainty of their tests. `target` is the recipe at the fibre that was read.
    #[must_use]
    pub fn new(
        case: &Case,
        target: &Case,
        actual: &Actual,
        readings: &Readings,
        uncertainties: &Uncertainties,
    ) -> Option<Self> {
        let mut build = Builder {
            case,
            target,
            uncertainties,
            quantities: Vec::new(),
            problem: Vec::new(),
            candidates: Vec::new(),
        };
        let (read, typical) = (read(case, readings), typical(case, target, actual));
        for quantity in LineQuantity::PLAIN {
            build.add(quantity, read(quantity), typical(quantity));
        }
        let mut balances = Balances {
            streams: Vec::new(),
            read_twice: Vec::new(),
            by_volume: Vec::new(),
            reject: case.input.line.reject.value,
            on_faces: case.solved.mat.on_faces.value,
        };
        for fed in streams(target) {
            build.stream(fed, actual, readings, &mut balances)?;
        }
        let Builder { quantities, problem, candidates, .. } = build;
        Some(Self { quantities, problem: Problem::new(problem), candidates, balances })
    }

    /// Reconciles the readings and looks for those that err, and for the extra reading that would decide between
    /// suspects.
    ///
    /// # Errors
    /// As for [`Problem::reconcile`].
    pub fn diagnose(&self) -> Result<Diagnosis, ReconciliationError> {
        self.problem.diagnose(&self.constraints(), &self.candidates)
    }

    fn constraints(&self) -> impl Constraints + use<'_> {
        let more = self.balances.read_twice.len() + self.balances.by_volume.len();
        Equations::new(6 + more, |x: &[Dual64], residuals: &mut [Dual64]| self.balances.evaluate(x, residuals))
    }

    /// The reconciled value of a quantity.
    #[must_use]
    pub fn value(&self, result: &Reconciliation, quantity: LineQuantity) -> Option<f64> {
        let at = self.quantities.iter().position(|other| *other == quantity)?;
        Some(result.quantities.get(at)?.estimate?.value)
    }
}

impl Balances {
    fn evaluate(&self, x: &[Dual64], residuals: &mut [Dual64]) {
        let Some(&[belt, fibre_wet, fibre, solids, loss, speed, width, mat, mat_wet, board, board_wet, gap, density]) =
            x.first_chunk()
        else {
            return;
        };
        residuals[0] = fibre * (fibre_wet + 1.0) - belt;
        residuals[1] = fibre - solids;
        residuals[2] = belt - fibre - solids * (mat_wet + loss);
        for stream in &self.streams {
            let flow = x[stream.flow];
            match stream.solids.map(|at| x[at]) {
                Some(content) => {
                    residuals[1] += flow * content;
                    residuals[2] += flow - flow * content + flow * stream.thinning;
                }
                None => residuals[2] += flow,
            }
        }
        residuals[3] = solids * (1.0 - self.reject) * (mat_wet + 1.0) - speed * width * mat;
        residuals[4] = board * (mat_wet + 1.0) - (mat + (mat_wet + 1.0) * self.on_faces) * (board_wet + 1.0);
        residuals[5] = board - density * gap;
        let rest = residuals.iter_mut().skip(6);
        let twice = self.read_twice.iter().map(|(flow, setting)| x[*flow] - x[*setting]);
        let by_volume = self.by_volume.iter().map(|(flow, volume, density)| match density {
            Density::At(at) => x[*flow] - x[*volume] * x[*at],
            Density::Known(density) => x[*flow] - x[*volume] * *density,
        });
        for (residual, value) in rest.zip(twice.chain(by_volume)) {
            *residual = value;
        }
    }
}

/// What was read of a plain quantity, or is known from the recipe.
fn read(case: &Case, readings: &Readings) -> impl Fn(LineQuantity) -> Option<f64> {
    let sample = readings.sample;
    move |quantity| {
        Some(match quantity {
            LineQuantity::BeltScale => readings.belt.value,
            LineQuantity::FibreMoisture => readings.moisture.dry_basis().value,
            LineQuantity::DryingLoss => case.input.drying_loss.value,
            LineQuantity::LineSpeed => readings.line_speed?.value,
            LineQuantity::MatWidth => readings.mat_width.or(case.input.line.width)?.value,
            LineQuantity::MatMass => (sample?.mass / sample?.area).value,
            LineQuantity::MatMoisture => sample?.moisture?.dry_basis().value,
            LineQuantity::BoardMass => readings.board.weight?.value,
            LineQuantity::BoardMoisture => readings.board.moisture?.dry_basis().value,
            LineQuantity::Thickness => readings.board.thickness?.value,
            _ => return None,
        })
    }
}

/// Where the search for a plain quantity starts.
fn typical(case: &Case, target: &Case, actual: &Actual) -> impl Fn(LineQuantity) -> f64 {
    let solved = &target.solved;
    // Without a mat width only the product of width and speed is known.
    let width = case.input.line.width.map_or(1.0, |width| width.value);
    move |quantity| match quantity {
        LineQuantity::BeltScale => actual.fibre_wet.value,
        LineQuantity::FibreMoisture => actual.fibre_moisture.dry_basis().value,
        LineQuantity::Fibre => actual.fibre.value,
        LineQuantity::FurnishSolids => actual.solids.value,
        LineQuantity::DryingLoss => case.input.drying_loss.value,
        LineQuantity::LineSpeed => (solved.line.net_solids / solved.mat.od).value / width,
        LineQuantity::MatWidth => width,
        LineQuantity::MatMass => solved.mat.wet.value,
        LineQuantity::MatMoisture => actual.mat_moisture.dry_basis().value,
        quantity => raw_board(case, quantity).unwrap_or(1.0),
    }
}

/// What the recipe has for the raw board, at the moisture at which it leaves the press.
pub(in crate::domain::line::line_check) fn raw_board(case: &Case, quantity: LineQuantity) -> Option<f64> {
    let exit = case.input.exit_moisture();
    let board = (case.solved.mat.od + case.solved.mat.on_faces) * exit.wet_per_dry();
    Some(match quantity {
        LineQuantity::BoardMass => board.value,
        LineQuantity::BoardMoisture => exit.dry_basis().value,
        LineQuantity::Thickness => case.solved.mat.pressed_thickness.value,
        LineQuantity::Density => (board / case.solved.mat.pressed_thickness).value,
        _ => return None,
    })
}
