//! What is made up beside the line: solutions from crystals, premixed glues, and two small sums of
//! their chemistry.

mod boxes;
mod chemistry;
mod glue;
mod parts;
mod result;
mod solution;

use crate::browser::element::{Part, View, el};
use crate::ui::state::state;

/// The page.
pub fn mix() -> View {
    let state = state();
    el("div")
        .class("mix page")
        .child(el("h1").child(state.words.mix_page.title))
        .child(solution::solution())
        .child(glue::glue())
        .child(chemistry::isocyanate())
        .child(chemistry::ratio())
        .view()
}
