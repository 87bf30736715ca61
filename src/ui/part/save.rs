//! The name that a save waits for, and how times of saves read.

use crate::browser::clock;
use crate::ui::state::State;
use leptos::reactive::prelude::*;

/// The box for the recipe's name.
pub const NAME: &str = "recipe-name";
/// What is said about the name while a save waits for it.
pub const SAYS: &str = "save-says";

/// Whether a save still waits for the name: no longer once one is typed.
#[must_use]
pub fn is_name_missing(state: State) -> bool {
    state.naming.get() && state.title.with(|title| title.name.trim().is_empty())
}

/// The time of today, or the day with its time.
#[must_use]
pub fn when(at: u64) -> String {
    if clock::date(at) == clock::date(clock::now()) { clock::time(at) } else { clock::date_time(at) }
}
