//! Findings at the line: what happened, and how to fix it.

use super::name::{range_status as range_status_called, tank_called};
use super::reason::help as help_told;
use crate::domain::line::limit::limit;
use crate::domain::line::{Help, LineFinding, LineFindingKind, LinePlace, RangeStatus};
use crate::quantity::Amount;
use crate::ui::text::words::finding::loose_entry;
use crate::ui::text::{LineContext, Loose, Message, shown, trimmed_to, unit_shown};
use crate::{t, told};

/// What was found, and how to fix it.
#[must_use]
pub fn finding(finding: &LineFinding, context: &LineContext<'_>) -> Message {
    let place = super::place::place(finding.place, context);
    if let (LineFindingKind::Entry(what), LinePlace::Field(field)) = (&finding.what, finding.place) {
        let typed = context.book.entry(field).map_or("", |entry| entry.text.as_str());
        let loose = Loose { name: &place, typed, kind: context.book.kind(field), limit: limit(field, context.book) };
        return loose_entry(what, &loose, &context.plain);
    }
    let Message { what, fix } = of_kind(&finding.what, context);
    Message { what: format!("{place}: {what}"), fix }
}

fn of_kind(kind: &LineFindingKind, context: &LineContext<'_>) -> Message {
    let amount = |amount: &Amount| shown(*amount, &context.plain);
    match kind {
        LineFindingKind::Entry(_) => told!("line-finding-entry"),
        LineFindingKind::SettingsNotIncreasing { before } => {
            told!("line-finding-settings-not-increasing", before = amount(before))
        }
        LineFindingKind::NegativeMass { net } => {
            told!("line-finding-negative-mass", by = amount(&Amount { base: -net.base, ..*net }))
        }
        LineFindingKind::AboveTank { tank, most } => {
            told!("line-finding-above-tank", tank = tank_called(*tank, context), most = amount(most))
        }
        LineFindingKind::CatchIncomplete => told!("line-finding-catch-incomplete"),
        LineFindingKind::FewRows { rows, least } => {
            told!("line-finding-few-catches", count = *rows, least = *least)
        }
        LineFindingKind::OneSetting => told!("line-finding-one-setting"),
        LineFindingKind::FlowNotIncreasing => told!("line-finding-flow-not-increasing"),
        LineFindingKind::Suspect { studentised, from } => {
            let number = |value: f64| trimmed_to(value, 3, context.plain.units.mark);
            told!("line-finding-suspect", times = number(studentised.base.abs()), limit = number(from.base))
        }
        LineFindingKind::NotCalibrated => told!("line-finding-not-calibrated"),
        LineFindingKind::FaultyTest => told!("line-finding-faulty-test"),
        LineFindingKind::NotWhole => told!("line-finding-not-whole"),
        LineFindingKind::LimitsCrossed => told!("line-finding-limits-crossed"),
        LineFindingKind::WindowCrossed => told!("line-finding-window-crossed"),
        LineFindingKind::NozzlesIncomplete => told!("line-finding-nozzles-incomplete"),
        LineFindingKind::SamePumpName => told!("line-finding-same-name"),
        LineFindingKind::SharesNotWhole { sum } => told!("line-finding-shares", sum = amount(sum)),
        LineFindingKind::NoPumps => told!("line-finding-no-pumps"),
        LineFindingKind::NoRecipe => told!("line-finding-no-recipe"),
        LineFindingKind::NoFibreFlow => told!("line-finding-no-fibre-flow"),
        LineFindingKind::NoPump => told!("line-finding-no-pump"),
        LineFindingKind::NotInRecipe => told!("line-finding-not-in-recipe"),
        LineFindingKind::OutOfReach { range_status, setting, least_fibre, most_fibre, help } => {
            out_of_reach(*range_status, *setting, (*least_fibre, *most_fibre), help, context)
        }
        LineFindingKind::NozzlesTooFew { each, most } => {
            told!("line-finding-nozzles-too-few", each = amount(each), most = amount(most))
        }
        LineFindingKind::NozzlesTooMany { each, least } => {
            told!("line-finding-nozzles-too-many", each = amount(each), least = amount(least))
        }
        LineFindingKind::NozzlesBetween { open } => {
            told!("line-finding-nozzles-between", open = *open, more = open + 1)
        }
        LineFindingKind::OverFull => told!("line-finding-over-full"),
        LineFindingKind::TankEmpty => told!("line-finding-tank-empty"),
        LineFindingKind::HeelTooLarge => told!("line-finding-heel-too-large"),
        LineFindingKind::OrderOverdue { by, at_most } => {
            told!("line-finding-order-overdue", by = to_three(*by, context), lower = lower_its_use(*at_most, context))
        }
        LineFindingKind::DeliveryLate { by, at_most } => {
            told!("line-finding-delivery-late", by = to_three(*by, context), lower = lower_its_use(*at_most, context))
        }
        LineFindingKind::StaleReadings { recipe } => {
            told!("line-finding-stale-readings", recipe = recipe.as_str())
        }
        LineFindingKind::OtherRecipe { recipe } => told!("line-finding-other-recipe", recipe = recipe.as_str()),
        LineFindingKind::NoBalance => told!("line-finding-no-balance"),
        LineFindingKind::SampleIncomplete => told!("line-finding-sample-incomplete"),
        LineFindingKind::Assumed => told!("line-finding-assumed"),
        LineFindingKind::RangeCrossed => told!("line-finding-range-crossed"),
        LineFindingKind::TooManySteps { most } => told!("line-finding-too-many-steps", most = *most),
        LineFindingKind::NoTransport => told!("line-finding-no-transport"),
        LineFindingKind::NoPressTime => told!("line-finding-no-press-time"),
        LineFindingKind::NothingChanges => told!("line-finding-nothing-changes"),
        LineFindingKind::WetBetween { moisture } => told!("line-finding-wet-between", moisture = amount(moisture)),
        LineFindingKind::NoExpansion => told!("line-finding-no-expansion"),
        LineFindingKind::NothingDelivered => told!("line-finding-nothing-delivered"),
        LineFindingKind::NoLiquid => told!("line-finding-no-liquid"),
    }
}

/// To three digits: nobody knows the content of a tank better.
fn to_three(amount: Amount, context: &LineContext<'_>) -> String {
    let unit = context.plain.units.unit(amount.kind);
    let number = trimmed_to(amount.get(unit), 3, context.plain.units.mark);
    format!("{number}\u{a0}{}", unit_shown(unit, context.plain.currency))
}

fn lower_its_use(at_most: Option<Amount>, context: &LineContext<'_>) -> String {
    match at_most {
        Some(flow) if flow.base > 0.0 => t!("line-lower-use-to", flow = to_three(flow, context)),
        _ => t!("line-lower-use"),
    }
}

fn out_of_reach(
    range_status: RangeStatus,
    setting: Option<Amount>,
    (least, most): (Option<Amount>, Option<Amount>),
    help: &[Help],
    context: &LineContext<'_>,
) -> Message {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let at = match setting {
        Some(setting) => {
            t!("line-reach-setting", setting = amount(setting), status = range_status_called(range_status))
        }
        None => t!("line-reach-below-zero"),
    };
    let what = match (least, most) {
        (Some(least), Some(most)) => {
            format!("{at} {}", t!("line-reach-serves", least = amount(least), most = amount(most)))
        }
        _ => at,
    };
    let help: Vec<String> = help.iter().map(|help| help_told(help, context)).collect();
    let fix = match help[..] {
        [] => t!("line-reach-no-help"),
        [ref one] => one.clone(),
        _ => t!("line-reach-several", all = help.join(" ")),
    };
    Message { what, fix }
}
