//! The line: what every pump has to be set to, first of all; then all that this rests on, and what really
//! runs. One section is shown at a time, each one tap away.

mod bar;
mod card;
mod catch;
mod change;
mod context;
mod delivery;
mod log;
mod paper;
mod parts;
mod plot;
mod present_check;
mod pumps;
mod running;
mod sheet;
mod tanks;

pub use paper::paper;

use crate::browser::clock;
use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::*;
use crate::domain::{Caution, Grade};
use crate::record::LineRecord;
use crate::ui::part::caution;
use crate::ui::part::finding::mark;
use crate::ui::part::version;
use crate::ui::state::line::Section;
use crate::ui::state::{State, state};
use std::time::Duration;

/// The page.
pub fn line() -> View {
    let state = state();
    tick(state);
    let page = &state.words.line_page;
    el("div")
        .class("line-page page")
        .child(el("h1").child(state.words.tools.line))
        .child(move || state.line.record.with(|record| record.example).then(|| example(state)))
        .child(
            el("nav")
                .class("sections")
                .set("aria-label", page.sections)
                .child(Section::ALL.iter().enumerate().map(|(at, of)| tab(state, at, *of)).collect::<View>()),
        )
        .child(move || body(state, Section::ALL.get(state.line.section.get()).copied().unwrap_or(Section::Sheet)))
        .child(move || caution::list(vec![Caution::Advice]))
        .view()
}

/// The time goes on while the page is shown.
fn tick(state: State) {
    state.line.now.set(clock::now());
    if let Ok(handle) = set_interval_with_handle(move || state.line.now.set(clock::now()), Duration::from_secs(1)) {
        on_cleanup(move || handle.clear());
    }
}

const fn name(state: State, section: Section) -> &'static str {
    let page = &state.words.line_page;
    match section {
        Section::Sheet => page.sheet,
        Section::Pumps => page.pumps,
        Section::Card => page.card,
        Section::Running => page.running,
        Section::Tanks => page.tanks,
        Section::Change => page.change,
        Section::Delivery => page.delivery,
    }
}

/// The names of all sections, in the order of the page.
pub fn sections(state: State) -> impl Iterator<Item = &'static str> {
    Section::ALL.iter().map(move |section| name(state, *section))
}

fn tab(state: State, at: usize, section: Section) -> View {
    button()
        .set("aria-current", move || (state.line.section.get() == at).then_some("true"))
        .on_click(move || state.line.section.set(at))
        .child(name(state, section))
        .view()
}

fn body(state: State, section: Section) -> View {
    let inside = match section {
        Section::Sheet => sheet::sheet(state),
        Section::Pumps => pumps::pumps(state),
        Section::Card => card::card(state),
        Section::Running => running::running(state),
        Section::Tanks => tanks::tanks(state),
        Section::Change => change::change(state),
        Section::Delivery => delivery::delivery(state),
    };
    el("section")
        .set("aria-labelledby", "line-section")
        .child(el("h2").set("id", "line-section").set("tabindex", "-1").child(name(state, section)))
        .child(move || stale(state))
        .child(move || not_released(state))
        .child(inside)
        .view()
}

/// The result is that of an earlier recipe.
fn stale(state: State) -> Option<View> {
    let words = &state.words.recipe_page;
    state.shown.with(|shown| shown.old).then(|| {
        el("p")
            .class("finding unusual")
            .child(mark(Grade::Unusual))
            .text(" ")
            .child(el("strong").child(words.stale))
            .text(" ")
            .child(words.stale_hint)
            .view()
    })
}

/// A recipe that was released for the line is open, and what is open is not what was released.
fn not_released(state: State) -> Option<View> {
    let released = state.released_of_page().get()?;
    let is_open = state.from.get() == Some(released.id) && state.saved().get();
    (!is_open).then(|| {
        el("p")
            .class("finding unusual")
            .child(mark(Grade::Unusual))
            .text(" ")
            .child(el("strong").child(state.words.line_page.not_released))
            .text(" ")
            .child(version::released(state, &released))
            .text(". ")
            .child(state.words.line_page.not_released_hint)
            .view()
    })
}

/// That nothing here is the mill's own yet.
fn example(state: State) -> View {
    let page = &state.words.line_page;
    let blank = move || {
        let before = state.line.record.get_untracked();
        state.line.record.set(LineRecord::default());
        let back = move || state.line.record.set(before.clone());
        state.tell_undo(page.blanked, back);
    };
    let own = move || state.line.record.update(|record| record.example = false);
    el("div")
        .class("finding note example-line")
        .child(
            el("p")
                .child(mark(Grade::Note))
                .text(" ")
                .child(el("strong").child(page.example))
                .text(" ")
                .child(page.example_hint),
        )
        .child(
            el("div")
                .class("actions")
                .child(button().on_click(blank).child(page.blank))
                .child(button().on_click(own).child(page.own)),
        )
        .view()
}
