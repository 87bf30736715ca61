//! Numbers with meaning: units, how numbers are read, how they are shown.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod format;
mod read;
mod unit;
