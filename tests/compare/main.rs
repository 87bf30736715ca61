//! Comparing systems.
#![allow(clippy::float_cmp, reason = "zeros and copies are meant exactly")]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/study.rs"]
mod study;
#[path = "../support/mod.rs"]
mod support;

mod draft;
mod economy;
mod emission;
mod limits;
mod revisions;
mod rounding;
mod side;
mod solve_for;
mod table;
mod tape;
mod uncertainty;
mod verdict;
