//! Trial boards at the bench: weigh-out sheets, series of trials, the boards made, and what they tell.

/// Makes a uom quantity of a number in SI base units.
macro_rules! si {
    ($quantity:ident, $value:expr) => {
        $quantity { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value: $value }
    };
}

// The weigh-out sheet.

/// What was typed on the weigh-out sheet, raw, and the choices made.
pub mod draft;
/// The boxes of the weigh-out sheet.
pub mod field;
/// Every figure of the weigh-out sheet by name.
pub mod figure;
/// What there is to say, as data.
pub mod finding;
/// What weighed masses really give.
pub mod given;
/// What a box of the weigh-out sheet may hold and what is usual.
pub mod limit;
/// What a line of the weigh-out sheet weighs.
pub mod line_id;
/// From the sheet's draft and the recipe to a plan.
pub mod plan;
/// The weigh-out sheet.
pub mod sheet;
/// What was really weighed, and what remains to be added.
pub mod weighing;
/// How each figure of the weigh-out sheet came about.
pub mod working;

// A series of trials.

/// Factorial designs, whole and in fractions.
pub mod design;
/// Useful fractions, from a published table.
pub mod fraction;
/// The material that a whole series takes.
pub mod material;
/// A run order from a seed.
pub mod run_order;
/// A series: factors, design, runs in their order.
pub mod series;
/// A series as entered.
pub mod series_draft;
/// The boxes of a series.
pub mod series_field;
/// Effects written with the letters of their factors.
pub mod word;

// Boards made.

/// Boards made, as entered.
pub mod board;
/// The boxes of a board made and of its test pieces.
pub mod board_field;
/// How each figure of a board made came about.
pub mod board_working;
/// From boards as entered to boards that can be reckoned with.
pub mod measured;
/// Test pieces: the formulas of the standards.
pub mod piece;
/// The properties of a board that are measured.
pub mod property;
/// Boards made against what was wanted.
pub mod target;

// What a series tells.

/// Effects, intervals and the analysis of variance.
pub mod effects;

pub use board::{BoardDraft, BoardId};
pub use draft::SheetDraft;
pub use field::Field;
pub use figure::{Figure, LineFigure};
pub use finding::{Finding, Place, What};
pub use line_id::LineId;
pub use property::Property;
pub use series::Series;
pub use series_draft::SeriesDraft;
pub use sheet::Sheet;
