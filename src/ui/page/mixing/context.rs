//! What the parts of the page share beside the app's state.

use crate::domain::chemistry::solution::MakeUpError;
use crate::domain::mixing::glue_batch::{Batch, GlueError};
use crate::domain::mixing::{
    MadeUp, MixDraft, MixError, PartKey, PremixCandidate, RecipeSolution, batch, cautions, recipe_solutions, solution,
    tank,
};
use crate::domain::{Caution, Draft, Entry, Grade, Role, cautions_of_solution};
use crate::quantity::number::read;
use crate::quantity::{Amount, Kind, format};
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::state::State;
use crate::ui::text::{Message, unit_shown, words};
use leptos::prelude::*;
use std::time::Duration;

/// A number is taken as typed to its end when no key came for so long.
const PAUSE: Duration = Duration::from_millis(800);

/// What the parts of the page share.
#[derive(Clone, Copy)]
pub struct MixingContext {
    /// What was typed, with what follows from the recipe as long as nobody typed it.
    pub draft: Memo<MixDraft>,
    /// The solutions that the recipe doses.
    pub in_recipe: Memo<Vec<RecipeSolution>>,
    /// The solution made up.
    pub solution: Memo<Result<MadeUp, MixError<MakeUpError>>>,
    /// What may go into the tank.
    pub tank: Memo<Vec<PremixCandidate>>,
    /// The glue made up.
    pub glue: Memo<Result<Batch, MixError<GlueError>>>,
    /// Whether a number is being typed, so that nothing is said about it yet.
    pub typing: RwSignal<bool>,
    /// The box that was typed into last, while its unit may still be to come.
    pub typed_last: StoredValue<Option<String>>,
}

impl MixingContext {
    /// Follows the recipe and what is typed.
    pub fn new(state: State) -> Self {
        let in_recipe =
            Memo::new(move |_| state.shown.with(|shown| shown.case.as_ref().map(recipe_solutions)).unwrap_or_default());
        let draft = Memo::new(move |_| {
            let mark = state.units.get().mark;
            in_recipe.with(|solutions| state.mix.with(|mix| mix.with_recipe(solutions, mark)))
        });
        let tank = Memo::new(move |_| {
            state.shown.with(|shown| {
                let of = |recipe: &Draft, mix: &MixDraft| shown.case.as_ref().map(|case| tank(mix, recipe, case));
                state.draft.with(|recipe| draft.with(|mix| of(recipe, mix))).unwrap_or_default()
            })
        });
        let typing = RwSignal::new(false);
        let mut rest = debounce(PAUSE, move |()| _ = typing.try_set(false));
        Effect::new(move |before: Option<()>| {
            state.mix.track();
            if before.is_some() {
                rest(());
            }
        });
        Self {
            draft,
            in_recipe,
            solution: Memo::new(move |_| draft.with(solution)),
            tank,
            glue: Memo::new(move |_| tank.with(|tank| draft.with(|mix| batch(mix, tank)))),
            typing,
            typed_last: StoredValue::new(None),
        }
    }

    /// What was just typed into the box with that key, as long as its unit may still be to come: not where a unit is
    /// behind the number. Said once, as choosing another unit once more is about what the box holds then.
    pub fn just_typed(self, key: &str, entry: Memo<Entry>, kind: Signal<Kind>) -> Option<String> {
        let is_last = self.typed_last.with_value(|last| last.as_deref() == Some(key));
        if !is_last {
            return None;
        }
        self.typed_last.set_value(None);
        entry.with_untracked(|entry| {
            let has_unit = read(&entry.text, kind.get_untracked(), entry.unit).is_ok_and(|reading| reading.unit_typed);
            (!has_unit).then(|| entry.text.clone())
        })
    }

    /// Whether a hardener is in the tank.
    fn sets_in_tank(self) -> bool {
        self.tank.with(|tank| tank.iter().any(|part| part.in_tank && part.role == Some(Role::Hardener)))
    }

    /// What to take care of with the salt chosen and with what is in the tank.
    pub fn cautions(self) -> Vec<Caution> {
        let of_tank = self.tank.with(|tank| cautions(tank));
        let of_solution = cautions_of_solution(self.draft.with(|mix| mix.solute));
        let all = Caution::ALL.iter().copied();
        all.filter(|each| of_tank.contains(each) || of_solution.contains(each)).collect()
    }

    /// Why the solution cannot be made up.
    pub fn solution_error(self, state: State) -> Option<Message> {
        self.solution.with(|solution| match solution {
            Err(MixError::Refused(error)) => Some(state.with_context(|context| words::make_up(error, context))),
            _ => None,
        })
    }

    /// Why the glue cannot be mixed, unless nothing was put in yet.
    pub fn glue_error(self, state: State) -> Option<Message> {
        let Err(MixError::Refused(error)) = self.glue.get() else { return None };
        let names: Vec<String> =
            self.tank.with(|tank| tank.iter().filter(|part| part.in_tank).map(|part| part_name(state, part)).collect());
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        (!names.is_empty()).then(|| state.with_context(|context| words::glue(&error, &names, context)))
    }

    /// The lines of the warning slot, the gravest first.
    pub fn lines(self, state: State) -> Vec<SlotLine> {
        let error = |message: Message| SlotLine {
            grade: Grade::Stop,
            word: t!("common-error"),
            words: format!("{} {}", message.what, message.fix),
            show: None,
        };
        let warning = |words: String| SlotLine { grade: Grade::Unusual, word: t!("common-warning"), words, show: None };
        let is_old = state.shown.with(|shown| shown.old) && !self.tank.with(Vec::is_empty);
        let errors = [self.solution_error(state), self.glue_error(state)].into_iter().flatten().map(error);
        let old = is_old.then(|| warning(t!("mixing-old-recipe")));
        let pot_life = self.sets_in_tank().then(|| warning(t!("mixing-pot-life")));
        errors.chain(old).chain(pot_life).collect()
    }
}

/// What a part of a glue is called.
pub fn part_name(state: State, part: &PremixCandidate) -> String {
    match (&part.key, part.liquid) {
        (PartKey::Thinning, _) => t!("mixing-thinning-water"),
        (PartKey::Liquid(_), Some(id)) => state.liquid_name(id),
        (PartKey::Water | PartKey::Liquid(_), _) => t!("mixing-water"),
    }
}

/// Number and unit of an amount in its base unit.
pub fn shown_parts(state: State, kind: Kind, base: f64) -> (String, String) {
    let units = state.units.get();
    let unit = units.unit(kind);
    let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
    (format::amount(Amount::from_base(kind, base), unit, units.mark), symbol)
}

/// An amount in its base unit, with the unit chosen for it.
pub fn shown(state: State, kind: Kind, base: f64) -> String {
    let (number, unit) = shown_parts(state, kind, base);
    crate::ui::part::amount::joined(&number, &unit)
}
