//! Fractions that uom cannot tell apart: moisture, solids, dose.
//!
//! All three are `Ratio` to uom. Confusing them is the classic mistake of the trade, so each is a
//! type with a private number and checked ways in.

use super::number::finite;
use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

/// Moisture of fibre, furnish, mat or board. Held on the dry basis ω (water per oven-dry mass,
/// EN 322), read on either basis. From 0 up; a finite number on the wet basis below 1.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Moisture(f64);

impl Moisture {
    /// Moisture `ω` on the dry basis, a fraction. `None` below 0 or when not finite.
    #[must_use]
    pub fn from_dry_basis(omega: f64) -> Option<Self> {
        finite(omega).filter(|w| *w >= 0.0).map(Self)
    }

    /// Moisture `u` on the wet basis (water per total mass), a fraction: ω = u/(1−u).
    /// `None` below 0 or from 1 up.
    #[must_use]
    pub fn from_wet_basis(u: f64) -> Option<Self> {
        if (0.0..1.0).contains(&u) { Self::from_dry_basis(u / (1.0 - u)) } else { None }
    }

    /// ω, water per oven-dry mass.
    #[must_use]
    pub fn dry_basis(self) -> Ratio {
        Ratio::new::<ratio>(self.0)
    }

    /// u, water per total mass: u = ω/(1+ω).
    #[must_use]
    pub fn wet_basis(self) -> Ratio {
        Ratio::new::<ratio>(self.0 / (1.0 + self.0))
    }

    /// 1 + ω: total mass per oven-dry mass.
    #[must_use]
    pub fn wet_per_dry(self) -> Ratio {
        Ratio::new::<ratio>(1.0 + self.0)
    }
}

/// Solids of a liquid: non-volatile mass per mass of liquid, above 0 and up to 1.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Solids(f64);

impl Solids {
    /// A liquid without water, as neat pMDI.
    pub const WHOLE: Self = Self(1.0);

    /// Solids as a fraction of the liquid's mass. `None` outside (0, 1].
    #[must_use]
    pub fn new(fraction: f64) -> Option<Self> {
        finite(fraction).filter(|s| *s > 0.0 && *s <= 1.0).map(Self)
    }

    /// The fraction, as a ratio.
    #[must_use]
    pub fn ratio(self) -> Ratio {
        Ratio::new::<ratio>(self.0)
    }
}

/// A dose: mass of an additive per mass of what it is dosed on, 0 or more. Which of both masses are
/// solids and which liquid is said by who holds it.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Dose(f64);

impl Dose {
    /// A dose as a fraction. `None` below 0 or when not finite.
    #[must_use]
    pub fn new(fraction: f64) -> Option<Self> {
        finite(fraction).filter(|d| *d >= 0.0).map(Self)
    }

    /// The fraction, as a ratio.
    #[must_use]
    pub fn ratio(self) -> Ratio {
        Ratio::new::<ratio>(self.0)
    }
}
