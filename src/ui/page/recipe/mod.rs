//! The recipe: what is wanted beside what it takes.
//!
//! Three arrangements of the same parts, so that the order on the screen is always the order of the
//! keyboard: side by side on a wide screen, station by station on a phone, the sheet first and in
//! big figures on a tablet at the line.

mod figures;
mod findings;
mod head;
mod inputs;
mod liquid;
mod liquids;
mod sheet;

use crate::browser::page;
use crate::domain::Station;
use crate::ui::erased::{flag, live, memo};
use crate::ui::part::strip;
use crate::ui::state::state;
use leptos::prelude::*;

/// A touch screen on a stand beside the line.
const TABLET: &str = "(pointer: coarse) and (min-width: 40em) and (max-width: 80em)";
/// Room for two columns.
const WIDE: &str = "(min-width: 68em)";

#[derive(Clone, Copy, PartialEq, Eq)]
enum Arrangement {
    SideBySide,
    StationByStation,
    SheetFirst,
}

/// The page.
pub fn recipe() -> AnyView {
    let state = state();
    let tablet = follow(TABLET);
    let wide = follow(WIDE);
    let arrangement = memo(move || match (tablet.get(), wide.get()) {
        (true, _) => Arrangement::SheetFirst,
        (false, true) => Arrangement::SideBySide,
        (false, false) => Arrangement::StationByStation,
    });
    view! {
        <div class="recipe" class:old=flag(move || state.shown.with(|shown| shown.old))>
            {head::head()} {strip::strip()}
            {live(move || {
                let focused = page::focused_field();
                // The box that was typed into is made anew; the focus goes on in it.
                request_animation_frame(move || if let Some(key) = focused { page::focus_field(&key) });
                arranged(arrangement.get())
            })}
        </div>
    }
    .into_any()
}

fn follow(media: &'static str) -> RwSignal<bool> {
    let answer = RwSignal::new(page::matches(media));
    page::watch(media, move |now| {
        // The page may be gone while the listener is still there.
        _ = answer.try_set(now);
    });
    answer
}

fn arranged(arrangement: Arrangement) -> AnyView {
    let words = &state().words.recipe_page;
    let inputs = || Station::ALL.iter().map(|station| inputs::group(*station)).collect_view();
    let figures = || Station::ALL.iter().map(|station| figures::group(*station)).collect_view();
    match arrangement {
        Arrangement::SideBySide => view! {
            <div class="side-by-side">
                <section class="inputs" aria-label=words.inputs>{inputs()}</section>
                <section class="sheet" aria-label=words.sheet>{sheet::sheet()} {figures()} {findings::all()}</section>
            </div>
        }
        .into_any(),
        Arrangement::SheetFirst => view! {
            <div class="sheet-first">
                <section class="sheet" aria-label=words.sheet>{sheet::sheet()} {figures()} {findings::all()}</section>
                <section class="inputs" aria-label=words.inputs>{inputs()}</section>
            </div>
        }
        .into_any(),
        Arrangement::StationByStation => view! {
            <div class="station-by-station">
                <section class="sheet" aria-label=words.sheet>{sheet::sheet()}</section>
                {Station::ALL
                    .iter()
                    .map(|station| view! { {inputs::group(*station)} {figures::group(*station)} })
                    .collect_view()}
                <section class="sheet">{findings::all()}</section>
            </div>
        }
        .into_any(),
    }
}
