//! Aqueous solutions made up from crystals: how much salt, how much water, whether it dissolves.

use uom::si::f64::{Mass, MassDensity, Ratio, ThermodynamicTemperature, Volume};
use uom::si::mass_density::kilogram_per_cubic_meter;

use crate::domain::chemistry::interpolate::within;
use crate::domain::chemistry::solute::{SolubilityError, Solute, saturation};
use crate::domain::chemistry::solution_density::{DensityError, density_at_20c};
use crate::domain::mixing::target_amount::Wanted;

/// Density of water at 20 °C and 101.325 kPa, kg/m³ (IAPWS-95).
const WATER_AT_20C: f64 = 998.207;

/// A solution that is wanted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SolutionRequest {
    /// What is dissolved.
    pub solute: Solute,
    /// How much solution, by mass, or by volume at 20 °C.
    pub wanted: Wanted,
    /// Mass of salt per mass of solution.
    pub fraction: Ratio,
    /// Coldest temperature at which all the salt has to stay dissolved.
    pub temperature: ThermodynamicTemperature,
    /// Measured density of the solution, used instead of the table's.
    pub density: Option<MassDensity>,
}

/// A solution made up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MakeUp {
    /// Dry crystals to weigh in.
    pub salt: Mass,
    /// Water to add.
    pub water: Mass,
    /// Volume of that water at 20 °C.
    pub water_volume: Volume,
    /// The solution.
    pub total: Mass,
    /// Density of the solution, given or at 20 °C from the table; `None` where there is neither
    /// ([`density_at_20c`] says why).
    pub density: Option<MassDensity>,
    /// Volume of the solution at that density.
    pub volume: Option<Volume>,
    /// Largest mass fraction of salt that dissolves at the order's temperature.
    pub saturation: Ratio,
}

/// Why a solution cannot be made up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MakeUpError {
    /// The target amount is not above zero, or too large or too small to calculate with.
    AmountOutOfRange {
        /// What was asked for.
        given: Wanted,
    },
    /// The mass fraction is not above 0 and below 100 %.
    FractionOutOfRange {
        /// What was asked for.
        given: Ratio,
    },
    /// The measured density is not above zero.
    DensityOutOfRange {
        /// What was given.
        given: MassDensity,
    },
    /// No solubility is known at this temperature.
    Solubility(SolubilityError),
    /// So much salt does not dissolve at this temperature.
    AboveSaturation {
        /// The solute.
        solute: Solute,
        /// The mass fraction asked for.
        given: Ratio,
        /// The largest that dissolves.
        largest: Ratio,
        /// The temperature of the order.
        temperature: ThermodynamicTemperature,
    },
    /// A volume was asked for and no density is known: ask by mass, or give a measured density.
    VolumeWithoutDensity(DensityError),
}

/// Salt and water for a wanted amount of solution.
///
/// Total m = the wanted mass, or V·ρ of the wanted volume; salt = w·m; water = m − salt. ρ is the
/// measured density if one is given, else the table's at 20 °C. Valid for 0 < w ≤ saturation at
/// the order's temperature. Crystals count as dry and pure.
///
/// # Errors
/// [`MakeUpError`], one variant for each way in which the order cannot be met. Beyond the density
/// table, or without one, an order by mass is still met, with no density and no volume.
pub fn make_up(order: &SolutionRequest) -> Result<MakeUp, MakeUpError> {
    let SolutionRequest { solute, wanted, fraction, temperature, .. } = *order;
    if !wanted.is_sound() {
        return Err(MakeUpError::AmountOutOfRange { given: wanted });
    }
    if !(fraction.value > 0.0 && fraction.value < 1.0) {
        return Err(MakeUpError::FractionOutOfRange { given: fraction });
    }
    let largest = saturation(solute, temperature).map_err(MakeUpError::Solubility)?;
    if !within(fraction.value, 0.0, largest.value) {
        return Err(MakeUpError::AboveSaturation { solute, given: fraction, largest, temperature });
    }
    let density = match order.density {
        Some(given) if given.is_finite() && given.value > 0.0 => Ok(given),
        Some(given) => return Err(MakeUpError::DensityOutOfRange { given }),
        None => density_at_20c(solute, fraction),
    };
    let (total, volume) = match (wanted, density) {
        (_, Ok(density)) => {
            let (mass, volume) = wanted.at(density);
            (mass, Some(volume))
        }
        (Wanted::Mass(mass), Err(_)) => (mass, None),
        (Wanted::Volume(_), Err(why)) => return Err(MakeUpError::VolumeWithoutDensity(why)),
    };
    let usable = |value: f64| value.is_normal();
    if !usable(total.value) || volume.is_some_and(|v| !usable(v.value)) {
        return Err(MakeUpError::AmountOutOfRange { given: wanted });
    }
    let salt = total * fraction;
    let water = total - salt;
    Ok(MakeUp {
        salt,
        water,
        water_volume: water / MassDensity::new::<kilogram_per_cubic_meter>(WATER_AT_20C),
        total,
        density: density.ok(),
        volume,
        saturation: largest,
    })
}
