//! What a recipe draws of a liquid or of water.

use crate::domain::balance::outcome::Case;
use crate::domain::line::tanks::feeds::Fed;
use std::marker::PhantomData;
use uom::si::f64::{MassDensity, MassRate};

/// How much of something the recipe takes, and its density; `None` for what it does not hold, and for a recipe without a fibre flow.
///
/// The density of dosed and thinning water is that at 20 °C.
#[must_use]
pub fn drawn(case: &Case, fed: Fed) -> Option<(MassRate, MassDensity)> {
    if !case.has_flow() {
        return None;
    }
    let flow = |id| case.solved.liquids.iter().find(|flow| flow.id == id);
    match fed {
        Fed::Liquid(id) => {
            let liquid = case.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?;
            Some((flow(id)?.liquid, liquid.density))
        }
        Fed::Thinning(id) => Some((flow(id)?.thinning, water_density())),
        Fed::Water => Some((case.solved.water.dose, water_density())),
        Fed::FaceWater => Some((case.solved.losses.surface_spray, water_density())),
    }
}

/// Density of the water that is dosed, at 20 °C; see [`water::density`](crate::domain::chemistry::water::density).
#[must_use]
pub fn water_density() -> MassDensity {
    use uom::si::f64::ThermodynamicTemperature;
    use uom::si::thermodynamic_temperature::degree_celsius;
    let at = ThermodynamicTemperature::new::<degree_celsius>(20.0);
    // 20 °C is within the table; the number behind is that of the table.
    let known = MassDensity { dimension: PhantomData, units: PhantomData, value: 998.2 };
    crate::domain::chemistry::water::density(at).unwrap_or(known)
}
