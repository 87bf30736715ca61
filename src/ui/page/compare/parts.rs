//! Boxes, choices and drawings of this page, kept with what is typed.

use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::*;
use crate::browser::{file, picture};
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::compare::Output;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::recipe::limit::Limit;
use crate::domain::{Draft, Entry};
use crate::quantity::{Kind, Units};
use crate::ui::chart::drawing::Drawing;
use crate::ui::field::choice::{self, Choice};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::signal::{Memo, Signal, memo};
use crate::ui::state::State;
use crate::ui::text::{Context, FieldWords, unit_shown};

/// A choice that the comparison's state keeps: what it is called on the page, and where it is kept.
#[derive(Clone, Copy)]
pub struct Slot {
    /// Its name on the page.
    pub id: &'static str,
    /// What is chosen; empty for nothing yet.
    pub get: fn(&CompareDraft) -> String,
    /// Chooses.
    pub set: fn(&mut CompareDraft, String),
}

/// What is chosen among what is offered: as chosen before, else `prefer`, else the first.
#[must_use]
pub fn picked(chosen: &str, prefer: &str, offered: &[Choice]) -> String {
    let there = |key: &str| offered.iter().any(|(other, _)| other == key);
    match () {
        () if there(chosen) => chosen.to_owned(),
        () if there(prefer) => prefer.to_owned(),
        () => offered.first().map(|(key, _)| key.clone()).unwrap_or_default(),
    }
}

/// One section's part of what is entered, followed by itself: a key in one section leaves the others as they are.
pub fn follow<T: Clone + PartialEq + Send + Sync + 'static>(state: State, part: fn(&CompareDraft) -> T) -> Memo<T> {
    memo(move || state.compare.typed.with(part))
}

/// A choice of this page.
pub fn select(
    state: State,
    slot: Slot,
    label: &'static str,
    prefer: &'static str,
    offered: Signal<Vec<Choice>>,
) -> View {
    // Each option follows it, so it must not be worked out for each of them.
    let now = memo(move || {
        let chosen = state.compare.typed.with(slot.get);
        offered.with(|offered| picked(&chosen, prefer, offered))
    });
    let choose = Callback::new(move |key: String| state.compare.typed.update(|typed| (slot.set)(typed, key)));
    choice::labelled(format!("compare-{}", slot.id), label.to_owned().into(), offered, now, choose)
}

/// A number box of this page: what it is called, and where its entry is kept.
pub struct KeptBox<G, P> {
    /// What it is called on the page.
    pub id: String,
    /// Label and hint.
    pub words: FieldWords,
    /// What it measures.
    pub kind: Kind,
    /// What it may hold.
    pub limit: Limit,
    /// The entry as kept.
    pub get: G,
    /// Keeps an entry.
    pub put: P,
}

/// A number box of this page.
pub fn number_box<G, P>(state: State, this: KeptBox<G, P>) -> View
where
    G: Fn(&CompareDraft) -> Entry + Send + Sync + 'static,
    P: Fn(&mut CompareDraft, Entry) + Send + Sync + 'static,
{
    let KeptBox { id, words, kind, limit, get, put } = this;
    number(LooseBox {
        key: id,
        words,
        named: None,
        kind,
        limit,
        entry: memo(move || state.compare.typed.with(&get)),
        put: Callback::new(move |entry| state.compare.typed.update(|typed| put(typed, entry))),
    })
}

/// Units, currency and the names of a system's own liquids.
pub fn with_draft<T>(state: State, draft: &Draft, act: impl FnOnce(&Context<'_>) -> T) -> T {
    let units: Units = state.units.get();
    state.currency.with(|currency| act(&Context { units: &units, draft, currency }))
}

/// A unit as shown, in brackets behind a label.
#[must_use]
pub fn with_unit_named(state: State, label: &str, kind: Kind) -> String {
    let unit = state.unit(kind);
    let shown = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
    if shown.is_empty() { label.to_owned() } else { format!("{label} ({shown})") }
}

/// A figure by its label, a liquid's with the liquid's name.
#[must_use]
pub fn output_name(state: State, output: Output, draft: &Draft) -> String {
    let label = (state.words.compare.output)(output).label;
    match output {
        Output::Figure(Figure::Liquid(id, _)) => match draft.liquid(id) {
            Some(liquid) => format!("{}: {label}", (state.words.liquid)(liquid)),
            None => label.to_owned(),
        },
        _ => label.to_owned(),
    }
}

/// The figures that a recipe gives, its liquids' flows with them; a cost a year for one hour.
#[must_use]
pub fn outputs(case: &Case) -> Vec<Output> {
    let mut all = Output::side_by_side(1);
    all.push(Output::Figure(Figure::WaterDoseVolume));
    for flow in &case.solved.liquids {
        all.push(Output::Figure(Figure::Liquid(flow.id, LiquidFigure::Liquid)));
        all.push(Output::Figure(Figure::Liquid(flow.id, LiquidFigure::Volume)));
    }
    all.retain(|output| output.value(case).is_some());
    all
}

/// How wide a drawing is: a phone's text stays as large as elsewhere. Followed, so that a window that is made
/// narrow or a device that is turned gets another drawing.
#[must_use]
pub fn width(state: State) -> f64 {
    if state.compare.narrow.get() { 340.0 } else { 680.0 }
}

/// A drawing, and the buttons that give it out.
pub fn drawn(state: State, picture: Memo<Option<Drawing>>, name: &'static str) -> View {
    let page = &state.words.compare.page;
    let save = move |png: bool| {
        let Some(drawing) = picture.get_untracked() else { return };
        let text = drawing.file();
        let given = if png {
            let name = file::file_name(name, "png");
            picture::give_out_png(&name, &text, drawing.width, drawing.height).map(|()| name)
        } else {
            let name = file::file_name(name, "svg");
            file::give_out(&name, "image/svg+xml", &text).map(|()| name)
        };
        given_out(state, given);
    };
    el("div")
        .class("chart")
        .child(move || {
            picture.with(|picture| picture.as_ref().map(|drawing| el("div").class("drawing").markup(&drawing.inline())))
        })
        .child(
            el("div")
                .class("actions")
                .set("hidden", move || picture.with(Option::is_none))
                .child(button().on_click(move || save(false)).child(page.save_svg))
                .child(button().on_click(move || save(true)).child(page.save_png)),
        )
        .view()
}

/// Tells that a file was given out, or why not.
pub fn given_out(state: State, given: Result<String, String>) {
    match given {
        Ok(name) => state.tell((state.words.compare.page.given_out)(&name)),
        Err(why) => state.tell(format!("{} {why}", state.words.compare.page.not_given_out)),
    }
}

/// A table: headings, then rows whose first cell heads them.
pub fn table(name: &str, head: &[String], rows: Vec<Vec<String>>) -> View {
    let head = head.iter().map(|words| el("th").set("scope", "col").child(words.clone())).collect::<View>();
    let row = |cells: Vec<String>| {
        let mut cells = cells.into_iter();
        let first = el("th").set("scope", "row").child(cells.next());
        el("tr").child(first).child(cells.map(|cell| el("td").child(cell)).collect::<View>())
    };
    let rows = rows.into_iter().map(row).collect::<View>();
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", name.to_owned())
        .child(el("table").child(el("thead").child(el("tr").child(head))).child(el("tbody").child(rows)))
        .view()
}
