//! The pages.

pub mod help;
pub mod mix;
pub mod recipe;
pub mod shelf;
pub mod systems;
