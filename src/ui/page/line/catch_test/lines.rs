//! What there is to say about pumps and catch tests, as lines of the warning slot.

use crate::browser::page;
use crate::domain::line::{LineFinding, LineFindingKind, LinePlace, PumpId};
use crate::ui::components::SlotLine;
use crate::ui::page::line::lines::{common_lines, drift_lines, finding_line};
use crate::ui::page::line::settings_now::SettingsNow;
use crate::ui::state::State;
use leptos::prelude::*;

/// The lines of the warning slot.
pub fn catch_lines(state: State, now: &SettingsNow) -> Vec<SlotLine> {
    let mut lines = common_lines(state);
    // What a setting says belongs to the pump settings; without any the check of the line says what is wrong with the pumps.
    let of_pumps =
        |found: &LineFinding| found.pump().is_some() || matches!(found.place, LinePlace::Liquid(_) | LinePlace::Water);
    // That a test still lacks catches is said below its grid.
    let is_elsewhere = |what: &LineFindingKind| {
        matches!(
            what,
            LineFindingKind::FewRows { .. }
                | LineFindingKind::NozzlesTooFew { .. }
                | LineFindingKind::NozzlesTooMany { .. }
                | LineFindingKind::NozzlesBetween { .. }
        )
    };
    let is_here = |found: &&LineFinding| of_pumps(found) && !is_elsewhere(&found.what);
    let found = now.findings.iter().filter(is_here);
    lines.extend(found.map(|found| finding_line(state, found)));
    if now.settings.is_none() {
        state.line.checked.with(|line| {
            let own = line.findings.iter().filter(is_here);
            let new =
                own.map(|found| finding_line(state, found)).filter(|line| !lines.contains(line)).collect::<Vec<_>>();
            lines.extend(new);
        });
    }
    lines.extend(drift_lines(state, now, to_earlier_tests));
    lines
}

/// Goes to the tests of a pump over time.
fn to_earlier_tests(state: State, pump: PumpId) {
    state.line.show_pump(pump);
    request_animation_frame(|| {
        page::unfold_by_id("earlier-tests");
        page::show("#earlier-tests > summary");
    });
}
