//! x
use leptos::prelude::*;
/// x
pub fn systems() -> AnyView { ().into_any() }
