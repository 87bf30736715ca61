//! The library: all recipes that are kept, found as one types.

mod facts;
mod files;
mod history;
mod kept_lines;
mod line;
mod list;
mod unreadable;

use crate::browser::element::{Part, View, button, each, el};
use crate::browser::graph::*;
use crate::record::content::search::SortOrder;
use crate::ui::field::choice::{self, Choice};
use crate::ui::signal::{Memo, RwSignal, Signal, memo};
use crate::ui::state::{State, state};
pub use files::dropped;
use list::Found;

/// So many recipes are shown at first, and so many more each time that more are asked for. A
/// thousand boxes nobody looks at would cost more than finding them.
const AT_ONCE: usize = 40;

/// The page.
pub fn library() -> View {
    let state = state();
    let page = &state.words.library_page;
    let query = RwSignal::new(String::new());
    let most = RwSignal::new(AT_ONCE);
    let order = memo(move || state.settings.with(|settings| settings.order));
    let found = memo(move || {
        state.library.with(|library| query.with(|query| list::find(library, query, order.get(), most.get())))
    });
    el("div")
        .class("library page")
        .child(el("h1").child(page.title))
        .child(
            el("div")
                .class("search")
                .child(
                    el("div").class("field").child(el("label").set("for", "library-search").child(page.search)).child(
                        el("div").class("box").child(
                            el("input")
                                .set("id", "library-search")
                                .set("type", "search")
                                .set("autocomplete", "off")
                                .set("spellcheck", "false")
                                .property("value", move || query.get())
                                .on("input", move |event| {
                                    most.set(AT_ONCE);
                                    query.set(event_target_value(&event));
                                }),
                        ),
                    ),
                )
                .child(sort(state, order)),
        )
        .child(el("p").class("count").set("role", "status").child(move || found.with(|found| count(state, found))))
        .child(empty(state, found))
        .child(el("ul").class("lines").set("aria-label", page.title).child(each(
            move || found.with(|found| found.lines.clone()),
            list::ListedRecipe::key,
            line::line,
        )))
        .child(more(state, found, most))
        .child(take_away(state, found, query))
        .child(removed(state, found))
        .child(files::files())
        .child(kept_lines::kept_lines())
        .child(unreadable::unreadable())
        .view()
}

fn count(state: State, found: &Found) -> String {
    let page = &state.words.library_page;
    match found {
        Found { all: 0, .. } => String::new(),
        Found { all, matching, .. } if matching == all => (page.kept)(*all),
        Found { matching: 0, .. } => page.none_match.to_owned(),
        Found { all, matching, .. } => (page.found)(*matching, *all),
    }
}

fn empty(state: State, found: Memo<Found>) -> View {
    let page = &state.words.library_page;
    el("p")
        .class("empty")
        .set("hidden", move || found.with(|found| found.all > 0))
        .child(el("strong").child(page.empty))
        .text(" ")
        .child(page.empty_hint)
        .view()
}

fn sort(state: State, order: Memo<SortOrder>) -> View {
    let page = &state.words.library_page;
    let orders = [
        (SortOrder::Newest, "newest", page.newest),
        (SortOrder::Oldest, "oldest", page.oldest),
        (SortOrder::Name, "name", page.by_name),
        (SortOrder::NameBackwards, "name-backwards", page.by_name_backwards),
    ];
    let choices: Vec<Choice> = orders.iter().map(|(_, key, words)| ((*key).to_owned(), (*words).to_owned())).collect();
    let now = memo(move || {
        let found = orders.iter().find(|(each, ..)| *each == order.get());
        found.map_or_else(String::new, |(_, key, _)| (*key).to_owned())
    });
    let choose = Callback::new(move |chosen: String| {
        if let Some((order, ..)) = orders.iter().find(|(_, key, _)| *key == chosen) {
            state.settings.update(|settings| settings.order = *order);
        }
    });
    choice::labelled("library-sort".to_owned(), page.sort.to_owned().into(), Signal::stored(choices), now, choose)
}

fn take_away(state: State, found: Memo<Found>, query: RwSignal<String>) -> View {
    let words = &state.words.library_page;
    let some = memo(move || found.with(|found| found.matching > 0));
    let save = move || {
        let order = state.settings.with_untracked(|settings| settings.order);
        let mark = state.units.get_untracked().mark;
        let text = state
            .library
            .with_untracked(|library| query.with_untracked(|query| list::csv(library, query, order, mark)));
        state.hand_out(&format!("{}.csv", words.library_name), "text/csv", &text);
    };
    let button = move || some.get().then(|| button().on_click(save).child(words.save_list));
    el("div").class("actions").child(button).view()
}

fn more(state: State, found: Memo<Found>, most: RwSignal<usize>) -> View {
    let left = memo(move || found.with(|found| found.matching - found.lines.len()));
    let button = move || {
        (left.get() > 0).then(|| {
            let show = move |_| most.update(|most| *most += AT_ONCE);
            button().on("click", show).child((state.words.library_page.more)(left.get()))
        })
    };
    el("div").class("actions").child(button).view()
}

/// What was removed can be put back, later as well.
fn removed(state: State, found: Memo<Found>) -> View {
    let page = &state.words.library_page;
    let open = RwSignal::new(false);
    let count = memo(move || found.with(|found| found.removed));
    let lines = move || {
        let lines = state.library.with(|library| list::removed(library, AT_ONCE));
        let line = |(recipe, name, at): (_, String, u64)| {
            let name = state.called(&name);
            let label = format!("{} {name}", page.put_back);
            el("li")
                .child(el("span").child(name))
                .child(el("span").class("note").child(crate::ui::part::save::when(at)))
                .child(button().set("aria-label", label).on_click(move || state.put_back(recipe)).child(page.put_back))
        };
        lines.into_iter().map(line).collect::<View>()
    };
    el("section")
        .set("hidden", move || count.get() == 0)
        .child(
            button()
                .set("aria-expanded", move || if open.get() { "true" } else { "false" })
                .on_click(move || open.update(|open| *open = !*open))
                .child(page.removed_ones)
                .text(" (")
                .child(move || count.get().to_string())
                .text(")"),
        )
        .child(move || open.get().then(|| el("ul").class("revisions").child(lines())))
        .view()
}
