//! What is uncertain: one row a source.

use super::shared::UncertaintyContext;
use super::source_row::{SourceRow, rounded, statement_unit};
use super::study::PageStudy;
use crate::domain::Entry;
use crate::domain::compare::number_key::number_of;
use crate::quantity::Unit;
use crate::record::table::{Cell, Table};
use crate::ui::chart::series::letter;
use crate::ui::components::{Choice, ChoiceOption};
use crate::ui::page::compare::choices::{first, used_inputs};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::text::words;
use crate::{label, t};
use leptos::prelude::*;
use std::time::Duration;

/// Rows made in one go. All of them at once would hold up the page for a tenth of a second.
const AT_ONCE: usize = 3;

/// The table, and the way to add a source. Its rows come after the rest of the tab, some at a time.
#[component]
pub fn Sources() -> impl IntoView {
    let shared = expect_context::<UncertaintyContext>();
    let keys = Memo::new(move |_| {
        shared.study.with(|known| {
            known.iter().flat_map(|known| known.sources.iter().map(|source| source.key.clone())).collect::<Vec<_>>()
        })
    });
    let made = RwSignal::new(0_usize);
    Effect::new(move |_| {
        if made.get() < keys.with(Vec::len) {
            set_timeout(move || _ = made.try_update(|made| *made += AT_ONCE), Duration::ZERO);
        }
    });
    let first_keys = move || keys.with(|keys| keys.iter().take(made.get()).cloned().collect::<Vec<_>>());
    let heads = move || {
        shared.study.with(|known| {
            let places = known.as_ref().map(|known| known.places.clone()).unwrap_or_default();
            places
                .into_iter()
                .map(|place| view! { <th scope="col" class="used">{letter(place).to_string()}</th> })
                .collect_view()
        })
    };
    let share_of = move || {
        let name = shared.chosen.get().and_then(|at| {
            shared.study.with(|known| {
                let known = known.as_ref()?;
                let asked = known.budgets.get(at)?.as_ref()?.asked;
                let label = words::compare::output(asked.output()).label;
                Some(format!("{label} {}", known.letters(asked)))
            })
        });
        t!("compare-share-of", figure = name.unwrap_or_default())
    };
    view! {
        <div class="controls">
            <h2 id="sources" tabindex="-1">{t!("compare-sources")}</h2>
            <p class="note">{t!("compare-sources-hint")}</p>
        </div>
        <div class="scroll" tabindex="0" role="region" aria-label=t!("compare-sources")>
            <table class="figures-table unc-sources" aria-label=t!("compare-sources")>
                <thead>
                    <tr>
                        <th scope="col" class="l">{t!("compare-input")}</th>
                        <th scope="col" class="l from">{t!("compare-instrument")}</th>
                        <th scope="col">"±"</th>
                        <th scope="col" class="l">{t!("compare-unit")}</th>
                        <th scope="col" class="l">{t!("compare-plus-minus-is")}</th>
                        <th scope="col">{t!("compare-freedom")}</th>
                        {heads}
                        <th scope="col" class="edge">{share_of}</th>
                    </tr>
                </thead>
                <tbody>
                    <For each=first_keys key=Clone::clone let:key><SourceRow key=key/></For>
                </tbody>
            </table>
        </div>
        <AddSource/>
    }
}

/// Numbers that no source acts on yet.
#[component]
fn AddSource() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let shared = expect_context::<UncertaintyContext>();
    let state = context.state;
    let others = Memo::new(move |_| {
        let there = shared.study.with(|known| {
            known.iter().flat_map(|known| known.sources.iter().map(|source| source.key.clone())).collect::<Vec<_>>()
        });
        let all = context.shown.with(|shown| first(shown).map(used_inputs).unwrap_or_default());
        all.into_iter().filter(|option| !there.contains(&option.value)).collect::<Vec<ChoiceOption>>()
    });
    let next = RwSignal::new(String::new());
    let now = Memo::new(move |_| {
        let wanted = next.get();
        others.with(|others| {
            let found = others.iter().find(|option| option.value == wanted).or(others.first());
            found.map(|option| option.value.clone()).unwrap_or_default()
        })
    });
    let add = move |_| {
        let key = now.get_untracked();
        let unit: Option<Unit> = context.shown.with_untracked(|shown| {
            let system = first(shown)?;
            let field = number_of(&system.draft, system.case()?, &key)?;
            Some(untrack(|| state.unit(system.draft.kind(field))))
        });
        if let Some(unit) = unit {
            context.enter(|typed| typed.uncertainty.source_mut(&key).size = Some(Entry::empty(unit)));
        }
    };
    view! {
        <Show when=move || !others.with(Vec::is_empty)>
            <div class="given add-source">
                <Choice
                    id="compare-sure.add"
                    name=Signal::derive(|| t!("compare-add-source"))
                    labelled=true
                    options=others
                    value=now
                    on_choose=Callback::new(move |key| next.set(key))
                />
                <div class="end"><button type="button" on:click=add>{t!("compare-add")}</button></div>
            </div>
        </Show>
    }
}

/// What is uncertain and by how much, as a table: source, ±, its unit, how it is stated, degrees of freedom.
pub fn assumed(context: CompareContext, known: &PageStudy) -> Table {
    let state = context.state;
    let typed = state.compare.typed.get_untracked();
    let head = [label!("comparison-head-source"), "±", label!("comparison-head-unit")];
    let mut heads = head.map(Cell::heading).to_vec();
    heads.extend([Cell::heading(t!("compare-plus-minus-is")), Cell::heading(label!("comparison-head-freedom"))]);
    let mut rows = vec![heads];
    for source in &known.sources {
        let (stated, unit) = (source.stated(&typed.uncertainty), state.unit(source.kind));
        let Some(width) = source.width(&typed.uncertainty, unit) else { continue };
        let decimals = (2 - width.log10().floor() as i32).clamp(0, 9);
        let freedom = source.freedom(&typed.uncertainty);
        rows.push(vec![
            Cell::text(known.source_name(source)),
            Cell::Number { value: rounded(width), decimals: u8::try_from(decimals).unwrap_or(0) },
            Cell::text(statement_unit(context, stated, unit)),
            Cell::text(words::compare::form(stated.form).label),
            freedom.map_or(Cell::text("∞"), |value| Cell::Number { value, decimals: 1 }),
        ]);
    }
    Table { name: t!("comparison-sheet-sources"), rows, frozen: 1 }
}
