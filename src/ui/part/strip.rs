//! The balance drawn to scale along the stations, with what was found pinned to its station.

use super::finding::mark;
use crate::browser::element::{Part, View, button, el, svg};
use crate::browser::page;
use crate::domain::balance::closure::streams;
use crate::domain::{Grade, Station};
use crate::quantity::{Amount, Kind};
use crate::ui::chart::legs::legs;
use crate::ui::chart::strip_layout::{HEIGHT, Leg, Outlines, StripStream, WIDTH, outlines};
use crate::ui::part::amount::with_unit;
use crate::ui::signal::{RwSignal, Signal, effect};
use crate::ui::state::{State, state};

/// The strip: a button a station over the drawing, and the same as a table.
pub fn strip() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let legs = state.cell(move || passing(state));
    let none = state.cell(move || state.shown.with(|shown| shown.case.is_none()));
    let old = state.cell(move || state.shown.with(|shown| shown.old));
    el("nav")
        .class("strip")
        .set("aria-label", words.balance)
        .class_if("old", move || old.get())
        .child(
            el("div").class("stations").child(drawing(legs, none)).child(
                Station::ALL
                    .iter()
                    .enumerate()
                    .map(|(at, station)| station_button(state, *station, at, (legs, none)))
                    .collect::<View>(),
            ),
        )
        .view()
}

/// What passes each station by the result shown.
fn passing(state: State) -> Vec<Leg> {
    state.shown.with(|shown| {
        shown.case.as_ref().filter(|case| case.has_flow()).map_or_else(Vec::new, |case| legs(&streams(case)))
    })
}

/// The picture. What it shows stands in the table as well, so it is not read out.
fn drawing(legs: Signal<Vec<Leg>>, none: Signal<bool>) -> View {
    let width = WIDTH * Station::ALL.len() as f64;
    let drawn = RwSignal::new(Outlines::default());
    effect(move || drawn.set(legs.with(|legs| outlines(legs))));
    let path = move |class: &'static str, outline: fn(&Outlines) -> &String| {
        svg("path").class(class).set("d", move || drawn.with(|all| outline(all).clone()))
    };
    svg("svg")
        .class("balance")
        .set("viewBox", format!("0 0 {width} {HEIGHT}"))
        .set("preserveAspectRatio", "none")
        .set("aria-hidden", "true")
        .class_if("blank", move || none.get())
        .child(
            svg("defs").child(
                svg("pattern")
                    .set("id", "water")
                    .set("width", "3")
                    .set("height", "3")
                    .set("patternUnits", "userSpaceOnUse")
                    .child(svg("rect").class("ground").set("width", "3").set("height", "3"))
                    .child(svg("rect").class("stripe").set("width", "3").set("height", "1.2")),
            ),
        )
        .child(path("solids", |all| &all.side_solids))
        .child(path("water", |all| &all.side_water))
        .child(path("solids", |all| &all.solids))
        .child(path("water", |all| &all.water))
        .view()
}

/// Brings a station's inputs and figures into view, and says what was found there.
fn station_button(state: State, station: Station, at: usize, (legs, none): (Signal<Vec<Leg>>, Signal<bool>)) -> View {
    let gravest = state
        .cell(move || state.findings(|finding| finding.station() == station).iter().map(|finding| finding.grade).min());
    let blank = state.cell(move || state.is_unfilled_at(station));
    let found = move || {
        gravest.get().filter(|grade| *grade != Grade::Note).map(|grade| {
            el("span")
                .class("pinned")
                .child(mark(grade))
                .text(" ")
                .child(el("span").class("grade").child((state.words.grade)(grade)))
        })
    };
    let passes = move |kind: Kind, mass: fn(&StripStream) -> f64| {
        move || {
            let mass = legs.with(|legs| legs.get(at).map(|leg| mass(&leg.goes_on)))?;
            Some(with_unit(state, Amount::from_base(kind, mass), None))
        }
    };
    let words = &state.words.recipe_page;
    button()
        .class("station")
        .on_click(move || page::show(&format!("[data-station={}]", station.key())))
        .child(
            el("span")
                .class("name")
                .child(el("span").child((state.words.station)(station)))
                .text(" ")
                .child(found)
                .child(move || {
                    blank.get().then(|| el("span").class("pinned calm").child(state.words.tools.to_fill_in))
                }),
        )
        .child(
            el("span")
                .class("passes")
                .set("hidden", move || none.get())
                .child(
                    el("span")
                        .child(swatch("solids"))
                        .text(" ")
                        .child(words.solids)
                        .text(" ")
                        .child(passes(Kind::FibreFlow, |stream| stream.solids)),
                )
                .child(
                    el("span")
                        .child(swatch("water"))
                        .text(" ")
                        .child(words.of_water)
                        .text(" ")
                        .child(passes(Kind::LossFlow, |stream| stream.water)),
                ),
        )
        .view()
}

/// The tone or pattern of a part, as the drawing has it.
fn swatch(part: &'static str) -> View {
    svg("svg")
        .class("swatch")
        .set("viewBox", "0 0 12 12")
        .set("aria-hidden", "true")
        .child(svg("rect").class(part).set("width", "12").set("height", "12"))
        .view()
}

/// The balance as a table: mass in and out of every station, solids and water apart.
pub fn table() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let legs = state.cell(move || passing(state));
    let row = move |(station, leg): (&Station, &Leg)| {
        let flow = |mass: f64| with_unit(state, Amount::from_base(Kind::LossFlow, mass), None);
        let incoming = sum(leg.arrives, leg.added);
        let outgoing = sum(leg.lost, leg.goes_on);
        let station = (state.words.station)(*station);
        let part = |name: &'static str, mass_in: f64, mass_out: f64| {
            el("tr")
                .child(el("th").set("scope", "row").child(station).text(", ").child(name))
                .child(el("td").child(flow(mass_in)))
                .child(el("td").child(flow(mass_out)))
                .child(el("td").child(flow(settled(mass_in - mass_out, mass_in))))
        };
        [part(words.solids, incoming.solids, outgoing.solids), part(words.of_water, incoming.water, outgoing.water)]
    };
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", words.balance_table)
        .child(
            el("table")
                .class("closure")
                .child(el("caption").child(words.closure_hint))
                .child(
                    el("thead").child(
                        el("tr")
                            .child(el("td"))
                            .child(el("th").set("scope", "col").child(words.mass_in))
                            .child(el("th").set("scope", "col").child(words.mass_out))
                            .child(el("th").set("scope", "col").child(words.difference)),
                    ),
                )
                .child(
                    el("tbody")
                        .child(move || legs.with(|legs| Station::ALL.iter().zip(legs).flat_map(row).collect::<View>())),
                ),
        )
        .view()
}

fn sum(one: StripStream, other: StripStream) -> StripStream {
    StripStream { solids: one.solids + other.solids, water: one.water + other.water }
}

/// A difference that is only rounding is none.
fn settled(difference: f64, of: f64) -> f64 {
    if difference.abs() <= 1e-9 * of.abs() { 0.0 } else { difference }
}
