//! What would help, what to correct, and why a step has its place.

use super::name::{pump_called, range_status};
use crate::domain::line::changeover::Downstream;
use crate::domain::line::step::{Change, Pipe, StepReason};
use crate::domain::line::{Help, PumpAction, PumpCorrection, RangeStatus, Setting, SettingUnit};
use crate::quantity::{Amount, Kind, Moisture};
use crate::ui::text::{LineContext, shown};
use crate::{label, t};
use uom::si::f64::MassRate;

fn fibre(flow: MassRate, context: &LineContext<'_>) -> String {
    shown(Amount::from_base(Kind::FibreFlow, flow.value), &context.plain)
}

fn liquid_flow(flow: MassRate, context: &LineContext<'_>) -> String {
    shown(Amount::from_base(Kind::LiquidFlow, flow.value), &context.plain)
}

fn moisture(moisture: Moisture, context: &LineContext<'_>) -> String {
    shown(Amount::from_base(Kind::Moisture, moisture.dry_basis().value), &context.plain)
}

fn setting(setting: Setting, unit: SettingUnit, context: &LineContext<'_>) -> String {
    shown(setting.amount(unit), &context.plain)
}

pub(super) fn help(help: &Help, context: &LineContext<'_>) -> String {
    match *help {
        Help::TestTo(at, unit) => t!("line-reach-test-to", setting = setting(at, unit, context)),
        Help::Solids(solids) => {
            let solids = Amount::from_base(Kind::Solids, solids.ratio().value);
            t!("line-reach-solids", solids = shown(solids, &context.plain))
        }
        Help::OtherPump(flow) => t!("line-reach-other-pump", flow = liquid_flow(flow, context)),
        Help::FibreAtMost(flow) => t!("line-reach-fibre-most", flow = fibre(flow, context)),
        Help::FibreAtLeast(flow) => t!("line-reach-fibre-least", flow = fibre(flow, context)),
    }
}

/// What to do with a pump, as a sentence to act on.
#[must_use]
pub fn action(correction: &PumpCorrection, context: &LineContext<'_>) -> String {
    let flow = |flow| liquid_flow(flow, context);
    let setting = |to| setting(to, correction.unit, context);
    match correction.action {
        PumpAction::Set { setting: to, status: RangeStatus::Within } => t!("line-action-set", setting = setting(to)),
        PumpAction::Set { setting: to, status } => {
            t!("line-action-set-untested", setting = setting(to), status = range_status(status))
        }
        PumpAction::Keep => t!("line-action-keep"),
        PumpAction::Stop => t!("line-action-stop"),
        PumpAction::CatchTestFirst { metered, by_line } => {
            t!("line-action-catch-test-first", metered = flow(metered), by_line = flow(by_line))
        }
        PumpAction::NoCatchTest => t!("line-action-no-catch-test"),
        PumpAction::Cannot { status } => {
            t!("line-action-cannot", flow = flow(correction.target), status = range_status(status))
        }
        PumpAction::EnterSetting => t!("line-action-enter-setting"),
        PumpAction::NotRead => t!("line-action-not-read"),
        PumpAction::Distrusted => t!("line-action-distrusted"),
        PumpAction::Unsettled => t!("line-action-unsettled"),
    }
}

/// Why a step is where it is, as a sentence.
#[must_use]
pub fn why(why: StepReason) -> &'static str {
    match why {
        StepReason::DrierFibreFirst => label!("line-why-drier-fibre-first"),
        StepReason::LessWaterFirst => label!("line-why-less-water-first"),
        StepReason::ReleaseFirst => label!("line-why-release-first"),
        StepReason::Together => label!("line-why-together"),
        StepReason::ReleaseLast => label!("line-why-release-last"),
        StepReason::MoreWaterLast => label!("line-why-more-water-last"),
        StepReason::MoisterFibreLast => label!("line-why-moister-fibre-last"),
    }
}

/// What changes in a step, as a line to act on.
#[must_use]
pub fn change(change: &Change, context: &LineContext<'_>) -> String {
    match *change {
        Change::FibreMoisture { from, to } => {
            t!("line-change-fibre-moisture", from = moisture(from, context), to = moisture(to, context))
        }
        Change::Fibre { from, to, to_wet } => {
            t!("line-change-fibre", from = fibre(from, context), to = fibre(to, context), belt = fibre(to_wet, context))
        }
        Change::Pump { pump, unit, from, to, setting_from, setting_to, status_to, .. } => {
            let end = |flow: MassRate, at: Option<Setting>| match at {
                _ if flow.value <= 0.0 => t!("line-off"),
                Some(at) => setting(at, unit, context),
                None => liquid_flow(flow, context),
            };
            let (pump, from, to) = (pump_called(pump, context), end(from, setting_from), end(to, setting_to));
            let status = range_status(status_to);
            if status_to == RangeStatus::Within {
                t!("line-change-pump", pump = pump, from = from, to = to)
            } else if status_to.is_allowed() {
                t!("line-change-pump-untested", pump = pump, from = from, to = to, status = status)
            } else {
                t!("line-change-pump-cannot", pump = pump, from = from, to = to, status = status)
            }
        }
    }
}

/// What changes at former or press.
#[must_use]
pub fn downstream(change: &Downstream, context: &LineContext<'_>) -> String {
    let amount = |kind, base| shown(Amount::from_base(kind, base), &context.plain);
    match *change {
        Downstream::MatWeight { from, to } => t!(
            "line-change-mat-weight",
            from = amount(Kind::MatWeight, from.value),
            to = amount(Kind::MatWeight, to.value)
        ),
        Downstream::LineSpeed { from, to } => t!(
            "line-change-line-speed",
            from = amount(Kind::LineSpeed, from.value),
            to = amount(Kind::LineSpeed, to.value)
        ),
        Downstream::PressGap { from, to } => t!(
            "line-change-press-gap",
            from = amount(Kind::Thickness, from.value),
            to = amount(Kind::Thickness, to.value)
        ),
        Downstream::PressTemperature => t!("line-change-press-temperature"),
    }
}

/// What a pipe needs in a changeover.
#[must_use]
pub fn pipe(pipe: Pipe) -> &'static str {
    match pipe {
        Pipe::Fills => label!("line-pipe-fills"),
        Pipe::Flush => label!("line-pipe-flush"),
        Pipe::Displaces => label!("line-pipe-displaces"),
    }
}
