//! What is wanted, a group a station, in the material's order.

use super::liquids;
use crate::browser::element::{Part, View, button, el, many};
use crate::browser::graph::*;
use crate::domain::chemistry::equilibrium_moisture::at_standard_climate;
use crate::domain::recipe::draft::{FeedWay, WaterWay};
use crate::domain::recipe::finding::What;
use crate::domain::{BoardKind, Faces, Field, Finding, Furnish, Grade, Place, Station};
use crate::quantity::{Amount, Kind};
use crate::ui::field::choice::labelled;
use crate::ui::field::number::number;
use crate::ui::part::finding::{mark, says};
use crate::ui::signal::Signal;
use crate::ui::state::{State, state};
use crate::ui::text::shown;

/// The boxes of a station, those that are less often needed folded away.
pub fn group(station: Station) -> View {
    let state = state();
    let title = format!("inputs-{}", station.key());
    let labelled_by = title.clone();
    el("section")
        .class("group inputs-of")
        .set("data-station", station.key())
        .set("tabindex", "-1")
        .set("aria-labelledby", labelled_by)
        .child(el("h2").set("id", title).child((state.words.station)(station)))
        .child(found(state, station))
        .child(main_fields(state, station))
        .child(folded(state, station))
        .view()
}

/// What was found at the station as a whole, beside its boxes. A furnish that is too wet has a block
/// of its own on the sheet.
fn found(state: State, station: Station) -> View {
    let here = move |finding: &Finding| {
        finding.place == Place::Station(station) && !matches!(finding.what, What::TooWet { .. })
    };
    let findings = state.cell(move || state.said(here));
    (move || findings.get().into_iter().map(says).collect::<View>()).view()
}

fn fields(fields: &[Field]) -> View {
    fields.iter().map(|field| number(*field)).collect::<View>().view()
}

fn main_fields(state: State, station: Station) -> View {
    let grid = |inner: View| el("div").class("fields").child(inner).view();
    match station {
        Station::Fibre => {
            let way = state.cell(move || state.draft.with(|draft| draft.feed_way));
            let flow = move || match way.get() {
                FeedWay::OvenDry | FeedWay::Belt => Some(number(Field::FibreFlow)),
                FeedWay::LineSpeed => Some(number(Field::WantedLineSpeed)),
                FeedWay::PressFactor => Some(number(Field::WantedPressFactor)),
                FeedWay::None => None,
            };
            grid(
                many([furnish(state), feed_way(state).view(), flow.view(), number(Field::FibreMoisture).view()]).view(),
            )
        }
        Station::Blender => {
            let way = state.cell(move || state.draft.with(|draft| draft.water_way));
            many([
                liquids::liquids().view(),
                el("div")
                    .class("fields")
                    .child(water_way(state))
                    .child(move || match way.get() {
                        WaterWay::OnFibre => Some(number(Field::WaterOnFibre)),
                        WaterWay::Flow => Some(number(Field::WaterFlow)),
                        WaterWay::ToMatMoisture | WaterWay::None => None,
                    })
                    .view(),
            ])
            .view()
        }
        Station::Mat => {
            let wanted = state.cell(move || state.draft.with(|draft| draft.water_way == WaterWay::ToMatMoisture));
            grid(
                many([
                    (move || wanted.get().then(|| number(Field::MatMoisture))).view(),
                    number(Field::MatWidth).view(),
                ])
                .view(),
            )
        }
        Station::Press => grid(fields(&[Field::PressLength])),
        Station::Board => grid(many([
            board_kind(state),
            fields(&[Field::BoardDensity, Field::BoardMoisture]),
            standard_climate(state),
            fields(&[Field::Thickness, Field::SandTop, Field::SandBottom]),
        ])),
    }
}

/// What is less often needed. Where something was found in there, the fold says so.
fn folded(state: State, station: Station) -> View {
    let inside: Vec<Field> =
        Field::PLAIN.iter().copied().filter(|field| field.is_folded() && field.station() == station).collect();
    let boxes = fields(&inside);
    let faces = (station == Station::Mat).then(|| sprayed_faces(state));
    let gravest = state.cell(move || {
        let here = state.findings(|finding| matches!(finding.place, Place::Field(field) if inside.contains(&field)));
        here.iter().map(|finding| finding.grade).min()
    });
    let pinned = move || {
        gravest
            .get()
            .filter(|grade| *grade != Grade::Note)
            .map(|grade| el("span").class("pinned").child(mark(grade)).child((state.words.grade)(grade)))
    };
    el("details")
        .class("more")
        .child(el("summary").child(state.words.recipe_page.advanced).child(pinned))
        .child(el("div").class("fields").child(boxes).child(faces))
        .view()
}

fn furnish(state: State) -> View {
    let choices =
        Furnish::ALL.iter().map(|each| (each.key().to_owned(), (state.words.furnish)(*each).to_owned())).collect();
    let now = state.cell(move || state.draft.with(|draft| draft.furnish.key()).to_owned());
    let choose = Callback::new(move |key: String| {
        if let Some(each) = Furnish::ALL.iter().find(|each| each.key() == key) {
            state.edit(None, |draft| draft.furnish = *each);
        }
    });
    let label = Signal::stored(state.words.recipe_page.furnish.to_owned());
    labelled("furnish".to_owned(), label, Signal::stored(choices), now, choose)
}

fn board_kind(state: State) -> View {
    let choices =
        BoardKind::ALL.iter().map(|each| (each.key().to_owned(), (state.words.board_kind)(*each).to_owned())).collect();
    let now = state.cell(move || state.draft.with(|draft| draft.board_kind.key()).to_owned());
    let choose = Callback::new(move |key: String| {
        if let Some(each) = BoardKind::ALL.iter().find(|each| each.key() == key) {
            state.edit(None, |draft| draft.board_kind = *each);
        }
    });
    let label = Signal::stored(state.words.recipe_page.board_kind.to_owned());
    labelled("board-kind".to_owned(), label, Signal::stored(choices), now, choose)
}

/// Offers the moisture of solid wood in the climate of test standards.
fn standard_climate(state: State) -> View {
    let Some(moisture) = at_standard_climate() else { return View::Nothing };
    let moisture = Amount::from_base(Kind::Moisture, moisture.dry_basis().value);
    let words = move || {
        let moisture = state.with_context(|context| shown(moisture, context));
        format!("{}: {moisture}", state.words.recipe_page.standard_climate)
    };
    let enter = move || state.edit(None, |draft| draft.enter_standard_climate());
    el("p").child(button().set("id", "standard-climate").on_click(enter).child(words)).view()
}

fn sprayed_faces(state: State) -> View {
    let choices =
        Faces::ALL.iter().map(|each| (each.key().to_owned(), (state.words.faces)(*each).to_owned())).collect();
    let now = state.cell(move || state.draft.with(|draft| draft.sprayed_faces.key()).to_owned());
    let choose = Callback::new(move |key: String| {
        if let Some(each) = Faces::ALL.iter().find(|each| each.key() == key) {
            state.edit(None, |draft| draft.sprayed_faces = *each);
        }
    });
    let label = Signal::stored(state.words.recipe_page.sprayed_faces.to_owned());
    labelled("sprayed-faces".to_owned(), label, Signal::stored(choices), now, choose)
}

const fn feed_key(way: FeedWay) -> &'static str {
    match way {
        FeedWay::OvenDry => "oven_dry",
        FeedWay::Belt => "belt",
        FeedWay::LineSpeed => "line_speed",
        FeedWay::PressFactor => "press_factor",
        FeedWay::None => "none",
    }
}

fn feed_way(state: State) -> View {
    let choices =
        FeedWay::ALL.iter().map(|way| (feed_key(*way).to_owned(), (state.words.feed_way)(*way).to_owned())).collect();
    let now = state.cell(move || state.draft.with(|draft| feed_key(draft.feed_way)).to_owned());
    let choose = Callback::new(move |key: String| {
        if let Some(way) = FeedWay::ALL.iter().find(|way| feed_key(**way) == key) {
            state.edit(None, |draft| draft.feed_way = *way);
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

fn water_way(state: State) -> View {
    let choices = WaterWay::ALL
        .iter()
        .map(|way| (water_key(*way).to_owned(), (state.words.water_way)(*way).to_owned()))
        .collect();
    let now = state.cell(move || state.draft.with(|draft| water_key(draft.water_way)).to_owned());
    let choose = Callback::new(move |key: String| {
        if let Some(way) = WaterWay::ALL.iter().find(|way| water_key(**way) == key) {
            state.edit(None, |draft| draft.water_way = *way);
        }
    });
    let label = Signal::stored(state.words.recipe_page.water_way.to_owned());
    labelled("water-way".to_owned(), label, Signal::stored(choices), now, choose)
}
