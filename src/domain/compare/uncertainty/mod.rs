//! The uncertainty of every figure: first order (JCGM 100) and Monte Carlo (JCGM 101).

/// Whether first order and Monte Carlo agree.
pub mod agreement;
/// First order: standard uncertainty and the share of each source.
pub mod budget;
/// Shares of the sources, from draws.
pub mod drawn_shares;
/// How uncertain one input is.
pub mod input_uncertainty;
/// What an input is measured with, and a ± to start from.
pub mod instrument;
/// Monte Carlo, in slices.
pub mod monte_carlo;
/// Sources of uncertainty, as started from and as entered.
pub mod source;
/// How a ± is stated.
pub mod statement;
/// What an uncertainty study is about.
pub mod study;
/// A recipe as instructions over its varied inputs.
pub mod tape;
