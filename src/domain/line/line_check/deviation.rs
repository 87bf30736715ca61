//! Figures of the running line, compared with the recipe.

use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::Tolerances;
use crate::domain::line::line_check::actual::{Actual, FlowSource};
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::number::finite;
use crate::quantity::{Amount, Kind, Moisture};
use uom::ConstZero;
use uom::si::f64::{MassRate, Ratio};
use uom::si::ratio::ratio;

/// A figure that is compared with the recipe.
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
    /// Reading of the belt scale, wet.
    BeltScale,
    /// Fibre moisture as read.
    FibreMoisture,
    /// Flow of a pump.
    Flow(PumpId),
    /// Line speed as read.
    LineSpeed,
    /// Mat width as measured.
    MatWidth,
    /// Density of the raw board.
    RawDensity,
    /// Thickness of the raw board.
    Thickness,
    /// Moisture of the raw board.
    BoardMoisture,
}

impl RunFigure {
    /// The stable key of the figure, in the log. A dose has its liquid beside it, a flow its pump.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Dose(_) => "dose",
            Self::Water => "water",
            Self::FurnishMoisture => "furnish_moisture",
            Self::MatMoisture => "mat_moisture",
            Self::MatWeight => "mat_weight",
            Self::Density => "density",
            Self::BeltScale => "belt_scale",
            Self::FibreMoisture => "fibre_moisture",
            Self::Flow(_) => "flow",
            Self::LineSpeed => "line_speed",
            Self::MatWidth => "mat_width",
            Self::RawDensity => "raw_density",
            Self::Thickness => "thickness",
            Self::BoardMoisture => "board_moisture",
        }
    }
}

/// How far a figure is from the recipe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Deviation {
    /// Relative: actual/target − 1.
    Relative(Ratio),
    /// In points: actual − target.
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

/// What a comparison says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// Within its tolerance, by what was read.
    Within,
    /// Outside its tolerance.
    Outside,
    /// Not read, so nothing is said.
    NotRead,
}

/// A figure compared with the recipe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Check {
    /// Which.
    pub figure: RunFigure,
    /// As it runs.
    pub actual: Amount,
    /// As the recipe has it.
    pub target: Amount,
    /// How far it is off.
    pub deviation: Deviation,
    /// How far it may be off.
    pub tolerance: Ratio,
    /// Where the least certain flow behind it comes from.
    pub source: FlowSource,
}

impl Check {
    /// Whether it is within its tolerance; only of what was read, or inferred from a setting that was.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        match self.source {
            FlowSource::Assumed => Verdict::NotRead,
            // A rounding error is not outside.
            _ if self.deviation.value().abs() <= self.tolerance.value + 1e-9 => Verdict::Within,
            _ => Verdict::Outside,
        }
    }
}

impl Check {
    /// A figure compared by how many percent it is off; `None` where the target is nothing.
    pub(super) fn relative(
        figure: RunFigure,
        (kind, is, target): (Kind, f64, f64),
        tolerance: Ratio,
        source: FlowSource,
    ) -> Option<Self> {
        finite(is / target - 1.0).map(|by| Self {
            figure,
            actual: Amount::from_base(kind, is),
            target: Amount::from_base(kind, target),
            deviation: Deviation::Relative(Ratio::new::<ratio>(by)),
            tolerance,
            source,
        })
    }

    /// A moisture, compared by how many points of dry basis it is off.
    pub(super) fn points(
        figure: RunFigure,
        is: Moisture,
        target: Moisture,
        tolerance: Ratio,
        source: FlowSource,
    ) -> Self {
        let (is, target) = (is.dry_basis(), target.dry_basis());
        Self {
            figure,
            actual: Amount::from_base(Kind::Moisture, is.value),
            target: Amount::from_base(Kind::Moisture, target.value),
            deviation: Deviation::Points(is - target),
            tolerance,
            source,
        }
    }
}

/// Every figure that is known, compared with the recipe; `target` is the recipe at the fibre that runs.
pub(super) fn checks(actual: &Actual, case: &Case, target: &Case, tolerances: &Tolerances) -> Vec<Check> {
    let mut checks = Vec::new();
    for liquid in &actual.liquids {
        let figure = RunFigure::Dose(liquid.id);
        let (is, target) = (liquid.on_fibre.value, liquid.target.value);
        checks.extend(Check::relative(figure, (Kind::Dose, is, target), tolerances.dose, liquid.source));
    }
    // The target of the water is what this fibre takes: it changes with its moisture.
    let on_fibre = |water: MassRate| (water / actual.fibre).value;
    let dose = target.solved.water.dose;
    if dose > MassRate::ZERO {
        let (is, target) = (on_fibre(actual.water), on_fibre(dose));
        checks.extend(Check::relative(
            RunFigure::Water,
            (Kind::Dose, is, target),
            tolerances.dose,
            actual.water_source,
        ));
    }
    let by_flows = actual.flows_source;
    let moisture = |figure, is, target, source| Check::points(figure, is, target, tolerances.moisture, source);
    checks.push(moisture(RunFigure::FurnishMoisture, actual.furnish_moisture, case.solved.water.blender_out, by_flows));
    let (mat, source) = actual.sample_moisture.map_or((actual.mat_moisture, by_flows), |mat| (mat, FlowSource::Read));
    checks.push(moisture(RunFigure::MatMoisture, mat, case.solved.water.mat, source));
    if let Some(od) = actual.mat_od {
        let target = case.solved.mat.od.value;
        let tolerance = tolerances.mat_weight;
        checks.extend(Check::relative(RunFigure::MatWeight, (Kind::MatWeight, od.value, target), tolerance, source));
    }
    if let Some(density) = actual.density {
        let target = case.input.board.density.value;
        let tolerance = tolerances.density;
        checks.extend(Check::relative(
            RunFigure::Density,
            (Kind::BoardDensity, density.value, target),
            tolerance,
            source,
        ));
    }
    checks
}
