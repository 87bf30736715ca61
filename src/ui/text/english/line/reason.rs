//! What would help, who may be to blame, and why a step stands where it stands.

use super::name::{fed as fed_called, pump_called};
use crate::domain::line::step::{Change, Pipe, Why};
use crate::domain::line::{Culprit, Fed, Help, PumpId, Setting, SettingUnit};
use crate::quantity::{Amount, Kind, Moisture};
use crate::ui::text::{LineContext, Message, shown, trimmed_to};
use uom::si::f64::{MassRate, Ratio};

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
            format!("Take the liquid with {} solids.", shown(solids, &context.plain))
        }
        Help::OtherPump(flow) => {
            format!("Use a pump that delivers {} well within its settings.", liquid_flow(flow, context))
        }
        Help::FibreAtMost(flow) => format!("Run at most {} of fibre, oven-dry.", fibre(flow, context)),
        Help::FibreAtLeast(flow) => format!("Run at least {} of fibre, oven-dry.", fibre(flow, context)),
    }
}

/// How far something is off: "8.1 % too much".
fn off(by: Ratio, context: &LineContext<'_>) -> String {
    let percent = trimmed_to(100.0 * by.value.abs(), 2, context.plain.units.mark);
    format!("{percent}\u{a0}% {}", if by.value > 0.0 { "too much" } else { "too little" })
}

fn side(by: Ratio) -> &'static str {
    if by.value > 0.0 { "high" } else { "low" }
}

pub(super) fn culprit(culprit: &Culprit, context: &LineContext<'_>) -> Message {
    let (what, mend) = match *culprit {
        Culprit::MoistureReading { shift, read, implied } => (
            if shift.value == 0.0 {
                format!(
                    "Fibre moisture: the mat sample fits a fibre of {}, not the {} that was read.",
                    moisture(implied, context),
                    moisture(read, context)
                )
            } else {
                format!(
                    "Fibre moisture: all doses are {} too {} alike, and the mat sample fits a fibre of {}, not the {} \
                     that was read.",
                    percent(shift, context),
                    side(shift),
                    moisture(implied, context),
                    moisture(read, context)
                )
            },
            "Check the moisture meter against a sample dried in the oven, before any pump is trimmed.".to_owned(),
        ),
        Culprit::FibreFlow { shift, explained_by } => (
            format!("Fibre flow: all doses are {} too {} alike.", percent(shift, context), side(shift)),
            match explained_by {
                Some(explaining) => format!(
                    "Check the belt scale and the moisture reading first: a fibre moisture of {} would explain it \
                     alone. One pump does not shift all doses.",
                    moisture(explaining, context)
                ),
                None => "Check the belt scale first: no fibre moisture explains it alone, and one pump does not shift \
                         all doses."
                    .to_owned(),
            },
        ),
        Culprit::Flow { fed, pump, by } => (
            format!("{}: {} against the others.", fed_called(fed, context.plain.draft), off(by, context)),
            flow_mend(fed, pump, context),
        ),
        Culprit::Former { by } => (
            format!("Mat weight: {}.", off(by, context)),
            "Check former and line speed, and that the sample was cut to its area. Doses change it little.".to_owned(),
        ),
        Culprit::WayToFormer { by } => (
            format!(
                "Mat moisture: the sample is {} points {} than the flows say.",
                trimmed_to(100.0 * by.value.abs(), 2, context.plain.units.mark),
                if by.value > 0.0 { "moister" } else { "drier" }
            ),
            "Check the drying loss of the recipe and how long the sample lay before it was weighed.".to_owned(),
        ),
    };
    Message { what, mend }
}

fn percent(share: Ratio, context: &LineContext<'_>) -> String {
    format!("{}\u{a0}%", trimmed_to(100.0 * share.value.abs(), 2, context.plain.units.mark))
}

fn flow_mend(fed: Fed, pump: Option<PumpId>, context: &LineContext<'_>) -> String {
    let which = pump.map_or_else(|| "its pumps".to_owned(), |pump| pump_called(pump, context));
    match fed {
        Fed::Water => format!("Check {which} with filter and flow meter, then trim it."),
        Fed::Liquid(_) | Fed::Thinning(_) => {
            format!("Check {which} with filter, nozzles and flow meter, and run a catch test before it is trimmed.")
        }
    }
}

pub(super) fn why(why: Why) -> &'static str {
    match why {
        Why::DrierFibreFirst => {
            "Drier fibre first: the dryer takes longest, and drier fibre cannot make the mat too wet."
        }
        Why::LessWaterFirst => {
            "Less water first: a mat too wet can burst as it leaves the press. A drier mat is less likely to, though an \
             undercured core can open at the outfeed."
        }
        Why::ReleaseFirst => "Release agent on first, before the binder that would stick to the press.",
        Why::Together => {
            "Fibre and binders at one moment: two binders at once bring the water of both, none at all leaves the board \
             unbound."
        }
        Why::ReleaseLast => "Release agent off only after the binder that would stick.",
        Why::MoreWaterLast => "More water last: only the new furnish can take it.",
        Why::MoisterFibreLast => "Moister fibre last: only the new furnish can take its water.",
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
        Change::Pump { pump, unit, from, to, setting_from, setting_to, .. } => {
            let end = |flow: MassRate, at: Option<Setting>| match at {
                _ if flow.value <= 0.0 => "off".to_owned(),
                Some(at) => setting(at, unit, context),
                None => liquid_flow(flow, context),
            };
            format!("{}: from {} to {}", pump_called(pump, context), end(from, setting_from), end(to, setting_to))
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
