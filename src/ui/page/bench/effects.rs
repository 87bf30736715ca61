//! What the factors of a series did to a property: effects with intervals, the analysis of variance, and plain words.

use super::desk::Desk;
use super::parts::{findings, group, numbered, pick, shown, signed, table};
use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::Callback;
use crate::domain::trial::series::effects::{Effects, ModelWay, RunResult, TermResult, effects as analyse};
use crate::domain::trial::{Property, Series};
use crate::quantity::Kind;
use crate::quantity::format::{DecimalMark, significant};
use crate::ui::chart::drawing::{Anchor, Drawing};
use crate::ui::chart::scale::LinearScale;
use crate::ui::field::choice;
use crate::ui::signal::{RwSignal, memo};
use crate::ui::text::unit_shown;
use leptos::reactive::prelude::*;
use std::fmt::Write as _;

/// The section.
pub fn effects(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let chosen = RwSignal::new(0_usize);
    let properties = memo(move || {
        desk.tested.with(|tested| tested.results.iter().map(|result| result.property).collect::<Vec<Property>>())
    });
    let choices = memo(move || {
        properties.with(|all| numbered(all.iter().map(|own| (state.words.bench.property)(*own).label.to_owned())))
    });
    let now = memo(move || chosen.get().min(properties.with(Vec::len).saturating_sub(1)).to_string());
    let choose = Callback::new(move |at: String| chosen.set(at.parse().unwrap_or(0)));
    let nothing = memo(move || properties.with(Vec::is_empty) || desk.planned.with(|planned| planned.series.is_none()));
    let told = move || {
        if nothing.get() {
            return el("p").class("empty").child(page.no_effects).view();
        }
        let Some(property) = properties.with(|all| now.get().parse().ok().and_then(|at: usize| all.get(at).copied()))
        else {
            return View::Nothing;
        };
        let model = desk.state.bench.open.with(|open| open.trial.model);
        desk.planned.with(|planned| planned.series.as_ref().map(|series| results(desk, series, property, model)).view())
    };
    el("div")
        .class("effects")
        .child(el("p").child(page.effects_hint))
        .child(
            el("div")
                .class("fields")
                .set("hidden", move || nothing.get())
                .child(choice::labelled(
                    "effects-property".to_owned(),
                    page.property.to_owned().into(),
                    choices,
                    now,
                    choose,
                ))
                .child(pick(
                    state,
                    "effects-model",
                    page.model,
                    (ModelWay::ALL, state.words.bench.model_way),
                    |trial| trial.model,
                    |trial, model| trial.model = model,
                )),
        )
        .child(told)
        .view()
}

fn results(desk: Desk, series: &Series, property: Property, model: ModelWay) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let outcomes: Vec<RunResult> = desk
        .tested
        .with(|tested| tested.boards.iter().filter_map(|board| Some((board.run?, board.mean(property)?))).collect());
    let outcome = analyse(property, series, &outcomes, model);
    let said = desk.basis.with(|basis| findings(desk, &outcome.findings, &basis.recipe, &basis.sheet));
    let Some(effects) = &outcome.effects else { return said };
    let words = desk.with_context(|context| (state.words.bench.sayings)(effects, series, context));
    let name = |term: &TermResult| {
        desk.with_context(|context| (state.words.bench.term)(term.term, &series.factors, context.draft))
    };
    let sayings = words.into_iter().map(|words| el("li").child(words)).collect::<View>();
    many([
        el("ul").class("sayings").child(sayings).view(),
        said,
        group(
            page.interval,
            many([
                drawn(desk, effects, name).map(|drawing| el("div").class("drawing").markup(&drawing.inline())).view(),
                effect_table(desk, effects, name),
            ]),
        ),
        group(page.anova, anova(desk, effects, name)),
        group(page.levels, levels(desk, series, effects)),
    ])
}

fn plus_minus(desk: Desk, kind: Kind, value: f64, half: Option<f64>) -> String {
    let value = signed(desk.state, kind, value);
    half.map_or_else(|| value.clone(), |half| format!("{value} ± {}", shown(desk.state, kind, half)))
}

fn effect_table(desk: Desk, effects: &Effects, name: impl Fn(&TermResult) -> String) -> View {
    let page = &desk.state.words.bench_page;
    let kind = effects.property.kind();
    let row = |term: &TermResult| {
        let effect = term.effect?;
        let aliases: Vec<String> = term.aliases.iter().map(|word| word.to_text()).collect();
        Some(vec![name(term), plus_minus(desk, kind, effect.value, effect.half_width), aliases.join(", ")])
    };
    let rows = effects.ranking().into_iter().filter_map(row).collect();
    table(page.interval, &[page.term, page.interval, page.same_as].map(str::to_owned), rows)
}

fn levels(desk: Desk, series: &Series, effects: &Effects) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let kind = effects.property.kind();
    let row = |level: &crate::domain::trial::series::effects::LevelEffect| {
        let factor = series.factors.get(level.factor)?;
        let (name, value) = desk.with_context(|context| {
            let words = &state.words.bench;
            let value = factor.levels.get(usize::from(level.level)).map(|own| (words.level)(own, context));
            ((words.factor)(factor.of, &factor.own, context.draft), value)
        });
        let above = plus_minus(desk, kind, level.above.value, level.above.half_width);
        Some(vec![format!("{name}, {}", value?), shown(state, kind, level.mean), above])
    };
    let rows = effects.levels.iter().filter_map(row).collect();
    table(page.levels, &[page.level, page.mean, page.above_mean].map(str::to_owned), rows)
}

fn anova(desk: Desk, effects: &Effects, name: impl Fn(&TermResult) -> String) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let mark: DecimalMark = state.units.get().mark;
    // Squares in the square of the unit shown.
    let unit = state.unit(effects.property.kind());
    let scale = (unit.from_base(1.0) - unit.from_base(0.0)).powi(2);
    let number = |value: f64| significant(value, 4, mark);
    let share = |value: f64| shown(state, Kind::Share, value);
    let dash = || state.words.tools.no_figure.to_owned();
    let line = |name: String, freedom: u32, squares: f64, f: Option<f64>, p: Option<f64>, of: f64| {
        let mean = (freedom > 0).then(|| number(squares * scale / f64::from(freedom)));
        vec![
            name,
            freedom.to_string(),
            number(squares * scale),
            mean.unwrap_or_else(dash),
            f.map_or_else(dash, number),
            p.map_or_else(dash, |p| {
                if p < 1e-4 { format!("< {}", significant(1e-4, 1, mark)) } else { significant(p, 3, mark) }
            }),
            share(of),
        ]
    };
    let mut rows: Vec<Vec<String>> = effects
        .terms
        .iter()
        .map(|term| line(name(term), term.freedom, term.squares, term.f, term.p, term.share))
        .collect();
    let rest = effects.residual_squares / effects.total_squares;
    rows.push(line(page.residual.to_owned(), effects.residual_freedom, effects.residual_squares, None, None, rest));
    let all = u32::try_from(effects.runs.saturating_sub(1)).unwrap_or(u32::MAX);
    rows.push(line(page.total.to_owned(), all, effects.total_squares, None, None, 1.0));
    let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
    let squared = |label: &str| if symbol.is_empty() { label.to_owned() } else { format!("{label}, ({symbol})²") };
    let head = [
        page.term.to_owned(),
        page.freedom.to_owned(),
        squared(page.squares),
        squared(page.mean_square),
        page.f.to_owned(),
        page.p.to_owned(),
        page.share.to_owned(),
    ];
    many([
        table(page.anova, &head, rows),
        el("p").child(page.explained).text(" ").child(el("strong").child(share(effects.explained()))).view(),
    ])
}

/// Effects as dots with bars for their intervals, the largest first.
fn drawn(desk: Desk, effects: &Effects, name: impl Fn(&TermResult) -> String) -> Option<Drawing> {
    let state = desk.state;
    let unit = state.unit(effects.property.kind());
    let zero = unit.from_base(0.0);
    let shown = |base: f64| unit.from_base(base) - zero;
    let bars: Vec<(String, f64, f64)> = effects
        .ranking()
        .into_iter()
        .filter_map(|term| {
            let effect = term.effect?;
            Some((name(term), shown(effect.value), shown(effect.half_width.unwrap_or(0.0))))
        })
        .collect();
    let ends = bars.iter().flat_map(|(_, value, half)| [value - half, value + half]).chain([0.0]);
    let (x, ticks) = LinearScale::around(ends, (16.0, 424.0), 5)?;
    let height = 44.0 * bars.len() as f64 + 48.0;
    let mut drawing = Drawing::new(440.0, height, state.words.bench_page.interval);
    let floor = height - 40.0;
    for tick in ticks.iter() {
        let at = x.place(tick);
        let tone = if tick == 0.0 { "" } else { " opacity=\"0.25\"" };
        drawing.path(&format!("M{at:.1},8V{floor:.1}"), 1.0, tone);
        drawing.text((at, floor + 16.0), Anchor::Middle, 12, &ticks.label(tick, state.units.get().mark));
    }
    let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
    drawing.text((424.0, floor + 34.0), Anchor::End, 12, &symbol);
    for (at, (name, value, half)) in bars.iter().enumerate() {
        let y = 44.0 * at as f64 + 22.0;
        drawing.text((16.0, y), Anchor::Start, 13, name);
        let (from, to, middle) = (x.place(value - half), x.place(value + half), x.place(*value));
        drawing.path(
            &format!("M{from:.1},{0:.1}H{to:.1}M{from:.1},{1:.1}v12M{to:.1},{1:.1}v12", y + 14.0, y + 8.0),
            2.0,
            "",
        );
        let mut dot = String::new();
        let _ = write!(dot, "<circle cx=\"{middle:.1}\" cy=\"{:.1}\" r=\"5\" fill=\"currentColor\"/>", y + 14.0);
        drawing.put(&dot);
    }
    Some(drawing)
}
