//! The furnish for the next mat: density against the target of each combination, and what it comes from.

use crate::domain::trial::boards::density::DensityTarget;
use crate::domain::trial::boards::working::BoardFigure;
use crate::quantity::Kind;
use crate::record::content::trial::outcome::TestedGroup;
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::bench::entry::{
    BoardsFigure, BoardsWorking, FigureOfBoard, TrialDesk, amount_parts, group_key, group_name, shown, signed_share,
};
use crate::ui::state::State;
use crate::ui::text::unit_short;
use leptos::prelude::*;

/// A combination with a target.
#[derive(Debug, Clone, PartialEq)]
struct MatRow {
    at: usize,
    key: String,
    name: String,
    /// Target, made, then the parts of the deviation.
    cells: Vec<String>,
    next: String,
    is_as_planned: bool,
    is_moisture_known: bool,
}

/// The fold; nothing before a board has a density.
#[component]
pub fn NextMat() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let rows = Memo::new(move |_| {
        desk.tested.with(|tested| {
            let one = |(at, own): (usize, &TestedGroup)| {
                let target = own.group.density?;
                Some(MatRow {
                    at,
                    key: group_key(&own.group.key),
                    name: group_name(state, desk, &own.group.key),
                    cells: cells(state, &target),
                    next: shown(state, Kind::BenchMass, target.next_mat.value),
                    is_as_planned: target.laid.is_none(),
                    is_moisture_known: target.moisture_known,
                })
            };
            tested.combinations.iter().enumerate().filter_map(one).collect::<Vec<_>>()
        })
    });
    let is_there = Memo::new(move |_| rows.with(|rows| !rows.is_empty()));
    let note = Signal::derive(move || {
        rows.with(|rows| rows.iter().map(|row| format!("{}: {}", row.name, row.next)).collect::<Vec<_>>().join(" · "))
    });
    let row = |row: MatRow| {
        let key = row.key.clone();
        let cell = move |(name, text): (&str, String)| view! { <td data-figure=format!("{key}.{name}")>{text}</td> };
        let names = ["density_wanted", "density_made", "density_off", "from_mass", "from_thickness", "from_moisture"];
        view! {
            <tr>
                <th scope="row" class="l">{row.name}</th>
                {names.into_iter().zip(row.cells).map(cell).collect_view()}
                <td class="edge"><FigureOfBoard figure=BoardsFigure::Combination(row.at, BoardFigure::Correction)/></td>
                <td><b class="lead" data-figure=format!("{}.next_mat", row.key)>{row.next}</b></td>
            </tr>
        }
    };
    let as_planned = move || rows.with(|rows| rows.iter().any(|row| row.is_as_planned));
    let as_if_moist = move || rows.with(|rows| rows.iter().any(|row| !row.is_moisture_known));
    let unit = move || unit_short(state.unit(Kind::BoardDensity), &state.currency.get());
    view! {
        <Show when=move || is_there.get()>
            <Fold title=t!("trial-next-mat") note=note id="next-mat">
                <div class="scroll" tabindex="0" role="region" aria-label=t!("trial-next-mat")>
                    <table class="results">
                        <thead><tr>
                            <th scope="col" class="l">{t!("trial-combination")}</th>
                            <th scope="col">{t!("trial-target-density")} <br/> {unit}</th>
                            <th scope="col">{t!("trial-density-made")} <br/> {unit}</th>
                            <th scope="col">{t!("trial-deviation")} ", %"</th>
                            <th scope="col">{t!("trial-from-mass")} ", %"</th>
                            <th scope="col">{t!("trial-from-thickness")} ", %"</th>
                            <th scope="col">{t!("trial-from-moisture")} ", %"</th>
                            <th scope="col" class="edge">{t!("trial-correction")}</th>
                            <th scope="col">{t!("trial-furnish-next-mat")}</th>
                        </tr></thead>
                        <tbody>{move || rows.get().into_iter().map(row).collect_view()}</tbody>
                    </table>
                </div>
                <p class="note">{t!("trial-density-made-note")} " " {t!("trial-correction-note")}</p>
                <p class="note">{move || as_planned().then(|| t!("trial-as-planned"))}</p>
                <p class="note">{move || as_if_moist().then(|| t!("trial-as-if-moist"))}</p>
                <BoardsWorking belongs=|figure| matches!(figure, BoardsFigure::Combination(_, BoardFigure::Correction))/>
            </Fold>
        </Show>
    }
}

fn cells(state: State, target: &DensityTarget) -> Vec<String> {
    let density = |base: f64| amount_parts(state, Kind::BoardDensity, base).0;
    let split = &target.split;
    let mut cells = vec![density(target.target), density(target.made)];
    cells.extend(
        [split.total, split.mass, split.thickness, split.moisture].map(|share| signed_share(state, share.value)),
    );
    cells
}
