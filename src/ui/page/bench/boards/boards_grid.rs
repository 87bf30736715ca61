//! The boards: one row a board, its readings left of the rule and what they give right of it, the boards of a run together.

use super::board_row::BoardRow;
use super::column::head;
use crate::browser::page;
use crate::domain::trial::boards::board::free_id;
use crate::domain::trial::boards::density::OFF_TARGET;
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::boards::group::BoardGroup;
use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::{BoardDraft, BoardId, Property};
use crate::quantity::Kind;
use crate::record::content::trial::OpenTrial;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::Grid;
use crate::ui::page::bench::entry::{
    BoardsFigure, BoardsWorking, ColumnUnit, TrialDesk, TrialMessages, amount_parts, levels_of_run, paste_column,
    signed_share,
};
use crate::ui::state::State;
use crate::ui::text::{Context, unit_short};
use leptos::prelude::*;
use std::collections::BTreeMap;

/// With more boards than this only the group of the board that is shown is open to begin with.
const MOST_OPEN: usize = 12;

/// A row of the grid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum GridRow {
    /// The boards of a run, or those of none.
    Group(Option<u16>),
    /// One board.
    Board(BoardId),
}

/// Which groups somebody has opened or closed.
type Folds = RwSignal<BTreeMap<Option<u16>, bool>>;

/// The grid.
#[component]
pub fn BoardsGrid(
    /// The boards.
    ids: Memo<Vec<BoardId>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let folds = Folds::new(BTreeMap::new());
    let rows = Memo::new(move |_| grid_rows(state, desk, folds));
    let points = Memo::new(move |_| {
        state.bench.open.with(|open| open.trial.boards.iter().map(|board| board.thickness.len()).max()).unwrap_or(4)
    });
    let fields = Memo::new(move |_| {
        let own = |open: &OpenTrial| {
            let of = |id: BoardId, fields: Vec<BoardField>| {
                let whole = fields.into_iter().filter(|field| field.test().is_none());
                whole.map(move |field| TrialField::Board(id, field))
            };
            open.trial.boards.iter().flat_map(|board| of(board.id, board.fields())).collect::<Vec<_>>()
        };
        state.bench.open.with(own)
    });
    let paste = Callback::new(move |cells: Vec<(String, String)>| {
        let all = fields.get_untracked();
        let of_key = |key: &str| all.iter().find(|field| field.key() == key).copied();
        paste_column(state, cells.into_iter().filter_map(|(key, text)| Some((of_key(&key)?, text))).collect());
    });
    let is_empty = Memo::new(move |_| ids.with(Vec::is_empty));
    let row = move |row: GridRow| match row {
        GridRow::Group(run) => view! { <GroupRow run=run points=points folds=folds/> }.into_any(),
        GridRow::Board(id) => view! { <BoardRow id=id points=points/> }.into_any(),
    };
    view! {
        <section class="panel boards-panel" aria-label=t!("trial-boards")>
            <Show when=move || !is_empty.get() fallback=move || view! { <p>{t!("trial-no-boards")}</p> }>
                <Grid
                    name=t!("trial-boards")
                    class="tight boards"
                    head=view! { <Head points=points/> }.into_any()
                    foot=().into_any()
                    on_paste=paste
                >
                    <For each=move || rows.get() key=|row| *row children=row/>
                </Grid>
                <TrialMessages fields=fields/>
                <BoardsWorking belongs=|figure| matches!(figure, BoardsFigure::Of(_, BoardFigure::WholeDensity))/>
            </Show>
            <AddBoards/>
        </section>
    }
}

/// The rows: with a group a run where a run has several boards.
fn grid_rows(state: State, desk: TrialDesk, folds: Folds) -> Vec<GridRow> {
    let boards: Vec<(BoardId, Option<u16>)> =
        state.bench.open.with(|open| open.trial.boards.iter().map(|board| (board.id, board.run)).collect());
    let count = |run: Option<u16>| boards.iter().filter(|(_, own)| *own == run).count();
    let grouped = boards.iter().any(|(_, run)| run.is_some() && count(*run) > 1);
    let mut sorted = boards.clone();
    if grouped {
        // Boards of no run last, each run's in the order entered.
        sorted.sort_by_key(|(_, run)| run.unwrap_or(u16::MAX));
    }
    let mut rows = Vec::new();
    let mut group = None;
    for (id, run) in sorted {
        if grouped && group != Some(run) {
            group = Some(run);
            rows.push(GridRow::Group(run));
        }
        if !grouped || is_open(state, desk, folds, run) {
            rows.push(GridRow::Board(id));
        }
    }
    rows
}

fn is_open(state: State, desk: TrialDesk, folds: Folds, run: Option<u16>) -> bool {
    if let Some(open) = folds.with(|folds| folds.get(&run).copied()) {
        return open;
    }
    state.bench.open.with(|open| {
        let boards = &open.trial.boards;
        let shown = desk.board.get().and_then(|id| boards.iter().find(|board| board.id == id));
        boards.len() <= MOST_OPEN || shown.is_some_and(|board| board.run == run)
    })
}

#[component]
fn Head(
    /// How many thickness points the board with the most has.
    points: Memo<usize>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = move |kind: Kind| move || unit_short(state.unit(kind), &state.currency.get());
    let box_head = |field: BoardField| {
        view! { <th scope="col">{head(field)} <br/> <ColumnUnit name=head(field) kind=field.kind()/></th> }
    };
    view! {
        <th scope="col" class="l">{t!("trial-board")}</th>
        {box_head(BoardField::Mass)}
        {box_head(BoardField::Length)}
        {box_head(BoardField::Width)}
        <th scope="col" colspan=move || points.get().to_string() class="thickness-points">
            {move || t!("trial-thickness-points", count = points.get())}
            " "
            <ColumnUnit name=t!("trial-thickness") kind=Kind::Thickness/>
        </th>
        {box_head(BoardField::Moisture)}
        <th scope="col" class="edge roomy">{t!("trial-mean")} <br/> {unit(Kind::Thickness)}</th>
        <th scope="col" class="first-result">{t!("trial-density")} <br/> {unit(Kind::BoardDensity)}</th>
        <th scope="col" class="roomy">{t!("trial-target")} <br/> {unit(Kind::BoardDensity)}</th>
        <th scope="col" class="deviation">{t!("trial-deviation")} ", %" <br/> {t!("trial-limit", limit = format!("±{}", OFF_TARGET * 100.0))}</th>
        <th scope="col" class="bond-mean">{t!("trial-internal-bond")} <br/> {unit(Kind::Strength)}</th>
        <th scope="col" class="roomy">{t!("trial-bending")} <br/> {unit(Kind::Strength)}</th>
        <th scope="col" class="roomy">{t!("trial-swelling")} <br/> "%"</th>
        <td></td>
    }
}

/// The means of the boards of a run; a press opens or closes its boards.
#[component]
fn GroupRow(
    /// The run; none for boards outside the series.
    run: Option<u16>,
    /// How many columns of thickness there are.
    points: Memo<usize>,
    /// Which groups are open.
    folds: Folds,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let open = Memo::new(move |_| is_open(state, desk, folds, run));
    let title = move || match run {
        Some(run) => t!("trial-run-n", number = u32::from(run)),
        None => t!("trial-no-run"),
    };
    let note = Memo::new(move |_| group_note(state, desk, run));
    let cells = Memo::new(move |_| {
        desk.tested.with(|tested| {
            let own = |group: &&BoardGroup| group.boards.iter().any(|board| board.run == run);
            // Where boards of a run have different targets there is no common mean.
            let mut groups = tested.runs.iter().filter(own);
            match (groups.next(), groups.next()) {
                (Some(group), None) => group_cells(state, group),
                _ => Default::default(),
            }
        })
    });
    let toggle = move |_| {
        let now = open.get_untracked();
        folds.update(|folds| {
            folds.insert(run, !now);
        });
    };
    let cell = move |at: usize| move || cells.with(|cells| cells.get(at).cloned().unwrap_or_default());
    view! {
        <tr class="group">
            <th scope="row" class="l" colspan=move || (points.get() + 5).to_string()>
                <button
                    type="button"
                    class="bare"
                    aria-expanded=move || if open.get() { "true" } else { "false" }
                    on:click=toggle
                >
                    <span aria-hidden="true">{move || if open.get() { "▾ " } else { "▸ " }}</span>
                    <b>{title}</b>
                </button>
                <span class="note">{move || note.get()}</span>
            </th>
            <td class="edge roomy">{cell(0)}</td>
            <td class="first-result">{cell(1)}</td>
            <td class="roomy">{cell(2)}</td>
            <td class="deviation">{cell(3)}</td>
            <td class="bond-mean">{cell(4)}</td>
            <td class="roomy">{cell(5)}</td>
            <td class="roomy">{cell(6)}</td>
            <td></td>
        </tr>
    }
}

/// "boards 1–3 · UF 10 % · 640 kg/m³".
fn group_note(state: State, desk: TrialDesk, run: Option<u16>) -> String {
    let boards = state.bench.open.with(|open| {
        let own = open.trial.boards.iter().filter(|board| board.run == run);
        own.map(|board| match board.name.trim() {
            "" => board.id.0.to_string(),
            name => name.to_owned(),
        })
        .collect::<Vec<_>>()
    });
    let boards = match boards.as_slice() {
        [first, .., last] if boards.len() > 2 => format!("{first}–{last}"),
        few => few.join(", "),
    };
    let levels = run.and_then(|place| {
        let units = state.units.get();
        desk.planned.with(|planned| {
            let series = planned.series.as_ref()?;
            let own = series.run(place)?;
            Some(state.currency.with(|currency| {
                desk.basis.with(|basis| {
                    let context = Context { units: &units, draft: &basis.recipe, currency };
                    levels_of_run(series, own, &context)
                })
            }))
        })
    });
    let named = t!("trial-boards-named", names = boards);
    match levels.filter(|levels| !levels.is_empty()) {
        Some(levels) => format!("{named} · {levels}"),
        None => named,
    }
}

/// Mean thickness, density, target, deviation, internal bond, bending, swelling.
fn group_cells(state: State, group: &BoardGroup) -> Vec<String> {
    let number = |kind: Kind, base: f64| amount_parts(state, kind, base).0;
    let mean = |property: Property| {
        let own = group.results.iter().find(|result| result.property == property);
        own.map_or_else(String::new, |result| number(property.kind(), result.summary.mean))
    };
    let target = group.density;
    vec![
        mean(Property::Thickness),
        mean(Property::Density),
        target.map_or_else(String::new, |target| number(Kind::BoardDensity, target.target)),
        target.map_or_else(String::new, |target| signed_share(state, target.split.total.value)),
        mean(Property::InternalBond),
        mean(Property::BendingStrength),
        mean(Property::Swelling),
    ]
}

/// The ways to get another board.
#[component]
fn AddBoards() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let bench = state.bench;
    let runs = Memo::new(move |_| desk.planned.with(|planned| planned.sheets.len()));
    let add = move |_| {
        // Another board of the run whose board is shown, else of the run chosen.
        let (chosen, _) = untrack(|| bench.place());
        let shown = desk.board.get_untracked();
        let mut added = None;
        bench.edit(|trial| {
            let run = shown.and_then(|id| trial.board(id)).map_or(chosen, |board| board.run);
            let id = free_id(&trial.boards);
            trial.boards.push(BoardDraft { run, ..BoardDraft::blank(id) });
            added = Some(id);
        });
        desk.board.set(added);
        if let Some(id) = added {
            let key = TrialField::Board(id, BoardField::Mass).key();
            request_animation_frame(move || page::focus_field(&key));
        }
    };
    let add_all = move |_| {
        let runs = runs.get_untracked();
        bench.edit(|trial| {
            for run in (1..=u16::MAX).take(runs) {
                if !trial.boards.iter().any(|board| board.run == Some(run)) {
                    let id = free_id(&trial.boards);
                    trial.boards.push(BoardDraft { run: Some(run), ..BoardDraft::blank(id) });
                }
            }
        });
    };
    view! {
        <div class="actions">
            <button type="button" class="bare" id="add-board" on:click=add>{t!("trial-add-board")}</button>
            <Show when=move || { runs.get() > 0 }>
                <button type="button" class="bare" on:click=add_all>{t!("trial-add-board-a-run")}</button>
            </Show>
        </div>
    }
}
