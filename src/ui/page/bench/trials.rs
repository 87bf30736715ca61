//! Trials that are kept with the recipe's revision: opened again, given out, taken in.

use super::desk::Desk;
use super::parts::act;
use crate::browser::element::{Part, View, button, el, many};
use crate::browser::file::{self, ReadFileError};
use crate::browser::graph::event_target;
use crate::browser::graph::spawn_local;
use crate::domain::Grade;
use crate::record::content::trial::{LARGEST, Trial};
use crate::ui::part::finding::told;
use crate::ui::part::save::when;
use crate::ui::part::version;
use crate::ui::persistence::{TrialTable, records};
use crate::ui::signal::RwSignal;
use crate::ui::state::State;
use crate::ui::text::{Carrier, Message};
use leptos::reactive::prelude::*;

/// The section.
pub fn trials(desk: Desk) -> View {
    let state = desk.state;
    let page = &state.words.bench_page;
    let refused = RwSignal::new(None::<Message>);
    let take = move |event: crate::browser::graph::Event| {
        let Some(chosen) = file::chosen(&event_target(&event)) else { return };
        refused.set(None);
        spawn_local(async move {
            let text = file::read_text(&chosen, LARGEST as u64).await;
            // What of the trial on the page is saved is known only then.
            records::loaded(state).await;
            // The page may be gone meanwhile.
            _ = refused.try_set(taken(state, text));
        });
    };
    el("div")
        .class("trials")
        .child(
            el("div")
                .class("actions")
                .child(act(page.export_json, move || state.give_out_trial()))
                .child(act(page.export_boards, move || state.give_out_trial_table(TrialTable::Boards)))
                .child(act(page.export_results, move || state.give_out_trial_table(TrialTable::Results)))
                .child(act(page.export_readings, move || state.give_out_trial_table(TrialTable::Readings)))
                .child(act(page.export_sheets, move || state.give_out_trial_table(TrialTable::Sheets)))
                .child(
                    el("input")
                        .set("id", "import-trial")
                        .class("out-of-sight")
                        .set("type", "file")
                        .set("accept", ".json,application/json")
                        .on("change", take),
                )
                .child(el("label").class("button").set("for", "import-trial").child(page.import)),
        )
        .child(el("div").set("role", "alert").child(move || refused.get().map(|message| told(Grade::Stop, message))))
        .child(move || list(state))
        .view()
}

/// Puts the trial of a file on the page; why not, if it does not go there.
fn taken(state: State, text: Result<String, ReadFileError>) -> Option<Message> {
    let page = &state.words.library_page;
    match text {
        Ok(text) => state.take_in_trial(&text).err().map(|refusal| (state.words.refusal)(&refusal, Carrier::File)),
        Err(ReadFileError::TooLarge { bytes, limit }) => Some((page.file_too_large)(bytes, limit)),
        Err(ReadFileError::Unreadable(own)) => Some((page.file_unreadable)(&own)),
    }
}

fn list(state: State) -> View {
    let page = &state.words.bench_page;
    let trials = match state.library.with(|library| library.trials()) {
        Ok(trials) => trials,
        Err(why) => return told(Grade::Stop, (state.words.store)(&why)),
    };
    let lines: Vec<View> = trials.kept().map(|trial| line(state, trial)).collect();
    let unreadable = trials.unreadable.iter().map(|(key, why)| {
        let Message { what, fix } = (state.words.unread)(why);
        el("li").child(format!("{key}: {what} {fix}"))
    });
    many([
        if lines.is_empty() {
            el("p").class("empty").child(page.no_trials).view()
        } else {
            el("ul").class("lines").set("aria-label", page.trials).child(lines).view()
        },
        (!trials.unreadable.is_empty())
            .then(|| many([el("p").child(page.unreadable).view(), el("ul").child(unreadable.collect::<View>()).view()]))
            .view(),
    ])
}

fn line(state: State, trial: &Trial) -> View {
    let page = &state.words.bench_page;
    let content = trial.content();
    let id = trial.trial();
    let name = state.called(&content.name);
    let revision = content.revision.and_then(|id| state.seen(id));
    let revision = revision.map(|seen| format!(", {}", version::label(state, &seen)));
    let recipe = state.called(&content.recipe_name);
    let boards = content.boards.len();
    let label = |verb: &str| format!("{verb} {name}");
    let (open_label, remove_label) = (label(page.open), label(state.words.tools.remove));
    el("li")
        .child(el("h3").child(name.clone()))
        .child(
            el("p")
                .class("note")
                .child(format!(
                    "{} · {} {recipe}{}",
                    when(content.saved_at),
                    page.of_recipe,
                    revision.unwrap_or_default()
                ))
                .child(format!(" · {}", (state.words.bench.board_count)(boards))),
        )
        .child((!content.note.is_empty()).then(|| el("p").child(content.note.clone())))
        .child(
            el("div")
                .class("actions")
                .child(button().set("aria-label", open_label).on_click(move || state.open_trial(id)).child(page.open))
                .child(
                    button()
                        .set("aria-label", remove_label)
                        .on_click(move || state.remove_trial(id))
                        .child(state.words.tools.remove),
                ),
        )
        .view()
}
