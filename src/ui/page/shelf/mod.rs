//! The shelf: all recipes that are kept, found as one types.

mod files;
mod history;
mod line;
mod list;
mod strays;

use crate::record::summary::Order;
use crate::ui::erased::{attr, derive, flag, live, memo, on, prop};
use crate::ui::field::choice::{self, Choice};
use crate::ui::state::{State, state};
use leptos::prelude::*;
use list::Found;

/// So many recipes are shown at first, and so many more each time that more are asked for. A
/// thousand boxes nobody looks at would cost more than finding them.
const AT_ONCE: usize = 40;

/// The page.
pub fn shelf() -> AnyView {
    let state = state();
    state.read_records();
    let page = &state.words.shelf_page;
    let query = RwSignal::new(String::new());
    let most = RwSignal::new(AT_ONCE);
    let order = memo(move || state.settings.with(|settings| settings.order));
    let found =
        memo(move || state.shelf.with(|shelf| query.with(|query| list::find(shelf, query, order.get(), most.get()))));
    view! {
        <div class="shelf page">
            <h1>{page.title}</h1>
            <div class="search">
                <div class="field">
                    <label for="shelf-search">{page.search}</label>
                    <div class="box">
                        <input
                            id="shelf-search"
                            type="search"
                            autocomplete="off"
                            spellcheck="false"
                            prop:value=prop(move || query.get())
                            on:input=on(move |event| {
                                most.set(AT_ONCE);
                                query.set(event_target_value(&event));
                            })
                        />
                    </div>
                </div>
                {sort(state, order)}
            </div>
            <p class="count" role="status">{live(move || found.with(|found| count(state, found)))}</p>
            {empty(state, found)}
            <ul class="lines" aria-label=page.title>
                <For each=move || found.with(|found| found.lines.clone()) key=list::Line::key let:line>
                    {line::line(line)}
                </For>
            </ul>
            {more(state, found, most)} {removed(state, found)} {files::files()} {strays::strays()}
        </div>
    }
    .into_any()
}

fn count(state: State, found: &Found) -> String {
    let page = &state.words.shelf_page;
    match found {
        Found { all: 0, .. } => String::new(),
        Found { all, matching, .. } if matching == all => (page.kept)(*all),
        Found { matching: 0, .. } => page.none_match.to_owned(),
        Found { all, matching, .. } => (page.found)(*matching, *all),
    }
}

fn empty(state: State, found: Memo<Found>) -> AnyView {
    let page = &state.words.shelf_page;
    view! {
        <p class="empty" hidden=flag(move || found.with(|found| found.all > 0))>
            <strong>{page.empty}</strong> " " {page.empty_hint}
        </p>
    }
    .into_any()
}

fn sort(state: State, order: Memo<Order>) -> AnyView {
    let page = &state.words.shelf_page;
    let orders = [
        (Order::Newest, "newest", page.newest),
        (Order::Oldest, "oldest", page.oldest),
        (Order::Name, "name", page.by_name),
        (Order::NameBackwards, "name-backwards", page.by_name_backwards),
    ];
    let choices: Vec<Choice> = orders.iter().map(|(_, key, words)| ((*key).to_owned(), (*words).to_owned())).collect();
    let now = derive(move || {
        let found = orders.iter().find(|(each, ..)| *each == order.get());
        found.map_or_else(String::new, |(_, key, _)| (*key).to_owned())
    });
    let choose = Callback::new(move |chosen: String| {
        if let Some((order, ..)) = orders.iter().find(|(_, key, _)| *key == chosen) {
            state.settings.update(|settings| settings.order = *order);
        }
    });
    choice::labelled("shelf-sort".to_owned(), page.sort.to_owned().into(), Signal::stored(choices), now, choose)
}

fn more(state: State, found: Memo<Found>, most: RwSignal<usize>) -> AnyView {
    let left = memo(move || found.with(|found| found.matching - found.lines.len()));
    let button = move || {
        (left.get() > 0).then(|| {
            let show = move |_| most.update(|most| *most += AT_ONCE);
            view! { <button type="button" on:click=show>{(state.words.shelf_page.more)(left.get())}</button> }
        })
    };
    view! { <div class="actions">{button}</div> }.into_any()
}

/// What was removed can be put back, later as well.
fn removed(state: State, found: Memo<Found>) -> AnyView {
    let page = &state.words.shelf_page;
    let open = RwSignal::new(false);
    let count = memo(move || found.with(|found| found.removed));
    let lines = move || {
        let lines = state.shelf.with(|shelf| list::removed(shelf, AT_ONCE));
        let line = |(recipe, name, at): (_, String, u64)| {
            let name = state.called(&name);
            let label = format!("{} {name}", page.put_back);
            view! {
                <li>
                    <span>{name}</span>
                    <span class="note">{crate::ui::part::save::when(at)}</span>
                    <button type="button" aria-label=label on:click=on(move |_| state.put_back(recipe))>{page.put_back}</button>
                </li>
            }
        };
        lines.into_iter().map(line).collect_view()
    };
    view! {
        <section hidden=flag(move || count.get() == 0)>
            <button
                type="button"
                aria-expanded=attr(move || if open.get() { "true" } else { "false" })
                on:click=on(move |_| open.update(|open| *open = !*open))
            >
                {page.removed_ones} " (" {live(move || count.get())} ")"
            </button>
            {live(move || open.get().then(|| view! { <ul class="revisions">{lines()}</ul> }))}
        </section>
    }
    .into_any()
}
