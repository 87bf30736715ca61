//! A recipe that can be solved: every number read, converted and within what physics allows.

use crate::domain::balance::cost::Price;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::limit::{Window, mat_moisture};
use crate::domain::recipe::liquid::{Faces, LiquidId, Role, Substance};
use crate::domain::recipe::product::Product;
use crate::quantity::{Dose, Moisture, Solids, Unit};
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
    /// None: a laboratory recipe. Flows are those of a nominal oven-dry fibre flow and are not shown.
    None,
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
    /// Liquid as delivered per area of each sprayed face.
    LiquidOnFaces(ArealMassDensity, Faces),
}

impl Dosing {
    /// Liquid as delivered per area of mat that is sprayed on its faces; `None` for what goes into the furnish.
    #[must_use]
    pub fn on_faces(self) -> Option<ArealMassDensity> {
        match self {
            Self::LiquidOnFaces(dose, faces) => Some(dose * f64::from(faces.count())),
            _ => None,
        }
    }
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
    /// The liquid at this place is dosed on one that is sprayed on the faces, and so is not in the furnish.
    OnFaces(usize),
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
    /// [`BaseError`] with the first liquid whose base is missing, not in the furnish, or part of a loop.
    pub fn new(list: ArrayVec<Liquid, MOST_LIQUIDS>) -> Result<Self, BaseError> {
        let mut order = ArrayVec::<u8, MOST_LIQUIDS>::new();
        for (at, liquid) in list.iter().enumerate() {
            if let Dosing::SolidsOnLiquid(_, base) = liquid.dosing {
                match list.get(base) {
                    None => return Err(BaseError::Missing(at)),
                    Some(base) if base.dosing.on_faces().is_some() => return Err(BaseError::OnFaces(at)),
                    Some(_) => {}
                }
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
    /// Water sprayed on the mat before the press, per area of each sprayed face.
    pub surface_spray: ArealMassDensity,
    /// The faces that it is sprayed on.
    pub sprayed_faces: Faces,
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
    /// Highest mat moisture that the press takes.
    pub mat_moisture: Option<Moisture>,
}

/// Why a field of a recipe was not set. The recipe is as it was.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unset {
    /// The recipe does not use the field: a liquid that is not there, or a line speed where the fibre flow is given.
    NotUsed,
    /// Outside what physics allows.
    NotAllowed,
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

impl Line {
    /// Water sprayed on the faces, per area of mat.
    #[must_use]
    pub fn face_water(&self) -> ArealMassDensity {
        self.surface_spray * f64::from(self.sprayed_faces.count())
    }
}

impl Input {
    /// Board moisture as it leaves the press; without one of its own, that of the finished board.
    #[must_use]
    pub fn exit_moisture(&self) -> Moisture {
        self.line.exit_moisture.unwrap_or(self.board.moisture)
    }

    /// The typical mat moisture of this board; up to the limit of this press where one is given.
    #[must_use]
    pub fn typical_mat_moisture(&self) -> Window {
        let limit = self.limits.mat_moisture.map(|limit| Unit::PercentDryBasis.from_base(limit.dry_basis().value));
        mat_moisture(Unit::KilogramPerCubicMetre.from_base(self.board.density.value)).up_to(limit)
    }

    /// The number of a field in the base unit of its kind; `None` where the recipe does not use it.
    #[must_use]
    pub fn get(&self, field: Field) -> Option<f64> {
        let input = self;
        let Input { board, line, limits, .. } = input;
        Some(match field {
            Field::FibreFlow => match input.feed {
                Feed::OvenDry(flow) | Feed::Belt(flow) => flow.value,
                _ => return None,
            },
            Field::WantedLineSpeed => match input.feed {
                Feed::LineSpeed(speed, _) => speed.value,
                _ => return None,
            },
            Field::WantedPressFactor => match input.feed {
                Feed::PressFactor(factor, _) => factor.value,
                _ => return None,
            },
            Field::FibreMoisture => input.fibre_moisture.dry_basis().value,
            Field::FibrePrice => input.fibre_price?.get(),
            Field::MatMoisture => match input.water {
                WaterPlan::ToMatMoisture(moisture) => moisture.dry_basis().value,
                _ => return None,
            },
            Field::WaterOnFibre => match input.water {
                WaterPlan::OnFibre(dose) => dose.ratio().value,
                _ => return None,
            },
            Field::WaterFlow => match input.water {
                WaterPlan::Flow(flow) => flow.value,
                _ => return None,
            },
            Field::DryingLoss => input.drying_loss.value,
            Field::BoardDensity => board.density.value,
            Field::BoardMoisture => board.moisture.dry_basis().value,
            Field::Thickness => board.thickness.value,
            Field::SandTop => board.sand_top.value,
            Field::SandBottom => board.sand_bottom.value,
            Field::SurfaceRatio => board.surface_ratio.value,
            Field::MatWidth => line.width?.value,
            Field::SpreadWidth => line.spread_width?.value,
            Field::PressLength => line.press_length?.value,
            Field::Reject => line.reject.value,
            Field::AreaYield => line.area_yield.value,
            Field::ExitMoisture => input.exit_moisture().dry_basis().value,
            Field::MatBulkDensity => line.bulk_density?.value,
            Field::MatTemperature => line.mat_temperature.value,
            Field::SurfaceSpray => line.surface_spray.value,
            Field::ShiftHours => line.shift.value,
            Field::FibreSupply => limits.fibre_supply?.value,
            Field::BlenderCapacity => limits.blender?.value,
            Field::LeastPressFactor => limits.press_factor?.value,
            Field::TopLineSpeed => limits.line_speed?.value,
            Field::SteamLimit => limits.mat_moisture?.dry_basis().value,
            Field::Liquid(id, part) => {
                let liquid = input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?;
                match part {
                    LiquidField::Dose => match liquid.dosing {
                        Dosing::SolidsOnFibre(dose) | Dosing::SolidsOnLiquid(dose, _) | Dosing::LiquidOnFibre(dose) => {
                            dose.ratio().value
                        }
                        Dosing::LiquidPerBoard(dose) => dose.value,
                        Dosing::LiquidOnFaces(dose, _) => dose.value,
                    },
                    LiquidField::Solids => liquid.solids.ratio().value,
                    LiquidField::Density => liquid.density.value,
                    LiquidField::SpraySolids => liquid.spray_solids?.ratio().value,
                    LiquidField::Price => liquid.price?.get(),
                }
            }
        })
    }

    /// Sets a number, in the base unit of the field's kind, that is known to be allowed by its limit. A field that was blank is filled in.
    ///
    /// # Errors
    /// [`Unset`]; the recipe is then as it was.
    pub(in crate::domain) fn put(&mut self, field: Field, base: f64) -> Result<(), Unset> {
        let input = self;
        let moisture = || Moisture::from_dry_basis(base).ok_or(Unset::NotAllowed);
        let length = Length { value: base, ..Length::default() };
        let Input { board, line, limits, .. } = input;
        match field {
            Field::FibreFlow => match &mut input.feed {
                Feed::OvenDry(flow) | Feed::Belt(flow) => flow.value = base,
                Feed::LineSpeed(..) | Feed::PressFactor(..) | Feed::None => return Err(Unset::NotUsed),
            },
            Field::WantedLineSpeed => match &mut input.feed {
                Feed::LineSpeed(speed, _) => speed.value = base,
                _ => return Err(Unset::NotUsed),
            },
            Field::WantedPressFactor => match &mut input.feed {
                Feed::PressFactor(factor, _) => factor.value = base,
                _ => return Err(Unset::NotUsed),
            },
            Field::FibreMoisture => input.fibre_moisture = moisture()?,
            Field::FibrePrice => input.fibre_price = Some(Price::per_kilogram(base).ok_or(Unset::NotAllowed)?),
            Field::MatMoisture => match &mut input.water {
                WaterPlan::ToMatMoisture(wanted) => *wanted = moisture()?,
                _ => return Err(Unset::NotUsed),
            },
            Field::WaterOnFibre => match &mut input.water {
                WaterPlan::OnFibre(dose) => *dose = Dose::new(base).ok_or(Unset::NotAllowed)?,
                _ => return Err(Unset::NotUsed),
            },
            Field::WaterFlow => match &mut input.water {
                WaterPlan::Flow(flow) => flow.value = base,
                _ => return Err(Unset::NotUsed),
            },
            Field::DryingLoss => input.drying_loss.value = base,
            Field::BoardDensity => board.density.value = base,
            Field::BoardMoisture => board.moisture = moisture()?,
            Field::Thickness => board.thickness.value = base,
            Field::SandTop => board.sand_top.value = base,
            Field::SandBottom => board.sand_bottom.value = base,
            Field::SurfaceRatio => board.surface_ratio.value = base,
            Field::MatWidth => {
                line.width = Some(length);
                match &mut input.feed {
                    Feed::LineSpeed(_, width) => *width = length,
                    Feed::PressFactor(_, press) => press.width = length,
                    Feed::OvenDry(_) | Feed::Belt(_) | Feed::None => {}
                }
            }
            Field::SpreadWidth => line.spread_width = Some(length),
            Field::PressLength => {
                line.press_length = Some(length);
                if let Feed::PressFactor(_, press) = &mut input.feed {
                    press.length = length;
                }
            }
            Field::Reject => line.reject.value = base,
            Field::AreaYield => line.area_yield = Ratio { value: base, ..Ratio::default() },
            Field::ExitMoisture => line.exit_moisture = Some(moisture()?),
            Field::MatBulkDensity => line.bulk_density = Some(MassDensity { value: base, ..MassDensity::default() }),
            Field::MatTemperature => {
                line.mat_temperature = ThermodynamicTemperature { value: base, ..ThermodynamicTemperature::default() };
            }
            Field::SurfaceSpray => line.surface_spray = ArealMassDensity { value: base, ..ArealMassDensity::default() },
            Field::ShiftHours => line.shift = Time { value: base, ..Time::default() },
            Field::FibreSupply => limits.fibre_supply = Some(MassRate { value: base, ..MassRate::default() }),
            Field::BlenderCapacity => limits.blender = Some(MassRate { value: base, ..MassRate::default() }),
            Field::LeastPressFactor => {
                limits.press_factor = Some(InverseVelocity { value: base, ..InverseVelocity::default() });
            }
            Field::SteamLimit => limits.mat_moisture = Some(moisture()?),
            Field::TopLineSpeed => limits.line_speed = Some(Velocity { value: base, ..Velocity::default() }),
            Field::Liquid(id, part) => put_liquid(input.liquids.get_mut(id).ok_or(Unset::NotUsed)?, part, base)?,
        }
        Ok(())
    }
}

fn put_liquid(liquid: &mut Liquid, part: LiquidField, base: f64) -> Result<(), Unset> {
    let dose = || Dose::new(base).ok_or(Unset::NotAllowed);
    let solids = || Solids::new(base).ok_or(Unset::NotAllowed);
    match part {
        LiquidField::Dose => match &mut liquid.dosing {
            Dosing::SolidsOnFibre(given) | Dosing::SolidsOnLiquid(given, _) | Dosing::LiquidOnFibre(given) => {
                *given = dose()?;
            }
            Dosing::LiquidPerBoard(given) => given.value = base,
            Dosing::LiquidOnFaces(given, _) => given.value = base,
        },
        LiquidField::Solids => liquid.solids = solids()?,
        LiquidField::Density => liquid.density.value = base,
        LiquidField::SpraySolids => liquid.spray_solids = Some(solids()?),
        LiquidField::Price => liquid.price = Some(Price::per_kilogram(base).ok_or(Unset::NotAllowed)?),
    }
    Ok(())
}
