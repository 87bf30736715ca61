//! Figures of the running line, held against the recipe.

use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::Tolerances;
use crate::domain::line::line_check::running::{Known, Running};
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::number::finite;
use crate::quantity::{Amount, Kind, Moisture};
use uom::ConstZero;
use uom::si::f64::{MassRate, Ratio};
use uom::si::ratio::ratio;

/// A figure that is held against the recipe.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RunFigure {
    /// Dose of a liquid, solids per oven-dry fibre.
    Dose(LiquidId),
    /// Dosed water per oven-dry fibre.
    Water,
    /// Furnish moisture as it leaves the blender, from the flows.
    FurnishMoisture,
    /// Mat moisture: of the sample, or else from the flows.
    MatMoisture,
    /// Oven-dry mat weight of the sample.
    MatWeight,
    /// Board density that this mat weight gives.
    Density,
}

impl RunFigure {
    /// The stable key of the figure, in the log. A dose carries the liquid's number behind it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Dose(_) => "dose",
            Self::Water => "water",
            Self::FurnishMoisture => "furnish_moisture",
            Self::MatMoisture => "mat_moisture",
            Self::MatWeight => "mat_weight",
            Self::Density => "density",
        }
    }
}

/// How far a figure is from the recipe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Deviation {
    /// Relative: actual/wanted − 1.
    Relative(Ratio),
    /// In points: actual − wanted.
    Points(Ratio),
}

impl Deviation {
    /// The number, whichever it is.
    #[must_use]
    pub fn value(self) -> f64 {
        match self {
            Self::Relative(by) | Self::Points(by) => by.value,
        }
    }
}

/// A figure held against the recipe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Check {
    /// Which.
    pub figure: RunFigure,
    /// As it runs.
    pub actual: Amount,
    /// As the recipe wants it.
    pub wanted: Amount,
    /// How far it is off.
    pub deviation: Deviation,
    /// How far it may be off.
    pub tolerance: Ratio,
}

impl Check {
    /// Whether it is within its tolerance. A rounding error is not outside.
    #[must_use]
    pub fn within(&self) -> bool {
        self.deviation.value().abs() <= self.tolerance.value + 1e-9
    }
}

/// Every figure that is known, held against the recipe; `wanted` is the recipe at the fibre that runs.
pub(in crate::domain::line) fn checks(
    running: &Running,
    case: &Case,
    wanted: &Case,
    tolerances: &Tolerances,
) -> Vec<Check> {
    let mut checks = Vec::new();
    let relative = |figure, kind, actual: f64, target: f64, tolerance| {
        finite(actual / target - 1.0).map(|by| Check {
            figure,
            actual: Amount::from_base(kind, actual),
            wanted: Amount::from_base(kind, target),
            deviation: Deviation::Relative(Ratio::new::<ratio>(by)),
            tolerance,
        })
    };
    let moisture = |figure, actual: Moisture, target: Moisture| {
        let (actual, target) = (actual.dry_basis(), target.dry_basis());
        Check {
            figure,
            actual: Amount::from_base(Kind::Moisture, actual.value),
            wanted: Amount::from_base(Kind::Moisture, target.value),
            deviation: Deviation::Points(actual - target),
            tolerance: tolerances.moisture,
        }
    };
    for liquid in &running.liquids {
        let figure = RunFigure::Dose(liquid.id);
        checks.extend(relative(figure, Kind::Dose, liquid.on_fibre.value, liquid.wanted.value, tolerances.dose));
    }
    // The water wanted is what this fibre takes: it changes with its moisture.
    let on_fibre = |water: MassRate| (water / running.fibre).value;
    let target = wanted.solved.water.dose;
    if running.water_known == Known::Read && target > MassRate::ZERO {
        let dose = tolerances.dose;
        checks.extend(relative(RunFigure::Water, Kind::Dose, on_fibre(running.water), on_fibre(target), dose));
    }
    checks.push(moisture(RunFigure::FurnishMoisture, running.furnish_moisture, case.solved.water.blender_out));
    let mat = running.sample_moisture.unwrap_or(running.mat_moisture);
    checks.push(moisture(RunFigure::MatMoisture, mat, case.solved.water.mat));
    if let Some(od) = running.mat_od {
        let target = case.solved.mat.od.value;
        checks.extend(relative(RunFigure::MatWeight, Kind::MatWeight, od.value, target, tolerances.mat_weight));
    }
    if let Some(density) = running.density {
        let target = case.input.board.density.value;
        checks.extend(relative(RunFigure::Density, Kind::BoardDensity, density.value, target, tolerances.density));
    }
    checks
}
