//! Runs, material and groups of boards for the parts that are built with `browser::element`: paper and selection.

use super::desk::{Desk, PlannedSeries};
use super::parts::{shown, table};
use crate::browser::element::View;
use crate::domain::trial::boards::group::GroupKey;
use crate::domain::trial::series::factor::Factor;
use crate::domain::trial::series::material::Needed;
use crate::domain::trial::series::run::Run;
use crate::domain::trial::series::word::letter;
use crate::domain::trial::{Series, SeriesDraft};
use crate::quantity::Kind;
use crate::t;
use leptos::reactive::prelude::*;

/// The heads of the table of runs.
pub fn run_heads(desk: Desk, series: &Series) -> Vec<String> {
    let mut heads = vec![t!("trial-run"), t!("trial-standard-order"), t!("trial-block"), t!("trial-replicate")];
    desk.with_context(|context| {
        let named = |(at, factor): (usize, &Factor)| {
            format!("{} {}", letter(at), (desk.state.words.bench.factor)(factor.of, &factor.own, context.draft))
        };
        heads.extend(series.factors.iter().enumerate().map(named));
    });
    heads
}

/// The cells of a run.
pub fn run_cells(desk: Desk, series: &Series, run: &Run) -> Vec<String> {
    let mut cells = [run.place, run.standard, run.block, run.replicate].map(|number| number.to_string()).to_vec();
    desk.with_context(|context| {
        let level = |at| {
            let level = series.level(run, at);
            level.map_or_else(String::new, |level| (desk.state.words.bench.level)(level, context))
        };
        cells.extend((0..series.factors.len()).map(level));
    });
    cells
}

/// The material of all runs.
pub fn material(desk: Desk, planned: &PlannedSeries) -> View {
    let state = desk.state;
    let none = SeriesDraft::default();
    let rows = desk.basis.with(|basis| {
        let draft = basis.series.as_ref().unwrap_or(&none);
        let row = |needed: &Needed| {
            vec![
                (state.words.bench.material)(needed.material, draft, &basis.recipe),
                shown(state, Kind::BenchMass, needed.mass.value),
                needed.volume.map_or_else(String::new, |volume| shown(state, Kind::BenchVolume, volume.value)),
            ]
        };
        planned.needed.iter().map(row).collect::<Vec<_>>()
    });
    let head = [t!("trial-material-name"), t!("trial-mass"), t!("trial-volume")];
    table(state.words.bench_page.material, &head, rows)
}

/// What a group is called: its run, or the levels of its runs.
pub fn group_name(desk: Desk, key: &GroupKey) -> String {
    desk.planned.with(|planned| {
        desk.with_context(|context| (desk.state.words.bench.group)(key, planned.series.as_ref(), context))
    })
}
