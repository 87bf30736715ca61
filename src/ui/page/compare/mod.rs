//! The page.

use crate::browser::element::{Part, View, el};
use crate::ui::state::state;

/// The page.
pub fn compare() -> View {
    el("div").child(el("h1").child(state().words.tools.compare)).view()
}
