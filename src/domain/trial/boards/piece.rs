//! Test pieces, measured: the formulas of the standards.
//!
//! Those of EN 310, EN 317 and EN 319 are from memory: nobody here had the standards open.

use uom::si::f64::{Force, Length, Mass, MassDensity, Pressure, Ratio, SurfaceTension};
use uom::si::ratio::ratio;

/// A piece for density and moisture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Piece {
    /// Where in the board it was cut, from one edge.
    pub position: Option<Length>,
    /// Mass m as cut and conditioned.
    pub mass: Mass,
    /// Length l.
    pub length: Length,
    /// Width b.
    pub width: Length,
    /// Thickness t.
    pub thickness: Length,
    /// Mass m₀ after drying at 103 °C to constant mass.
    pub dry: Option<Mass>,
}

impl Piece {
    /// Density ρ = m/(l·b·t), at the moisture as measured.
    ///
    /// Source: EN 323.
    #[must_use]
    pub fn density(&self) -> MassDensity {
        self.mass / (self.length * self.width * self.thickness)
    }

    /// Moisture ω = (m − m₀)/m₀, dry basis; `None` when it was not dried.
    ///
    /// Source: EN 322.
    #[must_use]
    pub fn moisture(&self) -> Option<Ratio> {
        self.dry.map(|dry| (self.mass - dry) / dry)
    }
}

/// A bending piece.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bending {
    /// Span l between the supports.
    pub span: Length,
    /// Width b.
    pub width: Length,
    /// Thickness t.
    pub thickness: Length,
    /// Maximum load F.
    pub load: Force,
    /// Slope ΔF/Δa of load over deflection. uom names force per length after surface tension.
    pub slope: Option<SurfaceTension>,
    /// Density of the piece m/(L·b·t), where it was weighed and its length L measured.
    pub density: Option<MassDensity>,
}

impl Bending {
    /// Bending strength f = 3·F·l/(2·b·t²).
    ///
    /// Source: EN 310.
    #[must_use]
    pub fn strength(&self) -> Pressure {
        3.0 * self.load * self.span / (2.0 * self.width * self.thickness * self.thickness)
    }

    /// The span of the standard at this thickness: 20·t, at least 100 mm and at most 1 000 mm.
    ///
    /// Source: EN 310 (from memory).
    #[must_use]
    pub fn standard_span(&self) -> Length {
        let span = self.thickness.value * 20.0;
        si!(Length, span.clamp(0.1, 1.0))
    }

    /// Modulus of elasticity E = l³·(ΔF/Δa)/(4·b·t³), apparent: shear is in it; `None` without a slope.
    ///
    /// Source: EN 310.
    #[must_use]
    pub fn modulus(&self) -> Option<Pressure> {
        let slender: Ratio = self.span / self.thickness;
        self.slope.map(|slope| slender * slender * slender * slope / (4.0 * self.width))
    }
}

/// A piece for internal bond.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bond {
    /// Length l.
    pub length: Length,
    /// Width b.
    pub width: Length,
    /// Maximum load F.
    pub load: Force,
    /// Density of the piece m/(l·b·t), where it was weighed and its thickness measured.
    pub density: Option<MassDensity>,
}

impl Bond {
    /// Internal bond f = F/(l·b).
    ///
    /// Source: EN 319.
    #[must_use]
    pub fn strength(&self) -> Pressure {
        self.load / (self.length * self.width)
    }
}

/// A piece for thickness swelling.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Swelling {
    /// Thickness t₁ before it lay in water.
    pub before: Length,
    /// Thickness t₂ after 24 hours in water.
    pub after: Length,
    /// Thickness after 2 hours in water.
    pub after_two: Option<Length>,
    /// Mass before and after 24 hours in water.
    pub masses: Option<(Mass, Mass)>,
}

impl Swelling {
    /// Swelling after 2 hours.
    #[must_use]
    pub fn swelling_two(&self) -> Option<Ratio> {
        self.after_two.map(|after| after / self.before - Ratio::new::<ratio>(1.0))
    }

    /// Water absorption (m₂ − m₁)/m₁ after 24 hours, a share of the mass before.
    ///
    /// Source: ASTM D1037 (from memory).
    #[must_use]
    pub fn absorption(&self) -> Option<Ratio> {
        self.masses.map(|(before, after)| after / before - Ratio::new::<ratio>(1.0))
    }

    /// Swelling (t₂ − t₁)/t₁ after 24 hours, a share of the thickness before. Negative where it shrank.
    ///
    /// Source: EN 317.
    #[must_use]
    pub fn swelling(&self) -> Ratio {
        self.after / self.before - Ratio::new::<ratio>(1.0)
    }
}

/// A whole board.
#[derive(Debug, Clone, PartialEq)]
pub struct Whole {
    /// Mass m.
    pub mass: Mass,
    /// Length l.
    pub length: Length,
    /// Width b.
    pub width: Length,
    /// Thickness t at several points, one at least.
    pub thickness: Vec<Length>,
}

impl Whole {
    /// Mean thickness of the points.
    #[must_use]
    pub fn mean_thickness(&self) -> Length {
        let count = Ratio::new::<ratio>(self.thickness.len() as f64);
        self.thickness.iter().copied().sum::<Length>() / count
    }

    /// Density m/(l·b·t̄), by the formula of EN 323 over the whole board.
    #[must_use]
    pub fn density(&self) -> MassDensity {
        self.mass / (self.length * self.width * self.mean_thickness())
    }
}
