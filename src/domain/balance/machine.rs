//! Which machine limits the line.

use crate::domain::recipe::input::MachineLimits;
use arrayvec::ArrayVec;
use uom::si::f64::{InverseVelocity, MassRate, Ratio, Velocity};

/// A machine that may limit the flow.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Machine {
    /// Fibre dryer and silo.
    FibreSupply,
    /// Blender.
    Blender,
    /// Press, by its smallest press factor.
    Press,
    /// Former and press, by the largest line speed.
    LineSpeed,
}

/// How far a machine is used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Capacity {
    /// The machine.
    pub machine: Machine,
    /// Share of its limit in use; above 1 the limit is exceeded.
    pub used: Ratio,
    /// Oven-dry fibre flow at which it would be fully used.
    pub fibre_at_limit: MassRate,
}

/// The machines with a limit, the most used one first. Everything along the line grows in
/// proportion to the fibre flow, so the flow at a limit is F divided by the share in use.
///
/// The press and the line speed need a mat width, the press its length as well; without them their
/// limits cannot be compared and are left out.
#[must_use]
pub fn capacities(
    limits: &MachineLimits,
    fibre: MassRate,
    solids: MassRate,
    speed: Option<Velocity>,
    press_factor: Option<InverseVelocity>,
) -> ArrayVec<Capacity, 4> {
    let shares = [
        (Machine::FibreSupply, limits.fibre_supply.map(|most| fibre / most)),
        (Machine::Blender, limits.blender.map(|most| solids / most)),
        (Machine::Press, limits.press_factor.zip(press_factor).map(|(least, now)| least / now)),
        (Machine::LineSpeed, limits.line_speed.zip(speed).map(|(most, now)| now / most)),
    ];
    let mut found = ArrayVec::<Capacity, 4>::new();
    for (machine, used) in shares.into_iter().filter_map(|(machine, used)| used.map(|used| (machine, used))) {
        // Put where it belongs: a sort for four things is more code than all the rest here.
        let place = found.iter().position(|other| other.used < used).unwrap_or(found.len());
        found.insert(place, Capacity { machine, used, fibre_at_limit: fibre / used });
    }
    found
}

impl Machine {
    /// The stable key of the machine.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::FibreSupply => "fibre_supply",
            Self::Blender => "blender",
            Self::Press => "press",
            Self::LineSpeed => "line_speed",
        }
    }
}
