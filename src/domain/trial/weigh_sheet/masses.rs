//! The mass of each line of a plan, overage and wall losses included, and its target dose.

use crate::domain::balance::figure::Figure as RecipeFigure;
use crate::domain::chemistry::water::density as water_density;
use crate::domain::recipe::input::{Dosing, Liquid};
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, WaterPlace};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::plan::{Balance, Plan};
use crate::domain::{DoseWay, LiquidFigure, LiquidId};
use crate::quantity::Amount;
use uom::si::f64::{Mass, MassDensity, Ratio, ThermodynamicTemperature};
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::degree_celsius;

/// By how much a mass grows for the overage: with e of the moist mass 1 + e; with e of the oven-dry
/// mass, added moist, 1 + e/(1+ω).
#[must_use]
pub fn overage_factor(plan: &Plan, wet_per_dry: Ratio) -> Ratio {
    let one = Ratio::new::<ratio>(1.0);
    match plan.overage_of {
        OverageOf::Moist => one + plan.overage,
        OverageOf::OvenDry => one + plan.overage / wet_per_dry,
    }
}

impl Plan {
    /// By how much the fibre grows for the overage.
    #[must_use]
    pub fn fibre_factor(&self) -> Ratio {
        match self.overage_on {
            OverageOn::Furnish => self.furnish_factor(),
            OverageOn::Fibre => overage_factor(self, self.case.input.fibre_moisture.wet_per_dry()),
        }
    }

    /// By how much the liquids grow for the overage.
    #[must_use]
    pub fn furnish_factor(&self) -> Ratio {
        match self.overage_on {
            OverageOn::Furnish => overage_factor(self, self.case.solved.water.blender_out.wet_per_dry()),
            OverageOn::Fibre => Ratio::new::<ratio>(1.0),
        }
    }

    /// Share of the fibre that is weighed out and meets no liquid.
    pub(in crate::domain::trial) fn spilled(&self) -> Ratio {
        match self.overage_on {
            OverageOn::Furnish => Ratio::new::<ratio>(1.0),
            OverageOn::Fibre => self.fibre_factor(),
        }
    }

    /// How far a mass may be off its plan and ask for nothing: the share entered, or one step of the balance.
    #[must_use]
    pub fn tolerance(&self, id: LineId, planned: Mass) -> Mass {
        let step = self.balance(id).step.unwrap_or_default();
        // A reading on the step above is within it, whatever the last bit says.
        let slack = planned * Ratio::new::<ratio>(1e-9);
        self.overshoot.map_or(step, |share| planned * share) + slack
    }

    /// The balance for a line.
    #[must_use]
    pub const fn balance(&self, id: LineId) -> Balance {
        match id {
            LineId::Fibre => self.fibre_balance,
            LineId::Liquid(_) | LineId::Thinning(_) | LineId::Water => self.liquid_balance,
        }
    }

    pub(in crate::domain::trial) fn liquid(&self, id: LiquidId) -> Option<&Liquid> {
        self.case.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)
    }

    /// Mass of a line for all boards and batches together, overage and wall losses in it. Zero for a
    /// line that the recipe does not have.
    #[must_use]
    pub fn whole(&self, id: LineId) -> Mass {
        let solved = &self.case.solved;
        let boards = Ratio::new::<ratio>(f64::from(self.boards));
        let solids = boards * solved.mat.od * (self.length * self.width);
        let sprayed = self.furnish_factor() / (Ratio::new::<ratio>(1.0) - self.wall_loss);
        let flow = |liquid: LiquidId| solved.liquids.iter().find(|flow| flow.id == liquid);
        match id {
            LineId::Fibre => solids * (solved.fibre_wet / solved.solids) * self.fibre_factor(),
            LineId::Liquid(liquid) => {
                flow(liquid).map_or_else(Mass::default, |flow| solids * (flow.liquid / solved.solids) * sprayed)
            }
            LineId::Thinning(liquid) => {
                flow(liquid).map_or_else(Mass::default, |flow| solids * (flow.thinning / solved.solids) * sprayed)
            }
            LineId::Water => solids * (solved.water.dose / solved.solids) * sprayed,
        }
    }

    /// The lines in order of addition: fibre, then the recipe's liquids, each followed by the water that
    /// thins it, and the water by itself first or last of the sprayed ones. What has no mass is left out, and so is what is sprayed
    /// on the faces of the mat: it does not go into the blender.
    #[must_use]
    pub fn order(&self) -> Vec<LineId> {
        let mut sprayed = Vec::new();
        for flow in self.case.solved.liquids.iter().filter(|flow| !flow.on_faces) {
            sprayed.push(LineId::Liquid(flow.id));
            if self.case.is_thinned(flow.id) {
                sprayed.push(LineId::Thinning(flow.id));
            }
        }
        match self.water_place {
            WaterPlace::First => sprayed.insert(0, LineId::Water),
            WaterPlace::Last => sprayed.push(LineId::Water),
        }
        let has_mass = |id: &LineId| self.whole(*id).value > 0.0;
        std::iter::once(LineId::Fibre).chain(sprayed).filter(has_mass).collect()
    }

    /// Density of what a line weighs; `None` for fibre.
    #[must_use]
    pub fn density(&self, id: LineId) -> Option<MassDensity> {
        match id {
            LineId::Fibre => None,
            LineId::Liquid(liquid) => self.liquid(liquid).map(|liquid| liquid.density),
            LineId::Thinning(_) | LineId::Water => water_at_20c(),
        }
    }
}

/// Density of water at 20 °C.
pub(in crate::domain::trial) fn water_at_20c() -> Option<MassDensity> {
    water_density(ThermodynamicTemperature::new::<degree_celsius>(20.0)).ok()
}

/// A liquid's dose as the recipe enters it; `None` for a base without solids.
pub(in crate::domain::trial) fn dose_as_entered(plan: &Plan, id: LiquidId) -> Option<Amount> {
    plan.case.dose_in(id, dose_way(plan, id)?)
}

/// The way in which the recipe enters a dose.
fn dose_way(plan: &Plan, id: LiquidId) -> Option<DoseWay> {
    Some(match plan.liquid(id)?.dosing {
        Dosing::SolidsOnFibre(_) => DoseWay::SolidsOnFibre,
        Dosing::SolidsOnLiquid(_, base) => {
            DoseWay::SolidsOnLiquid(plan.case.input.liquids.as_slice().get(base).map(|liquid| liquid.id)?)
        }
        Dosing::LiquidOnFibre(_) => DoseWay::LiquidOnFibre,
        Dosing::LiquidPerBoard(_) => DoseWay::LiquidPerBoard,
        Dosing::LiquidOnFaces(_, faces) => DoseWay::LiquidOnFaces(faces),
    })
}

/// Dose of a liquid on the fibre, as the plan has it.
pub(in crate::domain::trial) fn target_on_fibre(plan: &Plan, id: LiquidId) -> Option<Ratio> {
    plan.case.figure(RecipeFigure::Liquid(id, LiquidFigure::SolidsOnFibre)).map(|dose| si!(Ratio, dose.base))
}
