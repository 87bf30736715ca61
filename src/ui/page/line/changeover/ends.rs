//! From which recipe to which, and what is done with the plan.

use super::context::ChangeSheet;
use crate::browser::{clock, page};
use crate::record::content::line::End;
use crate::record::content::revision::Standing;
use crate::record::{PlannedChangeover, RevisionId};
use crate::t;
use crate::ui::components::{Choice, ChoiceOption};
use crate::ui::state::State;
use leptos::prelude::*;

/// Stands for the recipe that is open.
const OPEN: &str = "open";

/// Both ends on one line: to choose before there is a plan, as planned after it.
#[component]
pub fn ChooseEnds() -> impl IntoView {
    let sheet = expect_context::<ChangeSheet>();
    let has_plan = Memo::new(move |_| sheet.plan.with(Option::is_some));
    view! {
        <Show when=move || has_plan.get() fallback=|| view! { <NewPlan/> }><PlannedEnds/></Show>
    }
}

#[component]
fn NewPlan() -> impl IntoView {
    let state = expect_context::<State>();
    let options = Memo::new(move |_| recipes(state));
    let (from, to) = (RwSignal::new(OPEN.to_owned()), RwSignal::new(String::new()));
    let plan = move |_| {
        let ends = end(state, &from.get_untracked()).zip(end(state, &to.get_untracked()));
        let Some((from, to)) = ends else { return state.tell(t!("change-choose-both")) };
        state.line.change(|record| {
            record.planned = Some(PlannedChangeover { from, to, started: None, done: Default::default() });
        });
        request_animation_frame(|| page::focus("change-start"));
    };
    view! {
        <div class="change-ends">
            <Choice id="change-from" name=t!("change-from") labelled=true options=options value=from on_choose=Callback::new(move |key| from.set(key))/>
            <Choice id="change-to" name=t!("change-to") labelled=true options=options value=to on_choose=Callback::new(move |key| to.set(key))/>
            <button type="button" class="primary" on:click=plan>{t!("change-plan")}</button>
        </div>
        <p class="note">{t!("change-none")} " " {t!("change-hint")}</p>
    }
}

#[component]
fn PlannedEnds() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<ChangeSheet>();
    let name = move |to: bool| {
        Memo::new(move |_| {
            let plan = sheet.plan.get();
            plan.map(|plan| state.name_or_none(if to { &plan.to } else { &plan.from })).unwrap_or_default()
        })
    };
    let (from, to) = (name(false), name(true));
    let started = Memo::new(move |_| sheet.plan.with(|plan| plan.as_ref().and_then(|plan| plan.started)));
    let is_solved = Memo::new(move |_| sheet.plan.with(|plan| plan.as_ref().is_some_and(|plan| plan.solved.is_some())));
    let start = move |_| {
        let at = started.get_untracked().is_none().then(clock::now);
        state.line.change(|record| {
            if let Some(planned) = &mut record.planned {
                planned.started = at;
            }
        });
    };
    let discard = move |_| {
        let dropped = state.line.change(|record| record.planned = None);
        state.tell_undo(t!("change-discarded"), move || state.line.take_back(&dropped));
        request_animation_frame(|| page::focus("change-from"));
    };
    let start_words = move || if started.get().is_some() { t!("change-not-started") } else { t!("change-start") };
    view! {
        <div class="change-ends">
            <div class="fig"><span class="label">{t!("change-from")}</span><b>{move || from.get()}</b></div>
            <div class="fig"><span class="label">{t!("change-to")}</span><b>{move || to.get()}</b></div>
            <div class="change-actions">
                <Show when=move || is_solved.get()>
                    <button type="button" id="change-start" class:primary=move || started.get().is_none() on:click=start>{start_words}</button>
                </Show>
                <button type="button" on:click=discard>{t!("change-discard")}</button>
            </div>
        </div>
        <Show when=move || !is_solved.get()><p>{t!("change-unsolved")}</p></Show>
    }
}

/// The open recipe, and those in the library by their newest revision.
fn recipes(state: State) -> Vec<ChoiceOption> {
    let open = state.title.with(|title| state.name_or_none(&title.name));
    let mut all =
        vec![ChoiceOption::new("", t!("change-choose")), ChoiceOption::new(OPEN, t!("change-as-open", name = open))];
    state.library.with(|library| {
        let kept = library.recipes().into_iter().filter(|listed| listed.standing() == Standing::Kept);
        all.extend(kept.map(|listed| {
            let head = &listed.head.summary;
            ChoiceOption::new(head.id.to_string(), state.name_or_none(&head.name))
        }));
    });
    all
}

fn end(state: State, key: &str) -> Option<End> {
    if key == OPEN {
        let open = state.current_recipe();
        return Some(End { name: open.title.name, draft: open.draft });
    }
    let revision = state.library.with_untracked(|library| library.revision(RevisionId::parse(key)?))?;
    let content = revision.content();
    Some(End { name: content.name.clone(), draft: content.draft.clone() })
}
