//! What a fraction cannot distinguish: its notation, its generators, and the effects that share a column.

use super::notation::raised;
use crate::domain::trial::Series;
use crate::domain::trial::series::design::Aliases;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::TrialDesk;
use leptos::prelude::*;

/// An effect and those that have the same column.
type AliasRow = (String, String);

/// The fold; nothing where all combinations are made.
#[component]
pub fn AliasFold() -> impl IntoView {
    let desk = expect_context::<TrialDesk>();
    let read = move |read: fn(&Series) -> String| {
        Memo::new(move |_| desk.planned.with(|planned| planned.series.as_ref().map(read)).unwrap_or_default())
    };
    let defining = read(|series| series.design.defining_in_letters());
    let generators = read(|series| series.design.generators_in_letters().join(", "));
    let notation = read(|series| series.design.notation());
    let rows =
        Memo::new(move |_| desk.planned.with(|planned| planned.series.as_ref().map(alias_rows)).unwrap_or_default());
    let note = Signal::derive(move || {
        rows.with(|rows| {
            let with =
                rows.iter().filter(|(_, with)| !with.is_empty()).map(|(effect, with)| format!("{effect} = {with}"));
            with.collect::<Vec<_>>().join(" · ")
        })
    });
    let row = |(effect, with): AliasRow| {
        let with = if with.is_empty() { t!("trial-no-aliases") } else { with };
        view! { <tr><th scope="row" class="l">{effect}</th><td class="l">{with}</td></tr> }
    };
    view! {
        <Show when=move || defining.with(|defining| !defining.is_empty())>
            <Fold title=t!("trial-aliases") note=note id="series-aliases">
                <dl class="notation">
                    <div><dt>{t!("trial-design")}</dt><dd>{move || raised(&notation.get())}</dd></div>
                    <div><dt>{t!("trial-generators")}</dt><dd>{move || generators.get()}</dd></div>
                    <div><dt>{t!("trial-defining-relation")}</dt><dd>{move || defining.get()}</dd></div>
                </dl>
                <table class="results" aria-label=t!("trial-aliases")>
                    <thead><tr>
                        <th scope="col" class="l">{t!("trial-effect")}</th>
                        <th scope="col" class="l">{t!("trial-same-column")}</th>
                    </tr></thead>
                    <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </Fold>
        </Show>
    }
}

fn alias_rows(series: &Series) -> Vec<AliasRow> {
    let row = |row: Aliases| {
        let with: Vec<String> = row.with.iter().map(|word| word.to_text()).collect();
        (row.effect.to_text(), with.join(" = "))
    };
    series.design.alias_table(3).into_iter().map(row).collect()
}
