//! What is uncertain: the ± of each source, how it is stated, and how well it is known itself.

use super::study::PageStudy;
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::domain::Entry;
use crate::domain::compare::number_key::number_of;
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::uncertainty::input_uncertainty::{Form, InputUncertainty, Size};
use crate::domain::compare::uncertainty::source::{FREEDOM, SIZE, UncertaintySource};
use crate::domain::compare::uncertainty::statement::Statement;
use crate::domain::compare::uncertainty::study::UncertainInput;
use crate::quantity::{Kind, Unit, format};
use crate::record::table::{Cell, Table};
use crate::ui::field::choice::{self, Choice};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::page::compare::choices::{first, used_inputs};
use crate::ui::page::compare::comparison::Comparison;
use crate::ui::signal::{Memo, RwSignal, Signal, memo};
use crate::ui::state::State;
use crate::ui::text::{FieldWords, trimmed_to, unit_shown};

/// A box and a choice for each source, and the way to add one.
pub fn sources(comparison: Comparison, study: Memo<Option<PageStudy>>) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let keys = move || {
        study.with(|known| {
            let keys = known.iter().flat_map(|known| known.sources.iter().map(|source| source.key.clone()));
            keys.enumerate().collect::<Vec<_>>()
        })
    };
    // Numbers that no source acts on yet.
    let others = memo(move || {
        let there = study.with(|known| {
            known.iter().flat_map(|known| known.sources.iter().map(|source| source.key.clone())).collect::<Vec<_>>()
        });
        let all = shown.with(|shown| first(shown).map(|system| used_inputs(state, system)).unwrap_or_default());
        all.into_iter().filter(|(key, _)| !there.contains(key)).collect::<Vec<Choice>>()
    });
    let next = RwSignal::new(String::new());
    let now = memo(move || {
        let wanted = next.get();
        others.with(|others| {
            let there = others.iter().find(|(key, _)| *key == wanted).or(others.first());
            there.map(|(key, _)| key.clone()).unwrap_or_default()
        })
    });
    let add = move || {
        let key = now.get_untracked();
        let unit = shown.with_untracked(|shown| {
            let system = first(shown)?;
            let field = number_of(&system.draft, system.case()?, &key)?;
            Some(state.unit(system.draft.kind(field)))
        });
        if let Some(unit) = unit {
            state.compare.typed.update(|typed| typed.uncertainty.source_mut(&key).size = Some(Entry::empty(unit)));
        }
    };
    many([
        el("p").class("note").child(page.sources_hint).view(),
        el("ul")
            .class("sources")
            .child(each(keys, |(at, key)| format!("{at} {key}"), move |(at, key)| one(state, study, at, key)))
            .view(),
        el("div")
            .class("add")
            .child(choice::labelled(
                "compare-sure.add".to_owned(),
                page.add_source.to_owned().into(),
                others,
                now,
                Callback::new(move |key| next.set(key)),
            ))
            .child(button().on_click(add).child(state.words.tools.add))
            .view(),
    ])
    .view()
}

/// One source: what it is, its ±, and how that is stated.
fn one(state: State, study: Memo<Option<PageStudy>>, at: usize, key: String) -> View {
    let page = &state.words.compare.page;
    let own = key.clone();
    let source = memo(move || {
        study.with(|known| {
            known.as_ref().and_then(|known| known.sources.iter().find(|source| source.key == own).cloned())
        })
    });
    let name = memo(move || {
        study.with(|known| match known.as_ref().zip(source.get()) {
            Some((known, source)) => source_name(state, &source, &known.systems),
            None => String::new(),
        })
    });
    let unit = move || source.with(|source| source.as_ref().map_or(Unit::One, |source| state.unit(source.kind)));
    let stated = move || {
        source.with(|source| {
            let first = Statement { form: Form::HalfWidth, relative: false };
            source.as_ref().map_or(first, |source| state.compare.typed.with(|typed| source.stated(&typed.uncertainty)))
        })
    };
    let size = key.clone();
    let entry = {
        let size = size.clone();
        memo(move || {
            let typed = state.compare.typed.get();
            let mark = state.units.get().mark;
            let unit = unit();
            let width =
                || source.with(|source| source.as_ref().and_then(|source| source.width(&typed.uncertainty, unit)));
            let shown = || width().map(|width| trimmed_to(width, 4, mark)).unwrap_or_default();
            match typed.uncertainty.source(&size).and_then(|source| source.size.as_ref()) {
                None => Entry::preset(shown(), Unit::One),
                // As typed, unless another unit is shown meanwhile.
                Some(entry) if entry.unit == unit || stated().relative => Entry::typed(entry.text.clone(), Unit::One),
                Some(_) => Entry::typed(shown(), Unit::One),
            }
        })
    };
    let put = Callback::new(move |entry: Entry| {
        let unit = untrack(unit);
        state
            .compare
            .typed
            .update(|typed| typed.uncertainty.source_mut(&size).size = Some(Entry::typed(entry.text, unit)));
    });
    let choices: Vec<Choice> = Statement::ALL
        .iter()
        .map(|stated| {
            let label = (state.words.compare.form)(stated.form).label;
            let share = if stated.relative { page.of_value } else { "" };
            (stated.key().to_owned(), format!("{label}{share}"))
        })
        .collect();
    let choose = Callback::new(move |key: String| {
        let Some(to) = Statement::ALL.into_iter().find(|stated| stated.key() == key) else { return };
        let (unit, mark) = (untrack(unit), state.units.get_untracked().mark);
        if let Some(source) = source.get_untracked() {
            state.compare.typed.update(|typed| {
                source.state(&mut typed.uncertainty, to, unit, |width| format::editable(rounded(width), mark));
            });
        }
    });
    let symbol = move || unit_of(state, stated(), unit());
    let now = memo(move || stated().key().to_owned());
    el("li")
        .child(el("p").child(move || name.get()))
        .child(
            el("div")
                .class("size")
                .child(move || {
                    let named = name.get();
                    (!named.is_empty()).then(|| {
                        number(LooseBox {
                            key: format!("plus-minus-{at}"),
                            words: FieldWords { label: page.plus_minus, hint: "" },
                            named: Some(format!("{}: {named}", page.plus_minus)),
                            kind: Kind::Ratio,
                            limit: SIZE,
                            entry,
                            put,
                        })
                    })
                })
                .child(el("span").class("unit").child(symbol)),
        )
        .child(choice::select(
            format!("form-{at}"),
            memo(move || format!("{}: {}", page.stated_as, name.get())),
            Signal::stored(choices),
            now,
            choose,
        ))
        .child(
            el("div")
                .class("size")
                .child(move || {
                    let named = name.get();
                    (!named.is_empty()).then(|| freedom(state, at, &key, &named))
                })
                .child(el("span").class("unit").child(page.freedom)),
        )
        .view()
}

/// The box for the degrees of freedom of a source's ±.
fn freedom(state: State, at: usize, key: &str, named: &str) -> View {
    let page = &state.words.compare.page;
    let (own, put) = (key.to_owned(), key.to_owned());
    number(LooseBox {
        key: format!("freedom-{at}"),
        words: FieldWords { label: page.freedom, hint: "" },
        named: Some(format!("{}: {named}", page.freedom)),
        kind: Kind::Ratio,
        limit: FREEDOM,
        entry: memo(move || {
            let entered = state.compare.typed.with(|typed| typed.uncertainty.source(&own)?.freedom.clone());
            entered.unwrap_or_else(|| Entry::empty(Unit::One))
        }),
        put: Callback::new(move |entry| {
            state.compare.typed.update(|typed| typed.uncertainty.source_mut(&put).freedom = Some(entry))
        }),
    })
}

/// The unit of a ±: of a number that is itself a share the ± is in percentage points.
fn unit_of(state: State, stated: Statement, unit: Unit) -> String {
    let page = &state.words.compare.page;
    match unit {
        _ if stated.relative => page.percent_of_value.to_owned(),
        Unit::Percent => page.points.to_owned(),
        unit => state.currency.with(|currency| unit_shown(unit, currency).into_owned()),
    }
}

/// Four digits are enough for a ±.
fn rounded(width: f64) -> f64 {
    let power = 10.0_f64.powi(3 - width.abs().max(f64::MIN_POSITIVE).log10().floor() as i32);
    let rounded = (width * power).round() / power;
    if rounded.is_finite() { rounded } else { width }
}

fn source_name(state: State, source: &UncertaintySource, systems: &[ComparedSystem]) -> String {
    // A source that was made exact still has its name.
    let spread = InputUncertainty { form: Form::Standard, size: Size::Absolute(1.0), freedom: None };
    (state.words.compare.uncertain)(&UncertainInput { targets: source.targets.clone(), spread }, systems)
}

/// What is uncertain and by how much, as a table: source, ±, its unit, how it is stated, degrees of freedom.
pub fn assumed(state: State, known: &PageStudy) -> Table {
    let (sheet, page) = (&state.words.compare.sheet, &state.words.compare.page);
    let typed = state.compare.typed.get_untracked();
    let head = [sheet.source, page.plus_minus, sheet.unit, page.stated_as, page.freedom];
    let mut rows = vec![head.map(Cell::heading).to_vec()];
    for source in &known.sources {
        let (stated, unit) = (source.stated(&typed.uncertainty), state.unit(source.kind));
        let Some(width) = source.width(&typed.uncertainty, unit) else { continue };
        let decimals = (2 - width.log10().floor() as i32).clamp(0, 9);
        let freedom = source.freedom(&typed.uncertainty);
        rows.push(vec![
            Cell::text(source_name(state, source, &known.systems)),
            Cell::Number { value: rounded(width), decimals: u8::try_from(decimals).unwrap_or(0) },
            Cell::text(unit_of(state, stated, unit)),
            Cell::text((state.words.compare.form)(stated.form).label),
            freedom.map_or(Cell::text("∞"), |value| Cell::Number { value, decimals: 1 }),
        ]);
    }
    Table { name: sheet.sources.to_owned(), rows, frozen: 1 }
}
