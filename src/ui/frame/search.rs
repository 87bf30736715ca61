//! What can be found by its name: pages, their parts, stations, fields, recipes.

use crate::browser::{hash, page as browser};
use crate::domain::{Field, LiquidField, Station};
use crate::record::RevisionId;
use crate::record::content::lineage::Listed;
use crate::record::content::revision::Standing;
use crate::t;
use crate::ui::page;
use crate::ui::part::on_recipe::on_recipe;
use crate::ui::part::page_name::page_name;
use crate::ui::route::Page;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// No more hits are shown; who sees this many types one more letter.
const MOST: usize = 12;

/// Where a hit leads.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Goal {
    /// A page.
    Page(Page),
    /// A part of a page: its place on the page, and the heading's id.
    Section(Page, usize, &'static str),
    /// A station of the recipe.
    Station(Station),
    /// A box of the recipe.
    Field(Field),
    /// A saved recipe.
    Recipe(RevisionId),
}

/// One thing that was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Hit {
    /// Where it leads.
    pub goal: Goal,
    /// Its name.
    pub name: String,
    /// Where it belongs.
    pub place: String,
}

/// What holds every word of the query, in the order of the bar and the page.
pub fn search(state: State, query: &str) -> Vec<Hit> {
    let query = query.to_lowercase();
    let words: Vec<&str> = query.split_whitespace().collect();
    if words.is_empty() {
        return Vec::new();
    }
    let holds = |hit: &Hit| {
        // Where a long word may break is not part of it.
        let name = hit.name.to_lowercase().replace('\u{ad}', "");
        words.iter().all(|word| name.contains(word))
    };
    let pages =
        Page::ALL.iter().map(|page| Hit { goal: Goal::Page(*page), name: page_name(*page), place: t!("frame-pages") });
    let on = |page: Page| {
        let place = page_name(page);
        move |at: usize, id: &'static str, name: String| Hit {
            goal: Goal::Section(page, at, id),
            name,
            place: place.clone(),
        }
    };
    let (line, bench, compare) = (on(Page::Line), on(Page::Bench), on(Page::Compare));
    let mut sections: Vec<Hit> =
        page::line::sections().into_iter().enumerate().map(|(at, name)| line(at, "line-section", name)).collect();
    for (at, name) in page::bench::sections().into_iter().enumerate() {
        sections.push(bench(at, "bench-section", name));
    }
    for (at, (id, name)) in page::compare::sections().into_iter().enumerate() {
        sections.push(compare(at, id, name));
    }
    let stations = Station::ALL.iter().map(|station| Hit {
        goal: Goal::Station(*station),
        name: words::station(*station).to_owned(),
        place: page_name(Page::Recipe),
    });
    let fields = fields(state).into_iter().map(|field| Hit {
        goal: Goal::Field(field),
        name: state.draft.with(|draft| words::field_name(field, draft)),
        place: words::station(field.station()).to_owned(),
    });
    let recipes = state.library.with(|library| {
        let kept = library.recipes().into_iter().filter(|listed| listed.standing() == Standing::Kept);
        let hit = |listed: Listed<'_>| Hit {
            goal: Goal::Recipe(listed.head.summary.id),
            name: listed.head.summary.name.clone(),
            place: page_name(Page::Library),
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

/// Goes there.
pub fn go(state: State, goal: Goal) {
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
