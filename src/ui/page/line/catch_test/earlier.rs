//! The valid catch tests of a pump over time, each against the one before it.

use super::context::{CatchFigure, CatchSheet, OpenTest, flow_step, in_column, scatter};
use super::figure::{CatchValue, CatchWorking};
use crate::domain::Grade;
use crate::domain::line::{CalibrationId, TestedFlow};
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::components::{Fold, Mark};
use crate::ui::page::line::parts::setting;
use crate::ui::page::line::settings::context::parts;
use crate::ui::page::line::settings_text::{pump_name, signed};
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;

/// A test, as its row shows it.
#[derive(Debug, Clone, PartialEq)]
struct TestRow {
    id: CalibrationId,
    time: String,
    by: String,
    count: String,
    density: String,
    slope: String,
    intercept: String,
    scatter: String,
    flow: String,
    /// The test before it, the change since, and whether it is beyond the scatter.
    drift: Option<(CalibrationId, String, bool)>,
}

/// The fold.
#[component]
pub fn EarlierTests(
    /// The last test.
    open: OpenTest,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    provide_context(open);
    let found = Memo::new(move |_| sheet.tested_flows(state, open.pump));
    let at = Memo::new(move |_| {
        found.with(|found| found.as_ref().map(|(at, _)| setting(state, *at, open.unit))).unwrap_or_default()
    });
    let note = Memo::new(move |_| {
        let pump = pump_name(state, open.pump);
        if at.with(String::is_empty) {
            String::new()
        } else {
            t!("catch-earlier-note", pump = pump, setting = at.get())
        }
    });
    let rows = Memo::new(move |_| rows(state, sheet, open));
    let is_empty = Memo::new(move |_| rows.with(Vec::is_empty));
    let flow_unit = move || symbol_shown(state.unit(Kind::LiquidFlow));
    view! {
        <Fold id="earlier-tests" title=t!("catch-earlier-tests") note=note open=true>
            <Show when=move || !is_empty.get() fallback=|| view! { <p>{t!("catch-no-valid-test")}</p> }>
                <div class="scroll" tabindex="0" role="region" aria-label=t!("catch-earlier-tests")>
                    <table class="earlier" aria-label=t!("catch-earlier-tests")>
                        <thead><tr>
                            <th scope="col" class="l">{t!("catch-test")}</th>
                            <th scope="col" class="l wide">{t!("catch-by")}</th>
                            <th scope="col">{t!("catch-catches")}</th>
                            <th scope="col" class="wide">{t!("catch-density")} ", " {move || symbol_shown(state.unit(Kind::LiquidDensity))}</th>
                            <th scope="col">
                                {t!("catch-slope")}
                                <span class="wide">
                                    ", " {move || t!("catch-per-setting", flow = flow_unit(), setting = symbol_shown(open.unit.unit()))}
                                </span>
                            </th>
                            <th scope="col" class="wide">{t!("catch-intercept-head")} ", " {flow_unit}</th>
                            <th scope="col" class="wide">{t!("catch-scatter")} ", " {flow_unit}</th>
                            <th scope="col">{move || t!("catch-flow-at", unit = flow_unit(), setting = at.get())}</th>
                            <th scope="col">{t!("catch-drift-head")}</th>
                        </tr></thead>
                        <tbody><For each=move || rows.get() key=|row| format!("{row:?}") let:row><TestLine row=row/></For></tbody>
                    </table>
                </div>
            </Show>
            <CatchWorking belongs=|figure| matches!(figure, CatchFigure::Drift(_))/>
        </Fold>
    }
}

#[component]
fn TestLine(
    /// The test.
    row: TestRow,
) -> impl IntoView {
    let drift = row.drift.map(|(since, change, certain)| {
        let mark = certain.then(|| view! { <span class="flag"><Mark grade=Grade::Unusual/> <span class="out-of-sight">{t!("catch-beyond-scatter")}</span></span> " " });
        view! { {mark} <CatchValue figure=CatchFigure::Drift(since) text=Signal::stored((change, String::new()))/> }
    });
    view! {
        <tr data-test=row.id.0.to_string()>
            <th scope="row" class="l">{row.time}</th>
            <td class="l wide">{row.by}</td>
            <td>{row.count}</td>
            <td class="wide">{row.density}</td>
            <td>{row.slope}</td>
            <td class="wide">{row.intercept}</td>
            <td class="wide">{row.scatter}</td>
            <td>{row.flow}</td>
            <td>{drift}</td>
        </tr>
    }
}

fn rows(state: State, sheet: CatchSheet, open: OpenTest) -> Vec<TestRow> {
    let Some((_, flows)) = sheet.tested_flows(state, open.pump) else { return Vec::new() };
    let flow_unit = state.unit(Kind::LiquidFlow);
    let mark = state.units.get().mark;
    state.line.checked.with(|line| {
        let tests = line.pump(open.pump).map_or(&[][..], |pump| &pump.calibrations);
        // All told in the decimals of the test that scatters least.
        let step = tests.iter().filter_map(|test| flow_step(state, &test.curve.fit)).reduce(f64::min);
        let flow = |base: f64| in_column(state, Amount::from_base(Kind::LiquidFlow, base), step);
        let row = |each: &TestedFlow| {
            let test = tests.iter().find(|test| test.id == each.test)?;
            let fit = &test.curve.fit;
            let (by, all) = state.line.book(|book| {
                let draft = book.calibration(open.pump, test.id);
                draft.map_or_else(Default::default, |draft| {
                    (draft.by.clone(), draft.rows.iter().filter(|row| !row.is_blank()).count())
                })
            });
            let per_unit = flow_unit.from_base(fit.slope * open.unit.unit().to_base(1.0));
            let drift = each.drift.map(|drift| {
                let change = drift.change.map_or_else(|| t!("line-no-flow-then"), |change| signed(state, change.value));
                (drift.since, change, drift.certain == Some(true))
            });
            Some(TestRow {
                id: test.id,
                time: when(test.at),
                by,
                count: t!("catch-count-of", used = fit.count, all = all),
                density: parts(state, Amount::from_base(Kind::LiquidDensity, test.density.value)).0,
                slope: format::significant(per_unit, 3, mark),
                intercept: flow(fit.intercept),
                scatter: scatter(fit)
                    .or(fit.residual_sd.map(|_| 0.0))
                    .map_or_else(|| "–".to_owned(), |sd| format::significant(flow_unit.from_base(sd), 3, mark)),
                flow: flow(each.flow.value),
                drift,
            })
        };
        flows.iter().filter_map(row).collect()
    })
}
