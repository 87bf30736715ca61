//! Boxes, choices and drawings of this page, kept with what is typed.

use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::*;
use crate::browser::{file, picture};
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::compare::Output;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::limit::Limit;
use crate::domain::{Draft, Entry};
use crate::quantity::{Kind, Unit, Units};
use crate::ui::chart::drawing::Drawing;
use crate::ui::field::choice::{self, Choice};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::signal::{Memo, Signal, memo};
use crate::ui::state::State;
use crate::ui::text::{Context, FieldWords, unit_shown};

/// The key of the box for the hours a year.
pub const HOURS: &str = "hours";
/// Hours a year to start from: three shifts, with some weeks for repairs. Common practice, no source.
const USUAL_HOURS: &str = "7500";

/// What the hours a year may be.
pub const fn hours_limit() -> Limit {
    Limit { most: 8784.0, ..any(Unit::Hour, 1.0) }
}

/// The hours a year as typed, else those to start from.
#[must_use]
pub fn hours(typed: &CompareDraft) -> u16 {
    let start = hours_entry();
    let entry = typed.entry(HOURS).unwrap_or(&start);
    let read = read_entry(entry, Kind::ShiftTime, &hours_limit()).ok().flatten();
    let hours = read.map_or(7500.0, |base| Unit::Hour.from_base(base));
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 1 to 8784")]
    let whole = hours.round() as u16;
    whole
}

/// What the box for the hours holds at first.
#[must_use]
pub fn hours_entry() -> Entry {
    Entry::preset(USUAL_HOURS, Unit::Hour)
}

/// Any number from `least` up.
#[must_use]
pub const fn any(unit: Unit, least: f64) -> Limit {
    Limit { unit, least, above_least: false, most: 1e12, below_most: false, usual: None, optional: false }
}

/// What is chosen among what is offered: as chosen before, else `prefer`, else the first.
#[must_use]
pub fn picked(typed: &CompareDraft, what: &str, prefer: &str, offered: &[Choice]) -> String {
    let there = |key: &str| offered.iter().any(|(other, _)| other == key);
    let chosen = typed.choice(what);
    match () {
        () if there(chosen) => chosen.to_owned(),
        () if there(prefer) => prefer.to_owned(),
        () => offered.first().map(|(key, _)| key.clone()).unwrap_or_default(),
    }
}

/// What was chosen and typed under names that begin so, to be followed: a key in one section then leaves the
/// others as they are.
pub fn follow(state: State, names: &'static [&'static str]) -> Memo<String> {
    memo(move || {
        let own = |what: &str| names.iter().any(|name| what.starts_with(name));
        let mut all = String::new();
        state.compare.typed.with(|typed| {
            for chosen in typed.chosen.iter().filter(|chosen| own(&chosen.what)) {
                all.extend([chosen.what.as_str(), "=", &chosen.key, "\n"]);
            }
            for typed in typed.typed.iter().filter(|typed| own(&typed.what)) {
                all.extend([typed.what.as_str(), "=", &typed.entry.text, typed.entry.unit.symbol(), "\n"]);
            }
        });
        all
    })
}

/// A choice of this page.
pub fn select(
    state: State,
    what: &'static str,
    label: &'static str,
    prefer: &'static str,
    offered: Signal<Vec<Choice>>,
) -> View {
    // Each option follows it, so it must not be worked out for each of them.
    let now =
        memo(move || state.compare.typed.with(|typed| offered.with(|offered| picked(typed, what, prefer, offered))));
    let choose = Callback::new(move |key: String| state.compare.typed.update(|typed| typed.choose(what, key)));
    choice::labelled(format!("compare-{what}"), label.to_owned().into(), offered, now, choose)
}

/// A box of this page. `what` is what its entry is kept under, `id` what it is called in the page.
pub fn number_box(
    state: State,
    (what, id): (String, String),
    words: FieldWords,
    kind: Kind,
    limit: Limit,
    start: impl Fn() -> Entry + Send + Sync + 'static,
) -> View {
    let own = what.clone();
    number(LooseBox {
        key: id,
        words,
        named: None,
        kind,
        limit,
        entry: memo(move || state.compare.typed.with(|typed| typed.entry(&own).cloned()).unwrap_or_else(&start)),
        put: Callback::new(move |entry| state.compare.typed.update(|typed| typed.put(&what, entry))),
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
