//! The material that the whole series takes.

use crate::domain::trial::SeriesDraft;
use crate::domain::trial::series::field::SeriesField;
use crate::domain::trial::series::material::Needed;
use crate::quantity::Kind;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::{TrialBox, TrialDesk, TrialMessages, shown};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

const MARGIN: TrialField = TrialField::Series(SeriesField::Margin);

/// The fold.
#[component]
pub fn MaterialFold() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    // Name, mass, volume.
    let rows = Memo::new(move |_| {
        desk.basis.with(|basis| {
            let none = SeriesDraft::default();
            let draft = basis.series.as_ref().unwrap_or(&none);
            let row = |needed: &Needed| {
                [
                    words::bench::material(needed.material, draft, &basis.recipe),
                    shown(state, Kind::BenchMass, needed.mass.value),
                    needed.volume.map_or_else(String::new, |volume| shown(state, Kind::BenchVolume, volume.value)),
                ]
            };
            desk.planned.with(|planned| planned.needed.iter().map(row).collect::<Vec<_>>())
        })
    });
    let note = Signal::derive(move || {
        rows.with(|rows| rows.iter().map(|[name, mass, _]| format!("{name} {mass}")).collect::<Vec<_>>().join(" · "))
    });
    let row = |[name, mass, volume]: [String; 3]| {
        view! { <tr><th scope="row" class="l">{name}</th><td>{mass}</td><td>{volume}</td></tr> }
    };
    view! {
        <Fold title=t!("trial-material") note=note id="series-material">
            <div class="boxes"><TrialBox field=MARGIN label=t!("trial-margin") aside=t!("trial-margin-hint")/></div>
            <TrialMessages fields=vec![MARGIN]/>
            <table class="results" aria-label=t!("trial-material")>
                <thead><tr>
                    <th scope="col" class="l">{t!("trial-material-name")}</th>
                    <th scope="col">{t!("trial-mass")}</th>
                    <th scope="col">{t!("trial-volume")}</th>
                </tr></thead>
                <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
            </table>
        </Fold>
    }
}
