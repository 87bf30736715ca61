//! The drawing of a catch test. A phone shows it on demand.

use super::context::{CatchSheet, OpenTest};
use super::figures::setting_words;
use crate::browser::clock;
use crate::domain::line::{Caught, Curve, Examined, LineFigure, RowId, Setting};
use crate::quantity::Kind;
use crate::t;
use crate::ui::chart::catch_plot::{
    CatchData, CatchMark, CatchPlot, CatchPoint, DrawnCatch, DrawnSetting, HEIGHT, TextPlace, catch_plot,
};
use crate::ui::chart::frame::ChartFrame;
use crate::ui::chart::panel::LineSegment;
use crate::ui::components::Measured;
use crate::ui::page::line::parts::shown;
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;

/// Into how many parts the band is cut.
const BAND_PARTS: u8 = 14;

/// The drawing, and the button that shows it where there is no room beside the grid.
#[component]
pub fn CatchChart() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CatchSheet>();
    let open = expect_context::<OpenTest>();
    let is_open = RwSignal::new(false);
    let drawn = Memo::new(move |_| data(state, sheet, open));
    let has_catch = Memo::new(move |_| drawn.with(|(data, _)| !data.catches.is_empty()));
    let before = Memo::new(move |_| drawn.with(|(_, at)| at.map(clock::date)));
    let name = Memo::new(move |_| {
        let set = drawn.with(|(data, _)| data.set.as_ref().map(|(.., label)| label.clone())).unwrap_or_default();
        let count =
            drawn.with(|(data, _)| data.catches.iter().filter(|catch| catch.mark != CatchMark::Excluded).count());
        t!("catch-chart-of", count = count, set = set)
    });
    let draw = move |width: f64| {
        let mark = state.units.get().mark;
        let plot = drawn.with(|(data, _)| catch_plot(width, data, mark));
        let names = AxisNames {
            flow: t!("catch-flow-in", unit = symbol_shown(state.unit(Kind::LiquidFlow))),
            residual: t!("catch-residual-in", unit = symbol_shown(state.unit(Kind::LiquidFlow))),
            setting: t!("catch-setting-in", unit = symbol_shown(open.unit.unit())),
        };
        plot.map(|plot| drawing(plot, names, name.get(), before.get())).into_any()
    };
    let width = RwSignal::new(0.0);
    view! {
        <Show when=move || has_catch.get()>
            <button
                type="button"
                class="narrow-only show-chart"
                aria-expanded=move || if is_open.get() { "true" } else { "false" }
                aria-controls="catch-chart"
                on:click=move |_| is_open.update(|open| *open = !*open)
            >
                {move || if is_open.get() { t!("catch-hide-chart") } else { t!("catch-show-chart") }}
            </button>
            <div id="catch-chart" class="catch-chart" class:open=move || is_open.get()>
                <Measured width=width class="measured">
                    {move || (width.get() > 0.0).then(|| draw(width.get()))}
                </Measured>
            </div>
        </Show>
    }
}

/// What is drawn, in the units chosen, and when the test before was.
fn data(state: State, sheet: CatchSheet, open: OpenTest) -> (CatchData, Option<u64>) {
    let across = open.unit.unit();
    let up = state.unit(Kind::LiquidFlow);
    let segment = |curve: &Curve, from: f64, to: f64| LineSegment {
        intercept: up.from_base(curve.intercept().value),
        slope: up.from_base(curve.slope().value) / across.from_base(1.0),
        from: across.from_base(from),
        to: across.from_base(to),
    };
    let numbers = state.line.book(|book| {
        let rows = book.calibration(open.pump, open.test).map_or(&[][..], |test| &test.rows);
        rows.iter().map(|row| row.id).collect::<Vec<RowId>>()
    });
    open.examined.with(|examined| {
        let Some(examined) = examined else { return Default::default() };
        let point = |caught: &Caught| CatchPoint {
            number: numbers.iter().position(|row| *row == caught.row).map_or(0, |at| at + 1),
            setting: across.from_base(caught.setting.0),
            flow: up.from_base(caught.flow().value),
            mark: mark(examined, caught.row),
        };
        let mut catches: Vec<_> = examined.rows.iter().chain(&examined.excluded).map(point).collect();
        catches.sort_by_key(|catch| catch.number);
        let Some(fit) = examined.fit else { return (CatchData { catches, ..CatchData::default() }, None) };
        let curve = Curve::as_caught(fit);
        let (low, high) = (fit.tested.low, fit.tested.high);
        // A little beyond what was tested, where the band widens.
        let beyond = (high - low) / 12.0;
        let (from, to) = ((low - beyond).max(0.0), high + beyond);
        let band = (0..=BAND_PARTS).filter_map(|part| {
            let at = from + (to - from) * f64::from(part) / f64::from(BAND_PARTS);
            let interval = fit.prediction(at)?;
            Some((across.from_base(at), up.from_base((interval.high - interval.low) / 2.0)))
        });
        let before = state.line.checked.with(|line| {
            let pump = line.pump(open.pump)?;
            let before = pump.calibrations.iter().rev().find(|test| test.id != open.test)?;
            let density = examined.calibration.as_ref().map_or(before.density, |test| test.density);
            let tested = before.curve.tested();
            let curve = before.curve.at_density(pump.metering, before.density, density);
            Some((segment(&curve, tested.low.0, tested.high.0), before.at))
        });
        let set = sheet.row(open.pump).and_then(|row| {
            let at: Setting = row.setting?.setting;
            let wanted = shown(state, LineFigure::Wanted, row.mass.value);
            let label = format!("{} → {wanted}", setting_words(state, open, at));
            Some((across.from_base(at.0), up.from_base(fit.at(at.0)), label))
        });
        let data = CatchData {
            catches,
            line: Some(segment(&curve, low, high)),
            band: band.collect(),
            before: before.map(|(line, _)| line),
            set,
        };
        (data, before.map(|(_, at)| at))
    })
}

fn mark(examined: &Examined, row: RowId) -> CatchMark {
    if examined.excluded.iter().any(|caught| caught.row == row) {
        CatchMark::Excluded
    } else if examined.suspects.iter().any(|suspect| suspect.row == row) {
        CatchMark::Suspect
    } else {
        CatchMark::Used
    }
}

/// What is written at the axes.
struct AxisNames {
    flow: String,
    residual: String,
    setting: String,
}

fn drawing(plot: CatchPlot, names: AxisNames, name: String, before: Option<String>) -> AnyView {
    let CatchPlot { width, flow, residual, catches, line, band, before: line_before, set } = plot;
    let (line_above, line_below) = line.map_or((None, None), |[above, below]| (Some(above), Some(below)));
    let path = |class: &'static str, d: String| view! { <path class=class d=d></path> };
    let (band_path, band_text) =
        band.map_or((None, None), |(d, text)| (Some(path("band", d)), Some(written(text, t!("catch-band")))));
    let before_line = line_before.zip(before).map(|((d, text), date)| {
        view! { {path("before", d)} {written(text, t!("catch-test-before", date = date))} }
    });
    let (guide_below, set) =
        set.map_or((None, None), |set| (Some(path("guide", set.guide_below.clone())), Some(set_point(set))));
    view! {
        <svg class="chart" role="img" aria-label=name width=format!("{width}") height=format!("{HEIGHT}") viewBox=format!("0 0 {width} {HEIGHT}")>
            <ChartFrame panel=flow up=names.flow across=None/>
            <ChartFrame panel=residual up=names.residual across=Some(names.setting)/>
            {line_above.map(|d| path("fitted", d))}
            {catches.iter().map(|each| dot(each, each.flow)).collect_view()}
            {catches.iter().filter_map(named).collect_view()}
            {set}
            {band_path}
            {line_below.map(|d| path("fitted", d))}
            {before_line}
            {guide_below}
            {catches.iter().filter_map(|each| Some(dot(each, each.residual?))).collect_view()}
            {band_text}
        </svg>
    }
    .into_any()
}

fn written(TextPlace { x, y, anchor }: TextPlace, words: String) -> impl IntoView {
    view! { <text x=format!("{x:.1}") y=format!("{y:.1}") text-anchor=anchor>{words}</text> }
}

/// A catch, by shape as well as by colour: a dot, a dot in a ring where it is far off the line, a cross where it is excluded.
fn dot(catch: &DrawnCatch, (x, y): (f64, f64)) -> AnyView {
    let circle = |class: &'static str, radius: f64| {
        let d = format!(
            "M{:.1} {y}a{radius} {radius} 0 1 0 {w} 0a{radius} {radius} 0 1 0 -{w} 0Z",
            x - radius,
            w = 2.0 * radius
        );
        view! { <path class=class d=d></path> }
    };
    match catch.mark {
        CatchMark::Used => circle("dot", 4.5).into_any(),
        CatchMark::Suspect => view! { {circle("dot", 4.5)} {circle("ring", 9.0)} }.into_any(),
        CatchMark::Excluded => {
            view! { <path class="cross" d=format!("M{:.1} {:.1}l10 10m0-10l-10 10", x - 5.0, y - 5.0)></path> }
                .into_any()
        }
    }
}

/// The number of a catch that does not simply count.
fn named(catch: &DrawnCatch) -> Option<AnyView> {
    let words = match catch.mark {
        CatchMark::Used => return None,
        CatchMark::Suspect => t!("catch-suspect", number = catch.number),
        CatchMark::Excluded => t!("catch-excluded", number = catch.number),
    };
    Some(written(catch.text, words).into_any())
}

fn set_point(DrawnSetting { at: (x, y), guide, text, label, .. }: DrawnSetting) -> AnyView {
    view! {
        <path class="guide" d=guide></path>
        <path class="dot" d=format!("M{x:.1} {:.1}l8.5 8.5l-8.5 8.5l-8.5 -8.5Z", y - 8.5)></path>
        <text class="strong" x=format!("{:.1}", text.x) y=format!("{:.1}", text.y) text-anchor=text.anchor>{label}</text>
    }
    .into_any()
}
