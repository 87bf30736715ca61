//! What the readings of a line check say together.

use super::figure::points;
use super::name::{fed, liquid, pump_called};
use crate::domain::line::{Doubt, DoubtfulReading, LineDensitySplit, LineQuantity, LineReconciliation, LineVerdict};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{LineContext, Message, lower_first, trimmed_to};
use crate::{label, t, told};

/// What a quantity is called.
#[must_use]
pub fn quantity(quantity: LineQuantity, context: &LineContext<'_>) -> String {
    match quantity {
        LineQuantity::BeltScale => t!("line-quantity-belt-scale"),
        LineQuantity::FibreMoisture => t!("line-quantity-fibre-moisture"),
        LineQuantity::Fibre => t!("line-quantity-fibre"),
        LineQuantity::FurnishSolids => t!("line-quantity-furnish"),
        LineQuantity::DryingLoss => t!("line-quantity-drying-loss"),
        LineQuantity::LineSpeed => t!("line-quantity-line-speed"),
        LineQuantity::MatWidth => t!("line-quantity-mat-width"),
        LineQuantity::MatMass => t!("line-quantity-mat-weight"),
        LineQuantity::MatMoisture => t!("line-quantity-mat-moisture"),
        LineQuantity::BoardMass => t!("line-quantity-board-area-mass"),
        LineQuantity::BoardMoisture => t!("line-quantity-board-moisture"),
        LineQuantity::Thickness => t!("line-quantity-thickness"),
        LineQuantity::Density => t!("line-quantity-density"),
        LineQuantity::Flow(feeds) => t!("line-quantity-flow", liquid = fed(feeds, context.plain.draft)),
        LineQuantity::Meter(pump) | LineQuantity::Volume(pump) => {
            t!("line-quantity-meter", name = pump_called(pump, context))
        }
        LineQuantity::Setting(pump) => t!("line-quantity-catch-line", pump = pump_called(pump, context)),
        LineQuantity::Solids(id) => t!("line-quantity-solids", liquid = liquid(id, context.plain.draft)),
        LineQuantity::LiquidDensity(id) => t!("line-quantity-liquid-density", liquid = liquid(id, context.plain.draft)),
    }
}

/// By how much it is off: "5 %", "1.2 points d.b.".
fn off(reading: &DoubtfulReading, context: &LineContext<'_>) -> String {
    let moisture = context.plain.units.unit(Kind::Moisture);
    let number = |value: f64| trimmed_to(value.abs(), 2, context.plain.units.mark);
    match reading.quantity.kind() {
        Kind::Moisture => {
            let base = |value| Amount::from_base(Kind::Moisture, value).get(moisture);
            format!("{} {}", number(base(reading.read) - base(reading.estimate)), points(moisture))
        }
        _ if reading.quantity.in_points() => format!("{} {}", number(100.0 * reading.error()), label!("line-points")),
        _ => format!("{}\u{a0}%", number(100.0 * reading.error())),
    }
}

fn one(reading: &DoubtfulReading, context: &LineContext<'_>) -> String {
    t!(
        "line-doubt-reads",
        quantity = lower_first(&quantity(reading.quantity, context)),
        size = off(reading, context),
        side = if reading.error() > 0.0 { "high" } else { "low" }
    )
}

/// A reading that is off, or several of which one is.
pub(super) fn either(readings: Vec<String>) -> String {
    let several = readings.len() > 1;
    let all = readings.into_iter().reduce(|first, next| t!("line-doubt-or", first = first, next = next));
    let all = all.unwrap_or_default();
    if several { t!("line-doubt-either", readings = all) } else { all }
}

/// All doubts, as a sentence begins.
pub(super) fn all_doubts(doubts: impl Iterator<Item = String>) -> String {
    upper_first(&doubts.reduce(|first, next| t!("line-doubt-and", first = first, next = next)).unwrap_or_default())
}

/// What has to be left out for the rest to agree: all of several readings, one of some that are as likely, or the only one.
pub(super) const fn left_out(doubts: usize, open: bool) -> &'static str {
    match (doubts, open) {
        (2.., _) => "several",
        (_, true) => "one-of",
        (_, false) => "it",
    }
}

/// How to make sure of a reading.
fn remedy(quantity: LineQuantity, context: &LineContext<'_>) -> String {
    match quantity {
        LineQuantity::BeltScale | LineQuantity::Fibre | LineQuantity::FurnishSolids => t!("line-remedy-belt-scale"),
        LineQuantity::FibreMoisture => t!("line-remedy-fibre-moisture"),
        LineQuantity::DryingLoss => t!("line-remedy-drying-loss"),
        LineQuantity::LineSpeed => t!("line-remedy-line-speed"),
        LineQuantity::MatWidth => t!("line-remedy-mat-width"),
        LineQuantity::MatMass => t!("line-remedy-mat-weight"),
        LineQuantity::MatMoisture => t!("line-remedy-mat-moisture"),
        LineQuantity::BoardMass | LineQuantity::Density => t!("line-remedy-board"),
        LineQuantity::BoardMoisture => t!("line-remedy-board-moisture"),
        LineQuantity::Thickness => t!("line-remedy-thickness"),
        LineQuantity::Flow(feeds) => t!("line-remedy-flow", liquid = fed(feeds, context.plain.draft)),
        LineQuantity::Meter(pump) | LineQuantity::Volume(pump) | LineQuantity::Setting(pump) => {
            t!("line-remedy-pump", pump = pump_called(pump, context))
        }
        LineQuantity::Solids(id) => t!("line-remedy-solids", liquid = liquid(id, context.plain.draft)),
        LineQuantity::LiquidDensity(id) => t!("line-remedy-liquid-density", liquid = liquid(id, context.plain.draft)),
    }
}

/// What the readings say together, in one sentence, and what to do next.
#[must_use]
pub fn verdict(found: &LineReconciliation, context: &LineContext<'_>) -> Message {
    match &found.verdict {
        LineVerdict::NothingChecked => told!("line-verdict-nothing-checked"),
        LineVerdict::Consistent => {
            let unchecked: Vec<String> = found.unchecked().map(|each| lower_first(&quantity(each, context))).collect();
            if unchecked.is_empty() {
                return told!("line-verdict-all-checked");
            }
            told!("line-verdict-agree", unchecked = unchecked.join(", "))
        }
        LineVerdict::Unexplained => told!("line-verdict-unexplained"),
        LineVerdict::Distrust(doubts) => {
            let doubt = |doubt: &Doubt| either(doubt.readings.iter().map(|reading| one(reading, context)).collect());
            let next = doubts.iter().filter_map(|doubt| {
                let first = doubt.readings.first().map(|reading| reading.quantity);
                doubt.extra_reading.or(first).map(|quantity| remedy(quantity, context))
            });
            told!(
                "line-verdict-distrust",
                doubts = all_doubts(doubts.iter().map(doubt)),
                left_out = left_out(doubts.len(), doubts.iter().any(Doubt::is_open)),
                remedies = next.collect::<Vec<_>>().join(" ")
            )
        }
    }
}

/// A density deviation by its parts.
#[must_use]
pub fn split(split: &LineDensitySplit, context: &LineContext<'_>) -> Message {
    let part = |value: f64| {
        let percent = (value * 1_000.0).round() / 10.0;
        let sign = if percent > 0.0 { "+" } else { "" };
        format!("{sign}{}\u{a0}%", trimmed_to(percent, 3, context.plain.units.mark))
    };
    let parts = [(split.mass, "mass"), (split.thickness, "thickness"), (split.moisture, "moisture")];
    let largest = parts.iter().max_by(|a, b| a.0.abs().total_cmp(&b.0.abs()));
    told!(
        "line-split-density",
        density = part(split.deviation),
        mass = part(split.mass.exp_m1()),
        thickness = part(split.thickness.exp_m1()),
        moisture = part(split.moisture.exp_m1()),
        largest = largest.filter(|(value, _)| value.abs() >= 0.001).map_or("none", |(_, name)| *name)
    )
}

/// A sentence begins with a capital letter.
fn upper_first(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().into_iter().flat_map(char::to_uppercase).chain(chars).collect()
}
