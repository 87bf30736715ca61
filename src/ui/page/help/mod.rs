//! Help: what is worked out and what is not, how to type and move about, and where every value comes
//! from.

mod symbols;
mod windows;

use crate::browser::element::{Part, View, button, el, many};
use crate::browser::page as browser;
use crate::domain::Caution;
use crate::ui::part::caution;
use crate::ui::state::{State, state};

/// The page.
pub fn help() -> View {
    let state = state();
    let page = &state.words.help_page;
    let version = env!("CARGO_PKG_VERSION");
    let sections: [(&'static str, &'static str, View); 12] = [
        ("help-what", page.what, items(page.what_list)),
        ("help-not", page.not, items(page.not_list)),
        ("help-tour", page.tour, steps(page.tour_list)),
        ("help-numbers", page.numbers, items(page.numbers_list)),
        ("help-basis", page.basis, text(page.basis_text)),
        ("help-keys", page.keys, keys(state)),
        (
            "help-cautions",
            page.cautions,
            many([text(page.cautions_text).view(), caution::list(Caution::ALL.to_vec()).view()]).view(),
        ),
        ("help-windows", page.windows, windows::windows(state)),
        ("help-symbols", page.symbols, symbols::symbols(state)),
        ("help-sources", page.sources, text(page.sources_text)),
        ("help-kept", page.kept, items(page.kept_list)),
        (
            "help-about",
            page.about,
            el("p").child(page.version).text(" ").child(version).text(". ").child(page.privacy).view(),
        ),
    ];
    let links = sections.iter().map(|(id, title, _)| link(id, title)).collect::<View>();
    let shown = sections.into_iter().map(|(id, title, content)| {
        el("section")
            .set("aria-labelledby", id)
            .child(el("h2").set("id", id).set("tabindex", "-1").child(title))
            .child(content)
    });
    el("div")
        .class("help page")
        .child(el("h1").child(page.title))
        .child(el("nav").class("contents").set("aria-label", page.contents).child(el("ul").child(links)))
        .child(shown.collect::<View>())
        .view()
}

/// A way to a section. The hash is the page's, so only focus and view move.
fn link(id: &'static str, title: &'static str) -> View {
    el("li").child(button().class("link").on_click(move || browser::show(&format!("#{id}"))).child(title)).view()
}

fn text(text: &'static str) -> View {
    el("p").child(text).view()
}

fn items(list: &'static [&'static str]) -> View {
    el("ul").class("points").child(list.iter().map(|item| el("li").child(*item)).collect::<View>()).view()
}

fn steps(list: &'static [&'static str]) -> View {
    el("ol").class("points").child(list.iter().map(|item| el("li").child(*item)).collect::<View>()).view()
}

fn keys(state: State) -> View {
    let key = |(key, what): &(&'static str, &'static str)| {
        el("div").child(el("dt").child(el("kbd").child(*key))).child(el("dd").child(*what))
    };
    el("dl").class("keys").child(state.words.help_page.keys_list.iter().map(key).collect::<View>()).view()
}
