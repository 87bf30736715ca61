//! The pages.

pub mod recipe;
