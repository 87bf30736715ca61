//! Which machines a recipe asks too much of, in the machine's own terms.

use crate::domain::balance::figure::Figure;
use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::Case;
use crate::domain::compare::output::Output;
use crate::domain::compare::variation::Variation;
use crate::domain::recipe::field::Field;
use crate::quantity::{Amount, Kind};

/// A machine that cannot do what a recipe asks of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Exceeded {
    /// The machine.
    pub machine: Machine,
    /// What the recipe asks for: a flow, a press factor or a line speed.
    pub asked: Amount,
    /// What the machine can do.
    pub limit: Amount,
    /// The oven-dry fibre flow at which it would be fully used.
    pub fibre: Amount,
}

/// More than a rounding error above the limit, as on the recipe page.
const OVER: f64 = 1.0 + 1e-9;

/// The machines that a solved recipe asks too much of, the most exceeded one first.
#[must_use]
pub fn exceeded(case: &Case) -> Vec<Exceeded> {
    let limits = &case.input.limits;
    let of = |kind: Kind, base: f64| Amount::from_base(kind, base);
    let found = case.solved.capacities.iter().filter(|capacity| capacity.used.value > OVER).filter_map(|capacity| {
        let (asked, limit) = match capacity.machine {
            Machine::FibreSupply => {
                (of(Kind::FibreFlow, case.solved.fibre.value), of(Kind::FibreFlow, limits.fibre_supply?.value))
            }
            Machine::Blender => {
                (of(Kind::FibreFlow, case.solved.solids.value), of(Kind::FibreFlow, limits.blender?.value))
            }
            Machine::Press => (case.figure(Figure::PressFactor)?, of(Kind::PressFactor, limits.press_factor?.value)),
            Machine::LineSpeed => (case.figure(Figure::LineSpeed)?, of(Kind::LineSpeed, limits.line_speed?.value)),
        };
        let fibre = of(Kind::FibreFlow, capacity.fibre_at_limit.value);
        Some(Exceeded { machine: capacity.machine, asked, limit, fibre })
    });
    found.collect()
}

/// An answer at which a machine cannot do what is asked of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeyondLimit {
    /// The input, in the base unit of its kind.
    pub at: f64,
    /// The machine and its limit.
    pub exceeded: Exceeded,
    /// The figure asked for at the machine's limit, for a figure that is proportional to the flow; else `None`.
    pub reachable: Option<Amount>,
}

/// The machines exceeded with the field set.
pub(super) fn beyond_limit(variation: &mut Variation, field: Field, at: f64, output: Output) -> Vec<BeyondLimit> {
    let Ok(case) = variation.vary(&[(field, at)]) else { return Vec::new() };
    let found = exceeded(case);
    let mut all = Vec::with_capacity(found.len());
    for exceeded in found {
        // With the fibre flow as input, the recipe at the machine's limit says what can be had.
        let reachable = if field == Field::FibreFlow {
            let share = exceeded.fibre.base / variation.case().solved.fibre.value;
            let reached = variation.vary(&[(field, at * share)]).ok().and_then(|case| output.value(case));
            let _ = variation.vary(&[(field, at)]);
            reached
        } else {
            None
        };
        all.push(BeyondLimit { at, exceeded, reachable });
    }
    all
}
