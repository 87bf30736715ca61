//! The readings against the mass balances, one by one.

use super::lines::RECONCILIATION;
use super::now::CheckSheet;
use crate::domain::line::{DoubtfulReading, LineQuantity, LineReconciliation, LineVerdict};
use crate::quantity::{Amount, Kind, format};
use crate::statistics::distribution::two_sided_normal;
use crate::statistics::reconciliation::{GlobalTest, Status};
use crate::t;
use crate::ui::components::Fold;
use crate::ui::page::line::context::with_context;
use crate::ui::state::State;
use crate::ui::text::{lower_first, trimmed_to, unit_shown, words};
use leptos::prelude::*;

/// A reading as it is shown.
#[derive(Debug, Clone, PartialEq, Eq)]
struct ReadingLine {
    name: String,
    unit: String,
    read: (String, String),
    reconciled: (String, String),
    misfit: String,
    use_of: String,
    is_doubted: bool,
}

/// The fold.
#[component]
pub fn ReconciliationFold() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CheckSheet>();
    let with_found = move |act: fn(State, &LineReconciliation) -> String| {
        sheet.now.with(|now| now.check.as_ref()?.reconciliation.as_ref().map(|found| act(state, found)))
    };
    let note = Memo::new(move |_| with_found(note).unwrap_or_else(|| t!("check-nothing-reconciled")));
    let lines = Memo::new(move |_| {
        sheet.now.with(|now| {
            let found = now.check.as_ref().and_then(|check| check.reconciliation.as_ref());
            found.map_or_else(Vec::new, |found| lines(state, found))
        })
    });
    let row = |line: ReadingLine| {
        view! {
            <tr class:warn=line.is_doubted>
                <th scope="row" class="l">{line.name}</th>
                <td class="l">{line.unit}</td>
                <td>{line.read.0}</td>
                <td>{line.read.1}</td>
                <td>{line.reconciled.0}</td>
                <td>{line.reconciled.1}</td>
                <td>{line.misfit}</td>
                <td class="l">{line.use_of}</td>
            </tr>
        }
    };
    let verdict = Memo::new(move |_| with_found(verdict).unwrap_or_default());
    view! {
        <Fold id=RECONCILIATION title=t!("check-reconciliation") note=note>
            <p class="verdict">{move || verdict.get()}</p>
            <div class="scroll" tabindex="0" role="region" aria-label=t!("check-reconciliation")>
                <table class="plain-table reconciled-readings" aria-label=t!("check-reconciliation")>
                    <thead><tr>
                        <th scope="col" class="l">{t!("check-reading")}</th>
                        <td></td>
                        <th scope="col">{t!("check-as-read")}</th>
                        <th scope="col">{t!("check-half-interval")}</th>
                        <th scope="col">{t!("check-reconciled")}</th>
                        <th scope="col">{t!("check-half-interval")}</th>
                        <th scope="col">{t!("check-misfit")}</th>
                        <td></td>
                    </tr></thead>
                    <tbody>{move || lines.get().into_iter().map(row).collect_view()}</tbody>
                </table>
            </div>
        </Fold>
    }
}

fn name(state: State, quantity: LineQuantity) -> String {
    with_context(state, |context| words::line::quantity(quantity, context))
}

/// Which reading to distrust, and what to do next, in full.
fn verdict(state: State, found: &LineReconciliation) -> String {
    let message = with_context(state, |context| words::line::verdict(found, context));
    format!("{} {}", message.what, message.fix)
}

/// The tests in numbers, and what nothing checks.
fn note(state: State, found: &LineReconciliation) -> String {
    let mark = state.units.with(|units| units.mark);
    let number = |value: f64| trimmed_to(value, 3, mark);
    let count = found.all.quantities.iter().filter(|quantity| quantity.reading.is_some()).count();
    let unchecked: Vec<String> = found.unchecked().map(|each| lower_first(&name(state, each))).collect();
    let mut parts = Vec::new();
    if let Some(GlobalTest { chi_squared, critical, .. }) = found.all.global {
        parts.push(t!("check-test", count = count, chi = number(chi_squared), limit = number(critical)));
    }
    if let (LineVerdict::Distrust(_), Some(GlobalTest { chi_squared, critical, .. })) =
        (&found.verdict, found.best.global)
    {
        parts.push(t!("check-test-without", chi = number(chi_squared), limit = number(critical)));
    }
    if !unchecked.is_empty() {
        parts.push(t!("check-unchecked", which = unchecked.join(", ")));
    }
    parts.join(" · ")
}

fn lines(state: State, found: &LineReconciliation) -> Vec<ReadingLine> {
    let units = state.units.get();
    let quantile = two_sided_normal(0.95).unwrap_or(f64::INFINITY);
    let all = found.model.quantities.iter().zip(&found.all.quantities).zip(&found.best.quantities);
    all.filter_map(|((quantity, all), best)| {
        let read = all.reading?;
        let doubt = doubt(found, *quantity);
        // Points of moisture and of solids are shown in percent, like the moistures themselves.
        let kind = quantity.kind();
        let unit = units.unit(kind);
        let shown = |base: f64| Amount::from_base(kind, base).get(unit);
        let both = |value: f64, uncertainty: f64| {
            let half = quantile * uncertainty;
            let width = (shown(value + half) - shown(value - half)).abs() / 2.0;
            let step = 10.0_f64.powf(width.log10().floor() - 1.0);
            if !(step.is_finite() && step > 0.0) {
                return (format::editable(shown(value), units.mark), String::new());
            }
            let number = |value: f64| format::in_steps((value / step).round() * step, step.min(1.0), units.mark);
            (number(shown(value)), format!("±\u{a0}{}", number(width)))
        };
        let misfit = match doubt {
            Some(doubt) => doubt.error_in_uncertainties,
            None => -read.adjustment_in_uncertainties,
        };
        let misfit = (misfit * 10.0).round() / 10.0 + 0.0;
        let sign = if misfit > 0.0 { "+" } else { "" };
        let left_out = doubt.is_some() && best.reading.is_none();
        Some(ReadingLine {
            name: name(state, *quantity),
            unit: if kind == Kind::Share { "%".to_owned() } else { unit_shown(unit, "").into_owned() },
            read: both(read.value, read.uncertainty),
            reconciled: best.estimate.map_or_else(Default::default, |found| both(found.value, found.uncertainty)),
            misfit: format!("{sign}{}", format::in_steps(misfit, 0.1, units.mark)),
            use_of: match (doubt.is_some(), all.status) {
                (true, _) if left_out => t!("check-left-out"),
                (true, _) => t!("check-doubted"),
                (false, Status::Unchecked) => t!("check-not-checked"),
                (false, _) => t!("check-used"),
            },
            is_doubted: doubt.is_some(),
        })
    })
    .collect()
}

fn doubt(found: &LineReconciliation, quantity: LineQuantity) -> Option<DoubtfulReading> {
    let all = found.doubts().iter().flat_map(|doubt| &doubt.readings);
    all.copied().find(|reading| reading.quantity == quantity)
}
