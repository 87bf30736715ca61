//! What the boards of a trial came to, as a table: one row a property of each combination, then of each run.

use super::trial_csv::{factor_head, level_cell, metric, saved, shown};
use crate::domain::trial::Property;
use crate::domain::trial::boards::group::{BoardGroup, BoardMade, GroupBy, GroupKey, PropertyResult, groups};
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::boards::target::{Judged, judge};
use crate::domain::trial::series::runs::Series;
use crate::quantity::Amount;
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::number::finite;
use crate::record::content::trial::TrialContent;
use crate::record::table::csv::{Csv, CsvCell};
use std::collections::BTreeSet;

/// Columns behind the levels. The 95 % quantile is the lower one of a strength and the upper one of a swelling; `tail` says which.
const COLUMNS: [&str; 15] = [
    "property",
    "unit",
    "boards",
    "mean",
    "sd_between_boards",
    "half_width_of_mean_95",
    "tail",
    "quantile_95",
    "target",
    "at_target_density",
    "at_target_density_half_width_95",
    "required",
    "required_by",
    "required_value",
    "met",
];

/// One row a property of each combination of levels, then of each run: boards with different targets are never pooled. Numbers are
/// in the unit of their row.
#[must_use]
pub fn results_csv(trial: &TrialContent, mark: DecimalMark) -> String {
    let series = trial.planned();
    let factors = series.as_ref().map_or(&[][..], |series| &series.factors);
    let mut csv = Csv::new(mark);
    let mut head: Vec<CsvCell> =
        ["trial", "saved", "revision_numbers", "grouped_by", "run"].map(CsvCell::text).into_iter().collect();
    head.extend(factors.iter().enumerate().map(|(at, factor)| factor_head(at, factor)));
    head.extend(COLUMNS.map(CsvCell::text));
    csv.row(head);
    let readings = trial.board_readings(&trial.run_sheets());
    let made: Vec<BoardMade> = readings.into_iter().map(|reading| reading.made).collect();
    for (name, by) in [("combination", GroupBy::Combination), ("run", GroupBy::Run)] {
        for group in groups(&made, by) {
            let (judged, _) = judge(&group.results, &trial.requirements);
            for result in &group.results {
                let mut cells =
                    vec![CsvCell::text(&trial.name), saved(trial), numbers(trial, &group), CsvCell::text(name)];
                cells.extend(levels(&group.key, series.as_ref(), factors.len()));
                let own = judged.iter().find(|own| own.property == result.property);
                cells.extend(row(trial, &group, result, own));
                csv.row(cells);
            }
        }
    }
    csv.finish()
}

/// The numbers of the revisions that the boards were made with.
fn numbers(trial: &TrialContent, group: &BoardGroup) -> CsvCell {
    let drafts = group.boards.iter().filter_map(|own| trial.boards.iter().find(|board| board.id == own.id));
    let numbers: BTreeSet<u32> = drafts.filter_map(|board| trial.made_from(board).revision_number).collect();
    match numbers.len() {
        0 => CsvCell::Blank,
        1 => CsvCell::whole(numbers.first().copied()),
        _ => CsvCell::text(numbers.iter().map(u32::to_string).collect::<Vec<_>>().join(" ")),
    }
}

/// The run, and the level of each factor.
fn levels(key: &GroupKey, series: Option<&Series>, factors: usize) -> Vec<CsvCell> {
    let (run, levels) = match key {
        GroupKey::Base => (None, None),
        GroupKey::Run(place) => {
            (Some(*place), series.and_then(|series| series.run(*place)).map(|run| run.levels.as_slice()))
        }
        GroupKey::Combination(levels) => (None, Some(levels.as_slice())),
    };
    let mut cells = vec![CsvCell::whole(run)];
    cells.extend((0..factors).map(|at| {
        let level = levels.and_then(|levels| levels.get(at));
        let own = level.and_then(|level| series?.factors.get(at)?.levels.get(usize::from(*level)));
        own.map_or(CsvCell::Blank, level_cell)
    }));
    cells
}

fn row(trial: &TrialContent, group: &BoardGroup, result: &PropertyResult, judged: Option<&Judged>) -> Vec<CsvCell> {
    let kind = result.property.kind();
    let unit = metric(kind);
    let value =
        |base: Option<f64>| base.and_then(finite).map_or(CsvCell::Blank, |base| shown(Amount::from_base(kind, base)));
    // A spread has no zero of its own: a moisture or a density is a difference here.
    let width = |base: Option<f64>| {
        let shown = base.map(|base| unit.from_base(base) - unit.from_base(0.0)).and_then(finite);
        shown.map_or(CsvCell::Blank, |width| CsvCell::number(&editable(width, DecimalMark::Point)))
    };
    let summary = &result.summary;
    let (tail, quantile) = match result.property.tail() {
        Some(Tail::Lower) => (CsvCell::text("lower"), summary.lower),
        Some(Tail::Upper) => (CsvCell::text("upper"), summary.upper),
        None => (CsvCell::Blank, None),
    };
    let target = group.density.filter(|_| result.property == Property::Density).map(|density| density.target);
    let strength = group.at_density.iter().find(|own| own.property == result.property);
    let met =
        judged.and_then(|own| own.met).map_or(CsvCell::Blank, |met| CsvCell::text(if met { "yes" } else { "no" }));
    let source = judged.map(|own| CsvCell::text(if own.unverified { "unverified" } else { "typed" }));
    vec![
        CsvCell::text(result.property.key()),
        CsvCell::text(unit.symbol()),
        CsvCell::whole(u64::try_from(summary.count).ok()),
        value(Some(summary.mean)),
        width(summary.deviation),
        width(summary.half_width),
        tail,
        value(quantile),
        value(target),
        value(strength.map(|own| own.value)),
        width(strength.map(|own| own.half_width)),
        value(judged.map(|own| own.required)),
        judged.map_or(CsvCell::Blank, |_| CsvCell::text(&trial.required_by)),
        source.unwrap_or(CsvCell::Blank),
        met,
    ]
}
