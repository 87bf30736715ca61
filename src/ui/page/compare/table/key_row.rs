//! The row of a key figure: each system's value, what it has more than the reference, and all of them on one axis.

use super::key_figures::{KEY, decimals};
use super::strip::strip;
use crate::domain::compare::economy::field::{SystemEconomyEntries, SystemEconomyField};
use crate::domain::compare::overview::key_figures::{KeyFigure, KeyRow, needs_release_agent};
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::{Entry, Grade};
use crate::quantity::format;
use crate::t;
use crate::ui::components::{Mark, Rank};
use crate::ui::page::compare::context::{CompareContext, OpenOutput};
use crate::ui::page::compare::entry_box::CompareBox;
use crate::ui::page::compare::words::{key_name, mark_name, signed_fixed, unit_name};
use crate::ui::page::compare::working::SystemFigure;
use crate::ui::text::words;
use leptos::prelude::*;

/// The row.
#[component]
pub fn KeyTableRow(
    /// The figure.
    figure: KeyFigure,
    /// All of them.
    rows: Memo<Vec<KeyRow>>,
    /// The width of the column with the drawing.
    width: RwSignal<f64>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let row = Memo::new(move |_| rows.with(|rows| rows.iter().find(|row| row.figure == figure).cloned()));
    let keys = Memo::new(move |_| context.shown.with(|shown| shown.keys.clone()));
    let cells = move || {
        row.get().map(|row| {
            let cell = |at: usize| view! { <td class="system-col" class:warn=row.marks.get(at).is_some_and(Option::is_some)>{key_cell(context, &row, at)}</td> };
            (0..row.values.len()).map(cell).collect_view()
        })
    };
    // A box stays while the figures change.
    let agents = move || {
        view! {
            <For each=move || keys.get() key=SystemChoice::key let:key><AgentCell key=key row=row/></For>
        }
    };
    let drawn = move || {
        let row = row.get()?;
        let reference = context.shown.with(|shown| shown.reference);
        let missing = row.values.iter().filter(|value| value.is_none()).count();
        match strip(state, &row, reference, width.get()) {
            Some(strip) => Some(strip),
            None if missing > 0 => Some(view! { <span class="note">{t!("compare-not-drawn")}</span> }.into_any()),
            None => None,
        }
    };
    view! {
        <tr data-key=figure.key()>
            <th scope="row" class="label">
                {key_name(figure)}
                <span class="note">{move || row.get().map(|row| note(context, &row))}</span>
            </th>
            <td class="unit">{move || unit_name(state, figure.kind())}</td>
            {if figure == KeyFigure::CostWithAgent { agents().into_any() } else { cells.into_any() }}
            <td class="strip-cell">{drawn}</td>
        </tr>
    }
}

/// What is below a figure's name.
fn note(context: CompareContext, row: &KeyRow) -> String {
    let state = context.state;
    let number = |amount: crate::quantity::Amount| {
        let units = state.units.get();
        format::amount(amount, units.unit(amount.kind), units.mark)
    };
    match row.figure {
        KeyFigure::WaterExcess => t!("compare-over-target"),
        KeyFigure::FibreMoisture => row.now.map_or_else(String::new, |now| t!("compare-fibre-now", now = number(now))),
        KeyFigure::PressFactor => row.typical.map_or_else(String::new, |(low, high)| {
            t!("compare-typical-range", low = number(low), high = number(high))
        }),
        KeyFigure::CostWithAgent => {
            let users = context.shown.with(|shown| {
                let uses = |at: &usize| shown.systems.get(*at).is_some_and(|system| needs_release_agent(&system.draft));
                (0..shown.systems.len()).filter(uses).collect::<Vec<_>>()
            });
            if users.is_empty() {
                t!("compare-agent-unused")
            } else {
                t!("compare-agent-used-by", systems = context.letters(&users))
            }
        }
        _ => String::new(),
    }
}

/// The value of a system and what it has more than the reference.
fn key_cell(context: CompareContext, row: &KeyRow, at: usize) -> AnyView {
    let state = context.state;
    let unit = state.unit(row.figure.kind());
    let decimals = decimals(row, unit);
    let (reference, system) = context.shown.with(|shown| (shown.reference, shown.name(at)));
    let value = |at: usize| row.values.get(at).copied().flatten().map(|value| value.get(unit));
    let mark = row.marks.get(at).copied().flatten().map(|mark| {
        view! { <span class="flag"><Mark grade=Grade::Unusual/> " " {mark_name(mark)} " "</span> }
    });
    let Some(own) = value(at) else {
        return view! { <span class="value">{mark}"–"</span><span class="diff"></span> }.into_any();
    };
    let number = format::fixed(own, decimals, state.units.get().mark);
    // From the figures shown, with their decimals.
    let more = value(reference)
        .filter(|_| at != reference)
        .map(|other| signed_fixed(state, format::rounded(own, decimals) - format::rounded(other, decimals), decimals));
    let difference = more.map(|more| {
        view! { <span class="out-of-sight">{t!("compare-more-than-reference")} " "</span> {more} }
    });
    let rank = match row.figure {
        KeyFigure::WaterDose | KeyFigure::Cost => Rank::Lead,
        _ => Rank::Body,
    };
    let shown = match row.figure.output() {
        Some(output) => {
            let name = t!("compare-figure-of", figure = key_name(row.figure), system = system);
            let open = OpenOutput { scope: KEY, output, at };
            view! { <SystemFigure open=open text=(number, unit_name(state, row.figure.kind())) name=name rank=rank/> }
                .into_any()
        }
        None => view! { <span data-figure=format!("{}.{at}", row.figure.key())>{number}</span> }.into_any(),
    };
    view! { <span class="value">{mark}{shown}</span><span class="diff">{difference}</span> }.into_any()
}

/// The cost with release agent: its price is asked for in place.
#[component]
fn AgentCell(
    /// The system.
    key: SystemChoice,
    /// The row.
    row: Memo<Option<KeyRow>>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let own = key.clone();
    let at = Memo::new(move |_| {
        context.shown.with(|shown| shown.keys.iter().position(|other| *other == own).unwrap_or_default())
    });
    let is_asked = Memo::new(move |_| {
        context.shown.with(|shown| {
            shown
                .systems
                .get(at.get())
                .is_some_and(|system| system.case().is_some() && needs_release_agent(&system.draft))
        })
    });
    let value = move || {
        let row = row.get()?;
        let at = at.get();
        // A system with a box shows its value once it has one.
        let is_there = row.values.get(at).is_some_and(Option::is_some);
        (is_there || !is_asked.get()).then(|| key_cell(context, &row, at))
    };
    let key = StoredValue::new(key);
    view! {
        <td class="system-col agent">
            {value}
            <Show when=move || is_asked.get()>
                <AgentBox key=key.get_value() at=at/>
            </Show>
        </td>
    }
}

/// The price of a system's release agent.
#[component]
pub fn AgentBox(
    /// The system.
    key: SystemChoice,
    /// Its place.
    at: Memo<usize>,
    /// What comes before the key of the box, where it is shown a second time.
    #[prop(optional)]
    scope: &'static str,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let field = SystemEconomyField::ReleaseAgent;
    let own = key.clone();
    let entry = Memo::new(move |_| {
        let entries = context.state.compare.typed.with(|typed| typed.system_economy.get(&own).cloned());
        entries.unwrap_or_else(SystemEconomyEntries::default).entry(field).clone()
    });
    let enter = Callback::new(move |entry: Entry| {
        context.enter(|typed| *typed.system_economy.entry(key.clone()).or_default().entry_mut(field) = entry);
    });
    let name = Signal::derive(move || {
        let label = words::compare::system_economy_field(field).label;
        t!("compare-figure-of", figure = label, system = context.shown.with(|shown| shown.name(at.get())))
    });
    let unit = Signal::derive(move || format!("{}/m²", context.state.currency.get()));
    view! {
        <CompareBox
            key=format!("{scope}release-agent-{}", at.get_untracked())
            name=name
            kind=field.kind()
            limit=field.limit()
            entry=entry
            on_enter=enter
            unit_words=unit
            placeholder=Signal::derive(|| t!("compare-agent-required"))
            class="want"
        />
    }
}
