//! Pumps: what each delivers, between which settings, through which nozzles; and its catch tests.

use super::catch;
use super::parts::{choose, findings, numbered, numbers, offered, remove, text_box, ties};
use crate::browser::clock;
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::browser::page as browser;
use crate::domain::line::{CalibrationId, Fed, Feeds, LineField, Metering, Model, PumpField, PumpId, SettingUnit};
use crate::domain::{Work, cautions_at};
use crate::ui::part::caution;
use crate::ui::part::fold::fold;
use crate::ui::signal::memo;
use crate::ui::state::State;

/// The boxes of a pump, but for its share and its reading.
const BOXES: [PumpField; 8] = [
    PumpField::LeastSetting,
    PumpField::MostSetting,
    PumpField::Share,
    PumpField::Nozzles,
    PumpField::NozzleLeast,
    PumpField::NozzleMost,
    PumpField::PipeVolume,
    PumpField::SettingStep,
];

/// The section.
pub fn pumps(state: State) -> View {
    let page = &state.words.line_page;
    let keys = move || state.line.book(|book| book.pumps.iter().map(|pump| (pump.id, pump.unit)).collect::<Vec<_>>());
    let add = move || {
        // What nobody has a pump for yet comes first.
        let free = state.line.record.with_untracked(|record| {
            let taken = |feeds: &Feeds| record.book.pumps.iter().any(|pump| pump.feeds.same(feeds));
            ties(state, None).into_iter().map(|(feeds, _)| feeds).find(|feeds| !taken(feeds))
        });
        let mut added = None;
        state.line.edit(|book| added = Some(book.add_pump(free.unwrap_or(Feeds::Water), SettingUnit::Percent)));
        if let Some(id) = added {
            request_animation_frame(move || browser::focus(&format!("pump-name-{}", id.0)));
        }
    };
    many([
        el("p").child(page.pumps_hint).view(),
        (move || caution::list(state.draft.with(|draft| cautions_at(Work::CatchTest, draft, None)))).view(),
        (move || state.line.checked.with(|line| findings(state, line.findings.iter().filter(|f| f.pump().is_none()))))
            .view(),
        each(keys, |(id, unit)| format!("{} {}", id.0, *unit as u8), move |(id, unit)| pump(state, id, unit)),
        el("p").child(button().class("primary").on_click(add).child(page.add_pump)).view(),
    ])
}

fn pump(state: State, id: PumpId, unit: SettingUnit) -> View {
    let page = &state.words.line_page;
    let name = move || {
        state.line.book(|book| book.pump(id).map(|pump| (state.words.line.pump)(pump).into_owned())).unwrap_or_default()
    };
    let take_away = move || {
        let removed = state.line.change(|record| record.book.pumps.retain(|pump| pump.id != id));
        state.tell_undo(page.pump_removed, move || state.line.take_back(&removed));
    };
    let offered_ties = memo(move || {
        let now = state.line.book(|book| book.pump(id).map(|pump| pump.feeds.clone()));
        ties(state, now)
    });
    let place =
        move |feeds: &Feeds| offered_ties.with(|all| all.iter().position(|(other, _)| other.same(feeds))).unwrap_or(0);
    let keys = move || {
        state.line.book(|book| {
            let tests = book.pump(id).map_or(&[][..], |pump| &pump.calibrations);
            tests.iter().rev().take(1).map(|test| test.id).collect::<Vec<_>>()
        })
    };
    let start = move || {
        let at = clock::now();
        state.line.edit(|book| {
            if let Some(pump) = book.pump_mut(id) {
                let density = state.draft.with_untracked(|draft| match pump.feeds.within(draft)? {
                    Fed::Liquid(liquid) => draft.liquid(liquid).map(|liquid| liquid.density.clone()),
                    Fed::Thinning(_) | Fed::Water | Fed::FaceWater => None,
                });
                pump.offer_calibration(at, density.as_ref());
            }
        });
    };
    let own = format!("pump-{}", id.0);
    el("article")
        .class("pump")
        .set("aria-labelledby", own.clone())
        .child(el("h3").set("id", own).child(name))
        .child(move || {
            state.line.checked.with(|line| {
                let own = line.findings.iter().filter(|finding| finding.pump() == Some(id));
                findings(state, own)
            })
        })
        .child(
            el("div")
                .class("fields")
                .child(text_box(
                    state,
                    format!("pump-name-{}", id.0),
                    page.pump_name,
                    |book, of| book.pump(PumpId(of)).map(|pump| pump.name.clone()).unwrap_or_default(),
                    |book, of, text| {
                        if let Some(pump) = book.pump_mut(PumpId(of)) {
                            pump.name = text;
                        }
                    },
                    id.0,
                ))
                .child(choose(
                    state,
                    format!("pump-feeds-{}", id.0),
                    page.delivers,
                    memo(move || numbered(offered_ties.get().into_iter().map(|(_, name)| name))),
                    move |book| book.pump(id).map_or(0, |pump| place(&pump.feeds)),
                    move |book, at| {
                        let chosen = offered_ties.with_untracked(|all| all.get(at).map(|(feeds, _)| feeds.clone()));
                        if let Some((pump, feeds)) = book.pump_mut(id).zip(chosen) {
                            pump.feeds = feeds;
                        }
                    },
                ))
                .child(choose(
                    state,
                    format!("pump-unit-{}", id.0),
                    page.scale,
                    offered(SettingUnit::ALL, state.words.line.setting_unit),
                    move |book| {
                        let of = |pump: &crate::domain::line::PumpDraft| {
                            SettingUnit::ALL.iter().position(|unit| *unit == pump.unit)
                        };
                        book.pump(id).and_then(of).unwrap_or(0)
                    },
                    move |book, at| {
                        if let Some((pump, unit)) = book.pump_mut(id).zip(SettingUnit::ALL.get(at)) {
                            pump.set_unit(*unit);
                        }
                    },
                ))
                .child(choose(
                    state,
                    format!("pump-metering-{}", id.0),
                    page.meters,
                    offered(Metering::ALL, state.words.line.metering),
                    move |book| usize::from(book.pump(id).is_some_and(|pump| pump.metering == Metering::Mass)),
                    move |book, at| {
                        if let Some((pump, way)) = book.pump_mut(id).zip(Metering::ALL.get(at)) {
                            pump.metering = *way;
                        }
                    },
                ))
                .child(choose(
                    state,
                    format!("pump-model-{}", id.0),
                    page.model,
                    offered(Model::ALL, state.words.line.model),
                    move |book| usize::from(book.pump(id).is_some_and(|pump| pump.model == Model::ThroughOrigin)),
                    move |book, at| {
                        if let Some((pump, model)) = book.pump_mut(id).zip(Model::ALL.get(at)) {
                            pump.model = *model;
                        }
                    },
                )),
        )
        .child(fold(page.limits, move || numbers(state, BOXES.map(|part| LineField::Pump(id, part)))))
        .child(each(keys, |test: &CalibrationId| test.0.to_string(), move |test| catch::test(state, id, test, unit)))
        .child(el("div").class("actions").child(button().on_click(start).child(page.new_test)).child(remove(
            state,
            name(),
            take_away,
        )))
        .child(fold(page.old_tests, move || catch::earlier(state, id)))
        .view()
}
