//! What the readings of a line check say together.

use super::figure::points;
use super::name::{liquid, pump_called};
use crate::domain::line::{Doubt, DoubtfulReading, LineDensitySplit, LineQuantity, LineReconciliation, LineVerdict};
use crate::quantity::{Amount, Kind};
use crate::ui::text::{LineContext, Message, lower_first, trimmed_to};

/// What a quantity is called.
pub(super) fn quantity(quantity: LineQuantity, context: &LineContext<'_>) -> String {
    match quantity {
        LineQuantity::BeltScale => "Belt scale".to_owned(),
        LineQuantity::FibreMoisture => "Fibre moisture".to_owned(),
        LineQuantity::Fibre => "Fibre flow, oven-dry".to_owned(),
        LineQuantity::FurnishSolids => "Furnish, oven-dry".to_owned(),
        LineQuantity::DryingLoss => "Moisture loss from blender to former".to_owned(),
        LineQuantity::LineSpeed => "Line speed".to_owned(),
        LineQuantity::MatWidth => "Mat width".to_owned(),
        LineQuantity::MatMass => "Mat weight, wet".to_owned(),
        LineQuantity::MatMoisture => "Mat moisture".to_owned(),
        LineQuantity::BoardMass => "Raw-board mass per area".to_owned(),
        LineQuantity::BoardMoisture => "Raw-board moisture".to_owned(),
        LineQuantity::Thickness => "Raw-board thickness".to_owned(),
        LineQuantity::Density => "Raw-board density".to_owned(),
        LineQuantity::Flow(fed) => format!("Flow of {}", super::name::fed(fed, context.plain.draft)),
        LineQuantity::Meter(pump) | LineQuantity::Volume(pump) => {
            format!("Flow meter of {}", pump_called(pump, context))
        }
        LineQuantity::Setting(pump) => format!("Catch-test line of {}", pump_called(pump, context)),
        LineQuantity::Solids(id) => format!("Solids content of {}", liquid(id, context.plain.draft)),
        LineQuantity::LiquidDensity(id) => format!("Density of {}", liquid(id, context.plain.draft)),
    }
}

/// "5 % low", "1.2 points d.b. high".
fn off(reading: &DoubtfulReading, context: &LineContext<'_>) -> String {
    let moisture = context.plain.units.unit(Kind::Moisture);
    let number = |value: f64| trimmed_to(value.abs(), 2, context.plain.units.mark);
    let size = match reading.quantity.kind() {
        Kind::Moisture => {
            let base = |value| Amount::from_base(Kind::Moisture, value).get(moisture);
            format!("{} {}", number(base(reading.read) - base(reading.estimate)), points(moisture))
        }
        _ if reading.quantity.in_points() => format!("{} points", number(100.0 * reading.error())),
        _ => format!("{}\u{a0}%", number(100.0 * reading.error())),
    };
    format!("{size} {}", if reading.error() > 0.0 { "high" } else { "low" })
}

fn one(reading: &DoubtfulReading, context: &LineContext<'_>) -> String {
    format!("the {} reads {}", lower_first(&quantity(reading.quantity, context)), off(reading, context))
}

fn doubt(doubt: &Doubt, context: &LineContext<'_>) -> String {
    let all: Vec<String> = doubt.readings.iter().map(|reading| one(reading, context)).collect();
    if all.len() > 1 { format!("either {}", all.join(", or ")) } else { all.join("") }
}

/// How to make sure of a reading.
fn remedy(quantity: LineQuantity, context: &LineContext<'_>) -> String {
    match quantity {
        LineQuantity::BeltScale | LineQuantity::Fibre | LineQuantity::FurnishSolids => {
            "Check the zero and the calibration of the belt scale.".to_owned()
        }
        LineQuantity::FibreMoisture => "Dry a fibre sample in the oven.".to_owned(),
        LineQuantity::DryingLoss => "Measure the moisture behind the blender and at the former.".to_owned(),
        LineQuantity::LineSpeed => "Time a mark on the mat over a measured length.".to_owned(),
        LineQuantity::MatWidth => "Measure the trimmed mat width.".to_owned(),
        LineQuantity::MatMass => "Cut and weigh another mat sample.".to_owned(),
        LineQuantity::MatMoisture => "Dry a mat sample in the oven.".to_owned(),
        LineQuantity::BoardMass | LineQuantity::Density => "Measure and weigh another raw board.".to_owned(),
        LineQuantity::BoardMoisture => "Dry a board sample in the oven.".to_owned(),
        LineQuantity::Thickness => "Measure the raw board with a caliper.".to_owned(),
        LineQuantity::Flow(fed) => format!("Measure the flow of {}.", super::name::fed(fed, context.plain.draft)),
        LineQuantity::Meter(pump) | LineQuantity::Volume(pump) | LineQuantity::Setting(pump) => {
            format!("Run a catch test on {}.", pump_called(pump, context))
        }
        LineQuantity::Solids(id) => format!("Test the solids content of {}.", liquid(id, context.plain.draft)),
        LineQuantity::LiquidDensity(id) => format!("Measure the density of {}.", liquid(id, context.plain.draft)),
    }
}

/// What the readings say together, in one sentence, and what to do next.
pub(super) fn verdict(found: &LineReconciliation, context: &LineContext<'_>) -> Message {
    let (what, fix) = match &found.verdict {
        LineVerdict::NothingChecked => (
            "Nothing checks these readings.".to_owned(),
            "Add the settings of the pumps, the line speed and a mat sample.".to_owned(),
        ),
        LineVerdict::Consistent => {
            let unchecked: Vec<String> = found.unchecked().map(|each| lower_first(&quantity(each, context))).collect();
            let fix = if unchecked.is_empty() {
                "Every reading is checked by others.".to_owned()
            } else {
                format!("Nothing checks: {}.", unchecked.join(", "))
            };
            ("All readings agree within their uncertainties.".to_owned(), fix)
        }
        LineVerdict::Unexplained => (
            "The readings disagree, and no single one of them explains it.".to_owned(),
            "Read everything again at one time, and check solids contents and mat width of the recipe.".to_owned(),
        ),
        LineVerdict::Distrust(doubts) => {
            let several = doubts.len() > 1;
            let all: Vec<String> = doubts.iter().map(|each| doubt(each, context)).collect();
            let open = doubts.iter().any(Doubt::is_open);
            let left_out = match (several, open) {
                (true, _) => "with these left out",
                (false, true) => "with one of them left out",
                (false, false) => "with it left out",
            };
            let what = upper_first(&format!("{}: {left_out} everything else agrees.", all.join("; and ")));
            let next = doubts.iter().filter_map(|doubt| {
                let first = doubt.readings.first().map(|reading| reading.quantity);
                doubt.extra_reading.or(first).map(|quantity| remedy(quantity, context))
            });
            (what, next.collect::<Vec<_>>().join(" "))
        }
    };
    Message { what, fix }
}

/// A density deviation by its parts.
pub(super) fn split(split: &LineDensitySplit, context: &LineContext<'_>) -> Message {
    let part = |value: f64| {
        let percent = (value * 1_000.0).round() / 10.0;
        let sign = if percent > 0.0 { "+" } else { "" };
        format!("{sign}{}\u{a0}%", trimmed_to(percent, 3, context.plain.units.mark))
    };
    let parts = [(split.mass, "former or line speed"), (split.thickness, "press gap"), (split.moisture, "drying")];
    let largest = parts.iter().max_by(|a, b| a.0.abs().total_cmp(&b.0.abs()));
    let whole = largest.filter(|(value, _)| value.abs() >= 0.001).map_or("nothing", |(_, name)| name);
    Message {
        what: format!(
            "Raw-board density {} from target: mass per area {}, thickness {}, moisture {}.",
            part(split.deviation),
            part(split.mass.exp_m1()),
            part(split.thickness.exp_m1()),
            part(split.moisture.exp_m1())
        ),
        fix: format!("Correct first: {whole}."),
    }
}

/// A sentence begins with a capital letter.
pub(super) fn upper_first(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().into_iter().flat_map(char::to_uppercase).chain(chars).collect()
}
