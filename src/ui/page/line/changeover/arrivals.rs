//! When the new furnish arrives where, as a table.

use super::context::{ChangeSheet, clock_of, minutes};
use crate::domain::line::changeover::{Arrival, Stop};
use crate::t;
use crate::ui::components::Fold;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The table, folded.
#[component]
pub fn ArrivalsFold() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<ChangeSheet>();
    let arrivals = Memo::new(move |_| {
        sheet.plan.with(|plan| {
            let plan = plan.as_ref()?;
            Some((plan.solved.as_ref()?.plan.arrivals.clone(), plan.started.is_some()))
        })
    });
    let note = Signal::derive(move || {
        let all = arrivals.get();
        let saw = all.as_ref().and_then(|(all, started)| {
            let saw = all.iter().find(|arrival| arrival.stop == Stop::Saw)?;
            Some(t!("change-saw-note", from = clock_of(*started, saw.begins)))
        });
        saw.unwrap_or_default()
    });
    let left = move |at: u64, started: bool| {
        move || {
            let now = state.line.now.get();
            if !started {
                String::new()
            } else if now >= at {
                t!("change-there")
            } else {
                t!("change-in", time = minutes(at - now))
            }
        }
    };
    let moment = move |at: u64, started: bool| {
        view! { {clock_of(started, at)} " " <span class="sub">{left(at, started)}</span> }
    };
    let row = move |arrival: Arrival, started: bool| {
        view! {
            <tr>
                <th scope="row" class="l">{words::line::stop(arrival.stop)}</th>
                <td>{moment(arrival.begins, started)}</td>
                <td>{arrival.complete.map(|at| moment(at, started))}</td>
            </tr>
        }
    };
    let rows = move || {
        arrivals.get().map(|(all, started)| all.into_iter().map(|arrival| row(arrival, started)).collect_view())
    };
    view! {
        <Fold id="change-arrivals" title=t!("change-arrivals") note=note>
            <table class="results" aria-label=t!("change-arrivals")>
                <thead><tr>
                    <th scope="col" class="l">{t!("change-station")}</th>
                    <th scope="col">{t!("change-transition-begins")}</th>
                    <th scope="col">{t!("change-new-recipe")}</th>
                </tr></thead>
                <tbody>{rows}</tbody>
            </table>
        </Fold>
    }
}
