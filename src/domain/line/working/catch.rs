//! Catch tests and the lines through them.

use super::{DEFINITION, LEAST_SQUARES, LineWorking, Sheet};
use crate::domain::line::field::LineField;
use crate::domain::line::figure::LineFigure;
use crate::domain::line::pumps::catch_test::{CalibrationId, Caught, RowField};
use crate::domain::line::pumps::curve::Curve;
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::pumps::setting::{Setting, SettingUnit};
use crate::domain::working::Expr;
use crate::quantity::Kind;
use crate::statistics::regression::Model;

/// How the net mass or the flow of one row is computed; `None` for other figures.
#[must_use]
pub fn caught_working(
    figure: LineFigure,
    caught: &Caught,
    pump: PumpId,
    calibration: CalibrationId,
) -> Option<LineWorking> {
    let mut sheet = Sheet::default();
    let field = |part| LineField::Row(pump, calibration, caught.row, part);
    match figure {
        LineFigure::CaughtNet => {
            let gross = sheet.entry(field(RowField::Mass), ("m", "gross"), Kind::BatchMass, caught.gross.value);
            let tare = sheet.entry(field(RowField::Tare), ("m", "tare"), Kind::BatchMass, caught.tare.value);
            Some(sheet.done(figure, gross - tare, caught.net().value, DEFINITION))
        }
        LineFigure::CaughtFlow => {
            let net = sheet.figure(LineFigure::CaughtNet, caught.net().value);
            let time = sheet.entry(field(RowField::Seconds), ("T", "row"), Kind::RunTime, caught.time.value);
            Some(sheet.done(figure, net / time, caught.flow().value, DEFINITION))
        }
        _ => None,
    }
}

/// How the residual of one row is computed.
#[must_use]
pub fn residual_working(
    caught: &Caught,
    curve: &Curve,
    unit: SettingUnit,
    (pump, calibration): (PumpId, CalibrationId),
) -> LineWorking {
    let mut sheet = Sheet::default();
    let flow = sheet.figure(LineFigure::CaughtFlow, caught.flow().value);
    let intercept = sheet.figure(LineFigure::Intercept, curve.intercept().value);
    let slope = sheet.figure(LineFigure::Slope(unit), curve.slope().value);
    let field = LineField::Row(pump, calibration, caught.row, RowField::Setting);
    let setting = sheet.entry(field, ("n", "row"), unit.kind(), caught.setting.0);
    let residual = caught.residual(&curve.fit).value;
    sheet.done(LineFigure::CaughtResidual, flow - (intercept + slope * setting), residual, DEFINITION)
}

/// How the intercept of a pump's line or the prediction interval at a setting is computed; `None` for other
/// figures and where the line has none.
#[must_use]
pub fn line_working(figure: LineFigure, curve: &Curve, unit: SettingUnit, setting: Setting) -> Option<LineWorking> {
    let mut sheet = Sheet::default();
    match figure {
        LineFigure::Intercept if curve.fit.model == Model::WithIntercept => {
            let mean = curve.intercept() + curve.slope() * curve.fit.centre;
            let mean = sheet.figure(LineFigure::MeanFlow, mean.value);
            let slope = sheet.figure(LineFigure::Slope(unit), curve.slope().value);
            let at = sheet.figure(LineFigure::MeanSetting(unit), curve.fit.centre);
            Some(sheet.done(figure, mean - slope * at, curve.intercept().value, LEAST_SQUARES))
        }
        LineFigure::Prediction => {
            let flows = curve.prediction(setting)?;
            let sd = curve.residual_sd()?.value;
            let t = sheet.figure(LineFigure::StudentT, curve.fit.t()?);
            let sd = sheet.figure(LineFigure::ResidualSd, sd);
            let leverage = curve.fit.of_mean() + (setting.0 - curve.fit.centre).powi(2) / curve.fit.spread;
            let leverage = sheet.figure(LineFigure::Leverage, leverage);
            let half = (flows.high - flows.low) / 2.0;
            Some(sheet.done(figure, t * sd * (Expr::ONE + leverage).sqrt(), half.value, LEAST_SQUARES))
        }
        _ => None,
    }
}
