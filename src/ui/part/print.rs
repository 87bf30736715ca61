//! The recipe on paper: the same result, made when the browser prints.

use leptos::prelude::*;

/// The sheet, out of sight on the screen.
pub fn sheet() -> AnyView {
    ().into_any()
}
