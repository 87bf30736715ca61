//! What several pages are made of.

pub mod figure;
pub mod finding;
