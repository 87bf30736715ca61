//! What the readings of a shift or a week say together.

use super::figure::points;
use super::name::period_liquid;
use crate::domain::line::period::PeriodDrift;
use crate::domain::line::{PeriodBalance, PeriodQuantity};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{LineContext, Message, lower_first, symbol_shown, trimmed_to};

fn quantity(quantity: PeriodQuantity, context: &LineContext<'_>) -> String {
    let of = |what: &str, id| format!("{what} of {}", period_liquid(id, context.book));
    match quantity {
        PeriodQuantity::Belt => "Belt scale".to_owned(),
        PeriodQuantity::FibreMoisture => "Fibre moisture".to_owned(),
        PeriodQuantity::Boards => "Raw-board mass".to_owned(),
        PeriodQuantity::BoardMoisture => "Raw-board moisture".to_owned(),
        PeriodQuantity::Start(id) => of("Start dip", id),
        PeriodQuantity::Delivered(id) => of("Delivery", id),
        PeriodQuantity::End(id) => of("End dip", id),
        PeriodQuantity::Metered(id) => of("Flow meter", id),
        PeriodQuantity::Solids(id) => of("Solids content", id),
    }
}

/// "the flow meter of pMDI reads 8 % low", "the start dip of pMDI is 220 kg low".
fn one(drift: &PeriodDrift, context: &LineContext<'_>) -> String {
    let name = lower_first(&quantity(drift.quantity, context));
    let error = drift.read - drift.estimate;
    let side = if error > 0.0 { "high" } else { "low" };
    let mark = context.plain.units.mark;
    let mass = || {
        let unit = context.plain.units.unit(Kind::BatchMass);
        let amount = Amount::from_base(Kind::BatchMass, error.abs());
        format!("{}\u{a0}{}", trimmed_to(amount.get(unit), 3, mark), symbol_shown(unit))
    };
    let size = match drift.quantity {
        PeriodQuantity::Start(_) | PeriodQuantity::End(_) | PeriodQuantity::Delivered(_) => {
            return format!("the {name} is {} {side}", mass());
        }
        PeriodQuantity::FibreMoisture | PeriodQuantity::BoardMoisture => {
            let unit = context.plain.units.unit(Kind::Moisture);
            let base = |value| Amount::from_base(Kind::Moisture, value).get(unit);
            let by = base(drift.read) - base(drift.estimate);
            format!("{} {}", trimmed_to(by.abs(), 2, mark), points(unit))
        }
        PeriodQuantity::Solids(_) => format!("{} points", trimmed_to(100.0 * error.abs(), 2, mark)),
        PeriodQuantity::Belt | PeriodQuantity::Boards | PeriodQuantity::Metered(_) => {
            format!("{}\u{a0}%", trimmed_to(100.0 * drift.error().abs(), 2, mark))
        }
    };
    format!("the {name} reads {size} {side}")
}

fn remedy(quantity: PeriodQuantity, context: &LineContext<'_>) -> String {
    match quantity {
        PeriodQuantity::Belt => "Check the zero and the calibration of the belt scale.".to_owned(),
        PeriodQuantity::FibreMoisture => "Dry a fibre sample in the oven.".to_owned(),
        PeriodQuantity::Boards => "Count and weigh raw boards again.".to_owned(),
        PeriodQuantity::BoardMoisture => "Dry a board sample in the oven.".to_owned(),
        PeriodQuantity::Metered(id) => {
            let name = period_liquid(id, context.book);
            format!("Run a catch test on the pump of {name}, and check its dips and deliveries.")
        }
        PeriodQuantity::Delivered(id) => {
            format!("Check the weighbridge tickets of {}.", period_liquid(id, context.book))
        }
        PeriodQuantity::Start(id) | PeriodQuantity::End(id) => {
            format!("Dip the tanks of {} again.", period_liquid(id, context.book))
        }
        PeriodQuantity::Solids(id) => format!("Test the solids content of {}.", period_liquid(id, context.book)),
    }
}

/// Which meter drifts, in one sentence, and what to do next.
pub(super) fn verdict(found: &PeriodBalance, context: &LineContext<'_>) -> Message {
    let doubts: Vec<&[PeriodDrift]> =
        found.drifting.iter().map(Vec::as_slice).filter(|group| !group.is_empty()).collect();
    let (what, fix) = if !found.explained {
        (
            "The readings of the period disagree, and no single one of them explains it.".to_owned(),
            "Check that all totals and dips are of the same hours.".to_owned(),
        )
    } else if doubts.is_empty() {
        ("All readings of the period agree within their uncertainties.".to_owned(), "No meter drifts.".to_owned())
    } else {
        let open = doubts.iter().any(|group| group.len() > 1);
        let either = |group: &&[PeriodDrift]| {
            let all: Vec<String> = group.iter().map(|drift| one(drift, context)).collect();
            if all.len() > 1 { format!("either {}", all.join(", or ")) } else { all.concat() }
        };
        let all: Vec<String> = doubts.iter().map(either).collect();
        let left_out = match (doubts.len() > 1, open) {
            (true, _) => "with these left out",
            (false, true) => "with one of them left out",
            (false, false) => "with it left out",
        };
        let what = super::verdict::upper_first(&format!("{}: {left_out} everything else agrees.", all.join("; and ")));
        let next = doubts.iter().filter_map(|group| group.first()).map(|drift| remedy(drift.quantity, context));
        (what, next.collect::<Vec<_>>().join(" "))
    };
    Message { what, fix }
}
