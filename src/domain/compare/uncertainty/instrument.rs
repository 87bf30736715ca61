//! What each input is measured with, and a ± to start from.

use crate::domain::balance::outcome::Case;
use crate::domain::compare::uncertainty::input_uncertainty::{Form, InputUncertainty, Size};
use crate::domain::compare::uncertainty::study::UncertainInput;
use crate::domain::compare::variable;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::limit::Source;
use crate::quantity::Unit;

/// What a number comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Instrument {
    /// Belt scale of the fibre.
    BeltScale,
    /// Moisture meter of fibre, mat or board.
    MoistureMeter,
    /// Flow meter or pump of a liquid or of water.
    FlowMeter,
    /// Test of a liquid's solids.
    SolidsTest,
    /// Density meter or hydrometer.
    DensityMeter,
    /// Weighing and measuring a board.
    BoardTest,
    /// Thickness gauge.
    ThicknessGauge,
    /// Tape measure, or the machine's drawing.
    TapeMeasure,
    /// Speed of the line.
    SpeedMeter,
    /// Thermometer.
    Thermometer,
    /// A price, as offered.
    Price,
    /// Not measured but estimated: a loss, a yield, a ratio.
    Estimate,
}

impl Instrument {
    /// What a field is measured with.
    #[must_use]
    pub const fn of(field: Field) -> Self {
        match field {
            Field::FibreFlow => Self::BeltScale,
            Field::WantedLineSpeed | Field::WantedPressFactor => Self::SpeedMeter,
            Field::FibreMoisture | Field::MatMoisture | Field::BoardMoisture | Field::ExitMoisture => {
                Self::MoistureMeter
            }
            Field::WaterOnFibre | Field::WaterFlow | Field::SurfaceSpray => Self::FlowMeter,
            Field::BoardDensity | Field::MatBulkDensity => Self::BoardTest,
            Field::Thickness | Field::SandTop | Field::SandBottom => Self::ThicknessGauge,
            Field::MatWidth | Field::SpreadWidth | Field::PressLength => Self::TapeMeasure,
            Field::MatTemperature => Self::Thermometer,
            Field::FibrePrice => Self::Price,
            Field::Liquid(_, part) => match part {
                LiquidField::Dose => Self::FlowMeter,
                LiquidField::Solids | LiquidField::SpraySolids => Self::SolidsTest,
                LiquidField::Density => Self::DensityMeter,
                LiquidField::Price => Self::Price,
            },
            _ => Self::Estimate,
        }
    }

    /// The stable key of the instrument.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::BeltScale => "belt_scale",
            Self::MoistureMeter => "moisture_meter",
            Self::FlowMeter => "flow_meter",
            Self::SolidsTest => "solids_test",
            Self::DensityMeter => "density_meter",
            Self::BoardTest => "board_test",
            Self::ThicknessGauge => "thickness_gauge",
            Self::TapeMeasure => "tape_measure",
            Self::SpeedMeter => "speed_meter",
            Self::Thermometer => "thermometer",
            Self::Price => "price",
            Self::Estimate => "estimate",
        }
    }
}

/// A ± to start from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Start {
    /// The ±.
    pub spread: InputUncertainty,
    /// Where it comes from. The mill's own calibration wins over it.
    pub source: Source,
}

/// A ± to start from for a field that is measured all the time; `None` for what a mill decides (a
/// target, a price), for machine data, and for what holds exactly.
#[must_use]
pub fn start(case: &Case, field: Field) -> Option<Start> {
    use Source::{CommonPractice, FromMemory, Published};
    let at = variable::get(&case.input, field)?;
    let points = |value: f64| Size::Absolute(Unit::Percent.to_base(value));
    let (form, size, source) = match field {
        // Belt weighers hold 0.5 to 2 % of the reading, by class.
        Field::FibreFlow => (Form::HalfWidth, Size::Relative(0.01), FromMemory),
        Field::FibreMoisture => (Form::Interval95, points(0.5), FromMemory),
        Field::DryingLoss | Field::Reject => (Form::HalfWidth, points(0.3), CommonPractice),
        Field::BoardMoisture | Field::ExitMoisture => (Form::Interval95, points(0.5), FromMemory),
        Field::Thickness => (Form::HalfWidth, Size::Absolute(Unit::Millimetre.to_base(0.1)), FromMemory),
        Field::MatTemperature => (Form::HalfWidth, Size::Absolute(3.0), CommonPractice),
        Field::SurfaceSpray if at > 0.0 => (Form::HalfWidth, Size::Relative(0.05), CommonPractice),
        Field::Liquid(_, LiquidField::Dose) if at > 0.0 => (Form::HalfWidth, Size::Relative(0.01), FromMemory),
        // A liquid without water has no solids to test.
        Field::Liquid(id, LiquidField::Solids) if at < 1.0 => {
            let resin = case.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?;
            let source = match resin.substance {
                crate::domain::Substance::Uf => Published("Dunky (1998): UF solids of 66 ± 1 %"),
                _ => FromMemory,
            };
            (Form::HalfWidth, points(1.0), source)
        }
        Field::Liquid(_, LiquidField::Density) => (Form::HalfWidth, Size::Relative(0.005), FromMemory),
        _ => return None,
    };
    // An estimate of zero with a half-width reaches below it.
    let reaches = !matches!(field, Field::DryingLoss | Field::Reject) || at >= Unit::Percent.to_base(0.3);
    InputUncertainty::new(form, size, None).filter(|_| reaches).map(|spread| Start { spread, source })
}

/// The sources of uncertainty to start a study of several systems from. Fibre, board and line have
/// their instruments in common; so have liquids that go by the same name and are made of the same
/// substance in several systems.
#[must_use]
pub fn sources(systems: &[(&Draft, &Case)]) -> Vec<UncertainInput> {
    let mut sources: Vec<UncertainInput> = Vec::new();
    for (system, (draft, case)) in systems.iter().enumerate() {
        for field in variable::used(&case.input) {
            let Some(start) = start(case, field) else { continue };
            let same = |source: &UncertainInput| {
                source.spread == start.spread
                    && source.targets.iter().all(|(at, _)| *at != system)
                    && source.targets.first().is_some_and(|(at, other)| {
                        systems.get(*at).is_some_and(|(first, _)| same_number(first, *other, draft, field))
                    })
            };
            match sources.iter_mut().find(|source| same(source)) {
                Some(source) => source.targets.push((system, field)),
                None => sources.push(UncertainInput { targets: vec![(system, field)], spread: start.spread }),
            }
        }
    }
    sources
}

/// Whether two recipes measure two fields with the same instrument.
fn same_number(first: &Draft, field: Field, second: &Draft, other: Field) -> bool {
    match (field, other) {
        (Field::Liquid(id, part), Field::Liquid(other_id, other_part)) if part == other_part => {
            first.liquid(id).zip(second.liquid(other_id)).is_some_and(|(a, b)| {
                !a.name.trim().is_empty() && a.name.trim() == b.name.trim() && a.substance == b.substance
            })
        }
        // A belt reading and an oven-dry flow are not the same number, though both hang on the scale.
        (Field::FibreFlow, Field::FibreFlow) => first.feed_way == second.feed_way,
        (a, b) => a == b && !matches!(a, Field::Liquid(..)),
    }
}
