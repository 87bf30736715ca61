//! Names of what is compared, of obstacles and of instruments.

use crate::domain::balance::machine::Machine;
use crate::domain::compare::Output;
use crate::domain::compare::side::Belongs;
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::domain::compare::uncertainty::spread::Form;
use crate::domain::compare::verdict::Obstacle;
use crate::ui::text::english::figure;
use crate::ui::text::{FieldWords, FigureWords};

const fn words(label: &'static str, note: &'static str) -> FigureWords {
    FigureWords { label, note }
}

pub(super) fn output(output: Output) -> FigureWords {
    match output {
        Output::Figure(other) => figure::figure(other),
        Output::BinderOnFibre => words("Binder on fibre", "solids of all binders on oven-dry fibre"),
        Output::LiquidFlow => words("All liquids", "as delivered, by mass"),
        Output::LiquidWater => words("Water with the liquids", "water they bring and that thins them"),
        Output::DryerWater => words(
            "Water for the fibre dryer",
            "water to take out beyond now, for no water dose; below zero: to leave in",
        ),
        Output::DryerHeat => words("Heat for that water in the dryer", "from 20 °C, without losses of the dryer"),
        Output::FibreAtLimit => words("Most fibre the line takes", "oven-dry, at the first machine's limit"),
        Output::VolumeAtLimit => words("Most board the line makes", "sanded and cut, at the first machine's limit"),
        Output::CostPerYear(_) => words("Cost per year", "of all that has a price, at this flow for the hours given"),
    }
}

pub(super) fn obstacle(obstacle: Obstacle) -> &'static str {
    match obstacle {
        Obstacle::NotAllowed => "outside what is possible",
        Obstacle::NoBalance => "doses or losses leave no balance",
        Obstacle::TooWet => "furnish too wet",
        Obstacle::OverLimit(Machine::FibreSupply) => "more fibre than the dryer supplies",
        Obstacle::OverLimit(Machine::Blender) => "more furnish than the blender takes",
        Obstacle::OverLimit(Machine::Press) => "below the least press factor that cures",
        Obstacle::OverLimit(Machine::LineSpeed) => "above the top line speed",
        Obstacle::PressAddsWater => "board moister than the mat",
        Obstacle::MatThinnerThanBoard => "mat thinner than the board",
        Obstacle::PressFactor => "press factor outside the usual",
        Obstacle::MatMoisture => "mat moisture outside the usual",
        Obstacle::Input => "input outside the usual",
    }
}

pub(super) fn belongs(belongs: Belongs) -> &'static str {
    match belongs {
        Belongs::Fibre => "Fibre",
        Belongs::Board => "Board",
        Belongs::Line => "Line",
        Belongs::System => "System",
    }
}

pub(super) fn form(form: Form) -> FieldWords {
    let (label, hint) = match form {
        Form::Standard => {
            ("Standard uncertainty", "One standard deviation, as a certificate or repeated readings give it.")
        }
        Form::HalfWidth => ("Limits, ±", "No value is outside them, all within are alike: divided by √3."),
        Form::Interval95 => ("95 % interval, ±", "Holds the value 19 times out of 20: divided by 1.96."),
    };
    FieldWords { label, hint }
}

pub(super) fn instrument(instrument: Instrument) -> &'static str {
    match instrument {
        Instrument::BeltScale => "Belt scale",
        Instrument::MoistureMeter => "Moisture meter",
        Instrument::FlowMeter => "Flow meter",
        Instrument::SolidsTest => "Solids test",
        Instrument::DensityMeter => "Density meter",
        Instrument::BoardTest => "Board test",
        Instrument::ThicknessGauge => "Thickness gauge",
        Instrument::TapeMeasure => "Tape measure",
        Instrument::SpeedMeter => "Speed meter",
        Instrument::Thermometer => "Thermometer",
        Instrument::Price => "Price",
        Instrument::Estimate => "Estimate",
    }
}
