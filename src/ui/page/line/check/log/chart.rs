//! The deviations of one figure over the checks, with control limits.

use super::actions::{counting, logged_name};
use crate::domain::Grade;
use crate::domain::line::LineFigure;
use crate::domain::line::working::chart_working;
use crate::quantity::format;
use crate::record::CheckRecord;
use crate::record::content::check_log::{LoggedFigure, series};
use crate::statistics::control_chart::{ControlChart, ENOUGH, control_chart_from};
use crate::t;
use crate::ui::chart::control::{ControlLayout, control_layout};
use crate::ui::components::{Choice, ChoiceOption, Mark};
use crate::ui::page::line::check::worked::Worked;
use crate::ui::page::line::settings_text::signed;
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::ev;
use leptos::html::Div;
use leptos::prelude::*;

/// Height of the drawing, and its width until that is measured.
const HEIGHT: f64 = 236.0;
const WIDTH: f64 = 640.0;

/// What is charted.
#[derive(Debug, Clone, PartialEq)]
struct Charted {
    name: String,
    points: bool,
    /// When, and how far off, as a fraction.
    values: Vec<(u64, f64)>,
    tolerance: f64,
    chart: ControlChart,
}

fn key(figure: &LoggedFigure) -> String {
    format!("{} {}", figure.figure, figure.of.as_deref().unwrap_or_default())
}

fn options(log: &[CheckRecord]) -> Vec<ChoiceOption> {
    let mut all: Vec<ChoiceOption> = Vec::new();
    for figure in log.iter().rev().flat_map(|check| &check.content().figures) {
        let key = key(figure);
        if !all.iter().any(|other| other.value == key) {
            all.push(ChoiceOption::new(key, logged_name(figure)));
        }
    }
    all
}

/// The figure that was last out of tolerance, or else the first one.
fn first_choice(log: &[CheckRecord], options: &[ChoiceOption]) -> String {
    let outside = log.last().and_then(|check| check.content().outside().next().map(key));
    outside.or_else(|| options.first().map(|option| option.value.clone())).unwrap_or_default()
}

fn charted(log: &[CheckRecord], wanted: &str) -> Option<Charted> {
    let which = log.iter().rev().flat_map(|check| &check.content().figures).find(|figure| key(figure) == wanted)?;
    let values = series(log, &which.figure, which.of.as_deref());
    let deviations: Vec<f64> = values.iter().map(|(_, value)| *value).collect();
    Some(Charted {
        name: logged_name(which),
        points: which.points,
        chart: control_chart_from(&deviations, ENOUGH)?,
        tolerance: which.tolerance().unwrap_or_default(),
        values,
    })
}

/// Choice, drawing and figures.
#[component]
pub fn LogChart() -> impl IntoView {
    let state = expect_context::<State>();
    let chosen = RwSignal::new(None::<String>);
    let options = Memo::new(move |_| options(&counting(state)));
    let now = Memo::new(move |_| {
        options.with(|options| match chosen.get() {
            Some(chosen) if options.iter().any(|option| option.value == chosen) => chosen,
            _ => first_choice(&counting(state), options),
        })
    });
    let charted = Memo::new(move |_| charted(&counting(state), &now.get()));
    let width = RwSignal::new(WIDTH);
    let place = NodeRef::<Div>::new();
    let measure = move || {
        if let Some(place) = place.get_untracked() {
            let measured = f64::from(place.offset_width());
            if measured > 0.0 {
                width.set(measured);
            }
        }
    };
    place.on_load(move |_| request_animation_frame(measure));
    let resized = window_event_listener(ev::resize, move |_| measure());
    on_cleanup(move || resized.remove());
    let figure = move |figure: LineFigure, of: fn(&ControlChart) -> f64| {
        let value = Memo::new(move |_| {
            charted.with(|charted| charted.as_ref().map(|it| signed(state, of(&it.chart)))).unwrap_or_default()
        });
        let working = Callback::new(move |()| charted.with(|charted| chart_working(figure, &charted.as_ref()?.chart)));
        let name = words::line::figure(figure).label.to_owned();
        view! { <Worked key=format!("chart.{}", figure.key()) name=name value=value working=working/> }
    };
    let is_there = Memo::new(move |_| charted.with(Option::is_some));
    view! {
        <div class="charted">
            <div class="chart-head">
                <Choice
                    id="log-figure"
                    name=t!("check-charted")
                    options=options
                    value=now
                    on_choose=Callback::new(move |value| chosen.set(Some(value)))
                />
                <Key charted=charted/>
            </div>
            <div class="chart-place" class:drawn=move || is_there.get() node_ref=place>
                {move || charted.with(|charted| charted.as_ref().and_then(|charted| drawing(state, charted, width.get())))}
            </div>
            <Show when=move || is_there.get() fallback=|| view! { <p class="note">{t!("check-chart-needs")}</p> }>
                <div class="worked-figures">
                    {figure(LineFigure::ChartMean, |chart| chart.mean)}
                    {figure(LineFigure::MovingRange, |chart| chart.moving_range)}
                    {figure(LineFigure::LowLimit, |chart| chart.low)}
                    {figure(LineFigure::HighLimit, |chart| chart.high)}
                </div>
                <Remarks charted=charted/>
            </Show>
        </div>
    }
}

/// What band and lines mean.
#[component]
fn Key(
    /// What is charted.
    charted: Memo<Option<Charted>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let told = move || {
        charted.with(|charted| {
            let charted = charted.as_ref()?;
            let tolerance = format::editable(100.0 * charted.tolerance, state.units.with(|units| units.mark));
            let unit = if charted.points { t!("check-points") } else { "%".to_owned() };
            Some((format!("{tolerance}\u{a0}{unit}"), charted.values.len().min(ENOUGH)))
        })
    };
    move || {
        told().map(|(tolerance, count)| {
            view! {
                <p class="note chart-key">
                    <span>
                        <svg class="control-chart" width="22" height="14" aria-hidden="true"><rect class="band" width="22" height="14"></rect></svg>
                        {t!("check-key-tolerance", tolerance = tolerance)}
                    </span>
                    <span>
                        <svg class="control-chart" width="22" height="14" aria-hidden="true"><path class="limit" d="M0 7H22"></path></svg>
                        {t!("check-key-limits", count = count)}
                    </span>
                </p>
            }
        })
    }
}

/// What the chart says in words.
#[component]
fn Remarks(
    /// What is charted.
    charted: Memo<Option<Charted>>,
) -> impl IntoView {
    let outside = move || {
        let count = charted.with(|charted| charted.as_ref().map_or(0, |charted| charted.chart.outside.len()));
        (count > 0).then(|| {
            view! { <p class="flag-line"><Mark grade=Grade::Unusual/> " " {t!("check-outside-limits", count = count)}</p> }
        })
    };
    let unsettled = move || {
        let settled = charted.with(|charted| charted.as_ref().is_none_or(|charted| charted.chart.settled));
        (!settled).then(|| view! { <p class="note">{t!("check-unsettled-limits", count = ENOUGH)}</p> })
    };
    view! {
        {outside}
        {unsettled}
        <p class="note">{t!("check-chart-source")}</p>
    }
}

fn drawing(state: State, charted: &Charted, width: f64) -> Option<AnyView> {
    let percent = |value: f64| 100.0 * value;
    let values: Vec<f64> = charted.values.iter().map(|(_, value)| percent(*value)).collect();
    let shown = ControlChart {
        mean: percent(charted.chart.mean),
        low: percent(charted.chart.low),
        high: percent(charted.chart.high),
        ..charted.chart.clone()
    };
    let layout = control_layout((width, HEIGHT), &values, &shown, percent(charted.tolerance))?;
    let mark = state.units.with(|units| units.mark);
    let number = |value: f64| {
        let text = format::in_steps(value, 0.1, mark);
        if value > 0.05 { format!("+{text}") } else { text }
    };
    let (left, right) = layout.across;
    let tick = |(y, value): &(f64, f64)| {
        let sign = if *value > 0.0 { "+" } else { "" };
        view! {
            <path class="grid" d=format!("M{left} {y:.1}H{right:.1}")></path>
            <text x=format!("{:.1}", left - 8.0) y=format!("{:.1}", y + 5.0) text-anchor="end">{format!("{sign}{}", layout.scale.label(*value, mark))}</text>
        }
    };
    let line = |class: &'static str, y: f64| view! { <path class=class d=format!("M{left} {y:.1}H{right:.1}")></path> };
    let label = |y: f64, words: String| {
        view! { <text x=format!("{:.1}", right + 8.0) y=format!("{:.1}", y + 5.0)>{words}</text> }
    };
    let labels = layout.labels_beside.then(|| {
        let [mean, low, high] = layout.labels;
        view! {
            {label(high, t!("check-upper-limit", value = number(shown.high)))}
            {label(mean, t!("check-mean", value = number(shown.mean)))}
            {label(low, t!("check-lower-limit", value = number(shown.low)))}
        }
    });
    let path: String = layout
        .points
        .iter()
        .enumerate()
        .map(|(at, (x, y))| format!("{}{x:.1} {y:.1}", if at == 0 { "M" } else { "L" }))
        .collect();
    let is_last_out = shown.outside.last() == Some(&(values.len().saturating_sub(1)));
    let name = t!(
        "check-chart-name",
        name = charted.name.clone(),
        count = values.len(),
        last = values.last().map(|last| number(*last)).unwrap_or_default(),
        outside = shown.outside.len()
    );
    Some(
        view! {
            <svg class="control-chart" width=format!("{width:.0}") height=HEIGHT.to_string() role="img" aria-label=name>
                <rect class="band" x=left.to_string() y=format!("{:.1}", layout.band.0) width=format!("{:.1}", right - left) height=format!("{:.1}", layout.band.1)></rect>
                {layout.ticks.iter().map(tick).collect_view()}
                {line("limit", layout.lines[1])}
                {line("limit", layout.lines[2])}
                {line("mean", layout.lines[0])}
                <path class="joined" d=path></path>
                {points(&layout, &shown)}
                {is_last_out.then(|| last_out(&layout, number(*values.last().unwrap_or(&0.0)), charted))}
                {labels}
                {times(&layout, charted)}
            </svg>
        }
        .into_any(),
    )
}

/// A point inside the limits is round, one outside is a triangle.
fn points(layout: &ControlLayout, chart: &ControlChart) -> AnyView {
    let point = |(at, (x, y)): (usize, &(f64, f64))| {
        if chart.outside.contains(&at) {
            view! { <path class="hot" d=format!("M{:.1} {:.1}h16l-8 14z", x - 8.0, y - 6.0)></path> }.into_any()
        } else {
            view! { <circle class="point" cx=format!("{x:.1}") cy=format!("{y:.1}") r="3.5"></circle> }.into_any()
        }
    };
    layout.points.iter().enumerate().map(point).collect_view().into_any()
}

/// The last one, where it is outside, has its number beside it.
fn last_out(layout: &ControlLayout, value: String, charted: &Charted) -> Option<AnyView> {
    let (x, y) = *layout.points.last()?;
    let unit = if charted.points { t!("check-points") } else { "%".to_owned() };
    let words = format!("⚠ {value}\u{a0}{unit}");
    // On the side that has more room.
    let is_right = x < f64::midpoint(layout.across.0, layout.across.1);
    let (x, anchor) = if is_right { (x + 14.0, "start") } else { (x - 14.0, "end") };
    Some(
        view! { <text class="flag" x=format!("{x:.1}") y=format!("{:.1}", y + 5.0) text-anchor=anchor>{words}</text> }
            .into_any(),
    )
}

fn times(layout: &ControlLayout, charted: &Charted) -> AnyView {
    let last = layout.points.len().saturating_sub(1);
    let time = |at: &usize| {
        let (x, _) = *layout.points.get(*at)?;
        let (time, _) = *charted.values.get(*at)?;
        let (x, anchor) = match *at {
            at if at == last && last > 0 => (layout.across.1, "end"),
            _ if x - layout.across.0 < 50.0 => (layout.across.0, "start"),
            _ => (x, "middle"),
        };
        Some(
            view! { <text x=format!("{x:.1}") y=format!("{:.1}", layout.height - 8.0) text-anchor=anchor>{when(time)}</text> },
        )
    };
    layout.times.iter().filter_map(time).collect_view().into_any()
}
