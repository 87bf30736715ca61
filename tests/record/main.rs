//! What is kept: saved, found again, never lost, and refused in time.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/json.rs"]
mod json;

mod cache;
mod faults;
mod faulty;
mod file;
mod fuzz;
mod library;
mod library_file;
mod merge;
mod reconcile_example;
mod sample;
mod save_page;
mod search;
mod shared_file;
mod silence;
mod small;
mod solve_example;
mod table;
mod unsaved;
mod versions;
