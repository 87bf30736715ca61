//! The pages.

pub mod bench;
pub mod compare;
pub mod help;
pub mod lazy;
pub mod library;
pub mod line;
pub mod mixing;
pub mod recipe;
