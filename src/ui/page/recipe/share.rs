//! The recipe as a link and as a code for another device's camera.

use crate::browser::link;
use crate::t;
use crate::ui::components::Menu;
use crate::ui::part::code::QrCode;
use crate::ui::state::State;
use leptos::prelude::*;
use leptos::task::spawn_local;

/// The button and its panel.
#[component]
pub fn Share() -> impl IntoView {
    view! {
        <Menu id="share" label=t!("recipe-share")>
            <p class="note">{t!("recipe-link-hint")}</p>
            <Link/>
        </Menu>
    }
}

#[component]
fn Link() -> impl IntoView {
    let state = expect_context::<State>();
    let copy = move |_| {
        let Some(link) = state.link.get_untracked().map(|link| link.address) else { return };
        spawn_local(async move {
            state.tell(if link::copy(&link).await { t!("recipe-link-copied") } else { t!("recipe-link-not-copied") });
        });
    };
    move || match state.link.get().map(|link| link.address) {
        None => view! { <p>{t!("recipe-no-link")}</p> }.into_any(),
        Some(link) => {
            let drawn = link.clone();
            view! {
                <span class="entry-box">
                    <input id="link" class="words" type="text" readonly=true aria-label=t!("recipe-link") prop:value=link/>
                </span>
                <button type="button" on:click=copy>{t!("recipe-copy-link")}</button>
                <QrCode link=drawn name=t!("frame-link-code")/>
            }
            .into_any()
        }
    }
}
