//! A recipe in the table; what can be done with it opens below.

use super::context::{LibraryContext, RowPanel, more_button};
use super::details::RowDetails;
use super::rows::LibraryRow;
use crate::browser::page;
use crate::domain::Grade;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::state::State;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// The row.
#[component]
pub fn RecipeRow(
    /// What it shows.
    row: LibraryRow,
) -> impl IntoView {
    let state = expect_context::<State>();
    let library = expect_context::<LibraryContext>();
    let LibraryRow { recipe, head, .. } = row;
    let is_open = Memo::new(move |_| library.open.with(|open| open.is_some_and(|(of, _)| of == recipe)));
    let heads: Vec<_> = std::iter::once(head).chain(row.others.iter().copied()).collect();
    let on_page = Memo::new(move |_| state.from.with(|from| from.is_some_and(|from| heads.contains(&from))));
    let toggle = move |_| {
        library.open.update(|open| {
            let is_open = open.is_some_and(|(of, _)| of == recipe);
            *open = if is_open { None } else { Some((recipe, RowPanel::Actions)) };
        });
    };
    let close = move |event: KeyboardEvent| {
        if event.key() == "Escape" && is_open.get_untracked() {
            event.stop_propagation();
            library.open.set(None);
            page::focus(&more_button(recipe));
        }
    };
    let conflict = row.versions.clone().map(|versions| {
        view! {
            <span class="sub">
                <span class="flag"><Mark grade=Grade::Unusual/> " " {t!("library-versions", count = row.others.len() + 1)}</span>
                " " {versions}
            </span>
        }
    });
    let is_conflict = conflict.is_some();
    let (open_label, more_label) =
        (t!("library-open-of", name = row.name.clone()), t!("library-more-of", name = row.name.clone()));
    let released = row.released.clone().map(|(_, date)| {
        view! { <span class="stamp">"✓ " <span class="out-of-sight">{t!("library-released")} " "</span> {date}</span> }
    });
    let merge = is_conflict.then(|| {
        let label = t!("library-merge-of", name = row.name.clone());
        view! { <button type="button" class="primary" aria-label=label on:click=toggle>{t!("library-merge")}</button> }
    });
    let details = row.clone();
    view! {
        <tr class="recipe" class:warn=is_conflict class:on=move || on_page.get() class:open=move || is_open.get() on:keydown=close>
            <th scope="row" class="l">
                <span class="name">
                    <button type="button" class="open-recipe" aria-label=open_label on:click=move |_| state.take_from_library(head)>
                        {row.name}
                    </button>
                    <Show when=move || on_page.get()>
                        " " <span class="sub">{t!("library-on-page")}<Unsaved/></span>
                    </Show>
                </span>
                {conflict}
            </th>
            <td class="l fact">{row.binder}</td>
            <td class="fact">{with_unit(row.thickness)}</td>
            <td class="fact">{with_unit(row.density)}</td>
            <td class="l fact">{row.saved}</td>
            <td class="l fact roomy">{row.authors}</td>
            <td class="fact" data-label=t!("library-revision")>{row.revision}</td>
            <td class="l released">{released} {merge}</td>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    id=more_button(recipe)
                    aria-label=more_label
                    aria-expanded=move || if is_open.get() { "true" } else { "false" }
                    aria-controls=format!("details-{recipe}")
                    on:click=toggle
                >
                    "⋯"
                </button>
            </td>
        </tr>
        <Show when=move || is_open.get()>
            <tr class="details" id=format!("details-{recipe}") on:keydown=close>
                <td colspan="9"><RowDetails row=details.clone()/></td>
            </tr>
        </Show>
    }
}

/// A number with its unit, which the head of the column says where there is one.
fn with_unit((number, unit): (String, String)) -> Option<impl IntoView> {
    (!number.is_empty()).then(|| view! { {number} <span class="u in-head">"\u{a0}" {unit}</span> })
}

/// That what is on the page is not saved.
#[component]
fn Unsaved() -> impl IntoView {
    let state = expect_context::<State>();
    let saved = state.saved();
    let is_saved = Memo::new(move |_| saved.get());
    move || (!is_saved.get()).then(|| t!("library-unsaved"))
}
