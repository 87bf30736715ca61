//! The binder systems: typical ones to start from, and the mill's own.

use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::browser::page as browser;
use crate::domain::recipe::binder_system::{SystemKey, add_liquids};
use crate::domain::{Draft, Entry, Grade, LiquidDraft};
use crate::quantity::number::read;
use crate::quantity::{Kind, format};
use crate::record::SystemId;
use crate::record::content::binder_system::SystemDraft;
use crate::record::limits::LONGEST_NAME;
use crate::ui::field::number_text::in_box;
use crate::ui::part::amount::joined;
use crate::ui::part::finding::mark;
use crate::ui::part::save::when;
use crate::ui::persistence::records;
use crate::ui::signal::{RwSignal, memo};
use crate::ui::state::{State, state};
use crate::ui::text::unit_shown;

/// The page.
pub fn systems() -> View {
    let state = state();
    let page = &state.words.systems_page;
    let typical = SystemKey::ALL.iter().map(|key| {
        let words = (state.words.binder_system)(*key);
        let liquids = key.system().liquids;
        el("li")
            .class("system")
            .child(el("h3").child(words.name))
            .child(el("p").child(words.note))
            .child(table(state, words.name, &liquids))
            .child(uses(state, words.name.to_owned(), liquids))
    });
    el("div")
        .class("systems page")
        .child(el("h1").child(page.title))
        .child(el("p").child(page.intro))
        .child(own(state))
        .child(
            el("section")
                .set("aria-labelledby", "typical")
                .child(el("h2").set("id", "typical").child(page.typical))
                .child(el("p").child(page.certificate_wins))
                .child(el("ul").class("list").child(typical.collect::<View>())),
        )
        .view()
}

/// The mill's own, and the way to get one.
fn own(state: State) -> View {
    let page = &state.words.systems_page;
    // What is shown of each, so that a system that did not change is not made anew.
    let systems = memo(move || {
        state.library.with(|library| {
            let own = |system: &&crate::record::content::binder_system::SystemRevision| {
                let content = system.content();
                (system.system(), content.name.clone(), content.note.clone(), content.saved_at, content.liquids.clone())
            };
            library.systems().iter().map(own).collect::<Vec<_>>()
        })
    });
    el("section")
        .set("aria-labelledby", "own")
        .child(el("h2").set("id", "own").child(page.own))
        .child(
            el("p")
                .class("empty")
                .set("hidden", move || systems.with(|systems| !systems.is_empty()))
                .child(page.no_own),
        )
        .child(el("ul").class("list").child(each(
            move || systems.get(),
            |system| system.0.to_string(),
            move |system| own_line(state, system),
        )))
        .child(el("p").class("note").set("hidden", move || systems.with(Vec::is_empty)).child(page.edit_hint))
        .child(save(state))
        .view()
}

fn own_line(state: State, (id, name, note, at, liquids): (SystemId, String, String, u64, Vec<LiquidDraft>)) -> View {
    let tools = &state.words.tools;
    let renaming = RwSignal::new(false);
    let remove = move |_| {
        state.remove_system(id);
        // The line is gone; what takes it back is next.
        records::focus_undo(state);
    };
    let title = {
        let name = name.clone();
        move || {
            if renaming.get() { rename(state, id, name.clone(), renaming) } else { el("h3").child(name.clone()).view() }
        }
    };
    let label = |verb: &str| format!("{verb} {name}");
    let (rename_label, remove_label) = (label(tools.rename), label(tools.remove));
    el("li")
        .class("system")
        .child(title)
        .child(el("p").class("note").child(state.words.library_page.saved_on).text(" ").child(when(at)))
        .child((!note.trim().is_empty()).then(|| el("p").child(note.clone())))
        .child(table(state, &name, &liquids))
        .child(uses(state, name.clone(), liquids))
        .child(
            el("div")
                .class("actions")
                .child(
                    button()
                        .set("aria-label", rename_label)
                        .on_click(move || renaming.update(|now| *now = !*now))
                        .child(tools.rename),
                )
                .child(button().set("aria-label", remove_label).on("click", remove).child(tools.remove)),
        )
        .view()
}

/// What the system consists of, in the units chosen.
fn table(state: State, name: &str, liquids: &[LiquidDraft]) -> View {
    let page = &state.words.systems_page;
    // Doses name the liquids that they are on.
    let draft = Draft { liquids: liquids.to_vec(), ..Draft::default() };
    let row = |liquid: &LiquidDraft| {
        let dose_kind = crate::domain::LiquidField::Dose.kind(liquid.dose_way);
        let (dose, solids, spray, density) =
            (liquid.dose.clone(), liquid.solids.clone(), liquid.spray_solids.clone(), liquid.density.clone());
        let on = (state.words.dose_way)(liquid.dose_way, &draft).into_owned();
        let thinned = (!spray.is_blank()).then(|| {
            el("span")
                .class("note")
                .child(page.spray_solids)
                .text(" ")
                .child(move || shown(state, &spray, Kind::Solids))
        });
        let source = liquid.source.trim();
        let source = if source.is_empty() { page.no_source.to_owned() } else { source.to_owned() };
        el("tr")
            .child(
                el("th")
                    .set("scope", "row")
                    .child((state.words.liquid)(liquid).into_owned())
                    .child(el("span").class("note").child((state.words.role)(liquid.role))),
            )
            .child(el("td").child(move || shown(state, &dose, dose_kind)).child(el("span").class("note").child(on)))
            .child(el("td").child(move || shown(state, &solids, Kind::Solids)).child(thinned))
            .child(el("td").child(move || shown(state, &density, Kind::LiquidDensity)))
            .child(el("td").class("source").child(source))
    };
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", name.to_owned())
        .child(
            el("table")
                .class("of-system")
                .child(
                    el("thead").child(
                        el("tr")
                            .child(el("th").set("scope", "col").child(page.liquid))
                            .child(el("th").set("scope", "col").child(page.dose))
                            .child(el("th").set("scope", "col").child(page.solids))
                            .child(el("th").set("scope", "col").child(page.density))
                            .child(el("th").set("scope", "col").child(page.source)),
                    ),
                )
                .child(el("tbody").child(liquids.iter().map(row).collect::<View>())),
        )
        .view()
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
fn uses(state: State, name: String, liquids: Vec<LiquidDraft>) -> View {
    let page = &state.words.systems_page;
    let (replace_label, add_label) =
        (format!("{}: {name}", page.replace_liquids), format!("{}: {name}", page.add_liquids));
    let take = move |beside: bool, words: String, liquids: &[LiquidDraft]| {
        if beside && !state.has_room_for(liquids.len()) {
            return;
        }
        state.edit(None, |draft| {
            if !beside {
                draft.liquids.clear();
            }
            add_liquids(draft, liquids);
        });
        state.tell_step(words);
    };
    let (other_name, other_liquids) = (name.clone(), liquids.clone());
    el("div")
        .class("actions")
        .child(
            button()
                .set("aria-label", replace_label)
                .on_click(move || take(false, (page.taken)(&name), &liquids))
                .child(page.replace_liquids),
        )
        .child(
            button()
                .set("aria-label", add_label)
                .on_click(move || take(true, (page.added)(&other_name), &other_liquids))
                .child(page.add_liquids),
        )
        .view()
}

/// The recipe's liquids as a system of the mill's own.
fn save(state: State) -> View {
    let page = &state.words.systems_page;
    let typed = state.new_system;
    let missing = RwSignal::new(false);
    let none = memo(move || state.draft.with(|draft| draft.liquids.is_empty()));
    let save = move || {
        let (name, note) = typed.with_untracked(|typed| (typed.name.trim().to_owned(), typed.note.trim().to_owned()));
        missing.set(name.is_empty());
        if name.is_empty() {
            browser::focus("system-name");
        } else if !none.get_untracked() && state.save_system(&name, &note).is_some() {
            typed.set(SystemDraft::default());
        }
    };
    many([
        el("p").class("empty").set("hidden", move || !none.get()).child(page.no_liquids).view(),
        el("form")
            .class("fields")
            .set("hidden", move || none.get())
            .on("submit", move |event| {
                event.prevent_default();
                save();
            })
            .child(
                el("div")
                    .class("field")
                    .child(el("label").set("for", "system-name").child(page.name))
                    .child(
                        el("div").class("box").child(
                            el("input")
                                .set("id", "system-name")
                                .set("type", "text")
                                .set("maxlength", LONGEST_NAME.to_string())
                                .set("autocomplete", "off")
                                .set("aria-describedby", "system-name-says")
                                .set("aria-invalid", move || missing.get().then_some("true"))
                                .property("value", move || typed.with(|typed| typed.name.clone()))
                                .on("input", move |event| {
                                    missing.set(false);
                                    typed.update(|typed| typed.name = event_target_value(&event));
                                }),
                        ),
                    )
                    .child(el("div").class("says").set("id", "system-name-says").child(move || {
                        missing.get().then(|| {
                            el("p").class("finding stop").child(mark(Grade::Stop)).text(" ").child(page.name_missing)
                        })
                    })),
            )
            .child(
                el("div").class("field").child(el("label").set("for", "system-note").child(page.note)).child(
                    el("div").class("box").child(
                        el("input")
                            .set("id", "system-note")
                            .set("type", "text")
                            .set("maxlength", LONGEST_NAME.to_string())
                            .set("autocomplete", "off")
                            .property("value", move || typed.with(|typed| typed.note.clone()))
                            .on("input", move |event| typed.update(|typed| typed.note = event_target_value(&event))),
                    ),
                ),
            )
            .child(
                el("div")
                    .class("field wide")
                    .child(el("button").set("type", "submit").class("primary").child(page.save))
                    .child(el("p").class("aside").child(page.save_hint)),
            )
            .view(),
    ])
    .view()
}

/// The box for another name, in place of the name.
fn rename(state: State, id: SystemId, now: String, renaming: RwSignal<bool>) -> View {
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
    el("div")
        .class("rename field")
        .child(el("label").set("for", box_id.clone()).child(state.words.systems_page.rename_hint))
        .child(
            el("div").class("box").child(
                el("input")
                    .set("id", box_id)
                    .set("type", "text")
                    .set("maxlength", LONGEST_NAME.to_string())
                    .set("autocomplete", "off")
                    .property("value", move || text.get())
                    .on("input", move |event| text.set(event_target_value(&event)))
                    .on_key(move |event| match event.key().as_str() {
                        "Enter" => enter(),
                        "Escape" => renaming.set(false),
                        _ => {}
                    }),
            ),
        )
        .child(
            el("div")
                .class("actions")
                .child(button().class("primary").on_click(save).child(tools.rename))
                .child(button().on_click(move || renaming.set(false)).child(tools.cancel)),
        )
        .view()
}
