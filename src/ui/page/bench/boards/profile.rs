//! Density over the positions of a board's pieces, drawn and as a table.

use crate::domain::trial::BoardId;
use crate::domain::trial::boards::target::profile as places;
use crate::quantity::Kind;
use crate::t;
use crate::ui::chart::scale::LinearScale;
use crate::ui::page::bench::entry::{TrialDesk, amount_parts, shown, signed_share};
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;

/// A place of the profile, in the units shown.
#[derive(Debug, Clone, PartialEq)]
struct ProfilePlace {
    piece: u8,
    at: (f64, f64),
    position: String,
    density: String,
    deviation: String,
}

/// The profile; nothing with fewer than two positions.
#[component]
pub fn Profile(
    /// The board.
    id: BoardId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let points = Memo::new(move |_| {
        desk.tested
            .with(|tested| tested.board(id).map(places))
            .unwrap_or_default()
            .into_iter()
            .map(|point| {
                let (across, up) = (state.unit(Kind::BenchExtent), state.unit(Kind::BoardDensity));
                ProfilePlace {
                    piece: point.piece,
                    at: (across.from_base(point.position.value), up.from_base(point.density)),
                    position: amount_parts(state, Kind::BenchExtent, point.position.value).0,
                    density: shown(state, Kind::BoardDensity, point.density),
                    deviation: signed_share(state, point.deviation),
                }
            })
            .collect::<Vec<_>>()
    });
    let row = |point: ProfilePlace| {
        view! {
            <tr>
                <th scope="row">{u32::from(point.piece) + 1}</th>
                <td>{point.position}</td>
                <td>{point.density}</td>
                <td>{point.deviation}</td>
            </tr>
        }
    };
    move || {
        points.with(|points| {
            (points.len() >= 2).then(|| {
                view! {
                    <div class="profile">
                        {drawn(state, points)}
                        <table class="results" aria-label=t!("trial-profile")>
                            <thead><tr>
                                <th scope="col">{t!("trial-piece")}</th>
                                <th scope="col">{t!("trial-position")} ", " {symbol_shown(state.unit(Kind::BenchExtent))}</th>
                                <th scope="col">{t!("trial-density")}</th>
                                <th scope="col">{t!("trial-off-mean")} ", %"</th>
                            </tr></thead>
                            <tbody>{points.iter().cloned().map(row).collect_view()}</tbody>
                        </table>
                    </div>
                }
            })
        })
    }
}

fn drawn(state: State, points: &[ProfilePlace]) -> Option<AnyView> {
    let mark = state.units.with(|units| units.mark);
    let (x, across) = LinearScale::around(points.iter().map(|point| point.at.0), (64.0, 420.0), 5)?;
    let (y, up) = LinearScale::around(points.iter().map(|point| point.at.1), (150.0, 12.0), 4)?;
    let below = across
        .iter()
        .map(|tick| view! { <text x=format!("{:.1}", x.place(tick)) y="172" text-anchor="middle">{across.label(tick, mark)}</text> })
        .collect_view();
    let beside = up
        .iter()
        .map(|tick| {
            let at = y.place(tick);
            view! {
                <path class="axis" d=format!("M64,{at:.1}H420")></path>
                <text x="58" y=format!("{:.1}", at + 5.0) text-anchor="end">{up.label(tick, mark)}</text>
            }
        })
        .collect_view();
    let dots = points
        .iter()
        .map(|point| view! { <circle cx=format!("{:.1}", x.place(point.at.0)) cy=format!("{:.1}", y.place(point.at.1)) r="4"></circle> })
        .collect_view();
    Some(view! { <svg class="profile-chart" viewBox="0 0 440 180" role="img" aria-label=t!("trial-profile")>{beside}{below}{dots}</svg> }.into_any())
}
