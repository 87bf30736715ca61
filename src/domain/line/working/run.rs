//! What really runs.

use super::{BALANCE, BOARD, DEFINITION, LineWorking, MOISTURE, Sheet};
use crate::domain::balance::figure::Figure;
use crate::domain::balance::outcome::Case;
use crate::domain::line::entries::RunningField;
use crate::domain::line::field::LineField;
use crate::domain::line::figure::LineFigure;
use crate::domain::line::line_check::actual::{Actual, LiquidActual};
use crate::domain::line::line_check::correction::{FormerCorrection, PumpCorrection};
use crate::domain::line::line_check::reading::Readings;
use crate::domain::recipe::input::Dosing;
use crate::domain::working::Expr;
use crate::domain::{Field, LiquidField};
use crate::quantity::Kind;

impl Sheet {
    fn belt(&mut self, running: &Actual) -> Expr {
        let field = LineField::Running(RunningField::Belt);
        self.entry(field, ("G", "run"), Kind::FibreFlow, running.fibre_wet.value)
    }

    fn fibre_moisture(&mut self, running: &Actual) -> Expr {
        let field = LineField::Running(RunningField::Moisture);
        self.entry(field, ("ω", "f,run"), Kind::Moisture, running.fibre_moisture.dry_basis().value)
    }
}

/// How a figure of the whole run is computed; `None` where it does not have it.
#[must_use]
pub fn run_working(figure: LineFigure, running: &Actual, readings: &Readings, case: &Case) -> Option<LineWorking> {
    use LineFigure as Fig;
    let mut sheet = Sheet::default();
    let board = &case.input.board;
    let done = match figure {
        Fig::RunFibre => {
            let formula = sheet.belt(running) / (Expr::ONE + sheet.fibre_moisture(running));
            sheet.done(figure, formula, running.fibre.value, MOISTURE)
        }
        Fig::RunFurnishMoisture => {
            let fibre = sheet.figure(Fig::RunFibre, running.fibre.value) * sheet.fibre_moisture(running);
            let total = running.furnish_moisture.dry_basis() * running.solids;
            let sprayed = total - running.fibre * running.fibre_moisture.dry_basis();
            let water = fibre + sheet.figure(Fig::RunWater, sprayed.value);
            let formula = water / sheet.figure(Fig::RunFurnish, running.solids.value);
            sheet.done(figure, formula, running.furnish_moisture.dry_basis().value, MOISTURE)
        }
        Fig::RunMatMoisture => {
            let furnish = running.furnish_moisture.dry_basis().value;
            let furnish = sheet.figure(Fig::RunFurnishMoisture, furnish);
            let loss = sheet.field(Field::DryingLoss, case.input.drying_loss.value);
            let formula = Expr::ZERO.max(furnish - loss);
            sheet.done(figure, formula, running.mat_moisture.dry_basis().value, BALANCE)
        }
        Fig::RunMat => {
            let sample = readings.sample?;
            let mass = LineField::Running(RunningField::SampleMass);
            let area = LineField::Running(RunningField::SampleArea);
            let mass = sheet.entry(mass, ("m", "s"), Kind::BatchMass, sample.mass.value);
            let area = sheet.entry(area, ("A", "s"), Kind::SampleArea, sample.area.value);
            let moisture = sample.moisture.unwrap_or(running.mat_moisture).dry_basis();
            let moisture = sheet.figure(Fig::SampleMoisture, moisture.value);
            sheet.done(figure, mass / (area * (Expr::ONE + moisture)), running.mat_od?.value, MOISTURE)
        }
        Fig::RunDensity => {
            let mat = sheet.figure(Fig::RunMat, running.mat_od?.value);
            let wet = Expr::ONE + sheet.field(Field::BoardMoisture, board.moisture.dry_basis().value);
            let thickness = sheet.field(Field::Thickness, board.thickness.value);
            let top = sheet.field(Field::SandTop, board.sand_top.value);
            let bottom = sheet.field(Field::SandBottom, board.sand_bottom.value);
            let skins = sheet.field(Field::SurfaceRatio, board.surface_ratio.value) * (top + bottom);
            let mut laid = mat;
            for liquid in case.input.liquids.as_slice() {
                if let Dosing::LiquidOnFaces(dose, faces) = liquid.dosing {
                    let dose =
                        sheet.field_as(Field::Liquid(liquid.id, LiquidField::Dose), Kind::UsePerArea, dose.value);
                    let solids = Field::Liquid(liquid.id, LiquidField::Solids);
                    let solids = sheet.field(solids, liquid.solids.ratio().value);
                    laid = laid + Expr::Number(f64::from(faces.count())) * dose * solids;
                }
            }
            sheet.done(figure, laid * wet / (thickness + skins), running.density?.value, BOARD)
        }
        _ => return None,
    };
    Some(done)
}

/// How a figure of one liquid of the run is computed; `None` where it does not have it.
#[must_use]
pub fn dose_working(figure: LineFigure, liquid: &LiquidActual, running: &Actual, case: &Case) -> Option<LineWorking> {
    use LineFigure as Fig;
    let mut sheet = Sheet::default();
    let done = match figure {
        Fig::RunSolids => {
            let solids = case.input.liquids.as_slice().iter().find(|other| other.id == liquid.id)?.solids;
            let flow = sheet.figure(Fig::RunFlow, liquid.mass.value);
            let solids = sheet.field(Field::Liquid(liquid.id, LiquidField::Solids), solids.ratio().value);
            sheet.done(figure, flow * solids, liquid.solids.value, BALANCE)
        }
        Fig::RunDose => {
            let formula =
                sheet.figure(Fig::RunSolids, liquid.solids.value) / sheet.figure(Fig::RunFibre, running.fibre.value);
            sheet.done(figure, formula, liquid.on_fibre.value, DEFINITION)
        }
        Fig::DoseDeviation => {
            let dose = sheet.figure(Fig::RunDose, liquid.on_fibre.value);
            let formula = dose / sheet.figure(Fig::RecipeDose, liquid.target.value) - Expr::ONE;
            sheet.done(figure, formula, liquid.deviation?.value, DEFINITION)
        }
        _ => return None,
    };
    Some(done)
}

/// How the correction of a pump was computed; `None` when the pump is off.
#[must_use]
pub fn correction_working(correction: &PumpCorrection) -> Option<LineWorking> {
    let mut sheet = Sheet::default();
    let factor = correction.factor?;
    let formula = sheet.figure(LineFigure::CorrectionTarget, correction.target.value)
        / sheet.figure(LineFigure::RunFlow, correction.now.value);
    Some(sheet.done(LineFigure::CorrectionFactor, formula, factor.value, DEFINITION))
}

/// How the correction of the former was computed; `None` without a mat sample.
#[must_use]
pub fn former_working(former: &FormerCorrection, case: &Case) -> Option<LineWorking> {
    let mut sheet = Sheet::default();
    let formula = sheet.recipe(Figure::MatOvenDry, case)? / sheet.figure(LineFigure::RunMat, former.mat_od.value);
    Some(sheet.done(LineFigure::FormerFactor, formula, former.factor.value, DEFINITION))
}
