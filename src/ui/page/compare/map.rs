//! Two inputs of one system over a grid: lines of equal value, and where the recipe can be run.

use super::Bench;
use super::parts::{drawn, follow, output_name, picked, select, table, width, with_unit_named};
use super::solve::{output_choices, output_of, system_at, system_choice};
use super::sweep::{inputs, range, range_boxes};
use super::systems::Compared;
use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::sweep::grid;
use crate::domain::compare::variable;
use crate::domain::compare::verdict::Obstacle;
use crate::domain::compare::verdict::Verdict;
use crate::quantity::{Amount, Kind, Unit, format};
use crate::ui::chart::curves::Labels;
use crate::ui::chart::drawing::Drawing;
use crate::ui::chart::map::{Cells, Ground, Legend, map as draw};
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;

const SYSTEM: &str = "map.system";
const ACROSS: &str = "map.across";
const UP: &str = "map.up";
const OUTPUT: &str = "map.output";
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
pub fn mapped(bench: Bench) -> Memo<Option<Mapped>> {
    let Bench { state, shown, hours } = bench;
    let own = follow(state, &["map.", "from.", "to."]);
    memo(move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| work_out(state, typed, shown, hours)))
    })
}

fn ground(verdict: Verdict) -> Ground {
    match (verdict.is_feasible(), verdict.is_usual()) {
        (false, _) => Ground::Barred,
        (true, false) => Ground::Unusual,
        (true, true) => Ground::Free,
    }
}

fn work_out(state: State, typed: &CompareDraft, shown: &Compared, hours: Memo<u16>) -> Option<Mapped> {
    let words = &state.words.compare;
    let system = system_at(typed, shown, SYSTEM)?;
    let case = system.case()?;
    let offered = inputs(state, &system);
    let (across, up) = (picked(typed, ACROSS, FIRST_ACROSS, &offered), picked(typed, UP, FIRST_UP, &offered));
    let key = picked(typed, OUTPUT, FIRST_OUTPUT, &output_choices(state, &system));
    let output = output_of(&system, hours, &key)?;
    if across == up {
        return None;
    }
    let (x, y) = (range(typed, &system, &across, POINTS)?, range(typed, &system, &up, POINTS)?);
    let grid = grid(case, &x, &y, output);
    let units = state.units.get();
    let kinds = [system.draft.kind(x.field), system.draft.kind(y.field), output.kind()];
    let [x_unit, y_unit, unit] = kinds.map(|kind| units.unit(kind));
    let convert = |bases: &[f64], unit: Unit| bases.iter().map(|base| unit.from_base(*base)).collect::<Vec<_>>();
    let now = variable::get(&case.input, x.field).zip(variable::get(&case.input, y.field));
    let cells = Cells {
        across: convert(&grid.across, x_unit),
        up: convert(&grid.up, y_unit),
        values: grid.values.iter().map(|value| value.map(|base| unit.from_base(base))).collect(),
        grounds: grid.verdicts.iter().map(|verdict| ground(*verdict)).collect(),
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
        if grid.verdicts.iter().any(|verdict| verdict.obstacles().any(|other| other == obstacle)) {
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
            let first = grid.verdicts.get(place).and_then(|verdict| verdict.obstacles().next());
            line.push(first.map_or(value.clone(), |obstacle| format!("{value}: {}", (words.obstacle)(obstacle))));
        }
        rows.push(line);
    }
    Some(Mapped { picture, obstacles, title, head, rows })
}

/// The section.
pub fn map(bench: Bench, mapped: Memo<Option<Mapped>>) -> View {
    let Bench { state, shown, .. } = bench;
    let page = &state.words.compare.page;
    let own = follow(state, &[SYSTEM]);
    let system = move || {
        own.track();
        state.compare.typed.with_untracked(|typed| shown.with(|shown| system_at(typed, shown, SYSTEM)))
    };
    let offered = memo(move || system().map(|system| inputs(state, &system)).unwrap_or_default());
    let outputs = memo(move || system().map(|system| output_choices(state, &system)).unwrap_or_default());
    let boxes = |what: &'static str, first: &'static str| {
        let key =
            memo(move || state.compare.typed.with(|typed| offered.with(|offered| picked(typed, what, first, offered))));
        move || {
            let key = key.get();
            untrack(system).and_then(|system| range_boxes(state, &system, &key, what))
        }
    };
    let picture = memo(move || mapped.with(|mapped| mapped.as_ref().and_then(|mapped| mapped.picture.clone())));
    let obstacles = move || {
        mapped.with(|mapped| {
            let found = mapped.as_ref().map(|mapped| mapped.obstacles.join("; ")).unwrap_or_default();
            (!found.is_empty()).then(|| el("p").class("note").child(format!("{} {found}.", page.in_the_way)))
        })
    };
    el("section")
        .set("aria-labelledby", "map")
        .child(el("h2").set("id", "map").set("tabindex", "-1").child(page.map))
        .child(el("p").child(page.map_hint))
        .child(el("div").class("fields").child(system_choice(bench, SYSTEM, page.system)).child(select(
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
        .child(obstacles)
        .child(fold(page.table_behind, move || {
            (move || {
                mapped.with(|mapped| {
                    mapped.as_ref().map(|mapped| table(&mapped.title, &mapped.head, mapped.rows.clone()))
                })
            })
            .view()
        }))
        .view()
}
