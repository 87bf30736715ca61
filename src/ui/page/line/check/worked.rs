//! A figure with its working right below it.

use crate::browser::page;
use crate::domain::line::LineWorking;
use crate::ui::components::{FigureValue, WorkingFrame, working_text};
use crate::ui::page::line::worked::origin_of;
use crate::ui::state::State;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// Name, number and, once that is pressed, how it was computed. Esc closes that and goes back to the number.
#[component]
pub fn Worked(
    /// `data-figure` on the page.
    key: String,
    /// Whose figure, and which.
    name: String,
    /// The number with its unit.
    #[prop(into)]
    value: Signal<String>,
    /// How it was computed.
    working: Callback<(), Option<LineWorking>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let open = RwSignal::new(false);
    let id = StoredValue::new(format!("working-{key}"));
    let title = StoredValue::new(name.clone());
    let close = move || {
        open.set(false);
        page::focus_opener(&id.get_value());
    };
    let escape = move |event: KeyboardEvent| {
        if event.key() == "Escape" && open.get_untracked() {
            close();
        }
    };
    let told = move || working.run(()).map(|working| working_text(state, &working, move |of| origin_of(state, *of)));
    view! {
        <div class="worked" on:keydown=escape>
            <span class="label">{name.clone()}</span>
            <FigureValue
                key=key
                controls=id.get_value()
                name=name
                text=Signal::derive(move || (value.get(), String::new()))
                open=open
                on_press=Callback::new(move |()| open.update(|open| *open = !*open))
            />
            <Show when=move || open.get()>
                <WorkingFrame id=id.get_value() name=title.get_value() on_close=Callback::new(move |()| open.set(false))>
                    {told}
                </WorkingFrame>
            </Show>
        </div>
    }
}
