//! Where a setting lies between what was tested and what the pump may run at, drawn.

use super::context::setting_parts;
use crate::domain::line::{PumpRow, Setting};
use crate::quantity::format;
use crate::t;
use crate::ui::chart::scale::LinearScale;
use crate::ui::page::line::parts::setting;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// Width of the drawing and where its ends are.
const WIDTH: f64 = 250.0;
/// Numbers nearer to each other than this would run together.
const APART: f64 = 34.0;

/// The drawing of a row, with the lowest and the highest setting allowed. Nothing without a catch test.
pub fn range_bar(state: State, row: &PumpRow, (least, most): (Option<Setting>, Option<Setting>)) -> Option<AnyView> {
    let tested = row.curve?.tested();
    let own = row.setting.map(|found| found.setting);
    let ends = [Some(tested.high), most, own];
    let high = ends.into_iter().flatten().map(|at| at.0).fold(0.0, f64::max);
    let scale = LinearScale::new((0.0, high * 1.03), (2.0, WIDTH - 2.0))?;
    let place = |at: Setting| scale.place(at.0).clamp(2.0, WIDTH - 2.0);
    let units = state.units.get();
    let number = |at: Setting| format::editable(at.amount(row.unit).get(units.unit(row.unit.kind())), units.mark);
    let path = |class: &'static str, from: f64, to: f64| {
        view! { <path class=class d=format!("M{from:.1} 13H{to:.1}")></path> }
    };
    let limit = |at: Setting| view! { <path class="limit" d=format!("M{:.1} 4V22", place(at))></path> };
    let (allowed_from, allowed_to) = (least.map_or(2.0, place), most.map_or(WIDTH - 2.0, place));
    let (tested_from, tested_to) = (place(tested.low), place(tested.high));
    let interval = row.setting.and_then(|found| found.interval).filter(|_| row.set_to.is_some()).map(|interval| {
        let (from, to) = (place(interval.low), place(interval.high));
        view! { <rect class="interval" x=format!("{from:.1}") y="8" width=format!("{:.1}", to - from) height="10"></rect> }
    });
    let is_beyond = row.set_to.is_none() && !row.range_status.is_allowed();
    let point = own.map(|own| {
        let at = place(own);
        if is_beyond {
            let from = if own.0 > tested.high.0 { allowed_to } else { allowed_from };
            view! {
                <path class="beyond dashed" d=format!("M{from:.1} 13H{at:.1}")></path>
                <path class="beyond" d=format!("M{:.1} 7l12 12m0-12l-12 12", (at - 6.0).clamp(2.0, WIDTH - 14.0))></path>
            }
            .into_any()
        } else {
            view! { <path class="at" d=format!("M{at:.1} 1V25")></path> }.into_any()
        }
    });
    // The ends of what was tested, and the limits where they do not run into those. What is needed is said in the drive's steps.
    let mut labels: Vec<(f64, String)> = Vec::new();
    let ends = [Some(tested.low), Some(tested.high), most, least].into_iter().flatten().map(|at| (at, number(at)));
    let needed = own.filter(|_| is_beyond).map(|at| (at, setting_parts(state, row.pump, at, row.unit).0));
    for (at, words) in ends.chain(needed) {
        let x = place(at).clamp(12.0, WIDTH - 14.0);
        if labels.iter().all(|(other, _)| (other - x).abs() >= APART) {
            labels.push((x, words));
        }
    }
    let label = |(x, words): (f64, String)| {
        view! { <text x=format!("{x:.1}") y="40" text-anchor="middle">{words}</text> }
    };
    Some(
        view! {
            <svg class="range-bar" viewBox="0 0 250 42" role="img" aria-label=words(state, row, (least, most))>
                {path("axis", 2.0, WIDTH - 2.0)}
                {path("allowed", allowed_from, allowed_to)}
                <rect class="tested" x=format!("{tested_from:.1}") y="8" width=format!("{:.1}", tested_to - tested_from) height="10"></rect>
                {interval}
                {least.map(limit)}
                {most.map(limit)}
                {point}
                {labels.into_iter().map(label).collect_view()}
            </svg>
        }
        .into_any(),
    )
}

/// The same in words.
fn words(state: State, row: &PumpRow, (least, most): (Option<Setting>, Option<Setting>)) -> String {
    let Some(curve) = row.curve else { return String::new() };
    let tested = curve.tested();
    let number = |at: Setting| setting(state, at, row.unit);
    let mut words = vec![t!("line-tested-range", from = number(tested.low), to = number(tested.high))];
    if let Some(least) = least {
        words.push(t!("line-lowest-allowed", limit = number(least)));
    }
    if let Some(most) = most {
        words.push(t!("line-highest-allowed", limit = number(most)));
    }
    if let Some(own) = row.setting {
        let status = words::line::range_status(row.range_status);
        words.push(t!("line-setting-lies", setting = number(own.setting), status = status));
    }
    words.join(", ")
}
