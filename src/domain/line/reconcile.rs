//! The line check as a problem of data reconciliation: which quantities there are, what they have to satisfy, and how
//! well each is read. Not on any page yet.
//!
//! With fibre F, liquids L, solids contents s, moistures ω (dry basis), drying loss δ, reject r, line speed v, mat
//! width b, mat and raw board per area M and m, pressed thickness t and density ρ:
//! G = F·(1+ω_f); S = F + Σ s·L; S·(ω_mat+δ) = G − F + Σ L·(1−s) + W; S·(1−r)·(1+ω_mat) = v·b·M;
//! m·(1+ω_mat) = M·(1+ω_b); m = ρ·t. A liquid's flow may be read by its setting and by its meter: both are the same flow.

use crate::domain::compare::instrument::start;
use crate::domain::field::{Field, LiquidField};
use crate::domain::liquid::LiquidId;
use crate::domain::outcome::Case;
use crate::statistics::reconciliation::{
    Candidate, Constraints, Diagnosis, Dual64, Equations, Problem, Quantity, Reconciliation, ReconciliationError,
};

/// A quantity of the line check, in SI base units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LineQuantity {
    /// Wet fibre flow at the belt scale, G.
    BeltScale,
    /// Fibre moisture ω_f, dry basis.
    FibreMoisture,
    /// Oven-dry fibre flow F.
    Fibre,
    /// Solids of the furnish, S.
    FurnishSolids,
    /// Water that is dosed or thins a liquid, W.
    Water,
    /// Moisture loss δ from blender to former, as a fraction.
    DryingLoss,
    /// Part r of the furnish that the sifter rejects.
    Reject,
    /// Line speed v.
    LineSpeed,
    /// Trimmed mat width b.
    MatWidth,
    /// Mat mass per area M, wet.
    MatMass,
    /// Mat moisture ω_mat, dry basis.
    MatMoisture,
    /// Raw-board mass per area m, with its moisture.
    BoardMass,
    /// Raw-board moisture ω_b, dry basis.
    BoardMoisture,
    /// Pressed thickness t.
    Thickness,
    /// Raw-board density ρ.
    Density,
    /// Flow of a liquid by its flow meter.
    Meter(LiquidId),
    /// Flow of a liquid by its pump's setting and catch test.
    Setting(LiquidId),
    /// Solids content of a liquid.
    Solids(LiquidId),
}

/// What comes before the liquids.
const PLAIN: [LineQuantity; 15] = [
    LineQuantity::BeltScale,
    LineQuantity::FibreMoisture,
    LineQuantity::Fibre,
    LineQuantity::FurnishSolids,
    LineQuantity::Water,
    LineQuantity::DryingLoss,
    LineQuantity::Reject,
    LineQuantity::LineSpeed,
    LineQuantity::MatWidth,
    LineQuantity::MatMass,
    LineQuantity::MatMoisture,
    LineQuantity::BoardMass,
    LineQuantity::BoardMoisture,
    LineQuantity::Thickness,
    LineQuantity::Density,
];

/// A reading of the line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineReading {
    /// What was read.
    pub quantity: LineQuantity,
    /// The value, in SI base units.
    pub value: f64,
    /// Its standard uncertainty; `None` takes that of the usual instrument.
    pub uncertainty: Option<f64>,
}

/// A line check that can be reconciled.
#[derive(Debug, Clone, PartialEq)]
pub struct LineProblem {
    /// The quantities, in the order of the problem's.
    pub quantities: Vec<LineQuantity>,
    /// Readings and start values.
    pub problem: Problem,
}

/// How a density deviation comes about: each part as ln(actual/target), their sum is that of the density.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DensitySplit {
    /// Oven-dry mass per area: the former or the line speed.
    pub mass: f64,
    /// Thickness: the press gap. A thicker board is less dense.
    pub thickness: f64,
    /// Moisture: drying.
    pub moisture: f64,
}

impl LineProblem {
    /// Quantities not in `readings` are inferred. Solids contents, drying loss and reject are taken as the recipe says,
    /// with the uncertainty of the usual test, unless they were read.
    #[must_use]
    pub fn new(case: &Case, readings: &[LineReading]) -> Self {
        let liquids = case.input.liquids.as_slice();
        let fed = liquids.iter().flat_map(|liquid| {
            [LineQuantity::Meter(liquid.id), LineQuantity::Setting(liquid.id), LineQuantity::Solids(liquid.id)]
        });
        let quantities: Vec<LineQuantity> = PLAIN.into_iter().chain(fed).collect();
        let problem = quantities.iter().map(|quantity| {
            let target = target(case, *quantity);
            match readings.iter().find(|reading| reading.quantity == *quantity) {
                Some(reading) => Quantity::Measured {
                    value: reading.value,
                    uncertainty: reading.uncertainty.unwrap_or_else(|| usual(case, *quantity, reading.value)),
                },
                None if from_recipe(case, *quantity) => {
                    Quantity::Measured { value: target, uncertainty: usual(case, *quantity, target) }
                }
                None => Quantity::Unmeasured { start: target },
            }
        });
        let problem = Problem::new(problem.collect());
        Self { quantities, problem }
    }

    /// Reconciles the readings and looks for those that err, and for the extra reading that would decide between
    /// suspects.
    ///
    /// # Errors
    /// As for [`Problem::reconcile`].
    pub fn diagnose(&self, case: &Case) -> Result<Diagnosis, ReconciliationError> {
        self.problem.diagnose(&self.balances(), &self.extra_readings(case))
    }

    /// One more reading of anything that has an instrument, with its usual uncertainty.
    fn extra_readings(&self, case: &Case) -> Vec<Candidate> {
        let instrument =
            |quantity: &LineQuantity| !matches!(quantity, LineQuantity::Fibre | LineQuantity::FurnishSolids);
        let candidate = |(at, quantity): (usize, &LineQuantity)| Candidate {
            quantity: at,
            uncertainty: usual(case, *quantity, target(case, *quantity)),
        };
        self.quantities.iter().enumerate().filter(|(_, quantity)| instrument(quantity)).map(candidate).collect()
    }

    fn balances(&self) -> impl Constraints + use<> {
        let liquids = (self.quantities.len() - PLAIN.len()) / 3;
        Equations::new(6 + liquids, balances)
    }

    /// The reconciled value of a quantity.
    #[must_use]
    pub fn value(&self, result: &Reconciliation, quantity: LineQuantity) -> Option<f64> {
        let at = self.quantities.iter().position(|other| *other == quantity)?;
        Some(result.quantities.get(at)?.estimate?.value)
    }

    /// Splits the deviation of the raw board's density from the recipe's.
    #[must_use]
    pub fn density_split(&self, case: &Case, result: &Reconciliation) -> Option<DensitySplit> {
        let deviation = |quantity| Some((self.value(result, quantity)? / target(case, quantity)).ln());
        let wet = |moisture: f64| 1.0 + moisture;
        let moisture = LineQuantity::BoardMoisture;
        let moisture = (wet(self.value(result, moisture)?) / wet(target(case, moisture))).ln();
        Some(DensitySplit {
            mass: deviation(LineQuantity::BoardMass)? - moisture,
            thickness: -deviation(LineQuantity::Thickness)?,
            moisture,
        })
    }
}

/// Six balances, and one for each liquid that is read twice.
fn balances(x: &[Dual64], residuals: &mut [Dual64]) {
    let (plain, liquids) = x.split_at(PLAIN.len());
    let &[
        belt,
        fibre_wet,
        fibre,
        solids,
        water,
        loss,
        reject,
        speed,
        width,
        mat,
        mat_wet,
        board,
        board_wet,
        gap,
        density,
    ] = plain
    else {
        return;
    };
    residuals[0] = fibre * (fibre_wet + 1.0) - belt;
    residuals[1] = fibre - solids;
    residuals[2] = belt - fibre + water - solids * (mat_wet + loss);
    for (at, liquid) in liquids.chunks_exact(3).enumerate() {
        let (meter, setting, content) = (liquid[0], liquid[1], liquid[2]);
        residuals[1] += meter * content;
        residuals[2] += meter - meter * content;
        residuals[6 + at] = meter - setting;
    }
    residuals[3] = solids * (-reject + 1.0) * (mat_wet + 1.0) - speed * width * mat;
    residuals[4] = board * (mat_wet + 1.0) - mat * (board_wet + 1.0);
    residuals[5] = board - density * gap;
}

/// Whether the recipe's figure is used where nothing was read.
const fn from_recipe(case: &Case, quantity: LineQuantity) -> bool {
    match quantity {
        LineQuantity::Solids(_) | LineQuantity::DryingLoss | LineQuantity::Reject => true,
        LineQuantity::MatWidth => case.input.line.width.is_some(),
        _ => false,
    }
}

/// What the recipe has for a quantity. The raw board is at the moisture at which it leaves the press.
fn target(case: &Case, quantity: LineQuantity) -> f64 {
    let (input, solved) = (&case.input, &case.solved);
    let exit = input.exit_moisture();
    // Without a mat width only the product of width and speed is known.
    let width = input.line.width.map_or(1.0, |width| width.value);
    let board = solved.mat.od * exit.wet_per_dry();
    let flow = |id| solved.liquids.iter().find(|flow| flow.id == id);
    match quantity {
        LineQuantity::BeltScale => solved.fibre_wet.value,
        LineQuantity::FibreMoisture => input.fibre_moisture.dry_basis().value,
        LineQuantity::Fibre => solved.fibre.value,
        LineQuantity::FurnishSolids => solved.solids.value,
        LineQuantity::Water => {
            solved.water.dose.value + solved.liquids.iter().map(|flow| flow.thinning.value).sum::<f64>()
        }
        LineQuantity::DryingLoss => input.drying_loss.value,
        LineQuantity::Reject => input.line.reject.value,
        LineQuantity::LineSpeed => (solved.line.net_solids / solved.mat.od).value / width,
        LineQuantity::MatWidth => width,
        LineQuantity::MatMass => solved.mat.wet.value,
        LineQuantity::MatMoisture => solved.water.mat.dry_basis().value,
        LineQuantity::BoardMass => board.value,
        LineQuantity::BoardMoisture => exit.dry_basis().value,
        LineQuantity::Thickness => solved.mat.pressed_thickness.value,
        LineQuantity::Density => (board / solved.mat.pressed_thickness).value,
        LineQuantity::Meter(id) | LineQuantity::Setting(id) => flow(id).map_or(0.0, |flow| flow.liquid.value),
        LineQuantity::Solids(id) => {
            let liquid = input.liquids.as_slice().iter().find(|liquid| liquid.id == id);
            liquid.map_or(1.0, |liquid| liquid.solids.ratio().value)
        }
    }
}

/// Standard uncertainty of the usual instrument: that of the comparison where it has one, otherwise common practice, no
/// source.
fn usual(case: &Case, quantity: LineQuantity, value: f64) -> f64 {
    let of = |field: Field| start(case, field).map(|start| start.spread.standard(value)).filter(|sd| *sd > 0.0);
    let (field, practice) = match quantity {
        LineQuantity::BeltScale | LineQuantity::Fibre => (Some(Field::FibreFlow), 0.006 * value.abs()),
        LineQuantity::FibreMoisture | LineQuantity::MatMoisture => (Some(Field::FibreMoisture), 0.0025),
        LineQuantity::BoardMoisture => (Some(Field::BoardMoisture), 0.0025),
        LineQuantity::DryingLoss => (Some(Field::DryingLoss), 0.002),
        LineQuantity::Reject => (Some(Field::Reject), 0.002),
        LineQuantity::Thickness => (Some(Field::Thickness), 6e-5),
        LineQuantity::Meter(id) => (Some(Field::Liquid(id, LiquidField::Dose)), 0.006 * value.abs()),
        LineQuantity::Solids(id) => (Some(Field::Liquid(id, LiquidField::Solids)), 0.001),
        LineQuantity::MatWidth => (None, 0.003),
        LineQuantity::LineSpeed | LineQuantity::Density => (None, 0.005 * value.abs()),
        LineQuantity::Setting(_) => (None, 0.015 * value.abs()),
        LineQuantity::MatMass | LineQuantity::BoardMass | LineQuantity::FurnishSolids | LineQuantity::Water => {
            (None, 0.01 * value.abs())
        }
    };
    // A reading of zero from a relative instrument still is not exact.
    field.and_then(of).unwrap_or(practice).max(1e-9)
}
