//! What is required of the boards, and whether they meet it.

use crate::domain::trial::Property;
use crate::domain::trial::boards::requirement_set::RequirementSet;
use crate::record::content::trial::TrialContent;
use crate::record::content::trial::field::TrialField;
use crate::record::content::trial::outcome::TestedGroup;
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Fold, TextBox};
use crate::ui::page::bench::entry::{PlaceChoice, TrialBox, TrialDesk, TrialMessages, group_name};
use crate::ui::state::State;
use crate::ui::text::{Context, words};
use leptos::prelude::*;

fn required() -> impl Iterator<Item = Property> {
    Property::ALL.iter().copied().filter(|property| property.tail().is_some())
}

/// The fold.
#[component]
pub fn Requirements() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let entered = Memo::new(move |_| {
        bench.open.with(|open| open.trial.requirements.iter().filter(|own| !own.value.is_blank()).count())
    });
    let note = Signal::derive(move || t!("trial-required-count", count = entered.get()));
    let boxes = move || {
        let one = |property: Property| {
            let label = words::bench::property(property).label.to_owned();
            view! { <TrialBox field=TrialField::Required(property) label=label/> }
        };
        required().map(one).collect_view()
    };
    let fields: Vec<TrialField> = required().map(TrialField::Required).collect();
    let unverified = move || {
        let any = |trial: &TrialContent| trial.requirements.iter().any(|own| own.value.preset && !own.value.is_blank());
        bench.open.with(|open| any(&open.trial)).then(|| view! { <p class="note">{t!("trial-unverified")}</p> })
    };
    let rename = Callback::new(move |text: String| bench.edit(|trial| trial.required_by = text));
    let left = Callback::new(|()| ());
    view! {
        <Fold title=t!("trial-requirements") note=note id="requirements">
            <p class="note">{t!("trial-requirements-hint")}</p>
            <div class="boxes">
                <StartFrom/>
                <TextBox
                    id="required-by"
                    label=t!("trial-required-by")
                    value=Signal::derive(move || bench.open.with(|open| open.trial.required_by.clone()))
                    longest=LONGEST_NAME
                    on_input=rename
                    on_leave=left
                />
            </div>
            {unverified}
            <div class="boxes">{boxes}</div>
            <TrialMessages fields=fields.clone()/>
            <Verdicts/>
        </Fold>
    }
}

/// A set of requirements to start from.
#[component]
fn StartFrom() -> impl IntoView {
    let state = expect_context::<State>();
    let bench = state.bench;
    let sets = RequirementSet::ALL.iter().map(|set| words::bench::requirement_set(*set));
    let offered: Vec<String> = std::iter::once(t!("trial-select-standard")).chain(sets).collect();
    // What is entered may have been typed over since, so the choice goes back to its heading.
    let chosen = RwSignal::new(0_usize);
    let start = Callback::new(move |at: usize| {
        let Some(set) = at.checked_sub(1).and_then(|at| RequirementSet::ALL.get(at).copied()) else { return };
        let before =
            bench.open.with_untracked(|open| (open.trial.requirements.clone(), open.trial.required_by.clone()));
        bench.edit(|trial| {
            trial.requirements = set.requirements();
            trial.required_by = words::bench::requirement_set(set);
        });
        chosen.set(at);
        chosen.set(0);
        state.tell_undo(t!("trial-requirements-replaced"), move || {
            bench.edit(|trial| (trial.requirements, trial.required_by) = before.clone());
        });
    });
    view! {
        <PlaceChoice
            id="requirement-set"
            name=t!("trial-start-from")
            labelled=true
            offered=offered
            chosen=chosen
            on_choose=start
        />
    }
}

/// Whether each combination meets what is required of it.
#[component]
fn Verdicts() -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let said = Memo::new(move |_| {
        let units = state.units.get();
        state.currency.with(|currency| {
            desk.basis.with(|basis| {
                let context = Context { units: &units, draft: &basis.recipe, currency };
                desk.tested.with(|tested| {
                    let own = |own: &TestedGroup| {
                        let verdicts = own.judged.iter().map(|judged| words::bench::verdict(judged, &context));
                        (group_name(state, desk, &own.group.key), verdicts.collect::<Vec<_>>())
                    };
                    tested.combinations.iter().map(own).filter(|(_, said)| !said.is_empty()).collect::<Vec<_>>()
                })
            })
        })
    });
    move || {
        let one = |(name, verdicts): (String, Vec<String>)| {
            let verdict = |words: String| view! { <li>{words}</li> };
            view! { <h4>{name}</h4> <ul>{verdicts.into_iter().map(verdict).collect_view()}</ul> }
        };
        said.get().into_iter().map(one).collect_view()
    }
}
