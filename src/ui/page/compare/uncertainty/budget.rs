//! Where the uncertainty of the selected figure comes from, and what to improve first.

use super::shared::UncertaintyContext;
use super::study::PageStudy;
use crate::domain::compare::uncertainty::agreement::is_at_bound;
use crate::domain::compare::uncertainty::budget::{Budget, Share};
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::domain::compare::uncertainty::monte_carlo::MonteCarloRun;
use crate::quantity::{Coherent, Kind, format};
use crate::t;
use crate::ui::math::{Style, combined_letters, combined_numbers};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::words::unit_name;
use crate::ui::part::amount::joined;
use crate::ui::text::{in_unit, trimmed_to, width_shown, words};
use leptos::prelude::*;

/// A share below this is rounding.
const NOTHING: f64 = 1e-9;
/// Sources below this share are counted together.
const SMALL: f64 = 0.01;

/// The panel.
#[component]
pub fn BudgetPanel() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let shared = expect_context::<UncertaintyContext>();
    move || {
        let at = shared.chosen.get()?;
        shared.study.with(|known| {
            let known = known.as_ref()?;
            let budget = chosen_budget(context, known, at)?;
            Some(panel(context, known, &budget))
        })
    }
}

/// A budget with what the draws say where the derivatives say nothing.
fn chosen_budget(context: CompareContext, known: &PageStudy, at: usize) -> Option<Budget> {
    let asked = known.budgets.get(at)?.as_ref()?.asked;
    // Only a cost a year follows the hours.
    let hours = if asked.kind() == Kind::YearCost { context.hours.get() } else { Some(1) };
    let mut budget = known.budget(at, hours)?;
    budget.shares.retain(|share| share.share > NOTHING);
    let bound = context.state.compare.found.with(|found| {
        let summary = known.summary(at, found, hours).filter(|_| known.is_of(found));
        summary.filter(is_at_bound).map(|summary| (summary, found.seed))
    });
    if let (Some((summary, seed)), Ok(study)) = (bound, &known.study) {
        budget = budget.with_drawn_shares(&MonteCarloRun::shares(study, at, seed), summary.standard);
    }
    Some(budget)
}

/// What a source is called, and what it is measured with.
fn source_words(known: &PageStudy, source: usize) -> (String, String) {
    let target = known.uncertain.get(source).and_then(|source| source.targets.first());
    let Some((system, field)) = target else { return Default::default() };
    let name = known.systems.get(*system).map(|system| words::field_name(*field, &system.draft));
    (name.unwrap_or_default(), words::compare::instrument(Instrument::of(*field)).to_owned())
}

/// A row of the budget: source, instrument, its ±, its share in percent.
struct BudgetRow {
    name: String,
    instrument: String,
    width: String,
    share: f64,
    percent: String,
}

fn rows(context: CompareContext, known: &PageStudy, budget: &Budget) -> Vec<BudgetRow> {
    let state = context.state;
    let mark = state.units.get().mark;
    let unit = state.unit(budget.asked.kind());
    let around = known.around(budget.asked, context.hours.get()).unwrap_or(budget.value);
    // Each source's part of the ±, with the digits of the whole.
    let width = |part: f64| in_unit(unit, 0.0, part * budget.factor, Some(around)).1;
    let decimals = format::column_decimals(2, std::iter::once(width(budget.standard)));
    let percent = |share: f64| {
        let percent = share * 100.0;
        if percent < 1.0 { "<\u{a0}1".to_owned() } else { format::fixed(percent, 0, mark) }
    };
    let (large, small): (Vec<&Share>, Vec<&Share>) = budget.shares.iter().partition(|share| share.share >= SMALL);
    let mut rows: Vec<BudgetRow> = large
        .into_iter()
        .map(|share| {
            let (name, instrument) = source_words(known, share.source);
            let width = format::fixed(width(share.part.abs()), decimals, mark);
            BudgetRow { name, instrument, width, share: share.share, percent: percent(share.share) }
        })
        .collect();
    if !small.is_empty() {
        let share: f64 = small.iter().map(|share| share.share).sum();
        let part = small.iter().map(|share| share.part.powi(2)).sum::<f64>().sqrt();
        rows.push(BudgetRow {
            name: t!("compare-other-sources", count = small.len()),
            instrument: String::new(),
            width: format::fixed(width(part), decimals, mark),
            share,
            percent: percent(share),
        });
    }
    rows
}

fn panel(context: CompareContext, known: &PageStudy, budget: &Budget) -> AnyView {
    let state = context.state;
    let label = words::compare::output(budget.asked.output()).label;
    let title = t!("compare-budget-of", figure = label, name = known.name(budget.asked));
    let kind = budget.asked.kind();
    let around = known.around(budget.asked, context.hours.get());
    let at = around.unwrap_or(budget.value);
    let show = |standard: f64| state.with_context(|context| width_shown(kind, standard, at, context));
    let improve = budget.improve_first().map(|found| {
        let (name, _) = source_words(known, found.source);
        t!(
            "compare-improve",
            source = name,
            share = trimmed_to(found.share * 100.0, 2, state.units.get().mark),
            halved = show(found.halved * budget.factor),
            now = show(budget.standard * budget.factor)
        )
    });
    let row = |row: BudgetRow| {
        let wide = format!("{:.1}", row.share * 100.0);
        view! {
            <tr>
                <th scope="row" class="l">{row.name} <span class="note">{row.instrument}</span></th>
                <td>{row.width}</td>
                <td class="share-cell">
                    <svg class="share-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
                        <rect class="all" width="100" height="8"></rect>
                        <rect class="used" width=wide height="8"></rect>
                    </svg>
                </td>
                <td>{row.percent}</td>
            </tr>
        }
    };
    let rows = rows(context, known, budget).into_iter().map(row).collect_view();
    let mark = state.units.get().mark;
    let freedom = budget.freedom.map_or_else(|| "∞".to_owned(), |freedom| trimmed_to(freedom, 3, mark));
    let detail = t!(
        "compare-budget-detail",
        standard = show(budget.standard),
        freedom = freedom,
        factor = trimmed_to(budget.factor, 3, mark)
    );
    let units = state.units.get();
    let currency = state.currency.get();
    let style = Style { set: Coherent::from(units.system), mark: units.mark, currency: &currency };
    let numbers = combined_numbers(budget, around, style);
    let unit = unit_name(state, kind);
    let head = if unit.is_empty() { "±".to_owned() } else { format!("±, {unit}") };
    view! {
        <h2>{title}</h2>
        <p id="improve">{improve}</p>
        <table class="figures-table budget-table" aria-label=t!("compare-budget")>
            <thead>
                <tr>
                    <th scope="col" class="l">{t!("compare-source")}</th>
                    <th scope="col">{head}</th>
                    <th scope="col" class="l">{t!("compare-share")}</th>
                    <th scope="col">"%"</th>
                </tr>
            </thead>
            <tbody>{rows}</tbody>
            <tfoot>
                <tr>
                    <th scope="row" class="l">{t!("compare-combined")}</th>
                    <td>{show(budget.standard * budget.factor).trim_end_matches(&unit).trim_end().to_owned()}</td>
                    <td></td>
                    <td>"100"</td>
                </tr>
            </tfoot>
        </table>
        <p class="note" id="budget-detail">{detail}</p>
        <details class="more">
            <summary>{t!("compare-working")}</summary>
            <div class="working">
                <div class="math" inner_html=combined_letters()></div>
                <div class="math" tabindex="0" role="region" aria-label=t!("common-numbers") inner_html=numbers></div>
                <p class="note">{t!("compare-combined-source")}</p>
            </div>
        </details>
    }
    .into_any()
}

/// The budget of the selected figure as plain text, for paper: title, heads and rows.
pub fn budget_table(
    context: CompareContext,
    known: &PageStudy,
    at: usize,
) -> Option<(String, Vec<String>, Vec<Vec<String>>)> {
    let budget = chosen_budget(context, known, at)?;
    let label = words::compare::output(budget.asked.output()).label;
    let title = t!("compare-budget-of", figure = label, name = known.name(budget.asked));
    let unit = unit_name(context.state, budget.asked.kind());
    let head = vec![t!("compare-source"), joined("±,", &unit), t!("compare-share-percent")];
    let rows = rows(context, known, &budget).into_iter().map(|row| vec![row.name, row.width, row.percent]).collect();
    Some((title, head, rows))
}
