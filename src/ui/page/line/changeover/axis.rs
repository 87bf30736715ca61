//! The changeover over time at the stations, drawn for the width that there is.

use super::context::{ChangeSheet, clock_of};
use crate::browser::clock;
use crate::domain::line::changeover::Arrival;
use crate::t;
use crate::ui::chart::scale::LinearScale;
use crate::ui::chart::time_ticks::time_ticks;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::ev;
use leptos::html::Div;
use leptos::prelude::*;

/// Where the axis begins, right of the stations' names.
const LEFT: f64 = 92.0;
/// Room for half a label behind its end.
const RIGHT: f64 = 28.0;
/// Where the first station is, and from one to the next.
const FIRST: f64 = 38.0;
const ROW: f64 = 22.0;
/// The height of a station's bar.
const BAR: f64 = 14.0;
/// Labels nearer to each other than this would run together.
const APART: f64 = 80.0;
/// The same of the numbers of steps.
const NUMBERS_APART: f64 = 28.0;

/// All that is drawn but for the time of now.
#[derive(Debug, Clone, PartialEq)]
struct Drawn {
    arrivals: Vec<Arrival>,
    /// The times of the steps with their numbers.
    steps: Vec<(u64, Vec<usize>)>,
    start: u64,
    end: u64,
    started: bool,
}

/// The drawing with its key.
#[component]
pub fn TimeAxis() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<ChangeSheet>();
    let place = NodeRef::<Div>::new();
    let width = RwSignal::new(0.0);
    let measure = move || {
        if let Some(place) = place.get_untracked() {
            width.set(f64::from(place.client_width()));
        }
    };
    // Before the next frame the place has no width yet.
    Effect::new(move |_| {
        if place.get().is_some() {
            request_animation_frame(measure);
        }
    });
    let resized = window_event_listener(ev::resize, move |_| measure());
    on_cleanup(move || resized.remove());
    let drawn = Memo::new(move |_| drawn(sheet));
    let svg = move || {
        let width = width.get();
        (width > LEFT + RIGHT).then(|| drawn.get().map(|drawn| draw(state, &drawn, width))).flatten()
    };
    view! {
        <div class="time-axis" node_ref=place>{svg}</div>
        <p class="key" aria-hidden="true">
            <span><Swatch class="soft"/>{t!("change-old-recipe")}</span>
            <span><Swatch class="transition"/>{t!("change-transition-board")}</span>
            <span><Swatch class="mid"/>{t!("change-new-recipe")}</span>
            <span>{t!("change-numbers-key")}</span>
        </p>
    }
}

#[component]
fn Swatch(
    /// What it represents.
    class: &'static str,
) -> impl IntoView {
    view! {
        <svg class="swatch-bar" viewBox="0 0 22 14">
            <rect class=class width="22" height="14"></rect>
            {(class == "transition").then(|| view! { <path class="stripes" d=stripes(0.0, 22.0, 0.0, 14.0)></path> })}
        </svg>
    }
}

fn drawn(sheet: ChangeSheet) -> Option<Drawn> {
    sheet.plan.with(|plan| {
        let plan = plan.as_ref()?;
        let solved = plan.solved.as_ref()?;
        let arrivals = solved.plan.arrivals.clone();
        let mut steps: Vec<(u64, Vec<usize>)> = Vec::new();
        for (at, scheduled) in solved.schedule.iter().enumerate() {
            let Some(moment) = scheduled.at else { continue };
            match steps.last_mut() {
                Some((last, numbers)) if *last == moment => numbers.push(at + 1),
                _ => steps.push((moment, vec![at + 1])),
            }
        }
        let start = solved.plan.start;
        let last = arrivals.iter().map(|arrival| arrival.complete.unwrap_or(arrival.begins));
        let last = last.chain(steps.iter().map(|(at, _)| *at)).max()?;
        // A twelfth of the new recipe at the end.
        let end = last + (last.saturating_sub(start) / 12).max(10_000);
        Some(Drawn { arrivals, steps, start, end, started: plan.started.is_some() })
    })
}

/// Oblique strokes over a bar.
fn stripes(from: f64, to: f64, top: f64, height: f64) -> String {
    let mut path = String::new();
    let mut x = from - height;
    while x < to {
        // From the lower left to the upper right, cut at both ends of the bar.
        let (left, right) = (x.max(from), (x + height).min(to));
        if left < right {
            path.push_str(&format!(
                "M{left:.1} {:.1}L{right:.1} {:.1}",
                top + height - (left - x),
                top + height - (right - x)
            ));
        }
        x += 6.0;
    }
    path
}

fn draw(state: State, drawn: &Drawn, width: f64) -> AnyView {
    let end = width - RIGHT;
    let Some(scale) = LinearScale::new((drawn.start as f64, drawn.end as f64), (LEFT, end)) else {
        return ().into_any();
    };
    let place = move |at: u64| scale.place(at as f64).clamp(LEFT, end);
    let height = FIRST + ROW * drawn.arrivals.len() as f64 + 26.0;
    let foot = height - 24.0;
    let most = ((end - LEFT) / APART).floor().max(2.0) as usize;
    let started = drawn.started;
    let tick = |at: u64| {
        let x = format!("{:.1}", place(at));
        let words = if started { clock::time(at) } else { clock_of(false, at) };
        view! {
            <path class="grid-line" d=format!("M{x} {}V{foot:.1}", FIRST - 8.0)></path>
            <text x=x.clone() y=format!("{:.1}", height - 6.0) text-anchor="middle">{words}</text>
        }
    };
    let ticks = time_ticks(drawn.start, drawn.end, most).into_iter().map(tick).collect_view();
    let bar = |(row, arrival): (usize, &Arrival)| {
        let top = FIRST + ROW * row as f64;
        let (begins, complete) = (place(arrival.begins), arrival.complete.map_or(end, place));
        let rect = |class: &'static str, from: f64, to: f64| {
            view! { <rect class=class x=format!("{from:.1}") y=format!("{top:.1}") width=format!("{:.1}", (to - from).max(0.0)) height=format!("{BAR}")></rect> }
        };
        view! {
            <text class="strong" x="0" y=format!("{:.1}", top + 12.0)>{words::line::stop(arrival.stop)}</text>
            {rect("soft", LEFT, begins)}
            {rect("transition", begins, complete)}
            <path class="stripes" d=stripes(begins, complete, top, BAR)></path>
            {rect("mid", complete, end)}
        }
    };
    let bars = drawn.arrivals.iter().enumerate().map(bar).collect_view();
    let numbers = numbers(&drawn.steps, place).into_iter().map(|(x, words)| {
        view! { <text class="strong" x=format!("{:.1}", x.max(LEFT)) y="20" text-anchor="middle">{words}</text> }
    });
    let lines = drawn.steps.iter().map(|(at, _)| {
        view! { <path class="moment" d=format!("M{:.1} {}V{foot:.1}", place(*at), FIRST - 10.0)></path> }
    });
    let (from, to) = (drawn.start, drawn.end);
    let now = move || {
        let now = state.line.now.get();
        (started && (from..=to).contains(&now)).then(|| {
            view! { <path class="now" d=format!("M{:.1} {}V{:.1}", place(now), FIRST - 6.0, foot + 2.0)></path> }
        })
    };
    view! {
        <svg
            width=format!("{width}")
            height=format!("{height}")
            viewBox=format!("0 0 {width} {height}")
            role="img"
            aria-label=t!("change-drawing")
        >
            {ticks} {bars} {lines.collect_view()} {numbers.collect_view()} {now}
        </svg>
    }
    .into_any()
}

/// The numbers of the steps above the axis; those of near moments together.
fn numbers(steps: &[(u64, Vec<usize>)], place: impl Fn(u64) -> f64) -> Vec<(f64, String)> {
    let mut groups: Vec<(f64, f64, Vec<usize>)> = Vec::new();
    for (at, numbers) in steps {
        let x = place(*at);
        match groups.last_mut() {
            Some((_, last, group)) if x - *last < NUMBERS_APART + 8.0 * group.len().saturating_sub(2) as f64 => {
                *last = x;
                group.extend(numbers);
            }
            _ => groups.push((x, x, numbers.clone())),
        }
    }
    let words = |group: Vec<usize>| match (group.first(), group.last()) {
        (Some(first), Some(last)) if group.len() > 2 => format!("{first}–{last}"),
        _ => group.iter().map(usize::to_string).collect::<Vec<_>>().join(" "),
    };
    groups.into_iter().map(|(from, to, group)| (f64::midpoint(from, to), words(group))).collect()
}
