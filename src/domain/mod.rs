//! The trade, pure: what was typed is checked, solved, and every figure can show its working.
//!
//! `Draft → check() → Input → solve() → Solved`, with findings on the way.

/// Makes a uom quantity of a number in SI base units.
macro_rules! si {
    ($quantity:ident, $value:expr) => {
        uom::si::f64::$quantity { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value: $value }
    };
}

/// The solved balance: its figures, machine limits, cost and closure.
pub mod balance;
/// Solutions, their densities, and the reactions of isocyanates and formaldehyde.
pub mod chemistry;
/// Binder systems side by side, solving for an input, sweeps, uncertainty.
pub mod compare;
/// One declaration a form and a field.
pub mod form;
/// What a box may hold, and what is typical.
pub mod limit;
/// Pumps, catch tests, line check, tanks, changeover.
pub mod line;
/// Making up solutions and premixed glue.
pub mod mixing;
/// A recipe: what was typed, its limits, its check, and the typical binder systems to start from.
pub mod recipe;
/// Trial boards: weigh sheet, series, board tests, effects.
pub mod trial;
/// How each figure was computed.
pub mod working;

pub use balance::figure::{Figure, LiquidFigure};
pub use balance::outcome::{Case, Outcome, work_out};
pub use balance::solve::{Unsolvable, solve};
pub use balance::solved::Solved;
pub use balance::station::Station;
pub use recipe::caution::{Caution, Work, cautions, cautions_at, cautions_of_solution};
pub use recipe::check::{Checked, check};
pub use recipe::draft::{Draft, Entry, LiquidDraft};
pub use recipe::example::example;
pub use recipe::field::{Field, LiquidField};
pub use recipe::finding::{Finding, Grade, Place, What};
pub use recipe::input::Input;
pub use recipe::liquid::{DoseWay, Faces, LiquidId, Role, Substance};
pub use recipe::product::{BoardKind, Furnish, Product};
pub use working::{Working, working};
