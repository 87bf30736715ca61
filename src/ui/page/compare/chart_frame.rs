//! A drawing as wide as its panel, and the menu that exports it.

use crate::browser::{file, picture};
use crate::t;
use crate::ui::chart::drawing::Drawing;
use crate::ui::components::{Measured, Menu};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::state::State;
use leptos::prelude::*;

/// The drawing, made for the width that it is told.
#[component]
pub fn ChartFrame(
    /// The drawing.
    picture: Memo<Option<Drawing>>,
    /// Takes the width.
    width: RwSignal<f64>,
) -> impl IntoView {
    let markup = Memo::new(move |_| picture.with(|picture| picture.as_ref().map(Drawing::inline)));
    view! {
        <Measured width=width class="chart-frame">
            {move || markup.get().map(|markup| view! { <div class="drawing" inner_html=markup></div> })}
        </Measured>
    }
}

/// The menu that exports a drawing.
#[component]
pub fn ChartExport(
    /// The drawing.
    picture: Memo<Option<Drawing>>,
    /// The name of the file.
    name: String,
    /// The id of the menu.
    id: &'static str,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let name = StoredValue::new(name);
    let export = move |is_png: bool| {
        let Some(drawing) = picture.get_untracked() else { return };
        let text = drawing.file();
        let given = if is_png {
            let name = file::file_name(&name.get_value(), "png");
            picture::give_out_png(&name, &text, drawing.width, drawing.height).map(|()| name)
        } else {
            let name = file::file_name(&name.get_value(), "svg");
            file::give_out(&name, "image/svg+xml", &text).map(|()| name)
        };
        given_out(context.state, given);
    };
    view! {
        <Show when=move || picture.with(Option::is_some)>
            <Menu id=id label=t!("common-export")>
                <button type="button" on:click=move |_| export(false)>{t!("compare-export-svg")}</button>
                <button type="button" on:click=move |_| export(true)>{t!("compare-export-png")}</button>
            </Menu>
        </Show>
    }
}

/// Tells that a file was given out, or why not.
pub fn given_out(state: State, given: Result<String, String>) {
    match given {
        Ok(name) => state.tell(t!("compare-exported", name = name)),
        Err(why) => state.tell(t!("compare-not-exported", why = why)),
    }
}
