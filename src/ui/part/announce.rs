//! What is read out when the result has changed, and short notices such as what was removed.

use crate::domain::{Figure, Grade};
use crate::ui::part::figure;
use crate::ui::part::finding::mark;
use crate::ui::state::state;
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use std::time::Duration;

/// A result is read out when nothing was typed for so long.
const QUIET: Duration = Duration::from_millis(1_000);
/// A notice stays so long.
const SEEN: Duration = Duration::from_secs(10);

/// Two lines that a screen reader follows, one of them in sight.
pub fn announce() -> AnyView {
    let state = state();
    let words = &state.words.recipe_page;
    let dose = figure::text(state, Figure::WaterDose, None);
    let mat = figure::text(state, Figure::MatWet, None);
    let first_stop = Memo::new(move |_| {
        let stop = state.findings(|finding| finding.grade == Grade::Stop).first().copied()?;
        Some(state.with_context(|context| (state.words.finding)(&stop, context).what))
    });
    let sentence = Memo::new(move |_| match first_stop.get() {
        Some(stop) => format!("{} {stop}", words.announce_stop),
        None => {
            let named =
                |label: &str, text: Option<String>| text.map_or_else(String::new, |text| format!(" {label} {text}."));
            let water = named((state.words.figure)(Figure::WaterDose).label, dose.get());
            format!("{}{water}{}", words.announce, named((state.words.figure)(Figure::MatWet).label, mat.get()))
        }
    });
    let said = RwSignal::new(String::new());
    later(QUIET, sentence.into(), move |sentence| said.set(sentence));
    let told = Signal::derive(move || {
        state.notice.with(|notice| notice.as_ref().map_or_else(String::new, |notice| notice.words.clone()))
    });
    later(SEEN, told, move |_| state.notice.set(None));
    let undo = move || {
        state.notice.get().and_then(|notice| notice.undo).map(|undo| {
            let take_back = move |_| {
                undo.run(());
                state.notice.set(None);
            };
            view! { <button type="button" on:click=take_back>{state.words.tools.undo}</button> }
        })
    };
    view! {
        <p class="out-of-sight" role="status" aria-live="polite">{move || said.get()}</p>
        <div class="notice" role="status" class:shown=move || state.notice.with(Option::is_some)>
            <p>{move || told.get()}</p>
            {undo}
        </div>
    }
    .into_any()
}

/// What went wrong with keeping things, said at once and until it is mended.
pub fn trouble() -> AnyView {
    let state = state();
    let told = move || {
        state.trouble.get().map(|message| {
            view! { <p class="finding stop">{mark(Grade::Stop)} " " <strong>{message.what}</strong> " " {message.mend}</p> }
        })
    };
    view! { <div class="trouble" role="alert">{told}</div> }.into_any()
}

/// Does something with a text some time after it last changed. Nothing is done with the first one.
fn later(wait: Duration, text: Signal<String>, act: impl Fn(String) + Copy + 'static) {
    Effect::new(move |before: Option<Option<TimeoutHandle>>| {
        let text = text.get();
        let first = before.is_none();
        if let Some(handle) = before.flatten() {
            handle.clear();
        }
        if first { None } else { set_timeout_with_handle(move || act(text.clone()), wait).ok() }
    });
}
