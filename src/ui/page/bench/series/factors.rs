//! The factors: one row each, with its levels.

use super::factor_row::FactorRow;
use crate::browser::page;
use crate::domain::trial::SeriesDraft;
use crate::domain::trial::series::draft::MAX_FACTORS;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::Grid;
use crate::ui::page::bench::entry::{TrialDesk, TrialMessages, paste_column};
use crate::ui::state::State;
use leptos::prelude::*;

/// The grid.
#[component]
pub fn Factors() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let bench = state.bench;
    let ids = Memo::new(move |_| {
        desk.basis.with(|basis| {
            basis.series.as_ref().map_or_else(Vec::new, |series| series.factors.iter().map(|own| own.id).collect())
        })
    });
    let levels = Memo::new(move |_| {
        let most = |series: &SeriesDraft| series.factors.iter().map(|own| own.levels.len()).max();
        desk.basis.with(|basis| basis.series.as_ref().and_then(most)).unwrap_or(2)
    });
    let fields = Memo::new(move |_| {
        desk.basis.with(|basis| {
            let all = basis.series.as_ref().map_or_else(Vec::new, |series| series.number_levels().collect::<Vec<_>>());
            all.into_iter().map(TrialField::Series).collect::<Vec<_>>()
        })
    });
    let paste = Callback::new(move |cells: Vec<(String, String)>| {
        let all = fields.get_untracked();
        let of_key = |key: &str| all.iter().find(|field| field.key() == key).copied();
        paste_column(state, cells.into_iter().filter_map(|(key, text)| Some((of_key(&key)?, text))).collect());
    });
    let add = move |_| {
        let mut added = None;
        bench.edit(|trial| {
            let made = trial.made_factors();
            added = trial.series.as_mut().and_then(|series| series.add_factor(&trial.draft, &made));
        });
        if let Some(id) = added {
            request_animation_frame(move || page::focus(&format!("factor-{}", id.0)));
        }
    };
    let remove = move |_| {
        let mut removed = None;
        bench.edit(|trial| removed = trial.series.take());
        bench.run.set(0);
        state.tell_undo(t!("trial-series-removed"), move || bench.edit(|trial| trial.series.clone_from(&removed)));
    };
    let level_head = move |at: usize| {
        let words = move || match (levels.get(), at) {
            (2, 0) => t!("trial-low-level"),
            (2, _) => t!("trial-high-level"),
            (_, at) => t!("trial-level-n", number = at + 1),
        };
        view! { <th scope="col">{words}</th> }
    };
    let head = view! {
        <th scope="col" class="l" colspan="2">{t!("trial-factor")}</th>
        <th scope="col" class="l">{t!("trial-unit-basis")}</th>
        <For each=move || 0..levels.get() key=|at| *at children=level_head/>
        <td></td>
    };
    view! {
        <div class="factors">
            <h3>{t!("trial-factors")}</h3>
            <Grid name=t!("trial-factors") class="tight factors" head=head.into_any() foot=().into_any() on_paste=paste>
                <For each=move || ids.get() key=|id| id.0 let:id><FactorRow id=id levels=levels/></For>
            </Grid>
            <TrialMessages fields=fields/>
            <div class="actions">
                <Show when=move || { ids.with(Vec::len) < MAX_FACTORS }>
                    <button type="button" class="bare" on:click=add>{t!("trial-add-factor")}</button>
                </Show>
                <button type="button" class="bare" on:click=remove>{t!("trial-remove-series")}</button>
            </div>
        </div>
    }
}
