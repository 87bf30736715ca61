//! Every figure of all systems, with what each has more than the reference, also as a percentage.

use crate::domain::compare::Output;
use crate::domain::compare::draft::{CompareDraft, hours_limit};
use crate::domain::compare::side::{ComparedSystem, Row};
use crate::quantity::{Kind, Unit, format};
use crate::t;
use crate::ui::page::compare::context::{CompareContext, OpenOutput};
use crate::ui::page::compare::entry_box::CompareBox;
use crate::ui::page::compare::words::{signed, unit_name};
use crate::ui::page::compare::working::{SystemFigure, SystemWorking};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// Where the workings of this table open.
const SCOPE: &str = "all-";

/// The table, and the hours a year.
#[component]
pub fn AllResults() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let hours = context.follow(|typed| typed.hours.clone());
    let enter = Callback::new(move |entry| context.enter(|typed: &mut CompareDraft| typed.hours = entry));
    let outputs = Memo::new(move |_| {
        context.shown.with(|shown| {
            let rows = shown.side.as_ref().map_or(&[][..], |side| &side.rows[..]);
            rows.iter().map(|row| row.output).collect::<Vec<_>>()
        })
    });
    let heads = move || {
        context.shown.with(|shown| {
            let head = |at: usize| {
                let note =
                    (at == shown.reference).then(|| view! { <span class="note">{t!("compare-reference")}</span> });
                view! { <th scope="col">{shown.name(at)} {note}</th> }
            };
            (0..shown.systems.len()).map(head).collect_view()
        })
    };
    let limits = move || {
        context.shown.with(|shown| {
            let limit = |system: &ComparedSystem| {
                let machine = system.limiting().map_or("–", words::machine);
                view! { <td>{machine}</td> }
            };
            shown.systems.iter().map(limit).collect_view()
        })
    };
    view! {
        <CompareBox
            key="hours"
            label=Signal::derive(|| t!("compare-hours"))
            name=Signal::derive(|| t!("compare-hours"))
            kind=Kind::ShiftTime
            limit=hours_limit()
            entry=hours
            on_enter=enter
            class="narrow"
        />
        <SystemWorking scope=SCOPE/>
        <div class="scroll" tabindex="0" role="region" aria-label=t!("compare-all-results")>
            <table class="figures-table beside" aria-label=t!("compare-all-results")>
                <thead>
                    <tr>
                        <th scope="col" class="l">{t!("compare-result")}</th>
                        <th scope="col" class="l">{t!("compare-unit")}</th>
                        {heads}
                    </tr>
                </thead>
                <tbody>
                    <For each=move || outputs.get() key=|output| output.key() let:output><ResultRow output=output/></For>
                    <tr><th scope="row" class="l">{t!("compare-bottleneck")}</th><td></td>{limits}</tr>
                </tbody>
            </table>
        </div>
    }
}

/// What a system has more of a figure than the reference: in the unit shown, and as a share.
pub fn more(state: State, row: &Row, at: usize, reference: usize, unit: Unit) -> String {
    let Some(more) = row.difference(at, reference, unit) else { return String::new() };
    match row.relative(at, reference) {
        Some(share) if share != 0.0 => format!("{} ({}\u{a0}%)", signed(state, more), signed(state, share * 100.0)),
        _ => signed(state, more),
    }
}

/// The row of a figure of all systems. Only a cost a year follows the hours.
pub fn row_of(context: CompareContext, output: Output) -> Row {
    let hours = if matches!(output, Output::CostPerYear(_)) { context.hours.get() } else { Some(1) };
    let now = match output {
        Output::CostPerYear(_) => Output::CostPerYear(hours.unwrap_or(1)),
        other => other,
    };
    let value = |system: &ComparedSystem| hours.and(system.case()).and_then(|case| now.value(case));
    Row { output: now, values: context.shown.with(|shown| shown.systems.iter().map(value).collect()) }
}

#[component]
fn ResultRow(
    /// The figure.
    output: Output,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let state = context.state;
    let words = words::compare::output(output);
    let row = Memo::new(move |_| row_of(context, output));
    let cells = move || {
        let row = row.get();
        let unit = state.unit(output.kind());
        let mark = state.units.get().mark;
        context.shown.with(|shown| {
            let cell = |(at, value): (usize, &Option<crate::quantity::Amount>)| {
                let Some(amount) = *value else { return view! { <td>"–"</td> }.into_any() };
                let name = t!("compare-figure-of", figure = words.label, system = shown.name(at));
                let text = (format::amount(amount, unit, mark), unit_name(state, output.kind()));
                let difference = (at != shown.reference).then(|| {
                    let more = more(state, &row, at, shown.reference, unit);
                    view! { <span class="note">{more}</span> }
                });
                let open = OpenOutput { scope: SCOPE, output, at };
                view! { <td><SystemFigure open=open text=text name=name/>{difference}</td> }.into_any()
            };
            row.values.iter().enumerate().map(cell).collect_view()
        })
    };
    let note = (!words.note.is_empty()).then(|| view! { <span class="note">{words.note}</span> });
    view! {
        <tr>
            <th scope="row" class="l">{words.label} {note}</th>
            <td class="l unit">{move || unit_name(state, output.kind())}</td>
            {cells}
        </tr>
    }
}
