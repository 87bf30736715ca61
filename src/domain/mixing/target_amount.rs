//! How much of a liquid is wanted, by mass or by volume.

use uom::si::f64::{Mass, MassDensity, Volume};

/// The amount asked for when a solution or a glue is made up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Wanted {
    /// So much by mass.
    Mass(Mass),
    /// So much by volume.
    Volume(Volume),
}

impl Wanted {
    /// Whether the amount is above zero and finite.
    pub fn is_sound(self) -> bool {
        let value = match self {
            Wanted::Mass(mass) => mass.value,
            Wanted::Volume(volume) => volume.value,
        };
        value.is_finite() && value > 0.0
    }

    /// Mass and volume of the amount at a known density.
    pub(crate) fn at(self, density: MassDensity) -> (Mass, Volume) {
        match self {
            Wanted::Mass(mass) => (mass, mass / density),
            Wanted::Volume(volume) => (volume * density, volume),
        }
    }
}
