//! The solved balance. Flows are those of the running line; "per area" is per area of mat or board.

use crate::domain::balance::cost::Cost;
use crate::domain::balance::machine::Capacity;
use crate::domain::recipe::input::MOST_LIQUIDS;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Moisture;
use arrayvec::ArrayVec;
use uom::si::f64::{
    ArealMassDensity, AvailableEnergy, DiffusionCoefficient, InverseVelocity, Length, LinearMassDensity, MassDensity,
    MassRate, Power, Ratio, Time, Velocity, VolumeRate,
};

/// Area per time. uom names the dimension L²/T after diffusion.
pub type AreaRate = DiffusionCoefficient;

/// One liquid, solved.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LiquidFlow {
    /// Its number within the recipe.
    pub id: LiquidId,
    /// Whether it is sprayed on the faces of the mat, and so is no part of the furnish.
    pub on_faces: bool,
    /// Solids m = d·B.
    pub solids: MassRate,
    /// Liquid as delivered L = m/s.
    pub liquid: MassRate,
    /// Liquid as delivered by volume L/ρ.
    pub volume: VolumeRate,
    /// Water that comes with it W = L − m.
    pub water: MassRate,
    /// Water that thins it to its spray solids, m/s′ − L.
    pub thinning: MassRate,
    /// What goes through the nozzles, L + thinning.
    pub spray: MassRate,
    /// Share of the furnish's solids, m/S; zero on the faces.
    pub share: Ratio,
    /// Solids per oven-dry fibre, m/F.
    pub solids_on_fibre: Ratio,
    /// Liquid as delivered per oven-dry fibre, L/F.
    pub liquid_on_fibre: Ratio,
    /// Oven-dry mass per area of mat at the former, M·m/S; zero on the faces.
    pub in_mat: ArealMassDensity,
    /// Liquid as delivered per volume of finished board.
    pub per_volume: MassDensity,
    /// Liquid as delivered per area of finished board.
    pub per_area: ArealMassDensity,
    /// Liquid as delivered per mass of finished board at its board moisture.
    pub per_board_mass: Ratio,
    /// Cost per volume of finished board; `None` without a price.
    pub cost: Option<Cost>,
}

/// The water of the furnish.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterBalance {
    /// Water W* that the mat moisture wanted needs, (ω_t+δ)·S; `None` when no moisture is wanted.
    pub needed: Option<MassRate>,
    /// Water W on hand before any is dosed: with the fibre, the liquids and the thinning.
    pub on_hand: MassRate,
    /// Water dose.
    pub dose: MassRate,
    /// Water above what is needed, W − W*; zero unless the furnish is too wet.
    pub excess: MassRate,
    /// Fibre moisture ω_f0 at which the dose would be exactly zero, dry basis. Negative where no
    /// fibre is dry enough. `None` when no mat moisture is wanted.
    pub fibre_moisture_for_none: Option<Ratio>,
    /// Furnish moisture as it leaves the blender.
    pub blender_out: Moisture,
    /// Mat moisture at the former.
    pub mat: Moisture,
}

/// The mat and the board per area.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mat {
    /// Pressed thickness t_p = t + a.
    pub pressed_thickness: Length,
    /// Raw board at board moisture, m = ρ·(t + k·a).
    pub raw_board: ArealMassDensity,
    /// Oven-dry mat weight at the former, M = m/(1+ω_b) less what is sprayed on the faces behind it.
    pub od: ArealMassDensity,
    /// Solids sprayed on the faces.
    pub on_faces: ArealMassDensity,
    /// Moist mat weight M·(1+ω_mat).
    pub wet: ArealMassDensity,
    /// Oven-dry fibre in the mat, M·F/S.
    pub fibre: ArealMassDensity,
    /// Water in the mat, M·ω_mat.
    pub water: ArealMassDensity,
    /// Moist mat weight per running metre; `None` without a mat width.
    pub running: Option<LinearMassDensity>,
    /// Mat height; `None` without a bulk density.
    pub height: Option<Length>,
    /// Mat height per pressed thickness.
    pub compaction: Option<Ratio>,
}

/// The line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineRun {
    /// Solids S·(1−r) that reach the press.
    pub net_solids: MassRate,
    /// Line speed v = S_n/(M·b); `None` without a mat width.
    pub speed: Option<Velocity>,
    /// Pressing time; `None` without a press length.
    pub press_time: Option<Time>,
    /// Press factor; `None` without a press length.
    pub press_factor: Option<InverseVelocity>,
    /// Finished board area.
    pub finished_area: AreaRate,
    /// Finished board volume.
    pub finished_volume: VolumeRate,
    /// Finished board mass at board moisture.
    pub finished_mass: MassRate,
}

/// What leaves the line beside the board. Masses are oven-dry unless water is named.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Losses {
    /// Solids of the furnish rejected by the sifter, r·S.
    pub reject: MassRate,
    /// Solids of the trimmed edges, which return to the former; `None` without both widths.
    pub trim: Option<MassRate>,
    /// Solids sanded off.
    pub sander_dust: MassRate,
    /// Solids of edges and crosscuts.
    pub offcuts: MassRate,
    /// Water lost on the way to the former, S_n·δ.
    pub transport_vapour: MassRate,
    /// Water sprayed on the mat by itself.
    pub surface_spray: MassRate,
    /// Water driven out in the press, S_n·(ω_mat−ω_exit) + surface spray + what the liquids on the faces bring, less ω_exit of their solids.
    pub press_vapour: MassRate,
    /// Heat to warm and evaporate a mass of that water, from the mat's temperature at 101.325 kPa.
    pub heat_per_water: AvailableEnergy,
    /// Heat that the water driven out takes.
    pub press_heat: Power,
}

/// Use and cost of the fibre and the whole, per finished board.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Use {
    /// Oven-dry fibre per volume.
    pub fibre_per_volume: MassDensity,
    /// Oven-dry fibre per area.
    pub fibre_per_area: ArealMassDensity,
    /// Oven-dry fibre per mass of board at board moisture.
    pub fibre_per_board_mass: Ratio,
    /// Dosed water (with the thinning) per volume.
    pub water_per_volume: MassDensity,
    /// Cost of the fibre per volume; `None` without a price.
    pub fibre_cost: Option<Cost>,
    /// Cost per volume of everything that has a price.
    pub cost: Cost,
}

/// The solved balance of one recipe.
#[derive(Debug, Clone, PartialEq)]
pub struct Solved {
    /// Oven-dry fibre flow F.
    pub fibre: MassRate,
    /// Fibre flow as a belt scale reads it, F·(1+ω_f).
    pub fibre_wet: MassRate,
    /// Solids of the furnish S = F + Σm.
    pub solids: MassRate,
    /// The liquids, in the recipe's order.
    pub liquids: ArrayVec<LiquidFlow, MOST_LIQUIDS>,
    /// The water.
    pub water: WaterBalance,
    /// The mat.
    pub mat: Mat,
    /// The line.
    pub line: LineRun,
    /// What leaves beside the board.
    pub losses: Losses,
    /// Use and cost.
    pub usage: Use,
    /// How far each machine with a limit is used, the limiting one first.
    pub capacities: ArrayVec<Capacity, 4>,
}

impl Solved {
    /// Whether every figure is a number. Bounds on the input see to that; this is the last guard
    /// before a figure is shown.
    #[must_use]
    pub fn is_finite(&self) -> bool {
        let Self { water, mat, line, losses, usage, .. } = self;
        let liquids = self.liquids.iter().all(|flow| {
            [
                flow.solids.is_finite(),
                flow.liquid.is_finite(),
                flow.volume.is_finite(),
                flow.spray.is_finite(),
                flow.share.is_finite(),
                flow.solids_on_fibre.is_finite(),
                flow.liquid_on_fibre.is_finite(),
                flow.per_volume.is_finite(),
                flow.per_board_mass.is_finite(),
                flow.cost.is_none_or(Cost::is_finite),
            ]
            .into_iter()
            .all(|finite| finite)
        });
        let optional = [
            mat.running.is_none_or(|x| x.is_finite()),
            mat.height.is_none_or(|x| x.is_finite()),
            mat.compaction.is_none_or(|x| x.is_finite()),
            line.speed.is_none_or(|x| x.is_finite()),
            line.press_time.is_none_or(|x| x.is_finite()),
            line.press_factor.is_none_or(|x| x.is_finite()),
            losses.trim.is_none_or(|x| x.is_finite()),
            water.needed.is_none_or(|x| x.is_finite()),
            water.fibre_moisture_for_none.is_none_or(|x| x.is_finite()),
        ];
        let plain = [
            self.fibre.is_finite(),
            self.fibre_wet.is_finite(),
            self.solids.is_finite(),
            water.on_hand.is_finite(),
            water.dose.is_finite(),
            water.excess.is_finite(),
            mat.raw_board.is_finite(),
            mat.od.is_finite(),
            mat.wet.is_finite(),
            mat.fibre.is_finite(),
            line.net_solids.is_finite(),
            line.finished_area.is_finite(),
            line.finished_volume.is_finite(),
            line.finished_mass.is_finite(),
            losses.press_vapour.is_finite(),
            losses.press_heat.is_finite(),
            usage.fibre_per_volume.is_finite(),
            usage.fibre_per_board_mass.is_finite(),
            usage.water_per_volume.is_finite(),
            usage.cost.is_finite(),
        ];
        liquids
            && optional.into_iter().chain(plain).all(|finite| finite)
            && self.capacities.iter().all(|capacity| capacity.used.is_finite() && capacity.fibre_at_limit.is_finite())
    }
}
