//! A figure of the tab, and its working.

use super::context::{CatchFigure, CatchSheet, OpenTest};
use crate::domain::line::working::{caught_working, drift_working, line_working, pump_working, residual_working};
use crate::domain::line::{LineFigure, LinePlace, LineWorking, PumpId, Setting, SettingUnit};
use crate::ui::components::{FigureValue, Rank, WorkingFrame, opens, working_text};
use crate::ui::page::line::context::with_context;
use crate::ui::page::line::settings::figure::line_origin;
use crate::ui::page::line::settings_text::pump_name;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// `data-figure` on the page.
fn key(pump: PumpId, figure: CatchFigure) -> String {
    match figure {
        CatchFigure::SetTo => format!("pump.{}.setting", pump.0),
        CatchFigure::Line(figure) => format!("test.{}.{}", pump.0, figure.key()),
        CatchFigure::Catch(row, figure) => format!("test.{}.row.{}.{}", pump.0, row.0, figure.key()),
        CatchFigure::Drift(since) => format!("pump.{}.since.{}.drift", pump.0, since.0),
    }
}

/// Whose figure, and which.
fn name(state: State, open: OpenTest, figure: CatchFigure) -> String {
    let label = |figure: LineFigure| words::line::figure(figure).label;
    match figure {
        CatchFigure::SetTo => format!("{}: {}", pump_name(state, open.pump), label(LineFigure::Setting(open.unit))),
        CatchFigure::Line(figure) => format!("{}: {}", pump_name(state, open.pump), label(figure)),
        CatchFigure::Catch(row, figure) => {
            let place = LinePlace::Row(open.pump, open.test, row);
            let place = with_context(state, |context| words::line::place(place, context));
            format!("{place}: {}", label(figure))
        }
        CatchFigure::Drift(_) => format!("{}: {}", pump_name(state, open.pump), label(LineFigure::Drift)),
    }
}

/// The figure; a press opens its working.
#[component]
pub fn CatchValue(
    /// The figure.
    figure: CatchFigure,
    /// Number and unit.
    #[prop(into)]
    text: Signal<(String, String)>,
    /// How large.
    #[prop(optional)]
    rank: Rank,
    /// Whether the head of its column has the unit.
    #[prop(optional)]
    unit_in_head: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    let test = expect_context::<OpenTest>();
    let open = sheet.open_figure;
    let name = Memo::new(move |_| name(state, test, figure));
    view! {
        <FigureValue
            key=key(test.pump, figure)
            controls=format!("working-{}", key(test.pump, figure))
            name=name
            text=text
            rank=rank
            unit_in_head=unit_in_head
            open=Signal::derive(move || open.get() == Some(figure))
            on_press=opens(open, figure)
        />
    }
}

/// The working of the open figure, where it is among those that `belongs` picks.
#[component]
pub fn CatchWorking(
    /// Whether a figure is of this section.
    belongs: fn(CatchFigure) -> bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    let test = expect_context::<OpenTest>();
    move || {
        sheet.open_figure.get().filter(|figure| belongs(*figure)).map(|figure| {
            let id = format!("working-{}", key(test.pump, figure));
            let told = move || {
                let working = working(state, sheet, test, figure)?;
                Some(working_text(state, &working, move |origin| line_origin(state, test.pump, *origin)))
            };
            view! {
                <WorkingFrame id=id name=name(state, test, figure) on_close=Callback::new(move |()| sheet.open_figure.set(None))>
                    {told}
                </WorkingFrame>
            }
        })
    }
}

/// How a figure was computed.
fn working(state: State, sheet: CatchSheet, test: OpenTest, figure: CatchFigure) -> Option<LineWorking> {
    match figure {
        CatchFigure::SetTo => {
            sheet.now.with(|now| pump_working(LineFigure::Setting(test.unit), now.row(test.pump)?, now.case.as_ref()?))
        }
        CatchFigure::Line(figure) => line_figure(figure, sheet, test),
        CatchFigure::Catch(row, figure) => test.examined.with(|examined| {
            let caught = examined.as_ref()?.caught(row)?;
            match figure {
                LineFigure::CaughtResidual => {
                    Some(residual_working(caught, &test.curve()?, test.unit, (test.pump, test.test)))
                }
                _ => caught_working(figure, caught, test.pump, test.test),
            }
        }),
        CatchFigure::Drift(since) => drift_working(&sheet.drift_since(state, test.pump, since)?),
    }
}

fn line_figure(figure: LineFigure, sheet: CatchSheet, test: OpenTest) -> Option<LineWorking> {
    // Only the prediction interval asks for a setting.
    let at = sheet.row(test.pump).and_then(|row| row.setting).map_or(Setting(0.0), |found| found.setting);
    let unit: SettingUnit = test.unit;
    line_working(figure, &test.curve()?, unit, at)
}
