//! What really runs, held against the recipe.

use super::log;
use super::parts::{choose, figure, findings, number, numbers, offered, setting, shown, table, table_row};
use super::sheet::pump_name;
use super::state::{solved, with_context};
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::domain::Grade;
use crate::domain::line::working::{dose_working, run_working, trim_working};
use crate::domain::line::{
    Check, LineField, LineFigure, LineFinding, LineWorking, PumpField, PumpId, ReadingWay, RunFigure, Running,
    RunningField, ToleranceField, read_running, run,
};
use crate::record::limits::LONGEST_NAME;
use crate::ui::part::figure::with_unit;
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
        numbers(state, RunningField::ALL[..2].iter().map(|part| LineField::Running(*part))),
        el("div")
            .class("readings")
            .child(each(
                keys,
                |(id, way, unit)| format!("{} {} {}", id.0, *way as u8, *unit as u8),
                move |(id, ..)| reading(state, id),
            ))
            .view(),
        numbers(state, RunningField::ALL[2..].iter().map(|part| LineField::Running(*part))),
        fold(page.tolerances, move || {
            numbers(state, ToleranceField::ALL.iter().map(|part| LineField::Tolerance(*part)))
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
                            state.line.edit(|book| book.remark = event_target_value(&event));
                        }),
                ),
            )
            .view(),
        el("p").child(button().class("primary").on_click(keep).child(page.keep_check)).view(),
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
                .child(number(state, LineField::Pump(id, PumpField::Reading), true)),
        )
        .view()
}

/// Whether what was read could be reckoned with, and what it says.
pub type Ran = (Option<Running>, Vec<LineFinding>);

/// What runs by the readings as they stand.
pub fn now(state: State) -> Ran {
    solved(state, |draft, case, line, book| {
        let (readings, said) = read_running(book);
        let running = readings
            .zip(line.tolerances)
            .and_then(|(readings, tolerances)| run(draft, case, line, &tolerances, &readings));
        (running, said)
    })
    .unwrap_or((None, Vec::new()))
}

fn result(state: State) -> View {
    let page = &state.words.line_page;
    let (running, said) = now(state);
    let said = findings(state, &said);
    let Some(running) = running else {
        return many([said, el("p").class("empty").child(page.no_running).view()]);
    };
    let culprits = running.culprits.iter().map(|culprit| {
        told(Grade::Unusual, with_context(state, |context| (state.words.line.culprit)(culprit, context)))
    });
    let all_within = running.checks.iter().all(Check::within);
    let within =
        all_within.then(|| el("p").class("finding note").child(mark(Grade::Note)).text(" ").child(page.all_within));
    many([
        said,
        findings(state, &running.findings),
        within.view(),
        culprits.collect(),
        checks(state, &running),
        trims(state, &running),
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

fn checks(state: State, running: &Running) -> View {
    let page = &state.words.line_page;
    let row = |check: &Check| {
        let verdict = if check.within() {
            page.within.view()
        } else {
            many([mark(Grade::Unusual), el("strong").child(page.outside).view()])
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
                with_unit(state, check.wanted, None).view(),
                el("span").set("data-check", check.figure.key()).child(deviation).view(),
                format!("± {tolerance}").view(),
                verdict,
            ],
        )
    };
    let heads = [page.figure, page.runs, page.wanted, page.deviation, page.tolerance, page.verdict];
    table(page.against, &heads, running.checks.iter().map(row).collect())
}

fn trims(state: State, running: &Running) -> View {
    let page = &state.words.line_page;
    let rows = running.trims.iter().map(|trim| {
        let at = |found: Option<crate::domain::line::Setting>| match found {
            Some(found) => setting(state, found, trim.unit),
            None => page.no_setting.to_owned(),
        };
        let change = match trim.factor {
            Some(factor) => super::sheet::signed(state, factor.value - 1.0),
            None => page.stands.to_owned(),
        };
        table_row(
            many([
                pump_name(state, trim.pump).view(),
                el("span").class("note").child((state.words.line.known)(trim.known)).view(),
            ]),
            [
                shown(state, LineFigure::RunFlow, trim.now.value).view(),
                shown(state, LineFigure::TrimWanted, trim.wanted.value).view(),
                change.view(),
                el("strong").child(at(trim.setting)).view(),
            ],
        )
    });
    let heads = [page.pump, page.runs, page.wanted, page.change_by, page.set_to];
    let former = running.former.map(|former| {
        let speed = former.line_speed.map(|speed| {
            let amount = crate::quantity::Amount::from_base(crate::quantity::Kind::LineSpeed, speed.value);
            format!(" {} {}", page.or_line_speed, with_unit(state, amount, None))
        });
        el("p")
            .child(page.former)
            .text(" ")
            .child(el("strong").child(super::sheet::signed(state, former.factor.value - 1.0)))
            .child(speed)
    });
    many([table(page.trim, &heads, rows.collect()), former.view()])
}

/// The figures behind, each with its working.
fn workings(state: State, running: &Running) -> View {
    use LineFigure as Fig;
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
                            super::sheet::signed(state, by.value),
                            dose_working(Fig::DoseDeviation, liquid, running, case),
                        )
                    })),
            )
        });
        let trims = running.trims.iter().map(|trim| {
            let scope = format!("trim.{}", trim.pump.0);
            trim_working(trim).map(|working| {
                let value = with_unit(state, working.result, None);
                el("div").class("of-liquid").child(el("h3").child(pump_name(state, trim.pump))).child(
                    el("dl").class("figures").child(figure(state, &scope, Fig::TrimFactor, value, Some(working))),
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
                .child(running.former.and_then(|former| one(Fig::FormerFactor, former.factor.value)))
                .view(),
            doses.collect(),
            trims.collect(),
        ]))
    });
    el("details").class("more").child(el("summary").child(state.words.line_page.how)).child(of_run.flatten()).view()
}
