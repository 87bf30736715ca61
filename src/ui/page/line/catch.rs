//! Catch tests: rows as they come, and the line through them.

use super::parts::{figure, findings, number, numbers, setting, shown, table, table_row};
use super::plot::{Mark, Plot, plot};
use super::settings_now::settings_now;
use super::settings_text::{share_explained, signed};
use crate::browser::element::{Part, View, button, each, el, many};
use crate::domain::line::working::{caught_working, drift_working, line_working};
use crate::domain::line::{
    CalibrationField, CalibrationId, Curve, LineField, LineFigure, PumpId, RowField, RowId, SettingUnit, drift, examine,
};
use crate::quantity::Kind;
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::text::trimmed_to;
use leptos::reactive::prelude::*;

/// The test that counts.
pub fn test(state: State, pump: PumpId, id: CalibrationId, unit: SettingUnit) -> View {
    let page = &state.words.line_page;
    let at = move || state.line.book(|book| book.calibration(pump, id).map(|test| when(test.at))).unwrap_or_default();
    let keys = move || {
        state
            .line
            .book(|book| book.calibration(pump, id).map(|test| test.rows.iter().map(|row| row.id).collect::<Vec<_>>()))
            .unwrap_or_default()
    };
    let add = move || {
        state.line.edit(|book| {
            if let Some(test) = book.pump_mut(pump).and_then(|pump| pump.calibration_mut(id)) {
                test.add_row(unit);
            }
        });
    };
    el("fieldset")
        .class("test")
        .child(el("legend").child(page.test_of).text(" ").child(at))
        .child(numbers(state, CalibrationField::ALL.iter().map(|part| LineField::Calibration(pump, id, *part))))
        .child(el("div").class("rows").child(each(
            keys,
            |row: &RowId| row.0.to_string(),
            move |row| test_row(state, (pump, id, row)),
        )))
        .child(el("p").child(button().on_click(add).child(page.add_row)))
        .child(el("div").class("results").set("aria-live", "polite").child(move || result(state, pump, id, unit)))
        .view()
}

fn test_row(state: State, (pump, id, row): (PumpId, CalibrationId, RowId)) -> View {
    let page = &state.words.line_page;
    let place = move || {
        state.line.book(|book| {
            let rows = book.calibration(pump, id).map_or(&[][..], |test| &test.rows);
            rows.iter().position(|other| other.id == row).map_or(0, |at| at + 1)
        })
    };
    let label = move || format!("{} {}", page.row, place());
    let aside = move || state.line.book(|book| book.row(pump, id, row).is_some_and(|row| row.excluded));
    let flip = move || {
        state.line.edit(|book| {
            let test = book.pump_mut(pump).and_then(|pump| pump.calibration_mut(id));
            if let Some(row) = test.and_then(|test| test.row_mut(row)) {
                row.excluded = !row.excluded;
            }
        });
    };
    let take_away = move || {
        let removed = state.line.change(|record| {
            let test = record.book.pump_mut(pump).and_then(|pump| pump.calibration_mut(id));
            if let Some(test) = test {
                test.rows.retain(|other| other.id != row);
            }
        });
        state.tell_undo(page.row_removed, move || state.line.take_back(&removed));
    };
    let remove_label = move || format!("{} {}", state.words.tools.remove, label());
    el("div")
        .set("role", "group")
        .set("aria-label", label)
        .class_if("aside-row", aside)
        .child(el("p").class("row-number").child(label))
        .child(
            el("div").class("fields").child(
                RowField::ALL
                    .iter()
                    .map(|part| number(state, LineField::Row(pump, id, row, *part), false))
                    .collect::<View>(),
            ),
        )
        .child(
            el("div")
                .class("actions")
                .child(
                    button()
                        .set("aria-pressed", move || if aside() { "true" } else { "false" })
                        .on_click(flip)
                        .child(page.excluded),
                )
                .child(button().set("aria-label", remove_label).on_click(take_away).child(state.words.tools.remove)),
        )
        .view()
}

/// The line through the rows so far, with its plot.
fn result(state: State, pump: PumpId, id: CalibrationId, unit: SettingUnit) -> View {
    use LineFigure as Fig;
    let page = &state.words.line_page;
    let Some(examined) = state.line.book(|book| examine(book, pump, id)) else { return View::Nothing };
    let Some(fit) = examined.fit else {
        return el("p").class("empty").child(page.no_line_yet).view();
    };
    let scope = format!("test.{}", pump.0);
    let curve = Curve::as_caught(fit);
    let wanted = settings_now(state)
        .settings
        .and_then(|sheet| sheet.rows.into_iter().find(|row| row.pump == pump))
        .and_then(|row| row.setting.map(|found| found.setting));
    let amount = |of: Fig, base: f64, working| figure(state, &scope, of, shown(state, of, base), working);
    let r_squared = fit.r_squared.map(|r_squared| {
        super::parts::cell(
            state,
            format!("{scope}.r_squared"),
            ((state.words.line.r_squared)(r_squared), ""),
            share_explained(state, r_squared),
            None,
        )
    });
    let at_setting = wanted.and_then(|at| {
        let working = line_working(Fig::Prediction, &curve, unit, at)?;
        let value = format!(
            "± {} {} {}",
            crate::ui::part::amount::with_unit(state, working.result, None),
            page.at_setting,
            setting(state, at, unit)
        );
        Some(figure(state, &scope, Fig::Prediction, value, Some(working)))
    });
    let flow_unit = state.unit(Kind::LiquidFlow);
    let mark = state.units.with(|units| units.mark);
    let x = |of: f64| unit.unit().from_base(of);
    let y = |of: f64| flow_unit.from_base(of);
    let points = examined.rows.iter().map(|row| Mark {
        x: x(row.setting.0),
        y: y(row.flow().value),
        odd: examined.suspects.iter().any(|suspect| suspect.row == row.row),
    });
    let (low, high) = (fit.tested.low, fit.tested.high);
    let caught = examined.rows.iter().map(|row| {
        let number = state.line.book(|book| {
            let rows = book.calibration(pump, id).map_or(&[][..], |test| &test.rows);
            rows.iter().position(|other| other.id == row.row).map_or(0, |at| at + 1)
        });
        let scope = format!("{scope}.row.{}", row.row.0);
        let working = caught_working(Fig::CaughtFlow, row, pump, id);
        let value = format!("{}: {}", number, shown(state, Fig::CaughtFlow, row.flow().value));
        figure(state, &scope, Fig::CaughtFlow, value, working)
    });
    many([
        findings(
            state,
            &examined.findings.iter().filter(|f| f.grade == crate::domain::Grade::Stop).cloned().collect::<Vec<_>>(),
        ),
        el("dl")
            .class("figures")
            .child(amount(
                Fig::Slope(unit),
                curve.slope().value,
                line_working(Fig::Slope(unit), &curve, unit, crate::domain::line::Setting(low)),
            ))
            .child(amount(
                Fig::Intercept,
                curve.intercept().value,
                line_working(Fig::Intercept, &curve, unit, crate::domain::line::Setting(low)),
            ))
            .child(curve.residual_sd().map(|sd| amount(Fig::ResidualSd, sd.value, None)))
            .child(r_squared)
            .child(at_setting)
            .view(),
        plot(
            mark,
            &Plot {
                label: format!("{}: {} {}", page.plot_of_test, trimmed_to(fit.count as f64, 3, mark), page.rows_caught),
                x_name: format!("{} ({})", page.setting, unit.unit().symbol()),
                y_name: format!("{} ({})", page.flow, flow_unit.symbol()),
                points: points.collect(),
                lines: vec![((x(low), y(fit.at(low))), (x(high), y(fit.at(high))), "fitted")],
                joined: false,
            },
        )
        .view(),
        el("dl").class("figures").child(caught.collect::<View>()).view(),
    ])
}

/// The tests before the last one, with how far the pump has moved since each at today's setting.
pub fn earlier(state: State, pump: PumpId) -> View {
    use LineFigure as Fig;
    let page = &state.words.line_page;
    (move || {
        let wanted = settings_now(state).settings.and_then(|sheet| sheet.rows.into_iter().find(|row| row.pump == pump));
        let rows = state.line.checked.with(|line| {
            let checked = line.pump(pump)?;
            let unit = checked.unit;
            let drifts = wanted
                .as_ref()
                .and_then(|row| Some(drift(checked, row.setting?.setting, row.density)))
                .unwrap_or_default();
            let (_, old) = checked.calibrations.split_last()?;
            let one = |test: &crate::domain::line::pumps::catch_test::Calibration| {
                let moved = drifts.iter().find(|drift| drift.since == test.id);
                let moved = moved.map(|drift| {
                    let scope = format!("pump.{}.since.{}", pump.0, test.id.0);
                    let change = drift.change.map_or_else(|| page.no_flow_then.to_owned(), |c| signed(state, c.value));
                    el("dl").child(figure(state, &scope, Fig::Drift, change, drift_working(drift))).view()
                });
                table_row(
                    when(test.at).view(),
                    [
                        shown(state, Fig::DensityMeasured, test.density.value).view(),
                        shown(state, Fig::Slope(unit), test.curve.slope().value).view(),
                        shown(state, Fig::Intercept, test.curve.intercept().value).view(),
                        moved.unwrap_or_else(|| page.no_setting.view()),
                    ],
                )
            };
            (!old.is_empty()).then(|| old.iter().rev().map(one).collect::<View>())
        });
        match rows {
            Some(rows) => {
                table(page.old_tests, &[page.date, page.density, page.slope, page.intercept, page.drift], rows)
            }
            None => el("p").class("empty").child(page.no_old_tests).view(),
        }
    })
    .view()
}
