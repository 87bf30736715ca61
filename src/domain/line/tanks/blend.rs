//! A delivery meets what is left in its tank.

use crate::domain::line::tanks::tank::TankId;
use crate::quantity::Solids;
use uom::si::f64::{Mass, MassDensity, Time, Volume};

/// A liquid of one solids content and density.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stock {
    /// Its mass.
    pub mass: Mass,
    /// Its solids.
    pub solids: Solids,
    /// Its density.
    pub density: MassDensity,
}

/// What is in the tank after a delivery.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Blend {
    /// The tank.
    pub tank: TankId,
    /// What was in it.
    pub before: Stock,
    /// What came.
    pub delivered: Stock,
    /// What is in it then.
    pub after: Stock,
    /// How long after the filling it reaches the nozzle: the volume of the pipe over the flow of its pump; the slowest where there are
    /// several. `None` where a pipe volume or a flow is not known.
    pub reaches_nozzle: Option<Time>,
}

impl Stock {
    /// Its volume.
    #[must_use]
    pub fn volume(&self) -> Volume {
        self.mass / self.density
    }

    /// Two stocks mixed: solids s = Σ(m·s)/Σm, density by ideal mixing, ρ = Σm/Σ(m/ρ). `None` for nothing.
    #[must_use]
    pub fn mixed(&self, other: &Self) -> Option<Self> {
        let mass = self.mass + other.mass;
        let solids = (self.mass * self.solids.ratio() + other.mass * other.solids.ratio()) / mass;
        let density: MassDensity = mass / (self.volume() + other.volume());
        (mass.value > 0.0 && density.is_finite())
            .then(|| Solids::new(solids.value.min(1.0)))
            .flatten()
            .map(|solids| Self { mass, solids, density })
    }
}
