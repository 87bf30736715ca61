//! How well each reading of a line check is known.

use super::quantity::LineQuantity;
use crate::domain::balance::outcome::Case;
use crate::domain::compare::uncertainty::instrument::start;
use crate::domain::line::book::LineBook;
use crate::domain::line::entries::UncertaintyField;
use crate::domain::line::field::LineField;
use crate::domain::line::read::read_line_field;
use crate::domain::recipe::field::{Field, LiquidField};

/// Standard uncertainties as entered; `None` takes that of the usual instrument. Flows, speed, masses and lengths relative, moistures and
/// solids in points as a fraction.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Uncertainties {
    /// Belt scale, relative.
    pub belt_scale: Option<f64>,
    /// Moisture meters, in points of dry basis.
    pub moisture: Option<f64>,
    /// Flow meters, relative.
    pub flow_meter: Option<f64>,
    /// Solids contents, in points.
    pub solids: Option<f64>,
    /// Line speed, relative.
    pub line_speed: Option<f64>,
    /// Mat mass per area, relative.
    pub mat_sample: Option<f64>,
    /// Raw-board mass per area, relative.
    pub board_mass: Option<f64>,
    /// Thickness, in metres.
    pub thickness: Option<f64>,
    /// Mat width, in metres.
    pub mat_width: Option<f64>,
}

/// Standard uncertainties of the usual instruments: as the comparison starts from, or else common practice, no source.
pub mod usual {
    /// Moisture meters, in points of dry basis.
    pub const MOISTURE: f64 = 0.0025;
    /// Mass per area of a raw board, relative.
    pub const BOARD_MASS: f64 = 0.005;
    /// Solids content of a liquid without water, in points.
    pub const NO_WATER: f64 = 0.001;

    /// Belt scale, relative: ± 1 %, rectangular.
    #[must_use]
    pub fn belt_scale() -> f64 {
        0.01 / 3.0_f64.sqrt()
    }

    /// Flow meters, relative: ± 1 %, rectangular.
    #[must_use]
    pub fn flow_meter() -> f64 {
        0.01 / 3.0_f64.sqrt()
    }

    /// Solids contents, in points: ± 1 point, rectangular.
    #[must_use]
    pub fn solids() -> f64 {
        0.01 / 3.0_f64.sqrt()
    }
}

impl Uncertainties {
    /// As entered; what cannot be read counts as blank.
    #[must_use]
    pub fn of(book: &LineBook) -> Self {
        let read = |field| read_line_field(book, LineField::Uncertainty(field)).ok().flatten().filter(|sd| *sd > 0.0);
        Self {
            belt_scale: read(UncertaintyField::BeltScale),
            moisture: read(UncertaintyField::Moisture),
            flow_meter: read(UncertaintyField::FlowMeter),
            solids: read(UncertaintyField::Solids),
            line_speed: read(UncertaintyField::LineSpeed),
            mat_sample: read(UncertaintyField::MatSample),
            board_mass: read(UncertaintyField::BoardMass),
            thickness: read(UncertaintyField::Thickness),
            mat_width: read(UncertaintyField::MatWidth),
        }
    }

    /// Standard uncertainty of a reading of `value`, where `typical` is the flow that the recipe has: as entered, or else
    /// that of the comparison's instruments, or else common practice, no source.
    #[must_use]
    pub(super) fn standard(&self, case: &Case, quantity: LineQuantity, value: f64, typical: f64) -> f64 {
        let instrument = |field: Field, practice: f64| {
            start(case, field).map(|start| start.spread.standard(value)).filter(|sd| *sd > 0.0).unwrap_or(practice)
        };
        let share = |typed: Option<f64>| typed.map(|share| share * value.abs());
        let standard = match quantity {
            LineQuantity::BeltScale | LineQuantity::Fibre | LineQuantity::FurnishSolids => {
                share(self.belt_scale).unwrap_or_else(|| usual::belt_scale() * value.abs())
            }
            LineQuantity::FibreMoisture | LineQuantity::MatMoisture => {
                self.moisture.unwrap_or_else(|| instrument(Field::FibreMoisture, usual::MOISTURE))
            }
            LineQuantity::BoardMoisture => {
                self.moisture.unwrap_or_else(|| instrument(Field::BoardMoisture, usual::MOISTURE))
            }
            LineQuantity::DryingLoss => instrument(Field::DryingLoss, 0.003 / 3.0_f64.sqrt()),
            LineQuantity::LineSpeed => share(self.line_speed).unwrap_or(0.005 * value.abs()),
            LineQuantity::MatWidth => self.mat_width.unwrap_or(0.003),
            LineQuantity::MatMass => share(self.mat_sample).unwrap_or(0.01 * value.abs()),
            LineQuantity::BoardMass => share(self.board_mass).unwrap_or(usual::BOARD_MASS * value.abs()),
            LineQuantity::Thickness => self.thickness.unwrap_or_else(|| instrument(Field::Thickness, 6e-5)),
            LineQuantity::Density => 0.01 * value.abs(),
            LineQuantity::Meter(_) | LineQuantity::Volume(_) | LineQuantity::Flow(_) => {
                share(self.flow_meter).unwrap_or_else(|| usual::flow_meter() * value.abs())
            }
            LineQuantity::Setting(_) => 0.01 * value.abs(),
            LineQuantity::Solids(id) => {
                let water_borne = instrument(Field::Liquid(id, LiquidField::Solids), usual::NO_WATER);
                self.solids.filter(|_| value < 1.0).unwrap_or(water_borne)
            }
            LineQuantity::LiquidDensity(id) => instrument(Field::Liquid(id, LiquidField::Density), 0.003 * value.abs()),
        };
        // A reading of zero from a relative instrument still is not exact.
        standard.max(0.002 * typical.abs()).max(1e-9)
    }
}
