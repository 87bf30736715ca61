//! The box for another name.

use crate::browser::page;
use crate::domain::Grade;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::Mark;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The box. It takes the focus; Enter saves, Esc cancels.
#[component]
pub fn RenameBox(
    /// Its id.
    id: String,
    /// The name now.
    now: String,
    /// Hears of another name.
    on_save: Callback<String>,
    /// Hears when the name stays.
    on_cancel: Callback<()>,
) -> impl IntoView {
    let says = format!("{id}-says");
    let text = RwSignal::new(now.clone());
    let is_missing = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let name = text.with_untracked(|text| text.trim().to_owned());
        is_missing.set(name.is_empty());
        match name {
            name if name.is_empty() => {}
            name if name == now => on_cancel.run(()),
            name => on_save.run(name),
        }
    });
    let keys = move |event: KeyboardEvent| {
        match event.key().as_str() {
            "Enter" => save.run(()),
            "Escape" => on_cancel.run(()),
            _ => return,
        }
        event.prevent_default();
        event.stop_propagation();
    };
    let focused = id.clone();
    request_animation_frame(move || page::focus(&focused));
    view! {
        <div class="rename">
            <div class="labelled">
                <label for=id.clone()>{t!("library-new-name")}</label>
                <span class="entry-box">
                    <input
                        id=id
                        class="words"
                        type="text"
                        maxlength=LONGEST_NAME.to_string()
                        autocomplete="off"
                        aria-describedby=says.clone()
                        aria-invalid=move || is_missing.get().then_some("true")
                        prop:value=move || text.get()
                        on:input=move |event| {
                            is_missing.set(false);
                            text.set(event_target_value(&event));
                        }
                        on:keydown=keys
                    />
                </span>
                <p class="also" id=says>
                    <Show when=move || is_missing.get()><Mark grade=Grade::Stop/> " " {t!("library-name-missing")}</Show>
                </p>
            </div>
            <button type="button" class="primary" on:click=move |_| save.run(())>{t!("library-save-name")}</button>
            <button type="button" on:click=move |_| on_cancel.run(())>{t!("library-cancel")}</button>
        </div>
    }
}
