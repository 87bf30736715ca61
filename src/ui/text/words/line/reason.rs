//! What would help, what to correct, and why a step has its place.

use super::name::{pump_called, range_status};
use crate::domain::line::changeover::Downstream;
use crate::domain::line::step::{Change, Pipe, StepReason};
use crate::domain::line::{Help, PumpAction, PumpCorrection, RangeStatus, Setting, SettingUnit};
use crate::quantity::{Amount, Kind, Moisture};
use crate::ui::text::{LineContext, shown};
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
        Help::TestTo(at, unit) => {
            format!("Run catch tests as far as {}, so that it lies within what was tested.", setting(at, unit, context))
        }
        Help::Solids(solids) => {
            let solids = Amount::from_base(Kind::Solids, solids.ratio().value);
            format!("Use the liquid with {} solids.", shown(solids, &context.plain))
        }
        Help::OtherPump(flow) => {
            format!("Use a pump that delivers {} well within its settings.", liquid_flow(flow, context))
        }
        Help::FibreAtMost(flow) => format!("Run at most {} of fibre, oven-dry.", fibre(flow, context)),
        Help::FibreAtLeast(flow) => format!("Run at least {} of fibre, oven-dry.", fibre(flow, context)),
    }
}

/// What to do with a pump, as a sentence to act on.
pub(super) fn action(correction: &PumpCorrection, context: &LineContext<'_>) -> String {
    let flow = |flow| liquid_flow(flow, context);
    match correction.action {
        PumpAction::Set { setting: to, status: RangeStatus::Within } => {
            format!("Set to {}.", setting(to, correction.unit, context))
        }
        PumpAction::Set { setting: to, status } => {
            format!("Set to {}, {}.", setting(to, correction.unit, context), range_status(status))
        }
        PumpAction::Keep => "No change.".to_owned(),
        PumpAction::Stop => "Stop it: the recipe takes none of it.".to_owned(),
        PumpAction::CatchTestFirst { metered, by_line } => format!(
            "Catch test first: the flow meter reads {}, the catch-test line gives {} at this setting.",
            flow(metered),
            flow(by_line)
        ),
        PumpAction::NoCatchTest => "Catch test first: there is none that counts.".to_owned(),
        PumpAction::Cannot { status } => {
            format!("Cannot deliver {}: {}.", flow(correction.target), range_status(status))
        }
        PumpAction::EnterSetting => "Enter the present setting: the new one starts from it.".to_owned(),
        PumpAction::NotRead => "Not read. Enter flow meter and setting.".to_owned(),
        PumpAction::Distrusted => "Catch test first: its readings disagree with the others.".to_owned(),
        PumpAction::Unsettled => "First find out which reading is wrong.".to_owned(),
    }
}

pub(super) fn why(why: StepReason) -> &'static str {
    match why {
        StepReason::DrierFibreFirst => {
            "Drier fibre first: the dryer takes longest, and drier fibre cannot make the mat too wet."
        }
        StepReason::LessWaterFirst => {
            "Less water first: a mat too wet can burst as it leaves the press. A drier mat is less likely to, though an \
             undercured core can open at the outfeed."
        }
        StepReason::ReleaseFirst => "Release agent on first, before the binder that would stick to the press.",
        StepReason::Together => {
            "Fibre and binders at one moment: two binders at once bring the water of both, none at all leaves the board \
             unbound."
        }
        StepReason::ReleaseLast => "Release agent off only after the binder that would stick.",
        StepReason::MoreWaterLast => "More water last: only the new furnish can take it.",
        StepReason::MoisterFibreLast => "Moister fibre last: only the new furnish can take its water.",
    }
}

pub(super) fn change(change: &Change, context: &LineContext<'_>) -> String {
    match *change {
        Change::FibreMoisture { from, to } => {
            format!("Fibre moisture: from {} to {}", moisture(from, context), moisture(to, context))
        }
        Change::Fibre { from, to, to_wet } => format!(
            "Fibre flow: from {} to {} oven-dry; the belt scale then reads {}",
            fibre(from, context),
            fibre(to, context),
            fibre(to_wet, context)
        ),
        Change::Pump { pump, unit, from, to, setting_from, setting_to, status_to, .. } => {
            let end = |flow: MassRate, at: Option<Setting>| match at {
                _ if flow.value <= 0.0 => "off".to_owned(),
                Some(at) => setting(at, unit, context),
                None => liquid_flow(flow, context),
            };
            let mark = match status_to {
                RangeStatus::Within => String::new(),
                status if status.is_allowed() => format!(", {}", range_status(status)),
                status => format!(", which it cannot deliver: {}", range_status(status)),
            };
            format!("{}: from {} to {}{mark}", pump_called(pump, context), end(from, setting_from), end(to, setting_to))
        }
    }
}

/// What changes at former or press.
pub(super) fn downstream(change: &Downstream, context: &LineContext<'_>) -> String {
    let amount = |kind, base| shown(Amount::from_base(kind, base), &context.plain);
    match *change {
        Downstream::MatWeight { from, to } => format!(
            "Mat weight, wet: from {} to {}",
            amount(Kind::MatWeight, from.value),
            amount(Kind::MatWeight, to.value)
        ),
        Downstream::LineSpeed { from, to } => {
            format!("Line speed: from {} to {}", amount(Kind::LineSpeed, from.value), amount(Kind::LineSpeed, to.value))
        }
        Downstream::PressGap { from, to } => format!(
            "Press gap or stops, for a pressed thickness: from {} to {}",
            amount(Kind::Thickness, from.value),
            amount(Kind::Thickness, to.value)
        ),
        Downstream::PressTemperature => {
            "Press temperature: set it for the new binder, as its data sheet and the mill's own record say".to_owned()
        }
    }
}

pub(super) fn pipe(pipe: Pipe) -> &'static str {
    match pipe {
        Pipe::Fills => "The pipe fills before anything is sprayed.",
        Pipe::Flush => {
            "Flush the pipe with what the liquid's safety data sheet allows, so that nothing cures in it. Never water \
             for an isocyanate."
        }
        Pipe::Displaces => "What is in the pipe has to leave first.",
    }
}
