//! What is read out when the result has changed, and short notices such as what was removed.

use crate::browser::element::{Part, View, button, el, many};
use crate::domain::{Figure, Grade};
use crate::ui::part::figure;
use crate::ui::signal::{RwSignal, memo, when_settled};
use crate::ui::state::state;
use std::time::Duration;

/// A result is read out when nothing was typed for so long.
const QUIET: Duration = Duration::from_millis(1_000);
/// A notice stays so long.
const SEEN: Duration = Duration::from_secs(10);

/// The button that takes back what a notice tells of.
pub const UNDO: &str = "notice-undo";

/// Two lines that a screen reader follows, one of them in sight.
pub fn announce() -> View {
    let state = state();
    let words = &state.words.recipe_page;
    let sentence = state.cell(move || {
        if let Some(stop) = state.said(|finding| finding.grade == Grade::Stop).first() {
            return format!("{} {}", words.announce_stop, stop.message.what);
        }
        let named = |figure: Figure| {
            let label = (state.words.figure)(figure).label;
            figure::text(state, figure).map_or_else(String::new, |text| format!(" {label} {text}."))
        };
        format!("{}{}{}", words.announce, named(Figure::WaterDose), named(Figure::MatWet))
    });
    let said = RwSignal::new(String::new());
    when_settled(QUIET, move || sentence.track(), move || said.set(sentence.get_untracked()));
    let told = memo(move || {
        state.notice.with(|notice| notice.as_ref().map_or_else(String::new, |notice| notice.words.clone()))
    });
    when_settled(
        SEEN,
        move || told.track(),
        move || {
            if state.notice.with(|notice| notice.as_ref().is_some_and(|notice| !notice.stays)) {
                state.notice.set(None);
            }
        },
    );
    let undo = move || {
        state.notice.get().and_then(|notice| notice.undo).map(|undo| {
            let take_back = move |_| {
                // What taking back has to tell comes after.
                state.notice.set(None);
                undo();
            };
            button().set("id", UNDO).on("click", take_back).child(state.words.tools.undo)
        })
    };
    let close = move || {
        let stays = state.notice.with(|notice| notice.as_ref().is_some_and(|notice| notice.stays));
        stays.then(|| button().on_click(move || state.notice.set(None)).child(state.words.tools.close))
    };
    many([
        el("p").class("out-of-sight").set("role", "status").set("aria-live", "polite").child(move || said.get()).view(),
        el("div")
            .class("notice")
            .set("role", "status")
            .class_if("shown", move || state.notice.with(Option::is_some))
            .child(el("p").child(move || told.get()))
            .child(undo)
            .child(close)
            .view(),
    ])
    .view()
}
