//! The recipe on paper: a view of the same result, made when the browser prints. Operators pin it to
//! a panel, so what has to be set stands first and big.

use crate::browser::clock;
use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::*;
use crate::domain::recipe::draft::{FeedWay, WaterWay};
use crate::domain::{Draft, Field, Figure, LiquidField, LiquidFigure, LiquidId, Station, cautions};
use crate::ui::field::number_text::{in_box, reading};
use crate::ui::page;
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::part::code::code;
use crate::ui::part::figure::text;
use crate::ui::part::finding::says;
use crate::ui::part::version;
use crate::ui::part::working::figure_name;
use crate::ui::route::Page;
use crate::ui::signal::RwSignal;
use crate::ui::state::{State, state};
use crate::ui::text::unit_shown;

/// The sheet, there only while the browser prints.
pub fn sheet() -> View {
    let state = state();
    let printing = RwSignal::new(false);
    on_window("beforeprint", move |_| printing.set(true));
    on_window("afterprint", move |_| printing.set(false));
    (move || printing.get().then(|| paper(state))).view()
}

fn paper(state: State) -> View {
    let words = &state.words.recipe_page;
    el("article")
        .class("paper")
        .child(head(state))
        .child(match state.page.get_untracked() {
            Page::Line => page::line::paper(state),
            Page::Bench => page::bench::paper(state),
            _ => many([doses(state), entered_all(state), figures(state), findings(state)]),
        })
        .child(
            el("footer")
                .child(
                    el("p")
                        .child(words.printed)
                        .text(" ")
                        .child(clock::date_time(clock::now()))
                        .text(" · ")
                        .child(words.app_version)
                        .text(" ")
                        .child(env!("CARGO_PKG_VERSION")),
                )
                .child(el("p").class("sign").child(words.signature))
                .child(reopen(state)),
        )
        .view()
}

/// What opens this recipe again on another device.
fn reopen(state: State) -> Option<View> {
    let link = state.link.get_untracked()?;
    // An address of this machine's own disk leads nowhere from elsewhere.
    let code = (!link.starts_with("file:")).then(|| code(&link, state.words.recipe_page.code)).flatten()?;
    Some(el("figure").child(code).child(el("figcaption").child(state.words.recipe_page.code_reopens)).view())
}

fn head(state: State) -> View {
    let words = &state.words.recipe_page;
    let title = state.title.get_untracked();
    let name = if title.name.trim().is_empty() { words.untitled.to_owned() } else { title.name };
    let is_saved = state.saved().get_untracked();
    let saved = state.seen_on_page().get_untracked().map(|seen| version::headline(state, &seen, is_saved));
    let released = state.released_of_page().get_untracked().and_then(|seen| version::released(state, &seen));
    el("header")
        .child(el("h1").child(name))
        .child(
            el("p")
                .child(saved.unwrap_or_else(|| state.words.tools.not_saved.to_owned()))
                .child(released.map(|released| format!(" · {released}")))
                .child(state.example.get_untracked().then(|| format!(" · {}", words.example))),
        )
        .child(
            state
                .shown
                .with(|shown| shown.old)
                .then(|| el("p").child(el("strong").child(words.stale)).text(" ").child(words.stale_hint)),
        )
        .child((!title.note.is_empty()).then(|| el("p").child(title.note)))
        .view()
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
fn doses(state: State) -> View {
    let words = &state.words.recipe_page;
    let row = |name: String, mass: Figure, volume: Figure| {
        el("tr")
            .child(el("th").set("scope", "row").child(name))
            .child(el("td").child(text(state, mass)))
            .child(el("td").child(text(state, volume)))
    };
    let of_liquid =
        |id| row(name(state, id), Figure::Liquid(id, LiquidFigure::Liquid), Figure::Liquid(id, LiquidFigure::Volume));
    let rows = liquids(state).into_iter().map(of_liquid).collect::<View>();
    let big = [Figure::MatWet, Figure::MatOvenDry, Figure::LineSpeed, Figure::PressFactor];
    el("section")
        .child(el("h2").child(words.to_dose))
        .child(el("table").class("doses-on-paper").child(el("tbody").child(rows).child(row(
            words.water.to_owned(),
            Figure::WaterDose,
            Figure::WaterDoseVolume,
        ))))
        .child(
            el("dl").class("big-on-paper").child(big.into_iter().map(|figure| pair(state, figure)).collect::<View>()),
        )
        .view()
}

/// A figure with its name; nothing where the recipe does not give it.
fn pair(state: State, figure: Figure) -> View {
    let words = (state.words.figure)(figure);
    text(state, figure)
        .map(|text| {
            el("div")
                .child(
                    el("dt")
                        .child(figure_name(state, figure))
                        .text(" ")
                        .child(el("span").class("note").child(words.note)),
                )
                .child(el("dd").child(text))
        })
        .view()
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
    let plain =
        |station: Station| Field::PLAIN.iter().copied().filter(move |field| field.station() == station).filter(counts);
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
    let kind = draft.kind(field);
    let units = state.units_at(field, kind);
    match reading(draft, field) {
        Some(reading) if reading.unit_typed => Some(with_unit(state, reading.amount(kind), None)),
        _ => {
            let unit = units.unit(kind);
            let shown = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
            Some(joined(&in_box(entry, kind, &units), &shown))
        }
    }
}

fn entered_all(state: State) -> View {
    let pairs = state.draft.with(|draft| {
        let pair = |field| {
            let value = entered(state, draft, field)?;
            let name = (state.words.field_name)(field, draft);
            Some(el("div").child(el("dt").child(name)).child(el("dd").child(value)))
        };
        in_effect(draft).into_iter().filter_map(pair).collect::<View>()
    });
    el("section")
        .child(el("h2").child(state.words.recipe_page.inputs))
        .child(el("dl").class("columns").child(pairs))
        .view()
}

/// The other figures of the line.
fn figures(state: State) -> View {
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
    let pairs = shown.into_iter().chain(per_board).map(|figure| pair(state, figure)).collect::<View>();
    el("section")
        .child(el("h2").child(state.words.recipe_page.sheet))
        .child(el("dl").class("columns").child(pairs))
        .view()
}

fn findings(state: State) -> View {
    let words = state.words;
    let findings = state.said(|_| true);
    let cautions = state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome)));
    el("section")
        .class("findings-on-paper")
        .child(el("h2").child(words.recipe_page.findings))
        .child(findings.is_empty().then_some(words.recipe_page.no_findings))
        .child(findings.into_iter().map(says).collect::<View>())
        .child(el("h2").child(words.tools.cautions))
        .child({
            cautions
                .into_iter()
                .map(|caution| {
                    let caution = (words.caution)(caution);
                    el("p").child(el("strong").child(caution.title)).text(". ").child(caution.text)
                })
                .collect::<View>()
        })
        .child(el("p").child(words.tools.caution_rule))
        .view()
}
