//! One number of a recipe that can be solved, read and set by its field, without any text and
//! without allocation: what sweeps, root finders and draws turn.

use crate::domain::recipe::draft::LiquidDraft;
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::input::{Dosing, Input, Liquid};
use crate::domain::recipe::limit::{self, Limit};
use crate::domain::recipe::liquid::{DoseWay, LiquidId, Role};
use crate::domain::working::given;
use crate::quantity::{Amount, Kind};

pub use crate::domain::recipe::input::Unset;

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
        return if field == Field::MatMoisture { plain.within(input.typical_mat_moisture()) } else { plain };
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
        Dosing::LiquidOnFaces(_, faces) => DoseWay::LiquidOnFaces(faces),
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
    input.put(field, base)
}
