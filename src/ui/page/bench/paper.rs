//! The trial on paper: one sheet a board, what was weighed, the run order, the material and the results.

use super::desk::Desk;
use super::parts::{findings, shown, signed, table};
use super::series::{material, run_cells, run_heads};
use super::sheet::value;
use crate::browser::element::{Part, View, el, many};
use crate::domain::Draft;
use crate::domain::trial::boards::target::PropertyResult;
use crate::domain::trial::series::runs::of_run;
use crate::domain::trial::{Figure, LineFigure, Sheet, SheetDraft};
use crate::quantity::Kind;
use crate::ui::state::State;

/// What stands between head and foot of the paper.
pub fn paper(state: State) -> View {
    let desk = Desk::new(state);
    let page = &state.words.bench_page;
    let title = state.bench.open.with(|open| {
        let trial = &open.trial;
        format!("{} · {} {}", state.called(&trial.name), page.basis, state.called(&trial.recipe_name))
    });
    let sheets = desk.planned.with(|planned| match &planned.series {
        None => desk.made.with(|made| match &made.sheet {
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
fn one(desk: Desk, title: String, sheet: &Sheet, recipe: &Draft) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let row = |line: &crate::domain::trial::weigh_sheet::sheet::Line| {
        let part = |part| value(state, sheet, Figure::Line(line.id, part)).unwrap_or_default();
        vec![
            (state.words.bench.line)(line.id, recipe),
            part(LineFigure::Rounded),
            part(LineFigure::Volume),
            part(LineFigure::SprayTime),
            part(LineFigure::Given),
            "________".to_owned(),
        ]
    };
    let figure = |figure: Figure| (state.words.bench.figure)(figure).label.to_owned();
    let id = crate::domain::trial::LineId::Fibre;
    let head = [
        page.line.to_owned(),
        figure(Figure::Line(id, LineFigure::Rounded)),
        page.volume.to_owned(),
        figure(Figure::Line(id, LineFigure::SprayTime)),
        page.given.to_owned(),
        page.weighed.to_owned(),
    ];
    let plain = [
        Figure::MatMoist,
        Figure::Stops,
        Figure::PressTime,
        Figure::FinishedBoard,
        Figure::RawBoard,
        Figure::GivenMoisture,
    ];
    let pair = |own: Figure| {
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

/// What the boards came to.
fn results(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    desk.tested.with(|tested| {
        if tested.results.is_empty() {
            return View::Nothing;
        }
        let row = |result: &PropertyResult| {
            let words = (state.words.bench.property)(result.property);
            let base =
                |base: Option<f64>| base.map_or_else(String::new, |base| shown(state, result.property.kind(), base));
            let summary = &result.summary;
            vec![
                format!("{} ({})", words.label, words.note),
                summary.count.to_string(),
                base(Some(summary.mean)),
                base(summary.deviation),
                base(summary.half_width),
                base(summary.lower),
            ]
        };
        let head = [page.property, page.count, page.mean, page.deviation_between, page.half_width, page.lower];
        let rows = tested.results.iter().map(row).collect();
        let next = tested.target.map(|target| {
            let next = shown(state, Kind::BenchMass, target.next_mat.value);
            el("p").child(format!(
                "{}: {next} ({})",
                page.next_mat,
                signed(state, Kind::Share, target.correction.value - 1.0)
            ))
        });
        el("section")
            .child(el("h2").child(page.all_boards))
            .child(table(page.all_boards, &head.map(str::to_owned), rows))
            .child(next)
            .view()
    })
}

/// What there is to say.
fn said(desk: Desk) -> View {
    let page = &desk.state.words.bench_page;
    desk.made.with(|made| {
        desk.tested.with(|tested| {
            let all = made.findings.iter().chain(&tested.findings);
            el("section")
                .class("findings-on-paper")
                .child(el("h2").child(page.findings))
                .child(findings(desk, all, &made.recipe, &made.typed))
                .child(el("p").child(desk.state.words.tools.caution_rule))
                .view()
        })
    })
}
