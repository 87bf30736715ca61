//! What is weighed next: at the foot of a phone's screen, and read out.

use super::context::WeighContext;
use super::figure::line_name;
use super::text::on_balance;
use crate::domain::Grade;
use crate::t;
use crate::ui::components::{Mark, SlotLine};
use leptos::prelude::*;
use std::time::Duration;

/// A result is read out when nothing was typed for so long.
const QUIET: Duration = Duration::from_millis(1_000);

/// "Wax emulsion 13.31 g"; blank where nothing remains.
fn next(sheet: WeighContext) -> String {
    let state = sheet.desk.state;
    let told = sheet.desk.made.with(|made| {
        let own = made.sheet.as_ref()?;
        let id = sheet.active()?;
        let line = sheet.lines.with(|lines| lines.iter().find(|line| line.line.id == id).map(|line| line.line))?;
        Some(t!("bench-next", name = line_name(made, id), mass = on_balance(state, own, id, line.to_add)))
    });
    told.unwrap_or_default()
}

/// The next line, the batch and the number of warnings, where a narrow screen scrolls them away.
#[component]
pub fn WeighFoot(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let desk = sheet.desk;
    let next = Memo::new(move |_| next(sheet));
    let batch = move || {
        let count = desk.made.with(|made| made.sheet.as_ref().map_or(1, |sheet| sheet.batches));
        t!("bench-batch-of", batch = desk.state.bench.batch.get(), count = count)
    };
    let warnings =
        Memo::new(move |_| lines.with(|lines| lines.iter().filter(|line| line.grade != Grade::Note).count()));
    view! {
        <div class="phone-foot">
            <b>{move || next.get()}</b>
            <span>{batch}</span>
            <Show when=move || { warnings.get() > 0 }>
                <span class="flag"><Mark grade=Grade::Unusual/> " " <span class="out-of-sight">{t!("common-warnings")}</span> {move || warnings.get()}</span>
            </Show>
        </div>
    }
}

/// The gravest warning and what is weighed next, read out together once something was entered.
#[component]
pub fn AnnounceWeighing(
    /// The lines of the warning slot.
    lines: RwSignal<Vec<SlotLine>>,
) -> impl IntoView {
    let sheet = expect_context::<WeighContext>();
    let said = RwSignal::new(String::new());
    let sentence = move || {
        let grave = |lines: &Vec<SlotLine>| {
            lines.first().filter(|line| line.grade != Grade::Note).map(|line| line.words.clone())
        };
        let first = lines.with_untracked(grave).map(|words| format!("{words} "));
        format!("{}{}", first.unwrap_or_default(), next(sheet))
    };
    let mut say = debounce(QUIET, move |()| said.set(untrack(sentence)));
    Effect::new(move |before: Option<()>| {
        sheet.desk.state.bench.open.track();
        if before.is_some() {
            say(());
        }
    });
    view! { <p class="out-of-sight" role="status" aria-live="polite">{move || said.get()}</p> }
}
