//! The line: sheets against the recipe, and what must hold for all.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/mod.rs"]
mod support;
#[macro_use]
#[path = "../support/words.rs"]
mod words;

mod catch_test;
mod changeover;
mod check_rows;
mod conditions;
mod correction;
mod delivery;
mod faces;
mod isocyanate;
mod line_check;
mod messages;
mod mill;
mod period;
mod pump_settings;
mod reconcile;
mod record;
mod settings_table;
mod tank;
mod working;
