//! Haulm works out what a board mill that blends on the dry side has to dose.
//!
//! The arrows between the modules point one way, `quantity ← statistics ← domain ← record ← browser ← ui`,
//! and a test (`tests/tidy/`) keeps it so.

pub mod domain;
pub mod quantity;
pub mod record;
pub mod statistics;

/// The only code that touches the browser: storage, files, clock, locale.
#[cfg(target_arch = "wasm32")]
pub mod browser;

pub mod ui;
