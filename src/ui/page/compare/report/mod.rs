//! The comparison on paper: a summary first, then what it rests on.

use super::context::CompareContext;
use super::data_table::{DataTable, exported};
use super::exports::{economy_table, print_report};
use super::lines::lines;
use super::map::mapped_at;
use super::solve::asked;
use super::sweep::swept_at;
use super::systems::Compared;
use super::table::{decimals, differences, key_figures, verdict_words};
use super::uncertainty::{assumed, budget_table, results_table, work_out};
use super::words::{key_name, signed_fixed, with_unit_named};
use crate::browser::clock;
use crate::domain::compare::economy::field::{EconomyEntries, SystemEconomyEntries};
use crate::domain::compare::emission::{EmissionEntries, sheet};
use crate::domain::compare::overview::key_figures::KeyRow;
use crate::quantity::format;
use crate::record::table::Table;
use crate::t;
use crate::ui::chart::drawing::Drawing;
use crate::ui::table::{answers, assumptions, emission, limits};
use crate::ui::text::words;
use leptos::prelude::*;

/// Width of a drawing on paper, in pixels of 1/96 inch: A4 and Letter less their margins.
const DRAWN: f64 = 660.0;

/// The tab: the report as it is printed.
#[component]
pub fn ReportTab() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let rows = key_figures(context);
    view! {
        <section class="report-section" aria-labelledby="report">
            <div class="controls not-printed">
                <h2 id="report" tabindex="-1">{t!("compare-report")}</h2>
                <p class="note">{t!("compare-report-hint")}</p>
                <button type="button" class="primary" on:click=move |_| print_report(context)>{t!("common-print")}</button>
            </div>
            {move || report(context, &rows.get())}
        </section>
    }
}

/// A part of the report under its heading.
#[component]
fn ReportPart(
    /// The heading.
    title: String,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    view! { <section class="part"><h3>{title}</h3>{children()}</section> }
}

fn report(context: CompareContext, rows: &[KeyRow]) -> Option<AnyView> {
    let state = context.state;
    let typed = state.compare.typed.get();
    let asked = answers(&asked(context));
    let said = lines(context);
    let drawings: Vec<Drawing> = [
        swept_at(context, &typed.sweep, DRAWN).and_then(Result::ok).and_then(|swept| swept.picture),
        mapped_at(context, &typed.map, DRAWN).and_then(Result::ok).and_then(|mapped| mapped.picture),
    ]
    .into_iter()
    .flatten()
    .collect();
    context.shown.with(|shown| {
        shown.side.as_ref().ok()?;
        let (lead, second) = verdict_words(context, rows);
        let warnings =
            said.into_iter().map(|line| view! { <li><b>{line.word}</b> " " {line.words}</li> }).collect_view();
        let known = work_out(shown, &typed.uncertainty);
        let certain = known.as_ref().filter(|known| known.study.is_ok()).map(|known| {
            let (head, rows) = results_table(context, known);
            let at = known.chosen(&(typed.uncertainty.output.clone(), typed.uncertainty.of));
            let budget = at.and_then(|at| budget_table(context, known, at)).map(|(title, head, rows)| {
                view! { <h4>{title.clone()}</h4><DataTable name=title head=head rows=rows/> }
            });
            let sources = exported(state, &assumed(context, known));
            view! {
                <DataTable name=t!("compare-uncertainty") head=head rows=rows/>
                {budget}
                <h4>{t!("compare-sources")}</h4>
                {sources}
            }
        });
        let pictures = drawings
            .into_iter()
            .map(|drawing| view! { <div class="drawing" inner_html=drawing.inline()></div> })
            .collect_view();
        let asked = exported(state, &asked);
        let key_figures = key_table(context, shown, rows);
        let title = t!("compare-report-title", names = names(shown));
        let values = sources(shown);
        let first = shown.systems.first()?;
        let (assumed_inputs, limited) =
            context.with_draft(&first.draft, |own| (assumptions(&shown.systems, own), limits(&shown.systems, own)));
        // What nobody has filled in says nothing.
        let has_economy = typed.economy != EconomyEntries::default()
            || typed.system_economy.values().any(|own| *own != SystemEconomyEntries::default());
        let economy = has_economy.then(|| economy_table(context, &typed, shown)).flatten();
        let emission = (typed.emission != EmissionEntries::default()).then(|| emission(&sheet(&typed.emission)));
        let part = |title: String, table: &Table| {
            let table = exported(state, table);
            view! { <ReportPart title=title>{table}</ReportPart> }
        };
        let economy = economy.map(|found| part(t!("compare-economy"), &found));
        let emission = emission.map(|found| part(t!("compare-emission"), &found));
        let inputs = exported(state, &assumed_inputs);
        let limited = exported(state, &limited);
        let differing = differences(context);
        Some(
            view! {
                <article class="report">
                    <header>
                        <p class="title">{title}</p>
                        <p class="note">{made()}</p>
                    </header>
                    <p class="lead">{lead}</p>
                    <p>{second}</p>
                    <ReportPart title=t!("common-warnings")><ul class="warning-list">{warnings}</ul></ReportPart>
                    <ReportPart title=t!("compare-key-figures")>{key_figures}</ReportPart>
                    <ReportPart title=t!("compare-drawings")>{pictures}</ReportPart>
                    <ReportPart title=t!("compare-uncertainty")>{certain}</ReportPart>
                    <ReportPart title=t!("compare-answers")>{asked}</ReportPart>
                    <ReportPart title=t!("compare-limits")>{limited}</ReportPart>
                    {economy}
                    {emission}
                    <ReportPart title=t!("compare-differing")>{differing}{inputs}</ReportPart>
                    <ReportPart title=t!("compare-sources-of-values")>{values}</ReportPart>
                </article>
            }
            .into_any(),
        )
    })
}

/// The key figures as plain text, each system's difference to the reference behind its value.
fn key_table(context: CompareContext, shown: &Compared, rows: &[KeyRow]) -> AnyView {
    let state = context.state;
    let mark = state.units.get().mark;
    let mut head = vec![t!("compare-result")];
    head.extend((0..shown.systems.len()).map(|at| shown.name(at)));
    let row = |row: &KeyRow| {
        let kind = row.figure.kind();
        let unit = state.unit(kind);
        let value = |at: usize| row.values.get(at).copied().flatten().map(|value| value.get(unit));
        let decimals = decimals(row, unit);
        let cell = |at: usize| {
            let Some(own) = value(at) else { return "–".to_owned() };
            let text = format::fixed(own, decimals, mark);
            match value(shown.reference).filter(|_| at != shown.reference) {
                Some(other) => {
                    let more = format::rounded(own, decimals) - format::rounded(other, decimals);
                    format!("{text} ({})", signed_fixed(state, more, decimals))
                }
                None => text,
            }
        };
        let mut cells = vec![with_unit_named(state, &key_name(row.figure), kind)];
        cells.extend((0..shown.systems.len()).map(cell));
        cells
    };
    let rows: Vec<Vec<String>> = rows.iter().map(row).collect();
    view! { <DataTable name=t!("compare-key-figures") head=head rows=rows/> }.into_any()
}

fn names(shown: &Compared) -> String {
    (0..shown.systems.len()).map(|at| shown.name(at)).collect::<Vec<_>>().join(", ")
}

/// When it was made, and by which version.
fn made() -> String {
    t!("compare-made", time = clock::date_time(clock::now()), version = env!("CARGO_PKG_VERSION"))
}

/// Where the liquids' values and the methods come from.
fn sources(shown: &Compared) -> AnyView {
    let mut said: Vec<String> = Vec::new();
    for liquid in shown.systems.iter().flat_map(|system| &system.draft.liquids) {
        let source = liquid.source.trim();
        let source = if source.is_empty() { t!("compare-no-source") } else { source.to_owned() };
        let line = format!("{}: {source}", words::liquid(liquid));
        if !said.contains(&line) {
            said.push(line);
        }
    }
    said.extend([t!("compare-method-heat"), t!("compare-method-uncertainty"), t!("compare-method-start-values")]);
    view! { <ul>{said.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul> }.into_any()
}
