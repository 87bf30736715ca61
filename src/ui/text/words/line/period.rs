//! What the readings of a shift or a week say together.

use super::figure::points;
use super::name::period_liquid;
use super::verdict::{all_doubts, either, left_out};
use crate::domain::line::period::PeriodDrift;
use crate::domain::line::{PeriodBalance, PeriodQuantity};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{LineContext, Message, lower_first, symbol_shown, trimmed_to};
use crate::{label, t, told};

fn quantity(quantity: PeriodQuantity, context: &LineContext<'_>) -> String {
    let called = |id| period_liquid(id, context.book);
    match quantity {
        PeriodQuantity::Belt => t!("line-quantity-belt-scale"),
        PeriodQuantity::FibreMoisture => t!("line-quantity-fibre-moisture"),
        PeriodQuantity::Boards => t!("line-period-board-mass"),
        PeriodQuantity::BoardMoisture => t!("line-quantity-board-moisture"),
        PeriodQuantity::Start(id) => t!("line-period-start", liquid = called(id)),
        PeriodQuantity::Delivered(id) => t!("line-period-delivery", liquid = called(id)),
        PeriodQuantity::End(id) => t!("line-period-end", liquid = called(id)),
        PeriodQuantity::Metered(id) => t!("line-quantity-meter", name = called(id)),
        PeriodQuantity::Solids(id) => t!("line-quantity-solids", liquid = called(id)),
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
            return t!("line-doubt-is", quantity = name, size = mass(), side = side);
        }
        PeriodQuantity::FibreMoisture | PeriodQuantity::BoardMoisture => {
            let unit = context.plain.units.unit(Kind::Moisture);
            let base = |value| Amount::from_base(Kind::Moisture, value).get(unit);
            let by = base(drift.read) - base(drift.estimate);
            format!("{} {}", trimmed_to(by.abs(), 2, mark), points(unit))
        }
        PeriodQuantity::Solids(_) => format!("{} {}", trimmed_to(100.0 * error.abs(), 2, mark), label!("line-points")),
        PeriodQuantity::Belt | PeriodQuantity::Boards | PeriodQuantity::Metered(_) => {
            format!("{}\u{a0}%", trimmed_to(100.0 * drift.error().abs(), 2, mark))
        }
    };
    t!("line-doubt-reads", quantity = name, size = size, side = side)
}

fn remedy(quantity: PeriodQuantity, context: &LineContext<'_>) -> String {
    let called = |id| period_liquid(id, context.book);
    match quantity {
        PeriodQuantity::Belt => t!("line-remedy-belt-scale"),
        PeriodQuantity::FibreMoisture => t!("line-remedy-fibre-moisture"),
        PeriodQuantity::Boards => t!("line-remedy-boards"),
        PeriodQuantity::BoardMoisture => t!("line-remedy-board-moisture"),
        PeriodQuantity::Metered(id) => t!("line-remedy-metered", liquid = called(id)),
        PeriodQuantity::Delivered(id) => t!("line-remedy-delivered", liquid = called(id)),
        PeriodQuantity::Start(id) | PeriodQuantity::End(id) => t!("line-remedy-dip", liquid = called(id)),
        PeriodQuantity::Solids(id) => t!("line-remedy-solids", liquid = called(id)),
    }
}

/// Which meter drifts, in one sentence, and what to do next.
#[must_use]
pub fn verdict(found: &PeriodBalance, context: &LineContext<'_>) -> Message {
    if !found.explained {
        return told!("line-verdict-period-unexplained");
    }
    let doubts: Vec<&[PeriodDrift]> =
        found.drifting.iter().map(Vec::as_slice).filter(|group| !group.is_empty()).collect();
    if doubts.is_empty() {
        return told!("line-verdict-period-agrees");
    }
    let doubt = |group: &&[PeriodDrift]| either(group.iter().map(|drift| one(drift, context)).collect());
    let next = doubts.iter().filter_map(|group| group.first()).map(|drift| remedy(drift.quantity, context));
    told!(
        "line-verdict-distrust",
        doubts = all_doubts(doubts.iter().map(doubt)),
        left_out = left_out(doubts.len(), doubts.iter().any(|group| group.len() > 1)),
        remedies = next.collect::<Vec<_>>().join(" ")
    )
}
