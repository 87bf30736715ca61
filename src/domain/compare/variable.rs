//! One number of a recipe that can be solved, read and set by its field, without any text and
//! without allocation: what sweeps, root finders and draws turn.

use crate::domain::balance::cost::Price;
use crate::domain::recipe::draft::LiquidDraft;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::input::{Dosing, Feed, Input, Liquid, WaterPlan};
use crate::domain::recipe::limit::{self, Limit};
use crate::domain::recipe::liquid::{DoseWay, LiquidId, Role};
use crate::domain::working::given;
use crate::quantity::{Amount, Dose, Kind, Moisture, Solids, Unit};
use uom::si::f64::{
    ArealMassDensity, InverseVelocity, Length, MassDensity, MassRate, Ratio, ThermodynamicTemperature, Time, Velocity,
};

/// Why a field of a recipe was not set. The recipe is as it was.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unset {
    /// The recipe does not use the field: a liquid that is not there, or a line speed where the fibre flow is given.
    NotUsed,
    /// Outside what physics allows.
    NotAllowed,
}

/// The number of a field in the base unit of its kind; `None` where the recipe does not hold one.
#[must_use]
pub fn get(input: &Input, field: Field) -> Option<f64> {
    given::field(input, field)
}

/// What the field measures in this recipe.
#[must_use]
pub fn kind(input: &Input, field: Field) -> Kind {
    match field {
        Field::Liquid(id, part) => {
            part.kind(find(input, id).map_or(DoseWay::SolidsOnFibre, |liquid| way(input, liquid)))
        }
        plain => plain.kind(),
    }
}

/// The number of a field with its kind.
#[must_use]
pub fn amount(input: &Input, field: Field) -> Option<Amount> {
    get(input, field).map(|base| Amount::from_base(kind(input, field), base))
}

/// What the field may hold in this recipe, and what is usual.
#[must_use]
pub fn limit(input: &Input, field: Field) -> Limit {
    let Field::Liquid(id, part) = field else {
        let plain = limit::plain(field);
        let density = Unit::KilogramPerCubicMetre.from_base(input.board.density.value);
        return if field == Field::MatMoisture { plain.within(limit::mat_moisture(density)) } else { plain };
    };
    let Some(liquid) = find(input, id) else { return limit::plain(field) };
    // The table is asked with a liquid as entered; an empty one allocates nothing.
    let mut entered = LiquidDraft::blank(id, liquid.role);
    entered.substance = liquid.substance;
    entered.dose_way = way(input, liquid);
    let another = |other: &Liquid| other.id != id && other.role == Role::Binder;
    limit::liquid(&entered, part, input.liquids.as_slice().iter().any(another), input.product)
}

fn find(input: &Input, id: LiquidId) -> Option<&Liquid> {
    input.liquids.as_slice().iter().find(|liquid| liquid.id == id)
}

fn way(input: &Input, liquid: &Liquid) -> DoseWay {
    match liquid.dosing {
        Dosing::SolidsOnFibre(_) => DoseWay::SolidsOnFibre,
        Dosing::LiquidOnFibre(_) => DoseWay::LiquidOnFibre,
        Dosing::LiquidPerBoard(_) => DoseWay::LiquidPerBoard,
        Dosing::SolidsOnLiquid(_, base) => {
            DoseWay::SolidsOnLiquid(input.liquids.as_slice().get(base).map_or(liquid.id, |base| base.id))
        }
    }
}

/// Every field that holds a number in this recipe and may hold another, in the order of the page. The solids of an isocyanate
/// may not.
pub fn used(input: &Input) -> impl Iterator<Item = Field> {
    let liquids = input
        .liquids
        .as_slice()
        .iter()
        .flat_map(|liquid| LiquidField::ALL.iter().map(|part| Field::Liquid(liquid.id, *part)));
    let varies = |field: &Field| {
        let limit = limit(input, *field);
        limit.least < limit.most
    };
    Field::PLAIN.iter().copied().chain(liquids).filter(move |field| get(input, *field).is_some() && varies(field))
}

/// Whether fields that depend on each other agree: nothing is thinned to more than it holds, and no
/// mat is cut wider than it was spread. [`check`](crate::domain::check) refuses the rest of what
/// [`set`] does not.
#[must_use]
pub fn consistent(input: &Input) -> bool {
    ordered(input).all(|(small, large)| match (get(input, small), get(input, large)) {
        (Some(small), Some(large)) => small <= large,
        _ => true,
    })
}

/// Pairs of fields of which the first may not be above the second.
pub fn ordered(input: &Input) -> impl Iterator<Item = (Field, Field)> {
    let thinned = input.liquids.as_slice().iter().filter(|liquid| liquid.spray_solids.is_some()).map(|liquid| {
        (Field::Liquid(liquid.id, LiquidField::SpraySolids), Field::Liquid(liquid.id, LiquidField::Solids))
    });
    std::iter::once((Field::MatWidth, Field::SpreadWidth)).chain(thinned)
}

/// Sets a number, given in the base unit of the field's kind. A field that was blank is filled in.
///
/// # Errors
/// [`Unset`]; the recipe is then as it was.
pub fn set(input: &mut Input, field: Field, base: f64) -> Result<(), Unset> {
    if !limit(input, field).allows(base) {
        let used = !matches!(field, Field::Liquid(id, _) if find(input, id).is_none());
        return Err(if used { Unset::NotAllowed } else { Unset::NotUsed });
    }
    put(input, field, base)
}

/// Sets a number that is known to be allowed.
fn put(input: &mut Input, field: Field, base: f64) -> Result<(), Unset> {
    let moisture = || Moisture::from_dry_basis(base).ok_or(Unset::NotAllowed);
    let length = Length { value: base, ..Length::default() };
    let Input { board, line, limits, .. } = input;
    match field {
        Field::FibreFlow => match &mut input.feed {
            Feed::OvenDry(flow) | Feed::Belt(flow) => flow.value = base,
            Feed::LineSpeed(..) | Feed::PressFactor(..) => return Err(Unset::NotUsed),
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
                Feed::OvenDry(_) | Feed::Belt(_) => {}
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
        Field::TopLineSpeed => limits.line_speed = Some(Velocity { value: base, ..Velocity::default() }),
        Field::Liquid(id, part) => put_liquid(input.liquids.get_mut(id).ok_or(Unset::NotUsed)?, part, base)?,
    }
    Ok(())
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
        },
        LiquidField::Solids => liquid.solids = solids()?,
        LiquidField::Density => liquid.density.value = base,
        LiquidField::SpraySolids => liquid.spray_solids = Some(solids()?),
        LiquidField::Price => liquid.price = Some(Price::per_kilogram(base).ok_or(Unset::NotAllowed)?),
    }
    Ok(())
}
