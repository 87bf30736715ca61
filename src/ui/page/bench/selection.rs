//! The one selection of base sheet or run: what the sheet shows, what is weighed and what is printed.

use super::desk::Desk;
use super::parts::numbered;
use super::runs_on_paper::{run_cells, run_heads};
use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::ui::field::choice;
use crate::ui::signal::memo;

/// The sections that follow the selection: weigh sheet and weighing.
const FOLLOWING: usize = 2;

/// The selection as a heading, with its choice; nothing outside a series, and where nothing follows it.
pub fn selection(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let bench = state.bench;
    let runs = memo(move || desk.planned.with(|planned| planned.sheets.len()));
    let shown = memo(move || runs.get() > 0 && bench.section.get() < FOLLOWING);
    let choices = memo(move || {
        let runs = (1..=runs.get()).map(|at| format!("{} {at}", page.run));
        numbered(std::iter::once(page.no_run.to_owned()).chain(runs))
    });
    let now = memo(move || bench.run.get().to_string());
    let choose = Callback::new(move |chosen: String| {
        bench.run.set(chosen.parse().unwrap_or(0));
        bench.batch.set(1);
    });
    (move || {
        shown.get().then(|| {
            el("div")
                .class("selection")
                .child(el("h2").set("id", "bench-selection").child(move || selected(desk)))
                .child(
                    el("p")
                        .class("note")
                        .child(move || if bench.run.get() == 0 { page.base_selected } else { page.run_selected }),
                )
                .child(choice::labelled(
                    "bench-run".to_owned(),
                    page.base_or_run.to_owned().into(),
                    choices,
                    now,
                    choose,
                ))
        })
    })
    .view()
}

/// "Base sheet", or "Run 3 · A Press temperature 180 °C".
pub fn selected(desk: Desk) -> String {
    let state = desk.state;
    let page = &state.words.bench_page;
    let run = u16::try_from(state.bench.run.get()).unwrap_or(0);
    let named = desk.planned.with(|planned| {
        let series = planned.series.as_ref()?;
        let own = series.run(run)?;
        // Behind number, standard order, block and replicate stand the levels.
        let levels = run_heads(desk, series).into_iter().zip(run_cells(desk, series, own)).skip(4);
        let levels = levels.filter(|(_, cell)| !cell.is_empty()).map(|(head, cell)| format!(" · {head} {cell}"));
        Some(format!("{} {run}{}", page.run, levels.collect::<String>()))
    });
    named.unwrap_or_else(|| page.no_run.to_owned())
}
