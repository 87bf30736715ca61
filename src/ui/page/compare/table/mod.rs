//! The systems side by side: which is the cheapest that can run, eight key figures, and everything else folded.

mod add_system;
mod all_results;
mod asks;
mod differing;
mod economy;
mod equal;
mod key_figures;
mod key_head;
mod key_row;
mod strip;
mod verdict_lines;

pub use asks::MissingPrices;
pub use differing::differences;
pub use key_figures::{decimals, key_figures};
pub use verdict_lines::verdict_words;

use super::context::CompareContext;
use super::words::amount_text;
use super::working::SystemWorking;
use crate::domain::compare::overview::key_figures::{KeyFigure, KeyGroup, KeyRow};
use crate::domain::compare::overview::verdict::verdict;
use crate::t;
use crate::ui::components::Fold;
use add_system::{Conditions, ReferenceChoice};
use all_results::AllResults;
use asks::PriceAsks;
use differing::{DifferingInputs, input_note};
use economy::{EconomySection, EmissionSection};
use equal::{EqualForAll, equal_rows};
use key_figures::{KEY, is_equal};
use key_head::KeyHead;
use key_row::KeyTableRow;
use leptos::prelude::*;
use verdict_lines::VerdictLines;

/// The tab.
#[component]
pub fn TableTab() -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let rows = key_figures(context);
    let is_shown = Memo::new(move |_| context.shown.with(|shown| shown.side.is_ok()));
    view! {
        <Show when=move || is_shown.get()>
            <VerdictLines rows=rows/>
        </Show>
        <section class="panel" aria-label=t!("compare-key-figures")>
            <div class="compare-basis"><Conditions/><ReferenceChoice/></div>
            <Show when=move || is_shown.get()>
                <KeyTable rows=rows/>
                <SystemWorking scope=KEY/>
            </Show>
        </section>
        <Show when=move || is_shown.get()>
            <TableFolds rows=rows/>
            <PhoneFoot rows=rows/>
        </Show>
    }
}

/// The cheapest that can run, its cost and its water, at the foot of a phone's screen.
#[component]
fn PhoneFoot(
    /// The key figures.
    rows: Memo<Vec<KeyRow>>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let told = move || {
        rows.with(|rows| {
            let row = |figure: KeyFigure| rows.iter().find(|row| row.figure == figure);
            let cost = row(KeyFigure::Cost)?;
            let best = context.shown.with(|shown| verdict(&shown.systems, cost).cheapest)?;
            let text = |row: Option<&KeyRow>| {
                row.and_then(|row| row.values.get(best).copied().flatten())
                    .map(|value| amount_text(context.state, value))
            };
            let letter = crate::ui::chart::series::letter(best).to_string();
            Some(view! {
                <span>{letter} " " <b>{text(Some(cost))}</b></span>
                <span>{t!("compare-group-water")} " " <b>{text(row(KeyFigure::WaterDose))}</b></span>
            })
        })
    };
    view! {
        // The same figures are above: a screen reader needs them once.
        <div class="phone-foot" aria-hidden="true">{told}</div>
    }
}

/// The key figures that differ, in groups.
#[component]
fn KeyTable(
    /// The key figures.
    rows: Memo<Vec<KeyRow>>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let width = RwSignal::new(0.0);
    let count = Memo::new(move |_| context.shown.with(|shown| shown.systems.len()));
    let shown = Memo::new(move |_| {
        rows.with(|rows| {
            let is_kept = |row: &&KeyRow| row.figure.group() == KeyGroup::Cost || !is_equal(row);
            rows.iter().filter(is_kept).map(|row| row.figure).collect::<Vec<_>>()
        })
    });
    // A group is headed where its first figure is.
    let is_first = move |figure: KeyFigure| {
        shown.with(|shown| shown.iter().find(|other| other.group() == figure.group()) == Some(&figure))
    };
    let class = move || {
        let count = count.get();
        format!("key-table {} of-{count}", if count > 3 { "many" } else { "few" })
    };
    view! {
        <div class="key-scroll">
            <table class=class aria-label=t!("compare-key-figures")>
                <KeyHead width=width/>
                <tbody>
                    <For each=move || shown.get() key=|figure| *figure let:figure>
                        <Show when=move || is_first(figure)>
                            <tr class="group">
                                <th scope="colgroup" colspan=move || (count.get() + 3).to_string()>
                                    {super::words::group_name(figure.group())}
                                </th>
                            </tr>
                        </Show>
                        <KeyTableRow figure=figure rows=rows width=width/>
                        <Show when=move || figure == KeyFigure::Cost>
                            <PriceAsks columns=Signal::derive(move || count.get() + 3)/>
                        </Show>
                    </For>
                </tbody>
            </table>
        </div>
    }
}

/// All that is folded.
#[component]
fn TableFolds(
    /// The key figures.
    rows: Memo<Vec<KeyRow>>,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let equal = Memo::new(move |_| equal_rows(context, &rows.get()));
    let note = Signal::derive(move || {
        equal.with(|equal| {
            let first: Vec<String> = equal.iter().take(3).map(|(name, value)| format!("{name} {value}")).collect();
            t!("compare-equal-note", count = equal.len(), first = first.join(", "))
        })
    });
    let results = Signal::derive(move || {
        let count = context.shown.with(|shown| shown.side.as_ref().map_or(0, |side| side.rows.len()));
        t!("compare-all-results-note", count = count)
    });
    view! {
        <section class="panel folds" aria-label=t!("compare-more")>
            <Fold id="equal-for-all" title=t!("compare-equal") note=note><EqualForAll rows=equal/></Fold>
            <Fold id="all-results" title=t!("compare-all-results") note=results><AllResults/></Fold>
            <Fold id="differing-inputs" title=t!("compare-differing") note=Signal::derive(input_note)><DifferingInputs/></Fold>
            <Fold id="economy" title=t!("compare-economy") note=Signal::derive(|| t!("compare-economy-note"))>
                <EconomySection/>
            </Fold>
            <Fold id="emission" title=t!("compare-emission") note=Signal::derive(|| t!("compare-emission-note"))>
                <EmissionSection/>
            </Fold>
        </section>
    }
}
