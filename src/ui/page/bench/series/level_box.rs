//! A level of a factor: a number, a binder system, or words.

use crate::domain::recipe::binder_system::SystemKey;
use crate::domain::trial::series::field::{FactorId, Of, SeriesField};
use crate::domain::{Entry, LiquidDraft};
use crate::quantity::Unit;
use crate::record::content::trial::field::TrialField;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::page::bench::entry::{PlaceChoice, TrialBox};
use crate::ui::state::State;
use crate::ui::text::{typical_liquids, words};
use leptos::prelude::*;

/// The box of a level.
#[component]
pub fn LevelBox(
    /// The factor.
    id: FactorId,
    /// What it changes.
    of: Of,
    /// The level, from 0.
    at: u8,
    /// Its name.
    #[prop(into)]
    name: Signal<String>,
) -> impl IntoView {
    match of {
        Of::System => view! { <SystemLevel id=id at=at name=name/> }.into_any(),
        Of::Own(_) => view! { <OwnLevel id=id at=at name=name/> }.into_any(),
        _ => {
            let field = TrialField::Series(SeriesField::Level(id, at));
            view! { <TrialBox field=field column=column(at) unit_in_head=true/> }.into_any()
        }
    }
}

const fn column(level: u8) -> &'static str {
    match level {
        0 => "level-1",
        1 => "level-2",
        2 => "level-3",
        3 => "level-4",
        4 => "level-5",
        _ => "level-6",
    }
}

/// A level of a factor that changes nothing computed: a number in its unit, or words.
#[component]
fn OwnLevel(
    /// The factor.
    id: FactorId,
    /// The level, from 0.
    at: u8,
    /// Its name.
    name: Signal<String>,
) -> impl IntoView {
    let bench = expect_context::<State>().bench;
    let field = TrialField::Series(SeriesField::Level(id, at));
    let value = move || bench.open.with(|open| open.trial.entry(field).text);
    let put = move |event| {
        let text = event_target_value(&event);
        bench.edit(|trial| trial.enter(field, Entry::typed(text, Unit::One)));
    };
    view! {
        <div class="number">
            <span class="entry-box">
                <input
                    id=format!("field-{}", field.key())
                    type="text"
                    autocomplete="off"
                    maxlength=LONGEST_NAME.to_string()
                    data-field=field.key()
                    data-column=column(at)
                    aria-label=move || name.get()
                    prop:value=value
                    on:input=put
                />
            </span>
        </div>
    }
}

/// The binder systems that a level can be: the recipe's own liquids, the mill's, the library's.
fn systems(state: State) -> Vec<(String, Vec<LiquidDraft>)> {
    let own = state.bench.open.with(|open| open.trial.draft.liquids.clone());
    let mut all = vec![(t!("trial-as-recipe"), own)];
    state.library.with(|library| {
        all.extend(
            library.systems().into_iter().map(|own| (own.content().name.clone(), own.content().liquids.clone())),
        );
    });
    all.extend(SystemKey::ALL.iter().map(|key| (words::binder_system(*key).name.to_owned(), typical_liquids(*key))));
    all
}

#[component]
fn SystemLevel(
    /// The factor.
    id: FactorId,
    /// The level, from 0.
    at: u8,
    /// Its name.
    name: Signal<String>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let offered = Memo::new(move |_| {
        let names = systems(state).into_iter().map(|(name, _)| name);
        std::iter::once(t!("trial-select-system")).chain(names).collect::<Vec<_>>()
    });
    let chosen = Memo::new(move |_| {
        let name = bench.open.with(|open| {
            let factor = open.trial.series.as_ref().and_then(|series| series.factor(id));
            factor.and_then(|factor| factor.levels.get(usize::from(at))).map(|level| level.name.clone())
        });
        name.and_then(|name| offered.with(|all| all.iter().skip(1).position(|own| *own == name))).map_or(0, |at| at + 1)
    });
    let choose = Callback::new(move |place: usize| {
        let system = place.checked_sub(1).and_then(|place| untrack(|| systems(state)).into_iter().nth(place));
        let Some((name, liquids)) = system else { return };
        bench.edit(|trial| {
            if let Some(series) = &mut trial.series {
                series.choose_system(id, at, name, liquids);
            }
        });
    });
    view! { <PlaceChoice id=format!("level-{}-{at}", id.0) name=name offered=offered chosen=chosen on_choose=choose/> }
}
