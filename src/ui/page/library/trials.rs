//! The trials that are saved, one row each.

use super::context::go;
use crate::domain::Grade;
use crate::record::content::trial::Trial;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::part::save::when;
use crate::ui::part::version;
use crate::ui::persistence::records;
use crate::ui::route::Page;
use crate::ui::state::State;
use crate::ui::text::{Message, words};
use leptos::prelude::*;

/// The tab.
#[component]
pub fn TrialsTab() -> impl IntoView {
    let state = expect_context::<State>();
    let table = move || {
        match state.library.with(|library| library.trials()) {
        Err(why) => {
            let Message { what, fix } = words::store(&why);
            view! { <p><Mark grade=Grade::Stop/> " " {what} " " {fix}</p> }.into_any()
        }
        Ok(trials) if trials.kept().next().is_none() => view! {
            <p class="empty"><strong>{t!("library-no-trials")}</strong> " " <a href=Page::Bench.link()>{t!("library-to-bench")}</a></p>
        }
        .into_any(),
        Ok(trials) => view! {
            <table class="grid library-table" aria-label=t!("library-trials")>
                <thead>
                    <tr>
                        <th scope="col" class="l">{t!("library-name")}</th>
                        <th scope="col" class="l">{t!("library-recipe")}</th>
                        <th scope="col">{t!("library-boards")}</th>
                        <th scope="col" class="l">{t!("library-saved")}</th>
                        <th scope="col" class="l roomy">{t!("library-by")}</th>
                        <th scope="col"><span class="out-of-sight">{t!("library-delete")}</span></th>
                    </tr>
                </thead>
                <tbody class="trial-lines">{trials.kept().map(|trial| row(state, trial)).collect_view()}</tbody>
            </table>
        }
        .into_any(),
    }
    };
    view! { <section class="panel" aria-label=t!("library-trials")>{table}</section> }
}

fn row(state: State, trial: &Trial) -> impl IntoView + use<> {
    let (content, id) = (trial.content(), trial.trial());
    let name = state.called(&content.name);
    let revision = content.revision.and_then(|id| state.seen(id)).map(|seen| version::label(&seen));
    let recipe =
        [Some(state.called(&content.recipe_name)), revision].into_iter().flatten().collect::<Vec<_>>().join(", ");
    let (open_label, delete_label) =
        (t!("library-open-of", name = name.clone()), format!("{} {name}", t!("library-delete")));
    let open = move |_| {
        state.begin_bench();
        state.open_trial(id);
        go(state, Page::Bench);
    };
    let delete = move |_| {
        state.remove_trial(id);
        // The row is gone; what takes it back is next.
        records::focus_undo(state);
    };
    view! {
        <tr class="recipe">
            <th scope="row" class="l">
                <span class="name"><button type="button" class="open-recipe" aria-label=open_label on:click=open>{name}</button></span>
                <span class="sub">{content.note.clone()}</span>
            </th>
            <td class="l fact">{recipe}</td>
            <td class="fact" data-label=t!("library-boards")>{content.boards.len()}</td>
            <td class="l fact">{when(content.saved_at)}</td>
            <td class="l fact roomy">{content.author.clone()}</td>
            <td class="more"><button type="button" aria-label=delete_label on:click=delete>{t!("library-delete")}</button></td>
        </tr>
    }
}
