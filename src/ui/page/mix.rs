//! x
use leptos::prelude::*;
/// x
pub fn mix() -> AnyView { ().into_any() }
