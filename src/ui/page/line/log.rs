//! The log of checks: kept, shown, plotted with control limits, and given out as a table.

use super::parts::{figure, table, table_row};
use super::plot::{Mark, Plot, plot};
use super::present_check::present_check;
use super::settings_text::signed;
use crate::browser::clock;
use crate::browser::element::{Part, View, button, el, many};
use crate::browser::graph::*;
use crate::domain::Grade;
use crate::domain::line::working::chart_working;
use crate::domain::line::{LineFigure, RunFigure};
use crate::record::content::check_log::{CheckContent, LoggedFigure, series};
use crate::record::file::log_csv::log_csv;
use crate::record::{CheckId, CheckRecord, LineCheckFile};
use crate::statistics::control_chart::control_chart;
use crate::ui::field::choice;
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::signal::{RwSignal, effect, memo};
use crate::ui::state::State;

/// So many checks stand in the table; the file has all.
const IN_SIGHT: usize = 50;

/// Puts what runs now into the log.
pub fn keep_check(state: State) {
    let page = &state.words.line_page;
    let Some(ran) = present_check(state).0 else {
        state.tell(page.nothing_to_keep);
        return;
    };
    let stamp = state.stamp();
    let content = CheckContent {
        at: stamp.at,
        author: stamp.author,
        recipe: state.title.with_untracked(|title| title.name.clone()),
        revision: state.from.get_untracked(),
        remark: state.line.record.with_untracked(|record| record.book.remark.trim().to_owned()),
        figures: ran.checks.iter().filter_map(|check| LoggedFigure::of(check, |id| state.liquid_name(id))).collect(),
        strikes: None,
    };
    if state.change_library(|library| library.log_check_once(content)).is_some() {
        state.line.edit(|book| book.remark.clear());
        read(state);
        state.tell(page.check_kept);
    }
}

/// Strikes a check out of the log.
fn strike(state: State, check: &CheckRecord) {
    let stamp = state.stamp();
    if state.change_library(|library| library.strike_check(check, stamp.at, stamp.author)).is_some() {
        read(state);
        let own = check.clone();
        state.tell_undo(state.words.line_page.check_struck, move || restore(state, &own));
    }
}

/// Makes a check that was struck out count again.
fn restore(state: State, check: &CheckRecord) {
    let stamp = state.stamp();
    if state.change_library(|library| library.restore_check(check, stamp.at, &stamp.author)).is_some() {
        read(state);
        state.tell(state.words.line_page.check_restored);
    }
}

/// Reads the log from the store.
fn read(state: State) {
    if let Ok(log) = state.library.with_untracked(|library| library.log()) {
        state.line.struck.set(log.struck);
        state.line.log.set(log.checks);
    }
}

fn give_out(state: State) {
    let name = format!("line-log-{}.csv", clock::date(clock::now()));
    let mark = state.units.get_untracked().mark;
    let text = state.line.log.with_untracked(|log| log_csv(log, mark));
    state.hand_out(&name, "text/csv", &text);
}

/// The line check as a file, with the recipe it is compared with.
pub fn export_check(state: State) {
    let at = clock::now();
    let name = state.title.with_untracked(|title| title.name.clone());
    let draft = state.draft.with_untracked(Clone::clone);
    let book = state.line.record.with_untracked(|record| record.book.clone());
    if let Ok(text) = LineCheckFile::new(name, at, draft, book).text() {
        state.hand_out(&format!("line-check-{}.json", clock::date(at)), "application/json", &text);
    }
}

/// The log with its chart.
pub fn log(state: State) -> View {
    let page = &state.words.line_page;
    effect(move || {
        state.library.track();
        read(state);
    });
    let chosen = RwSignal::new(String::new());
    let none = move || state.line.log.with(Vec::is_empty);
    let choices = memo(move || state.line.log.with(|log| charted(state, log)));
    let now = memo(move || {
        let now = chosen.get();
        choices
            .with(
                |all| if all.iter().any(|(key, _)| *key == now) { Some(now) } else { all.first().map(|c| c.0.clone()) },
            )
            .unwrap_or_default()
    });
    el("div")
        .class("log")
        .child(el("h3").child(page.log))
        .child(el("p").class("empty").set("hidden", move || !none()).child(page.log_empty))
        .child(
            el("div")
                .class("logged")
                .set("hidden", none)
                .child(el("div").class("fields").child(choice::labelled(
                    "log-figure".to_owned(),
                    page.charted.to_owned().into(),
                    choices,
                    now,
                    Callback::new(move |key| chosen.set(key)),
                )))
                .child(move || {
                    let counting: Vec<CheckRecord> = state.line.struck.with(|struck| {
                        state.line.log.with(|log| {
                            log.iter().filter(|check| !struck.contains(&CheckId(check.id()))).cloned().collect()
                        })
                    });
                    chart(state, &counting, &now.get())
                })
                .child(move || state.line.log.with(|log| checks(state, log)))
                .child(el("p").child(button().on_click(move || give_out(state)).child(page.export))),
        )
        .view()
}

/// What a logged figure is called.
fn name(state: State, figure: &LoggedFigure) -> String {
    let plain = [
        RunFigure::Water,
        RunFigure::FurnishMoisture,
        RunFigure::MatMoisture,
        RunFigure::MatWeight,
        RunFigure::Density,
    ];
    match (&figure.liquid, plain.into_iter().find(|plain| plain.key() == figure.figure)) {
        (Some(liquid), _) => format!("{}, {liquid}", state.words.line_page.dose),
        (None, Some(plain)) => (state.words.line.run_figure)(plain).label.to_owned(),
        (None, None) => figure.figure.clone(),
    }
}

fn key(figure: &LoggedFigure) -> String {
    format!("{} {}", figure.figure, figure.liquid.as_deref().unwrap_or_default())
}

fn charted(state: State, log: &[CheckRecord]) -> Vec<(String, String)> {
    let mut all: Vec<(String, String)> = Vec::new();
    for figure in log.iter().flat_map(|check| &check.content().figures) {
        let key = key(figure);
        if !all.iter().any(|(other, _)| *other == key) {
            all.push((key, name(state, figure)));
        }
    }
    all
}

fn chart(state: State, log: &[CheckRecord], wanted: &str) -> View {
    use LineFigure as Fig;
    let page = &state.words.line_page;
    let Some(which) = log.iter().flat_map(|check| &check.content().figures).find(|figure| key(figure) == wanted) else {
        return View::Nothing;
    };
    let values: Vec<f64> =
        series(log, &which.figure, which.liquid.as_deref()).into_iter().map(|(_, value)| value).collect();
    let Some(chart) = control_chart(&values) else {
        return el("p").class("empty").child(page.chart_needs).view();
    };
    let percent = |of: f64| of * 100.0;
    let last = values.len() as f64;
    let level = |of: f64, class: &'static str| ((1.0, percent(of)), (last, percent(of)), class);
    let points = values.iter().enumerate().map(|(at, value)| Mark {
        x: at as f64 + 1.0,
        y: percent(*value),
        odd: chart.outside.contains(&at),
    });
    let value = |of: f64| signed(state, of);
    let unit = if which.points { page.in_points } else { page.in_percent };
    let one = |of: Fig, base: f64| figure(state, "chart", of, value(base), chart_working(of, &chart));
    let outside = (!chart.outside.is_empty()).then(|| {
        el("p").class("finding unusual").child(mark(Grade::Unusual)).text(" ").child(format!(
            "{} {}",
            chart.outside.len(),
            page.outside_limits
        ))
    });
    many([
        plot(
            state.units.with(|units| units.mark),
            &Plot {
                label: format!("{}: {}", page.chart, name(state, which)),
                x_name: page.checks.to_owned(),
                y_name: format!("{} ({unit})", page.deviation),
                points: points.collect(),
                lines: vec![level(chart.mean, "mean"), level(chart.low, "control"), level(chart.high, "control")],
                joined: true,
            },
        )
        .view(),
        outside.view(),
        (!chart.settled).then(|| el("p").class("note").child(page.not_settled)).view(),
        el("dl")
            .class("figures")
            .child(one(Fig::ChartMean, chart.mean))
            .child(one(Fig::MovingRange, chart.moving_range))
            .child(one(Fig::LowLimit, chart.low))
            .child(one(Fig::HighLimit, chart.high))
            .view(),
        el("p").class("note").child(page.chart_source).view(),
    ])
}

fn checks(state: State, log: &[CheckRecord]) -> View {
    let page = &state.words.line_page;
    let row = |check: &CheckRecord| {
        let content = check.content();
        let off = content.figures.iter().filter(|figure| figure.within() == Some(false));
        let off: Vec<String> =
            off.map(|f| format!("{} {}", name(state, f), signed(state, f.deviation().unwrap_or_default()))).collect();
        let verdict = if off.is_empty() {
            page.within.view()
        } else {
            many([mark(Grade::Unusual), format!(" {}", off.join("; ")).view()])
        };
        let struck = state.line.struck.with(|struck| struck.contains(&CheckId(check.id())));
        let own = check.clone();
        let last = if struck {
            let back = button().on_click(move || restore(state, &own)).child(page.restore_check);
            many([el("p").child(page.struck_out).view(), back.view()])
        } else {
            button().on_click(move || strike(state, &own)).child(page.strike_out).view()
        };
        table_row(
            when(content.at).view(),
            [
                content.recipe.clone().view(),
                verdict,
                content.remark.clone().view(),
                content.author.clone().view(),
                last,
            ],
        )
    };
    let heads = [page.time, page.recipe, page.off_tolerance, page.remark, page.initials, page.strike_out];
    table(page.log, &heads, log.iter().rev().take(IN_SIGHT).map(row).collect())
}
