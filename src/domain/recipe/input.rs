//! A recipe that can be solved: every number read, converted and within what physics allows.

use crate::domain::balance::cost::Price;
use crate::domain::recipe::liquid::{LiquidId, Role, Substance};
use crate::domain::recipe::product::Product;
use crate::quantity::{Dose, Moisture, Solids};
use arrayvec::ArrayVec;
use uom::si::f64::{
    ArealMassDensity, InverseVelocity, Length, MassDensity, MassRate, Ratio, ThermodynamicTemperature, Time, Velocity,
};

/// The most liquids that one recipe holds.
pub const MOST_LIQUIDS: usize = 12;

/// What fixes the fibre flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Feed {
    /// Oven-dry fibre flow F into the blender.
    OvenDry(MassRate),
    /// Reading G of a belt scale, moist fibre: F = G/(1+ω_f).
    Belt(MassRate),
    /// Line speed v; F follows backwards through the mat. Needs the mat width.
    LineSpeed(Velocity, Length),
    /// Press factor and press length with the mat width; the line speed and F follow.
    PressFactor(InverseVelocity, PressSize),
}

/// The two lengths that turn a press factor into a flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressSize {
    /// Trimmed mat width b.
    pub width: Length,
    /// Heated length of the press.
    pub length: Length,
}

/// How a liquid is dosed. The index names another liquid of the same list.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Dosing {
    /// Solids per oven-dry fibre.
    SolidsOnFibre(Dose),
    /// Solids per solids of another liquid.
    SolidsOnLiquid(Dose, usize),
    /// Liquid as delivered per oven-dry fibre.
    LiquidOnFibre(Dose),
    /// Liquid as delivered per volume of finished board.
    LiquidPerBoard(MassDensity),
}

/// One liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Liquid {
    /// Its number within the recipe.
    pub id: LiquidId,
    /// What it is for.
    pub role: Role,
    /// What it is made of.
    pub substance: Substance,
    /// Its dose.
    pub dosing: Dosing,
    /// Solids s as delivered.
    pub solids: Solids,
    /// Density ρ as delivered.
    pub density: MassDensity,
    /// Spray solids s′ < s to which it is thinned with water; `None` sprays it as delivered.
    pub spray_solids: Option<Solids>,
    /// Price as delivered.
    pub price: Option<Price>,
}

/// Why the bases of the doses do not form a tree.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BaseError {
    /// The liquid at this place is dosed on itself, perhaps by way of others.
    Loop(usize),
    /// The liquid at this place is dosed on one that is not there.
    Missing(usize),
}

/// The liquids of a recipe, whose bases are known to form a tree rooted in the fibre.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Liquids {
    list: ArrayVec<Liquid, MOST_LIQUIDS>,
    /// Places in `list`, each base before what is dosed on it.
    order: ArrayVec<u8, MOST_LIQUIDS>,
}

impl Liquids {
    /// Checks that every base is there and that none leads back to itself.
    ///
    /// # Errors
    /// [`BaseError`] with the first liquid whose base is missing or part of a loop.
    pub fn new(list: ArrayVec<Liquid, MOST_LIQUIDS>) -> Result<Self, BaseError> {
        let mut order = ArrayVec::<u8, MOST_LIQUIDS>::new();
        for (at, liquid) in list.iter().enumerate() {
            if let Dosing::SolidsOnLiquid(_, base) = liquid.dosing
                && base >= list.len()
            {
                return Err(BaseError::Missing(at));
            }
        }
        while order.len() < list.len() {
            let ready = |at: usize| match list[at].dosing {
                Dosing::SolidsOnLiquid(_, base) => order.contains(&(base as u8)),
                _ => true,
            };
            let waiting = |at: &usize| !order.contains(&(*at as u8));
            match (0..list.len()).filter(waiting).find(|at| ready(*at)) {
                Some(next) => order.push(next as u8),
                None => return Err(BaseError::Loop((0..list.len()).find(waiting).unwrap_or(0))),
            }
        }
        Ok(Self { list, order })
    }

    /// The liquids in order of addition.
    #[must_use]
    pub fn as_slice(&self) -> &[Liquid] {
        &self.list
    }

    /// A liquid, to change its numbers. Its base must stay as it is.
    pub(in crate::domain) fn get_mut(&mut self, id: LiquidId) -> Option<&mut Liquid> {
        self.list.iter_mut().find(|liquid| liquid.id == id)
    }

    /// The liquids, each after the one it is dosed on, with their places in [`as_slice`](Self::as_slice).
    pub fn bases_first(&self) -> impl Iterator<Item = (usize, &Liquid)> {
        self.order.iter().filter_map(|at| self.list.get(*at as usize).map(|liquid| (*at as usize, liquid)))
    }
}

/// What fixes the water dose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WaterPlan {
    /// As much as this mat moisture at the former needs.
    ToMatMoisture(Moisture),
    /// A fixed dose per oven-dry fibre.
    OnFibre(Dose),
    /// A fixed flow.
    Flow(MassRate),
    /// None.
    None,
}

/// The board that is wanted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Board {
    /// Density ρ of the finished board at `moisture` (EN 323).
    pub density: MassDensity,
    /// Board moisture ω_b at which the density is meant.
    pub moisture: Moisture,
    /// Finished thickness t, after sanding.
    pub thickness: Length,
    /// Sanded off the top face.
    pub sand_top: Length,
    /// Sanded off the bottom face.
    pub sand_bottom: Length,
    /// Density ratio k of the sanded-off layers to the mean.
    pub surface_ratio: Ratio,
}

/// The line from the sifter to the saw.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// Mat width b after trimming.
    pub width: Option<Length>,
    /// Width that the former spreads, at least `width`.
    pub spread_width: Option<Length>,
    /// Heated length of the press.
    pub press_length: Option<Length>,
    /// Fraction r of the furnish that the sifter rejects, below 1.
    pub reject: Ratio,
    /// Area yield y, above 0 and up to 1.
    pub area_yield: Ratio,
    /// Board moisture as it leaves the press; `None` where it is taken to be that of the finished board.
    pub exit_moisture: Option<Moisture>,
    /// Bulk density of the loose moist mat.
    pub bulk_density: Option<MassDensity>,
    /// Temperature of the mat before the press.
    pub mat_temperature: ThermodynamicTemperature,
    /// Water sprayed on the mat before the press, both faces together.
    pub surface_spray: ArealMassDensity,
    /// Length of a shift.
    pub shift: Time,
}

/// What the machines can do at most; `None` where no limit was given.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct MachineLimits {
    /// Largest oven-dry fibre flow.
    pub fibre_supply: Option<MassRate>,
    /// Largest oven-dry furnish flow through the blender.
    pub blender: Option<MassRate>,
    /// Smallest press factor.
    pub press_factor: Option<InverseVelocity>,
    /// Largest line speed.
    pub line_speed: Option<Velocity>,
}

/// A recipe that can be solved.
#[derive(Debug, Clone, PartialEq)]
pub struct Input {
    /// What is made of what.
    pub product: Product,
    /// What fixes the fibre flow.
    pub feed: Feed,
    /// Moisture ω_f of the fibre into the blender.
    pub fibre_moisture: Moisture,
    /// Price of oven-dry fibre.
    pub fibre_price: Option<Price>,
    /// The liquids.
    pub liquids: Liquids,
    /// What fixes the water dose.
    pub water: WaterPlan,
    /// Drying loss δ between blender and former, in points of dry-basis moisture, as a fraction.
    pub drying_loss: Ratio,
    /// The board.
    pub board: Board,
    /// The line.
    pub line: Line,
    /// The machines' limits.
    pub limits: MachineLimits,
}

impl Input {
    /// Board moisture as it leaves the press; without one of its own, that of the finished board.
    #[must_use]
    pub fn exit_moisture(&self) -> Moisture {
        self.line.exit_moisture.unwrap_or(self.board.moisture)
    }
}
