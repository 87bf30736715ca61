//! Help: a tour, how to enter numbers and moistures, what to take care of and where data is; then the reference.

mod glossary;
mod ranges;
mod symbols;

use crate::browser::page;
use crate::domain::Caution;
use crate::t;
use crate::ui::components::Cautions;
use glossary::Glossary;
use leptos::prelude::*;
use ranges::TypicalRanges;
use symbols::Symbols;

/// The page.
#[component]
pub fn HelpSheet() -> impl IntoView {
    let contents = [
        ("help-tour", t!("help-tour")),
        ("help-numbers", t!("help-numbers")),
        ("help-bases", t!("help-bases")),
        ("help-cautions", t!("help-cautions")),
        ("help-data", t!("help-data")),
        ("help-scope", t!("help-scope")),
        ("help-keys", t!("help-keys")),
        ("help-ranges", t!("help-ranges")),
        ("help-glossary", t!("help-glossary")),
        ("help-symbols", t!("help-symbols")),
        ("help-sources", t!("help-sources")),
        ("help-about", t!("help-about")),
    ];
    // The hash is the page's, so only focus and view move.
    let link = |(id, title): (&'static str, String)| {
        let go = move |_| page::show(&format!("#{id}"));
        view! { <li><button type="button" class="link" on:click=go>{title}</button></li> }
    };
    view! {
        <div class="work-sheet help-sheet">
            <header class="title"><h1>{t!("help-title")}</h1></header>
            <nav class="panel contents" aria-label=t!("help-contents")>
                <ul>{contents.into_iter().map(link).collect_view()}</ul>
            </nav>
            <Section id="help-tour" title=t!("help-tour")><ol class="points">{lines(&t!("help-tour-steps"))}</ol></Section>
            <Section id="help-numbers" title=t!("help-numbers")><ul class="points">{lines(&t!("help-numbers-rules"))}</ul></Section>
            <Section id="help-bases" title=t!("help-bases")><p>{t!("help-bases-text")}</p></Section>
            <Section id="help-cautions" title=t!("help-cautions")><p>{t!("help-cautions-text")}</p><Cautions all=Caution::ALL.to_vec()/></Section>
            <Section id="help-data" title=t!("help-data")><ul class="points">{lines(&t!("help-data-rules"))}</ul></Section>
            <Section id="help-scope" title=t!("help-scope")>
                <ul class="points">{lines(&t!("help-scope-does"))}</ul>
                <h3>{t!("help-scope-not")}</h3>
                <ul class="points">{lines(&t!("help-scope-does-not"))}</ul>
            </Section>
            <Section id="help-keys" title=t!("help-keys")><dl class="keys">{pairs(&t!("help-keys-list"))}</dl></Section>
            <Section id="help-ranges" title=t!("help-ranges")><TypicalRanges/></Section>
            <Section id="help-glossary" title=t!("help-glossary")><Glossary/></Section>
            <Section id="help-symbols" title=t!("help-symbols")><Symbols/></Section>
            <Section id="help-sources" title=t!("help-sources")><p>{t!("help-sources-text")}</p></Section>
            <Section id="help-about" title=t!("help-about")>
                <p>{t!("help-version", version = env!("CARGO_PKG_VERSION"))}</p>
            </Section>
        </div>
    }
}

/// A section with its heading, which the contents lead to.
#[component]
fn Section(
    /// The id of the heading.
    id: &'static str,
    /// The heading.
    title: String,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    view! {
        <section class="panel" aria-labelledby=id>
            <h2 id=id tabindex="-1">{title}</h2>
            {children()}
        </section>
    }
}

/// Each line of a message as an item.
fn lines(text: &str) -> impl IntoView + use<> {
    text.lines().map(|line| view! { <li>{line.to_owned()}</li> }).collect_view()
}

/// Each line of a message as a term and what it means, as `a — b`.
pub fn terms(text: &str) -> Vec<(String, String)> {
    let pair = |line: &str| line.split_once(" — ").map(|(term, meaning)| (term.to_owned(), meaning.to_owned()));
    text.lines().filter_map(pair).collect()
}

fn pairs(text: &str) -> impl IntoView + use<> {
    let pair = |(key, does): (String, String)| view! { <div><dt><kbd>{key}</kbd></dt><dd>{does}</dd></div> };
    terms(text).into_iter().map(pair).collect_view()
}
