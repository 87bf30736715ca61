//! Where the uncertainty of a figure comes from, and what to improve first.

use super::study::PageStudy;
use crate::browser::element::{Part, View, el, many};
use crate::domain::Grade;
use crate::domain::compare::uncertainty::agreement::is_at_bound;
use crate::domain::compare::uncertainty::budget::{Budget, Share};
use crate::domain::compare::uncertainty::monte_carlo::MonteCarloRun;
use crate::quantity::{Coherent, Kind};
use crate::ui::math::{Style, combined_letters, combined_numbers};
use crate::ui::page::compare::comparison::Comparison;
use crate::ui::part::amount::joined;
use crate::ui::part::finding::told;
use crate::ui::signal::Memo;
use crate::ui::state::State;
use crate::ui::text::compare::Width;
use crate::ui::text::trimmed_to;
use leptos::reactive::prelude::*;

/// A share below this is rounding.
const NOTHING: f64 = 1e-9;

/// The share of each source in one figure, the largest first; what to improve first; and how it came about.
pub fn shares(
    comparison: Comparison,
    study: Memo<Option<PageStudy>>,
    chosen: Memo<Option<usize>>,
    with_working: bool,
) -> View {
    let Comparison { state, hours, .. } = comparison;
    (move || {
        // What is chosen follows from it and comes second: a part that asks for it first is not told when it changes
        // and the choice does not.
        study.with(|known| {
            let known = known.as_ref()?;
            let at = chosen.get()?;
            let asked = known.budgets.get(at)?.as_ref()?.asked;
            // Only a cost a year follows the hours.
            let hours = if asked.kind() == Kind::YearCost { hours.get() } else { Some(1) };
            let mut budget = known.budget(at, hours)?;
            budget.shares.retain(|share| share.share > NOTHING);
            // At a bound the derivatives say nothing: the draws do.
            let bound = state.compare.found.with(|found| {
                let summary = known.summary(at, found, hours).filter(|_| known.is_of(found));
                summary.filter(is_at_bound).map(|summary| (summary, found.seed))
            });
            if let (Some((summary, seed)), Ok(study)) = (bound, &known.study) {
                budget = budget.with_drawn_shares(&MonteCarloRun::shares(study, at, seed), summary.standard);
            }
            Some(of(state, known, &budget, known.around(asked, hours), with_working))
        })
    })
    .view()
}

fn of(state: State, known: &PageStudy, budget: &Budget, around: Option<f64>, with_working: bool) -> View {
    let page = &state.words.compare.page;
    let units = state.units.get();
    let name = |at: usize| {
        known
            .uncertain
            .get(at)
            .map(|source| (state.words.compare.uncertain)(source, &known.systems))
            .unwrap_or_default()
    };
    let bar = |share: &Share| {
        let percent = share.share * 100.0;
        let text = joined(&trimmed_to(percent, 2, units.mark), "%");
        let wide = (percent * 10.0).round() / 10.0;
        el("li").child(el("span").child(name(share.source))).child(el("span").class("value").child(text)).child(
            el("span").class("bar-of").set("aria-hidden", "true").markup(&format!(
                "<svg viewBox=\"0 0 100 6\" preserveAspectRatio=\"none\"><rect width=\"{wide}\" height=\"6\" \
                 fill=\"currentColor\"/></svg>"
            )),
        )
    };
    let label = (state.words.compare.output)(budget.asked.output()).label;
    let figure = format!("{label}, {}", known.name(budget.asked));
    let improve = budget.improve_first().map(|found| {
        let at = around.unwrap_or(budget.value);
        let width = Width { kind: budget.asked.kind(), at, standard: budget.standard };
        let names = [name(found.source), figure.clone()];
        let message = state.with_context(|context| {
            (state.words.compare.improve)(&found, [names[0].as_str(), names[1].as_str()], width, context)
        });
        told(Grade::Note, message)
    });
    let currency = state.currency.get();
    let style = Style { set: Coherent::from(units.system), mark: units.mark, currency: &currency };
    let numbers = combined_numbers(budget, around, style);
    let worked = el("details").class("more").child(el("summary").child(state.words.recipe_page.show_working)).child(
        el("div")
            .class("working")
            .child(el("div").class("math").markup(&combined_letters()))
            .child(
                el("div")
                    .class("math")
                    .set("tabindex", "0")
                    .set("role", "region")
                    .set("aria-label", state.words.recipe_page.numbers_put_in)
                    .markup(&numbers),
            )
            .child(el("p").class("note").child(page.combined_source)),
    );
    many([
        improve.view(),
        el("ol").class("shares").child(budget.shares.iter().map(bar).collect::<View>()).view(),
        with_working.then_some(worked).view(),
    ])
    .view()
}
