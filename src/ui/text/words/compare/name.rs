//! Names of what is compared, of obstacles and of instruments.

use crate::domain::balance::figure::Figure;
use crate::domain::balance::machine::Machine;
use crate::domain::compare::Output;
use crate::domain::compare::feasibility::Obstacle;
use crate::domain::compare::uncertainty::input_uncertainty::Form;
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::ui::text::words::figure;
use crate::ui::text::{FieldWords, FigureWords};

const fn words(label: &'static str, note: &'static str) -> FigureWords {
    FigureWords { label, note }
}

pub(super) fn output(output: Output) -> FigureWords {
    match output {
        Output::Figure(Figure::Used(machine)) => match machine {
            Machine::FibreSupply => words("Dryer load", "share of its limit"),
            Machine::Blender => words("Blender load", "share of its limit"),
            Machine::Press => words("Press load", "share of its limit"),
            Machine::LineSpeed => words("Line speed load", "share of the maximum line speed"),
        },
        Output::Figure(Figure::Cost) => words("Cost", "of fibre and liquids, per volume of board"),
        Output::Figure(other) => figure::figure(other),
        Output::BinderOnFibre => words("Binder on fibre", "solids of all binders on oven-dry fibre"),
        Output::LiquidFlow => words("All liquids", "as delivered, by mass"),
        Output::LiquidWater => words("Water with the liquids", "delivered with them, and for thinning"),
        Output::DryerWater => {
            words("Extra water for the dryer", "to remove beyond now for a zero water dose; below zero: to leave in")
        }
        Output::DryerHeat => words("Dryer heat for that water", "from 20 °C, without dryer losses"),
        Output::FibreAtLimit => words("Fibre at the bottleneck", "oven-dry, with the first machine at its limit"),
        Output::VolumeAtLimit => {
            words("Board at the bottleneck", "sanded and cut, with the first machine at its limit")
        }
        Output::CostPerYear(_) => words("Cost per year", "at this flow, for the hours a year"),
    }
}

pub(super) fn obstacle(obstacle: Obstacle) -> &'static str {
    match obstacle {
        Obstacle::NotAllowed => "outside the allowed values",
        Obstacle::NoBalance => "no balance: doses or losses too high",
        Obstacle::TooWet => "furnish too wet",
        Obstacle::OverLimit(Machine::FibreSupply) => "more fibre than the dryer gives",
        Obstacle::OverLimit(Machine::Blender) => "more furnish than the blender takes",
        Obstacle::OverLimit(Machine::Press) => "below the minimum press factor",
        Obstacle::OverLimit(Machine::LineSpeed) => "above the maximum line speed",
        Obstacle::PressAddsWater => "board moister than the mat",
        Obstacle::MatThinnerThanBoard => "mat thinner than the board",
        Obstacle::PressFactor => "press factor outside the typical range",
        Obstacle::MatMoisture => "mat moisture outside the typical range",
        Obstacle::Input => "an input outside its typical range",
    }
}

pub(super) fn form(form: Form) -> FieldWords {
    let (label, hint) = match form {
        Form::Standard => {
            ("Standard uncertainty", "One standard deviation, as a certificate or repeated readings give it.")
        }
        Form::HalfWidth => ("Limits", "Every value within is equally likely: divided by √3."),
        Form::Interval95 => ("95 % interval", "Holds the value 19 times out of 20: divided by 1.96."),
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
