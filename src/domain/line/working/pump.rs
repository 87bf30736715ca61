//! The setting sheet.

use super::{BALANCE, DEFINITION, LEAST_SQUARES, LineWorking, Sheet};
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::line::field::LineField;
use crate::domain::line::figure::LineFigure;
use crate::domain::line::pumps::curve::Curve;
use crate::domain::line::pumps::drift::Drift;
use crate::domain::line::pumps::pump::PumpField;
use crate::domain::line::pumps::pump_settings::PumpRow;
use crate::domain::line::tanks::draw::water_density;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::working::{Constant, Expr};
use crate::domain::{Field, LiquidField};
use crate::quantity::Kind;

impl Sheet {
    fn flow(&mut self, fed: Fed, case: &Case) -> Option<Expr> {
        match fed {
            Fed::Liquid(id) => self.recipe(Figure::Liquid(id, LiquidFigure::Liquid), case),
            Fed::Thinning(id) => self.recipe(Figure::Liquid(id, LiquidFigure::Thinning), case),
            Fed::Water => self.recipe(Figure::WaterDose, case),
            Fed::FaceWater => self.recipe(Figure::SurfaceSpray, case),
        }
    }

    fn density(&mut self, row: &PumpRow) -> Expr {
        match row.fed {
            Fed::Liquid(id) => self.field(Field::Liquid(id, LiquidField::Density), row.density.value),
            Fed::Thinning(_) | Fed::Water | Fed::FaceWater => {
                self.constant(Constant::WaterDensity, Kind::LiquidDensity, row.density.value)
            }
        }
    }

    fn share(&mut self, row: &PumpRow) -> Expr {
        self.entry(LineField::Pump(row.pump, PumpField::Share), ("z", ""), Kind::Share, row.share.value)
    }

    fn slope(&mut self, curve: &Curve, row: &PumpRow) -> Expr {
        self.figure(LineFigure::Slope(row.unit), curve.slope().value)
    }
}

/// How a figure of one pump of the setting sheet is computed; `None` where the row does not have it. The case
/// is the one of the sheet.
#[must_use]
pub fn pump_working(figure: LineFigure, row: &PumpRow, case: &Case) -> Option<LineWorking> {
    use LineFigure as Fig;
    let mut sheet = Sheet::default();
    let done = match figure {
        Fig::Wanted => {
            let formula = sheet.flow(row.fed, case)? * sheet.share(row);
            sheet.done(figure, formula, row.mass.value, BALANCE)
        }
        Fig::WantedVolume => {
            let formula = sheet.figure(Fig::Wanted, row.mass.value) / sheet.density(row);
            sheet.done(figure, formula, row.volume.value, DEFINITION)
        }
        Fig::Setting(_) => {
            let (curve, setting) = row.curve.zip(row.setting)?;
            let wanted = sheet.figure(Fig::Wanted, row.mass.value);
            let above = wanted - sheet.figure(Fig::Intercept, curve.intercept().value);
            let formula = above / sheet.slope(&curve, row);
            sheet.done(Fig::Setting(row.unit), formula, setting.setting.0, LEAST_SQUARES)
        }
        Fig::Spray => {
            let own = sheet.figure(Fig::WantedVolume, row.volume.value);
            let Fed::Liquid(id) = row.fed else { return None };
            let thinning = sheet.recipe(Figure::Liquid(id, LiquidFigure::Thinning), case)?;
            let water = sheet.constant(Constant::WaterDensity, Kind::LiquidDensity, water_density().value);
            let formula = own + thinning * sheet.share(row) / water;
            sheet.done(figure, formula, row.spray.value, DEFINITION)
        }
        Fig::NozzleFlow => {
            let opened = row.nozzles?;
            let spray = sheet.figure(Fig::Spray, row.spray.value);
            let formula = spray / sheet.figure(Fig::OpenNozzles, f64::from(opened.open));
            sheet.done(figure, formula, opened.each.value, DEFINITION)
        }
        Fig::PerFibre => {
            let formula = sheet.figure(Fig::Wanted, row.mass.value) / sheet.recipe(Figure::FibreWet, case)?;
            sheet.done(figure, formula, row.per_fibre.value, DEFINITION)
        }
        Fig::VolumePerFibre => {
            let formula = sheet.figure(Fig::WantedVolume, row.volume.value) / sheet.recipe(Figure::FibreWet, case)?;
            sheet.done(figure, formula, row.volume_per_fibre.value, DEFINITION)
        }
        Fig::LeastFibre | Fig::MostFibre => {
            let (curve, usable, reach) = (row.curve?, row.usable?, row.reach?);
            let (bound, flow, fibre) = match figure {
                Fig::LeastFibre => (Fig::LeastFlow, curve.flow(usable.low), reach.least),
                _ => (Fig::MostFlow, curve.flow(usable.high), reach.most),
            };
            let at_bound = sheet.recipe(Figure::Fibre, case)? * sheet.figure(bound, flow.value);
            let formula = at_bound / sheet.figure(Fig::Wanted, row.mass.value);
            sheet.done(figure, formula, fibre.value, BALANCE)
        }
        _ => return None,
    };
    Some(done)
}

/// How the drift since an earlier catch test is computed; `None` when that gave no flow.
#[must_use]
pub fn drift_working(drift: &Drift) -> Option<LineWorking> {
    let mut sheet = Sheet::default();
    let change = drift.change?;
    let formula = sheet.figure(LineFigure::FlowNow, drift.now.value)
        / sheet.figure(LineFigure::FlowThen, drift.then.value)
        - Expr::ONE;
    Some(sheet.done(LineFigure::Drift, formula, change.value, DEFINITION))
}
