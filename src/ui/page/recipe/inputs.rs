//! What the board, the mat and the press are to be: boxes in rows, those that are needed less often folded below.

use super::context::{OpenWorking, SheetContext, word};
use super::enum_choice::EnumChoice;
use super::field_box::{BoxMessages, FieldBox};
use super::figure_of::FigureOf;
use crate::browser::page;
use crate::domain::chemistry::equilibrium_moisture::at_standard_climate;
use crate::domain::recipe::draft::{FeedWay, WaterWay};
use crate::domain::{BoardKind, Faces, Field, Figure, Furnish, Grade, Place, Station};
use crate::quantity::{Amount, Kind};
use crate::t;
use crate::ui::components::{Mark, WorkingPanel};
use crate::ui::state::State;
use crate::ui::text::{shown, words};
use leptos::context::Provider;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The inputs.
#[component]
pub fn Inputs() -> impl IntoView {
    let open = OpenWorking::new("");
    let enter = move |event: KeyboardEvent| {
        if event.key() == "Enter"
            && let Some(key) = page::focused_field()
        {
            page::focus_after(&key);
        }
    };
    view! {
        <Provider value=open>
            <section class="panel inputs" aria-label=t!("recipe-inputs") on:keydown=enter>
                <div class="given">
                    <FibreInputs/>
                    <BoardInputs/>
                    <MatInputs/>
                </div>
                <div class="below-boxes">
                <BoxMessages belongs=|field| !matches!(field, Field::Liquid(..) | Field::WaterFlow | Field::WaterOnFibre)/>
                <MoreInputs/>
                </div>
                <WorkingPanel open=open.figure scope=open.scope/>
            </section>
        </Provider>
    }
}

/// A box under a short label; the group's heading says whose it is.
#[component]
fn Labelled(
    /// The field.
    field: Field,
    /// The label.
    #[prop(into)]
    label: String,
    /// A width of its own.
    #[prop(optional)]
    class: &'static str,
) -> impl IntoView {
    let label = Signal::stored(label);
    view! { <FieldBox field=field label=label class=class/> }
}

#[component]
fn FibreInputs() -> impl IntoView {
    let state = expect_context::<State>();
    let way = Memo::new(move |_| state.draft.with(|draft| draft.feed_way));
    let ways = FeedWay::ALL.iter().map(|way| (*way, feed_words(*way))).collect::<Vec<_>>();
    let choose = Callback::new(move |way: FeedWay| state.edit(None, |draft| draft.feed_way = way));
    let flow = move || match way.get() {
        FeedWay::OvenDry | FeedWay::Belt => Some(view! { <FieldBox field=Field::FibreFlow class="wide"/> }),
        FeedWay::LineSpeed => Some(view! { <FieldBox field=Field::WantedLineSpeed class="wide"/> }),
        FeedWay::PressFactor => Some(view! { <FieldBox field=Field::WantedPressFactor class="wide"/> }),
        FeedWay::None => None,
    };
    let other = move || match way.get() {
        FeedWay::OvenDry => Some(view! { <Beside label=t!("recipe-belt-scale") figure=Figure::FibreWet/> }),
        FeedWay::Belt | FeedWay::LineSpeed | FeedWay::PressFactor => {
            Some(view! { <Beside label=t!("recipe-flow-oven-dry") figure=Figure::Fibre/> })
        }
        FeedWay::None => None,
    };
    view! {
        <fieldset data-station=Station::Fibre.key() tabindex="-1">
            <legend>{t!("recipe-fibre")}</legend>
            <div class="row">
                <div class="chosen-box">
                    <EnumChoice
                        id="feed-way"
                        name=t!("recipe-feed-way")
                        all=ways
                        value=Signal::derive(move || Some(way.get()))
                        on_choose=choose
                    />
                    {flow}
                </div>
                {other}
                <Labelled field=Field::FibreMoisture label=t!("recipe-moisture")/>
            </div>
        </fieldset>
    }
}

fn feed_words(way: FeedWay) -> String {
    match way {
        FeedWay::OvenDry => t!("recipe-flow-oven-dry"),
        FeedWay::Belt => t!("recipe-belt-scale"),
        FeedWay::LineSpeed => t!("recipe-from-line-speed"),
        FeedWay::PressFactor => t!("recipe-from-press-factor"),
        FeedWay::None => t!("recipe-laboratory"),
    }
}

/// A computed figure among the boxes.
#[component]
fn Beside(
    /// Its label.
    #[prop(into)]
    label: String,
    /// The figure.
    figure: Figure,
) -> impl IntoView {
    view! {
        <div class="computed">
            <span class="label">{label}</span>
            <FigureOf figure=figure/>
        </div>
    }
}

#[component]
fn BoardInputs() -> impl IntoView {
    view! {
        <fieldset data-station=Station::Board.key() tabindex="-1">
            <legend>{t!("recipe-board")}</legend>
            <div class="row">
                <Labelled field=Field::BoardDensity label=t!("recipe-density")/>
                <Labelled field=Field::Thickness label=t!("recipe-thickness") class="narrow"/>
                <Labelled field=Field::BoardMoisture label=t!("recipe-moisture")/>
                <Labelled field=Field::SandTop label=t!("recipe-sanding-top") class="narrow"/>
                <Labelled field=Field::SandBottom label=t!("recipe-sanding-bottom") class="narrow"/>
            </div>
        </fieldset>
    }
}

#[component]
fn MatInputs() -> impl IntoView {
    let state = expect_context::<State>();
    let to_moisture = Memo::new(move |_| state.draft.with(|draft| draft.water_way == WaterWay::ToMatMoisture));
    view! {
        <fieldset>
            <legend>{t!("recipe-mat-and-press")}</legend>
            <div class="row">
                <div class="row" data-station=Station::Mat.key() tabindex="-1">
                    <Show when=move || to_moisture.get()>
                        <Labelled field=Field::MatMoisture label=t!("recipe-target-moisture")/>
                    </Show>
                    <Labelled field=Field::MatWidth label=t!("recipe-width") class="narrow"/>
                </div>
                <div class="row" data-station=Station::Press.key() tabindex="-1">
                    <Labelled field=Field::PressLength label=t!("recipe-press-length") class="narrow"/>
                </div>
            </div>
        </fieldset>
    }
}

/// The boxes that are needed less often, by station. The fold says so where something in it is not as it should be.
#[component]
fn MoreInputs() -> impl IntoView {
    let sheet = expect_context::<SheetContext>();
    let gravest = Memo::new(move |_| {
        let folded = |place| matches!(place, Place::Field(field) if field.is_folded());
        sheet
            .said
            .with(|said| said.iter().filter(|said| folded(said.finding.place)).map(|said| said.finding.grade).min())
    });
    let flag = move || {
        let grade = gravest.get().filter(|grade| *grade != Grade::Note);
        grade.map(|grade| view! { <span class="flag"><Mark grade=grade/> " " {word(grade)}</span> })
    };
    let groups = Station::ALL.iter().map(|station| view! { <StationInputs station=*station/> }).collect_view();
    view! {
        <details class="more-inputs">
            <summary>{t!("recipe-more-inputs")} {flag}</summary>
            <div class="given">{groups}</div>
        </details>
    }
}

#[component]
fn StationInputs(
    /// The station.
    station: Station,
) -> impl IntoView {
    let state = expect_context::<State>();
    let folded = Field::PLAIN.iter().copied().filter(|field| field.is_folded() && field.station() == station);
    let boxes = folded
        .map(|field| {
            let label = Signal::derive(move || state.draft.with(|draft| words::field(field, draft).label.to_owned()));
            view! { <FieldBox field=field label=label/> }
        })
        .collect_view();
    let choice = match station {
        Station::Fibre => view! { <FurnishChoice/> }.into_any(),
        Station::Board => view! { <BoardKindChoice/> <StandardClimate/> }.into_any(),
        Station::Mat => view! { <FacesChoice/> }.into_any(),
        Station::Blender | Station::Press => ().into_any(),
    };
    view! {
        <fieldset>
            <legend>{words::station(station)}</legend>
            <div class="row">{choice}{boxes}</div>
        </fieldset>
    }
}

#[component]
fn FurnishChoice() -> impl IntoView {
    let state = expect_context::<State>();
    let all = Furnish::ALL.iter().map(|each| (*each, words::furnish(*each).to_owned())).collect::<Vec<_>>();
    let value = Signal::derive(move || Some(state.draft.with(|draft| draft.furnish)));
    let choose = Callback::new(move |each: Furnish| state.edit(None, |draft| draft.furnish = each));
    view! { <EnumChoice id="furnish" name=t!("recipe-furnish") labelled=true all=all value=value on_choose=choose/> }
}

#[component]
fn BoardKindChoice() -> impl IntoView {
    let state = expect_context::<State>();
    let all = BoardKind::ALL.iter().map(|each| (*each, words::board_kind(*each).to_owned())).collect::<Vec<_>>();
    let value = Signal::derive(move || Some(state.draft.with(|draft| draft.board_kind)));
    let choose = Callback::new(move |each: BoardKind| state.edit(None, |draft| draft.board_kind = each));
    view! { <EnumChoice id="board-kind" name=t!("recipe-board-kind") labelled=true all=all value=value on_choose=choose/> }
}

#[component]
fn FacesChoice() -> impl IntoView {
    let state = expect_context::<State>();
    let all = Faces::ALL.iter().map(|each| (*each, words::faces(*each).to_owned())).collect::<Vec<_>>();
    let value = Signal::derive(move || Some(state.draft.with(|draft| draft.sprayed_faces)));
    let choose = Callback::new(move |each: Faces| state.edit(None, |draft| draft.sprayed_faces = each));
    view! { <EnumChoice id="sprayed-faces" name=t!("recipe-sprayed-faces") labelled=true all=all value=value on_choose=choose/> }
}

/// Offers the moisture of solid wood in the climate of test standards for the board.
#[component]
fn StandardClimate() -> impl IntoView {
    let state = expect_context::<State>();
    at_standard_climate().map(|moisture| {
        let moisture = Amount::from_base(Kind::Moisture, moisture.dry_basis().value);
        let words =
            move || t!("recipe-standard-climate", moisture = state.with_context(|context| shown(moisture, context)));
        let enter = move |_| state.edit(None, |draft| draft.enter_standard_climate());
        view! { <button type="button" id="standard-climate" on:click=enter>{words}</button> }
    })
}
