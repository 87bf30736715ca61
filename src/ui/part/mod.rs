//! What several pages are made of.

pub mod announce;
pub mod bar;
pub mod caution;
pub mod code;
pub mod figure;
pub mod find;
pub mod finding;
pub mod fold;
pub mod preferences;
pub mod print;
pub mod save;
pub mod strip;
pub mod trouble;
pub mod working;
