//! What all boards come to, against what was wanted and required.

use super::desk::{Desk, Tested, TestedGroup};
use super::parts::{board_told, cell, findings, group, numbered, shown, signed, table, text_box};
use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::Callback;
use crate::domain::Entry;
use crate::domain::trial::Property;
use crate::domain::trial::boards::at_density::AtDensity;
use crate::domain::trial::boards::density::DensityTarget;
use crate::domain::trial::boards::group::{BoardGroup, GroupKey, PropertyResult};
use crate::domain::trial::boards::measured::MeasuredBoard;
use crate::domain::trial::boards::property::Tail;
use crate::domain::trial::boards::requirement_set::{RequirementSet, requirement_unit};
use crate::domain::trial::boards::target::requirement_limit;
use crate::domain::trial::boards::target::{RequirementDraft, profile as places};
use crate::domain::trial::boards::working::{BoardFigure, correction_working, summary_working};
use crate::quantity::Kind;
use crate::record::content::trial::TrialContent;
use crate::ui::chart::drawing::{Anchor, Drawing};
use crate::ui::chart::scale::LinearScale;
use crate::ui::field::choice;
use crate::ui::field::loose::{self, LooseBox};
use crate::ui::signal::{Signal, memo};
use crate::ui::state::State;
use crate::ui::text::{FieldWords, unit_shown};
use leptos::reactive::prelude::*;
use std::fmt::Write as _;
use uom::si::f64::Ratio;

/// Every property by combination and by run, with the correction of the next mat. Boards with different targets are
/// never pooled.
pub fn results(desk: Desk, tested: &Tested) -> View {
    let page = &desk.state.words.bench_page;
    let combination = |own: &TestedGroup| group_shown(desk, &own.group, Some(own));
    let run = |own: &BoardGroup| group_shown(desk, own, None);
    let several = tested.runs.len() > tested.combinations.len();
    many([
        group(page.by_combination, tested.combinations.iter().map(combination).collect::<View>()),
        several.then(|| group(page.by_run, tested.runs.iter().map(run).collect::<View>())).view(),
    ])
}

/// The boards of a group: its name, its properties, its density and what is required.
fn group_shown(desk: Desk, own: &BoardGroup, required: Option<&TestedGroup>) -> View {
    let state = desk.state;
    let title = group_name(desk, &own.key);
    let key = group_key(&own.key);
    el("section")
        .class("combination")
        .child(el("h4").child(title))
        .child(own.results.iter().map(|result| property(desk, &key, result)).collect::<View>())
        .child(own.density.map(|target| against(desk, &key, target)))
        .child(own.at_density.iter().map(|own| at_density(desk, own)).collect::<View>())
        .child(required.map(|required| {
            let said = desk.made.with(|made| findings(desk, &required.findings, &made.recipe, &made.typed));
            let verdict =
                |judged| desk.with_context(|context| el("p").child((state.words.bench.verdict)(judged, context)));
            many([required.judged.iter().map(verdict).collect::<View>(), said])
        }))
        .view()
}

/// What a group is called: its run, or the levels of its runs.
pub fn group_name(desk: Desk, key: &GroupKey) -> String {
    desk.planned.with(|planned| {
        desk.with_context(|context| (desk.state.words.bench.group)(key, planned.series.as_ref(), context))
    })
}

fn group_key(key: &GroupKey) -> String {
    match key {
        GroupKey::Base => "base".to_owned(),
        GroupKey::Run(run) => format!("run-{run}"),
        GroupKey::Combination(levels) => {
            format!("levels-{}", levels.iter().map(u8::to_string).collect::<Vec<_>>().join("-"))
        }
    }
}

/// A strength at the target density.
fn at_density(desk: Desk, own: &AtDensity) -> View {
    desk.with_context(|context| el("p").child((desk.state.words.bench.at_density)(own, context)).view())
}

fn property(desk: Desk, group: &str, result: &PropertyResult) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let words = (state.words.bench.property)(result.property);
    let kind = result.property.kind();
    let base = |base: f64| shown(state, kind, base);
    let summary = result.summary;
    let key = |part: &str| format!("{group}.{}.{part}", result.property.key());
    let plain = |part: &str, label, value| cell(state, &key(part), (label, ""), value, false, None);
    let worked = |part: &str, figure: BoardFigure, value: Option<f64>| {
        let value = base(value?);
        let words = (state.words.bench.board_figure)(figure);
        let show = Box::new(move || summary_working(figure, &summary).map(|working| board_told(state, &working)));
        Some(cell(state, &key(part), (words.label, words.note), value, false, Some(show)))
    };
    let quantile = |tail: Tail| match tail {
        Tail::Lower => worked("lower", BoardFigure::Lower(result.property), summary.lower),
        Tail::Upper => worked("upper", BoardFigure::Upper(result.property), summary.upper),
    };
    el("div")
        .class("result")
        .child(el("h5").child(words.label).text(" ").child(el("span").class("note").child(words.note)))
        .child(
            el("dl")
                .class("figures")
                .child(plain("mean", page.mean, base(summary.mean)))
                .child(plain("count", page.count, summary.count.to_string()))
                .child(summary.deviation.map(|sd| plain("sd", page.deviation_between, base(sd))))
                .child(worked("half", BoardFigure::HalfWidth(result.property), summary.half_width))
                .child(result.property.tail().map(quantile)),
        )
        .view()
}

fn against(desk: Desk, group_key: &str, target: DensityTarget) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let words = (state.words.bench.board_figure)(BoardFigure::Correction);
    let named = |key: &str| format!("{group_key}.{key}");
    let density = |key: &str, label, base| {
        cell(state, &named(key), (label, ""), shown(state, Kind::BoardDensity, base), false, None)
    };
    let split = |key: &str, label, share: Ratio| {
        cell(state, &named(key), (label, ""), signed(state, Kind::Share, share.value), false, None)
    };
    let show = Box::new(move || Some(board_told(state, &correction_working(&target))));
    let correction = shown(state, Kind::Ratio, target.correction.value);
    let next = shown(state, Kind::BenchMass, target.next_mat.value);
    group(
        page.target,
        many([
            el("dl")
                .class("figures")
                .child(density("density_wanted", page.density_wanted, target.target))
                .child(density("density_made", page.density_made, target.made))
                .child(split("density_off", page.deviation, target.split.total))
                .child(split("from_mass", page.from_mass, target.split.mass))
                .child(split("from_thickness", page.from_thickness, target.split.thickness))
                .child(split("from_moisture", page.from_moisture, target.split.moisture))
                .child(cell(state, &named("correction"), (words.label, words.note), correction, false, Some(show)))
                .child(cell(state, &named("next_mat"), (page.next_mat, ""), next, true, None))
                .view(),
            target.laid.is_none().then(|| el("p").class("note").child(page.as_planned)).view(),
            (!target.moisture_known).then(|| el("p").class("note").child(page.as_if_moist)).view(),
        ]),
    )
}

/// Boxes for what is required.
pub fn requirements(state: State) -> View {
    let page = &state.words.bench_page;
    let required = |property: &&Property| property.tail().is_some();
    let number = |property: &Property| {
        let property = *property;
        let kind = property.kind();
        let unit = requirement_unit(property);
        let label = (state.words.bench.property)(property).label;
        loose::number(LooseBox {
            key: format!("required.{}", property.key()),
            words: FieldWords { label, hint: "" },
            named: None,
            kind,
            limit: requirement_limit(property),
            entry: memo(move || {
                let own = |requirement: &&RequirementDraft| requirement.property == property;
                let typed =
                    state.bench.open.with(|open| open.trial.requirements.iter().find(own).map(|own| own.value.clone()));
                typed.unwrap_or_else(|| Entry::empty(unit))
            }),
            put: Callback::new(move |entry| {
                state.bench.edit(|trial| {
                    let all = &mut trial.requirements;
                    match all.iter_mut().find(|own| own.property == property) {
                        Some(own) => own.value = entry,
                        None => all.push(RequirementDraft { property, value: entry }),
                    }
                });
            }),
        })
    };
    let boxes = Property::ALL.iter().filter(required).map(number).collect::<View>();
    let first = std::iter::once(page.no_requirement_set.to_owned());
    let sets = RequirementSet::ALL.iter().map(|set| (state.words.bench.requirement_set)(*set));
    let offered = Signal::stored(numbered(first.chain(sets)));
    // What is entered may have been typed over since, so the choice says nothing of it and goes back to the first line.
    let start = Callback::new(move |chosen: String| {
        let set = chosen.parse().ok().and_then(|at: usize| RequirementSet::ALL.get(at.checked_sub(1)?).copied());
        let Some(set) = set else { return };
        let before = state.bench.open.get_untracked();
        state.bench.edit(|trial| {
            trial.requirements = set.requirements();
            trial.required_by = (state.words.bench.requirement_set)(set);
        });
        state.tell_undo(page.requirements_set, move || state.bench.load(before.clone()));
    });
    let none = memo(move || state.bench.open.with(|_| "0".to_owned()));
    let unverified = move || {
        let any = |trial: &TrialContent| trial.requirements.iter().any(|own| own.value.preset && !own.value.is_blank());
        state.bench.open.with(|open| any(&open.trial)).then(|| el("p").class("note").child(page.unverified_values))
    };
    group(
        page.requirement,
        many([
            el("p").class("note").child(page.requirement_hint).view(),
            el("div")
                .class("fields")
                .child(choice::labelled(
                    "requirement-set".to_owned(),
                    page.requirement_set.to_owned().into(),
                    offered,
                    none,
                    start,
                ))
                .child(text_box(
                    state,
                    "required-by".to_owned(),
                    page.required_by,
                    |trial| trial.required_by.clone(),
                    |trial, text| trial.required_by = text,
                ))
                .view(),
            unverified.view(),
            el("div").class("fields").child(boxes).view(),
        ]),
    )
}

/// What there is to say of single boards.
pub fn said(desk: Desk, tested: &Tested) -> View {
    desk.made.with(|made| findings(desk, &tested.findings, &made.recipe, &made.typed))
}

/// Density over the positions of a board's pieces, drawn and as a table.
pub fn profile(desk: Desk, board: &MeasuredBoard) -> Option<View> {
    let state = desk.state;
    let page = &state.words.bench_page;
    let points = places(board);
    if points.len() < 2 {
        return None;
    }
    let head = [page.piece, page.position, page.density_made, page.off_mean];
    let head = head.map(str::to_owned);
    let rows = points.iter().map(|point| {
        vec![
            (u16::from(point.piece) + 1).to_string(),
            shown(state, Kind::BenchExtent, point.position.value),
            shown(state, Kind::BoardDensity, point.density),
            signed(state, Kind::Share, point.deviation),
        ]
    });
    let drawing = drawn(state, &points.iter().map(|p| (p.position.value, p.density)).collect::<Vec<_>>());
    Some(group(
        page.profile,
        many([
            drawing.map(|drawing| el("div").class("drawing").markup(&drawing.inline())).view(),
            table(page.profile, &head, rows.collect()),
        ]),
    ))
}

fn drawn(state: State, points: &[(f64, f64)]) -> Option<Drawing> {
    let mark = state.units.get().mark;
    let (x_unit, y_unit) = (state.unit(Kind::BenchExtent), state.unit(Kind::BoardDensity));
    let points: Vec<(f64, f64)> = points.iter().map(|(x, y)| (x_unit.from_base(*x), y_unit.from_base(*y))).collect();
    let (x, across) = LinearScale::around(points.iter().map(|p| p.0), (64.0, 420.0), 5)?;
    let (y, up) = LinearScale::around(points.iter().map(|p| p.1), (150.0, 24.0), 4)?;
    let mut drawing = Drawing::new(440.0, 190.0, state.words.bench_page.profile);
    for tick in across.iter() {
        drawing.text((x.place(tick), 168.0), Anchor::Middle, 12, &across.label(tick, mark));
    }
    for tick in up.iter() {
        drawing.path(&format!("M64,{0:.1}H420", y.place(tick)), 1.0, " opacity=\"0.25\"");
        drawing.text((58.0, y.place(tick) + 4.0), Anchor::End, 12, &up.label(tick, mark));
    }
    drawing.text((420.0, 186.0), Anchor::End, 12, x_unit.symbol());
    drawing.text(
        (4.0, 14.0),
        Anchor::Start,
        12,
        &state.currency.with(|currency| unit_shown(y_unit, currency).into_owned()),
    );
    let mut dots = String::new();
    for (a, b) in &points {
        let _ =
            write!(dots, "<circle cx=\"{:.1}\" cy=\"{:.1}\" r=\"4\" fill=\"currentColor\"/>", x.place(*a), y.place(*b));
    }
    drawing.put(&dots);
    Some(drawing)
}
