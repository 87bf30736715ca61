//! Molar ratio of formaldehyde to urea (F/U) of a urea-formaldehyde resin, and what extra urea does to it.

use uom::si::f64::{Mass, Ratio};
use uom::si::ratio::ratio;

use crate::domain::chemistry::molar_mass::Species;

/// Why no molar ratio can be given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FormaldehydeRatioError {
    /// The formalin mass is not finite and at least zero.
    FormalinOutOfRange {
        /// What was given.
        given: Mass,
    },
    /// The strength of the formalin is not from 0 to 100 % by mass.
    StrengthOutOfRange {
        /// What was given, as a mass fraction of the formalin.
        given: Ratio,
    },
    /// A urea mass is not finite, below zero, or the urea in all is zero.
    UreaOutOfRange {
        /// What was given.
        given: Mass,
    },
    /// The molar ratio to start from is not above zero and at most 100.
    RatioOutOfRange {
        /// What was given, mol/mol.
        given: Ratio,
    },
    /// The extra urea per resin solids is not finite and at least zero.
    ExtraOutOfRange {
        /// What was given, kg/kg of resin solids.
        given: Ratio,
    },
}

/// The F/U ratio after extra urea, as the two ends between which a real resin lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RatioAfterUrea {
    /// If every formaldehyde sits in a methylol group: the solids hold the least urea, so the same
    /// extra urea lowers the ratio most.
    pub all_methylol: Ratio,
    /// If every formaldehyde sits in a methylene bridge: the solids hold the most urea.
    pub all_methylene: Ratio,
}

/// Molar ratio of formaldehyde to urea of a charge, mol/mol.
///
/// F/U = (m_formalin·w/M(CH₂O))/(m_urea/M(urea)), with w the formaldehyde mass fraction of the
/// formalin. Extra urea is added to `urea`. Unbound in range except that the urea is above zero.
///
/// # Errors
/// [`FormaldehydeRatioError`] for a formalin mass below zero, a strength outside 0 to 100 %, a urea
/// mass of zero or below, or any that is not finite or too small to divide by.
///
/// Source: definition with the IUPAC abridged atomic weights.
pub fn of_charge(formalin: Mass, strength: Ratio, urea: Mass) -> Result<Ratio, FormaldehydeRatioError> {
    if !(formalin.is_finite() && formalin.value >= 0.0) {
        return Err(FormaldehydeRatioError::FormalinOutOfRange { given: formalin });
    }
    if !(strength.value >= 0.0 && strength.value <= 1.0) {
        return Err(FormaldehydeRatioError::StrengthOutOfRange { given: strength });
    }
    if !(urea.is_finite() && urea.value > 0.0) {
        return Err(FormaldehydeRatioError::UreaOutOfRange { given: urea });
    }
    let molar = Species::Urea.molar_mass() / Species::Formaldehyde.molar_mass();
    let result = strength * molar * (formalin / urea);
    if result.is_finite() { Ok(result) } else { Err(FormaldehydeRatioError::UreaOutOfRange { given: urea }) }
}

/// Molar ratio F/U of a resin to which urea is added as a scavenger, from the resin's own ratio
/// and the urea per resin solids (kg/kg).
///
/// With r the ratio before and x the extra urea per solids, F/U = r·q/(q + x), where q is the urea
/// built into a kilogram of solids. q follows from the structure, which is not known, so both ends
/// are given: q = M(urea)/(M(urea) + r·M(CH₂O)) with all formaldehyde as methylol groups, and
/// q = M(urea)/(M(urea) + r·(M(CH₂O) − M(H₂O))) with all of it as methylene bridges. Resin solids
/// are taken as urea and formaldehyde only. Valid for 0 < r ≤ 100 and x ≥ 0.
///
/// # Errors
/// [`FormaldehydeRatioError::RatioOutOfRange`] or [`FormaldehydeRatioError::ExtraOutOfRange`].
///
/// Source: stoichiometry with the IUPAC abridged atomic weights; the two structures are idealised.
pub fn after_extra_urea(before: Ratio, extra_per_solids: Ratio) -> Result<RatioAfterUrea, FormaldehydeRatioError> {
    let (r, x) = (before.get::<ratio>(), extra_per_solids.get::<ratio>());
    if !(r > 0.0 && r <= 100.0) {
        return Err(FormaldehydeRatioError::RatioOutOfRange { given: before });
    }
    if !(x.is_finite() && x >= 0.0) {
        return Err(FormaldehydeRatioError::ExtraOutOfRange { given: extra_per_solids });
    }
    let urea = Species::Urea.molar_mass();
    let formaldehyde = Species::Formaldehyde.molar_mass();
    let after = |bound| {
        let built_in: Ratio = urea / (urea + r * bound);
        before * (built_in / (built_in + extra_per_solids))
    };
    Ok(RatioAfterUrea {
        all_methylol: after(formaldehyde),
        all_methylene: after(formaldehyde - Species::Water.molar_mass()),
    })
}
