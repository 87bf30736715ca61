//! What several pages are made of.

pub mod amount;
pub mod code;
pub mod entered;
pub mod figure;
pub mod on_recipe;
pub mod page_name;
pub mod save;
pub mod version;
pub mod working;
