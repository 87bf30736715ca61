//! The line check: readings against the recipe, and what to correct.

use super::context::{solved, with_context};
use super::log;
use super::parts::{choose, figure, findings, number, numbers, offered, setting, shown, table, table_row};
use super::present_check::present_check;
use super::settings_text::pump_name;
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::domain::line::working::{correction_working, dose_working, former_working, run_working};
use crate::domain::line::{
    Check, LineCheck, LineField, LineFigure, LineVerdict, LineWorking, PumpField, PumpId, ReadOf, ReadingWay,
    RunFigure, RunningField, ToleranceField, UncertaintyField, Verdict, read_running,
};
use crate::domain::{Grade, Work, cautions_at};
use crate::record::limits::LONGEST_NAME;
use crate::ui::part::amount::with_unit;
use crate::ui::part::caution;
use crate::ui::part::finding::{mark, told};
use crate::ui::part::fold::fold;
use crate::ui::state::State;

/// The section.
pub fn running(state: State) -> View {
    let page = &state.words.line_page;
    let keys = move || {
        state.line.book(|book| book.pumps.iter().map(|pump| (pump.id, pump.reading_way, pump.unit)).collect::<Vec<_>>())
    };
    let keep = move || log::keep_check(state);
    many([
        el("p").child(page.running_hint).view(),
        numbers(state, readings(ReadOf::Fibre)),
        el("div")
            .class("readings")
            .child(each(
                keys,
                |(id, way, unit)| format!("{} {} {}", id.0, *way as u8, *unit as u8),
                move |(id, ..)| reading(state, id),
            ))
            .view(),
        numbers(state, readings(ReadOf::Line)),
        fold(page.tolerances, move || {
            many([
                numbers(state, ToleranceField::ALL.iter().map(|part| LineField::Tolerance(*part))),
                numbers(state, UncertaintyField::ALL.iter().map(|part| LineField::Uncertainty(*part))),
            ])
        }),
        el("div").class("results").set("aria-live", "polite").child(move || result(state)).view(),
        el("div")
            .class("field wide")
            .child(el("label").set("for", "check-remark").child(page.remark))
            .child(
                el("div").class("box").child(
                    el("input")
                        .set("id", "check-remark")
                        .set("type", "text")
                        .set("maxlength", LONGEST_NAME.to_string())
                        .set("autocomplete", "off")
                        .property("value", move || state.line.book(|book| book.remark.clone()))
                        .on("input", move |event| {
                            state.line.type_into("remark".to_owned(), |book| book.remark = event_target_value(&event));
                        }),
                ),
            )
            .view(),
        el("p")
            .child(button().class("primary").on_click(keep).child(page.keep_check))
            .child(button().on_click(move || log::export_check(state)).child(page.export_check))
            .view(),
        log::log(state),
    ])
}

fn reading(state: State, id: PumpId) -> View {
    let name = move || pump_name(state, id);
    el("div")
        .set("role", "group")
        .set("aria-label", name)
        .child(el("h3").child(name))
        .child(
            el("div")
                .class("fields")
                .child(choose(
                    state,
                    format!("reading-way-{}", id.0),
                    state.words.line_page.read_by,
                    offered(ReadingWay::ALL, state.words.line.reading_way),
                    move |book| {
                        let way = book.pump(id).map(|pump| pump.reading_way);
                        ReadingWay::ALL.iter().position(|other| Some(*other) == way).unwrap_or(0)
                    },
                    move |book, at| {
                        if let Some((pump, way)) = book.pump_mut(id).zip(ReadingWay::ALL.get(at)) {
                            pump.set_reading_way(*way);
                        }
                    },
                ))
                .child(number(state, LineField::Pump(id, PumpField::Reading), true))
                .child(number(state, LineField::Pump(id, PumpField::PresentSetting), true)),
        )
        .view()
}

fn result(state: State) -> View {
    let page = &state.words.line_page;
    let (running, said) = present_check(state);
    let said = findings(state, &said);
    let Some(running) = running else {
        return many([said, el("p").class("empty").child(page.no_running).view()]);
    };
    let measured = Some(running.actual.sample_moisture.unwrap_or(running.actual.mat_moisture));
    let read: Vec<Verdict> =
        running.checks.iter().map(Check::verdict).filter(|verdict| *verdict != Verdict::NotRead).collect();
    let all_within = !read.is_empty() && read.iter().all(|verdict| *verdict == Verdict::Within);
    let within =
        all_within.then(|| el("p").class("finding note").child(mark(Grade::Note)).text(" ").child(page.all_within));
    let verdict = running.reconciliation.as_ref().map(|found| {
        let grade = match found.verdict {
            LineVerdict::Consistent | LineVerdict::NothingChecked => Grade::Note,
            LineVerdict::Distrust(_) | LineVerdict::Unexplained => Grade::Unusual,
        };
        told(grade, with_context(state, |context| (state.words.line.verdict)(found, context)))
    });
    let split = running
        .density_split
        .map(|split| told(Grade::Note, with_context(state, |context| (state.words.line.split)(&split, context))));
    many([
        said,
        findings(state, &running.findings),
        verdict.view(),
        split.view(),
        within.view(),
        caution::list(state.draft.with(|draft| cautions_at(Work::LineCheck, draft, measured))).view(),
        checks(state, &running),
        corrections(state, &running),
        workings(state, &running),
    ])
}

/// A figure's name, a dose with its liquid's.
pub fn check_name(state: State, figure: RunFigure) -> String {
    let label = (state.words.line.run_figure)(figure).label;
    match figure {
        RunFigure::Dose(id) => format!("{label}, {}", state.liquid_name(id)),
        _ => label.to_owned(),
    }
}

fn checks(state: State, running: &LineCheck) -> View {
    let page = &state.words.line_page;
    let row = |check: &Check| {
        let verdict = match check.verdict() {
            Verdict::Within => page.within.view(),
            Verdict::Outside => many([mark(Grade::Unusual), el("strong").child(page.outside).view()]),
            Verdict::NotRead => page.not_read.view(),
        };
        let deviation = with_context(state, |context| (state.words.line.deviation)(check, context));
        let tolerance = with_unit(
            state,
            crate::quantity::Amount::from_base(crate::quantity::Kind::Share, check.tolerance.value),
            None,
        );
        let name = check_name(state, check.figure);
        let note = (state.words.line.run_figure)(check.figure).note;
        table_row(
            many([name.view(), el("span").class("note").child(note).view()]),
            [
                with_unit(state, check.actual, None).view(),
                with_unit(state, check.target, None).view(),
                el("span").set("data-check", check.figure.key()).child(deviation).view(),
                format!("± {tolerance}").view(),
                verdict,
            ],
        )
    };
    let heads = [page.figure, page.runs, page.target, page.deviation, page.tolerance, page.verdict];
    table(page.against, &heads, running.checks.iter().map(row).collect())
}

fn corrections(state: State, running: &LineCheck) -> View {
    let page = &state.words.line_page;
    let rows = running.corrections.iter().map(|correction| {
        let change = match correction.factor {
            Some(factor) => super::settings_text::signed(state, factor.value - 1.0),
            None => page.pump_off.to_owned(),
        };
        let now = correction.setting_now.map(|now| setting(state, now, correction.unit)).unwrap_or_default();
        let action = with_context(state, |context| (state.words.line.action)(correction, context));
        table_row(
            many([
                pump_name(state, correction.pump).view(),
                el("span").class("note").child((state.words.line.source)(correction.source)).view(),
            ]),
            [
                shown(state, LineFigure::RunFlow, correction.now.value).view(),
                shown(state, LineFigure::CorrectionTarget, correction.target.value).view(),
                change.view(),
                now.view(),
                el("strong").child(action).view(),
            ],
        )
    });
    let heads = [page.pump, page.runs, page.target, page.change_by, page.setting_now, page.action];
    let speed = |speed: uom::si::f64::Velocity| {
        with_unit(state, crate::quantity::Amount::from_base(crate::quantity::Kind::LineSpeed, speed.value), None)
    };
    let former = running.former.map(|former| {
        let speeds = former.line_speed_now.zip(former.line_speed);
        let speeds = speeds.map(|(now, then)| format!(" {} {} → {}", page.or_line_speed, speed(now), speed(then)));
        el("p")
            .child(page.former)
            .text(" ")
            .child(el("strong").child(super::settings_text::signed(state, former.factor.value - 1.0)))
            .child(speeds)
    });
    many([table(page.correction, &heads, rows.collect()), former.view()])
}

/// The figures behind, each with its working.
fn workings(state: State, check: &LineCheck) -> View {
    use LineFigure as Fig;
    let running = &check.actual;
    let of_run = solved(state, |_, case, _, book| {
        let readings = read_running(book).0?;
        let one = |of: Fig, base: f64| {
            let working = run_working(of, running, &readings, case);
            working.map(|working| figure(state, "run", of, shown(state, of, base), Some(working)))
        };
        let doses = running.liquids.iter().map(|liquid| {
            let scope = format!("run.{}", liquid.id.0);
            let named = |of: Fig, value: String, working: Option<LineWorking>| {
                working.map(|working| figure(state, &scope, of, value, Some(working)))
            };
            el("div").class("of-liquid").child(el("h3").child(state.liquid_name(liquid.id))).child(
                el("dl")
                    .class("figures")
                    .child(named(
                        Fig::RunDose,
                        shown(state, Fig::RunDose, liquid.on_fibre.value),
                        dose_working(Fig::RunDose, liquid, running, case),
                    ))
                    .child(liquid.deviation.and_then(|by| {
                        named(
                            Fig::DoseDeviation,
                            super::settings_text::signed(state, by.value),
                            dose_working(Fig::DoseDeviation, liquid, running, case),
                        )
                    })),
            )
        });
        let corrections = check.corrections.iter().map(|correction| {
            let scope = format!("correction.{}", correction.pump.0);
            correction_working(correction).map(|working| {
                let value = with_unit(state, working.result, None);
                el("div").class("of-liquid").child(el("h3").child(pump_name(state, correction.pump))).child(
                    el("dl").class("figures").child(figure(state, &scope, Fig::CorrectionFactor, value, Some(working))),
                )
            })
        });
        Some(many([
            el("dl")
                .class("figures")
                .child(one(Fig::RunFibre, running.fibre.value))
                .child(one(Fig::RunFurnishMoisture, running.furnish_moisture.dry_basis().value))
                .child(one(Fig::RunMatMoisture, running.mat_moisture.dry_basis().value))
                .child(running.mat_od.and_then(|od| one(Fig::RunMat, od.value)))
                .child(running.density.and_then(|density| one(Fig::RunDensity, density.value)))
                .child(check.former.and_then(|former| {
                    let working = former_working(&former, case)?;
                    let value = shown(state, Fig::FormerFactor, former.factor.value);
                    Some(figure(state, "run", Fig::FormerFactor, value, Some(working)))
                }))
                .view(),
            doses.collect(),
            corrections.collect(),
        ]))
    });
    el("details").class("more").child(el("summary").child(state.words.line_page.how)).child(of_run.flatten()).view()
}

fn readings(of: ReadOf) -> impl Iterator<Item = LineField> {
    RunningField::ALL.iter().filter(move |part| part.place() == of).map(|part| LineField::Running(*part))
}
