//! In what order a changeover steps, and why.
//!
//! The order never makes the mat moister in between than both recipes are: a mat too wet can burst as it
//! leaves the press, one a little dry is only poor board, and that board is neither recipe's anyway. So what
//! takes water away goes first and what brings it goes last; binders change together, since two at once would
//! bring the water of both; a release agent is on before the binder that needs it and off after it.
//!
//! Common practice, no source.

use crate::domain::balance::outcome::Case;
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::{LiquidId, Role};
use crate::quantity::Moisture;
use uom::ConstZero;
use uom::si::f64::{MassRate, Ratio, Time, Volume};

/// Why a step is where it is; in the order in which they are taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum StepReason {
    /// Drier fibre first: the dryer takes longest, and drier fibre cannot make the mat too wet.
    DrierFibreFirst,
    /// Less water first: what is left in between is drier than the old recipe.
    LessWaterFirst,
    /// Release agent on before the binder that would stick.
    ReleaseFirst,
    /// Fibre, binders and what belongs to them at one moment: two binders at once bring the water of both, none
    /// at all gives a board that falls apart.
    Together,
    /// Release agent off after the binder that would have stuck.
    ReleaseLast,
    /// More water last: only the new furnish can take it.
    MoreWaterLast,
    /// Moister fibre last.
    MoisterFibreLast,
}

impl StepReason {
    /// All of them, in their order.
    pub const ALL: &'static [StepReason] = &[
        Self::DrierFibreFirst,
        Self::LessWaterFirst,
        Self::ReleaseFirst,
        Self::Together,
        Self::ReleaseLast,
        Self::MoreWaterLast,
        Self::MoisterFibreLast,
    ];
}

/// What a pump's pipe needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Pipe {
    /// The pump starts: its pipe fills before anything is sprayed.
    Fills,
    /// The pump stops: its pipe is flushed with what the liquid allows, so that nothing cures in it.
    Flush,
    /// The liquid in it changes: the old one leaves first.
    Displaces,
}

/// What changes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// Moisture of the fibre from the dryer.
    FibreMoisture {
        /// From.
        from: Moisture,
        /// To.
        to: Moisture,
    },
    /// Fibre flow, oven-dry, with what the belt scale will read.
    Fibre {
        /// From, oven-dry.
        from: MassRate,
        /// To, oven-dry.
        to: MassRate,
        /// What the belt scale reads then.
        to_wet: MassRate,
    },
    /// A pump.
    Pump {
        /// Which.
        pump: PumpId,
        /// What it delivers, in the new recipe or else in the old one.
        fed: Fed,
        /// The scale of its drive.
        unit: SettingUnit,
        /// Flow now.
        from: MassRate,
        /// Flow then.
        to: MassRate,
        /// Setting now; `None` when it stands or has no line.
        setting_from: Option<Setting>,
        /// Setting then; `None` when it is off, has no line, or must not run there.
        setting_to: Option<Setting>,
        /// Where that setting lies.
        status_to: RangeStatus,
        /// What its pipe needs, with the pipe's volume and, where it fills, how long that takes.
        pipe: Option<(Pipe, Volume, Option<Time>)>,
    },
}

/// One step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Why the step is needed; steps with the same reason are taken at the same time.
    pub why: StepReason,
    /// What changes.
    pub change: Change,
    /// When, milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// Mat moisture at the former once all steps of this moment have come through.
    pub mat_after: Option<Moisture>,
}

/// The mat moisture with some of the steps taken: those up to and with `done`.
///
/// Water over solids, less the drying loss; `None` below zero.
pub(super) fn mat_moisture(old: &Case, new: &Case, done: StepReason) -> Option<Moisture> {
    let (old_moisture, new_moisture) = (old.input.fibre_moisture, new.input.fibre_moisture);
    let taken = |why: StepReason| done >= why;
    let drier = new_moisture < old_moisture;
    let fibre_moisture = if taken(if drier { StepReason::DrierFibreFirst } else { StepReason::MoisterFibreLast }) {
        new_moisture
    } else {
        old_moisture
    };
    let (old_dose, new_dose) = (old.solved.water.dose, new.solved.water.dose);
    let dose = if taken(water(old_dose, new_dose)) { new_dose } else { old_dose };
    let (released, off) = (taken(StepReason::ReleaseFirst), taken(StepReason::ReleaseLast));
    let base = if taken(StepReason::Together) { new } else { old };
    // Of the release agent as much as the greater of both recipes, between its two moments.
    let agents = |case: &Case| totals(case, true);
    let agent = match (released, off) {
        (false, _) => agents(old),
        (true, true) => agents(new),
        (true, false) => {
            let (before, after) = (agents(old), agents(new));
            if before.0 > after.0 { before } else { after }
        }
    };
    let others = totals(base, false);
    let fibre = base.solved.fibre;
    let water: MassRate = fibre * fibre_moisture.dry_basis() + dose + agent.1 + others.1;
    let solids: MassRate = fibre + agent.0 + others.0;
    let moisture: Ratio = water / solids - base.input.drying_loss;
    Moisture::from_dry_basis(moisture.value)
}

/// Where a change of the water dose stands.
pub(super) fn water(old: MassRate, new: MassRate) -> StepReason {
    if new > old { StepReason::MoreWaterLast } else { StepReason::LessWaterFirst }
}

/// Solids and water of the release agents of a recipe, or of all its other liquids.
fn totals(case: &Case, release: bool) -> (MassRate, MassRate) {
    let ours = |id: LiquidId| {
        let liquids = case.input.liquids.as_slice();
        liquids.iter().any(|liquid| liquid.id == id && (liquid.role == Role::ReleaseAgent) == release)
    };
    // What is sprayed on the faces does not wet the furnish.
    let flows = case.solved.liquids.iter().filter(|flow| !flow.on_faces && ours(flow.id));
    flows.fold((MassRate::ZERO, MassRate::ZERO), |(solids, water), flow| {
        (solids + flow.solids, water + flow.water + flow.thinning)
    })
}
