//! The balance drawn to scale along the stations, with what was found pinned to its station.

use super::finding::mark;
use crate::browser::page;
use crate::domain::balance::streams;
use crate::domain::{Grade, Station};
use crate::quantity::{Amount, Kind};
use crate::ui::chart::legs::legs;
use crate::ui::chart::strip_layout::{HEIGHT, Leg, Outlines, Stream, WIDTH, outlines};
use crate::ui::erased::{attr, flag, live, on};
use crate::ui::part::figure::with_unit;
use crate::ui::state::{State, state};
use leptos::prelude::*;

/// The strip: a button a station over the drawing, and the same as a table.
pub fn strip() -> AnyView {
    let state = state();
    let words = &state.words.recipe_page;
    let legs = state.cell(move || passing(state));
    let none = state.cell(move || state.shown.with(|shown| shown.case.is_none()));
    let old = state.cell(move || state.shown.with(|shown| shown.old));
    view! {
        <nav class="strip" aria-label=words.balance class:old=flag(move || old.get())>
            <div class="stations">
                {drawing(legs, none)}
                {Station::ALL
                    .iter()
                    .enumerate()
                    .map(|(at, station)| station_button(state, *station, at, (legs, none)))
                    .collect_view()}
            </div>
        </nav>
    }
    .into_any()
}

/// What passes each station by the result shown.
fn passing(state: State) -> Vec<Leg> {
    state.shown.with(|shown| shown.case.as_ref().map_or_else(Vec::new, |case| legs(&streams(case))))
}

/// The picture. What it shows stands in the table as well, so it is not read out.
fn drawing(legs: Signal<Vec<Leg>>, none: Signal<bool>) -> AnyView {
    let width = WIDTH * Station::ALL.len() as f64;
    let drawn = RwSignal::new(Outlines::default());
    Effect::new(move |_| drawn.set(legs.with(|legs| outlines(legs))));
    let path = move |class: &'static str, outline: fn(&Outlines) -> &String| {
        view! { <path class=class d=attr(move || drawn.with(|all| outline(all).clone()))></path> }
    };
    view! {
        <svg class="balance" viewBox=format!("0 0 {width} {HEIGHT}") preserveAspectRatio="none" aria-hidden="true" class:blank=flag(move || none.get())>
            <defs>
                <pattern id="water" width="3" height="3" patternUnits="userSpaceOnUse">
                    <rect class="ground" width="3" height="3"></rect>
                    <rect class="stripe" width="3" height="1.2"></rect>
                </pattern>
            </defs>
            {path("solids", |all| &all.side_solids)} {path("water", |all| &all.side_water)}
            {path("solids", |all| &all.solids)} {path("water", |all| &all.water)}
        </svg>
    }
    .into_any()
}

/// Brings a station's inputs and figures into view, and says what was found there.
fn station_button(
    state: State,
    station: Station,
    at: usize,
    (legs, none): (Signal<Vec<Leg>>, Signal<bool>),
) -> AnyView {
    let gravest = state
        .cell(move || state.findings(|finding| finding.station() == station).iter().map(|finding| finding.grade).min());
    let blank = state.cell(move || state.is_unfilled_at(station));
    let found = move || {
        gravest.get().filter(|grade| *grade != Grade::Note).map(|grade| {
            view! { <span class="pinned">{mark(grade)} " " <span class="grade">{(state.words.grade)(grade)}</span></span> }
        })
    };
    let passes = move |kind: Kind, mass: fn(&Stream) -> f64| {
        live(move || {
            let mass = legs.with(|legs| legs.get(at).map(|leg| mass(&leg.goes_on)))?;
            Some(with_unit(state, Amount::from_base(kind, mass), None))
        })
    };
    let words = &state.words.recipe_page;
    view! {
        <button type="button" class="station" on:click=on(move |_| page::show(&format!("[data-station={}]", station.key())))>
            <span class="name">
                <span>{(state.words.station)(station)}</span>
                " "
                {found}
                {live(move || blank.get().then(|| view! { <span class="pinned calm">{state.words.tools.to_fill_in}</span> }))}
            </span>
            <span class="passes" hidden=flag(move || none.get())>
                <span>{swatch("solids")} " " {words.solids} " " {passes(Kind::FibreFlow, |stream| stream.solids)}</span>
                <span>{swatch("water")} " " {words.of_water} " " {passes(Kind::LossFlow, |stream| stream.water)}</span>
            </span>
        </button>
    }
    .into_any()
}

/// The tone or pattern of a part, as the drawing has it.
fn swatch(part: &'static str) -> AnyView {
    view! {
        <svg class="swatch" viewBox="0 0 12 12" aria-hidden="true">
            <rect class=part width="12" height="12"></rect>
        </svg>
    }
    .into_any()
}

/// The balance as a table: mass in and out of every station, solids and water apart.
pub fn table() -> AnyView {
    let state = state();
    let words = &state.words.recipe_page;
    let legs = state.cell(move || passing(state));
    let row = move |(station, leg): (&Station, &Leg)| {
        let flow = |mass: f64| with_unit(state, Amount::from_base(Kind::LossFlow, mass), None);
        let incoming = sum(leg.arrives, leg.added);
        let outgoing = sum(leg.lost, leg.goes_on);
        let station = (state.words.station)(*station);
        let part = |name: &'static str, mass_in: f64, mass_out: f64| {
            view! {
                <tr>
                    <th scope="row">{station} ", " {name}</th>
                    <td>{flow(mass_in)}</td>
                    <td>{flow(mass_out)}</td>
                    <td>{flow(settled(mass_in - mass_out, mass_in))}</td>
                </tr>
            }
        };
        [part(words.solids, incoming.solids, outgoing.solids), part(words.of_water, incoming.water, outgoing.water)]
    };
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=words.balance_table>
            <table class="closure">
                <caption>{words.closure_hint}</caption>
                <thead>
                    <tr>
                        <td></td>
                        <th scope="col">{words.mass_in}</th>
                        <th scope="col">{words.mass_out}</th>
                        <th scope="col">{words.difference}</th>
                    </tr>
                </thead>
                <tbody>
                    {live(move || legs.with(|legs| Station::ALL.iter().zip(legs).flat_map(row).collect_view()))}
                </tbody>
            </table>
        </div>
    }
    .into_any()
}

fn sum(one: Stream, other: Stream) -> Stream {
    Stream { solids: one.solids + other.solids, water: one.water + other.water }
}

/// A difference that is only rounding is none.
fn settled(difference: f64, of: f64) -> f64 {
    if difference.abs() <= 1e-9 * of.abs() { 0.0 } else { difference }
}
