//! Where solids and water go: the drawing to scale, and the check that nothing is lost.

use crate::browser::page;
use crate::domain::balance::closure::streams;
use crate::domain::{Figure, Station};
use crate::quantity::{Amount, Kind};
use crate::t;
use crate::ui::chart::legs::legs;
use crate::ui::chart::strip_layout::{HEIGHT, Leg, Outlines, StripStream, WIDTH, outlines};
use crate::ui::part::amount::with_unit;
use crate::ui::part::figure::text;
use crate::ui::state::State;
use crate::ui::text::{lower_first, words};
use leptos::prelude::*;

/// What passes each station by the result shown.
fn passing(state: State) -> Vec<Leg> {
    state.shown.with(|shown| {
        shown.case.as_ref().filter(|case| case.has_flow()).map_or_else(Vec::new, |case| legs(&streams(case)))
    })
}

/// Water dosed and driven out, beside the heading.
pub fn water_note(state: State) -> String {
    match (text(state, Figure::WaterDose), text(state, Figure::PressVapour)) {
        (Some(dosed), Some(vapour)) => t!("recipe-water-balance-note", dosed = dosed, vapour = vapour),
        _ => String::new(),
    }
}

/// Whether mass in and out agree at every station, beside the heading.
pub fn mass_note(state: State) -> String {
    let legs = passing(state);
    let closes = |leg: &Leg| {
        let (into, out) = (sum(leg.arrives, leg.added), sum(leg.lost, leg.goes_on));
        is_rounding(into.solids - out.solids, into.solids) && is_rounding(into.water - out.water, into.water)
    };
    match legs.iter().zip(Station::ALL).find(|(leg, _)| !closes(leg)) {
        _ if legs.is_empty() => String::new(),
        None => t!("recipe-closes"),
        Some((_, station)) => t!("recipe-does-not-close", station = words::station(*station)),
    }
}

/// The drawing, a button a station above it that leads to the station's boxes.
#[component]
pub fn WaterBalance() -> impl IntoView {
    let state = expect_context::<State>();
    let legs = Memo::new(move |_| passing(state));
    let drawn = Memo::new(move |_| legs.with(|legs| outlines(legs)));
    let path = move |class: &'static str, outline: fn(&Outlines) -> &String| {
        view! { <path class=class d=move || drawn.with(|all| outline(all).clone())></path> }
    };
    let width = WIDTH * Station::ALL.len() as f64;
    let stations = Station::ALL.iter().enumerate().map(|(at, station)| {
        let station = *station;
        let passes = move |kind: Kind, mass: fn(&StripStream) -> f64| {
            move || {
                let mass = legs.with(|legs| legs.get(at).map(|leg| mass(&leg.goes_on)))?;
                Some(with_unit(state, Amount::from_base(kind, mass), None))
            }
        };
        view! {
            <button type="button" class="station" on:click=move |_| page::show(&format!("[data-station={}]", station.key()))>
                <b>{words::station(station)}</b>
                <span><i class="swatch solids"></i> {t!("recipe-solids")} " " {passes(Kind::FibreFlow, |stream| stream.solids)}</span>
                <span><i class="swatch water"></i> {t!("recipe-water")} " " {passes(Kind::LossFlow, |stream| stream.water)}</span>
            </button>
        }
    });
    view! {
        <div class="water-balance">
            <div class="stations">{stations.collect_view()}</div>
            <svg viewBox=format!("0 0 {width} {HEIGHT}") preserveAspectRatio="none" aria-hidden="true">
                <defs>
                    <pattern id="water" width="3" height="3" patternUnits="userSpaceOnUse">
                        <rect class="ground" width="3" height="3"></rect>
                        <rect class="stripe" width="3" height="1.2"></rect>
                    </pattern>
                </defs>
                {path("solids", |all| &all.side_solids)}
                {path("water", |all| &all.side_water)}
                {path("solids", |all| &all.solids)}
                {path("water", |all| &all.water)}
            </svg>
        </div>
    }
}

/// Mass in and out of every station, solids and water apart.
#[component]
pub fn MassBalance() -> impl IntoView {
    let state = expect_context::<State>();
    let legs = Memo::new(move |_| passing(state));
    let rows = move || {
        legs.get()
            .into_iter()
            .zip(Station::ALL)
            .map(|(leg, station)| view! { <StationRows station=*station leg=leg/> })
            .collect_view()
    };
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=t!("recipe-mass-balance")>
            <table class="results closure" aria-label=t!("recipe-mass-balance")>
                <thead>
                    <tr>
                        <td></td>
                        <th scope="col">{t!("recipe-mass-in")}</th>
                        <th scope="col">{t!("recipe-mass-out")}</th>
                        <th scope="col">{t!("recipe-difference")}</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
}

#[component]
fn StationRows(
    /// The station.
    station: Station,
    /// What passes it.
    leg: Leg,
) -> impl IntoView {
    let state = expect_context::<State>();
    let flow = move |mass: f64| with_unit(state, Amount::from_base(Kind::LossFlow, mass), None);
    let (into, out) = (sum(leg.arrives, leg.added), sum(leg.lost, leg.goes_on));
    let row = move |part: String, mass_in: f64, mass_out: f64| {
        let difference = if is_rounding(mass_in - mass_out, mass_in) { 0.0 } else { mass_in - mass_out };
        view! {
            <tr>
                <th scope="row">{words::station(station)} ", " {part}</th>
                <td>{flow(mass_in)}</td>
                <td>{flow(mass_out)}</td>
                <td>{flow(difference)}</td>
            </tr>
        }
    };
    view! {
        {row(lower_first(&t!("recipe-solids")), into.solids, out.solids)}
        {row(lower_first(&t!("recipe-water")), into.water, out.water)}
    }
}

fn sum(one: StripStream, other: StripStream) -> StripStream {
    StripStream { solids: one.solids + other.solids, water: one.water + other.water }
}

/// Whether a difference is only rounding.
fn is_rounding(difference: f64, of: f64) -> bool {
    difference.abs() <= 1e-9 * of.abs()
}
