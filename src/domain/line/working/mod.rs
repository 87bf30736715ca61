//! How each key figure of the line is computed.
//!
//! As with the recipe, the formulas are written here a second time, and a test evaluates them.

/// Catch tests and the lines through them.
mod catch;
/// Changeovers, control limits, deliveries.
mod change;
/// The setting sheet.
mod pump;
/// What really runs.
mod run;
/// Tanks.
mod tank;

pub use catch::{caught_working, line_working, residual_working};
pub use change::{between_working, chart_working, density_working};
pub use pump::{drift_working, pump_working};
pub use run::{correction_working, dose_working, former_working, run_working};
pub use tank::tank_working;

use super::field::LineField;
use super::figure::LineFigure;
use crate::domain::balance::figure::Figure;
use crate::domain::balance::outcome::Case;
use crate::domain::recipe::field::Field;
use crate::domain::working::{Constant, Expr, Given, Ground, Origin, Symbol, Working};
use crate::quantity::{Amount, Kind};

/// Where a number put in comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum LineOrigin {
    /// The recipe: entered, solved, or from a table.
    Recipe(Origin),
    /// Entered at the line.
    Entry(LineField),
    /// Another figure of the same sheet.
    Figure(LineFigure),
}

/// How a figure of the line is computed.
pub type LineWorking = Working<LineFigure, LineOrigin>;

const BALANCE: Ground = Ground::MassBalance;
const DEFINITION: Ground = Ground::Definition;
const MOISTURE: Ground = Ground::Published("EN 322; ISO 16979; ASTM D4442");
const BOARD: Ground = Ground::Published("EN 323");
const LEAST_SQUARES: Ground = Ground::Published("least squares; Draper and Smith (1998), unverified");
const CHART: Ground = Ground::Published("ISO 7870-2, chart for individuals (factor unverified)");

/// Collects the numbers put in while a formula is written down.
#[derive(Default)]
struct Sheet {
    givens: Vec<Given<LineOrigin>>,
}

impl Sheet {
    /// Puts a number in, once.
    fn put(&mut self, origin: LineOrigin, symbol: Symbol, amount: Amount) -> Expr {
        let at = self.givens.iter().position(|given| given.origin == origin).unwrap_or_else(|| {
            self.givens.push(Given { origin, symbol, amount });
            self.givens.len() - 1
        });
        Expr::Given(at)
    }

    fn figure(&mut self, figure: LineFigure, base: f64) -> Expr {
        let amount = Amount::from_base(figure.kind(), base);
        self.put(LineOrigin::Figure(figure), figure.symbol(), amount)
    }

    fn entry(&mut self, field: LineField, symbol: (&'static str, &'static str), kind: Kind, base: f64) -> Expr {
        let symbol = Symbol { letter: symbol.0, index: symbol.1, liquid: None };
        self.put(LineOrigin::Entry(field), symbol, Amount::from_base(kind, base))
    }

    /// A figure of the recipe.
    fn recipe(&mut self, figure: Figure, case: &Case) -> Option<Expr> {
        let amount = case.figure(figure)?;
        Some(self.put(LineOrigin::Recipe(Origin::Figure(figure)), Symbol::of_figure(figure), amount))
    }

    /// A field of the recipe, with the number that it was solved with.
    fn field(&mut self, field: Field, base: f64) -> Expr {
        self.field_as(field, field.kind(), base)
    }

    /// The same for a dose, which measures what its way says.
    fn field_as(&mut self, field: Field, kind: Kind, base: f64) -> Expr {
        let amount = Amount::from_base(kind, base);
        self.put(LineOrigin::Recipe(Origin::Field(field)), Symbol::of_field(field), amount)
    }

    fn constant(&mut self, constant: Constant, kind: Kind, base: f64) -> Expr {
        let amount = Amount::from_base(kind, base);
        self.put(LineOrigin::Recipe(Origin::Constant(constant)), Symbol::of_constant(constant), amount)
    }

    fn done(self, figure: LineFigure, formula: Expr, result: f64, ground: Ground) -> LineWorking {
        Working {
            figure,
            symbol: figure.symbol(),
            givens: self.givens,
            formula,
            result: Amount::from_base(figure.kind(), result),
            ground,
        }
    }
}
