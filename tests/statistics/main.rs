//! Statistics against outside values and independent computations.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod reconciliation;
