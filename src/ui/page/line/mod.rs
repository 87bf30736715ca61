//! The line: what every pump has to be set to, first of all; then all that this rests on, and what really
//! runs. One section is shown at a time, each one tap away.

mod bar;
mod card;
mod catch;
mod change;
mod context;
mod delivery;
mod delivery_recipes;
mod log;
mod paper;
mod parts;
mod period;
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
use crate::ui::state::line::LineSection;
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
        .child(steps(state))
        .child(move || state.line.record.with(|record| record.example).then(|| example(state)))
        .child(
            el("nav")
                .class("sections")
                .set("aria-label", page.sections)
                .child(LineSection::ALL.iter().enumerate().map(|(at, of)| tab(state, at, *of)).collect::<View>()),
        )
        .child(move || {
            body(state, LineSection::ALL.get(state.line.section.get()).copied().unwrap_or(LineSection::Sheet))
        })
        .child(move || caution::list(vec![Caution::Advice]))
        .view()
}

/// Undo and Redo of what is typed about the line.
fn steps(state: State) -> View {
    let tools = &state.words.tools;
    el("div")
        .class("actions")
        .child(
            button()
                .set("aria-disabled", move || (!state.line.can_undo()).then_some("true"))
                .on_click(move || state.line.undo())
                .child(tools.undo),
        )
        .child(
            button()
                .set("aria-disabled", move || (!state.line.can_redo()).then_some("true"))
                .on_click(move || state.line.redo())
                .child(tools.redo),
        )
        .view()
}

/// The time goes on while the page is shown.
fn tick(state: State) {
    state.line.now.set(clock::now());
    if let Ok(handle) = set_interval_with_handle(move || state.line.now.set(clock::now()), Duration::from_secs(1)) {
        on_cleanup(move || handle.clear());
    }
}

const fn name(state: State, section: LineSection) -> &'static str {
    let page = &state.words.line_page;
    match section {
        LineSection::Sheet => page.sheet,
        LineSection::Pumps => page.pumps,
        LineSection::Card => page.card,
        LineSection::Running => page.running,
        LineSection::Tanks => page.tanks,
        LineSection::Change => page.change,
        LineSection::Delivery => page.delivery,
        LineSection::Period => page.period,
    }
}

/// The names of all sections, in the order of the page.
pub fn sections(state: State) -> impl Iterator<Item = &'static str> {
    LineSection::ALL.iter().map(move |section| name(state, *section))
}

fn tab(state: State, at: usize, section: LineSection) -> View {
    button()
        .set("aria-current", move || (state.line.section.get() == at).then_some("true"))
        .on_click(move || state.line.section.set(at))
        .child(name(state, section))
        .view()
}

fn body(state: State, section: LineSection) -> View {
    let inside = match section {
        LineSection::Sheet => sheet::sheet(state),
        LineSection::Pumps => pumps::pumps(state),
        LineSection::Card => card::card(state),
        LineSection::Running => running::running(state),
        LineSection::Tanks => tanks::tanks(state),
        LineSection::Change => change::change(state),
        LineSection::Delivery => delivery::delivery(state),
        LineSection::Period => period::period(state),
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
        let blanked = state.line.change(|record| *record = LineRecord::default());
        state.tell_undo(page.blanked, move || state.line.take_back(&blanked));
    };
    let own = move || drop(state.line.change(|record| record.example = false));
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
