//! The heads of the columns: the systems by mark, letter and name, their binders, and the way to remove one.

use crate::browser::page;
use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::compare::Output;
use crate::domain::compare::side::{ComparedSystem, FEWEST};
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::recipe::liquid::Role;
use crate::t;
use crate::ui::chart::series::letter;
use crate::ui::components::Measured;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::glyph::SystemGlyph;
use crate::ui::page::compare::systems::chosen;
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, trimmed_to, words};
use leptos::prelude::*;

/// The head of the table. The last column is as wide as is left.
#[component]
pub fn KeyHead(
    /// Takes the width of the last column.
    width: RwSignal<f64>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let keys = Memo::new(move |_| context.shown.with(|shown| shown.keys.clone()));
    let legend = move || {
        context.shown.with(|shown| {
            let one = |at: usize| {
                view! { <span><SystemGlyph at=at is_reference={at == shown.reference}/> " " {letter(at).to_string()}</span> }
            };
            (0..shown.systems.len()).map(one).collect_view()
        })
    };
    view! {
        <thead>
            <tr>
                <th scope="col" class="label">{t!("compare-result")}</th>
                <th scope="col" class="unit">{t!("compare-unit")}</th>
                <For each=move || keys.get() key=SystemChoice::key let:key><SystemHead key=key/></For>
                <th scope="col" class="strip-cell">
                    <Measured width=width class="strip-head">
                        <span class="legend">{legend}</span>
                        <span>{t!("compare-on-one-axis")}</span>
                    </Measured>
                </th>
            </tr>
        </thead>
    }
}

/// The head of a system.
#[component]
fn SystemHead(
    /// The system.
    key: SystemChoice,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let own = key.clone();
    let at = Memo::new(move |_| {
        context.shown.with(|shown| shown.keys.iter().position(|other| *other == own).unwrap_or_default())
    });
    let reference = Memo::new(move |_| context.shown.with(|shown| shown.reference));
    let name = Memo::new(move |_| context.shown.with(|shown| shown.name(at.get())));
    let binders = Memo::new(move |_| {
        context.shown.with(|shown| shown.systems.get(at.get()).map(|system| binders(state, system)).unwrap_or_default())
    });
    let is_open = key == SystemChoice::OpenRecipe;
    let note = move || {
        let open = is_open.then(|| format!(" {}", t!("compare-is-open")));
        let reference = (at.get() == reference.get()).then(|| format!(" {}", t!("compare-is-reference")));
        format!("{}{}", open.unwrap_or_default(), reference.unwrap_or_default())
    };
    let difference =
        move || (at.get() != reference.get()).then(|| format!("{} − {}", letter(at.get()), letter(reference.get())));
    let is_few = Memo::new(move |_| context.shown.with(|shown| shown.keys.len() <= FEWEST));
    let remove = move |_| remove(context, &key);
    view! {
        <th scope="col" class="system-col">
            <span class="system-head">
                <span class="system-name">
                    {move || view! { <SystemGlyph at=at.get() is_reference={at.get() == reference.get()}/> }}
                    " "
                    <b>{move || name.get()}</b>
                    <button
                        type="button"
                        class="bare remove"
                        aria-label=move || t!("compare-remove", system = name.get())
                        hidden=move || is_few.get()
                        on:click=remove
                    >
                        "×"
                    </button>
                </span>
                <span class="binders">{move || binders.get()} {note}</span>
            </span>
            <span class="diff">{difference}</span>
        </th>
    }
}

/// "12 %", "UF 8, pMDI 1.5 %".
fn binders(state: State, system: &ComparedSystem) -> String {
    let Some(case) = system.case() else { return t!("compare-no-result") };
    let unit = state.unit(Output::BinderOnFibre.kind());
    let mark = state.units.get().mark;
    let all = case.input.liquids.as_slice().iter().filter(|liquid| liquid.role == Role::Binder);
    let doses: Vec<(&str, String)> = all
        .filter_map(|liquid| {
            let dose = case.figure(Figure::Liquid(liquid.id, LiquidFigure::SolidsOnFibre))?;
            Some((words::substance(liquid.substance), trimmed_to(dose.get(unit), 3, mark)))
        })
        .collect();
    match doses.as_slice() {
        [(_, dose)] => format!("{dose}\u{a0}{}", symbol_shown(unit)),
        all => {
            let each: Vec<String> = all.iter().map(|(name, dose)| format!("{name} {dose}")).collect();
            format!("{}\u{a0}{}", each.join(", "), symbol_shown(unit))
        }
    }
}

fn remove(context: CompareContext, key: &SystemChoice) {
    let before = context.state.compare.typed.get_untracked();
    let mut systems = untrack(|| chosen(context.state));
    systems.retain(|other| other != key);
    let name = context.shown.with_untracked(|shown| {
        shown.keys.iter().position(|other| other == key).map(|at| shown.name(at)).unwrap_or_default()
    });
    context.enter(|typed| typed.systems = systems);
    let undo = move || context.state.compare.typed.update(|typed| typed.systems.clone_from(&before.systems));
    context.state.tell_undo(t!("compare-removed", system = name), undo);
    page::focus("compare-add-open");
}
