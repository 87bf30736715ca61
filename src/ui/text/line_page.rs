//! The plain texts of the page of the line. Each key says what its text is for.
#![allow(missing_docs, reason = "each key says what its text is for; the English text shows it")]

/// The page of the line.
#[derive(Debug, Clone, Copy)]
pub struct LinePage {
    pub sheet: &'static str,
    pub delivery: &'static str,
    pub example: &'static str,
    pub unread: &'static str,
    pub water: &'static str,
    pub face_water: &'static str,
    pub thinning_of: &'static str,
    pub not_in_recipe: &'static str,
    pub off: &'static str,
    pub no_setting: &'static str,
    pub interval: &'static str,
    pub to: &'static str,
    pub setting: &'static str,
    pub density: &'static str,
    pub cannot: &'static str,
    pub figure: &'static str,
    pub target: &'static str,
    pub pump: &'static str,
    pub station: &'static str,
    pub complete: &'static str,
    pub mass: &'static str,
    pub solids: &'static str,
    pub liquid: &'static str,
    pub after: &'static str,
    pub accepted_in: fn(usize) -> String,
    pub accept_undone: &'static str,
}
