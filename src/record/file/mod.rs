//! The formats that leave the app: recipe and library files, share links, line checks, and tables of logs and trials.

pub mod library;
pub mod line_check;
pub mod link;
pub mod log_csv;
pub mod recipe;
pub mod trial_csv;
pub mod trial_results;

#[cfg(test)]
mod schema;
