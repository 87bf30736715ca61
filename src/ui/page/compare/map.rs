//! Two inputs of one system over a grid: lines of equal value, and where the recipe can be run.

use super::choices::{SystemSlot, output_choices, output_of, system_at, system_choice, used_inputs};
use super::comparison::Comparison;
use super::parts::{Slot, drawn, follow, output_name, picked, select, table, width, with_unit_named};
use super::ranges::{RangeSlot, range_boxes};
use super::systems::Compared;
use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::domain::Grade;
use crate::domain::compare::draft::MapDraft;
use crate::domain::compare::feasibility::{FeasibilityGrade, Obstacle};
use crate::domain::compare::range::{RangeError, range};
use crate::domain::compare::sweep::grid;
use crate::domain::compare::variable;
use crate::quantity::{Amount, Kind, Unit, format};
use crate::ui::chart::curves::Labels;
use crate::ui::chart::drawing::Drawing;
use crate::ui::chart::map::{CellStatus, Legend, MapCells, map as draw};
use crate::ui::part::finding::told;
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;

const SYSTEM: SystemSlot = SystemSlot {
    id: "map.system",
    get: |typed| typed.map.system.as_ref(),
    set: |typed, choice| typed.map.system = choice,
};
const ACROSS: Slot =
    Slot { id: "map.across", get: |typed| typed.map.across.clone(), set: |typed, key| typed.map.across = key };
const UP: Slot = Slot { id: "map.up", get: |typed| typed.map.up.clone(), set: |typed, key| typed.map.up = key };
const OUTPUT: Slot =
    Slot { id: "map.output", get: |typed| typed.map.output.clone(), set: |typed, key| typed.map.output = key };
const RANGES: RangeSlot = RangeSlot { get: |typed| &typed.map.ranges, get_mut: |typed| &mut typed.map.ranges };
const FIRST_ACROSS: &str = "fibre_moisture";
const FIRST_UP: &str = "fibre_flow";
const FIRST_OUTPUT: &str = "water_dose";
/// Points of each axis; each cell is a full solve.
const POINTS: usize = 41;
/// Every so many of them stand in the table.
const EVERY: usize = 8;

/// The map.
#[derive(Debug, Clone, PartialEq)]
pub struct Mapped {
    /// The drawing; `None` where there is nothing to draw.
    pub picture: Option<Drawing>,
    /// What stands in the way anywhere on it.
    pub obstacles: Vec<&'static str>,
    /// What the drawing shows.
    pub title: String,
    /// Heading of the table.
    pub head: Vec<String>,
    /// Its rows.
    pub rows: Vec<Vec<String>>,
}

/// The map chosen, as it is whenever something changes.
pub fn mapped(comparison: Comparison) -> Memo<Option<Result<Mapped, RangeError>>> {
    let Comparison { state, shown, hours } = comparison;
    let own = follow(state, |typed| typed.map.clone());
    memo(move || own.with(|own| shown.with(|shown| work_out(state, own, shown, hours))))
}

const fn ground(standing: FeasibilityGrade) -> CellStatus {
    match standing {
        FeasibilityGrade::Infeasible => CellStatus::Barred,
        FeasibilityGrade::Advised => CellStatus::Unusual,
        FeasibilityGrade::Free => CellStatus::Free,
    }
}

fn work_out(
    state: State,
    own: &MapDraft,
    shown: &Compared,
    hours: Memo<Option<u16>>,
) -> Option<Result<Mapped, RangeError>> {
    let words = &state.words.compare;
    let system = shown.ready.get(shown.ready_at(own.system.as_ref()))?;
    let case = system.case()?;
    let offered = used_inputs(state, system);
    let (across, up) = (picked(&own.across, FIRST_ACROSS, &offered), picked(&own.up, FIRST_UP, &offered));
    let key = picked(&own.output, FIRST_OUTPUT, &output_choices(state, system));
    let output = output_of(system, hours, &key)?;
    if across == up {
        return None;
    }
    let axis = |key: &String| range(system, key, own.ranges.get(key), POINTS);
    let (x, y) = match (axis(&across), axis(&up)) {
        (Ok(x), Ok(y)) => (x, y),
        (Err(error), _) | (_, Err(error)) => return Some(Err(error)),
    };
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
        grounds: grid.feasibilities.iter().map(|feasibility| ground(feasibility.standing())).collect(),
        level: grid.level.iter().map(|x| x.map(|x| x_unit.from_base(x))).collect(),
        upright: grid.upright.iter().map(|y| y.map(|y| y_unit.from_base(y))).collect(),
        edges: grid.edges.iter().map(|piece| piece.map(|(x, y)| (x_unit.from_base(x), y_unit.from_base(y)))).collect(),
        now: now.map(|(x, y)| (x_unit.from_base(x), y_unit.from_base(y))),
    };
    let names = [x.field, y.field].map(|field| (state.words.field_name)(field, &system.draft));
    let title =
        format!("{}: {}", system.name, with_unit_named(state, &output_name(state, output, &system.draft), kinds[2]));
    let labels = [with_unit_named(state, &names[0], kinds[0]), with_unit_named(state, &names[1], kinds[1])];
    let wide = width(state);
    let picture = draw(
        (wide, if wide < 500.0 { 340.0 } else { 460.0 }),
        &cells,
        Labels { title: &title, across: &labels[0], up: &labels[1], mark: units.mark },
        Legend { barred: words.page.barred, unusual: words.page.unusual, now: words.page.now },
    );
    let mut obstacles = Vec::new();
    for obstacle in Obstacle::ALL {
        if grid.feasibilities.iter().any(|feasibility| feasibility.obstacles().any(|other| other == obstacle)) {
            obstacles.push((words.obstacle)(obstacle));
        }
    }
    let number = |kind: Kind, unit: Unit, base: f64| format::amount(Amount::from_base(kind, base), unit, units.mark);
    let columns: Vec<usize> = (0..POINTS).step_by(EVERY).collect();
    let mut head = vec![format!("{} \\ {}", labels[1], labels[0])];
    head.extend(columns.iter().filter_map(|at| grid.across.get(*at)).map(|base| number(kinds[0], x_unit, *base)));
    let mut rows = Vec::new();
    for (row, base) in grid.up.iter().enumerate().step_by(EVERY) {
        let mut line = vec![number(kinds[1], y_unit, *base)];
        for column in &columns {
            let place = grid.place(*column, row);
            let value = grid.values.get(place).copied().flatten();
            let value =
                value.map_or_else(|| state.words.tools.no_figure.to_owned(), |base| number(kinds[2], unit, base));
            let first = grid.feasibilities.get(place).and_then(|feasibility| feasibility.obstacles().next());
            line.push(first.map_or(value.clone(), |obstacle| format!("{value}: {}", (words.obstacle)(obstacle))));
        }
        rows.push(line);
    }
    Some(Ok(Mapped { picture, obstacles, title, head, rows }))
}

/// The map, where there are ranges.
pub fn map_of(mapped: &Option<Result<Mapped, RangeError>>) -> Option<&Mapped> {
    mapped.as_ref()?.as_ref().ok()
}

/// The section.
pub fn map(comparison: Comparison, mapped: Memo<Option<Result<Mapped, RangeError>>>) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let own = follow(state, |typed| typed.map.system.clone());
    let system = move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| system_at(typed, shown, SYSTEM)))
    };
    let offered = memo(move || system().map(|system| used_inputs(state, &system)).unwrap_or_default());
    let outputs = memo(move || system().map(|system| output_choices(state, &system)).unwrap_or_default());
    let boxes = |slot: Slot, first: &'static str| {
        let key = memo(move || {
            let chosen = state.compare.typed.with(slot.get);
            offered.with(|offered| picked(&chosen, first, offered))
        });
        move || {
            let key = key.get();
            untrack(system).and_then(|system| range_boxes(state, &system, RANGES, &key, slot.id))
        }
    };
    let picture = memo(move || mapped.with(|mapped| map_of(mapped).and_then(|mapped| mapped.picture.clone())));
    let problem = move || {
        mapped.with(|mapped| match mapped {
            Some(Err(error)) => Some(told(Grade::Stop, (state.words.compare.no_range)(*error))),
            _ => None,
        })
    };
    let obstacles = move || {
        mapped.with(|mapped| {
            let found = map_of(mapped).map(|mapped| mapped.obstacles.join("; ")).unwrap_or_default();
            (!found.is_empty()).then(|| el("p").class("note").child(format!("{} {found}.", page.in_the_way)))
        })
    };
    el("section")
        .set("aria-labelledby", "map")
        .child(el("h2").set("id", "map").set("tabindex", "-1").child(page.map))
        .child(el("p").child(page.map_hint))
        .child(el("div").class("fields").child(system_choice(comparison, SYSTEM, page.system)).child(select(
            state,
            OUTPUT,
            page.sweep_output,
            FIRST_OUTPUT,
            outputs,
        )))
        .child(
            el("div")
                .class("fields")
                .child(select(state, ACROSS, page.map_across, FIRST_ACROSS, offered))
                .child(boxes(ACROSS, FIRST_ACROSS)),
        )
        .child(
            el("div")
                .class("fields")
                .child(select(state, UP, page.map_up, FIRST_UP, offered))
                .child(boxes(UP, FIRST_UP)),
        )
        .child(drawn(state, picture, page.map))
        .child(el("p").class("empty").set("hidden", move || picture.with(Option::is_some)).child(page.no_map))
        .child(problem)
        .child(obstacles)
        .child(fold(page.table_behind, move || {
            (move || {
                mapped
                    .with(|mapped| map_of(mapped).map(|mapped| table(&mapped.title, &mapped.head, mapped.rows.clone())))
            })
            .view()
        }))
        .view()
}
