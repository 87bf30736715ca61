//! The run order drawn by chance: its seed, and drawing another one.

use super::context::SeriesProgress;
use crate::browser::clock;
use crate::domain::trial::SeriesDraft;
use crate::domain::trial::series::field::SeriesField;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::{TrialBox, TrialDesk, TrialMessages};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

const SEED: TrialField = TrialField::Series(SeriesField::Seed);

/// The fold.
#[component]
pub fn RandomOrderFold() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let SeriesProgress(progress) = expect_context::<SeriesProgress>();
    let asked = RwSignal::new(false);
    let redraw = move || {
        asked.set(false);
        let seed = SeriesDraft::begin(clock::now()).seed;
        state.bench.edit(|trial| {
            if let Some(series) = &mut trial.series {
                series.seed = seed;
            }
        });
    };
    let fixed = move || progress.with(|runs| runs.iter().filter(|run| run.is_fixed).count());
    // With boards made it is asked first what moves.
    let ask = move |_| if untrack(fixed) == 0 { redraw() } else { asked.set(true) };
    let standard = Memo::new(move |_| {
        desk.planned.with(|planned| {
            let runs = planned.series.iter().flat_map(|series| &series.runs);
            runs.map(|run| run.standard.to_string()).collect::<Vec<_>>().join(", ")
        })
    });
    let seed = Memo::new(move |_| state.bench.open.with(|open| open.trial.entry(SEED).text));
    let note = Signal::derive(move || t!("trial-seed-and-order", seed = seed.get(), order = standard.get()));
    view! {
        <Fold title=t!("trial-random-order") note=note id="series-order">
            <div class="boxes">
                <TrialBox field=SEED label=t!("trial-seed") aside=t!("trial-seed-hint") class="wide"/>
            </div>
            <TrialMessages fields=vec![SEED]/>
            <p class="note">{t!("trial-standard-order")} " " <span id="standard-order">{move || standard.get()}</span></p>
            <div class="actions"><button type="button" on:click=ask>{t!("trial-draw-order")}</button></div>
            <Show when=move || asked.get()>
                <div role="alert">
                    <p>{move || words::bench::redraw(fixed(), progress.with(Vec::len) - fixed())}</p>
                    <div class="actions">
                        <button type="button" on:click=move |_| redraw()>{t!("trial-redraw")}</button>
                        <button type="button" on:click=move |_| asked.set(false)>{t!("trial-keep-order")}</button>
                    </div>
                </div>
            </Show>
        </Fold>
    }
}
