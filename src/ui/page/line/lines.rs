//! What there is to say about the line, as lines of the warning slot, and the way to where each belongs.

use super::context::with_context;
use super::settings_now::SettingsNow;
use super::settings_text::{pump_name, signed};
use crate::browser::{clock, hash, page};
use crate::domain::Grade;
use crate::domain::line::{ConditionField, LineField, LineFinding, LineFindingKind, LinePlace, PumpId, PumpRow};
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::part::version;
use crate::ui::route::Page;
use crate::ui::state::State;
use crate::ui::state::line::LineSection;
use crate::ui::text::words;
use leptos::prelude::*;

/// A grade in a word.
fn word(grade: Grade) -> String {
    match grade {
        Grade::Stop => t!("common-error"),
        Grade::Unusual => t!("common-warning"),
        Grade::Note => t!("common-note"),
    }
}

/// A line of the slot.
pub fn slot_line(grade: Grade, words: String, show: Option<Callback<()>>) -> SlotLine {
    SlotLine { grade, word: word(grade), words, show }
}

/// What holds for every tab: the recipe has no valid result, or is not the one that was released.
pub fn common_lines(state: State) -> Vec<SlotLine> {
    let mut lines = Vec::new();
    let recipe = Callback::new(move |()| to_page(state, Page::Recipe));
    if state.shown.with(|shown| shown.old) {
        lines.push(slot_line(Grade::Stop, t!("line-old-recipe"), Some(recipe)));
    }
    if let Some(released) = other_released(state) {
        let library = Callback::new(move |()| to_page(state, Page::Library));
        lines.push(slot_line(Grade::Unusual, t!("line-not-released", released = released), Some(library)));
    }
    lines
}

fn to_page(state: State, to: Page) {
    state.page.set(to);
    hash::go(to.key());
    page::focus("content");
}

/// The revision that was released, where a recipe that was released for the line is open, and what is open is another revision.
fn other_released(state: State) -> Option<String> {
    let released = state.released_of_page().get()?;
    let is_open = state.from.get() == Some(released.id) && state.saved().get();
    if is_open { None } else { version::released(&released) }
}

/// The lines of the pump settings.
pub fn settings_lines(state: State, now: &SettingsNow) -> Vec<SlotLine> {
    let mut lines = common_lines(state);
    // What the furnish does comes before what a pump does, of the same grade.
    for found in &now.recipe {
        let message = state.with_context(|context| words::finding(found, context));
        lines.push(slot_line(found.grade, format!("{} {}", message.what, message.fix), None));
    }
    for found in &now.findings {
        lines.push(finding_line(state, found));
    }
    lines.extend(drift_lines(state, now, to_pump));
    lines
}

/// A finding of the line, with the way to where it belongs.
pub fn finding_line(state: State, found: &LineFinding) -> SlotLine {
    let message = with_context(state, |context| words::line::finding(found, context));
    slot_line(found.grade, format!("{} {}", message.what, message.fix), way_to(state, found))
}

/// The pumps whose flow has changed since their test before by more than it scatters; `show` goes to what is known of it.
pub fn drift_lines(state: State, now: &SettingsNow, show: fn(State, PumpId)) -> Vec<SlotLine> {
    let rows = now.settings.iter().flat_map(|settings| &settings.rows);
    let line = |row: &PumpRow| {
        let (pump, drift) = (row.pump, row.drift.filter(|drift| drift.certain == Some(true))?);
        let (pump_name, change) = (pump_name(state, pump), signed(state, drift.change?.value));
        let words = t!("line-drifted", pump = pump_name, change = change, date = clock::date(drift.at));
        Some(slot_line(Grade::Unusual, words, Some(Callback::new(move |()| show(state, pump)))))
    };
    rows.filter_map(line).collect()
}

/// The way to where a finding belongs.
pub fn way_to(state: State, found: &LineFinding) -> Option<Callback<()>> {
    let condition = LineField::Condition(ConditionField::Belt);
    match (found.place, &found.what) {
        (LinePlace::Field(field), _) => Some(Callback::new(move |()| go_to_field(state, field))),
        (_, LineFindingKind::OtherRecipe { .. } | LineFindingKind::NoBalance) => {
            Some(Callback::new(move |()| go_to_field(state, condition)))
        }
        (_, LineFindingKind::NoRecipe | LineFindingKind::NoFibreFlow) => {
            Some(Callback::new(move |()| to_page(state, Page::Recipe)))
        }
        (LinePlace::Pump(id) | LinePlace::Calibration(id, _) | LinePlace::Row(id, _, _), _) => {
            Some(Callback::new(move |()| to_pump(state, id)))
        }
        (LinePlace::Liquid(_) | LinePlace::Water, _) | (_, LineFindingKind::NoPumps) => {
            Some(Callback::new(move |()| state.line.show(LineSection::Pumps)))
        }
        _ => None,
    }
}

/// Goes to a pump and its catch tests.
pub fn to_pump(state: State, id: PumpId) {
    state.line.show_pump(id);
    request_animation_frame(move || page::show(&format!("#pump-{}", id.0)));
}

/// Goes to the box of a field.
pub fn go_to_field(state: State, field: LineField) {
    state.line.show_field(field);
    request_animation_frame(move || {
        if let Some(fold) = fold_of(field) {
            page::open_fold(fold);
        }
        // What is in a fold is made once that is open.
        request_animation_frame(move || page::focus_field(&field.key()));
    });
}

/// The fold that a field is in.
const fn fold_of(field: LineField) -> Option<&'static str> {
    match field {
        LineField::Tolerance(_) | LineField::Uncertainty(_) => Some("check-tolerances"),
        LineField::Period(_) | LineField::PeriodLiquid(..) => Some("period"),
        _ => None,
    }
}
