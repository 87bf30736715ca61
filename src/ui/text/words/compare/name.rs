//! Names of what is compared, of obstacles and of instruments.

use crate::domain::balance::figure::Figure;
use crate::domain::balance::machine::Machine;
use crate::domain::compare::Output;
use crate::domain::compare::feasibility::Obstacle;
use crate::domain::compare::uncertainty::input_uncertainty::Form;
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::ui::text::words::figure;
use crate::ui::text::{FieldWords, FigureWords};
use crate::{field, figure, label};

/// Label and basis of what is compared.
#[must_use]
pub fn output(output: Output) -> FigureWords {
    match output {
        Output::Figure(Figure::Used(Machine::FibreSupply)) => figure!("comparison-output-dryer-load"),
        Output::Figure(Figure::Used(Machine::Blender)) => figure!("comparison-output-blender-load"),
        Output::Figure(Figure::Used(Machine::Press)) => figure!("comparison-output-press-load"),
        Output::Figure(Figure::Used(Machine::LineSpeed)) => figure!("comparison-output-line-speed-load"),
        Output::Figure(Figure::Cost) => figure!("comparison-output-cost"),
        Output::Figure(other) => figure(other),
        Output::BinderOnFibre => figure!("comparison-output-binder-on-fibre"),
        Output::LiquidFlow => figure!("comparison-output-liquid-flow"),
        Output::LiquidWater => figure!("comparison-output-liquid-water"),
        Output::DryerWater => figure!("comparison-output-dryer-water"),
        Output::DryerHeat => figure!("comparison-output-dryer-heat"),
        Output::FibreAtLimit => figure!("comparison-output-fibre-at-limit"),
        Output::VolumeAtLimit => figure!("comparison-output-volume-at-limit"),
        Output::CostPerYear(_) => figure!("comparison-output-cost-per-year"),
    }
}

/// What prevents running a recipe, a few words.
#[must_use]
pub fn obstacle(obstacle: Obstacle) -> &'static str {
    match obstacle {
        Obstacle::NotAllowed => label!("comparison-obstacle-not-allowed"),
        Obstacle::NoBalance => label!("comparison-obstacle-no-balance"),
        Obstacle::TooWet => label!("comparison-obstacle-too-wet"),
        Obstacle::OverLimit(Machine::FibreSupply) => label!("comparison-obstacle-fibre-supply"),
        Obstacle::OverLimit(Machine::Blender) => label!("comparison-obstacle-blender"),
        Obstacle::OverLimit(Machine::Press) => label!("comparison-obstacle-press"),
        Obstacle::OverLimit(Machine::LineSpeed) => label!("comparison-obstacle-line-speed"),
        Obstacle::PressAddsWater => label!("comparison-obstacle-press-adds-water"),
        Obstacle::MatThinnerThanBoard => label!("comparison-obstacle-mat-thinner"),
        Obstacle::PressFactor => label!("comparison-obstacle-press-factor"),
        Obstacle::MatMoisture => label!("comparison-obstacle-mat-moisture"),
        Obstacle::Input => label!("comparison-obstacle-input"),
    }
}

/// What a stated ± means: label and hint.
#[must_use]
pub fn form(form: Form) -> FieldWords {
    match form {
        Form::Standard => field!("comparison-form-standard"),
        Form::HalfWidth => field!("comparison-form-half-width"),
        Form::Interval95 => field!("comparison-form-interval"),
    }
}

/// What a number is measured with.
#[must_use]
pub fn instrument(instrument: Instrument) -> &'static str {
    match instrument {
        Instrument::BeltScale => label!("comparison-instrument-belt-scale"),
        Instrument::MoistureMeter => label!("comparison-instrument-moisture-meter"),
        Instrument::FlowMeter => label!("comparison-instrument-flow-meter"),
        Instrument::SolidsTest => label!("comparison-instrument-solids-test"),
        Instrument::DensityMeter => label!("comparison-instrument-density-meter"),
        Instrument::BoardTest => label!("comparison-instrument-board-test"),
        Instrument::ThicknessGauge => label!("comparison-instrument-thickness-gauge"),
        Instrument::TapeMeasure => label!("comparison-instrument-tape-measure"),
        Instrument::SpeedMeter => label!("comparison-instrument-speed-meter"),
        Instrument::Thermometer => label!("comparison-instrument-thermometer"),
        Instrument::Price => label!("comparison-instrument-price"),
        Instrument::Estimate => label!("comparison-instrument-estimate"),
    }
}
