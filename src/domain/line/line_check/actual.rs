//! What runs by the readings as they are, each taken as right.

use crate::domain::line::pumps::curve::Flows;
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::pumps::setting::Setting;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Moisture;
use uom::si::f64::{ArealMassDensity, MassDensity, MassRate, Ratio, Velocity};

/// Where a flow or a figure comes from; the surest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum FlowSource {
    /// Read at a meter, or from a sample.
    Read,
    /// Inferred from a pump's setting by its catch-test line.
    Inferred,
    /// Not read: the target of the recipe at this belt scale reading.
    Assumed,
}

/// One pump as it runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PumpActual {
    /// The pump.
    pub pump: PumpId,
    /// What it delivers.
    pub fed: Fed,
    /// By mass.
    pub mass: MassRate,
    /// Where that comes from.
    pub source: FlowSource,
    /// What its flow meter reads, by mass.
    pub metered: Option<MassRate>,
    /// Its setting, when that was read.
    pub setting: Option<Setting>,
    /// What its catch-test line gives at that setting.
    pub by_line: Option<MassRate>,
    /// Where one catch at that setting is expected, 95 %.
    pub expected: Option<Flows>,
}

impl PumpActual {
    /// Whether flow meter and catch-test line agree within the prediction interval at the present setting; `None`
    /// where not both are known. A rounding error is no disagreement.
    #[must_use]
    pub fn agrees(&self) -> Option<bool> {
        let (metered, expected) = self.metered.zip(self.expected)?;
        let slack = 1e-9 * metered.value.abs();
        Some(metered.value >= expected.low.value - slack && metered.value <= expected.high.value + slack)
    }
}

/// One liquid as it runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LiquidActual {
    /// Its number within the recipe.
    pub id: LiquidId,
    /// Flow of all its pumps, as delivered.
    pub mass: MassRate,
    /// Where the least certain of that comes from.
    pub source: FlowSource,
    /// Solids.
    pub solids: MassRate,
    /// Dose really applied: solids per oven-dry fibre.
    pub on_fibre: Ratio,
    /// Dose of the recipe, on the same basis.
    pub target: Ratio,
    /// Relative deviation, on_fibre/target − 1; `None` when the recipe has none.
    pub deviation: Option<Ratio>,
}

/// What runs.
#[derive(Debug, Clone, PartialEq)]
pub struct Actual {
    /// What the belt scale reads, G.
    pub fibre_wet: MassRate,
    /// Oven-dry fibre flow F = G/(1+ω_f).
    pub fibre: MassRate,
    /// The moisture that was read, ω_f.
    pub fibre_moisture: Moisture,
    /// The pumps.
    pub pumps: Vec<PumpActual>,
    /// The liquids, in the recipe's order.
    pub liquids: Vec<LiquidActual>,
    /// Dosed water.
    pub water: MassRate,
    /// Where that comes from.
    pub water_source: FlowSource,
    /// Solids of the furnish.
    pub solids: MassRate,
    /// Furnish moisture as it leaves the blender, from the flows.
    pub furnish_moisture: Moisture,
    /// Mat moisture from the flows, less the recipe's drying loss.
    pub mat_moisture: Moisture,
    /// Where the least certain flow behind both comes from.
    pub flows_source: FlowSource,
    /// Mat moisture of the sample.
    pub sample_moisture: Option<Moisture>,
    /// Oven-dry mat weight of the sample.
    pub mat_od: Option<ArealMassDensity>,
    /// Board density that this mat weight gives, at board moisture.
    pub density: Option<MassDensity>,
    /// Line speed that was read.
    pub line_speed: Option<Velocity>,
}

impl Actual {
    pub(super) fn is_finite(&self) -> bool {
        let liquids = self.liquids.iter().flat_map(|liquid| [liquid.mass.value, liquid.on_fibre.value]);
        let plain = [self.fibre.value, self.water.value, self.solids.value];
        let optional = [self.mat_od.map(|od| od.value), self.density.map(|density| density.value)];
        liquids.chain(plain).chain(optional.into_iter().flatten()).all(f64::is_finite)
    }
}
