//! Tanks.

use super::{DEFINITION, LineWorking, Sheet};
use crate::domain::balance::outcome::Case;
use crate::domain::line::field::LineField;
use crate::domain::line::figure::LineFigure;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::line::tanks::tank::{Tank, TankContent, TankField};
use crate::domain::line::tanks::tank_state::TankState;
use crate::domain::working::{Constant, Expr};
use crate::domain::{Field, LiquidField};
use crate::quantity::Kind;

impl Sheet {
    fn tank_density(&mut self, state: &TankState) -> Expr {
        match state.fed {
            Fed::Liquid(id) => self.field(Field::Liquid(id, LiquidField::Density), state.density.value),
            Fed::Thinning(_) | Fed::Water | Fed::FaceWater => {
                self.constant(Constant::WaterDensity, Kind::LiquidDensity, state.density.value)
            }
        }
    }

    fn capacity(&mut self, tank: &Tank) -> Expr {
        let field = LineField::Tank(tank.id, TankField::Capacity);
        self.entry(field, ("V", "full"), Kind::BatchVolume, tank.capacity.value)
    }
}

/// How a figure of a tank is computed; `None` where it does not have it.
#[must_use]
pub fn tank_working(figure: LineFigure, tank: &Tank, state: &TankState, case: &Case) -> Option<LineWorking> {
    use LineFigure as Fig;
    let mut sheet = Sheet::default();
    let field = |part| LineField::Tank(tank.id, part);
    let content = state.content.value;
    let done = match figure {
        Fig::Content => {
            let at = field(TankField::Content);
            let formula = match tank.content? {
                TankContent::Level(level) => {
                    sheet.capacity(tank) * sheet.entry(at, ("y", "in"), Kind::Share, level.value)
                }
                TankContent::Volume(volume) => sheet.entry(at, ("V", "in"), Kind::BatchVolume, volume.value),
                TankContent::Mass(mass) => {
                    sheet.entry(at, ("m", "in"), Kind::BatchMass, mass.value) / sheet.tank_density(state)
                }
            };
            sheet.done(figure, formula, content, DEFINITION)
        }
        Fig::Usable => {
            let inside = sheet.figure(Fig::Content, content);
            let heel = sheet.entry(field(TankField::Heel), ("V", "heel"), Kind::BatchVolume, tank.heel.value);
            sheet.done(figure, Expr::ZERO.max(inside - heel), state.usable.value, DEFINITION)
        }
        Fig::UsableMass => {
            let formula = sheet.figure(Fig::Usable, state.usable.value) * sheet.tank_density(state);
            sheet.done(figure, formula, state.usable_mass.value, DEFINITION)
        }
        Fig::Lasts => {
            let mass = sheet.figure(Fig::UsableMass, state.usable_mass.value);
            let formula = mass / sheet.figure(Fig::Rate, state.rate.value);
            sheet.done(figure, formula, state.lasts?.value, DEFINITION)
        }
        Fig::PerShift => {
            let rate = sheet.figure(Fig::Rate, state.rate.value);
            let formula = rate * sheet.field(Field::ShiftHours, case.input.line.shift.value);
            sheet.done(figure, formula, state.per_shift.value, DEFINITION)
        }
        Fig::Fits => {
            let room = sheet.capacity(tank) - sheet.figure(Fig::Content, content);
            sheet.done(figure, Expr::ZERO.max(room), state.fits.value, DEFINITION)
        }
        _ => return None,
    };
    Some(done)
}
