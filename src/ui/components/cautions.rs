//! Cautions in words.

use crate::domain::Caution;
use crate::t;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// Each with what it is about, what can happen and what to do, and the rule that applies to all of them.
#[component]
pub fn Cautions(
    /// The cautions that apply.
    #[prop(into)]
    all: Signal<Vec<Caution>>,
) -> impl IntoView {
    let item = |caution| view! { <CautionItem caution=caution/> };
    view! {
        <div class="cautions">
            <ul>{move || all.get().into_iter().map(item).collect_view()}</ul>
            <p class="note">{t!("frame-caution-rule")}</p>
        </div>
    }
}

/// One caution, with the limits of exposure that go with it.
#[component]
pub fn CautionItem(
    /// The caution.
    caution: Caution,
) -> impl IntoView {
    let state = expect_context::<State>();
    let own = Memo::new(move |_| words::caution(caution, state.units.with(|units| units.mark)));
    let limits = move || own.get().limits.into_iter().map(|limit| view! { <p class="note">{limit}</p> }).collect_view();
    view! { <li><h3>{words::caution_title(caution)}</h3><p>{move || own.get().text}</p>{limits}</li> }
}
