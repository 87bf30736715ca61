//! Findings at the line: what happened, and how to fix it.

use super::name::{range_status as standing_called, tank_called};
use super::reason::help as help_told;
use crate::domain::line::limit::limit;
use crate::domain::line::{Help, LineFinding, LineFindingKind, LinePlace, RangeStatus};
use crate::quantity::Amount;
use crate::ui::text::words::finding::loose_entry;
use crate::ui::text::{LineContext, Loose, Message, shown, trimmed_to, unit_shown};

pub(super) fn finding(finding: &LineFinding, context: &LineContext<'_>) -> Message {
    let place = super::place::place(finding.place, context);
    if let (LineFindingKind::Entry(what), LinePlace::Field(field)) = (&finding.what, finding.place) {
        let typed = context.book.entry(field).map_or("", |entry| entry.text.as_str());
        let loose = Loose { name: &place, typed, kind: context.book.kind(field), limit: limit(field, context.book) };
        return loose_entry(what, &loose, &context.plain);
    }
    let (what, fix) = told(finding, context);
    Message { what: format!("{place}: {what}"), fix }
}

fn told(finding: &LineFinding, context: &LineContext<'_>) -> (String, String) {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let (what, fix): (String, &str) = match &finding.what {
        LineFindingKind::OutOfReach { range_status, setting, least_fibre, most_fibre, help } => {
            return out_of_reach(*range_status, *setting, (*least_fibre, *most_fibre), help, context);
        }
        LineFindingKind::AboveTank { tank, most } => {
            return (
                format!("more than {} holds, {}.", tank_called(*tank, context), amount(*most)),
                "Check the mass and its unit, and the volume of the tank.".to_owned(),
            );
        }
        LineFindingKind::FewRows { rows, least } => {
            return (
                format!("{rows} of the {least} catches that a valid test needs."),
                format!(
                    "Make {least} catches or more at two settings at least, spread over those that the line runs at."
                ),
            );
        }
        LineFindingKind::CatchIncomplete => {
            return (
                "incomplete, so it does not count yet.".to_owned(),
                "Enter setting, time and gross mass.".to_owned(),
            );
        }
        LineFindingKind::TooManySteps { most } => {
            return (
                format!("gives more than the {most} that a settings table holds."),
                "Enter a larger step.".to_owned(),
            );
        }
        LineFindingKind::Entry(_) => ("this entry cannot be used.".to_owned(), "Enter it again."),
        LineFindingKind::SettingsNotIncreasing { before } => (
            format!("below {}, the setting of the catch before.", amount(*before)),
            "Check for a slip. If the catches were made in this order, leave it: the line is the same.",
        ),
        LineFindingKind::NegativeMass { net } => (
            format!("less than the empty vessel, by {}.", amount(Amount { base: -net.base, ..*net })),
            "Check both masses and their units. Leave the vessel blank when the scale was set to zero with it.",
        ),
        LineFindingKind::OneSetting => (
            "all catches are at one setting, so no line can be fitted.".to_owned(),
            "Catch at a second setting at least, far from the first.",
        ),
        LineFindingKind::FlowNotIncreasing => (
            "more setting does not give more flow.".to_owned(),
            "Check the catches for a slip, and the pump for a blocked line or air.",
        ),
        LineFindingKind::Suspect { studentised, from } => {
            let mark = context.plain.units.mark;
            (
                format!(
                    "far off the line through the others: {} times its scatter, where {} is rare.",
                    trimmed_to(studentised.base.abs(), 3, mark),
                    trimmed_to(from.base, 3, mark)
                ),
                "It still counts. Check it for a slip, catch again, or exclude it.",
            )
        }
        LineFindingKind::NotCalibrated => (
            "no catch test that counts, so no setting is known.".to_owned(),
            "Run a catch test, three catches at least.",
        ),
        LineFindingKind::FaultyTest => (
            "its catch test cannot be used yet.".to_owned(),
            "Fix what is marked in the test: a density, a catch, or too few catches.",
        ),
        LineFindingKind::NotWhole => ("not a whole number.".to_owned(), "Enter the count of nozzles, such as 8."),
        LineFindingKind::LimitsCrossed => {
            ("not above the lowest setting.".to_owned(), "Enter a highest setting above the lowest one.")
        }
        LineFindingKind::WindowCrossed => {
            ("not above the minimum flow of a nozzle.".to_owned(), "Enter a maximum flow above the minimum.")
        }
        LineFindingKind::NozzlesIncomplete => (
            "missing, so the nozzles cannot be computed.".to_owned(),
            "Enter number, minimum and maximum flow of the nozzles, or leave all three blank.",
        ),
        LineFindingKind::SamePumpName => {
            ("two pumps of this name.".to_owned(), "Rename one, so that nobody at the line mixes them up.")
        }
        LineFindingKind::SharesNotWhole { sum } => (
            format!("the pumps of this liquid deliver {} of its flow together.", amount(*sum)),
            "Enter shares that add up to 100 %.",
        ),
        LineFindingKind::NoPumps => {
            ("no pumps yet.".to_owned(), "Add a pump for each liquid and for the water, and run a catch test on each.")
        }
        LineFindingKind::NoRecipe => (
            "the open recipe cannot be computed, so there is nothing to set.".to_owned(),
            "Fix what the recipe page marks, or open another recipe.",
        ),
        LineFindingKind::NoFibreFlow => {
            ("the recipe has no fibre flow.".to_owned(), "Select how the fibre flow is fixed on the recipe page.")
        }
        LineFindingKind::NoPump => (
            "the recipe doses it, and no pump delivers it.".to_owned(),
            "Add a pump for it, or assign one to it. Pumps know liquids by their names.",
        ),
        LineFindingKind::NotInRecipe => (
            "what it delivers is not in this recipe.".to_owned(),
            "Leave it off, or assign it to a liquid of the recipe that has another name here.",
        ),
        LineFindingKind::NozzlesTooFew { each, most } => (
            format!("with all nozzles open each sprays {}, above its {}.", amount(*each), amount(*most)),
            "Fit more nozzles or larger ones, or lower the flow.",
        ),
        LineFindingKind::NozzlesTooMany { each, least } => (
            format!("a single open nozzle sprays {}, below its {}.", amount(*each), amount(*least)),
            "Use smaller nozzles, or close some of them.",
        ),
        LineFindingKind::NozzlesBetween { open } => (
            format!("with {open} open each nozzle sprays too much, with {} too little.", open + 1),
            "Use nozzles with a wider range, or change the flow a little.",
        ),
        LineFindingKind::OverFull => {
            ("holds more than it can.".to_owned(), "Check the content, its unit, and the volume of the tank.")
        }
        LineFindingKind::TankEmpty => {
            ("nothing in it can be pumped out.".to_owned(), "Fill it, or check the content that was typed.")
        }
        LineFindingKind::HeelTooLarge => {
            ("as large as the whole tank.".to_owned(), "Enter the volume below the outlet, smaller than the tank.")
        }
        LineFindingKind::OrderOverdue { by, at_most } => {
            let lower = lower_its_use(*at_most, context);
            return (format!("the order is overdue by {}.", to_three(*by, context)), format!("Order now. {lower}"));
        }
        LineFindingKind::DeliveryLate { by, at_most } => {
            let what = format!("runs empty {} before its delivery comes.", to_three(*by, context));
            return (what, lower_its_use(*at_most, context));
        }
        LineFindingKind::StaleReadings { recipe } => (
            format!("these readings were made on “{recipe}”, before the changeover."),
            "Read the line again on the recipe that runs now.",
        ),
        LineFindingKind::OtherRecipe { recipe } => {
            (format!("belt scale and fibre moisture were entered on “{recipe}”."), "Measure again, or clear them.")
        }
        LineFindingKind::NoBalance => (
            "the recipe cannot be computed at this belt scale and fibre moisture.".to_owned(),
            "Check both entries, or clear them.",
        ),
        LineFindingKind::SampleIncomplete => {
            ("missing, so the sample cannot be used.".to_owned(), "Enter area and mass of the sample, or clear it.")
        }
        LineFindingKind::Assumed => (
            "not read, and taken to run as the recipe wants.".to_owned(),
            "Enter its flow or its setting to see the actual dose.",
        ),
        LineFindingKind::RangeCrossed => {
            ("below the first value.".to_owned(), "Enter a last value above the first one.")
        }
        LineFindingKind::NoTransport => (
            "still empty, and the arrivals behind it are not known.".to_owned(),
            "Time it once, with a marked piece of furnish or by the speed of the conveyors.",
        ),
        LineFindingKind::NoPressTime => {
            ("the time through the press is not known.".to_owned(), "Enter mat width and press length in the recipe.")
        }
        LineFindingKind::NothingChanges => {
            ("both recipes take the same of every pump.".to_owned(), "Choose another recipe to change to.")
        }
        LineFindingKind::WetBetween { moisture } => (
            format!("between two steps the mat is at {}, moister than both recipes want.", amount(*moisture)),
            "Lower the water before, and watch the press for steam.",
        ),
        LineFindingKind::NoExpansion => (
            "still empty, so the density is taken as measured.".to_owned(),
            "Enter the expansion from the data sheet, or the density at the pump's temperature.",
        ),
        LineFindingKind::NothingDelivered => (
            "nothing of the certificate is entered.".to_owned(),
            "Enter its solids or its density to see what changes.",
        ),
        LineFindingKind::NoLiquid => (
            "the liquid of the delivery is not chosen, or not in this recipe.".to_owned(),
            "Choose a liquid of the recipe.",
        ),
    };
    (what, fix.to_owned())
}

/// To three digits: nobody knows the content of a tank better.
fn to_three(amount: Amount, context: &LineContext<'_>) -> String {
    let unit = context.plain.units.unit(amount.kind);
    let number = trimmed_to(amount.get(unit), 3, context.plain.units.mark);
    format!("{number}\u{a0}{}", unit_shown(unit, context.plain.currency))
}

fn lower_its_use(at_most: Option<Amount>, context: &LineContext<'_>) -> String {
    match at_most {
        Some(flow) if flow.base > 0.0 => format!("To last, use at most {}.", to_three(flow, context)),
        _ => "Lower its use until the delivery comes.".to_owned(),
    }
}

fn out_of_reach(
    range_status: RangeStatus,
    setting: Option<Amount>,
    (least, most): (Option<Amount>, Option<Amount>),
    help: &[Help],
    context: &LineContext<'_>,
) -> (String, String) {
    let amount = |amount: Amount| shown(amount, &context.plain);
    let at = match setting {
        Some(setting) => format!("the flow takes a setting of {}, {}.", amount(setting), standing_called(range_status)),
        None => "the flow is below what it gives at a setting of zero.".to_owned(),
    };
    let serves = match (least, most) {
        (Some(least), Some(most)) => {
            format!(" It serves fibre flows from {} to {}, oven-dry.", amount(least), amount(most))
        }
        _ => String::new(),
    };
    let help: Vec<String> = help.iter().map(|help| help_told(help, context)).collect();
    let fix = match help[..] {
        [] => "Run a catch test, or use another pump.".to_owned(),
        [ref one] => one.clone(),
        _ => format!("One of these helps. {}", help.join(" ")),
    };
    (at + &serves, fix)
}
