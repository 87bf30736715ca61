//! Masses that look like a slip: asked about before anything is computed with them.

use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::quantity::{Amount, Kind};
use uom::si::f64::Mass;

/// A mass more than so many times its plan, or less than one part in so many, is asked about.
///
/// Common practice, no source.
const FAR_OFF: f64 = 3.0;
/// A mass that meets a plan within this share is taken for it.
const NEAR: f64 = 0.1;
/// Slips in the decimal mark or the unit: kilograms for grams is the last.
const POWERS: [f64; 4] = [10.0, 0.1, 100.0, 1_000.0];

/// What may have been meant by a mass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Slip {
    /// Far off, and so many times it would be near the plan.
    Factor {
        /// The mass that was probably meant.
        meant: Amount,
    },
    /// It fits the plan of another line, whose own mass fits this one.
    Swapped {
        /// The other line.
        with: LineId,
    },
    /// Far off, and no slip explains it.
    FarOff,
}

/// One mass beside its plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Beside {
    /// The line.
    pub id: LineId,
    /// What was planned.
    pub planned: Mass,
    /// What was entered.
    pub weighed: Option<Mass>,
}

fn near(mass: Mass, planned: Mass) -> bool {
    ((mass / planned).value - 1.0).abs() <= NEAR
}

/// What each mass looks like; `None` for one that needs no question. Two masses are taken for swapped where each meets the
/// other's plan and neither its own.
#[must_use]
pub fn slips(lines: &[Beside]) -> Vec<Option<Slip>> {
    lines.iter().map(|line| slip(line, lines)).collect()
}

fn slip(line: &Beside, lines: &[Beside]) -> Option<Slip> {
    let weighed = line.weighed?;
    if near(weighed, line.planned) {
        return None;
    }
    let swapped = |other: &&Beside| {
        other.id != line.id
            && near(weighed, other.planned)
            && other.weighed.is_some_and(|mass| near(mass, line.planned) && !near(mass, other.planned))
    };
    if let Some(other) = lines.iter().find(swapped) {
        return Some(Slip::Swapped { with: other.id });
    }
    let ratio = (weighed / line.planned).value;
    if (1.0 / FAR_OFF..=FAR_OFF).contains(&ratio) {
        return None;
    }
    let meant = POWERS.iter().map(|factor| weighed * *factor).find(|mass| near(*mass, line.planned));
    Some(meant.map_or(Slip::FarOff, |mass| Slip::Factor { meant: Amount::from_base(Kind::BenchMass, mass.value) }))
}
