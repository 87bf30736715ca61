//! What is wanted, a group a station, in the material's order.

use super::liquids;
use crate::domain::draft::{FeedWay, WaterWay};
use crate::domain::finding::What;
use crate::domain::{Field, Finding, Grade, Place, Station};
use crate::ui::erased::live;
use crate::ui::field::choice::labelled;
use crate::ui::field::number::number;
use crate::ui::part::finding::{mark, says};
use crate::ui::state::{State, state};
use leptos::prelude::*;

/// The boxes of a station, those that are less often needed folded away.
pub fn group(station: Station) -> AnyView {
    let state = state();
    let title = format!("inputs-{}", station.key());
    let labelled_by = title.clone();
    view! {
        <section class="group inputs-of" data-station=station.key() tabindex="-1" aria-labelledby=labelled_by>
            <h2 id=title>{(state.words.station)(station)}</h2>
            {found(state, station)}
            {main_fields(state, station)}
            {folded(state, station)}
        </section>
    }
    .into_any()
}

/// What was found at the station as a whole, beside its boxes. A furnish that is too wet has a block
/// of its own on the sheet.
fn found(state: State, station: Station) -> AnyView {
    let here = move |finding: &Finding| {
        finding.place == Place::Station(station) && !matches!(finding.what, What::TooWet { .. })
    };
    let findings = state.cell(move || state.said(here));
    (move || findings.get().into_iter().map(says).collect_view()).into_any()
}

fn fields(fields: &[Field]) -> AnyView {
    fields.iter().map(|field| number(*field)).collect_view().into_any()
}

fn main_fields(state: State, station: Station) -> AnyView {
    let grid = |inner: AnyView| view! { <div class="fields">{inner}</div> }.into_any();
    match station {
        Station::Fibre => {
            let way = state.cell(move || state.draft.with(|draft| draft.feed_way));
            let flow = move || match way.get() {
                FeedWay::OvenDry | FeedWay::Belt => number(Field::FibreFlow),
                FeedWay::LineSpeed => number(Field::WantedLineSpeed),
                FeedWay::PressFactor => number(Field::WantedPressFactor),
            };
            grid(view! { {feed_way(state)} {flow} {number(Field::FibreMoisture)} }.into_any())
        }
        Station::Blender => {
            let way = state.cell(move || state.draft.with(|draft| draft.water_way));
            view! {
                {liquids::liquids()}
                <div class="fields">
                    {water_way(state)}
                    {live(move || match way.get() {
                        WaterWay::OnFibre => Some(number(Field::WaterOnFibre)),
                        WaterWay::Flow => Some(number(Field::WaterFlow)),
                        WaterWay::ToMatMoisture | WaterWay::None => None,
                    })}
                </div>
            }
            .into_any()
        }
        Station::Mat => {
            let wanted = state.cell(move || state.draft.with(|draft| draft.water_way == WaterWay::ToMatMoisture));
            grid(
                view! {
                    {live(move || wanted.get().then(|| number(Field::MatMoisture)))}
                    {number(Field::MatWidth)}
                }
                .into_any(),
            )
        }
        Station::Press => grid(fields(&[Field::PressLength])),
        Station::Board => grid(fields(&[
            Field::BoardDensity,
            Field::BoardMoisture,
            Field::Thickness,
            Field::SandTop,
            Field::SandBottom,
        ])),
    }
}

const fn less_often(station: Station) -> &'static [Field] {
    match station {
        Station::Fibre => &[Field::FibrePrice, Field::FibreSupply],
        Station::Blender => &[Field::BlenderCapacity],
        Station::Mat => &[
            Field::DryingLoss,
            Field::Reject,
            Field::SpreadWidth,
            Field::MatBulkDensity,
            Field::MatTemperature,
            Field::SurfaceSpray,
        ],
        Station::Press => &[Field::ExitMoisture, Field::LeastPressFactor, Field::TopLineSpeed],
        Station::Board => &[Field::SurfaceRatio, Field::AreaYield, Field::ShiftHours],
    }
}

/// What is less often needed. Where something was found in there, the fold says so.
fn folded(state: State, station: Station) -> AnyView {
    let inside = less_often(station);
    let gravest = state.cell(move || {
        let here = state.findings(|finding| matches!(finding.place, Place::Field(field) if inside.contains(&field)));
        here.iter().map(|finding| finding.grade).min()
    });
    let pinned = move || {
        gravest.get().filter(|grade| *grade != Grade::Note).map(|grade| {
            view! { <span class="pinned">{mark(grade)} {(state.words.grade)(grade)}</span> }
        })
    };
    view! {
        <details class="more">
            <summary>{state.words.recipe_page.advanced} {pinned}</summary>
            <div class="fields">{fields(inside)}</div>
        </details>
    }
    .into_any()
}

const fn feed_key(way: FeedWay) -> &'static str {
    match way {
        FeedWay::OvenDry => "oven_dry",
        FeedWay::Belt => "belt",
        FeedWay::LineSpeed => "line_speed",
        FeedWay::PressFactor => "press_factor",
    }
}

fn feed_way(state: State) -> AnyView {
    let choices =
        FeedWay::ALL.iter().map(|way| (feed_key(*way).to_owned(), (state.words.feed_way)(*way).to_owned())).collect();
    let now = state.cell(move || state.draft.with(|draft| feed_key(draft.feed_way)).to_owned());
    let choose = Callback::new(move |key: String| {
        if let Some(way) = FeedWay::ALL.iter().find(|way| feed_key(**way) == key) {
            state.edit(None, &mut |draft| draft.feed_way = *way);
        }
    });
    let label = Signal::stored(state.words.recipe_page.feed_way.to_owned());
    labelled("feed-way".to_owned(), label, Signal::stored(choices), now, choose)
}

const fn water_key(way: WaterWay) -> &'static str {
    match way {
        WaterWay::ToMatMoisture => "to_mat_moisture",
        WaterWay::OnFibre => "on_fibre",
        WaterWay::Flow => "flow",
        WaterWay::None => "none",
    }
}

fn water_way(state: State) -> AnyView {
    let choices = WaterWay::ALL
        .iter()
        .map(|way| (water_key(*way).to_owned(), (state.words.water_way)(*way).to_owned()))
        .collect();
    let now = state.cell(move || state.draft.with(|draft| water_key(draft.water_way)).to_owned());
    let choose = Callback::new(move |key: String| {
        if let Some(way) = WaterWay::ALL.iter().find(|way| water_key(**way) == key) {
            state.edit(None, &mut |draft| draft.water_way = *way);
        }
    });
    let label = Signal::stored(state.words.recipe_page.water_way.to_owned());
    labelled("water-way".to_owned(), label, Signal::stored(choices), now, choose)
}
