//! Changeovers, control limits, deliveries.

use super::{CHART, DEFINITION, LineWorking, Sheet};
use crate::domain::balance::figure::Figure;
use crate::domain::balance::outcome::Case;
use crate::domain::line::changeover::Between;
use crate::domain::line::entries::DeliveryField;
use crate::domain::line::field::LineField;
use crate::domain::line::figure::LineFigure;
use crate::domain::line::tanks::delivery::density_at;
use crate::domain::working::Expr;
use crate::quantity::Kind;
use crate::statistics::control_chart::{ControlChart, FACTOR};
use uom::si::f64::{MassDensity, ThermodynamicTemperature};

/// How the amount of board in between is computed, by area or by volume; `new` is the recipe that is changed to.
#[must_use]
pub fn between_working(figure: LineFigure, between: &Between, new: &Case) -> Option<LineWorking> {
    let mut sheet = Sheet::default();
    let (made, result) = match figure {
        LineFigure::BetweenArea => (Figure::FinishedArea, between.area.value),
        LineFigure::BetweenVolume => (Figure::FinishedVolume, between.volume.value),
        _ => return None,
    };
    let time = sheet.figure(LineFigure::BetweenTime, between.time.value);
    let formula = time * sheet.recipe(made, new)?;
    Some(sheet.done(figure, formula, result, DEFINITION))
}

/// How a control limit of a chart of relative deviations is computed.
#[must_use]
pub fn chart_working(figure: LineFigure, chart: &ControlChart) -> Option<LineWorking> {
    let mut sheet = Sheet::default();
    let mean = sheet.figure(LineFigure::ChartMean, chart.mean);
    let range = Expr::Number(FACTOR) * sheet.figure(LineFigure::MovingRange, chart.moving_range);
    let (formula, result) = match figure {
        LineFigure::LowLimit => (mean - range, chart.low),
        LineFigure::HighLimit => (mean + range, chart.high),
        _ => return None,
    };
    Some(sheet.done(figure, formula, result, CHART))
}

/// How the density of a delivery at its pumping temperature is computed.
#[must_use]
pub fn density_working(
    density: MassDensity,
    expansion: f64,
    measured: ThermodynamicTemperature,
    pumped: ThermodynamicTemperature,
) -> LineWorking {
    let mut sheet = Sheet::default();
    let mut entry = |field, symbol, kind, base| sheet.entry(LineField::Delivery(field), symbol, kind, base);
    let start = entry(DeliveryField::MeasuredAt, ("θ", "0"), Kind::Temperature, measured.value);
    let end = entry(DeliveryField::PumpedAt, ("θ", ""), Kind::Temperature, pumped.value);
    let growth = entry(DeliveryField::Expansion, ("β", ""), Kind::Expansion, expansion);
    let measured_density = sheet.figure(LineFigure::DensityMeasured, density.value);
    let formula = measured_density / (Expr::ONE + growth * (end - start));
    let result = density_at(density, expansion, measured, pumped);
    sheet.done(LineFigure::DensityPumped, formula, result.value, DEFINITION)
}
