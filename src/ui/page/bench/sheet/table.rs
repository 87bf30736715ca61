//! The table to weigh by: which run and which batch, and a row a line.

use super::boxes::SheetBox;
use super::context::WeighContext;
use super::figure::SheetWorking;
use super::row::WeighRow;
use super::rows::rows;
use super::sheet_box::BoxMessages;
use super::text::{balance_parts, parts, shown, value_parts};
use crate::domain::trial::{LineId, WeighFigure, WeighLineFigure};
use crate::quantity::{Amount, Kind, Unit, format};
use crate::record::content::trial::TrialContent;
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Grid, UnitChoice};
use crate::ui::page::bench::selection::levels;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, unit_short};
use leptos::prelude::*;

/// So many batches stand side by side; more are in a list.
const SIDE_BY_SIDE: u32 = 5;

/// The table, or what is missing for one.
#[component]
pub fn WeighTable() -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let rows = Memo::new(move |_| rows(sheet));
    let ids = Memo::new(move |_| rows.with(|rows| rows.iter().map(|(id, _)| *id).collect::<Vec<_>>()));
    let is_there = Memo::new(move |_| ids.with(|ids| !ids.is_empty()));
    let boxes = Memo::new(move |_| ids.with(|ids| ids.iter().map(|id| SheetBox::Weighed(*id)).collect::<Vec<_>>()));
    let has_begun = Memo::new(move |_| {
        let bench = sheet.desk.state.bench;
        let (run, batch) = bench.place();
        bench.open.with(|open| begun(&open.trial, run, batch))
    });
    let in_table = |figure: WeighFigure| {
        matches!(
            figure,
            WeighFigure::Line(_, WeighLineFigure::Rounded | WeighLineFigure::Volume | WeighLineFigure::SprayTime)
        )
    };
    view! {
        <section class="panel weighing" aria-label=t!("bench-weigh-sheet")>
            <div class="tools">
                <RunChoice/>
                <BatchChoice/>
                <Show when=move || is_there.get()>
                    <span class="note enter-hint">{t!("bench-enter-hint")}</span>
                    <ClearBatch/>
                </Show>
            </div>
            <Show when=move || is_there.get() fallback=|| view! { <p class="empty">{t!("bench-fill-in")}</p> }>
                <div class="weigh-table" class:begun=move || has_begun.get()>
                    <Grid
                        name=t!("bench-weigh-sheet")
                        class="weigh"
                        head=view! { <Head/> }.into_any()
                        foot=view! { <Foot/> }.into_any()
                        on_paste=Callback::new(move |cells| paste(sheet, cells))
                    >
                        <For each=move || ids.get().into_iter().enumerate() key=|(at, id)| (*at, *id) let((at, id))>
                            <WeighRow id=id place=at + 1 rows=rows/>
                        </For>
                    </Grid>
                </div>
                <BoxMessages boxes=boxes/>
                <Complete/>
                <SheetWorking belongs=in_table/>
            </Show>
        </section>
    }
}

fn begun(trial: &TrialContent, run: Option<u16>, batch: u16) -> bool {
    trial.batch(run, batch).is_some_and(|lines| lines.lines.iter().any(|line| !line.mass.is_blank()))
}

/// Enters a column of cells, such as a paste from a table.
fn paste(sheet: WeighContext, cells: Vec<(String, String)>) {
    let state = sheet.desk.state;
    let lines = sheet.lines.with_untracked(|lines| lines.iter().map(|own| own.line.id).collect::<Vec<_>>());
    let count = cells.len();
    let unit = state.unit(Kind::BenchMass);
    let entries: Vec<(LineId, String)> = cells
        .into_iter()
        .filter_map(|(key, text)| {
            lines.iter().find(|id| SheetBox::Weighed(**id).key() == key).map(|id| (*id, text.trim().to_owned()))
        })
        .collect();
    let (run, batch) = untrack(|| state.bench.place());
    let bench = state.bench;
    let before = bench.open.with_untracked(|open| open.trial.batch(run, batch).cloned()).unwrap_or_default();
    bench.edit(|trial| {
        if let Some(lines) = trial.batch_mut(run, batch) {
            for (id, text) in entries {
                lines.enter(id, crate::domain::Entry::typed(text, unit));
            }
        }
    });
    state.tell_undo(t!("recipe-pasted", count = count), move || put_batch(state, run, batch, before.clone()));
}

fn put_batch(
    state: State,
    run: Option<u16>,
    batch: u16,
    lines: crate::domain::trial::weigh_sheet::weighing::BatchDraft,
) {
    state.bench.edit(|trial| {
        if let Some(place) = trial.batch_mut(run, batch) {
            *place = lines;
        }
    });
}

/// Which run of the series, where there is one.
#[component]
fn RunChoice() -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let desk = sheet.desk;
    let bench = desk.state.bench;
    let count = Memo::new(move |_| desk.planned.with(|planned| planned.sheets.len()));
    let options = Memo::new(move |_| {
        let count = count.get();
        let runs = (1..=count).map(|at| ChoiceOption::new(at.to_string(), t!("bench-run-of", run = at, count = count)));
        std::iter::once(ChoiceOption::new("0", t!("bench-base-sheet"))).chain(runs).collect::<Vec<_>>()
    });
    let choose = Callback::new(move |chosen: String| {
        bench.run.set(chosen.parse().unwrap_or(0));
        bench.batch.set(1);
    });
    view! {
        <Show when=move || { count.get() > 0 }>
            <div class="run-choice">
                <Choice
                    id="bench-run"
                    name=t!("bench-run")
                    labelled=true
                    options=options
                    value=Signal::derive(move || bench.run.get().to_string())
                    on_choose=choose
                />
            </div>
            <span class="note" id="bench-selection">{move || levels(desk, desk.state.bench.run.get())}</span>
        </Show>
    }
}

/// Which batch, each with its mark once it is weighed.
#[component]
fn BatchChoice() -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let desk = sheet.desk;
    let bench = desk.state.bench;
    let count = Memo::new(move |_| desk.made.with(|made| made.sheet.as_ref().map_or(1, |sheet| sheet.batches)));
    // A sheet with fewer batches than before does not leave a batch in sight that it does not have.
    Effect::new(move |_| {
        let count = count.get();
        if bench.batch.get() > count {
            bench.batch.set(1);
        }
    });
    let is_done = move |batch: u32| {
        let run = bench.place().0;
        let order = sheet.lines.with(|lines| lines.iter().map(|own| own.line.id).collect::<Vec<_>>());
        let batch = u16::try_from(batch).unwrap_or(u16::MAX);
        !order.is_empty()
            && bench.open.with(|open| open.trial.batch(run, batch).is_some_and(|lines| lines.is_complete(&order)))
    };
    let words = move |batch: u32| if is_done(batch) { format!("{batch} ✓") } else { batch.to_string() };
    let button = move |batch: u32| {
        let pressed = move || (bench.batch.get() == batch).to_string();
        view! {
            <button type="button" aria-pressed=pressed on:click=move |_| bench.batch.set(batch)>{move || words(batch)}</button>
        }
    };
    let options = Memo::new(move |_| {
        (1..=count.get()).map(|at| ChoiceOption::new(at.to_string(), words(at))).collect::<Vec<_>>()
    });
    let choose = Callback::new(move |chosen: String| bench.batch.set(chosen.parse().unwrap_or(1)));
    let choice = move || match count.get() {
        0 | 1 => None,
        count if count <= SIDE_BY_SIDE => {
            let buttons = (1..=count).map(button).collect_view();
            Some(view! { <span class="seg" role="group" aria-label=t!("bench-batch")>{buttons}</span> }.into_any())
        }
        _ => Some(
            view! {
                <Choice
                    id="bench-batch"
                    name=t!("bench-batch")
                    options=options
                    value=Signal::derive(move || bench.batch.get().to_string())
                    on_choose=choose
                />
            }
            .into_any(),
        ),
    };
    let told = move || t!("bench-batch-of", batch = bench.batch.get(), count = count.get());
    view! {
        <span class="batch-choice">
            <span class="note" id="bench-batch-of">{told}</span>
            {choice}
        </span>
    }
}

#[component]
fn ClearBatch() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let clear = move |_| {
        let (run, batch) = untrack(|| bench.place());
        let before = bench.open.with_untracked(|open| open.trial.batch(run, batch).cloned());
        let Some(before) = before else { return };
        put_batch(state, run, batch, Default::default());
        state.tell_undo(t!("bench-batch-cleared"), move || put_batch(state, run, batch, before.clone()));
    };
    view! {
        <button type="button" class="bare" on:click=clear>{move || t!("bench-clear-batch", batch = bench.batch.get())}</button>
    }
}

#[component]
fn Head() -> impl IntoView {
    let state = expect_context::<State>();
    let mass = move || symbol_shown(state.unit(Kind::BenchMass));
    view! {
        <th scope="col" class="l place">"#"</th>
        <th scope="col" class="l name">{t!("bench-line")}</th>
        <th scope="col" class="extra target">{t!("bench-target")} <ColumnUnit name=t!("bench-target") kind=Kind::BenchMass/></th>
        <th scope="col" class="extra volume">{t!("bench-volume")} <ColumnUnit name=t!("bench-volume") kind=Kind::BenchVolume/></th>
        <th scope="col" class="extra time">{t!("bench-spray")} ", " {t!("bench-minutes")}</th>
        <th scope="col" class="edge actual">{t!("bench-actual")} ", " {mass}</th>
        <th scope="col" class="add">{t!("bench-to-add")} ", " {mass}</th>
        <th scope="col" class="extra given">{t!("bench-dose-given")}</th>
        <th scope="col" class="l extra dose">{t!("bench-target-dose")}</th>
    }
}

/// The unit of a column, to choose.
#[component]
fn ColumnUnit(
    /// What the column has.
    #[prop(into)]
    name: Signal<String>,
    /// What it measures.
    kind: Kind,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    let unit = Memo::new(move |_| state.unit(kind));
    let symbol = Callback::new(move |unit: Unit| unit_short(unit, &state.currency.get()));
    let choose = Callback::new(move |unit: Unit| sheet.choose_unit(None, kind, unit));
    view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }
}

/// The batch as planned, and as it comes out of what was weighed.
#[component]
fn Foot() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    let desk = sheet.desk;
    let planned = Memo::new(move |_| {
        desk.made.with(|made| {
            let sheet = made.sheet.as_ref()?;
            let mass = sheet.lines.iter().map(|line| line.rounded.value).sum::<f64>();
            let volume = sheet.lines.iter().filter_map(|line| line.volume).map(|volume| volume.value).sum::<f64>();
            let finest = sheet.lines.last().map_or(LineId::Fibre, |line| line.id);
            let mass = uom::si::f64::Mass { value: mass, ..Default::default() };
            let volume = parts(state, Amount::from_base(Kind::BenchVolume, volume)).0;
            Some((balance_parts(state, sheet, finest, mass).0, volume))
        })
    });
    let time = move || {
        desk.made.with(|made| made.sheet.as_ref().map(|sheet| value_parts(state, sheet, WeighFigure::SprayTime).0))
    };
    let told = move || {
        desk.made.with(|made| {
            let capacity = made.sheet.as_ref()?.plan.capacity;
            desk.weighing.with(|weighing| {
                let weighing = weighing.as_ref()?;
                let mass = shown(state, Kind::BenchMass, weighing.batch.value);
                let factor = format::significant(weighing.scale.value, 5, state.units.get().mark);
                let now = t!("bench-batch-now", mass = mass, factor = factor);
                let takes =
                    capacity.map(|most| t!("bench-blender-takes", mass = shown(state, Kind::BenchMass, most.value)));
                Some(takes.map_or(now.clone(), |takes| format!("{now}; {takes}")))
            })
        })
    };
    view! {
        <td></td>
        <td class="l">{t!("bench-batch")}</td>
        <td class="target">{move || planned.get().map(|(mass, _)| mass)}</td>
        <td class="volume">{move || planned.get().map(|(_, volume)| volume)}</td>
        <td class="time">{time}</td>
        <td class="edge"></td>
        <td class="l" colspan="3">{told}</td>
    }
}

/// What a batch gives once everything is weighed.
#[component]
fn Complete() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<WeighContext>();
    let moisture = Memo::new(move |_| {
        sheet.desk.weighing.with(|weighing| {
            let actual = weighing.as_ref()?.actual.as_ref()?;
            Some(shown(state, Kind::Moisture, actual.mat_moisture.value))
        })
    });
    let told = move |moisture: String| {
        view! { <span data-figure="weighed_moisture">{joined(&moisture, "")}</span> }
    };
    view! {
        <p class="complete" role="status">
            {move || moisture.get().map(|moisture| view! { {t!("bench-complete")} " " {told(moisture)} })}
        </p>
    }
}
