//! The chosen figures with their ± by both methods.

use super::rows::{ResultGroup, ResultRowText, result_groups};
use super::shared::UncertaintyContext;
use super::study::PageStudy;
use crate::domain::Grade;
use crate::domain::compare::uncertainty::agreement::DisagreementCause;
use crate::domain::compare::uncertainty::agreement::compare;
use crate::domain::compare::uncertainty::study::RequestedFigure;
use crate::quantity::format::DecimalMark;
use crate::t;
use crate::ui::chart::scale::{LinearScale, Ticks};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::glyph::SystemGlyph;
use crate::ui::page::compare::message::GradedMessage;
use crate::ui::text::words;
use leptos::prelude::*;

/// Width of the drawing of an interval.
const WIDE: f64 = 220.0;

/// Whether the difference that matters most is more than its uncertainty, in a sentence.
#[component]
pub fn UncertaintyVerdict() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let shared = expect_context::<UncertaintyContext>();
    let words = Memo::new(move |_| {
        shared.study.with(|known| known.as_ref().map(|known| verdict(context, known)).unwrap_or_default())
    });
    view! {
        <section class="verdict" role="status" aria-label=t!("compare-verdict")>
            <p class="lead">{move || words.with(|words| words.0.clone())}</p>
            <p>{move || words.with(|words| words.1.clone())}</p>
        </section>
    }
}

/// The last difference, a cost where one is known, and what it means.
fn verdict(context: CompareContext, known: &PageStudy) -> (String, String) {
    let groups = result_groups(context, known);
    let find = |row: &ResultRowText| known.budgets.get(row.at).and_then(Option::as_ref);
    let differences = groups.iter().flat_map(|group| group.rows.iter().map(move |row| (group, row)));
    let last = differences
        .filter_map(|(group, row)| find(row).map(|budget| (group, row, budget)))
        .rfind(|(.., budget)| matches!(budget.asked, RequestedFigure::Difference { .. }));
    let Some((group, row, budget)) = last else { return Default::default() };
    let is_more = budget.value.abs() > budget.expanded;
    let lead = t!(
        "compare-sure-difference",
        figure = group.title.clone(),
        name = row.name.clone(),
        value = row.value.clone(),
        width = row.expanded.clone(),
        sure = if is_more { "yes" } else { "no" }
    );
    // The same instruments serve both systems.
    let terms = known.budgets.iter().flatten().filter(|other| {
        matches!(other.asked, RequestedFigure::Of { output, .. } if output.key() == budget.asked.output().key())
    });
    let widest = terms.map(|other| other.expanded).fold(0.0, f64::max);
    let second = if budget.expanded < widest { t!("compare-surer-than-either") } else { String::new() };
    (lead, second)
}

/// The table, and what there is to say about it.
#[component]
pub fn ResultsTable() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let shared = expect_context::<UncertaintyContext>();
    let state = context.state;
    let groups = Memo::new(move |_| {
        shared.study.with(|known| {
            known
                .as_ref()
                .filter(|known| known.study.is_ok())
                .map(|known| result_groups(context, known))
                .unwrap_or_default()
        })
    });
    let is_drawn = Memo::new(move |_| {
        shared
            .study
            .with(|known| known.as_ref().is_some_and(|known| state.compare.found.with(|found| known.is_of(found))))
    });
    let wrong = move || {
        shared.study.with(|known| {
            let known = known.as_ref()?;
            let error = known.study.as_ref().err()?;
            let message = words::compare::no_study(*error, &known.systems);
            Some(view! { <GradedMessage grade=Grade::Unusual message=message/> })
        })
    };
    let rows = move || {
        let reference = context.shown.with(|shown| shown.reference);
        let group = |group: ResultGroup| result_body(context, shared, group, reference, is_drawn.get());
        groups.get().into_iter().map(group).collect_view()
    };
    let reasons =
        move || shared.study.with(|known| known.as_ref().map(|known| reasons(context, known)).unwrap_or_default());
    view! {
        {wrong}
        <Show when=move || !groups.with(Vec::is_empty)>
            <div class="scroll" tabindex="0" role="region" aria-label=t!("compare-uncertainty")>
                <table class="figures-table sure" aria-label=t!("compare-uncertainty")>
                    <thead>
                        <tr>
                            <th scope="col" class="l">{t!("compare-result")}</th>
                            <th scope="col">{t!("compare-value")}</th>
                            <th scope="col">{t!("compare-expanded")}</th>
                            <th scope="col">{t!("compare-first-order")}</th>
                            <Show when=move || is_drawn.get()><th scope="col" class="edge">{t!("compare-monte-carlo")}</th></Show>
                            <th scope="col" class="interval"><IntervalKey/></th>
                            <Show when=move || is_drawn.get()><th scope="col" class="l use">{t!("compare-use")}</th></Show>
                        </tr>
                    </thead>
                    {rows}
                </table>
            </div>
        </Show>
        <ul class="note reasons">{move || reasons().into_iter().map(|reason| view! { <li>{reason}</li> }).collect_view()}</ul>
    }
}

/// How both intervals are drawn.
#[component]
fn IntervalKey() -> impl IntoView {
    view! {
        <svg class="interval-key" viewBox="0 0 34 14" width="34" height="14" aria-hidden="true"><path class="first" d="M2 7H32M2 3v8M32 3v8"></path></svg>
        " " {t!("compare-first-order")} " "
        <svg class="interval-key" viewBox="0 0 34 14" width="34" height="14" aria-hidden="true"><rect class="drawn" x="2" y="3" width="30" height="8"></rect></svg>
        " " {t!("compare-monte-carlo")}
    }
}

/// Why the methods differ, each reason once.
fn reasons(context: CompareContext, known: &PageStudy) -> Vec<String> {
    let state = context.state;
    let Ok(study) = &known.study else { return Vec::new() };
    let mut why: Vec<DisagreementCause> = Vec::new();
    state.compare.found.with(|found| {
        if !known.is_of(found) {
            return;
        }
        for at in 0..known.budgets.len() {
            let Some((budget, summary)) = known.budget(at, Some(1)).zip(known.summary(at, found, Some(1))) else {
                continue;
            };
            let around = known.around(budget.asked, Some(1)).unwrap_or(budget.value);
            if crate::domain::compare::uncertainty::agreement::is_exact(&budget, Some(&summary), around) {
                continue;
            }
            for cause in compare(study, &budget, &summary, 1).why {
                match why.iter_mut().find(|other| std::mem::discriminant(*other) == std::mem::discriminant(&cause)) {
                    Some(DisagreementCause::AtBound(most)) => {
                        if let DisagreementCause::AtBound(share) = cause {
                            *most = most.max(share);
                        }
                    }
                    Some(_) => {}
                    None => why.push(cause),
                }
            }
        }
    });
    why.into_iter().map(|cause| state.with_context(|context| words::compare::why(cause, context))).collect()
}

/// The rows of a figure. A press on one shows its budget.
fn result_body(
    context: CompareContext,
    shared: UncertaintyContext,
    group: ResultGroup,
    reference: usize,
    is_drawn: bool,
) -> AnyView {
    let scale = scale(&group, context.state.units.with(|units| units.mark));
    let ends = scale.as_ref().map(
        |(_, low, high)| view! { <span class="ends"><span>{low.clone()}</span><span>{high.clone()}</span></span> },
    );
    let row = |row: ResultRowText| {
        let at = row.at;
        let is_chosen = move || shared.chosen.get() == Some(at);
        let choose = move |_| {
            let selection = shared.study.with_untracked(|known| known.as_ref().and_then(|known| known.selection(at)));
            if let Some((key, of)) = selection {
                // Where one looks is no step.
                let typed = context.state.compare.typed;
                typed.update(|typed| (typed.uncertainty.output, typed.uncertainty.of) = (key, of));
            }
        };
        let glyph = row.system.map(|at| view! { <SystemGlyph at=at is_reference={at == reference}/> " " });
        let note = (!row.note.is_empty()).then(|| view! { <span class="note">{row.note.clone()}</span> });
        let drawing = scale.as_ref().map(|(scale, ..)| interval(scale, &row));
        view! {
            <tr class:chosen=is_chosen data-result=format!("{}.{at}", group.key)>
                <th scope="row" class="l">
                    <button
                        type="button"
                        class="link pick-row"
                        aria-pressed=move || if is_chosen() { "true" } else { "false" }
                        aria-label=t!("compare-show-budget", figure = group.title.clone(), name = row.name.clone())
                        on:click=choose
                    >
                        {glyph}
                        {row.name.clone()}
                    </button>
                    {note}
                </th>
                <td class="value">{row.value.clone()}</td>
                <td class="expanded">{row.expanded.clone()}</td>
                <td class="first-order">{row.first_order.clone()}</td>
                {is_drawn.then(|| view! { <td class="edge drawn">{row.drawn.clone()}</td> })}
                <td class="interval">{drawing}</td>
                {is_drawn.then(|| view! { <td class="l use">{row.usage.clone()}</td> })}
            </tr>
        }
    };
    let before = if is_drawn { "5" } else { "4" };
    let rows = group.rows.iter().cloned().map(row).collect_view();
    view! {
        <tbody>
            <tr class="group">
                <th scope="rowgroup" class="l" colspan=before>{group.title.clone()}</th>
                <th class="interval">{ends}</th>
                {is_drawn.then(|| view! { <td></td> })}
            </tr>
            {rows}
        </tbody>
    }
    .into_any()
}

/// The axis of a group, and the numbers at its ends.
fn scale(group: &ResultGroup, mark: DecimalMark) -> Option<(LinearScale, String, String)> {
    let ends = group.rows.iter().flat_map(|row| {
        let (value, (low, high), drawn) = row.numbers;
        [Some(value), Some(low), Some(high), drawn.map(|drawn| drawn.0), drawn.map(|drawn| drawn.1)]
    });
    let numbers: Vec<f64> = ends.flatten().filter(|number| number.is_finite()).collect();
    let low = numbers.iter().copied().fold(f64::INFINITY, f64::min);
    let high = numbers.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let around = LinearScale::new((low, high), (8.0, WIDE - 8.0))?.domain;
    let ticks = Ticks::new(around.0, around.1, 4)?;
    let domain = ((around.0 / ticks.step).floor() * ticks.step, (around.1 / ticks.step).ceil() * ticks.step);
    Some((LinearScale::new(domain, (8.0, WIDE - 8.0))?, ticks.label(domain.0, mark), ticks.label(domain.1, mark)))
}

/// Both intervals on the axis; the numbers are in the same row.
fn interval(scale: &LinearScale, row: &ResultRowText) -> AnyView {
    let (value, (low, high), drawn) = row.numbers;
    let place = |number: f64| scale.place(number);
    let (left, right) = scale.range;
    let first = (high > low).then(|| {
        let (from, to) = (place(low), place(high));
        view! { <path class="first" d=format!("M{from:.1} 14H{to:.1}M{from:.1} 10v8M{to:.1} 10v8")></path> }
    });
    let drawn = drawn.map(|(low, high)| {
        let (from, to) = (place(low), place(high));
        view! { <rect class="drawn" x=format!("{from:.1}") y="25" width=format!("{:.1}", (to - from).max(1.0)) height="8"></rect> }
    });
    view! {
        <svg class="interval" viewBox=format!("0 0 {WIDE} 40") width=WIDE.to_string() height="40" aria-hidden="true">
            <path class="axis" d=format!("M{left} 21H{right}M{left} 18v6M{right} 18v6")></path>
            {first}
            {drawn}
            <path class="now" d=format!("M{:.1} 8v27", place(value))></path>
        </svg>
    }
    .into_any()
}

/// The same as plain text, for paper: heads and rows.
pub fn results_table(context: CompareContext, known: &PageStudy) -> (Vec<String>, Vec<Vec<String>>) {
    let head = vec![
        t!("compare-result"),
        t!("compare-value"),
        t!("compare-expanded"),
        t!("compare-first-order"),
        t!("compare-monte-carlo"),
        t!("compare-use"),
    ];
    let groups = result_groups(context, known);
    let rows = groups.into_iter().flat_map(|group| {
        let title = group.title;
        group.rows.into_iter().map(move |row| {
            vec![format!("{title}: {}", row.name), row.value, row.expanded, row.first_order, row.drawn, row.usage]
        })
    });
    (head, rows.collect())
}
