//! What the sections of the bench share.

use super::desk::{Desk, at_box};
use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::Callback;
use crate::browser::page;
use crate::domain::trial::boards::working::{BoardFigure, BoardOrigin, BoardWorking};
use crate::domain::trial::weigh_sheet::working::WeighOrigin;
use crate::domain::trial::{SheetDraft, TrialFinding, WeighFigure};
use crate::domain::{Draft, Figure as RecipeFigure};
use crate::quantity::{Amount, Kind};
use crate::record::content::trial::TrialContent;
use crate::ui::field::choice::{self, Choice};
use crate::ui::field::text;
use crate::ui::part::amount::with_unit;
use crate::ui::part::finding::told as finding_told;
use crate::ui::part::working::{name_in, told};
use crate::ui::signal::{Signal, memo};
use crate::ui::state::State;
use leptos::reactive::prelude::*;

pub use crate::ui::page::compare::parts::table;

/// What shows a working when asked.
pub type Worked = Option<Box<dyn Fn() -> Option<View>>>;

/// A figure in its cell: label, basis, value, and its working on demand.
pub fn cell(
    state: State,
    key: &str,
    (label, note): (&str, &'static str),
    value: String,
    big: bool,
    worked: Worked,
) -> View {
    let workings = state.bench.workings;
    let own = format!("|{key}|");
    let is_open = {
        let own = own.clone();
        move || workings.with(|open| open.contains(&own))
    };
    let flip = move || {
        workings.update(|open| if open.contains(&own) { *open = open.replace(&own, "") } else { open.push_str(&own) });
    };
    let (label_id, working_id) = (format!("figure-{key}"), format!("working-{key}"));
    let value = el("span").set("data-figure", key.to_owned()).child(value);
    let (expanded, shown, opened) = (is_open.clone(), is_open.clone(), is_open.clone());
    let (value, working) = match worked {
        Some(worked) => (
            button()
                .class("value")
                .set("title", state.words.bench_page.show_working)
                .set("aria-describedby", label_id.clone())
                .set("aria-expanded", move || if is_open() { "true" } else { "false" })
                .set("aria-controls", working_id.clone())
                .on_click(flip)
                .child(value),
            Some(
                el("div")
                    .class("working")
                    .set("id", working_id)
                    .set("hidden", move || !expanded())
                    .child(move || if shown() { worked() } else { None }),
            ),
        ),
        None => (el("span").class("value").child(value), None),
    };
    el("div")
        .class("figure")
        .class_if("big", big)
        .class_if("open", opened)
        .child(
            el("dt")
                .set("id", label_id)
                .child(label.to_owned())
                .child((!note.is_empty()).then(|| el("span").class("note").child(note))),
        )
        .child(el("dd").child(value).child(working))
        .view()
}

/// An amount with its unit.
pub fn shown(state: State, kind: Kind, base: f64) -> String {
    with_unit(state, Amount::from_base(kind, base), None)
}

/// The same with its sign.
pub fn signed(state: State, kind: Kind, base: f64) -> String {
    // A hundredth of a percent is less than any balance tells.
    if kind == Kind::Share && base.abs() < 5e-5 {
        return format!("0\u{a0}{}", state.unit(kind).symbol());
    }
    let sign = if base < 0.0 { '\u{2212}' } else { '+' };
    format!("{sign}{}", shown(state, kind, base.abs()))
}

/// What a number put into a sheet's working is.
pub fn sheet_origin(state: State, origin: WeighOrigin, recipe: &Draft, typed: &SheetDraft) -> View {
    let words = &state.words.bench;
    match origin {
        WeighOrigin::Field(field) => link((words.field)(field, typed).label.to_owned(), field.box_key()),
        WeighOrigin::Figure(figure) => match figure {
            WeighFigure::Line(id, _) => {
                format!("{}: {}", (words.line)(id, recipe), (words.figure)(figure).label).view()
            }
            _ => (words.figure)(figure).label.view(),
        },
        WeighOrigin::RecipeField(field) => (state.words.field_name)(field, recipe).view(),
        WeighOrigin::RecipeFigure(figure) => recipe_figure(state, figure, recipe).view(),
        WeighOrigin::Batches | WeighOrigin::Constant(_) => (words.origin)(origin).view(),
    }
}

fn recipe_figure(state: State, figure: RecipeFigure, recipe: &Draft) -> String {
    name_in(state, figure, recipe)
}

fn link(name: String, key: String) -> View {
    button().class("link").on_click(move || page::focus_field(&key)).child(name).view()
}

/// A board's working in full.
pub fn board_told(state: State, working: &BoardWorking) -> View {
    let page = &state.words.bench_page;
    told(state, working, |origin| match origin {
        BoardOrigin::Field(field) => (state.words.bench.board_field)(*field).label.view(),
        BoardOrigin::Figure(figure) => board_label(state, *figure).view(),
        BoardOrigin::Mean => page.mean_of_boards.view(),
        BoardOrigin::Deviation => page.deviation_of_boards.view(),
        BoardOrigin::Student => page.student.view(),
        BoardOrigin::RootOfCount => page.root_of_count.view(),
        BoardOrigin::Target => page.wanted_density.view(),
        BoardOrigin::Made => page.made_density.view(),
        BoardOrigin::TargetThickness => page.target_thickness.view(),
        BoardOrigin::MadeThickness => page.made_thickness.view(),
    })
}

/// The label of a board's figure.
pub fn board_label(state: State, figure: BoardFigure) -> &'static str {
    (state.words.bench.board_figure)(figure).label
}

/// Findings in words, but for those that stand at their boxes.
pub fn findings<'a>(
    desk: Desk,
    all: impl IntoIterator<Item = &'a TrialFinding>,
    recipe: &Draft,
    typed: &SheetDraft,
) -> View {
    let told = |finding: &TrialFinding| finding_told(finding.grade, desk.message(finding, recipe, typed));
    all.into_iter().filter(|finding| !at_box(finding)).map(told).collect()
}

/// Choices, each by its place.
pub fn numbered(words: impl IntoIterator<Item = String>) -> Vec<Choice> {
    words.into_iter().enumerate().map(|(at, words)| (at.to_string(), words)).collect()
}

/// A choice of the trial, each thing by its place among what is offered.
pub fn choose(
    state: State,
    id: &str,
    label: &'static str,
    offered: Signal<Vec<Choice>>,
    now: impl Fn(&TrialContent) -> Option<usize> + Send + Sync + 'static,
    put: impl Fn(&mut TrialContent, usize) + Send + Sync + 'static,
) -> View {
    let now = memo(move || state.bench.open.with(|open| now(&open.trial)).unwrap_or(0).to_string());
    let choose = Callback::new(move |chosen: String| {
        if let Ok(at) = chosen.parse() {
            state.bench.edit(|trial| put(trial, at));
        }
    });
    choice::labelled(id.to_owned(), label.to_owned().into(), offered, now, choose)
}

/// A choice among a few that are always the same.
pub fn pick<T: Copy + PartialEq + Send + Sync + 'static>(
    state: State,
    id: &str,
    label: &'static str,
    (all, words): (&'static [T], fn(T) -> &'static str),
    now: fn(&TrialContent) -> T,
    put: fn(&mut TrialContent, T),
) -> View {
    let offered = Signal::stored(numbered(all.iter().map(|each| words(*each).to_owned())));
    choose(
        state,
        id,
        label,
        offered,
        move |trial| all.iter().position(|each| *each == now(trial)),
        move |trial, at| {
            if let Some(each) = all.get(at) {
                put(trial, *each);
            }
        },
    )
}

/// A box for a line of text.
pub fn text_box(
    state: State,
    id: String,
    label: &'static str,
    now: impl Fn(&TrialContent) -> String + 'static,
    put: impl Fn(&mut TrialContent, String) + 'static,
) -> View {
    let shown = move || state.bench.open.with(|open| now(&open.trial));
    text::plain(id, label, shown, move |text| state.bench.edit(|trial| put(trial, text))).view()
}

/// A part of a section with its heading.
pub fn group(title: &'static str, inside: impl Part) -> View {
    el("div").class("part").child(el("h3").child(title)).child(inside).view()
}

/// A button.
pub fn act(words: &'static str, then: impl Fn() + 'static) -> View {
    button().on_click(then).child(words).view()
}
