//! What recipe, glue and weigh sheet ask of the solution, each to be used with one press.

use super::amount_box::SOLUTION_AMOUNT;
use super::context::{MixingContext, shown};
use crate::domain::Entry;
use crate::domain::mixing::{AmountWay, MixField, RecipeSolution, solution_in, weighed_solutions};
use crate::quantity::{Kind, format};
use crate::t;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::symbol_shown;
use leptos::prelude::*;
use uom::si::f64::Mass;

/// The buttons; none where nothing is asked.
#[component]
pub fn SolutionOffers() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<MixingContext>();
    let solute = Memo::new(move |_| sheet.draft.with(|mix| mix.solute));
    // The recipe's solutions that the boxes do not hold already.
    let others = Memo::new(move |_| {
        let now = sheet.draft.with(|mix| (mix.solute, mix.read(MixField::Concentration).ok().flatten()));
        let differs = |solution: &RecipeSolution| {
            now.0 != solution.solute || now.1.is_none_or(|base| (base - solution.solids.value).abs() > 1e-9)
        };
        sheet.in_recipe.with(|all| all.iter().copied().filter(differs).collect::<Vec<_>>())
    });
    let in_glue = Memo::new(move |_| {
        let solute = solute.get();
        sheet.tank.with(|tank| sheet.glue.with(|glue| solution_in(glue.as_ref().ok()?, tank, solute)))
    });
    let weighed = Memo::new(move |_| {
        let solute = solute.get();
        state.bench.open.with(|open| {
            let trial = &open.trial;
            let found = weighed_solutions(&trial.draft, &trial.sheet).into_iter().find(|(of, _)| *of == solute);
            found.map(|(_, mass)| mass)
        })
    });
    let recipe_button = move |solution: RecipeSolution| {
        let name = state.liquid_name(solution.liquid);
        let units = state.units.get();
        let unit = units.unit(Kind::Solids);
        let share = joined(&format::editable(unit.from_base(solution.solids.value), units.mark), symbol_shown(unit));
        let take = move |_| {
            let mark = state.units.get_untracked().mark;
            let unit = state.units.get_untracked().unit(Kind::Solids);
            let text = format::editable(unit.from_base(solution.solids.value), mark);
            state.edit_mix(None, |mix| {
                mix.solute = solution.solute;
                *mix.entry_mut(MixField::Concentration) = Entry::typed(text, unit);
            });
        };
        let words = t!("mixing-use-recipe", name = name, share = share);
        view! { <button type="button" class="offer" on:click=take>{words}</button> }
    };
    let amount_button = move |kind: Kind, mass: Option<Mass>, words: fn(String) -> String| {
        mass.map(|mass| {
            let take = move |_| {
                let units = state.units.get_untracked();
                let unit = units.unit(Kind::BatchMass);
                let text = format::editable(unit.from_base(mass.value), units.mark);
                state.edit_mix(None, |mix| SOLUTION_AMOUNT.put(mix, AmountWay::Mass, Entry::typed(text, unit)));
            };
            let words = words(shown(state, kind, mass.value));
            view! { <button type="button" class="offer" on:click=take>{words}</button> }
        })
    };
    view! {
        <div class="offers">
            {move || others.get().into_iter().map(recipe_button).collect_view()}
            {move || amount_button(Kind::BatchMass, in_glue.get(), |mass| t!("mixing-use-glue", mass = mass))}
            {move || amount_button(Kind::BenchMass, weighed.get(), |mass| t!("mixing-use-weigh-sheet", mass = mass))}
        </div>
    }
}
