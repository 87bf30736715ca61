//! The entries of the log, the newest first; above them what is read now, with its remark.

use super::actions::{logged_name, restore, strike};
use crate::domain::Grade;
use crate::quantity::format;
use crate::record::content::check_log::LoggedFigure;
use crate::record::limits::LONGEST_NAME;
use crate::record::{CheckId, CheckRecord};
use crate::t;
use crate::ui::components::{Mark, TextBox};
use crate::ui::page::line::check::now::{CheckSheet, read_at};
use crate::ui::part::save::when;
use crate::ui::state::State;
use leptos::prelude::*;

/// So many entries are in sight at first, and so many on demand; the file has all.
const FIRST: usize = 5;
const MOST: usize = 50;

/// The table.
#[component]
pub fn LogEntries() -> impl IntoView {
    let state = expect_context::<State>();
    let all = RwSignal::new(false);
    let open = RwSignal::new(None::<CheckId>);
    let count = Memo::new(move |_| state.line.log.with(Vec::len));
    let shown = move || {
        let most = if all.get() { MOST } else { FIRST };
        state.line.log.with(|log| log.iter().rev().take(most).cloned().collect::<Vec<_>>())
    };
    view! {
        <div class="logged">
            <table class="plain-table checks" aria-label=t!("check-log")>
                <thead><tr>
                    <th scope="col" class="l">{t!("check-read-at")}</th>
                    <th scope="col" class="l">{t!("check-by")}</th>
                    <th scope="col">{t!("check-out")}</th>
                    <th scope="col" class="l">{t!("check-remark")}</th>
                    <td></td>
                </tr></thead>
                <tbody>
                    <PresentCheck/>
                    <For each=shown key=|check| check.id() let:check><Entry check=check open=open/></For>
                </tbody>
            </table>
            <Show when=move || { count.get() > FIRST }>
                <button
                    type="button"
                    class="bare"
                    aria-expanded=move || if all.get() { "true" } else { "false" }
                    on:click=move |_| all.update(|all| *all = !*all)
                >
                    {move || if all.get() { t!("check-fewer") } else { t!("check-all", count = count.get().min(MOST)) }}
                </button>
            </Show>
        </div>
    }
}

/// What is read now and is not in the log yet.
#[component]
fn PresentCheck() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CheckSheet>();
    let at = Memo::new(move |_| when(read_at(state)));
    let author = Memo::new(move |_| state.settings.with(|settings| settings.initials.clone()));
    let out = Memo::new(move |_| sheet.now.with(|now| now.check.as_ref().map(|_| now.outside().count())));
    let remark = Memo::new(move |_| state.line.book(|book| book.remark.clone()));
    let put = Callback::new(move |text: String| state.line.type_into("remark".to_owned(), |book| book.remark = text));
    view! {
        <tr class="present" class:warn=move || { out.get().unwrap_or(0) > 0 }>
            <th scope="row" class="l">{move || at.get()} <span class="sub">{t!("check-not-saved")}</span></th>
            <td class="l">{move || author.get()}</td>
            <td>{move || out.get()}</td>
            <td class="l remark" colspan="2">
                <TextBox
                    id="check-remark"
                    label=t!("check-remark")
                    value=remark
                    longest=LONGEST_NAME
                    on_input=put
                    on_leave=Callback::new(move |()| state.line.close_step())
                />
            </td>
        </tr>
    }
}

/// An entry, and behind ⋯ what it says in full.
#[component]
fn Entry(
    /// The check.
    check: CheckRecord,
    /// The entry whose details are open.
    open: RwSignal<Option<CheckId>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let id = CheckId(check.id());
    let content = check.content();
    let out = content.outside().count();
    let at = when(content.at);
    let is_struck = Memo::new(move |_| state.line.struck.with(|struck| struck.contains(&id)));
    let is_open = Memo::new(move |_| open.get() == Some(id));
    let toggle = move |_| open.update(|open| *open = if *open == Some(id) { None } else { Some(id) });
    let remark = content.remark.clone();
    let name = t!("line-details-of", name = t!("check-entry", time = at.clone()));
    let details = StoredValue::new(check.clone());
    view! {
        <tr class:warn={out > 0} class:struck=move || is_struck.get()>
            <th scope="row" class="l">{at}</th>
            <td class="l">{content.author.clone()}</td>
            <td>{(out > 0).then(|| view! { <Mark grade=Grade::Unusual/> " " })} {out}</td>
            <td class="l remark">{remark} {move || is_struck.get().then(|| view! { <span class="sub">{t!("check-struck-out")}</span> })}</td>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    aria-label=name
                    aria-expanded=move || if is_open.get() { "true" } else { "false" }
                    on:click=toggle
                >
                    "⋯"
                </button>
            </td>
        </tr>
        <Show when=move || is_open.get()>
            <tr class="details"><td colspan="5" class="l">{details.with_value(|check| full(state, check, is_struck))}</td></tr>
        </Show>
    }
}

/// Recipe, revision, what was off, and the way to strike it out.
fn full(state: State, check: &CheckRecord, is_struck: Memo<bool>) -> impl IntoView + use<> {
    let content = check.content();
    let revision = content.revision.and_then(|id| state.seen(id)).map(|seen| crate::ui::part::version::label(&seen));
    let recipe = [Some(content.recipe.clone()), revision].into_iter().flatten().collect::<Vec<_>>().join(" · ");
    let outside: Vec<String> = content.outside().map(|figure| deviation(state, figure)).collect();
    let outside =
        if outside.is_empty() { t!("check-within") } else { t!("check-were-outside", which = outside.join(", ")) };
    let (own, other) = (check.clone(), check.clone());
    let act = move |_| if is_struck.get_untracked() { restore(state, &own) } else { strike(state, &other) };
    let label = move || if is_struck.get() { t!("check-restore") } else { t!("check-strike-out") };
    view! {
        <p>{recipe}</p>
        <p>{outside}</p>
        <p><button type="button" on:click=act>{label}</button></p>
    }
}

/// A figure with its deviation as it was logged.
fn deviation(state: State, figure: &LoggedFigure) -> String {
    let percent = 100.0 * figure.deviation().unwrap_or_default();
    let number = format::in_steps(percent, 0.1, state.units.with(|units| units.mark));
    let sign = if percent > 0.0 { "+" } else { "" };
    let unit = if figure.points { t!("check-points") } else { "%".to_owned() };
    format!("{} {sign}{number}\u{a0}{unit}", logged_name(figure))
}
