//! The row of a source: what it is, its ±, how that is stated, how well it is known itself, and its share.

use super::shared::UncertaintyContext;
use crate::domain::Entry;
use crate::domain::compare::uncertainty::input_uncertainty::Form;
use crate::domain::compare::uncertainty::instrument::Instrument;
use crate::domain::compare::uncertainty::source::{FREEDOM, SIZE};
use crate::domain::compare::uncertainty::statement::Statement;
use crate::quantity::{Kind, Unit, format};
use crate::t;
use crate::ui::components::{Choice, ChoiceOption};
use crate::ui::page::compare::context::CompareContext;
use crate::ui::page::compare::entry_box::{CompareBox, slug};
use crate::ui::text::{trimmed_to, unit_shown, words};
use leptos::prelude::*;

/// The row.
#[component]
pub fn SourceRow(
    /// The source's key.
    key: String,
) -> impl IntoView {
    let context = expect_context::<CompareContext>();
    let shared = expect_context::<UncertaintyContext>();
    let state = context.state;
    let own = StoredValue::new(key.clone());
    let source = Memo::new(move |_| {
        shared.study.with(|known| {
            known.as_ref().and_then(|known| known.sources.iter().find(|source| source.key == own.get_value()).cloned())
        })
    });
    let name = Memo::new(move |_| {
        shared.study.with(|known| {
            known.as_ref().zip(source.get()).map(|(known, source)| known.source_name(&source)).unwrap_or_default()
        })
    });
    let instrument = move || {
        source.with(|source| {
            let field = source.as_ref().and_then(|source| source.targets.first()).map(|(_, field)| *field);
            field.map(|field| words::compare::instrument(Instrument::of(field)))
        })
    };
    let unit =
        Memo::new(move |_| source.with(|source| source.as_ref().map_or(Unit::One, |source| state.unit(source.kind))));
    let stated = Memo::new(move |_| {
        source.with(|source| {
            let first = Statement { form: Form::HalfWidth, relative: false };
            source.as_ref().map_or(first, |source| state.compare.typed.with(|typed| source.stated(&typed.uncertainty)))
        })
    });
    let size = Memo::new(move |_| {
        let typed = state.compare.typed.with(|typed| typed.uncertainty.clone());
        let mark = state.units.get().mark;
        let unit = unit.get();
        let width = || source.with(|source| source.as_ref().and_then(|source| source.width(&typed, unit)));
        let shown = || width().map(|width| trimmed_to(width, 4, mark)).unwrap_or_default();
        match typed.source(&own.get_value()).and_then(|source| source.size.as_ref()) {
            None => Entry::preset(shown(), Unit::One),
            // As typed, unless another unit is shown meanwhile.
            Some(entry) if entry.unit == unit || stated.get().relative => Entry::typed(entry.text.clone(), Unit::One),
            Some(_) => Entry::typed(shown(), Unit::One),
        }
    });
    let enter = Callback::new(move |entry: Entry| {
        let unit = unit.get_untracked();
        context.enter(|typed| {
            typed.uncertainty.source_mut(&own.get_value()).size = Some(Entry::typed(entry.text, unit));
        });
    });
    let freedom = Memo::new(move |_| {
        let entered = state.compare.typed.with(|typed| typed.uncertainty.source(&own.get_value())?.freedom.clone());
        entered.unwrap_or_else(|| Entry::empty(Unit::One))
    });
    let enter_freedom = Callback::new(move |entry: Entry| {
        context.enter(|typed| typed.uncertainty.source_mut(&own.get_value()).freedom = Some(entry));
    });
    let options: Vec<ChoiceOption> = Statement::ALL
        .iter()
        .map(|stated| {
            let label = words::compare::form(stated.form).label;
            let words = if stated.relative { t!("compare-of-value", form = label) } else { label.to_owned() };
            ChoiceOption::new(stated.key(), words)
        })
        .collect();
    let choose = Callback::new(move |key: String| {
        let Some(to) = Statement::ALL.into_iter().find(|stated| stated.key() == key) else { return };
        let (unit, mark) = (unit.get_untracked(), state.units.get_untracked().mark);
        if let Some(source) = source.get_untracked() {
            context.enter(|typed| {
                source.state(&mut typed.uncertainty, to, unit, |width| format::editable(rounded(width), mark));
            });
        }
    });
    let used = move || {
        shared.study.with(|known| {
            let places = known.as_ref().map_or(0, |known| known.places.len());
            source.with(|source| {
                let acts = |at: usize| source.as_ref().is_some_and(|source| source.targets.iter().any(|(system, _)| *system == at));
                let cell = |at: usize| {
                    let (sign, words) = if acts(at) { ("●", t!("compare-used")) } else { ("–", t!("compare-not-used")) };
                    view! { <td class="used"><span aria-hidden="true">{sign}</span><span class="out-of-sight">{words}</span></td> }
                };
                (0..places).map(cell).collect_view()
            })
        })
    };
    let share = move || {
        let at = shared.chosen.get()?;
        shared.study.with(|known| {
            let known = known.as_ref()?;
            let uncertain = source.with(|source| {
                let targets = &source.as_ref()?.targets;
                known.uncertain.iter().position(|other| other.targets == *targets)
            })?;
            let budget = known.budgets.get(at)?.as_ref()?;
            let share =
                budget.shares.iter().find(|share| share.source == uncertain).map_or(0.0, |share| share.share * 100.0);
            Some(match share {
                share if share < 1e-7 => "0".to_owned(),
                share if share < 1.0 => "<\u{a0}1".to_owned(),
                share => format::fixed(share, 0, state.units.get().mark),
            })
        })
    };
    view! {
        <tr>
            <th scope="row" class="l">{move || name.get()}</th>
            <td class="l from">{instrument}</td>
            <td>
                <CompareBox
                    key=format!("plus-minus-{key}")
                    name=Signal::derive(move || t!("compare-plus-minus-of", input = name.get()))
                    kind=Kind::Ratio
                    limit=SIZE
                    entry=size
                    on_enter=enter
                    unit_in_head=true
                    placeholder=Signal::derive(|| t!("compare-exact"))
                />
            </td>
            <td class="l">{move || statement_unit(context, stated.get(), unit.get())}</td>
            <td class="l">
                <Choice
                    id=format!("form-{}", slug(&key))
                    name=Signal::derive(move || t!("compare-plus-minus-is-of", input = name.get()))
                    options=Signal::stored(options)
                    value=Signal::derive(move || stated.get().key().to_owned())
                    on_choose=choose
                />
            </td>
            <td data-label=t!("compare-freedom")>
                <CompareBox
                    key=format!("freedom-{key}")
                    name=Signal::derive(move || t!("compare-freedom-of", input = name.get()))
                    kind=Kind::Ratio
                    limit=FREEDOM
                    entry=freedom
                    on_enter=enter_freedom
                    unit_in_head=true
                    placeholder=Signal::derive(|| "∞".to_owned())
                />
            </td>
            {used}
            <td class="edge" data-label=t!("compare-share-percent")>{share}</td>
        </tr>
    }
}

/// The unit of a ±: of a number that is itself a share the ± is in percentage points.
pub fn statement_unit(context: CompareContext, stated: Statement, unit: Unit) -> String {
    match unit {
        _ if stated.relative => t!("compare-percent-of-value"),
        Unit::Percent => t!("compare-points"),
        Unit::PercentDryBasis => t!("compare-points-dry"),
        Unit::PercentWetBasis => t!("compare-points-wet"),
        unit => context.state.currency.with(|currency| unit_shown(unit, currency).into_owned()),
    }
}

/// Four digits are enough for a ±.
pub fn rounded(width: f64) -> f64 {
    let power = 10.0_f64.powi(3 - width.abs().max(f64::MIN_POSITIVE).log10().floor() as i32);
    let rounded = (width * power).round() / power;
    if rounded.is_finite() { rounded } else { width }
}
