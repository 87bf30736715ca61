//! The readings that the effects rest on: of each run the mean of its boards.

use super::context::EffectsShown;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::{TrialDesk, shown};
use crate::ui::state::State;
use leptos::prelude::*;

/// The fold.
#[component]
pub fn Readings() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let EffectsShown { property, .. } = expect_context::<EffectsShown>();
    // Run, boards, readings, mean.
    let rows = Memo::new(move |_| {
        let Some(property) = property.get() else { return Vec::new() };
        desk.planned.with(|planned| {
            desk.tested.with(|tested| {
                let of_run = |place: u16| {
                    let boards = tested.boards.iter().filter(|board| board.run == Some(place));
                    let own: Vec<(usize, f64)> = boards
                        .filter_map(|board| Some((board.values(property).len(), board.mean(property)?)))
                        .collect();
                    let mean = own.iter().map(|(_, mean)| mean).sum::<f64>() / own.len() as f64;
                    let readings: usize = own.iter().map(|(count, _)| count).sum();
                    (!own.is_empty()).then(|| (place, own.len(), readings, shown(state, property.kind(), mean)))
                };
                let runs = planned.series.iter().flat_map(|series| &series.runs);
                runs.filter(|run| run.is_in_design()).filter_map(|run| of_run(run.place)).collect::<Vec<_>>()
            })
        })
    });
    let note = Signal::derive(move || {
        rows.with(|rows| {
            let readings: usize = rows.iter().map(|(_, _, readings, _)| readings).sum();
            t!("trial-readings-note", runs = rows.len(), readings = readings)
        })
    });
    let row = |(run, boards, readings, mean): (u16, usize, usize, String)| {
        view! { <tr><th scope="row">{u32::from(run)}</th><td>{boards}</td><td>{readings}</td><td>{mean}</td></tr> }
    };
    view! {
        <Fold title=t!("trial-readings") note=note id="effect-readings">
            <table class="results" aria-label=t!("trial-readings")>
                <thead><tr>
                    <th scope="col">{t!("trial-run")}</th>
                    <th scope="col">{t!("trial-boards")}</th>
                    <th scope="col">{t!("trial-readings-head")}</th>
                    <th scope="col">{t!("trial-mean")}</th>
                </tr></thead>
                <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
            </table>
        </Fold>
    }
}
