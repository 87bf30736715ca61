//! How each figure is computed: formula, the numbers put in, the result, and where the formula comes from.
//!
//! The formulas are written here a second time, apart from [`solve`](crate::domain::solve): a test
//! evaluates each with its numbers and compares with the solved figure, so that what the page
//! explains and what the program does cannot drift apart.

/// A formula as data.
mod expr;
/// The formulas of the balance.
mod formula;
/// What a field held when the recipe was solved.
pub(in crate::domain) mod given;
/// The same formulas per oven-dry fibre, where there is no flow.
mod per_fibre;
/// The letters of the model.
pub(in crate::domain) mod symbol;

pub use expr::Expr;
pub use symbol::Symbol;

use crate::domain::balance::figure::Figure;
use crate::domain::recipe::field::Field;
use crate::quantity::Amount;

/// A number from a table, or one chosen for a comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Constant {
    /// Density of water at 20 °C.
    WaterDensity,
    /// Heat to warm liquid water from the mat's temperature to its boiling point.
    SensibleHeat,
    /// Latent heat of evaporation at 101.325 kPa.
    LatentHeat,
    /// Heat to warm and evaporate water of 20 °C, as fibre is taken to bring it to the dryer.
    DryerHeat,
    /// Hours per year that a comparison is made for.
    HoursPerYear,
}

/// Where a number put in comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Origin {
    /// Entered.
    Field(Field),
    /// Another figure, with a working of its own.
    Figure(Figure),
    /// A table.
    Constant(Constant),
}

/// A number put into a formula. What it may come from depends on the sheet that explains itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Given<O = Origin> {
    /// Where it comes from.
    pub origin: O,
    /// Its letter.
    pub symbol: Symbol,
    /// The number.
    pub amount: Amount,
}

/// Where a formula comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ground {
    /// The figure is what was entered.
    Entered,
    /// Mass in equals mass out.
    MassBalance,
    /// The definition of the figure.
    Definition,
    /// A published source.
    Published(&'static str),
}

/// How a figure is computed. The balance's own figures by default; the bench has others.
#[derive(Debug, Clone, PartialEq)]
pub struct Working<F = Figure, O = Origin> {
    /// The figure.
    pub figure: F,
    /// Its letter.
    pub symbol: Symbol,
    /// The numbers put in.
    pub givens: Vec<Given<O>>,
    /// The formula over them.
    pub formula: Expr,
    /// The figure's value.
    pub result: Amount,
    /// Where the formula comes from.
    pub ground: Ground,
}

impl<F, O> Working<F, O> {
    /// The same without its figure: what shows a working needs no other code for another sheet's figures.
    #[must_use]
    pub fn without_figure(self) -> Working<(), O> {
        let Self { symbol, givens, formula, result, ground, .. } = self;
        Working { figure: (), symbol, givens, formula, result, ground }
    }
}

pub use formula::working;
