//! The line: sheets against the recipe, and what must hold for all.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/mod.rs"]
mod support;

mod catch_test;
mod changeover;
mod delivery;
mod messages;
mod mill;
mod rate_card;
mod record;
mod running;
mod setting_sheet;
mod tank;
mod working;
