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
use crate::domain::{Draft, LiquidId, Place};
use crate::quantity::format::full;
pub(super) use crate::ui::text::lower_first;
use crate::ui::text::words::{field as recipe_field, name};
use crate::ui::text::{BenchContext, Context, shown};
use crate::{label, t};

pub(super) fn liquid(id: LiquidId, draft: &Draft) -> String {
    draft.liquid(id).map_or_else(|| t!("bench-name-liquid"), |liquid| name::liquid(liquid).into_owned())
}

/// What a line of the sheet weighs.
#[must_use]
pub fn line(line: LineId, draft: &Draft) -> String {
    match line {
        LineId::Fibre => t!("bench-name-fibre"),
        LineId::Liquid(id) => liquid(id, draft),
        LineId::Thinning(id) => t!("bench-name-thinning", liquid = liquid(id, draft)),
        LineId::Water => t!("bench-name-water"),
    }
}

/// What a factor changes.
#[must_use]
pub fn factor(of: Of, own: &OwnFactor, draft: &Draft) -> String {
    match of {
        Of::Dose(id) => t!("bench-name-dose", liquid = liquid(id, draft)),
        Of::BoardDensity => t!("bench-name-board-density"),
        Of::MatMoisture => t!("bench-name-mat-moisture"),
        Of::PressFactor => t!("bench-name-press-factor"),
        Of::System => t!("bench-name-system"),
        Of::Own(_) => match own.name.trim() {
            "" => t!("bench-name-other-factor"),
            name => name.to_owned(),
        },
    }
}

/// A level of a factor, with its unit.
#[must_use]
pub fn level(level: &Level, context: &Context<'_>) -> String {
    match level {
        Level::Value(amount) => shown(*amount, context),
        Level::System(name) if name.is_empty() => t!("bench-name-nameless-system"),
        Level::System(name) | Level::Text(name) => name.clone(),
        Level::Number { value, unit } => format!("{}\u{a0}{unit}", full(*value, context.units.mark)),
    }
}

/// A term of the model by its factors' names.
#[must_use]
pub fn term(term: Term, factors: &[Factor], draft: &Draft) -> String {
    let called =
        |at: usize| factors.get(at).map_or_else(|| letter(at).to_string(), |own| factor(own.of, &own.own, draft));
    match term {
        Term::Blocks => t!("bench-name-blocks"),
        Term::Main(factor) => called(factor),
        Term::Pair(one, other) => format!("{} × {}", called(one), lower_first(&called(other))),
    }
}

/// What is taken from the store.
#[must_use]
pub fn material(material: Material, series: &SeriesDraft, draft: &Draft) -> String {
    match material {
        Material::Fibre => t!("bench-name-fibre"),
        Material::Water => t!("bench-name-water"),
        Material::Liquid(None, id) => liquid(id, draft),
        Material::Liquid(Some(at), id) => {
            let system = series.factors.iter().find(|factor| factor.of == Of::System);
            let level = system.and_then(|factor| factor.levels.get(usize::from(at)));
            let own = level.and_then(|level| level.liquids.iter().find(|liquid| liquid.id == id));
            let liquid = own.map_or_else(|| t!("bench-name-liquid"), |liquid| name::liquid(liquid).into_owned());
            match level.map(|level| level.name.trim()).filter(|name| !name.is_empty()) {
                Some(system) => t!("bench-name-liquid-of-system", liquid = liquid, system = system),
                None => liquid,
            }
        }
    }
}

fn factor_called(id: FactorId, context: &BenchContext<'_>) -> String {
    let Some((at, own)) = context.series.factors.iter().enumerate().find(|(_, factor)| factor.id == id) else {
        return t!("bench-place-missing-factor");
    };
    let name = lower_first(&factor(own.of, &own.own, context.plain.draft));
    t!("bench-place-factor", letter = letter(at).to_string(), name = name)
}

/// A box of a board, with the board and the piece that it belongs to.
fn board_place(id: BoardId, own: BoardField, context: &BenchContext<'_>) -> String {
    let named = context.boards.iter().find(|board| board.id == id).map(|board| board.name.trim());
    let board = named.filter(|name| !name.is_empty()).map_or_else(|| id.0.to_string(), str::to_owned);
    let field = lower_first(board_field(own).label);
    let number = |at: u8| usize::from(at) + 1;
    match own {
        BoardField::Laid | BoardField::Mass | BoardField::Length | BoardField::Width | BoardField::Moisture => {
            t!("bench-place-board", board = board, field = field)
        }
        BoardField::Thickness(at) => t!("bench-place-point", board = board, number = number(at), field = field),
        BoardField::Piece(at, _) => t!("bench-place-density-piece", board = board, number = number(at), field = field),
        BoardField::Bending(at, _) => {
            t!("bench-place-bending-piece", board = board, number = number(at), field = field)
        }
        BoardField::Bond(at, _) => t!("bench-place-bond-piece", board = board, number = number(at), field = field),
        BoardField::Swelling(at, _) => {
            t!("bench-place-swelling-piece", board = board, number = number(at), field = field)
        }
    }
}

/// A box, a board's with the board and the piece; or what else a finding is about.
#[must_use]
pub fn place(place: TrialPlace, context: &BenchContext<'_>) -> String {
    match place {
        TrialPlace::Field(own) => field(own, context.sheet).label.to_owned(),
        TrialPlace::Line(id) => line(id, context.plain.draft),
        TrialPlace::Recovery(own) => recovery_field(own).label.to_owned(),
        TrialPlace::Sheet => t!("bench-weigh-sheet"),
        TrialPlace::Recipe(Place::Field(own)) => recipe_field::field_name(own, context.plain.draft),
        TrialPlace::Recipe(Place::Liquid(id)) => liquid(id, context.plain.draft),
        TrialPlace::Recipe(Place::Station(station)) => name::station(station).to_owned(),
        TrialPlace::Series(SeriesField::Factor(id)) => factor_called(id, context),
        TrialPlace::Series(SeriesField::Level(id, at)) => {
            t!("bench-place-level", factor = factor_called(id, context), number = usize::from(at) + 1)
        }
        TrialPlace::Series(own) => series_field(own).to_owned(),
        TrialPlace::Design => t!("bench-series"),
        TrialPlace::Board(id, own) => board_place(id, own, context),
        TrialPlace::Property(own) => property(own).label.to_owned(),
    }
}

/// Which thickness is typed.
#[must_use]
pub fn thickness_way(way: ThicknessWay) -> &'static str {
    match way {
        ThicknessWay::Finished => label!("bench-choice-thickness-finished"),
        ThicknessWay::Pressed => label!("bench-choice-thickness-pressed"),
    }
}

/// Of which mass the overage is a share.
#[must_use]
pub fn overage_of(of: OverageOf) -> &'static str {
    match of {
        OverageOf::Moist => label!("bench-choice-overage-of-moist"),
        OverageOf::OvenDry => label!("bench-choice-overage-of-oven-dry"),
    }
}

/// What the overage is weighed out of.
#[must_use]
pub fn overage_on(on: OverageOn) -> &'static str {
    match on {
        OverageOn::Furnish => label!("bench-choice-overage-on-furnish"),
        OverageOn::Fibre => label!("bench-choice-overage-on-fibre"),
    }
}

/// When the water is sprayed.
#[must_use]
pub fn water_place(place: WaterPlace) -> &'static str {
    match place {
        WaterPlace::Last => label!("bench-choice-water-last"),
        WaterPlace::First => label!("bench-choice-water-first"),
    }
}

/// By what the flow of the spray is known.
#[must_use]
pub fn spray_way(way: SprayWay) -> &'static str {
    match way {
        SprayWay::Volume => label!("bench-choice-spray-volume"),
        SprayWay::Mass => label!("bench-choice-spray-mass"),
    }
}

/// Which combinations are made; the number of factors gives a fraction its name.
#[must_use]
pub fn design_way(way: DesignWay, factors: usize) -> String {
    match way {
        DesignWay::Full => t!("bench-choice-design-full"),
        DesignWay::Fraction(p) => {
            let part = 1_u32.checked_shl(u32::from(p)).unwrap_or(0);
            match Design::fraction(factors, usize::from(p)) {
                Some(design) => {
                    let runs = design.runs.len();
                    t!("bench-choice-design-fraction", part = part, notation = design.notation(), runs = runs)
                }
                None => t!("bench-choice-design-no-fraction", part = part),
            }
        }
    }
}

/// How runs are put into blocks.
#[must_use]
pub fn block_way(way: BlockWay) -> &'static str {
    match way {
        BlockWay::None => label!("bench-choice-blocks-none"),
        BlockWay::Replicate => label!("bench-choice-blocks-replicate"),
        BlockWay::Halves => label!("bench-choice-blocks-halves"),
        BlockWay::Quarters => label!("bench-choice-blocks-quarters"),
    }
}

/// Which terms the model has.
#[must_use]
pub fn model_way(way: ModelWay) -> &'static str {
    match way {
        ModelWay::Pairs => label!("bench-choice-model-pairs"),
        ModelWay::Mains => label!("bench-choice-model-mains"),
    }
}

/// A set of requirements, with its standard and the type of board.
#[must_use]
pub fn requirement_set(set: RequirementSet) -> String {
    let standard = set.standard();
    match set {
        RequirementSet::ParticleboardInterior => {
            t!("bench-requirements-particleboard-interior", standard = standard)
        }
        RequirementSet::FibreboardDry => t!("bench-requirements-fibreboard-dry", standard = standard),
        RequirementSet::ParticleboardAnsi => t!("bench-requirements-particleboard-ansi", standard = standard),
        RequirementSet::FibreboardAnsi => t!("bench-requirements-fibreboard-ansi", standard = standard),
    }
}

/// "1 board", "3 boards".
#[must_use]
pub fn board_count(count: usize) -> String {
    t!("bench-board-count", count = count)
}
