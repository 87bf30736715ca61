//! The bench: trial boards from the weigh-out sheet to what a series tells. One section is shown at a time.

mod boards;
mod desk;
mod effects;
mod paper;
mod parts;
mod selection;
mod series;
mod sheet;
mod tested;
mod trials;
mod weighing;

pub use paper::paper;

use crate::browser::element::{Part, View, button, el};
use crate::browser::graph::untrack;
use crate::browser::print;
use crate::ui::part::save::when;
use crate::ui::part::version;
use crate::ui::persistence::has_begun;
use crate::ui::signal::memo;
use crate::ui::state::{State, state};
use desk::Desk;
use leptos::reactive::prelude::*;
use parts::{act, text_box};

/// The names of all sections, in the order of the page.
pub const fn sections(state: State) -> [&'static str; 6] {
    let page = &state.words.bench_page;
    [page.sheet, page.weighing, page.series, page.boards, page.effects, page.trials]
}

/// The page.
pub fn bench() -> View {
    let state = state();
    state.begin_bench();
    let desk = Desk::new(state);
    let page = &state.words.bench_page;
    let tabs = sections(state);
    let section = state.bench.section;
    let tab = |(at, name): (usize, &'static str)| {
        button()
            .set("aria-current", move || (section.get() == at).then_some("true"))
            .on_click(move || section.set(at))
            .child(name)
    };
    let body = move || {
        let (at, _) = (section.get(), state.bench.opening.get());
        untrack(|| {
            let inside = match at {
                1 => weighing::weighing(desk),
                2 => series::series(desk),
                3 => boards::boards(desk),
                4 => effects::effects(desk),
                5 => trials::trials(desk),
                _ => sheet::sheet(desk),
            };
            el("section")
                .set("aria-labelledby", "bench-section")
                .child(
                    el("h2")
                        .set("id", "bench-section")
                        .set("tabindex", "-1")
                        .child(tabs.get(at).copied().unwrap_or(page.sheet)),
                )
                .child(inside)
                .view()
        })
    };
    el("div")
        .class("bench page")
        .child(el("h1").child(page.title))
        .child(head(state))
        .child(
            el("nav")
                .class("sections")
                .set("aria-label", page.title)
                .child(tabs.into_iter().enumerate().map(tab).collect::<View>()),
        )
        .child(selection::selection(desk))
        .child(body)
        .view()
}

/// The trial: its recipe, its name, and what can be done with it.
fn head(state: State) -> View {
    let page = &state.words.bench_page;
    let bench = state.bench;
    let basis = memo(move || {
        bench.open.with(|open| {
            let name = state.called(&open.trial.recipe_name);
            match open.trial.revision {
                Some(id) => match state.seen(id) {
                    Some(seen) => format!("{name}, {}", version::label(state, &seen)),
                    None => name,
                },
                None => format!("{name}, {}", page.unsaved_recipe),
            }
        })
    });
    let differs =
        memo(move || bench.open.with(|open| has_begun(open) && state.draft.with(|draft| *draft != open.trial.draft)));
    let take = move || {
        let before = bench.open.get_untracked();
        state.take_recipe();
        state.tell_undo(page.recipe_taken, move || bench.load(before.clone()));
    };
    // Read once a save, not once a key.
    let kept = memo(move || {
        let id = bench.open.with(|open| open.from)?;
        let trial = state.library.with(|library| library.trial(id)).ok().flatten()?;
        Some(trial.content().clone())
    });
    let standing = memo(move || {
        kept.with(|kept| match kept {
            None => page.not_kept.to_owned(),
            Some(kept) => bench.open.with(|open| {
                let now = &open.trial;
                let same = (&now.name, &now.note, &now.draft, &now.sheet, &now.weighed)
                    == (&kept.name, &kept.note, &kept.draft, &kept.sheet, &kept.weighed)
                    && (&now.series, &now.boards, &now.requirements, now.model)
                        == (&kept.series, &kept.boards, &kept.requirements, kept.model);
                if same { format!("{} {}", page.kept_at, when(kept.saved_at)) } else { page.changed.to_owned() }
            }),
        })
    });
    el("section")
        .class("trial")
        .set("aria-label", page.name)
        .child(
            el("div")
                .class("fields")
                .child(text_box(
                    state,
                    "bench-name".to_owned(),
                    page.name,
                    |trial| trial.name.clone(),
                    |trial, name| trial.name = name,
                ))
                .child(text_box(
                    state,
                    "bench-note".to_owned(),
                    page.note,
                    |trial| trial.note.clone(),
                    |trial, note| trial.note = note,
                )),
        )
        .child(
            el("p")
                .child(el("span").class("note").child(page.basis))
                .text(" ")
                .child(move || basis.get())
                .text(" · ")
                .child(el("span").set("id", "trial-state").child(move || standing.get())),
        )
        .child(move || {
            differs.get().then(|| {
                el("div").class("actions tied").child(el("p").child(page.basis_tied)).child(act(page.take_recipe, take))
            })
        })
        .child(
            el("div")
                .class("actions")
                .child(button().class("primary").on_click(move || state.save_trial()).child(page.keep))
                .child(act(page.new, move || state.new_trial()))
                .child(act(state.words.tools.print, || _ = print::print())),
        )
        .view()
}
