//! The frame around all pages.

use leptos::prelude::*;

/// Puts the app into the page's body.
pub fn mount() {
    mount_to_body(|| view! { <main><h1>"Haulm"</h1></main> });
}
