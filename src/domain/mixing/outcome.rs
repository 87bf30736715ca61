//! What comes of what was typed: a solution made up, an isocyanate's water, a molar ratio.

use crate::domain::chemistry::formaldehyde_ratio::{FormaldehydeRatioError, of_charge};
use crate::domain::chemistry::isocyanate::{IsocyanateError, WaterReaction, equivalent_weight, reaction_with_water};
use crate::domain::chemistry::solution::{MakeUp, MakeUpError, SolutionRequest, make_up};
use crate::domain::mixing::draft::{AmountWay, MixDraft};
use crate::domain::mixing::field::MixField;
use crate::domain::mixing::target_amount::Wanted;
use uom::si::f64::{Mass, MassDensity, MolarMass, Ratio, ThermodynamicTemperature, Volume};
use uom::si::mass::kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::volume::cubic_meter;

/// Why nothing can be computed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MixError<E> {
    /// A box that is needed is blank or cannot be read; the box says so itself.
    Entry,
    /// All boxes can be read, and together they cannot be met.
    Refused(E),
}

/// A solution made up, with what was asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MadeUp {
    /// What was asked for.
    pub order: SolutionRequest,
    /// What it takes.
    pub make_up: MakeUp,
}

/// What an isocyanate's NCO content stands for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Isocyanate {
    /// The NCO content, by mass.
    pub nco: Ratio,
    /// Mass that carries one mole of NCO groups.
    pub equivalent_weight: MolarMass,
    /// What it takes up and gives off with water.
    pub reaction: WaterReaction,
}

/// A number that is needed.
pub(in crate::domain::mixing) fn needed<E>(draft: &MixDraft, field: MixField) -> Result<f64, MixError<E>> {
    draft.read(field).ok().flatten().ok_or(MixError::Entry)
}

/// An amount asked for by mass or by volume.
pub(in crate::domain::mixing) fn wanted<E>(
    draft: &MixDraft,
    way: AmountWay,
    by_mass: MixField,
    by_volume: MixField,
) -> Result<Wanted, MixError<E>> {
    Ok(match way {
        AmountWay::Mass => Wanted::Mass(Mass::new::<kilogram>(needed(draft, by_mass)?)),
        AmountWay::Volume => Wanted::Volume(Volume::new::<cubic_meter>(needed(draft, by_volume)?)),
    })
}

/// The solution that was asked for, made up from crystals.
///
/// # Errors
/// [`MixError`], with those of [`make_up`].
pub fn solution(draft: &MixDraft) -> Result<MadeUp, MixError<MakeUpError>> {
    let wanted = wanted(draft, draft.solution_way, MixField::SolutionMass, MixField::SolutionVolume)?;
    let density = draft.read(MixField::MeasuredDensity).map_err(|_| MixError::Entry)?;
    let order = SolutionRequest {
        solute: draft.solute,
        wanted,
        fraction: Ratio::new::<ratio>(needed(draft, MixField::Concentration)?),
        temperature: ThermodynamicTemperature::new::<kelvin>(needed(draft, MixField::Coldest)?),
        density: density.map(MassDensity::new::<kilogram_per_cubic_meter>),
    };
    make_up(&order).map(|make_up| MadeUp { order, make_up }).map_err(MixError::Refused)
}

/// What the isocyanate's groups stand for.
///
/// # Errors
/// [`MixError`], with those of [`equivalent_weight`].
pub fn isocyanate(draft: &MixDraft) -> Result<Isocyanate, MixError<IsocyanateError>> {
    let nco = Ratio::new::<ratio>(needed(draft, MixField::Nco)?);
    let equivalent_weight = equivalent_weight(nco).map_err(MixError::Refused)?;
    let reaction = reaction_with_water(nco).map_err(MixError::Refused)?;
    Ok(Isocyanate { nco, equivalent_weight, reaction })
}

/// Molar ratio of formaldehyde to urea of the charge, and after the extra urea, if there is any.
///
/// # Errors
/// [`MixError`], with those of [`of_charge`].
pub fn formaldehyde_ratio(draft: &MixDraft) -> Result<(Ratio, Option<Ratio>), MixError<FormaldehydeRatioError>> {
    let mass = Mass::new::<kilogram>;
    let formalin = mass(needed(draft, MixField::Formalin)?);
    let strength = Ratio::new::<ratio>(needed(draft, MixField::Strength)?);
    let urea = mass(needed(draft, MixField::Urea)?);
    let extra = draft.read(MixField::ExtraUrea).map_err(|_| MixError::Entry)?.filter(|extra| *extra > 0.0);
    let charge = of_charge(formalin, strength, urea).map_err(MixError::Refused)?;
    let after = extra.map(|extra| of_charge(formalin, strength, urea + mass(extra)).map_err(MixError::Refused));
    Ok((charge, after.transpose()?))
}
