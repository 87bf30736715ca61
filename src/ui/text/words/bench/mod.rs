//! The bench: which text is said when.

mod field;
mod figure;
mod finding;
mod name;
mod saying;
mod series;

use crate::ui::text::BenchWords;

pub(super) const BENCH: BenchWords = BenchWords {
    field: field::field,
    recovery_field: field::recovery_field,
    board_field: field::board_field,
    line: name::line,
    figure: figure::figure,
    board_figure: figure::board_figure,
    property: figure::property,
    origin: figure::origin,
    place: name::place,
    finding: finding::finding,
    factor: name::factor,
    level: name::level,
    term: name::term,
    sayings: saying::sayings,
    redraw: series::redraw,
    group: saying::group,
    at_density: saying::at_density,
    requirement_set: name::requirement_set,
    board_count: name::board_count,
    verdict: saying::verdict,
    material: name::material,
    thickness_way: name::thickness_way,
    overage_of: name::overage_of,
    overage_on: name::overage_on,
    water_place: name::water_place,
    spray_way: name::spray_way,
    design_way: name::design_way,
    block_way: name::block_way,
    model_way: name::model_way,
};
