//! The head of the page: what is compared, and what can be done with it.

use super::context::CompareContext;
use super::exports::{export_csv, export_xlsx, print_report};
use crate::t;
use crate::ui::components::Menu;
use leptos::prelude::*;

/// The head.
#[component]
pub fn CompareHead() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let names = Memo::new(move |_| {
        context
            .shown
            .with(|shown| shown.systems.iter().map(|system| system.name.clone()).collect::<Vec<_>>().join(" · "))
    });
    let compare = context.state.compare;
    let can_undo = Memo::new(move |_| compare.can_undo());
    let can_redo = Memo::new(move |_| compare.can_redo());
    let off = |can: bool| (!can).then_some("true");
    let count = move || t!("compare-count", count = context.shown.with(|shown| shown.systems.len()));
    view! {
        <header class="title">
            <h1><span class="out-of-sight">{t!("compare-title")} ": "</span> {move || names.get()}</h1>
            <p class="note">{count}</p>
            <div class="title-actions">
                <button type="button" on:click=move |_| print_report(context)>{t!("common-print")}</button>
                <Menu id="compare-more" label=t!("common-more") sign="⋯">
                    <button type="button" aria-disabled=move || off(can_undo.get()) on:click=move |_| compare.undo()>
                        {t!("common-undo")}
                    </button>
                    <button type="button" aria-disabled=move || off(can_redo.get()) on:click=move |_| compare.redo()>
                        {t!("common-redo")}
                    </button>
                    <button type="button" on:click=move |_| export_csv(context)>{t!("compare-export-csv")}</button>
                    <button type="button" on:click=move |_| export_xlsx(context)>{t!("compare-export-xlsx")}</button>
                </Menu>
            </div>
        </header>
    }
}
