//! The bench: which text is said when.

mod field;
mod figure;
mod finding;
mod name;
mod saying;
mod series;

pub use field::{board_field, field, recovery_field};
pub use figure::{board_figure, figure, origin, property};
pub use finding::finding;
pub use name::{
    block_way, board_count, design_way, factor, level, line, material, model_way, overage_of, overage_on, place,
    requirement_set, spray_way, term, thickness_way, water_place,
};
pub use saying::{at_density, group, sayings, verdict};
pub use series::redraw;
