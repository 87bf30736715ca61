//! Where a setting lies between what was tested and what the pump may run at, drawn.

use super::parts::setting;
use crate::browser::element::{Part, View, el, many, svg};
use crate::domain::line::{PumpRow, Setting};
use crate::ui::chart::scale::LinearScale;
use crate::ui::state::State;

/// Width and height of the drawing; it is stretched to the room there is.
const SIZE: (f64, f64) = (1000.0, 40.0);

/// The bar with its numbers below it; nothing without a catch test.
pub fn bar(state: State, row: &PumpRow, (least, most): (Option<Setting>, Option<Setting>)) -> Option<View> {
    let page = &state.words.line_page;
    let tested = row.curve?.tested();
    let own = row.setting.map(|found| found.setting);
    let all = [Some(tested.low), Some(tested.high), least, most, own];
    let ends = all.into_iter().flatten().map(|setting| setting.0);
    let (low, high) = ends.fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), x| (a.min(x), b.max(x)));
    // A little room, so that a mark at the very end is whole.
    let scale = LinearScale::new((low, high), (12.0, SIZE.0 - 12.0))?;
    let block = |class: &'static str, from: f64, to: f64, top: f64, height: f64| {
        svg("rect")
            .class(class)
            .set("x", format!("{from:.1}"))
            .set("y", format!("{top:.1}"))
            .set("width", format!("{:.1}", (to - from).max(0.0)))
            .set("height", format!("{height:.1}"))
            .view()
    };
    let place = |setting: Setting| scale.place(setting.0).clamp(0.0, SIZE.0);
    let interval = row
        .setting
        .and_then(|found| found.interval)
        .map(|interval| block("interval", place(interval.low), place(interval.high), 8.0, 24.0));
    let at = own.map(|own| block("at", place(own) - 5.0, place(own) + 5.0, 0.0, SIZE.1));
    let limit = |setting: Setting| block("limit", place(setting) - 2.0, place(setting) + 2.0, 4.0, 32.0);
    let number = |of: Setting| setting(state, of, row.unit);
    let tested_words = format!("{} {} {} {}", page.tested_from, number(tested.low), page.to, number(tested.high));
    let limits = [(page.pump_least, least), (page.pump_most, most)];
    let limits: Vec<String> =
        limits.into_iter().filter_map(|(words, of)| of.map(|of| format!("{words} {}", number(of)))).collect();
    let words = std::iter::once(tested_words).chain(limits).collect::<Vec<_>>().join(" · ");
    let label = match own {
        Some(own) => format!("{} {}. {words}", page.setting, number(own)),
        None => words.clone(),
    };
    Some(many([
        svg("svg")
            .class("range")
            .set("viewBox", "0 0 1000 40")
            .set("preserveAspectRatio", "none")
            .set("role", "img")
            .set("aria-label", label)
            .child(block("track", 0.0, SIZE.0, 18.0, 4.0))
            .child(block("tested", place(tested.low), place(tested.high), 12.0, 16.0))
            .child(interval)
            .child(least.map(limit))
            .child(most.map(limit))
            .child(at)
            .view(),
        el("p").class("note").child(words).view(),
    ]))
}
