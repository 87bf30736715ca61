//! Which systems there are to compare, and those chosen, worked out.

use crate::domain::compare::draft::fill_prices;
use crate::domain::compare::side::{NotSideBySide, SideBySide, System, on_conditions, side_by_side, with_liquids};
use crate::domain::recipe::binder_system::SystemKey;
use crate::domain::recipe::liquid::Role;
use crate::domain::{Draft, Substance};
use crate::record::revision::Standing;
use crate::record::{RecipeId, SystemId};
use crate::ui::chart::series::letter;
use crate::ui::field::choice::Choice;
use crate::ui::page::compare::parts::follow;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;
use std::sync::Arc;

/// The open recipe's key.
const OPEN: &str = "open";
/// Before the key of a system of the library.
const LIBRARY: &str = "library:";
/// Before the id of a system of the mill's own.
const OWN: &str = "own:";
/// Before the id of a recipe on the shelf.
const RECIPE: &str = "recipe:";
/// So many recipes are offered at a time; a part of the name finds the others.
const MOST_RECIPES: usize = 200;
/// From so many recipes on a part of the name can be typed.
const MANY_RECIPES: usize = 20;

/// The systems compared.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared {
    /// What each is known by.
    pub keys: Vec<String>,
    /// The systems.
    pub systems: Vec<System>,
    /// The place of the reference.
    pub reference: usize,
    /// Side by side, with the cost a year for one hour: what is typed for the hours is not waited for here.
    pub side: Result<SideBySide, NotSideBySide>,
    /// Places of the systems that have a result.
    pub places: Vec<usize>,
    /// Those systems.
    pub ready: Vec<System>,
}

impl Compared {
    /// A system by letter and name.
    #[must_use]
    pub fn name(&self, at: usize) -> String {
        self.systems.get(at).map_or_else(String::new, |system| format!("{} {}", letter(at), system.name))
    }

    /// The place of a key among the systems that have a result; the reference, or else the first, for none.
    #[must_use]
    pub fn ready_at(&self, key: &str) -> usize {
        let of = |wanted: usize| self.places.iter().position(|place| *place == wanted);
        let named = self.keys.iter().position(|other| other == key).and_then(of);
        named.or_else(|| of(self.reference)).unwrap_or(0)
    }

    /// The systems that have a result, to choose from.
    #[must_use]
    pub fn choices(&self) -> Vec<Choice> {
        let choice = |place: &usize| (self.keys.get(*place).cloned().unwrap_or_default(), self.name(*place));
        self.places.iter().map(choice).collect()
    }
}

/// The systems chosen; at first the open recipe and two of the library that it is not.
#[must_use]
pub fn chosen(state: State) -> Vec<String> {
    let chosen = state.compare.typed.with(|typed| typed.systems.clone());
    if !chosen.is_empty() {
        return chosen;
    }
    let own = state.draft.with(binders);
    let other = |key: &&SystemKey| {
        let liquids = key.system().liquids;
        binders(&Draft { liquids, ..Draft::default() }) != own
    };
    let first = [SystemKey::Uf, SystemKey::UfPmdi, SystemKey::Pmdi];
    let library = first.iter().filter(other).take(2).map(|key| format!("{LIBRARY}{}", key.key()));
    std::iter::once(OPEN.to_owned()).chain(library).collect()
}

fn binders(draft: &Draft) -> Vec<Substance> {
    draft.liquids.iter().filter(|liquid| liquid.role == Role::Binder).map(|liquid| liquid.substance).collect()
}

/// What can be compared.
pub struct Offer {
    /// The open recipe, systems, and recipes of the shelf.
    pub choices: Vec<Choice>,
    /// How many recipes are among them.
    pub recipes: usize,
    /// How many recipes there are that are found.
    pub found: usize,
    /// Whether the shelf has so many that they are to be found by name.
    pub many: bool,
}

/// What can be compared and has this in its name, whatever the case.
#[must_use]
pub fn offered(state: State, part: &str) -> Offer {
    let page = &state.words.compare.page;
    let mut choices = vec![(OPEN.to_owned(), format!("{}: {}", page.open_recipe, open_name(state)))];
    for key in SystemKey::ALL {
        let name = (state.words.binder_system)(*key).name;
        choices.push((format!("{LIBRARY}{}", key.key()), format!("{}: {name}", page.library)));
    }
    let part = part.trim().to_lowercase();
    let (mut recipes, mut found, mut all) = (0, 0, 0);
    state.shelf.with(|shelf| {
        for system in shelf.systems() {
            choices.push((format!("{OWN}{}", system.system()), format!("{}: {}", page.own, system.content().name)));
        }
        for listed in shelf.recipes().into_iter().filter(|listed| listed.standing() == Standing::Kept) {
            all += 1;
            if part.is_empty() || listed.head.name.to_lowercase().contains(&part) {
                found += 1;
                if recipes < MOST_RECIPES {
                    recipes += 1;
                    choices
                        .push((format!("{RECIPE}{}", listed.recipe), format!("{}: {}", page.recipe, listed.head.name)));
                }
            }
        }
    });
    choices.retain(|(key, label)| key.starts_with(RECIPE) || label.to_lowercase().contains(&part));
    Offer { choices, recipes, found, many: all >= MANY_RECIPES }
}

fn open_name(state: State) -> String {
    let name = state.title.with(|title| title.name.trim().to_owned());
    if name.is_empty() { state.words.recipe_page.untitled.to_owned() } else { name }
}

/// A system as it is kept: name and recipe. `None` where it is no longer there.
fn load(state: State, open: &Draft, key: &str) -> Option<(String, Draft)> {
    if key == OPEN {
        return Some((open_name(state), open.clone()));
    }
    if let Some(key) = key.strip_prefix(LIBRARY) {
        let key = SystemKey::ALL.iter().find(|system| system.key() == key)?;
        return Some(((state.words.binder_system)(*key).name.to_owned(), with_liquids(open, &key.system().liquids)));
    }
    state.shelf.with(|shelf| {
        if let Some(id) = key.strip_prefix(OWN) {
            let content = shelf.system(SystemId::parse(id)?)?.content();
            return Some((content.name.clone(), with_liquids(open, &content.liquids)));
        }
        let head = shelf.recipe(RecipeId::parse(key.strip_prefix(RECIPE)?)?)?.head.id;
        let revision = shelf.revision(head)?;
        let content = revision.content();
        Some((content.name.clone(), content.draft.clone()))
    })
}

/// The systems chosen, worked out, as they are whenever something changes.
pub fn compared(state: State) -> Memo<Arc<Compared>> {
    let keys = memo(move || chosen(state));
    // A recipe of the shelf is read once, not at every key.
    let loaded = memo(move || {
        keys.with(|keys| {
            state.draft.with(|open| {
                let load = |key: &String| load(state, open, key).map(|(name, draft)| (key.clone(), name, draft));
                keys.iter().filter_map(load).collect::<Vec<_>>()
            })
        })
    });
    let own = follow(state, &["price."]);
    let reference = memo(move || state.compare.typed.with(|typed| typed.reference.clone()));
    let conditions = memo(move || state.compare.typed.with(|typed| typed.own_conditions));
    memo(move || {
        own.track();
        reference.track();
        conditions.track();
        let typed = state.compare.typed.get_untracked();
        let (mut found, mut systems) = (Vec::new(), Vec::new());
        loaded.with(|loaded| {
            state.draft.with(|open| {
                for (key, name, draft) in loaded {
                    let moved = key.starts_with(RECIPE) && !typed.own_conditions;
                    let mut draft = if moved { on_conditions(open, draft) } else { draft.clone() };
                    fill_prices(&typed, open, &mut draft);
                    found.push(key.clone());
                    systems.push(System::new(name.clone(), draft));
                }
            });
        });
        let reference = found.iter().position(|key| *key == typed.reference).unwrap_or(0);
        let side = side_by_side(&systems, reference, 1);
        let solved = |at: &usize| systems.get(*at).is_some_and(|system| system.case().is_some());
        let places: Vec<usize> = (0..systems.len()).filter(solved).collect();
        let ready = places.iter().filter_map(|at| systems.get(*at).cloned()).collect();
        Arc::new(Compared { keys: found, systems, reference, side, places, ready })
    })
}
