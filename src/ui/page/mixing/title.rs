//! The head of the page: for which recipe, and what can be done.

use crate::browser::print;
use crate::domain::mixing::MixDraft;
use crate::t;
use crate::ui::components::Menu;
use crate::ui::part::version;
use crate::ui::state::State;
use leptos::prelude::*;

/// The head.
#[component]
pub fn MixingTitle() -> impl IntoView {
    let state = expect_context::<State>();
    let seen = state.seen_on_page();
    let recipe = move || {
        let name = state.title.with(|title| state.called(&title.name));
        match seen.get() {
            Some(seen) => t!("mixing-for-revision", name = name, revision = version::label(&seen)),
            None => t!("mixing-for-recipe", name = name),
        }
    };
    let steps = Memo::new(move |_| state.mix_steps());
    let off = |can: bool| (!can).then_some("true");
    let reset = move |_| {
        state.edit_mix(None, |mix| *mix = MixDraft::default());
        state.tell_undo(t!("mixing-was-reset"), move || state.undo_mix());
    };
    view! {
        <header class="title">
            <h1>{t!("mixing-title")}</h1>
            <p class="note">{recipe}</p>
            <div class="title-actions">
                <button type="button" on:click=|_| _ = print::print()>{t!("common-print")}</button>
                <Menu id="mixing-more" label=t!("common-more") sign="⋯">
                    <button type="button" aria-disabled=move || off(steps.get().0) on:click=move |_| state.undo_mix()>
                        {t!("common-undo")}
                    </button>
                    <button type="button" aria-disabled=move || off(steps.get().1) on:click=move |_| state.redo_mix()>
                        {t!("common-redo")}
                    </button>
                    <button type="button" on:click=reset>{t!("mixing-reset")}</button>
                </Menu>
            </div>
        </header>
    }
}
