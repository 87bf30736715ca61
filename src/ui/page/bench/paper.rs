//! The trial on paper: one sheet a board, what was weighed, the run order, the material and the results.

use super::desk::{Desk, TestedGroup};
use super::parts::{findings, shown, signed, table};
use super::selection::selected;
use super::series::{material, run_cells, run_heads};
use super::sheet::value;
use super::tested;
use crate::browser::element::{Part, View, el, many};
use crate::domain::Draft;
use crate::domain::trial::boards::group::PropertyResult;
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::series::runs::of_run;
use crate::domain::trial::{SheetDraft, WeighFigure, WeighLineFigure, WeighSheet};
use crate::quantity::Kind;
use crate::ui::state::State;
use leptos::reactive::prelude::*;

/// What stands between head and foot of the paper.
pub fn paper(state: State) -> View {
    let desk = Desk::new(state);
    let page = &state.words.bench_page;
    let title = state.bench.open.with(|open| {
        let trial = &open.trial;
        format!("{} · {} {}", state.called(&trial.name), page.basis, state.called(&trial.recipe_name))
    });
    // A run that is selected is printed alone.
    if let Some(only) = selected_run(desk) {
        return many([el("p").child(el("strong").child(title)).view(), only]);
    }
    let sheets = desk.planned.with(|planned| match &planned.series {
        None => desk.made.with(|made| match made.sheet.as_ref().filter(|_| !made.old) {
            Some(own) => one(desk, page.sheet.to_owned(), own, &made.recipe),
            None => el("p").child(page.fill_in).view(),
        }),
        Some(series) => {
            let rows = series.runs.iter().map(|run| run_cells(desk, series, run)).collect();
            let own = planned.sheets.iter().map(|run| {
                let heads = run_heads(desk, series);
                let levels = heads.into_iter().zip(run_cells(desk, series, &run.run)).map(|(a, b)| format!("{a} {b}"));
                let title = levels.collect::<Vec<_>>().join(" · ");
                let (recipe, typed) = desk.basis.with(|basis| match &basis.series {
                    Some(draft) => of_run(&basis.recipe, &basis.sheet, draft, &run.run),
                    None => (basis.recipe.clone(), basis.sheet.clone()),
                });
                match &run.sheet {
                    Some(sheet) => one(desk, title, sheet, &recipe),
                    None => unmade(desk, title, run, &recipe, &typed),
                }
            });
            many([
                el("section")
                    .child(el("h2").child(page.run_order))
                    .child(table(page.run_order, &run_heads(desk, series), rows))
                    .view(),
                el("section").child(el("h2").child(page.material)).child(material(desk, planned)).view(),
                own.collect::<View>(),
            ])
        }
    });
    many([el("p").child(el("strong").child(title)).view(), sheets, results(desk), said(desk)])
}

/// The sheet of the selected run; nothing while the base sheet is selected.
fn selected_run(desk: Desk) -> Option<View> {
    let place = u16::try_from(desk.state.bench.run.get()).ok()?;
    desk.planned.with(|planned| {
        planned.sheets.iter().find(|sheet| sheet.run.place == place)?;
        desk.made.with(|made| match made.sheet.as_ref().filter(|_| !made.old) {
            Some(sheet) => Some(one(desk, selected(desk), sheet, &made.recipe)),
            None => Some(
                el("section")
                    .class("board-sheet")
                    .child(el("h2").child(selected(desk)))
                    .child(findings(desk, &made.findings, &made.recipe, &made.typed))
                    .view(),
            ),
        })
    })
}

fn unmade(
    desk: Desk,
    title: String,
    run: &crate::domain::trial::series::material::RunSheet,
    recipe: &Draft,
    typed: &SheetDraft,
) -> View {
    el("section")
        .class("board-sheet")
        .child(el("h2").child(title))
        .child(findings(desk, &run.findings, recipe, typed))
        .view()
}

/// One sheet to weigh out by, with room to write what was weighed.
fn one(desk: Desk, title: String, sheet: &WeighSheet, recipe: &Draft) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let row = |line: &crate::domain::trial::weigh_sheet::sheet::WeighLine| {
        let part = |part| value(state, sheet, WeighFigure::Line(line.id, part)).unwrap_or_default();
        vec![
            (state.words.bench.line)(line.id, recipe),
            part(WeighLineFigure::Rounded),
            part(WeighLineFigure::Volume),
            part(WeighLineFigure::SprayTime),
            part(WeighLineFigure::Actual),
            "________".to_owned(),
        ]
    };
    let figure = |figure: WeighFigure| (state.words.bench.figure)(figure).label.to_owned();
    let id = crate::domain::trial::LineId::Fibre;
    let head = [
        page.line.to_owned(),
        figure(WeighFigure::Line(id, WeighLineFigure::Rounded)),
        page.volume.to_owned(),
        figure(WeighFigure::Line(id, WeighLineFigure::SprayTime)),
        page.actual_dose.to_owned(),
        page.weighed.to_owned(),
    ];
    let plain = [
        WeighFigure::MatMoist,
        WeighFigure::Stops,
        WeighFigure::PressTime,
        WeighFigure::FinishedBoard,
        WeighFigure::RawBoard,
        WeighFigure::ActualMoisture,
    ];
    let pair = |own: WeighFigure| {
        let value = value(state, sheet, own)?;
        Some(el("div").child(el("dt").child(figure(own))).child(el("dd").child(value)))
    };
    el("section")
        .class("board-sheet")
        .child(el("h2").child(title))
        .child(el("p").child(format!("{} · {} {}", page.one_batch, page.batch, sheet.batches)))
        .child(el("div").class("weigh-on-paper").child(table(page.order, &head, sheet.lines.iter().map(row).collect())))
        .child(el("dl").class("columns").child(plain.into_iter().filter_map(pair).collect::<View>()))
        .view()
}

/// What the boards came to, by combination.
fn results(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let row = |result: &PropertyResult| {
        let words = (state.words.bench.property)(result.property);
        let base = |base: Option<f64>| base.map_or_else(String::new, |base| shown(state, result.property.kind(), base));
        let summary = &result.summary;
        let quantile = match result.property.tail() {
            Some(Tail::Lower) => format!("{} {}", page.lower, base(summary.lower)),
            Some(Tail::Upper) => format!("{} {}", page.upper, base(summary.upper)),
            None => String::new(),
        };
        vec![
            format!("{} ({})", words.label, words.note),
            summary.count.to_string(),
            base(Some(summary.mean)),
            base(summary.deviation),
            base(summary.half_width),
            if summary.lower.is_some() { quantile } else { String::new() },
        ]
    };
    let head = [page.property, page.count, page.mean, page.deviation_between, page.half_width, page.quantile];
    let one = |own: &TestedGroup| {
        let title = tested::group_name(desk, &own.group.key);
        let next = own.group.density.map(|target| {
            let next = shown(state, Kind::BenchMass, target.next_mat.value);
            let change = signed(state, Kind::Share, target.correction.value - 1.0);
            el("p").child(format!("{}: {next} ({change})", page.next_mat))
        });
        let rows = own.group.results.iter().map(row).collect();
        el("section")
            .child(el("h3").child(title.clone()))
            .child(table(page.by_combination, &head.map(str::to_owned), rows))
            .child(next)
    };
    desk.tested
        .with(|tested| {
            (!tested.results.is_empty()).then(|| {
                el("section")
                    .child(el("h2").child(page.by_combination))
                    .child(tested.combinations.iter().map(one).collect::<View>())
            })
        })
        .view()
}

/// What there is to say.
fn said(desk: Desk) -> View {
    let page = &desk.state.words.bench_page;
    desk.made.with(|made| {
        desk.tested.with(|tested| {
            let groups = tested.combinations.iter().flat_map(|own| &own.findings);
            let all = made.findings.iter().chain(&tested.findings).chain(groups);
            el("section")
                .class("findings-on-paper")
                .child(el("h2").child(page.findings))
                .child(findings(desk, all, &made.recipe, &made.typed))
                .child(el("p").child(desk.state.words.tools.caution_rule))
                .view()
        })
    })
}
