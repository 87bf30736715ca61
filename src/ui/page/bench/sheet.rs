//! The weigh-out sheet: what is asked, and what to weigh in order of addition.

use super::desk::{Desk, Made};
use super::parts::{Worked, cell, findings, group, pick, sheet_origin, signed};
use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::*;
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SprayWay, ThicknessWay, WaterPlace};
use crate::domain::trial::weigh_sheet::working::working;
use crate::domain::trial::{LineId, WeighField, WeighFigure, WeighLineFigure, WeighSheet};
use crate::domain::{Work, cautions_at, work_out};
use crate::quantity::Kind;
use crate::quantity::format::significant;
use crate::ui::field::loose::{self, LooseBox};
use crate::ui::part::amount::{joined, with_unit};
use crate::ui::part::caution;
use crate::ui::part::finding::mark;
use crate::ui::part::working::told;
use crate::ui::signal::memo;
use crate::ui::state::State;
use uom::si::f64::Mass;

/// The section.
pub fn sheet(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let words = &state.words.bench;
    let boxes = |fields: &'static [WeighField]| fields.iter().map(|field| number(state, *field)).collect::<View>();
    let pressed = memo(move || state.bench.open.with(|open| open.trial.sheet.thickness_way == ThicknessWay::Pressed));
    let dry = memo(move || state.bench.open.with(|open| open.trial.sheet.overage_of == OverageOf::OvenDry));
    let by_mass = memo(move || state.bench.open.with(|open| open.trial.sheet.spray_way == SprayWay::Mass));
    let fields = |parts: View| el("div").class("fields").child(parts);
    let mat = fields(many([
        boxes(&[WeighField::MatLength, WeighField::MatWidth, WeighField::Boards]),
        pick(
            state,
            "bench-thickness-way",
            page.thickness_way,
            (ThicknessWay::ALL, words.thickness_way),
            |trial| trial.sheet.thickness_way,
            |trial, way| trial.sheet.thickness_way = way,
        ),
        (move || {
            pressed.track();
            number(state, WeighField::Thickness)
        })
        .view(),
        boxes(&[WeighField::BoardDensity, WeighField::BoardMoisture]),
    ]));
    let moistures = fields(many([
        boxes(&[WeighField::FibreMoisture, WeighField::MatMoisture, WeighField::DryingLoss]),
        pick(
            state,
            "bench-water-place",
            page.water_place,
            (WaterPlace::ALL, words.water_place),
            |trial| trial.sheet.water_place,
            |trial, place| trial.sheet.water_place = place,
        ),
    ]));
    let overage = fields(many([
        pick(
            state,
            "bench-overage-of",
            page.overage_of,
            (OverageOf::ALL, words.overage_of),
            |trial| trial.sheet.overage_of,
            |trial, of| trial.sheet.overage_of = of,
        ),
        (move || {
            dry.track();
            number(state, WeighField::Overage)
        })
        .view(),
        pick(
            state,
            "bench-overage-on",
            page.overage_on,
            (OverageOn::ALL, words.overage_on),
            |trial| trial.sheet.overage_on,
            |trial, on| trial.sheet.overage_on = on,
        ),
        boxes(&[WeighField::WallLoss, WeighField::Capacity]),
    ]));
    let press = fields(many([
        number(state, WeighField::PressFactor),
        pick(
            state,
            "bench-spray-way",
            page.spray_way,
            (SprayWay::ALL, words.spray_way),
            |trial| trial.sheet.spray_way,
            |trial, way| trial.sheet.spray_way = way,
        ),
        (move || number(state, if by_mass.get() { WeighField::SprayMass } else { WeighField::SprayVolume })).view(),
    ]));
    let balances = boxes(&[
        WeighField::FibreStep,
        WeighField::LiquidStep,
        WeighField::FibreMinimum,
        WeighField::LiquidMinimum,
        WeighField::Tolerance,
    ]);
    el("div")
        .class("two")
        .child(
            el("div")
                .class("asked")
                .child(group(page.mat_and_board, mat))
                .child(group(page.moistures, moistures))
                .child(group(page.overage, overage))
                .child(group(page.balances, fields(balances)))
                .child(group(page.press_and_spray, press)),
        )
        .child(
            el("div")
                .class("given")
                .set("aria-live", "off")
                .child(move || desk.made.with(|made| results(desk, made)))
                .child(move || {
                    let recipe = desk.made.with(|made| made.recipe.clone());
                    let mat = work_out(&recipe).case.map(|case| case.solved.water.mat);
                    caution::list(cautions_at(Work::Bench, &recipe, mat))
                }),
        )
        .view()
}

/// A box of the sheet.
fn number(state: State, field: WeighField) -> View {
    let (words, limit) = state.bench.open.with_untracked(|open| {
        let sheet = &open.trial.sheet;
        ((state.words.bench.field)(field, sheet), sheet.limit(field))
    });
    loose::number(LooseBox {
        key: field.box_key(),
        words,
        named: None,
        kind: field.kind(),
        limit,
        entry: memo(move || state.bench.open.with(|open| open.trial.sheet.entry(field).clone())),
        put: Callback::new(move |entry| state.bench.edit(|trial| *trial.sheet.entry_mut(field) = entry)),
    })
}

fn results(desk: Desk, made: &Made) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let said = findings(desk, &made.findings, &made.recipe, &made.typed);
    let Some(sheet) = &made.sheet else {
        return many([el("p").class("empty").child(page.fill_in).view(), said]);
    };
    let one = |line: &crate::domain::trial::weigh_sheet::sheet::WeighLine| {
        let figures = [
            WeighLineFigure::Rounded,
            WeighLineFigure::Volume,
            WeighLineFigure::SprayTime,
            WeighLineFigure::Actual,
            WeighLineFigure::Deviation,
        ];
        let figures = figures.into_iter().filter_map(|part| figure(desk, sheet, WeighFigure::Line(line.id, part)));
        el("li")
            .class("dose")
            .set("data-line", line.id.key())
            .child(el("h4").child((state.words.bench.line)(line.id, &made.recipe)))
            .child(el("dl").class("figures").child(figures.collect::<View>()))
    };
    let plain = [
        WeighFigure::MatMoist,
        WeighFigure::Stops,
        WeighFigure::PressTime,
        WeighFigure::FinishedBoard,
        WeighFigure::RawBoard,
        WeighFigure::MatOvenDry,
        WeighFigure::Batch,
        WeighFigure::SprayTime,
        WeighFigure::ActualMoisture,
        WeighFigure::FibreFactor,
        WeighFigure::LiquidFactor,
        WeighFigure::MatArea,
    ];
    many([
        (made.old.then(|| stale(state))).view(),
        said,
        el("div")
            .class("made")
            .class_if("old", made.old)
            .child(group(
                page.order,
                many([
                    el("p").class("note").child(page.one_batch).view(),
                    el("ol").class("doses").child(sheet.lines.iter().map(one).collect::<View>()).view(),
                ]),
            ))
            .child(group(
                page.mats,
                el("dl")
                    .class("figures")
                    .child(plain.into_iter().filter_map(|plain| figure(desk, sheet, plain)).collect::<View>()),
            ))
            .view(),
    ])
}

/// That the sheet is of earlier entries.
pub fn stale(state: State) -> View {
    let page = &state.words.bench_page;
    el("p")
        .class("finding unusual")
        .child(mark(crate::domain::Grade::Unusual))
        .text(" ")
        .child(el("strong").child(page.stale))
        .text(" ")
        .child(page.stale_hint)
        .view()
}

/// A figure of the sheet; nothing where it has none.
fn figure(desk: Desk, sheet: &WeighSheet, figure: WeighFigure) -> Option<View> {
    let state = desk.state;
    let value = value(state, sheet, figure)?;
    let words = (state.words.bench.figure)(figure);
    let big = matches!(
        figure,
        WeighFigure::Line(_, WeighLineFigure::Rounded | WeighLineFigure::Volume) | WeighFigure::MatMoist
    );
    // Rounding is no formula; what was rounded has one.
    let from = match figure {
        WeighFigure::Line(id, WeighLineFigure::Rounded) => WeighFigure::Line(id, WeighLineFigure::Mass),
        other => other,
    };
    let rounded = from != figure;
    let worked: Worked = Some(Box::new(move || {
        desk.made.with(|made| {
            let working = working(from, made.sheet.as_ref()?)?;
            let named = |origin: &_| sheet_origin(state, *origin, &made.recipe, &made.typed);
            Some(many([
                (rounded.then(|| el("p").class("note").child(state.words.bench_page.rounded_note))).view(),
                told(state, &working, named),
            ]))
        })
    }));
    Some(cell(state, &figure.key(), (words.label, words.note), value, big, worked))
}

/// A figure of the sheet with its unit, a mass to weigh as the balance shows it.
pub fn value(state: State, sheet: &WeighSheet, figure: WeighFigure) -> Option<String> {
    let amount = sheet.figure(figure)?;
    Some(match figure {
        WeighFigure::Line(id, WeighLineFigure::Rounded) => {
            on_balance(state, sheet, id, Mass { value: amount.base, ..Mass::default() })
        }
        WeighFigure::Line(_, WeighLineFigure::Deviation) => signed(state, Kind::Share, amount.base),
        _ => with_unit(state, amount, None),
    })
}

/// A mass with the decimals of its balance.
pub fn on_balance(state: State, sheet: &WeighSheet, id: LineId, mass: Mass) -> String {
    let unit = state.unit(Kind::BenchMass);
    let number = unit.from_base(mass.value);
    let Some(step) = sheet.plan.balance(id).step else {
        return super::parts::shown(state, Kind::BenchMass, mass.value);
    };
    let step = unit.from_base(step.value);
    let whole = |decimals: &i32| {
        let scaled = step * 10.0_f64.powi(*decimals);
        scaled > 0.5 && (scaled - scaled.round()).abs() < 1e-6 * scaled
    };
    let decimals =
        (0..6).find(whole).unwrap_or_else(|| (0..6).find(|at| step * 10.0_f64.powi(*at) >= 1.0).unwrap_or(6));
    let before = if number.abs() < 1.0 { 0 } else { number.abs().log10().floor() as i32 + 1 };
    // Below one, zeros behind the mark are no significant digits.
    let zeros = if number.abs() < 1.0 && number != 0.0 { -(number.abs().log10().floor() as i32 + 1) } else { 0 };
    let digits = u8::try_from((before + decimals - zeros).max(1)).unwrap_or(12);
    joined(&significant(number, digits, state.units.get().mark), unit.symbol())
}
