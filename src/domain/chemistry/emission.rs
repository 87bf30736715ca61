//! Formaldehyde emission: molar ratios of a mix of amino resins and urea, concentrations in air, the perforator value at
//! its reference moisture, and the limits of the law. A test decides: nothing here predicts an emission.

use crate::domain::chemistry::molar_mass::Species;
use uom::si::f64::{Mass, MassDensity, MolarMass, Ratio, ThermodynamicTemperature};
use uom::si::mass_density::milligram_per_cubic_meter;
use uom::si::molar_mass::gram_per_mole;
use uom::si::ratio::{part_per_million, percent, ratio};
use uom::si::thermodynamic_temperature::kelvin;

/// Why there is no ratio, concentration or perforator value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum EmissionError {
    /// F/U of a resin is not above 0 and at most 100.
    RatioOutOfRange(Ratio),
    /// Melamine per urea is not from 0 to 100.
    MelamineOutOfRange(Ratio),
    /// A mass is below zero or not finite, or there is no resin.
    MassOutOfRange,
    /// The wanted ratio cannot be had with extra urea: it is not above zero, or above that of the mix.
    NotReachable(Ratio),
    /// The temperature is not from −50 to 100 °C.
    TemperatureOutOfRange(ThermodynamicTemperature),
    /// The concentration or the perforator value is below zero or not finite.
    ValueOutOfRange(f64),
    /// The board moisture is outside the range of the correction, [`PERFORATOR_MOISTURE`].
    MoistureOutOfRange(Ratio),
}

/// An amino resin by its composition.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AminoResin {
    /// Formaldehyde per urea, mol/mol.
    pub formaldehyde_per_urea: Ratio,
    /// Melamine per urea, mol/mol; zero for a urea resin.
    pub melamine_per_urea: Ratio,
}

/// Molar ratios of a mix, each between the two ends that the unknown structure of the resin leaves open.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MixRatios {
    /// F/U: all formaldehyde as methylol groups, and all of it as methylene bridges.
    pub formaldehyde_per_urea: [Ratio; 2],
    /// F/(NH₂)₂ in the same order: a urea counts one (NH₂)₂, a melamine one and a half.
    pub formaldehyde_per_amino: [Ratio; 2],
}

/// (NH₂)₂ groups of a melamine molecule, which has three NH₂.
const AMINO_PER_MELAMINE: f64 = 1.5;
/// Waters that leave when a formaldehyde joins two amino groups.
const STRUCTURES: [f64; 2] = [0.0, 1.0];

fn melamine() -> MolarMass {
    // C₃H₆N₆ by the IUPAC abridged standard atomic weights: 3 · 12.011 + 6 · 1.008 + 6 · 14.007.
    MolarMass::new::<gram_per_mole>(126.123)
}

impl AminoResin {
    fn checked(self) -> Result<Self, EmissionError> {
        let (f, m) = (self.formaldehyde_per_urea.get::<ratio>(), self.melamine_per_urea.get::<ratio>());
        if !(f > 0.0 && f <= 100.0) {
            return Err(EmissionError::RatioOutOfRange(self.formaldehyde_per_urea));
        }
        if !(0.0..=100.0).contains(&m) {
            return Err(EmissionError::MelamineOutOfRange(self.melamine_per_urea));
        }
        Ok(self)
    }

    /// Moles of urea in so much of its solids, which are taken as urea, melamine and formaldehyde alone.
    fn urea(self, solids: Mass, waters: f64) -> f64 {
        let bound = Species::Formaldehyde.molar_mass() - waters * Species::Water.molar_mass();
        let per_urea = Species::Urea.molar_mass()
            + self.melamine_per_urea.get::<ratio>() * melamine()
            + self.formaldehyde_per_urea.get::<ratio>() * bound;
        (solids / per_urea).value
    }
}

/// Moles of formaldehyde, urea and (NH₂)₂ of resins by the mass of their solids.
fn moles(resins: &[(AminoResin, Mass)], waters: f64) -> Result<[f64; 3], EmissionError> {
    let mut sums = [0.0; 3];
    for (resin, solids) in resins {
        let resin = resin.checked()?;
        if !(solids.is_finite() && solids.value >= 0.0) {
            return Err(EmissionError::MassOutOfRange);
        }
        let urea = resin.urea(*solids, waters);
        sums[0] += urea * resin.formaldehyde_per_urea.get::<ratio>();
        sums[1] += urea;
        sums[2] += urea * (1.0 + AMINO_PER_MELAMINE * resin.melamine_per_urea.get::<ratio>());
    }
    if sums[0] > 0.0 { Ok(sums) } else { Err(EmissionError::MassOutOfRange) }
}

fn as_ratio(value: f64) -> Ratio {
    Ratio::new::<ratio>(value)
}

/// F/U and F/(NH₂)₂ of a mix: resins by the mass of their solids, and urea added to them.
///
/// # Errors
/// [`EmissionError`] for a ratio or a mass that is out of range.
///
/// Source: stoichiometry with the IUPAC abridged atomic weights; the two structures are idealised.
pub fn of_mix(resins: &[(AminoResin, Mass)], urea: Mass) -> Result<MixRatios, EmissionError> {
    if !(urea.is_finite() && urea.value >= 0.0) {
        return Err(EmissionError::MassOutOfRange);
    }
    let extra = (urea / Species::Urea.molar_mass()).value;
    let mut found = [[0.0; 2]; 2];
    for (at, waters) in STRUCTURES.into_iter().enumerate() {
        let [formaldehyde, built_in, amino] = moles(resins, waters)?;
        found[0][at] = formaldehyde / (built_in + extra);
        found[1][at] = formaldehyde / (amino + extra);
    }
    let [formaldehyde_per_urea, formaldehyde_per_amino] = found.map(|ends| ends.map(as_ratio));
    Ok(MixRatios { formaldehyde_per_urea, formaldehyde_per_amino })
}

/// The urea to add to resins for a wanted F/(NH₂)₂ of the mix, from all formaldehyde as methylol groups to all of it as
/// methylene bridges.
///
/// # Errors
/// [`EmissionError::NotReachable`] for a ratio above that of the resins: urea only lowers it.
pub fn urea_for(resins: &[(AminoResin, Mass)], wanted: Ratio) -> Result<[Mass; 2], EmissionError> {
    let target = wanted.get::<ratio>();
    if !(target > 0.0 && target.is_finite()) {
        return Err(EmissionError::NotReachable(wanted));
    }
    let mut found = [Mass::default(); 2];
    for (mass, waters) in found.iter_mut().zip(STRUCTURES) {
        let [formaldehyde, _, amino] = moles(resins, waters)?;
        let extra = formaldehyde / target - amino;
        if extra < -1e-12 * amino {
            return Err(EmissionError::NotReachable(wanted));
        }
        mass.value = extra.max(0.0) * Species::Urea.molar_mass().value;
    }
    Ok(found)
}

/// Molar gas constant, J/(mol·K). Source: CODATA 2018, exact.
const GAS_CONSTANT: f64 = 8.314_462_618;
/// Standard atmosphere, Pa.
const ATMOSPHERE: f64 = 101_325.0;

/// Mass concentration of formaldehyde at a volume share of one, at a temperature and 101.325 kPa: M·p/(R·T).
fn pure(at: ThermodynamicTemperature) -> Result<f64, EmissionError> {
    let temperature = at.get::<kelvin>();
    if !(223.15..=373.15).contains(&temperature) {
        return Err(EmissionError::TemperatureOutOfRange(at));
    }
    Ok(Species::Formaldehyde.molar_mass().value * ATMOSPHERE / (GAS_CONSTANT * temperature))
}

/// Formaldehyde in air as a mass concentration, from its volume share, as an ideal gas at 101.325 kPa.
///
/// # Errors
/// [`EmissionError`] for a share below zero or a temperature out of range.
pub fn mass_concentration(share: Ratio, at: ThermodynamicTemperature) -> Result<MassDensity, EmissionError> {
    if !(share.is_finite() && share.value >= 0.0) {
        return Err(EmissionError::ValueOutOfRange(share.get::<part_per_million>()));
    }
    Ok(MassDensity { value: share.value * pure(at)?, ..MassDensity::default() })
}

/// Formaldehyde in air as a volume share, from its mass concentration, as an ideal gas at 101.325 kPa.
///
/// # Errors
/// [`EmissionError`] for a concentration below zero or a temperature out of range.
pub fn volume_share(concentration: MassDensity, at: ThermodynamicTemperature) -> Result<Ratio, EmissionError> {
    if !(concentration.is_finite() && concentration.value >= 0.0) {
        return Err(EmissionError::ValueOutOfRange(concentration.get::<milligram_per_cubic_meter>()));
    }
    Ok(as_ratio(concentration.value / pure(at)?))
}

/// The board moistures, % of dry mass, that the perforator correction holds for.
pub const PERFORATOR_MOISTURE: [f64; 2] = [3.0, 9.0];
/// The board moisture that perforator values are stated at, % of dry mass.
pub const PERFORATOR_REFERENCE: f64 = 6.5;

/// A perforator value, mg of formaldehyde per 100 g of oven-dry board, brought to a board moisture of 6.5 %: times
/// F = −0.133·u + 1.86 with the board moisture u in % of dry mass, from 3 to 9 %.
///
/// Above 6.5 % the correction is known to favour a low value.
///
/// # Errors
/// [`EmissionError`] for a value below zero or a moisture outside [`PERFORATOR_MOISTURE`].
///
/// Source: Jann and Deppe (1990), as used with EN 120 and EN ISO 12460-5; the coefficients are from memory.
pub fn perforator_at_reference(value: f64, moisture: Ratio) -> Result<f64, EmissionError> {
    if !(value.is_finite() && value >= 0.0) {
        return Err(EmissionError::ValueOutOfRange(value));
    }
    let u = moisture.get::<percent>();
    let [least, most] = PERFORATOR_MOISTURE;
    if !(least - 1e-9..=most + 1e-9).contains(&u) {
        return Err(EmissionError::MoistureOutOfRange(moisture));
    }
    Ok(value * (-0.133 * u + 1.86))
}

/// What a limit holds for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LimitedArticle {
    /// Wood-based articles and furniture, in the reference chamber.
    WoodBased,
    /// Particleboard.
    Particleboard,
    /// Medium-density fibreboard.
    Mdf,
    /// Thin medium-density fibreboard.
    ThinMdf,
    /// Hardwood plywood.
    HardwoodPlywood,
    /// Air at the workplace, mean over a shift.
    WorkplaceShift,
    /// Air at the workplace, short-term.
    WorkplaceShort,
}

/// Where a limit holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Market {
    /// European Union.
    EuropeanUnion,
    /// United States.
    UnitedStates,
}

/// A limit as its regulation states it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StatedLimit {
    /// mg/m³.
    MilligramPerCubicMetre(f64),
    /// ppm by volume.
    PartPerMillion(f64),
    /// Both, as stated: ppm and mg/m³.
    Both(f64, f64),
}

/// A limit of the law for formaldehyde.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EmissionLimit {
    /// Where it holds.
    pub market: Market,
    /// What it holds for.
    pub article: LimitedArticle,
    /// The limit.
    pub limit: StatedLimit,
    /// The regulation.
    pub regulation: &'static str,
    /// From when, where the regulation was still to come into force when this table was made; else empty.
    pub from: &'static str,
}

/// The limits, by market. The current local limit is to be checked; a test decides.
pub const LIMITS: [EmissionLimit; 9] = {
    use LimitedArticle::{HardwoodPlywood, Mdf, Particleboard, ThinMdf, WoodBased, WorkplaceShift, WorkplaceShort};
    use Market::{EuropeanUnion, UnitedStates};
    const fn limit(
        market: Market,
        article: LimitedArticle,
        limit: StatedLimit,
        regulation: &'static str,
        from: &'static str,
    ) -> EmissionLimit {
        EmissionLimit { market, article, limit, regulation, from }
    }
    const WORK: &str = "Directive (EU) 2019/983";
    const TSCA: &str = "TSCA Title VI, 40 CFR 770";
    const OSHA: &str = "29 CFR 1910.1048";
    [
        limit(
            EuropeanUnion,
            WoodBased,
            StatedLimit::MilligramPerCubicMetre(0.062),
            "Regulation (EU) 2023/1464",
            "2026-08-06",
        ),
        limit(EuropeanUnion, WorkplaceShift, StatedLimit::Both(0.3, 0.37), WORK, ""),
        limit(EuropeanUnion, WorkplaceShort, StatedLimit::Both(0.6, 0.74), WORK, ""),
        limit(UnitedStates, Particleboard, StatedLimit::PartPerMillion(0.09), TSCA, ""),
        limit(UnitedStates, Mdf, StatedLimit::PartPerMillion(0.11), TSCA, ""),
        limit(UnitedStates, ThinMdf, StatedLimit::PartPerMillion(0.13), TSCA, ""),
        limit(UnitedStates, HardwoodPlywood, StatedLimit::PartPerMillion(0.05), TSCA, ""),
        limit(UnitedStates, WorkplaceShift, StatedLimit::PartPerMillion(0.75), OSHA, ""),
        limit(UnitedStates, WorkplaceShort, StatedLimit::PartPerMillion(2.0), OSHA, ""),
    ]
};
