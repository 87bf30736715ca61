//! A premixed glue: binder, hardener, water and what else goes into one tank.

use arrayvec::ArrayVec;
use uom::si::f64::{Mass, MassDensity, MassRate, Ratio, SpecificVolume, Volume};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::ratio::ratio;
use uom::si::specific_volume::cubic_meter_per_kilogram;

use crate::domain::mixing::target_amount::Wanted;

/// Most parts that one glue may have.
pub const MAX_PARTS: usize = 16;

/// One liquid of the glue.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GlueComponent {
    /// Parts by mass of the liquid as delivered; only the proportion between the parts counts.
    pub share: Ratio,
    /// Solids, mass fraction of the liquid.
    pub solids: Ratio,
    /// Density of the liquid.
    pub density: MassDensity,
}

impl GlueComponent {
    /// A part in proportion to the flow at which the liquid is dosed.
    ///
    /// All parts of a glue have to be made from flows then, or none.
    pub fn from_flow(flow: MassRate, solids: Ratio, density: MassDensity) -> GlueComponent {
        GlueComponent { share: Ratio::new::<ratio>(flow.get::<kilogram_per_second>()), solids, density }
    }
}

/// One liquid of a batch, in the place of its [`GlueComponent`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BatchPart {
    /// Liquid to weigh in.
    pub mass: Mass,
    /// The same by volume.
    pub volume: Volume,
    /// Solids in it.
    pub solids: Mass,
    /// Water in it: what is not solids.
    pub water: Mass,
}

/// What the parts give together, whatever the size of the batch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mix {
    /// Solids, mass fraction of the mix.
    pub solids: Ratio,
    /// Density by ideal mixing.
    pub density: MassDensity,
}

/// A glue made up.
#[derive(Debug, Clone, PartialEq)]
pub struct Batch {
    /// What to weigh in of each part, in the order of the parts.
    pub parts: ArrayVec<BatchPart, MAX_PARTS>,
    /// The batch.
    pub mass: Mass,
    /// The batch by volume, at the density of the mix.
    pub volume: Volume,
    /// Solids in the batch.
    pub solids: Mass,
    /// Water in the batch.
    pub water: Mass,
    /// Solids and density of the mix.
    pub mix: Mix,
}

/// Why a glue cannot be mixed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum GlueError {
    /// An isocyanate and something with water in one tank: they react.
    IsocyanateWithWater,
    /// There are no parts, or none has a share above zero.
    NothingToMix,
    /// More parts than [`MAX_PARTS`].
    TooManyParts {
        /// How many there are.
        given: usize,
    },
    /// A share is below zero, or not finite.
    ShareOutOfRange {
        /// Place of the part, from 0.
        part: usize,
        /// What was given.
        given: Ratio,
    },
    /// Solids are not from 0 to 100 %.
    SolidsOutOfRange {
        /// Place of the part, from 0.
        part: usize,
        /// What was given.
        given: Ratio,
    },
    /// A density is not above zero, or not finite.
    DensityOutOfRange {
        /// Place of the part, from 0.
        part: usize,
        /// What was given.
        given: MassDensity,
    },
    /// The target amount is not above zero, or too large or too small to calculate with.
    AmountOutOfRange {
        /// What was asked for.
        given: Wanted,
    },
    /// The parts differ so much in size that the mix cannot be computed.
    NotFinite,
}

/// Solids and density of a glue.
///
/// With f the mass fraction of each part: solids = Σ f·s, density = 1/Σ(f/ρ). The density is by
/// **ideal mixing**, the volumes add up; a real mix may shrink or swell a little, so the measured
/// density wins over it. Valid for shares ≥ 0 of which one at least is above zero, solids from 0
/// to 100 %, densities above zero.
///
/// # Errors
/// [`GlueError`], naming the part.
pub fn mix(parts: &[GlueComponent]) -> Result<Mix, GlueError> {
    let sum = checked_sum(parts)?;
    let mut solids = Ratio::new::<ratio>(0.0);
    let mut volume = SpecificVolume::new::<cubic_meter_per_kilogram>(0.0);
    for part in parts {
        let fraction: Ratio = part.share / sum;
        solids += fraction * part.solids;
        volume += fraction / part.density;
    }
    let density: MassDensity = 1.0 / volume;
    if solids.is_finite() && density.value.is_normal() {
        Ok(Mix { solids, density })
    } else {
        Err(GlueError::NotFinite)
    }
}

/// What to weigh in of each part for a wanted amount of glue.
///
/// Batch mass m = the wanted mass, or the wanted volume times the density of [`mix`]; of each part
/// f·m, by volume f·m/ρ.
///
/// # Errors
/// Those of [`mix`], and [`GlueError::AmountOutOfRange`].
pub fn batch(parts: &[GlueComponent], wanted: Wanted) -> Result<Batch, GlueError> {
    let mix = mix(parts)?;
    let sum = checked_sum(parts)?;
    let refused = GlueError::AmountOutOfRange { given: wanted };
    if !wanted.is_sound() {
        return Err(refused);
    }
    let (mass, volume) = wanted.at(mix.density);
    if !(mass.value.is_normal() && volume.value.is_normal()) {
        return Err(refused);
    }
    let mut weighed = ArrayVec::new();
    for part in parts {
        let liquid = mass * (part.share / sum);
        let solids = liquid * part.solids;
        let volume = liquid / part.density;
        if !volume.is_finite() {
            return Err(refused);
        }
        weighed.push(BatchPart { mass: liquid, volume, solids, water: liquid - solids });
    }
    let solids = mass * mix.solids;
    Ok(Batch { parts: weighed, mass, volume, solids, water: mass - solids, mix })
}

/// The sum of all shares, if every part is sound.
fn checked_sum(parts: &[GlueComponent]) -> Result<Ratio, GlueError> {
    if parts.len() > MAX_PARTS {
        return Err(GlueError::TooManyParts { given: parts.len() });
    }
    let mut sum = Ratio::new::<ratio>(0.0);
    for (i, part) in parts.iter().enumerate() {
        let GlueComponent { share, solids, density } = *part;
        if !(share.is_finite() && share.value >= 0.0) {
            return Err(GlueError::ShareOutOfRange { part: i, given: share });
        }
        if !(solids.value >= 0.0 && solids.value <= 1.0) {
            return Err(GlueError::SolidsOutOfRange { part: i, given: solids });
        }
        if !(density.is_finite() && density.value > 0.0) {
            return Err(GlueError::DensityOutOfRange { part: i, given: density });
        }
        sum += share;
    }
    if sum.value > 0.0 { Ok(sum) } else { Err(GlueError::NothingToMix) }
}
