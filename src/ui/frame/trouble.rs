//! What went wrong with keeping things: told at once over every page, with what helps beside it.

use crate::domain::Grade;
use crate::ui::components::Mark;
use crate::ui::persistence;
use crate::ui::state::{State, StorageProblem, WayOut};
use crate::{label, t};
use leptos::prelude::*;

/// The trouble, until it is over or closed, and that a newer version of the app waits.
#[component]
pub fn Trouble() -> impl IntoView {
    let state = expect_context::<State>();
    let trouble = move || state.trouble.get().map(|problem| view! { <Told problem=problem/> });
    let newer = move || state.newer.get().then(|| view! { <Newer/> });
    view! {
        <div class="trouble" role="alert">{trouble}</div>
        <div class="trouble" role="status">{newer}</div>
    }
}

#[component]
fn Told(
    /// What went wrong.
    problem: StorageProblem,
) -> impl IntoView {
    let state = expect_context::<State>();
    let StorageProblem { message, way_out, .. } = problem;
    let fix = way_out.map(|way| {
        let words = match way {
            WayOut::ToFile => label!("frame-save-to-file"),
            WayOut::AllToFile => label!("record-export-library"),
            WayOut::WriteBack => label!("record-write-back"),
        };
        let act = move |_| match way {
            WayOut::ToFile => state.give_out(),
            WayOut::AllToFile => state.give_out_library(),
            WayOut::WriteBack => state.fill_again(),
        };
        view! { <button type="button" on:click=act>{words}</button> }
    });
    view! {
        <div class="finding stop">
            <p><Mark grade=Grade::Stop/> " " <strong>{message.what}</strong> " " {message.fix}</p>
            <div class="actions">
                {fix}
                <button type="button" on:click=move |_| state.trouble.set(None)>{t!("common-close")}</button>
            </div>
        </div>
    }
}

#[component]
fn Newer() -> impl IntoView {
    let state = expect_context::<State>();
    view! {
        <div class="finding note">
            <p><Mark grade=Grade::Note/> " " {t!("frame-newer")}</p>
            <div class="actions">
                <button type="button" on:click=move |_| persistence::use_newer(state)>{t!("frame-use-newer")}</button>
                <button type="button" on:click=move |_| state.newer.set(false)>{t!("frame-not-now")}</button>
            </div>
        </div>
    }
}
