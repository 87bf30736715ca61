//! What is around all pages.

mod bar;
mod find;
mod preferences;
pub mod rescue;
mod search;
mod trouble;

pub use bar::Bar;
pub use trouble::Trouble;
