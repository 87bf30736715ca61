//! The line: which text is said when.

mod field;
mod figure;
mod finding;
mod name;
mod period;
mod place;
mod reason;
mod verdict;

pub use field::field;
pub use figure::{deviation, figure, run_figure};
pub use finding::finding;
pub use name::{
    fed, metering, model, period_liquid, pump, r_squared, range_status, setting_unit, source, stop, table_rows, tank,
    tank_way,
};
pub use period::verdict as period;
pub use place::{field_name, place};
pub use reason::{action, change, downstream, pipe, why};
pub use verdict::{quantity, split, verdict};
