//! What brings the line back to the recipe.
//!
//! A pump that runs at setting n and delivers L is set to n + (L_target − L)/slope: the line of its catch test,
//! shifted through the present point. For a line through the origin the setting is proportional, n·L_target/L.
//! Reading the setting off the catch-test line alone would give the present setting again to a pump that delivers
//! less than that line says.

use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::line_check::actual::{Actual, FlowSource, PumpActual};
use crate::domain::line::line_check::reconcile::quantity::LineQuantity;
use crate::domain::line::line_check::reconcile::verdict::{Doubt, LineReconciliation, LineVerdict};
use crate::domain::line::pumps::curve::Curve;
use crate::domain::line::pumps::dial::{dial, range_status};
use crate::domain::line::pumps::pump::{Pump, PumpId};
use crate::domain::line::pumps::pump_settings::{Bare, bare};
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::line::tanks::feeds::Fed;
use crate::statistics::regression::Model;
use uom::ConstZero;
use uom::si::f64::{ArealMassDensity, MassRate, Ratio, Velocity};

/// What to do with one pump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PumpAction {
    /// Set it to this, rounded to the drive's step.
    Set {
        /// The new setting.
        setting: Setting,
        /// Where it lies: within, below or above what was tested.
        status: RangeStatus,
    },
    /// Nothing: the new setting is the present one.
    Keep,
    /// Stop it: the recipe takes nothing of it.
    Stop,
    /// Run a catch test first: flow meter and catch-test line disagree, so no setting is known.
    CatchTestFirst {
        /// What the flow meter reads.
        metered: MassRate,
        /// What the catch-test line gives at the present setting.
        by_line: MassRate,
    },
    /// Run a catch test first: there is none that counts.
    NoCatchTest,
    /// It cannot deliver the target within the settings allowed.
    Cannot {
        /// On which side.
        status: RangeStatus,
    },
    /// Enter its present setting first: the new one starts from that.
    EnterSetting,
    /// Nothing of it was read.
    NotRead,
    /// Run a catch test first: its flow meter or its catch-test line disagrees with the balances.
    Distrusted,
    /// First find out which reading errs: the correction hangs on it.
    Unsettled,
}

/// The correction of one pump.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PumpCorrection {
    /// The pump.
    pub pump: PumpId,
    /// What it delivers.
    pub fed: Fed,
    /// Where its flow comes from.
    pub source: FlowSource,
    /// What it delivers now.
    pub now: MassRate,
    /// Half of the 95 % interval of that; `None` where the readings could not be reconciled.
    pub half_interval: Option<MassRate>,
    /// Its target at the fibre that runs.
    pub target: MassRate,
    /// target − now.
    pub change: MassRate,
    /// target/now; `None` when it is off.
    pub factor: Option<Ratio>,
    /// The scale of its drive.
    pub unit: SettingUnit,
    /// Its present setting, when that was read.
    pub setting_now: Option<Setting>,
    /// The setting that its target would take from there, whether it is allowed or not.
    pub setting_needed: Option<Setting>,
    /// What to do.
    pub action: PumpAction,
}

/// What to do with the former.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FormerCorrection {
    /// Oven-dry mat weight now.
    pub mat_od: ArealMassDensity,
    /// Target mat weight per mat weight now.
    pub factor: Ratio,
    /// Whether that is within the 95 % interval of the mat weight, so that nothing has to be changed.
    pub keep: bool,
    /// The line speed that was read.
    pub line_speed_now: Option<Velocity>,
    /// The line speed at which this furnish gives the target, v·M/M_target; `None` where no speed was read.
    pub line_speed: Option<Velocity>,
}

/// The corrections of all pumps that the recipe uses, from the reconciled state. `target` is the recipe at the fibre
/// that runs.
pub(super) fn pump_corrections(
    actual: &Actual,
    line: &CheckedLine,
    target: &Case,
    reconciled: Option<&LineReconciliation>,
) -> Vec<PumpCorrection> {
    let one = |run: &PumpActual| {
        let pump = line.pump(run.pump)?;
        let found = reconciled.and_then(|found| found.uncertain(LineQuantity::Meter(run.pump)));
        let found = found.filter(|flow| flow.value >= 0.0);
        let now = found.map_or(run.mass, |flow| si!(MassRate, flow.value));
        let half = found.map(|flow| si!(MassRate, flow.half_interval()));
        let mut correction = pump_correction(pump, run, (now, half), target)?;
        let hangs = matches!(
            correction.action,
            PumpAction::Set { .. } | PumpAction::Keep | PumpAction::Stop | PumpAction::Cannot { .. }
        );
        let is_open = hangs || correction.action == PumpAction::EnterSetting;
        if is_open && reconciled.is_some_and(|found| is_distrusted(found, run)) {
            correction.action = PumpAction::Distrusted;
        } else if hangs && reconciled.is_some_and(|found| is_unsettled(found, run)) {
            correction.action = PumpAction::Unsettled;
        }
        Some(correction)
    };
    actual.pumps.iter().filter_map(one).collect()
}

fn names(doubt: &Doubt, meant: &dyn Fn(LineQuantity) -> bool) -> bool {
    doubt.readings.iter().any(|reading| meant(reading.quantity))
}

/// Whether the flow meter of a pump or its catch-test line may err.
fn is_distrusted(reconciled: &LineReconciliation, run: &PumpActual) -> bool {
    let own = |quantity| match quantity {
        LineQuantity::Meter(pump) | LineQuantity::Volume(pump) | LineQuantity::Setting(pump) => pump == run.pump,
        _ => false,
    };
    reconciled.doubts().iter().any(|doubt| names(doubt, &own))
}

/// Whether the correction of a pump hangs on readings of which one errs, and it is not known which; or on what is known of
/// its liquid, where that errs.
fn is_unsettled(reconciled: &LineReconciliation, run: &PumpActual) -> bool {
    let own = |quantity| match quantity {
        LineQuantity::Solids(id) | LineQuantity::LiquidDensity(id) => run.fed == Fed::Liquid(id),
        _ => false,
    };
    let fibre = |quantity| matches!(quantity, LineQuantity::BeltScale | LineQuantity::FibreMoisture);
    reconciled.verdict == LineVerdict::Unexplained
        || reconciled.doubts().iter().any(|doubt| names(doubt, &own) || (doubt.is_open() && names(doubt, &fibre)))
}

/// The correction of a pump that delivers `now`, with half of its 95 % interval.
fn pump_correction(
    pump: &Pump,
    run: &PumpActual,
    (now, half_interval): (MassRate, Option<MassRate>),
    target: &Case,
) -> Option<PumpCorrection> {
    let bare = bare(pump, run.fed, target)?;
    let is_read = run.source != FlowSource::Assumed;
    let needed = bare.curve.zip(run.setting).filter(|_| is_read && bare.mass > MassRate::ZERO);
    let setting_needed = needed.and_then(|(curve, present)| corrected(&curve, present, now, bare.mass));
    Some(PumpCorrection {
        pump: run.pump,
        fed: run.fed,
        source: run.source,
        now,
        half_interval,
        target: bare.mass,
        change: bare.mass - now,
        factor: (now > MassRate::ZERO).then(|| bare.mass / now),
        unit: pump.unit,
        setting_now: run.setting,
        setting_needed,
        action: action(pump, run, (now, half_interval), &bare, setting_needed),
    })
}

fn action(
    pump: &Pump,
    run: &PumpActual,
    (now, half_interval): (MassRate, Option<MassRate>),
    bare: &Bare,
    needed: Option<Setting>,
) -> PumpAction {
    if bare.mass <= MassRate::ZERO {
        return if now > MassRate::ZERO && run.source != FlowSource::Assumed {
            PumpAction::Stop
        } else {
            PumpAction::Keep
        };
    }
    if run.source == FlowSource::Assumed {
        return PumpAction::NotRead;
    }
    if let (Some(false), Some(metered), Some(by_line)) = (run.agrees(), run.metered, run.by_line) {
        return PumpAction::CatchTestFirst { metered, by_line };
    }
    // A change that is smaller than what is known of the flow may as well make it worse.
    if half_interval.is_some_and(|half| (bare.mass - now).abs() <= half) {
        return PumpAction::Keep;
    }
    let Some(curve) = bare.curve else { return PumpAction::NoCatchTest };
    let Some(present) = run.setting else { return PumpAction::EnterSetting };
    let Some(setting) = needed else {
        return PumpAction::Cannot { status: RangeStatus::BelowLimit };
    };
    let status = range_status(pump, &curve, setting);
    match dial(pump, setting, status) {
        None => PumpAction::Cannot { status },
        Some(setting) if (setting.0 - present.0).abs() < 0.5 * pump.step.0 => PumpAction::Keep,
        Some(setting) => PumpAction::Set { setting, status },
    }
}

/// The setting for a target from the present point; for a pump that is off, the one of its line. `None` below zero.
fn corrected(curve: &Curve, present: Setting, now: MassRate, target: MassRate) -> Option<Setting> {
    if now <= MassRate::ZERO {
        return curve.setting(target);
    }
    let setting = match curve.fit.model {
        Model::ThroughOrigin => present.0 * (target / now).value,
        Model::WithIntercept => present.0 + ((target - now) / curve.slope()).value,
    };
    (setting.is_finite() && setting >= 0.0).then_some(Setting(setting))
}

/// The correction of the former, from the mat sample and the line speed that was read, both reconciled. `None` without a
/// mat sample, or where it is not known which reading of the mat errs.
pub(super) fn former_correction(
    actual: &Actual,
    case: &Case,
    reconciled: Option<&LineReconciliation>,
) -> Option<FormerCorrection> {
    let read = actual.mat_od?;
    let open = |quantities: &[LineQuantity]| {
        reconciled.is_some_and(|found| {
            let open = |doubt: &Doubt| doubt.is_open() && quantities.iter().any(|quantity| doubt.names(*quantity));
            found.verdict == LineVerdict::Unexplained || found.doubts().iter().any(open)
        })
    };
    if open(&[LineQuantity::MatMass, LineQuantity::MatMoisture, LineQuantity::BoardMass]) {
        return None;
    }
    let reconciled_mat = reconciled.and_then(LineReconciliation::mat_od).filter(|mat| mat.value > 0.0);
    let mat_od = reconciled_mat.map_or(read, |mat| si!(ArealMassDensity, mat.value));
    let factor: Ratio = case.solved.mat.od / mat_od;
    let missing = (case.solved.mat.od - mat_od).abs();
    let keep = reconciled_mat.is_some_and(|mat| missing.value <= mat.half_interval());
    let reconciled_speed = reconciled.and_then(|found| found.value(LineQuantity::LineSpeed));
    let line_speed_now = actual.line_speed.filter(|_| !open(&[LineQuantity::LineSpeed]));
    let line_speed_now = line_speed_now.map(|read| reconciled_speed.map_or(read, |speed| si!(Velocity, speed)));
    let line_speed = line_speed_now.map(|speed| speed / factor).filter(|speed| speed.is_finite());
    factor.is_finite().then_some(FormerCorrection { mat_od, factor, keep, line_speed_now, line_speed })
}
