//! Help: what is worked out and what is not, how to type and move about, and where every value comes
//! from.

mod symbols;
mod windows;

use crate::browser::page as browser;
use crate::domain::Caution;
use crate::ui::erased::on;
use crate::ui::part::caution;
use crate::ui::state::{State, state};
use leptos::prelude::*;

/// The page.
pub fn help() -> AnyView {
    let state = state();
    let page = &state.words.help_page;
    let version = env!("CARGO_PKG_VERSION");
    let sections: [(&'static str, &'static str, AnyView); 12] = [
        ("help-what", page.what, items(page.what_list)),
        ("help-not", page.not, items(page.not_list)),
        ("help-tour", page.tour, steps(page.tour_list)),
        ("help-numbers", page.numbers, items(page.numbers_list)),
        ("help-basis", page.basis, text(page.basis_text)),
        ("help-keys", page.keys, keys(state)),
        (
            "help-cautions",
            page.cautions,
            view! { {text(page.cautions_text)} {caution::list(Caution::ALL.to_vec())} }.into_any(),
        ),
        ("help-windows", page.windows, windows::windows(state)),
        ("help-symbols", page.symbols, symbols::symbols(state)),
        ("help-sources", page.sources, text(page.sources_text)),
        ("help-kept", page.kept, items(page.kept_list)),
        ("help-about", page.about, view! { <p>{page.version} " " {version} ". " {page.privacy}</p> }.into_any()),
    ];
    let links = sections.iter().map(|(id, title, _)| link(id, title)).collect_view();
    let shown = sections.into_iter().map(|(id, title, content)| {
        view! { <section aria-labelledby=id><h2 id=id tabindex="-1">{title}</h2> {content}</section> }
    });
    view! {
        <div class="help page">
            <h1>{page.title}</h1>
            <nav class="contents" aria-label=page.contents><ul>{links}</ul></nav>
            {shown.collect_view()}
        </div>
    }
    .into_any()
}

/// A way to a section. The hash is the page's, so only focus and view move.
fn link(id: &'static str, title: &'static str) -> AnyView {
    view! { <li><button type="button" class="link" on:click=on(move |_| browser::show(&format!("#{id}")))>{title}</button></li> }
        .into_any()
}

fn text(text: &'static str) -> AnyView {
    view! { <p>{text}</p> }.into_any()
}

fn items(list: &'static [&'static str]) -> AnyView {
    view! { <ul class="points">{list.iter().map(|item| view! { <li>{*item}</li> }).collect_view()}</ul> }.into_any()
}

fn steps(list: &'static [&'static str]) -> AnyView {
    view! { <ol class="points">{list.iter().map(|item| view! { <li>{*item}</li> }).collect_view()}</ol> }.into_any()
}

fn keys(state: State) -> AnyView {
    let key =
        |(key, what): &(&'static str, &'static str)| view! { <div><dt><kbd>{*key}</kbd></dt><dd>{*what}</dd></div> };
    view! { <dl class="keys">{state.words.help_page.keys_list.iter().map(key).collect_view()}</dl> }.into_any()
}
