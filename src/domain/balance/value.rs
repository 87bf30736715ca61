//! The value of each figure of a solved recipe.

use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::machine::Machine;
use crate::domain::balance::outcome::Case;
use crate::domain::balance::solved::LiquidFlow;
use crate::domain::recipe::input::Feed;
use crate::domain::recipe::liquid::{DoseWay, LiquidId};
use crate::quantity::{Amount, Kind};

impl Case {
    /// A figure; `None` where the recipe does not give it, such as a line speed without a width.
    #[must_use]
    pub fn figure(&self, figure: Figure) -> Option<Amount> {
        self.base(figure).map(|base| Amount::from_base(figure.kind(), base))
    }

    /// Every figure that the recipe gives, in the material's order.
    pub fn figures(&self) -> impl Iterator<Item = (Figure, Amount)> {
        let liquids = self
            .solved
            .liquids
            .iter()
            .flat_map(|flow| LiquidFigure::ALL.iter().map(|part| Figure::Liquid(flow.id, *part)));
        let machines = self
            .solved
            .capacities
            .iter()
            .flat_map(|capacity| [Figure::Used(capacity.machine), Figure::FibreAtLimit(capacity.machine)]);
        Figure::PLAIN
            .iter()
            .copied()
            .chain(liquids)
            .chain(machines)
            .filter_map(|figure| self.figure(figure).map(|amount| (figure, amount)))
    }

    /// The solved flow of a liquid.
    #[must_use]
    pub fn liquid(&self, id: LiquidId) -> Option<&LiquidFlow> {
        self.solved.liquids.iter().find(|flow| flow.id == id)
    }

    /// Whether the recipe has a fibre flow. One of a laboratory has none, and then no flow at all: not zero, but not given.
    #[must_use]
    pub fn has_flow(&self) -> bool {
        self.input.feed != Feed::None
    }

    fn base(&self, figure: Figure) -> Option<f64> {
        if figure.is_of_flow() && !self.has_flow() {
            return None;
        }
        let (input, solved) = (&self.input, &self.solved);
        let (water, mat, line, losses, usage) =
            (&solved.water, &solved.mat, &solved.line, &solved.losses, &solved.usage);
        Some(match figure {
            Figure::Fibre => solved.fibre.value,
            Figure::FibreWet => solved.fibre_wet.value,
            Figure::FibreWater => (solved.fibre * input.fibre_moisture.dry_basis()).value,
            Figure::Solids => solved.solids.value,
            Figure::FurnishPerFibre => (solved.solids / solved.fibre).value,
            Figure::WaterNeeded => water.needed?.value,
            Figure::WaterOnHand => water.on_hand.value,
            Figure::WaterDose => water.dose.value,
            Figure::WaterDoseVolume => (water.dose / water_at_20c()?).value,
            Figure::WaterDoseOnFibre => (water.dose / solved.fibre).value,
            Figure::WaterExcess => water.needed.map(|_| water.excess.value)?,
            Figure::FibreMoistureForNoWater => water.fibre_moisture_for_none.filter(|w| w.value >= 0.0)?.value,
            Figure::BlenderMoisture => water.blender_out.dry_basis().value,
            Figure::MatMoisture => water.mat.dry_basis().value,
            Figure::FurnishWet => (solved.solids * water.blender_out.wet_per_dry()).value,
            Figure::MatWet => mat.wet.value,
            Figure::MatOvenDry => mat.od.value,
            Figure::MatFibre => mat.fibre.value,
            Figure::MatWater => mat.water.value,
            Figure::MatRunning => mat.running?.value,
            Figure::MatHeight => mat.height?.value,
            Figure::Compaction => mat.compaction?.value,
            Figure::Reject => losses.reject.value,
            Figure::NetSolids => line.net_solids.value,
            Figure::TransportVapour => losses.transport_vapour.value,
            Figure::Trim => losses.trim?.value,
            Figure::LineSpeed => line.speed?.value,
            Figure::PressedThickness => mat.pressed_thickness.value,
            Figure::PressTime => line.press_time?.value,
            Figure::PressFactor => line.press_factor?.value,
            Figure::SurfaceSpray => losses.surface_spray.value,
            Figure::SurfaceSprayVolume => (losses.surface_spray / water_at_20c()?).value,
            Figure::PressVapour => losses.press_vapour.value,
            Figure::HeatPerWater => losses.heat_per_water.value,
            Figure::PressHeat => losses.press_heat.value,
            Figure::RawBoard => mat.raw_board.value,
            Figure::FinishedArea => line.finished_area.value,
            Figure::FinishedVolume => line.finished_volume.value,
            Figure::FinishedMass => line.finished_mass.value,
            Figure::SanderDust => losses.sander_dust.value,
            Figure::Offcuts => losses.offcuts.value,
            Figure::FibrePerVolume => usage.fibre_per_volume.value,
            Figure::FibrePerArea => usage.fibre_per_area.value,
            Figure::FibrePerBoardMass => usage.fibre_per_board_mass.value,
            Figure::FibrePerShift => (solved.fibre * input.line.shift).value,
            Figure::WaterPerVolume => usage.water_per_volume.value,
            Figure::FibreCost => usage.fibre_cost?.per_cubic_metre(),
            Figure::Cost => self.anything_priced().then(|| usage.cost.per_cubic_metre())?,
            Figure::Used(machine) => self.capacity(machine)?.used.value,
            Figure::FibreAtLimit(machine) => self.capacity(machine)?.fibre_at_limit.value,
            Figure::Liquid(id, part) => {
                let flow = self.liquid(id)?;
                match part {
                    LiquidFigure::Solids => flow.solids.value,
                    LiquidFigure::Liquid => flow.liquid.value,
                    LiquidFigure::Volume => flow.volume.value,
                    LiquidFigure::Water => flow.water.value,
                    LiquidFigure::Thinning => self.is_thinned(id).then_some(flow.thinning.value)?,
                    LiquidFigure::Spray => self.is_thinned(id).then_some(flow.spray.value)?,
                    LiquidFigure::Share | LiquidFigure::SolidsOnFibre | LiquidFigure::InMat if flow.on_faces => {
                        return None;
                    }
                    LiquidFigure::Share => flow.share.value,
                    LiquidFigure::SolidsOnFibre => flow.solids_on_fibre.value,
                    LiquidFigure::LiquidOnFibre => flow.liquid_on_fibre.value,
                    LiquidFigure::ThinningOnFibre => {
                        self.is_thinned(id).then_some((flow.thinning / solved.fibre).value)?
                    }
                    LiquidFigure::InMat => flow.in_mat.value,
                    LiquidFigure::PerVolume => flow.per_volume.value,
                    LiquidFigure::PerArea => flow.per_area.value,
                    LiquidFigure::PerBoardMass => flow.per_board_mass.value,
                    LiquidFigure::PerShift => (flow.liquid * input.line.shift).value,
                    LiquidFigure::VolumePerShift => (flow.volume * input.line.shift).value,
                    LiquidFigure::Cost => flow.cost?.per_cubic_metre(),
                }
            }
        })
    }

    /// Whether a liquid is thinned before it is sprayed.
    #[must_use]
    pub fn is_thinned(&self, id: LiquidId) -> bool {
        self.input.liquids.as_slice().iter().any(|liquid| liquid.id == id && liquid.spray_solids.is_some())
    }

    /// Whether anything in the recipe has a price; a cost of nothing is not worth showing.
    #[must_use]
    pub fn anything_priced(&self) -> bool {
        self.solved.usage.fibre_cost.is_some() || self.solved.liquids.iter().any(|flow| flow.cost.is_some())
    }

    /// A liquid's dose as another way to enter it would have it, so that changing the way changes
    /// nothing but the numbers. `None` for a liquid or a base that is not there, for a base without solids, and between the furnish
    /// and the faces, where the liquid would go another way.
    #[must_use]
    pub fn dose_in(&self, id: LiquidId, way: DoseWay) -> Option<Amount> {
        let part = |part| self.figure(Figure::Liquid(id, part));
        if self.liquid(id)?.on_faces != way.is_on_faces() {
            return None;
        }
        match way {
            DoseWay::SolidsOnFibre => part(LiquidFigure::SolidsOnFibre),
            DoseWay::LiquidOnFibre => part(LiquidFigure::LiquidOnFibre),
            DoseWay::LiquidPerBoard => part(LiquidFigure::PerVolume),
            DoseWay::LiquidOnFaces(faces) => {
                let flow = self.liquid(id)?;
                let on_mat = flow.liquid / (self.solved.line.net_solids / self.solved.mat.od);
                let dose = on_mat / f64::from(faces.count());
                dose.is_finite().then(|| Amount::from_base(Kind::UsePerArea, dose.value))
            }
            DoseWay::SolidsOnLiquid(base) => {
                let dose = self.liquid(id)?.solids / self.liquid(base)?.solids;
                dose.is_finite().then(|| Amount::from_base(Kind::Dose, dose.value))
            }
        }
    }

    fn capacity(&self, machine: Machine) -> Option<&crate::domain::balance::machine::Capacity> {
        self.solved.capacities.iter().find(|capacity| capacity.machine == machine)
    }
}

/// Density of dosed water, taken at 20 °C.
fn water_at_20c() -> Option<uom::si::f64::MassDensity> {
    use uom::si::f64::ThermodynamicTemperature;
    use uom::si::thermodynamic_temperature::degree_celsius;
    crate::domain::chemistry::water::density(ThermodynamicTemperature::new::<degree_celsius>(20.0)).ok()
}
