//! x
use leptos::prelude::*;
/// x
pub fn help() -> AnyView { ().into_any() }
