//! Which systems there are to compare, and those chosen, worked out.

use crate::domain::compare::draft::OpenRecipeChange;
use crate::domain::compare::price::fill_prices;
use crate::domain::compare::side::{
    ComparedSystem, SideBySide, SideBySideError, on_conditions, side_by_side, with_liquids,
};
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::recipe::binder_system::SystemKey;
use crate::domain::recipe::liquid::Role;
use crate::domain::{Draft, Substance};
use crate::record::content::revision::Standing;
use crate::record::{RevisionId, SystemId};
use crate::t;
use crate::ui::chart::series::letter;
use crate::ui::components::ChoiceOption;
use crate::ui::part::version::{Seen, label};
use crate::ui::state::State;
use crate::ui::text::{lower_first, typical_liquids, words};
use leptos::prelude::*;
use std::sync::Arc;

/// So many recipes are offered at a time; a part of the name finds the others.
const MOST_RECIPES: usize = 200;
/// From so many recipes on a part of the name can be typed.
const MANY_RECIPES: usize = 20;

/// The systems compared.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared {
    /// What each is known by.
    pub keys: Vec<SystemChoice>,
    /// The systems.
    pub systems: Vec<ComparedSystem>,
    /// The place of the reference.
    pub reference: usize,
    /// Side by side, with the cost a year for one hour: what is typed for the hours is not waited for here.
    pub side: Result<SideBySide, SideBySideError>,
    /// Places of the systems that have a result.
    pub places: Vec<usize>,
    /// Those systems.
    pub ready: Vec<ComparedSystem>,
}

impl Compared {
    /// A system by letter and name.
    #[must_use]
    pub fn name(&self, at: usize) -> String {
        self.systems.get(at).map_or_else(String::new, |system| format!("{} {}", letter(at), system.name))
    }

    /// The place of a key among the systems that have a result; the reference, or else the first, for none.
    #[must_use]
    pub fn ready_at(&self, key: Option<&SystemChoice>) -> usize {
        let of = |wanted: usize| self.places.iter().position(|place| *place == wanted);
        let named = key.and_then(|key| self.keys.iter().position(|other| other == key)).and_then(of);
        named.or_else(|| of(self.reference)).unwrap_or(0)
    }

    /// The systems that have a result, to choose from.
    #[must_use]
    pub fn choices(&self) -> Vec<ChoiceOption> {
        let choice = |place: &usize| {
            ChoiceOption::new(self.keys.get(*place).map(SystemChoice::key).unwrap_or_default(), self.name(*place))
        };
        self.places.iter().map(choice).collect()
    }

    /// All systems, to choose from.
    #[must_use]
    pub fn all_choices(&self) -> Vec<ChoiceOption> {
        self.keys.iter().enumerate().map(|(at, key)| ChoiceOption::new(key.key(), self.name(at))).collect()
    }
}

/// The systems chosen; at first the open recipe and two of the library that it is not.
#[must_use]
pub fn chosen(state: State) -> Vec<SystemChoice> {
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
    let library = first.iter().filter(other).take(2).map(|key| SystemChoice::Library(key.key().to_owned()));
    std::iter::once(SystemChoice::OpenRecipe).chain(library).collect()
}

fn binders(draft: &Draft) -> Vec<Substance> {
    draft.liquids.iter().filter(|liquid| liquid.role == Role::Binder).map(|liquid| liquid.substance).collect()
}

/// What can be compared.
#[derive(Clone, PartialEq, Eq)]
pub struct SystemOffer {
    /// The open recipe, systems, and recipes of the library.
    pub choices: Vec<ChoiceOption>,
    /// How many recipes are among them.
    pub recipes: usize,
    /// How many recipes there are that are found.
    pub found: usize,
    /// Whether the library has so many that they are to be found by name.
    pub many: bool,
}

/// What can be compared and has this in its name, whatever the case.
#[must_use]
pub fn offered(state: State, part: &str) -> SystemOffer {
    let option = |choice: SystemChoice, words: String| ChoiceOption::new(choice.key(), words);
    let mut choices = vec![option(SystemChoice::OpenRecipe, open_name(state))];
    for key in SystemKey::ALL {
        let name = words::binder_system(*key).name;
        choices.push(option(SystemChoice::Library(key.key().to_owned()), t!("compare-library", name = name)));
    }
    let part = part.trim().to_lowercase();
    let (mut recipes, mut found, mut all) = (0, 0, 0);
    state.library.with(|library| {
        for system in library.systems() {
            let choice = SystemChoice::OwnSystem(system.system().to_string());
            choices.push(option(choice, t!("compare-own-system", name = system.content().name.clone())));
        }
        for listed in library.recipes().into_iter().filter(|listed| listed.standing() == Standing::Kept) {
            all += 1;
            if part.is_empty() || listed.head.summary.name.to_lowercase().contains(&part) {
                found += 1;
                if recipes < MOST_RECIPES {
                    recipes += 1;
                    let head = listed.head.summary;
                    let name = revision_name(&head.name, &label(&Seen::from(&listed.head)));
                    choices.push(option(SystemChoice::Revision(head.id.to_string()), name));
                }
            }
        }
    });
    let is_recipe = |key: &str| matches!(SystemChoice::parse(key), Some(SystemChoice::Revision(_)));
    choices.retain(|choice| is_recipe(&choice.value) || choice.words.to_lowercase().contains(&part));
    SystemOffer { choices, recipes, found, many: all >= MANY_RECIPES }
}

fn open_name(state: State) -> String {
    t!("compare-open-recipe", name = open_title(state))
}

/// The name of the open recipe.
fn open_title(state: State) -> String {
    let name = state.title.with(|title| title.name.trim().to_owned());
    if name.is_empty() { t!("recipe-untitled") } else { name }
}

/// A revision of a recipe by the recipe's name and what the revision is called.
fn revision_name(name: &str, revision: &str) -> String {
    format!("{name}, {}", lower_first(revision))
}

/// The recipe whose fibre, board and line the systems are put on.
pub fn conditions(state: State) -> Memo<Draft> {
    let chosen = Memo::new(move |_| state.compare.typed.with(|typed| typed.conditions.clone()));
    Memo::new(move |_| {
        let saved = chosen.with(|chosen| match chosen {
            Some(SystemChoice::Revision(id)) => state.library.with(|library| library.compared_revision(id)),
            _ => None,
        });
        saved.map_or_else(|| state.draft.get(), |saved| saved.draft)
    })
}

/// A system as it is saved: name and recipe. `None` where it is no longer there.
fn load(state: State, base: &Draft, choice: &SystemChoice) -> Option<(String, Draft)> {
    match choice {
        SystemChoice::OpenRecipe => Some((open_title(state), state.draft.get())),
        SystemChoice::Library(key) => {
            let key = SystemKey::ALL.iter().find(|system| system.key() == key)?;
            Some((words::binder_system(*key).name.to_owned(), with_liquids(base, &typical_liquids(*key))))
        }
        SystemChoice::OwnSystem(id) => state.library.with(|library| {
            let content = library.system(SystemId::parse(id)?)?.content();
            Some((content.name.clone(), with_liquids(base, &content.liquids)))
        }),
        SystemChoice::Revision(id) => {
            let saved = state.library.with(|library| library.compared_revision(id))?;
            let seen = state.seen(RevisionId::parse(id)?)?;
            Some((revision_name(&saved.name, &label(&seen)), saved.draft))
        }
    }
}

/// Keeps the compared revision in place when another recipe is opened, and says so.
pub fn follow_open(state: State) {
    Effect::new(move |_| {
        let now = state.from.with(|from| from.map(|id| id.to_string()));
        if !state.all_read.get() {
            return;
        }
        let before = state.compare.typed.get_untracked();
        let mut typed = before.clone();
        let change = state
            .library
            .with_untracked(|library| typed.follow_open(now.as_deref(), |one, other| library.same_recipe(one, other)));
        if typed != before {
            state.compare.typed.set(typed);
        }
        if change == OpenRecipeChange::Kept {
            state.tell(t!("compare-open-changed"));
        }
    });
}

/// The systems chosen, worked out, as they are whenever something changes.
pub fn compared(state: State) -> Memo<Arc<Compared>> {
    let keys = Memo::new(move |_| chosen(state));
    let base = conditions(state);
    // A recipe of the library is read once, not at every key.
    let loaded = Memo::new(move |_| {
        keys.with(|keys| {
            base.with(|base| {
                let load = |key: &SystemChoice| load(state, base, key).map(|(name, draft)| (key.clone(), name, draft));
                keys.iter().filter_map(load).collect::<Vec<_>>()
            })
        })
    });
    let own = Memo::new(move |_| {
        state.compare.typed.with(|typed| (typed.prices.clone(), typed.reference.clone(), typed.own_conditions))
    });
    Memo::new(move |_| {
        own.track();
        let typed = state.compare.typed.get_untracked();
        let (mut found, mut systems) = (Vec::new(), Vec::new());
        loaded.with(|loaded| {
            base.with(|base| {
                for (key, name, draft) in loaded {
                    let moved = !matches!(key, SystemChoice::Library(_) | SystemChoice::OwnSystem(_));
                    let moved = moved && !typed.own_conditions;
                    let mut draft = if moved { on_conditions(base, draft) } else { draft.clone() };
                    fill_prices(&typed, base, &mut draft);
                    found.push(key.clone());
                    systems.push(ComparedSystem::new(name.clone(), draft));
                }
            });
        });
        let reference = found.iter().position(|key| Some(key) == typed.reference.as_ref()).unwrap_or(0);
        let side = side_by_side(&systems, reference, Some(1));
        let solved = |at: &usize| systems.get(*at).is_some_and(|system| system.case().is_some());
        let places: Vec<usize> = (0..systems.len()).filter(solved).collect();
        let ready = places.iter().filter_map(|at| systems.get(*at).cloned()).collect();
        Arc::new(Compared { keys: found, systems, reference, side, places, ready })
    })
}
