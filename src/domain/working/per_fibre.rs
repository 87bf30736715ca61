//! The formulas per oven-dry fibre: what a recipe of a laboratory has, which knows no flow.
//!
//! Every flow grows with the fibre flow, so that a formula over flows gives the same with each of them divided by that one.

use super::formula::Sheet;
use super::{Expr, Ground};
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::liquid::LiquidId;

impl Sheet<'_> {
    /// A flow per oven-dry fibre.
    pub(super) fn per_fibre(&mut self, flow: Figure) -> Expr {
        match flow {
            Figure::Fibre => Expr::ONE,
            Figure::FibreWater => self.field(Field::FibreMoisture),
            Figure::Solids => self.fig(Figure::FurnishPerFibre),
            Figure::WaterDose => self.fig(Figure::WaterDoseOnFibre),
            Figure::Liquid(id, LiquidFigure::Liquid) => self.fig(Figure::Liquid(id, LiquidFigure::LiquidOnFibre)),
            Figure::Liquid(id, LiquidFigure::Thinning) => self.fig(Figure::Liquid(id, LiquidFigure::ThinningOnFibre)),
            Figure::Liquid(id, LiquidFigure::Solids) if !self.is_on_faces(id) => {
                self.fig(Figure::Liquid(id, LiquidFigure::SolidsOnFibre))
            }
            other => self.formula(other).0,
        }
    }

    /// A liquid, or the water that thins it, on fibre.
    pub(super) fn on_fibre_without_flow(&mut self, id: LiquidId, part: LiquidFigure) -> (Expr, Ground) {
        let formula = match part {
            LiquidFigure::LiquidOnFibre if !self.is_on_faces(id) => {
                let solids = self.fig(Figure::Liquid(id, LiquidFigure::SolidsOnFibre));
                solids / self.field(Field::Liquid(id, LiquidField::Solids))
            }
            LiquidFigure::LiquidOnFibre => self.liquid(id, LiquidFigure::Liquid).0,
            _ => self.liquid(id, LiquidFigure::Thinning).0,
        };
        (formula, Ground::MassBalance)
    }
}
