//! What the mat must weigh, how the line runs, and which machine is the bottleneck.

use super::context::{OpenWorking, SheetContext};
use super::figure_of::FigureOf;
use crate::domain::balance::machine::Machine;
use crate::domain::{Figure, Grade};
use crate::t;
use crate::ui::components::{LimitBar, Mark, Rank, WorkingPanel};
use crate::ui::part::figure::text;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::context::Provider;
use leptos::prelude::*;
use uom::si::ratio::ratio;

/// The figures.
#[component]
pub fn KeyFigures() -> impl IntoView {
    let open = OpenWorking::new("");
    view! {
        <Provider value=open>
            <section class="panel key-figures" aria-label=t!("recipe-key-figures")>
                <div class="figs">
                    <div class="fig">
                        <span class="label">{t!("recipe-mat-weight")}</span>
                        <FigureOf figure=Figure::MatWet rank=Rank::Act/>
                        <Notes figures=&[(Figure::MatOvenDry, || t!("recipe-oven-dry")), (Figure::MatRunning, || t!("recipe-linear"))]/>
                    </div>
                    <div class="fig">
                        <span class="label">{t!("recipe-line-speed")}</span>
                        <FigureOf figure=Figure::LineSpeed rank=Rank::Lead/>
                        <Notes figures=&[(Figure::PressFactor, || t!("recipe-press-factor")), (Figure::PressTime, || t!("recipe-press-time"))]/>
                    </div>
                    <div class="fig">
                        <span class="label">{t!("recipe-output")}</span>
                        <FigureOf figure=Figure::FinishedVolume rank=Rank::Lead/>
                        <Notes figures=&[(Figure::Cost, || t!("recipe-cost"))]/>
                    </div>
                    <Capacity/>
                </div>
                <WorkingPanel open=open.figure scope=open.scope/>
            </section>
        </Provider>
    }
}

/// A figure with what it is called beside another one.
type Named = (Figure, fn() -> String);

/// Smaller figures below a large one.
#[component]
fn Notes(
    /// The figures, each with what it is called here.
    figures: &'static [Named],
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let note = move |(figure, name): &Named| {
        let (figure, name) = (*figure, name());
        let is_there = sheet.memo(move || text(state, figure).is_some());
        view! { <span hidden=move || !is_there.get()>{name} " " <FigureOf figure=figure/></span> }
    };
    view! { <span class="note figure-notes">{figures.iter().map(note).collect_view()}</span> }
}

/// How far each machine with a limit is used, the bottleneck first.
#[component]
fn Capacity() -> impl IntoView {
    let state = expect_context::<State>();
    let machines = Memo::new(move |_| {
        state.shown.with(|shown| {
            let capacities = shown.case.as_ref().map(|case| case.solved.capacities.iter().map(|each| each.machine));
            capacities.map(Iterator::collect::<Vec<_>>).unwrap_or_default()
        })
    });
    let title = move || {
        let first = machines.with(|machines| machines.first().copied());
        first.map_or_else(
            || t!("recipe-no-limits"),
            |machine| t!("recipe-bottleneck", machine = words::machine(machine)),
        )
    };
    view! {
        <div class="fig capacity">
            <span class="label">{title}</span>
            <ul>
                <For each=move || machines.get() key=|machine| machine.key() let:machine><MachineUse machine=machine/></For>
            </ul>
        </div>
    }
}

#[component]
fn MachineUse(
    /// The machine.
    machine: Machine,
) -> impl IntoView {
    let state = expect_context::<State>();
    let used = Memo::new(move |_| {
        state.shown.with(|shown| {
            let capacities = &shown.case.as_ref()?.solved.capacities;
            capacities.iter().find(|each| each.machine == machine).map(|each| each.used.get::<ratio>())
        })
    });
    view! {
        <li>
            <span>{words::machine(machine)}</span>
            <LimitBar used=Signal::derive(move || used.get().unwrap_or_default())/>
            <FigureOf figure=Figure::Used(machine)/>
        </li>
    }
}

/// The figures to act on at the foot of a phone's screen.
#[component]
pub fn PhoneFoot() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<SheetContext>();
    let figure = move |figure: Figure| sheet.memo(move || text(state, figure).unwrap_or_else(|| "–".to_owned()));
    let (mat, water) = (figure(Figure::MatWet), figure(Figure::WaterDose));
    let warnings = Memo::new(move |_| {
        sheet.said.with(|said| said.iter().filter(|said| said.finding.grade != Grade::Note).count())
    });
    view! {
        // The same figures are above: a screen reader needs them once.
        <div class="phone-foot" aria-hidden="true">
            <span>{t!("recipe-mat")} " " <b>{move || mat.get()}</b></span>
            <span>{t!("recipe-water")} " " <b>{move || water.get()}</b></span>
            <Show when=move || { warnings.get() > 0 }>
                <span class="flag"><Mark grade=Grade::Unusual/> " " {move || warnings.get()}</span>
            </Show>
        </div>
    }
}
