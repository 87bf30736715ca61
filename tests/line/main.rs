//! The line: statistics against outside values, sheets against the recipe, and what must hold for all.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/mod.rs"]
mod support;

mod catch_test;
mod changeover;
mod control_chart;
mod delivery;
mod messages;
mod mill;
mod rate_card;
mod reconcile;
mod record;
mod regression;
mod running;
mod setting_sheet;
mod student;
mod tank;
mod working;
