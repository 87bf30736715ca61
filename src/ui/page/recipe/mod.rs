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

use crate::browser::element::{Part, View, el, many};
use crate::browser::graph::*;
use crate::browser::page;
use crate::domain::Station;
use crate::ui::part::strip;
use crate::ui::signal::{RwSignal, memo};
use crate::ui::state::state;

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
pub fn recipe() -> View {
    let state = state();
    let tablet = follow(TABLET);
    let wide = follow(WIDE);
    let arrangement = memo(move || match (tablet.get(), wide.get()) {
        (true, _) => Arrangement::SheetFirst,
        (false, true) => Arrangement::SideBySide,
        (false, false) => Arrangement::StationByStation,
    });
    el("div")
        .class("recipe")
        .class_if("old", move || state.shown.with(|shown| shown.old))
        .child(head::head())
        .child(strip::strip())
        .child({
            move || {
                let focused = page::focused_field();
                // The box that was typed into is made anew; the focus goes on in it.
                request_animation_frame(move || {
                    if let Some(key) = focused {
                        page::focus_field(&key)
                    }
                });
                arranged(arrangement.get())
            }
        })
        .view()
}

fn follow(media: &'static str) -> RwSignal<bool> {
    let answer = RwSignal::new(page::matches(media));
    page::watch(media, move |now| {
        // The page may be gone while the listener is still there.
        _ = answer.try_set(now);
    });
    answer
}

fn arranged(arrangement: Arrangement) -> View {
    let words = &state().words.recipe_page;
    let inputs = || Station::ALL.iter().map(|station| inputs::group(*station)).collect::<View>();
    let figures = || Station::ALL.iter().map(|station| figures::group(*station)).collect::<View>();
    match arrangement {
        Arrangement::SideBySide => el("div")
            .class("side-by-side")
            .child(el("section").class("inputs").set("aria-label", words.inputs).child(inputs()))
            .child(
                el("section")
                    .class("sheet")
                    .set("aria-label", words.sheet)
                    .child(sheet::sheet())
                    .child(figures())
                    .child(findings::all()),
            )
            .view(),
        Arrangement::SheetFirst => el("div")
            .class("sheet-first")
            .child(
                el("section")
                    .class("sheet")
                    .set("aria-label", words.sheet)
                    .child(sheet::sheet())
                    .child(figures())
                    .child(findings::all()),
            )
            .child(el("section").class("inputs").set("aria-label", words.inputs).child(inputs()))
            .view(),
        Arrangement::StationByStation => el("div")
            .class("station-by-station")
            .child(el("section").class("sheet").set("aria-label", words.sheet).child(sheet::sheet()))
            .child(
                Station::ALL
                    .iter()
                    .map(|station| many([(inputs::group(*station)).view(), (figures::group(*station)).view()]))
                    .collect::<View>(),
            )
            .child(el("section").class("sheet").child(findings::all()))
            .view(),
    }
}
