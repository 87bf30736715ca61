//! The binder systems: typical ones to start from, and the mill's own.

use crate::browser::page as browser;
use crate::domain::library::{SystemKey, add_liquids};
use crate::domain::{Draft, Entry, Grade, LiquidDraft};
use crate::quantity::number::read;
use crate::quantity::{Kind, format};
use crate::record::SystemId;
use crate::ui::erased::{attr, flag, live, memo, on, prop};
use crate::ui::field::number_text::in_box;
use crate::ui::part::announce::UNDO;
use crate::ui::part::figure::joined;
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::state::{State, state};
use crate::ui::text::unit_shown;
use leptos::prelude::*;

/// The page.
pub fn systems() -> AnyView {
    let state = state();
    state.read_records();
    let page = &state.words.systems_page;
    let typical = SystemKey::ALL.iter().map(|key| {
        let words = (state.words.binder_system)(*key);
        let liquids = key.system().liquids;
        view! {
            <li class="system">
                <h3>{words.name}</h3>
                <p>{words.note}</p>
                {table(state, words.name, &liquids)}
                {uses(state, words.name.to_owned(), liquids)}
            </li>
        }
    });
    view! {
        <div class="systems page">
            <h1>{page.title}</h1>
            <p>{page.intro}</p>
            {own(state)}
            <section aria-labelledby="typical">
                <h2 id="typical">{page.typical}</h2>
                <p>{page.certificate_wins}</p>
                <ul class="list">{typical.collect_view()}</ul>
            </section>
        </div>
    }
    .into_any()
}

/// The mill's own, and the way to get one.
fn own(state: State) -> AnyView {
    let page = &state.words.systems_page;
    // What is shown of each, so that a system that did not change is not made anew.
    let systems = memo(move || {
        state.shelf.with(|shelf| {
            let own = |system: &&crate::record::system::BinderSystem| {
                let content = system.content();
                (system.system(), content.name.clone(), content.note.clone(), content.saved_at, content.liquids.clone())
            };
            shelf.systems().iter().map(own).collect::<Vec<_>>()
        })
    });
    view! {
        <section aria-labelledby="own">
            <h2 id="own">{page.own}</h2>
            <p class="empty" hidden=flag(move || systems.with(|systems| !systems.is_empty()))>{page.no_own}</p>
            <ul class="list">
                <For each=move || systems.get() key=|system| system.0 let:system>
                    {own_line(state, system)}
                </For>
            </ul>
            <p class="note" hidden=flag(move || systems.with(Vec::is_empty))>{page.edit_hint}</p>
            {save(state)}
        </section>
    }
    .into_any()
}

fn own_line(state: State, (id, name, note, at, liquids): (SystemId, String, String, u64, Vec<LiquidDraft>)) -> AnyView {
    let tools = &state.words.tools;
    let renaming = RwSignal::new(false);
    let remove = move |_| {
        state.remove_system(id);
        // The line is gone; what takes it back is next.
        request_animation_frame(|| browser::focus(UNDO));
    };
    let title = {
        let name = name.clone();
        move || {
            if renaming.get() {
                rename(state, id, name.clone(), renaming)
            } else {
                view! { <h3>{name.clone()}</h3> }.into_any()
            }
        }
    };
    let label = |verb: &str| format!("{verb} {name}");
    let (rename_label, remove_label) = (label(tools.rename), label(tools.remove));
    view! {
        <li class="system">
            {title}
            <p class="note">{state.words.shelf_page.saved_on} " " {when(at)}</p>
            {(!note.trim().is_empty()).then(|| view! { <p>{note.clone()}</p> })}
            {table(state, &name, &liquids)}
            {uses(state, name.clone(), liquids)}
            <div class="actions">
                <button type="button" aria-label=rename_label on:click=on(move |_| renaming.update(|now| *now = !*now))>{tools.rename}</button>
                <button type="button" aria-label=remove_label on:click=remove>{tools.remove}</button>
            </div>
        </li>
    }
    .into_any()
}

/// What the system consists of, in the units chosen.
fn table(state: State, name: &str, liquids: &[LiquidDraft]) -> AnyView {
    let page = &state.words.systems_page;
    // Doses name the liquids that they are on.
    let draft = Draft { liquids: liquids.to_vec(), ..Draft::default() };
    let row = |liquid: &LiquidDraft| {
        let dose_kind = crate::domain::LiquidField::Dose.kind(liquid.dose_way);
        let (dose, solids, spray, density) =
            (liquid.dose.clone(), liquid.solids.clone(), liquid.spray_solids.clone(), liquid.density.clone());
        let on = (state.words.dose_way)(liquid.dose_way, &draft).into_owned();
        let thinned = (!spray.is_blank()).then(|| {
            view! { <span class="note">{page.spray_solids} " " {live(move || shown(state, &spray, Kind::Solids))}</span> }
        });
        let source = liquid.source.trim();
        let source = if source.is_empty() { page.no_source.to_owned() } else { source.to_owned() };
        view! {
            <tr>
                <th scope="row">
                    {(state.words.liquid)(liquid).into_owned()} <span class="note">{(state.words.role)(liquid.role)}</span>
                </th>
                <td>{live(move || shown(state, &dose, dose_kind))} <span class="note">{on}</span></td>
                <td>{live(move || shown(state, &solids, Kind::Solids))} {thinned}</td>
                <td>{live(move || shown(state, &density, Kind::LiquidDensity))}</td>
                <td class="source">{source}</td>
            </tr>
        }
    };
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=name.to_owned()>
            <table class="of-system">
                <thead>
                    <tr>
                        <th scope="col">{page.liquid}</th>
                        <th scope="col">{page.dose}</th>
                        <th scope="col">{page.solids}</th>
                        <th scope="col">{page.density}</th>
                        <th scope="col">{page.source}</th>
                    </tr>
                </thead>
                <tbody>{liquids.iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
    .into_any()
}

/// An entry in the unit chosen; one that cannot be read as it was typed.
fn shown(state: State, entry: &Entry, kind: Kind) -> String {
    if entry.is_blank() {
        return state.words.tools.no_figure.to_owned();
    }
    if entry.unit.dimension() != kind.dimension() {
        return joined(&entry.text, entry.unit.symbol());
    }
    let units = state.units.get();
    let unit = units.unit(kind);
    // As typed, or rounded as the figures are: seven digits are for a box that is typed into.
    let text = match read(&entry.text, kind, entry.unit) {
        Ok(reading) if entry.unit != unit => format::amount(reading.amount(kind), unit, units.mark),
        _ => in_box(entry, kind, &units),
    };
    joined(&text, &unit_shown(unit, &state.currency.get()))
}

/// In place of the recipe's liquids, or beside them.
fn uses(state: State, name: String, liquids: Vec<LiquidDraft>) -> AnyView {
    let page = &state.words.systems_page;
    let (replace_label, add_label) =
        (format!("{}: {name}", page.replace_liquids), format!("{}: {name}", page.add_liquids));
    let take = move |beside: bool, words: String, liquids: &[LiquidDraft]| {
        state.edit(None, &mut |draft| {
            if !beside {
                draft.liquids.clear();
            }
            add_liquids(draft, liquids);
        });
        state.tell_step(words);
    };
    let (other_name, other_liquids) = (name.clone(), liquids.clone());
    view! {
        <div class="actions">
            <button type="button" aria-label=replace_label on:click=on(move |_| take(false, (page.taken)(&name), &liquids))>
                {page.replace_liquids}
            </button>
            <button type="button" aria-label=add_label on:click=on(move |_| take(true, (page.added)(&other_name), &other_liquids))>
                {page.add_liquids}
            </button>
        </div>
    }
    .into_any()
}

/// The recipe's liquids as a system of the mill's own.
fn save(state: State) -> AnyView {
    let page = &state.words.systems_page;
    let name = RwSignal::new(String::new());
    let note = RwSignal::new(String::new());
    let missing = RwSignal::new(false);
    let none = memo(move || state.draft.with(|draft| draft.liquids.is_empty()));
    let save = move || {
        let typed = name.with_untracked(|name| name.trim().to_owned());
        missing.set(typed.is_empty());
        if typed.is_empty() {
            browser::focus("system-name");
        } else if !none.get_untracked() && state.save_system(&typed, note.get_untracked().trim()).is_some() {
            name.set(String::new());
            note.set(String::new());
        }
    };
    view! {
        <p class="empty" hidden=flag(move || !none.get())>{page.no_liquids}</p>
        <form
            class="fields"
            hidden=flag(move || none.get())
            on:submit=on(move |event: leptos::ev::SubmitEvent| {
                event.prevent_default();
                save();
            })
        >
            <div class="field">
                <label for="system-name">{page.name}</label>
                <div class="box">
                    <input
                        id="system-name"
                        type="text"
                        autocomplete="off"
                        aria-describedby="system-name-says"
                        aria-invalid=attr(move || missing.get().then_some("true"))
                        prop:value=prop(move || name.get())
                        on:input=on(move |event| name.set(event_target_value(&event)))
                    />
                </div>
                <div class="says" id="system-name-says">
                    {live(move || missing.get().then(|| view! { <p class="finding stop">{mark(Grade::Stop)} " " {page.name_missing}</p> }))}
                </div>
            </div>
            <div class="field">
                <label for="system-note">{page.note}</label>
                <div class="box">
                    <input
                        id="system-note"
                        type="text"
                        autocomplete="off"
                        prop:value=prop(move || note.get())
                        on:input=on(move |event| note.set(event_target_value(&event)))
                    />
                </div>
            </div>
            <div class="field wide">
                <button type="submit" class="primary">{page.save}</button>
                <p class="aside">{page.save_hint}</p>
            </div>
        </form>
    }
    .into_any()
}

/// The box for another name, in place of the name.
fn rename(state: State, id: SystemId, now: String, renaming: RwSignal<bool>) -> AnyView {
    let tools = &state.words.tools;
    let box_id = format!("rename-{id}");
    let text = RwSignal::new(now.clone());
    let save = move || {
        let name = text.with_untracked(|text| text.trim().to_owned());
        renaming.set(false);
        if !name.is_empty() && name != now {
            state.rename_system(id, &name);
        }
    };
    let enter = save.clone();
    let focused = box_id.clone();
    request_animation_frame(move || browser::focus(&focused));
    view! {
        <div class="rename field">
            <label for=box_id.clone()>{state.words.systems_page.rename_hint}</label>
            <div class="box">
                <input
                    id=box_id
                    type="text"
                    autocomplete="off"
                    prop:value=prop(move || text.get())
                    on:input=on(move |event| text.set(event_target_value(&event)))
                    on:keydown=on(move |event: leptos::ev::KeyboardEvent| match event.key().as_str() {
                        "Enter" => enter(),
                        "Escape" => renaming.set(false),
                        _ => {}
                    })
                />
            </div>
            <div class="actions">
                <button type="button" class="primary" on:click=on(move |_| save())>{tools.rename}</button>
                <button type="button" on:click=on(move |_| renaming.set(false))>{tools.cancel}</button>
            </div>
        </div>
    }
    .into_any()
}
