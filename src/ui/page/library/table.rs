//! The table of recipes: filtered as one types, sorted by the head of any column.

use super::context::{AT_ONCE, LibraryContext};
use super::row::RecipeRow;
use super::rows::Found;
use crate::quantity::Kind;
use crate::record::content::search::SortColumn;
use crate::t;
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;

/// The tab.
#[component]
pub fn RecipesTab() -> impl IntoView {
    let library = expect_context::<LibraryContext>();
    let found = library.found;
    let left = Memo::new(move |_| found.with(|found| found.matching - found.rows.len()));
    let is_empty = Memo::new(move |_| found.with(|found| found.all == 0));
    view! {
        <section class="panel" aria-label=t!("library-recipes")>
            <Filter/>
            <p class="empty" hidden=move || !is_empty.get()><strong>{t!("library-empty")}</strong> " " {t!("library-empty-hint")}</p>
            <table class="grid library-table" aria-label=t!("library-recipes") hidden=move || is_empty.get()>
                <Head/>
                <tbody class="lines">
                    <For each=move || found.with(|found| found.rows.clone()) key=|row| row.clone() let:row>
                        <RecipeRow row=row/>
                    </For>
                </tbody>
            </table>
            <Show when=move || { left.get() > 0 }>
                <p class="more-rows">
                    <button type="button" on:click=move |_| library.most.update(|most| *most = most.saturating_add(AT_ONCE))>
                        {move || t!("library-more", count = left.get())}
                    </button>
                </p>
            </Show>
        </section>
    }
}

/// The search box, and whether only released recipes are listed.
#[component]
fn Filter() -> impl IntoView {
    let library = expect_context::<LibraryContext>();
    let count = move || {
        library.found.with(|found| match found {
            Found { all: 0, .. } => String::new(),
            Found { all, matching, .. } if matching == all => t!("library-recipe-count", count = *all),
            Found { matching: 0, .. } => t!("library-none-match"),
            Found { all, matching, .. } => {
                t!("library-found", found = *matching, recipes = t!("library-recipe-count", count = *all))
            }
        })
    };
    let search = move |event| {
        library.most.set(AT_ONCE);
        library.query.set(event_target_value(&event));
    };
    let pressed = move |released: bool| move || if library.only_released.get() == released { "true" } else { "false" };
    view! {
        <div class="search-row">
            <span class="entry-box">
                <input
                    id="library-search"
                    class="words"
                    type="search"
                    autocomplete="off"
                    spellcheck="false"
                    placeholder=t!("library-filter")
                    aria-label=t!("library-filter")
                    aria-describedby="library-search-hint"
                    prop:value=move || library.query.get()
                    on:input=search
                />
            </span>
            <span class="seg" role="group" aria-label=t!("library-show")>
                <button type="button" aria-pressed=pressed(false) on:click=move |_| library.only_released.set(false)>
                    {t!("library-all")}
                </button>
                <button type="button" aria-pressed=pressed(true) on:click=move |_| library.only_released.set(true)>
                    {t!("library-released")}
                </button>
            </span>
            <span class="note count" role="status">{count}</span>
            <span class="note wide-only" id="library-search-hint">{t!("library-filter-hint")}</span>
        </div>
    }
}

/// The heads of the columns: a press sorts by one, the next the other way round.
#[component]
fn Head() -> impl IntoView {
    let state = expect_context::<State>();
    let unit = move |kind: Kind| move || format!(", {}", symbol_shown(state.unit(kind)));
    view! {
        <thead>
            <tr>
                <SortHead column=SortColumn::Name key="name" class="l" name=t!("library-name")/>
                <SortHead column=SortColumn::Binder key="binder" class="l" name=t!("library-binder")/>
                <SortHead column=SortColumn::Thickness key="thickness" class="" name=t!("library-thickness") unit=Signal::derive(unit(Kind::Thickness))/>
                <SortHead column=SortColumn::Density key="density" class="" name=t!("library-density") unit=Signal::derive(unit(Kind::BoardDensity))/>
                <SortHead column=SortColumn::Saved key="saved" class="l" name=t!("library-saved")/>
                <SortHead column=SortColumn::Author key="author" class="l roomy" name=t!("library-by")/>
                <SortHead column=SortColumn::Revision key="revision" class="" name=t!("library-revision")/>
                <SortHead column=SortColumn::Released key="released" class="l" name=t!("library-released")/>
                <th scope="col"><span class="out-of-sight">{t!("common-more")}</span></th>
            </tr>
        </thead>
    }
}

#[component]
fn SortHead(
    /// What it sorts by.
    column: SortColumn,
    /// The end of its id.
    key: &'static str,
    /// Where it is aligned.
    class: &'static str,
    /// Its name.
    name: String,
    /// The unit of the column.
    #[prop(optional, into)]
    unit: Signal<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let now = Memo::new(move |_| {
        state.settings.with(|settings| (settings.order.column == column).then_some(settings.order.descending))
    });
    let sort = move |_| state.settings.update(|settings| settings.order = settings.order.pressed(column));
    let direction = move || now.get().map(|descending| if descending { "descending" } else { "ascending" });
    let mark = move || now.get().map(|descending| if descending { " ▾" } else { " ▴" });
    view! {
        <th scope="col" class=class aria-sort=direction>
            <button type="button" class="sort" id=format!("sort-{key}") on:click=sort>
                {name} {move || unit.get()} <span aria-hidden="true">{mark}</span>
            </button>
        </th>
    }
}
