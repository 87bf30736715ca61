//! The map chosen, worked out: its drawing, its sentence, its table.

use super::chosen::{FIRST_ACROSS, FIRST_OUTPUT, FIRST_UP};
use crate::domain::compare::draft::MapDraft;
use crate::domain::compare::feasibility::{FeasibilityGrade, Obstacle, feasibility};
use crate::domain::compare::range::{RangeError, range};
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::sweep::{Axis, Grid, feasible_stretches, grid};
use crate::domain::compare::variable;
use crate::quantity::{Amount, Kind, Unit, format};
use crate::t;
use crate::ui::chart::curves::Labels;
use crate::ui::chart::drawing::Drawing;
use crate::ui::chart::map::{CellStatus, Legend, MapCells, RegionLabel, map as draw};
use crate::ui::page::compare::choices::{output_choices, output_of, picked, used_inputs};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::words::{amount_text, output_name, with_unit_named};
use crate::ui::text::words;
use leptos::prelude::*;

/// Points of each axis; each cell is a full solve.
const POINTS: usize = 41;
/// Every so many of them are in the table.
const EVERY: usize = 8;
/// A region of fewer cells has no name of its own.
const SMALL: usize = 60;

/// The map.
#[derive(Debug, Clone, PartialEq)]
pub struct MappedResult {
    /// Whether the system can run, in a sentence.
    pub lead: String,
    /// The nearest point at which it can, where it cannot.
    pub second: String,
    /// The drawing; `None` where there is nothing to draw.
    pub picture: Option<Drawing>,
    /// What prevents it anywhere on it, in a sentence.
    pub obstacles: String,
    /// What the drawing shows.
    pub title: String,
    /// Heading of the table.
    pub head: Vec<String>,
    /// Its rows.
    pub rows: Vec<Vec<String>>,
    /// What the letters beside its values say: what prevents the point, or is unusual there.
    pub notes: Vec<String>,
}

/// Both axes of the map chosen, for a system; an error where a range is none.
pub fn axes(own: &MapDraft, system: &ComparedSystem, points: usize) -> Option<Result<(Axis, Axis), RangeError>> {
    let offered = used_inputs(system);
    let (across, up) = (picked(&own.across, FIRST_ACROSS, &offered), picked(&own.up, FIRST_UP, &offered));
    if across == up {
        return None;
    }
    let axis = |key: &String| range(system, key, own.ranges.get(key), points);
    Some(axis(&across).and_then(|x| axis(&up).map(|y| (x, y))))
}

/// The map chosen, drawn for a width; an error where a range is none.
pub fn mapped_at(context: CompareContext, own: &MapDraft, width: f64) -> Option<Result<MappedResult, RangeError>> {
    context.shown.with(|shown| {
        let at = shown.ready_at(own.system.as_ref());
        let system = shown.ready.get(at)?;
        let (x, y) = match axes(own, system, POINTS)? {
            Ok(axes) => axes,
            Err(error) => return Some(Err(error)),
        };
        let place = shown.places.get(at).copied()?;
        worked_out(context, own, system, &shown.name(place), (x, y), width).map(Ok)
    })
}

const fn status(grade: FeasibilityGrade) -> CellStatus {
    match grade {
        FeasibilityGrade::Infeasible => CellStatus::Barred,
        FeasibilityGrade::Advised => CellStatus::Unusual,
        FeasibilityGrade::Free => CellStatus::Free,
    }
}

fn worked_out(
    context: CompareContext,
    own: &MapDraft,
    system: &ComparedSystem,
    name: &str,
    (x, y): (Axis, Axis),
    width: f64,
) -> Option<MappedResult> {
    let state = context.state;
    let case = system.case()?;
    let key = picked(&own.output, FIRST_OUTPUT, &output_choices(system));
    let output = output_of(context, system, &key)?;
    let grid = grid(case, &x, &y, output);
    let units = state.units.get();
    let kinds = [system.draft.kind(x.field), system.draft.kind(y.field), output.kind()];
    let [x_unit, y_unit, unit] = kinds.map(|kind| units.unit(kind));
    let convert = |bases: &[f64], unit: Unit| bases.iter().map(|base| unit.from_base(*base)).collect::<Vec<_>>();
    let now = variable::get(&case.input, x.field).zip(variable::get(&case.input, y.field));
    let cells = MapCells {
        across: convert(&grid.across, x_unit),
        up: convert(&grid.up, y_unit),
        values: grid.values.iter().map(|value| value.map(|base| unit.from_base(base))).collect(),
        grounds: grid.feasibilities.iter().map(|feasibility| status(feasibility.standing())).collect(),
        level: grid.level.iter().map(|x| x.map(|x| x_unit.from_base(x))).collect(),
        upright: grid.upright.iter().map(|y| y.map(|y| y_unit.from_base(y))).collect(),
        edges: grid.edges.iter().map(|piece| piece.map(|(x, y)| (x_unit.from_base(x), y_unit.from_base(y)))).collect(),
        now: now.map(|(x, y)| (x_unit.from_base(x), y_unit.from_base(y))),
    };
    let names = [x.field, y.field].map(|field| words::field_name(field, &system.draft));
    let figure = with_unit_named(state, &output_name(output, &system.draft), kinds[2]);
    let labels = [with_unit_named(state, &names[0], kinds[0]), with_unit_named(state, &names[1], kinds[1])];
    let title = t!("compare-figure-of", figure = figure.clone(), system = name);
    let up = t!("compare-map-up", up = labels[1].clone(), figure = figure);
    let point = now.map_or_else(String::new, |(x, y)| {
        let text = |kind: Kind, base: f64| amount_text(state, Amount::from_base(kind, base));
        t!("compare-map-now", across = text(kinds[0], x), up = text(kinds[1], y))
    });
    let (barred, unusual) = (t!("compare-cannot-run"), t!("compare-outside-typical"));
    let picture = draw(
        (width, if width < 500.0 { 340.0 } else { 460.0 }),
        &cells,
        &regions(&grid, (x_unit, y_unit)),
        Labels { title: &title, across: &labels[0], up: &up, mark: units.mark },
        Legend { barred: &barred, unusual: &unusual, now: &point },
    );
    let on_map = Obstacle::ALL
        .into_iter()
        .filter(|obstacle| grid.feasibilities.iter().any(|feasibility| feasibility.has(*obstacle)))
        .map(words::compare::obstacle)
        .collect::<Vec<_>>();
    let number = |kind: Kind, unit: Unit, base: f64| format::amount(Amount::from_base(kind, base), unit, units.mark);
    let columns: Vec<usize> = (0..POINTS).step_by(EVERY).collect();
    let mut head = vec![format!("{} \\ {}", labels[1], labels[0])];
    head.extend(columns.iter().filter_map(|at| grid.across.get(*at)).map(|base| number(kinds[0], x_unit, *base)));
    let mut noted: Vec<Obstacle> = Vec::new();
    let mut rows = Vec::new();
    for (row, base) in grid.up.iter().enumerate().step_by(EVERY) {
        let mut line = vec![number(kinds[1], y_unit, *base)];
        for column in &columns {
            let place = grid.place(*column, row);
            let value = grid.values.get(place).copied().flatten();
            let value = value.map_or_else(|| "–".to_owned(), |base| number(kinds[2], unit, base));
            let first = grid.feasibilities.get(place).and_then(|feasibility| feasibility.obstacles().next());
            line.push(first.map_or(value.clone(), |obstacle| format!("{value}\u{a0}{}", letter(&mut noted, obstacle))));
        }
        rows.push(line);
    }
    let notes = ('a'..).zip(&noted).map(|(letter, each)| format!("{letter}: {}", words::compare::obstacle(*each)));
    let notes = notes.collect();
    let (lead, second) = sentences(context, system, name, (x, y), now, kinds);
    Some(MappedResult {
        lead,
        second,
        picture,
        obstacles: if on_map.is_empty() { String::new() } else { t!("compare-on-map", limits = on_map.join("; ")) },
        title,
        head,
        rows,
        notes,
    })
}

/// The letter that stands for what prevents a point, the next one where it has none yet.
fn letter(noted: &mut Vec<Obstacle>, obstacle: Obstacle) -> char {
    let at = noted.iter().position(|each| *each == obstacle).unwrap_or_else(|| {
        noted.push(obstacle);
        noted.len() - 1
    });
    ('a'..).nth(at).unwrap_or('*')
}

/// The names of the regions: of what can be run, and of what prevents it first.
fn regions(grid: &Grid, (x_unit, y_unit): (Unit, Unit)) -> Vec<RegionLabel> {
    let columns = grid.across.len().max(1);
    let mut found: Vec<(Option<Obstacle>, usize, f64, f64)> = Vec::new();
    for (place, feasibility) in grid.feasibilities.iter().enumerate() {
        let first = feasibility.obstacles().next();
        let (x, y) = (grid.across.get(place % columns), grid.up.get(place / columns));
        let Some((x, y)) = x.zip(y) else { continue };
        match found.iter_mut().find(|(other, ..)| *other == first) {
            Some((_, count, across, up)) => {
                *count += 1;
                *across += x;
                *up += y;
            }
            None => found.push((first, 1, *x, *y)),
        }
    }
    let label = |(obstacle, count, x, y): (Option<Obstacle>, usize, f64, f64)| RegionLabel {
        at: (x_unit.from_base(x / count as f64), y_unit.from_base(y / count as f64)),
        words: obstacle
            .map_or_else(|| t!("compare-feasible"), |obstacle| words::compare::obstacle(obstacle).to_owned()),
    };
    found.into_iter().filter(|(_, count, ..)| *count >= SMALL).map(label).collect()
}

/// Whether the system can run at the recipe's point, and where it could.
fn sentences(
    context: CompareContext,
    system: &ComparedSystem,
    name: &str,
    (x, y): (Axis, Axis),
    now: Option<(f64, f64)>,
    kinds: [Kind; 3],
) -> (String, String) {
    let state = context.state;
    let Some(case) = system.case() else { return Default::default() };
    let found = feasibility(case, &mut Vec::new());
    if found.is_feasible() {
        let advice: Vec<&str> = found.obstacles().map(words::compare::obstacle).collect();
        let second = if advice.is_empty() { String::new() } else { t!("compare-advice", advice = advice.join("; ")) };
        return (t!("compare-inside", system = name), second);
    }
    let limits: Vec<&str> =
        found.obstacles().filter(|obstacle| !obstacle.is_advice()).map(words::compare::obstacle).collect();
    let lead = t!("compare-outside", system = name, limits = limits.join("; "));
    let text = |kind: Kind, base: f64| amount_text(state, Amount::from_base(kind, base));
    // Along each axis by itself.
    let nearest = |axis: &Axis, at: f64| {
        let ends = feasible_stretches(case, axis).into_iter().map(|(from, to)| at.clamp(from, to));
        ends.min_by(|one, other| (one - at).abs().total_cmp(&(other - at).abs()))
    };
    let near = now.and_then(|(across, up)| {
        let along = nearest(&x, across).map(|end| (text(kinds[0], end), text(kinds[1], up)));
        along.or_else(|| nearest(&y, up).map(|end| (text(kinds[0], across), text(kinds[1], end))))
    });
    let second =
        near.map_or_else(|| t!("compare-no-nearest"), |(across, up)| t!("compare-nearest", across = across, up = up));
    (lead, second)
}
