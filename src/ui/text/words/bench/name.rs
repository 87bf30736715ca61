//! Names of things at the bench.

use super::field::{board_field, field, recovery_field, series_field};
use super::figure::property;
use crate::domain::trial::boards::board::BoardId;
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::boards::requirement_set::RequirementSet;
use crate::domain::trial::series::design::Design;
use crate::domain::trial::series::draft::{BlockWay, DesignWay};
use crate::domain::trial::series::effects::{ModelWay, Term};
use crate::domain::trial::series::factor::{Factor, Level, OwnFactor};
use crate::domain::trial::series::field::{FactorId, Of, SeriesField};
use crate::domain::trial::series::material::Material;
use crate::domain::trial::series::word::letter;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SprayWay, ThicknessWay, WaterPlace};
use crate::domain::trial::{LineId, SeriesDraft, TrialPlace};
use crate::domain::{Draft, LiquidId};
use crate::quantity::format::full;
pub(super) use crate::ui::text::lower_first;
use crate::ui::text::words::{field as recipe_field, name};
use crate::ui::text::{BenchContext, Context, shown};

pub(super) fn liquid(id: LiquidId, draft: &Draft) -> String {
    draft.liquid(id).map_or_else(|| "Liquid".to_owned(), |liquid| name::liquid(liquid).into_owned())
}

pub(super) fn line(line: LineId, draft: &Draft) -> String {
    match line {
        LineId::Fibre => "Fibre, moist".to_owned(),
        LineId::Liquid(id) => liquid(id, draft),
        LineId::Thinning(id) => format!("Water to thin {}", liquid(id, draft)),
        LineId::Water => "Water".to_owned(),
    }
}

pub(super) fn factor(of: Of, own: &OwnFactor, draft: &Draft) -> String {
    match of {
        Of::Dose(id) => format!("Dose of {}", liquid(id, draft)),
        Of::BoardDensity => "Board density".to_owned(),
        Of::MatMoisture => "Mat moisture".to_owned(),
        Of::PressFactor => "Press factor".to_owned(),
        Of::System => "Binder system".to_owned(),
        Of::Own(_) => match own.name.trim() {
            "" => "Other factor".to_owned(),
            name => name.to_owned(),
        },
    }
}

pub(super) fn level(level: &Level, context: &Context<'_>) -> String {
    match level {
        Level::Value(amount) => shown(*amount, context),
        Level::System(name) if name.is_empty() => "a system without a name".to_owned(),
        Level::System(name) | Level::Text(name) => name.clone(),
        Level::Number { value, unit } => format!("{}\u{a0}{unit}", full(*value, context.units.mark)),
    }
}

pub(super) fn term(term: Term, factors: &[Factor], draft: &Draft) -> String {
    let called =
        |at: usize| factors.get(at).map_or_else(|| letter(at).to_string(), |own| factor(own.of, &own.own, draft));
    match term {
        Term::Blocks => "Blocks".to_owned(),
        Term::Main(factor) => called(factor),
        Term::Pair(one, other) => format!("{} × {}", called(one), lower_first(&called(other))),
    }
}

pub(super) fn material(material: Material, series: &SeriesDraft, draft: &Draft) -> String {
    match material {
        Material::Fibre => "Fibre, moist".to_owned(),
        Material::Water => "Water".to_owned(),
        Material::Liquid(None, id) => liquid(id, draft),
        Material::Liquid(Some(at), id) => {
            let system = series.factors.iter().find(|factor| factor.of == Of::System);
            let level = system.and_then(|factor| factor.levels.get(usize::from(at)));
            let own = level.and_then(|level| level.liquids.iter().find(|liquid| liquid.id == id));
            let liquid = own.map_or_else(|| "Liquid".to_owned(), |liquid| name::liquid(liquid).into_owned());
            match level.map(|level| level.name.trim()).filter(|name| !name.is_empty()) {
                Some(system) => format!("{liquid}, of {system}"),
                None => liquid,
            }
        }
    }
}

fn factor_called(id: FactorId, context: &BenchContext<'_>) -> String {
    let own = context.series.factors.iter().enumerate().find(|(_, factor)| factor.id == id);
    own.map_or_else(
        || "A factor".to_owned(),
        |(at, own)| format!("Factor {}, {}", letter(at), lower_first(&factor(own.of, &own.own, context.plain.draft))),
    )
}

fn board_called(id: BoardId, context: &BenchContext<'_>) -> String {
    let own = context.boards.iter().find(|board| board.id == id).map(|board| board.name.trim());
    match own.filter(|name| !name.is_empty()) {
        Some(name) => format!("Board {name}"),
        None => format!("Board {}", id.0),
    }
}

/// The piece that a box of a board belongs to.
fn piece_called(field: BoardField) -> String {
    let number = |at: u8| usize::from(at) + 1;
    match field {
        BoardField::Laid | BoardField::Mass | BoardField::Length | BoardField::Width | BoardField::Moisture => {
            String::new()
        }
        BoardField::Thickness(point) => format!(", point {}", number(point)),
        BoardField::Piece(at, _) => format!(", density piece {}", number(at)),
        BoardField::Bending(at, _) => format!(", bending piece {}", number(at)),
        BoardField::Bond(at, _) => format!(", bond piece {}", number(at)),
        BoardField::Swelling(at, _) => format!(", swelling piece {}", number(at)),
    }
}

pub(super) fn place(place: TrialPlace, context: &BenchContext<'_>) -> String {
    match place {
        TrialPlace::Field(own) => field(own, context.sheet).label.to_owned(),
        TrialPlace::Line(id) => line(id, context.plain.draft),
        TrialPlace::Recovery(own) => recovery_field(own).label.to_owned(),
        TrialPlace::Sheet => "Weigh sheet".to_owned(),
        TrialPlace::Recipe(crate::domain::Place::Field(own)) => recipe_field::field_name(own, context.plain.draft),
        TrialPlace::Recipe(crate::domain::Place::Liquid(id)) => liquid(id, context.plain.draft),
        TrialPlace::Recipe(crate::domain::Place::Station(station)) => name::station(station).to_owned(),
        TrialPlace::Series(SeriesField::Factor(id)) => factor_called(id, context),
        TrialPlace::Series(SeriesField::Level(id, at)) => {
            format!("{}, level {}", factor_called(id, context), usize::from(at) + 1)
        }
        TrialPlace::Series(own) => series_field(own).to_owned(),
        TrialPlace::Design => "Series".to_owned(),
        TrialPlace::Board(id, own) => {
            let label = lower_first(board_field(own).label);
            format!("{}{}, {label}", board_called(id, context), piece_called(own))
        }
        TrialPlace::Property(own) => property(own).label.to_owned(),
    }
}

pub(super) fn thickness_way(way: ThicknessWay) -> &'static str {
    match way {
        ThicknessWay::Finished => "Finished thickness; sanding is added",
        ThicknessWay::Pressed => "Pressed, not sanded",
    }
}

pub(super) fn overage_of(of: OverageOf) -> &'static str {
    match of {
        OverageOf::Moist => "Share of the moist mass",
        OverageOf::OvenDry => "Share of the oven-dry mass, added moist",
    }
}

pub(super) fn overage_on(on: OverageOn) -> &'static str {
    match on {
        OverageOn::Furnish => "On everything: furnish is lost after blending",
        OverageOn::Fibre => "On the fibre alone: it is spilled before blending",
    }
}

pub(super) fn water_place(place: WaterPlace) -> &'static str {
    match place {
        WaterPlace::Last => "Water after the liquids",
        WaterPlace::First => "Water before the liquids",
    }
}

pub(super) fn spray_way(way: SprayWay) -> &'static str {
    match way {
        SprayWay::Volume => "By volume",
        SprayWay::Mass => "By mass",
    }
}

pub(super) fn design_way(way: DesignWay, factors: usize) -> String {
    match way {
        DesignWay::Full => "All combinations".to_owned(),
        DesignWay::Fraction(p) => {
            let part = 1_u32.checked_shl(u32::from(p)).unwrap_or(0);
            match Design::fraction(factors, usize::from(p)) {
                Some(design) => format!("1/{part} of them, {}, {} runs", design.notation(), design.runs.len()),
                None => format!("1/{part} of them"),
            }
        }
    }
}

pub(super) fn block_way(way: BlockWay) -> &'static str {
    match way {
        BlockWay::None => "No blocks",
        BlockWay::Replicate => "A block a replicate",
        BlockWay::Halves => "Two blocks a replicate",
        BlockWay::Quarters => "Four blocks a replicate",
    }
}

pub(super) fn model_way(way: ModelWay) -> &'static str {
    match way {
        ModelWay::Pairs => "Main effects and pairs",
        ModelWay::Mains => "Main effects only",
    }
}

pub(super) fn requirement_set(set: RequirementSet) -> String {
    let board = match set {
        RequirementSet::ParticleboardInterior => ", P2, over 13 to 20 mm",
        RequirementSet::FibreboardDry => ", MDF, over 12 to 19 mm",
        RequirementSet::ParticleboardAnsi => ", particleboard",
        RequirementSet::FibreboardAnsi => ", MDF",
    };
    format!("{}{board}", set.standard())
}

pub(super) fn board_count(count: usize) -> String {
    if count == 1 { "1 board".to_owned() } else { format!("{count} boards") }
}
