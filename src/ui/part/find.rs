//! Finds a recipe, a page, a station or a field by its name, from the keyboard.

use crate::browser::element::{Part, View, el};
use crate::browser::graph::*;
use crate::browser::{hash, page as browser};
use crate::domain::{Field, LiquidField, Station};
use crate::record::RevisionId;
use crate::record::content::lineage::Listed;
use crate::record::content::revision::Standing;
use crate::ui::page;
use crate::ui::part::on_recipe::on_recipe;
use crate::ui::part::page_name::page_name;
use crate::ui::route::Page;
use crate::ui::signal::{RwSignal, memo};
use crate::ui::state::{State, state};

/// No more hits are shown; who sees this many types one more letter.
const MOST: usize = 12;

/// Where a hit leads.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Goal {
    Page(Page),
    /// A part of a page: its place on the page, and the heading's id.
    Section(Page, usize, &'static str),
    Station(Station),
    Field(Field),
    Recipe(RevisionId),
}

#[derive(Debug, Clone, PartialEq)]
struct Hit {
    goal: Goal,
    name: String,
    /// Where it belongs.
    place: &'static str,
}

/// The box with its list, a combobox as the WAI-ARIA practices describe it.
pub fn find() -> View {
    let state = state();
    let tools = &state.words.tools;
    let query = RwSignal::new(String::new());
    let open = RwSignal::new(false);
    let at = RwSignal::new(0_usize);
    let hits = memo(move || if open.get() { query.with(|query| search(state, query)) } else { Vec::new() });
    let close = move || {
        open.set(false);
        query.set(String::new());
        at.set(0);
    };
    let follow = Callback::new(move |goal: Goal| {
        close();
        go(state, goal);
    });
    let keys = move |event: KeyboardEvent| {
        let count = hits.with(Vec::len);
        match event.key().as_str() {
            "ArrowDown" if count > 0 => at.update(|at| *at = (*at + 1) % count),
            "ArrowUp" if count > 0 => at.update(|at| *at = (*at + count - 1) % count),
            "Enter" => {
                if let Some(goal) = hits.with(|hits| hits.get(at.get_untracked()).map(|hit| hit.goal)) {
                    follow.run(goal);
                }
            }
            "Escape" => close(),
            _ => return,
        }
        event.prevent_default();
    };
    let option = move |(place, hit): (usize, Hit)| {
        el("li")
            .set("id", format!("hit-{place}"))
            .set("role", "option")
            .set("aria-selected", move || if at.get() == place { "true" } else { "false" })
            .on("mousedown", move |event| {
                // Before the box loses the focus and the list closes.
                event.prevent_default();
                follow.run(hit.goal);
            })
            .child(el("span").child(hit.name))
            .child(el("span").class("note").child(hit.place))
    };
    let nothing = move || open.get() && query.with(|query| !query.trim().is_empty()) && hits.with(Vec::is_empty);
    el("div")
        .class("find")
        .child(
            el("input")
                .set("id", "find")
                .set("type", "text")
                .set("role", "combobox")
                .set("autocomplete", "off")
                .set("spellcheck", "false")
                .set("aria-label", tools.find)
                .set("aria-autocomplete", "list")
                .set("aria-controls", "hits")
                .set("aria-expanded", move || if hits.with(Vec::is_empty) { "false" } else { "true" })
                .set("aria-activedescendant", move || (!hits.with(Vec::is_empty)).then(|| format!("hit-{}", at.get())))
                .set("placeholder", format!("{}…  /", tools.find))
                .property("value", move || query.get())
                .on("input", move |event| {
                    query.set(event_target_value(&event));
                    at.set(0);
                    open.set(true);
                })
                .on_key(keys)
                .on("blur", move |_| close()),
        )
        .child(
            el("ul")
                .set("id", "hits")
                .set("role", "listbox")
                .set("aria-label", tools.find_hint)
                .set("hidden", move || hits.with(Vec::is_empty))
                .child(move || hits.get().into_iter().enumerate().map(option).collect::<View>()),
        )
        .child(
            el("p")
                .class("nothing")
                .set("role", "status")
                .set("hidden", move || !nothing())
                .child(move || nothing().then_some(tools.nothing_found)),
        )
        .view()
}

/// What holds every word of the query, in the order of the bar and the page.
fn search(state: State, query: &str) -> Vec<Hit> {
    let query = query.to_lowercase();
    let words: Vec<&str> = query.split_whitespace().collect();
    if words.is_empty() {
        return Vec::new();
    }
    let holds = |hit: &Hit| {
        let name = hit.name.to_lowercase();
        words.iter().all(|word| name.contains(word))
    };
    let pages = Page::ALL.iter().map(|page| Hit {
        goal: Goal::Page(*page),
        name: page_name(state.words, *page).to_owned(),
        place: state.words.tools.pages,
    });
    let on = |page: Page| {
        let place = page_name(state.words, page);
        move |at: usize, id: &'static str, name: String| Hit { goal: Goal::Section(page, at, id), name, place }
    };
    let (line, bench, compare) = (on(Page::Line), on(Page::Bench), on(Page::Compare));
    let mut sections: Vec<Hit> =
        page::line::sections().into_iter().enumerate().map(|(at, name)| line(at, "line-section", name)).collect();
    for (at, name) in page::bench::sections(state).into_iter().enumerate() {
        sections.push(bench(at, "bench-section", name.to_owned()));
    }
    for (at, (id, name)) in page::compare::sections().into_iter().enumerate() {
        sections.push(compare(at, id, name));
    }
    let stations = Station::ALL.iter().map(|station| Hit {
        goal: Goal::Station(*station),
        name: (state.words.station)(*station).to_owned(),
        place: state.words.tools.recipe,
    });
    let fields = fields(state).into_iter().map(|field| Hit {
        goal: Goal::Field(field),
        name: state.draft.with(|draft| (state.words.field_name)(field, draft)),
        place: (state.words.station)(field.station()),
    });
    let recipes = state.library.with(|library| {
        let kept = library.recipes().into_iter().filter(|listed| listed.standing() == Standing::Kept);
        let hit = |listed: Listed<'_>| Hit {
            goal: Goal::Recipe(listed.head.summary.id),
            name: listed.head.summary.name.clone(),
            place: state.words.tools.library,
        };
        kept.map(hit).collect::<Vec<_>>()
    });
    recipes.into_iter().chain(pages).chain(sections).chain(stations).chain(fields).filter(holds).take(MOST).collect()
}

fn fields(state: State) -> Vec<Field> {
    let liquids = state.draft.with(|draft| draft.liquids.iter().map(|liquid| liquid.id).collect::<Vec<_>>());
    let of_liquids =
        liquids.into_iter().flat_map(|id| LiquidField::ALL.iter().map(move |part| Field::Liquid(id, *part)));
    Field::PLAIN.iter().copied().chain(of_liquids).collect()
}

fn go(state: State, goal: Goal) {
    match goal {
        Goal::Page(page) => {
            state.page.set(page);
            hash::go(page.key());
            browser::focus("content");
        }
        Goal::Section(page, at, id) => {
            match page {
                Page::Line => state.line.section.set(at),
                Page::Bench => state.bench.section.set(at),
                Page::Compare => state.compare.section.set(at),
                _ => {}
            }
            state.page.set(page);
            hash::go(page.key());
            request_animation_frame(move || browser::show(&format!("#{id}")));
        }
        Goal::Station(station) => {
            on_recipe(state, move || browser::show(&format!("[data-station={}]", station.key())));
        }
        Goal::Recipe(id) => {
            state.open_revision(id);
            on_recipe(state, || browser::focus("recipe-name"));
        }
        Goal::Field(field) => on_recipe(state, move || browser::focus_field(&field.key())),
    }
}
