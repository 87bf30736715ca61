//! The recipe on paper: a view of the same result, made when the browser prints. Operators pin it to
//! a panel, so what has to be set stands first and big.

use crate::browser::clock;
use crate::domain::draft::{FeedWay, WaterWay};
use crate::domain::{Draft, Field, Figure, LiquidField, LiquidFigure, LiquidId, Station, cautions};
use crate::ui::field::number_text::{in_box, reading};
use crate::ui::part::figure::{joined, text, with_unit};
use crate::ui::part::finding::says;
use crate::ui::part::working::figure_name;
use crate::ui::state::{State, state};
use crate::ui::text::unit_shown;
use leptos::ev;
use leptos::prelude::*;

/// The sheet, there only while the browser prints.
pub fn sheet() -> AnyView {
    let state = state();
    let printing = RwSignal::new(false);
    window_event_listener(ev::beforeprint, move |_| printing.set(true));
    window_event_listener(ev::afterprint, move |_| printing.set(false));
    (move || printing.get().then(|| paper(state))).into_any()
}

fn paper(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    view! {
        <article class="paper">
            {head(state)} {doses(state)} {entered_all(state)} {figures(state)} {findings(state)}
            <footer>
                <p>{words.printed} " " {clock::date_time(clock::now())} " · " {words.app_version} " " {env!("CARGO_PKG_VERSION")}</p>
                <p class="sign">{words.signature}</p>
            </footer>
        </article>
    }
    .into_any()
}

fn head(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    let title = state.title.get_untracked();
    let name = if title.name.trim().is_empty() { words.untitled.to_owned() } else { title.name };
    let saved = state.from.get_untracked().and_then(|id| {
        state.shelf.with_untracked(|shelf| shelf.revision(id)).map(|at| {
            let id = id.to_string();
            let short = id.get(..8).unwrap_or_default();
            format!("{} {short} · {}", words.revision, clock::date_time(at.content().saved_at))
        })
    });
    let changed = saved.is_some() && !state.saved().get_untracked();
    view! {
        <header>
            <h1>{name}</h1>
            <p>
                {saved.unwrap_or_else(|| state.words.tools.not_saved.to_owned())}
                {changed.then(|| format!(" · {}", state.words.tools.changed))}
                {state.example.get_untracked().then(|| format!(" · {}", words.example))}
            </p>
            {state.shown.with(|shown| shown.old).then(|| view! { <p><strong>{words.stale}</strong> " " {words.stale_hint}</p> })}
            {(!title.note.is_empty()).then(|| view! { <p>{title.note}</p> })}
        </header>
    }
    .into_any()
}

fn liquids(state: State) -> Vec<LiquidId> {
    state.shown.with(|shown| {
        shown.case.as_ref().map(|case| case.solved.liquids.iter().map(|flow| flow.id).collect()).unwrap_or_default()
    })
}

fn name(state: State, id: LiquidId) -> String {
    state
        .draft
        .with(|draft| draft.liquid(id).map(|liquid| (state.words.liquid)(liquid).into_owned()))
        .unwrap_or_default()
}

/// What has to be set, in big figures.
fn doses(state: State) -> AnyView {
    let words = &state.words.recipe_page;
    let row = |name: String, mass: Figure, volume: Figure| {
        view! {
            <tr>
                <th scope="row">{name}</th>
                <td>{text(state, mass)}</td>
                <td>{text(state, volume)}</td>
            </tr>
        }
    };
    let of_liquid =
        |id| row(name(state, id), Figure::Liquid(id, LiquidFigure::Liquid), Figure::Liquid(id, LiquidFigure::Volume));
    let rows = liquids(state).into_iter().map(of_liquid).collect_view();
    let big = [Figure::MatWet, Figure::MatOvenDry, Figure::LineSpeed, Figure::PressFactor];
    view! {
        <section>
            <h2>{words.to_dose}</h2>
            <table class="doses-on-paper">
                <tbody>{rows} {row(words.water.to_owned(), Figure::WaterDose, Figure::WaterDoseVolume)}</tbody>
            </table>
            <dl class="big-on-paper">{big.into_iter().map(|figure| pair(state, figure)).collect_view()}</dl>
        </section>
    }
    .into_any()
}

/// A figure with its name; nothing where the recipe does not give it.
fn pair(state: State, figure: Figure) -> AnyView {
    let words = (state.words.figure)(figure);
    text(state, figure)
        .map(|text| {
            view! {
                <div>
                    <dt>{figure_name(state, figure)} " " <span class="note">{words.note}</span></dt>
                    <dd>{text}</dd>
                </div>
            }
        })
        .into_any()
}

/// The fields that count, by what was chosen, in the order of the page.
fn in_effect(draft: &Draft) -> Vec<Field> {
    let counts = |field: &Field| match field {
        Field::FibreFlow => matches!(draft.feed_way, FeedWay::OvenDry | FeedWay::Belt),
        Field::WantedLineSpeed => draft.feed_way == FeedWay::LineSpeed,
        Field::WantedPressFactor => draft.feed_way == FeedWay::PressFactor,
        Field::MatMoisture => draft.water_way == WaterWay::ToMatMoisture,
        Field::WaterOnFibre => draft.water_way == WaterWay::OnFibre,
        Field::WaterFlow => draft.water_way == WaterWay::Flow,
        _ => true,
    };
    let plain = |station: Station| {
        Field::PLAIN.iter().copied().filter(move |field| Station::of(*field) == station).filter(counts)
    };
    let of_liquids = draft
        .liquids
        .iter()
        .flat_map(|liquid| LiquidField::ALL.iter().map(move |part| Field::Liquid(liquid.id, *part)));
    let mut fields: Vec<Field> = plain(Station::Fibre).chain(of_liquids).collect();
    for station in Station::ALL.iter().skip(1) {
        fields.extend(plain(*station));
    }
    fields
}

/// What was entered, with its unit; a unit that was typed is converted.
fn entered(state: State, draft: &Draft, field: Field) -> Option<String> {
    let entry = draft.entry(field).filter(|entry| !entry.is_blank())?;
    let (kind, units) = (draft.kind(field), state.units.get_untracked());
    match reading(draft, field) {
        Some(reading) if reading.unit_typed => Some(with_unit(state, reading.amount(kind), None)),
        _ => {
            let unit = units.unit(kind);
            let shown = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
            Some(joined(&in_box(entry, kind, &units), &shown))
        }
    }
}

fn entered_all(state: State) -> AnyView {
    let pairs = state.draft.with(|draft| {
        let pair = |field| {
            let value = entered(state, draft, field)?;
            let name = (state.words.field_name)(field, draft);
            Some(view! { <div><dt>{name}</dt><dd>{value}</dd></div> })
        };
        in_effect(draft).into_iter().filter_map(pair).collect_view()
    });
    view! {
        <section>
            <h2>{state.words.recipe_page.inputs}</h2>
            <dl class="columns">{pairs}</dl>
        </section>
    }
    .into_any()
}

/// The other figures of the line.
fn figures(state: State) -> AnyView {
    let shown = [
        Figure::Fibre,
        Figure::FibreWet,
        Figure::Solids,
        Figure::BlenderMoisture,
        Figure::MatMoisture,
        Figure::MatRunning,
        Figure::MatHeight,
        Figure::Reject,
        Figure::PressTime,
        Figure::PressedThickness,
        Figure::PressVapour,
        Figure::FinishedVolume,
        Figure::FinishedArea,
        Figure::FinishedMass,
        Figure::SanderDust,
        Figure::Offcuts,
        Figure::Cost,
    ];
    let per_board = liquids(state).into_iter().map(|id| Figure::Liquid(id, LiquidFigure::PerVolume));
    let pairs = shown.into_iter().chain(per_board).map(|figure| pair(state, figure)).collect_view();
    view! {
        <section>
            <h2>{state.words.recipe_page.sheet}</h2>
            <dl class="columns">{pairs}</dl>
        </section>
    }
    .into_any()
}

fn findings(state: State) -> AnyView {
    let words = state.words;
    let findings = state.said(|_| true);
    let cautions = state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome)));
    view! {
        <section class="findings-on-paper">
            <h2>{words.recipe_page.findings}</h2>
            {findings.is_empty().then_some(words.recipe_page.no_findings)}
            {findings.into_iter().map(says).collect_view()}
            <h2>{words.tools.cautions}</h2>
            {cautions
                .into_iter()
                .map(|caution| {
                    let caution = (words.caution)(caution);
                    view! { <p><strong>{caution.title}</strong> ". " {caution.text}</p> }
                })
                .collect_view()}
            <p>{words.tools.caution_rule}</p>
        </section>
    }
    .into_any()
}
