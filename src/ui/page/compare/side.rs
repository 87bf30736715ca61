//! Side by side: which systems, their figures, and what was found about each.

use super::comparison::Comparison;
use super::parts::{KeptBox, number_box, with_draft};
use super::sweep::Swept;
use super::systems::{Compared, SystemOffer, chosen, conditions, offered};
use super::table;
use super::uncertainty::study::PageStudy;
use super::{economy, emission};
use crate::browser::element::{Part, View, button, each, el, many};
use crate::browser::graph::*;
use crate::browser::page as browser;
use crate::domain::compare::Output;
use crate::domain::compare::draft::{CompareDraft, hours_limit};
use crate::domain::compare::price::{price_key, price_of};
use crate::domain::compare::range::RangeError;
use crate::domain::compare::side::{ComparedSystem, FEWEST, MOST, Row, SystemDifference};
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::recipe::limit;
use crate::domain::{Entry, Figure, Finding, Grade, LiquidDraft, LiquidField, Product};
use crate::quantity::{Amount, Kind, format};
use crate::ui::chart::bars::{Bar, bars};
use crate::ui::field::loose::{LooseBox, number};
use crate::ui::field::{self, choice};
use crate::ui::part::amount::joined;
use crate::ui::part::finding::told;
use crate::ui::part::fold::fold;
use crate::ui::signal::{Memo, RwSignal, memo};
use crate::ui::state::State;
use crate::ui::text::{FieldWords, unit_shown};

/// The section.
pub fn side(
    comparison: Comparison,
    study: Memo<Option<PageStudy>>,
    swept: Memo<Option<Result<Swept, RangeError>>>,
) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let open = RwSignal::new(String::new());
    let result = move || {
        shown.with(|shown| match &shown.side {
            Ok(side) => many([
                differing(state, shown),
                multiples(state, shown, 300.0),
                table::table(comparison, shown, side, Some(open)),
                unpriced(state, shown),
            ])
            .view(),
            Err(error) => told(Grade::Stop, (state.words.compare.not_side_by_side)(*error)),
        })
    };
    el("section")
        .set("aria-labelledby", "side")
        .child(el("h2").set("id", "side").set("tabindex", "-1").child(state.words.compare.sheet.side_by_side))
        .child(el("p").child(page.side_hint))
        .child(systems(comparison))
        .child(
            el("div")
                .class("fields")
                .child(number_box(
                    state,
                    KeptBox {
                        id: "hours".to_owned(),
                        words: FieldWords { label: page.hours, hint: page.hours_hint },
                        kind: Kind::ShiftTime,
                        limit: hours_limit(),
                        get: |typed: &CompareDraft| typed.hours.clone(),
                        put: |typed: &mut CompareDraft, entry: Entry| typed.hours = entry,
                    },
                ))
                .child(own_conditions(state)),
        )
        .child(fold(page.prices, move || prices(comparison)))
        .child(fold(state.words.compare.economy.title, move || economy::section(comparison)))
        .child(fold(state.words.compare.emission.title, move || emission::section(comparison)))
        .child(el("div").class("results").child(result))
        .child(table::exports(comparison, study, swept))
        .child(el("h3").child(page.findings))
        .child(move || shown.with(|shown| findings(state, shown)))
        .view()
}

/// The systems chosen, each to be made the reference or left out, and the way to add one.
fn systems(comparison: Comparison) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let keys = move || shown.with(|shown| shown.keys.clone());
    let find = RwSignal::new(String::new());
    let there = memo(keys);
    // Choices; how many recipes are offered of how many; whether there are many.
    let offer = memo(move || {
        let SystemOffer { mut choices, recipes, found, many } = find.with(|find| offered(state, find));
        there.with(|there| choices.retain(|(key, _)| !there.iter().any(|other| other.key() == *key)));
        let said = match () {
            () if choices.is_empty() => page.none_found.to_owned(),
            () if recipes < found => (page.offered)(recipes, found),
            () => String::new(),
        };
        (choices, said, many)
    });
    let others = memo(move || offer.with(|(choices, ..)| choices.clone()));
    let next = RwSignal::new(String::new());
    let now = memo(move || {
        let wanted = next.get();
        others.with(|others| {
            let there = others.iter().find(|(key, _)| *key == wanted).or(others.first());
            there.map(|(key, _)| key.clone()).unwrap_or_default()
        })
    });
    let full = move || shown.with(|shown| shown.keys.len() >= MOST);
    let add = move || {
        let key = now.get_untracked();
        if let Some(choice) = SystemChoice::parse(&key).filter(|_| !full()) {
            change(state, |systems| systems.push(choice));
        }
    };
    many([
        el("ul").class("chosen").child(each(keys, SystemChoice::key, move |key| system(comparison, key))).view(),
        field::text::plain("compare-find".to_owned(), page.find_recipe, move || find.get(), move |part| find.set(part))
            .set("hidden", move || full() || !offer.with(|(.., many)| *many))
            .view(),
        el("div")
            .class("add")
            .set("hidden", full)
            .child(choice::labelled(
                "compare-next".to_owned(),
                page.add_system.to_owned().into(),
                others,
                now,
                Callback::new(move |key| next.set(key)),
            ))
            .child(button().set("id", "compare-add").on_click(add).child(state.words.tools.add))
            .view(),
        el("p").class("note").set("role", "status").child(move || offer.with(|(_, said, _)| said.clone())).view(),
        el("p").class("note").set("hidden", move || !full()).child(page.no_more).view(),
    ])
    .view()
}

fn change(state: State, act: impl FnOnce(&mut Vec<SystemChoice>)) {
    let mut systems = untrack(|| chosen(state));
    act(&mut systems);
    state.compare.typed.update(|typed| typed.systems = systems);
}

/// One of the systems chosen.
fn system(comparison: Comparison, key: SystemChoice) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let own = key.clone();
    let at = memo(move || shown.with(|shown| shown.keys.iter().position(|other| *other == own).unwrap_or(0)));
    let name = memo(move || shown.with(|shown| shown.name(at.get())));
    let reference = memo(move || shown.with(|shown| shown.reference == at.get()));
    let few = move || shown.with(|shown| shown.keys.len() <= FEWEST);
    let label = move |verb: &'static str| move || format!("{verb}: {}", name.get());
    let (made, removed) = (key.clone(), key);
    el("li")
        .child(el("span").class("name").child(move || name.get()))
        .child(
            button()
                .set("aria-label", label(page.make_reference))
                .set("aria-pressed", move || if reference.get() { "true" } else { "false" })
                .on_click(move || state.compare.typed.update(|typed| typed.reference = Some(made.clone())))
                .child(page.reference),
        )
        .child(
            button()
                .set("aria-label", label(state.words.tools.remove))
                .set("hidden", few)
                .on_click(move || {
                    change(state, |systems| systems.retain(|other| *other != removed));
                    browser::focus("compare-add");
                })
                .child(state.words.tools.remove),
        )
        .view()
}

/// Whether recipes of the library keep their own fibre, board and line.
fn own_conditions(state: State) -> View {
    let page = &state.words.compare.page;
    el("div")
        .class("field")
        .child(
            el("label")
                .class("tick")
                .set("for", "own-conditions")
                .child(
                    el("input")
                        .set("id", "own-conditions")
                        .set("type", "checkbox")
                        .property("checked", move || state.compare.typed.with(|typed| typed.own_conditions))
                        .on("change", move |event| {
                            let now = event_target_checked(&event);
                            state.compare.typed.update(|typed| typed.own_conditions = now);
                        }),
                )
                .child(page.own_conditions),
        )
        .child(el("p").class("aside").child(page.own_conditions_hint))
        .view()
}

/// Boxes for the prices of liquids that have none where they come from.
fn prices(comparison: Comparison) -> View {
    let Comparison { state, shown, .. } = comparison;
    let page = &state.words.compare.page;
    let base = conditions(state);
    let liquids = move || {
        let typed = state.compare.typed.get();
        let open = base.get();
        let mut found: Vec<LiquidDraft> = Vec::new();
        shown.with(|shown| {
            for liquid in shown.systems.iter().flat_map(|system| &system.draft.liquids) {
                let filled = || liquid.price == price_of(&typed, &open, liquid);
                let there = found.iter().any(|other| price_key(other) == price_key(liquid));
                if !there && (liquid.price.is_blank() || filled()) {
                    found.push(liquid.clone());
                }
            }
        });
        found.into_iter().enumerate().collect::<Vec<_>>()
    };
    let price = move |(at, liquid): (usize, LiquidDraft)| {
        let limit = limit::liquid(&liquid, LiquidField::Price, false, Product::default());
        let key = price_key(&liquid);
        let of = liquid.clone();
        let start = move || state.compare.typed.with(|typed| base.with(|base| price_of(typed, base, &of)));
        let name = (state.words.liquid)(&liquid).into_owned();
        let put = key.clone();
        el("div").class("named").child(el("p").child(name.clone())).child(number(LooseBox {
            key: format!("price-{at}"),
            words: FieldWords { label: page.price_of, hint: "" },
            named: Some(format!("{}: {name}", page.price_of)),
            kind: Kind::Price,
            limit,
            entry: memo(move || {
                let typed = state.compare.typed.with(|typed| typed.prices.get(&key).cloned());
                typed.unwrap_or_else(&start)
            }),
            put: Callback::new(move |entry| {
                state.compare.typed.update(|typed| _ = typed.prices.insert(put.clone(), entry))
            }),
        }))
    };
    many([
        el("p").class("note").child(page.prices_hint).view(),
        el("div")
            .class("fields")
            .child(each(liquids, |(at, liquid)| format!("{at} {}", price_key(liquid)), price))
            .view(),
    ])
    .view()
}

/// What differs beside the liquids, what is to be the same first.
pub fn differing(state: State, shown: &Compared) -> View {
    let Ok(side) = &shown.side else { return View::Nothing };
    let say = |difference: &SystemDifference| {
        let grade = if difference.is_fair() { Grade::Note } else { Grade::Unusual };
        told(grade, state.with_context(|context| (state.words.compare.difference)(difference, &shown.systems, context)))
    };
    if side.differences.is_empty() {
        return el("p").class("note").child(state.words.compare.page.same).view();
    }
    side.differences.iter().map(say).collect::<View>()
}

/// What the costs leave out.
pub fn unpriced(state: State, shown: &Compared) -> View {
    let say =
        |system: &ComparedSystem| (state.words.compare.unpriced)(system).map(|message| told(Grade::Note, message));
    shown.systems.iter().filter_map(say).collect::<View>()
}

/// The figures that are drawn.
const DRAWN: [Output; 6] = [
    Output::Figure(Figure::WaterDose),
    Output::Figure(Figure::FibreMoistureForNoWater),
    Output::Figure(Figure::BlenderMoisture),
    Output::Figure(Figure::PressVapour),
    Output::VolumeAtLimit,
    Output::Figure(Figure::Cost),
];

/// Small drawings of the figures that matter most, each from zero.
pub fn multiples(state: State, shown: &Compared, width: f64) -> View {
    let Ok(side) = &shown.side else { return View::Nothing };
    let draw = |row: &Row| {
        let unit = state.unit(row.output.kind());
        let units = state.units.get();
        let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
        let bar = |(at, value): (usize, &Option<Amount>)| {
            let text = value.map_or_else(
                || state.words.tools.no_figure.to_owned(),
                |amount| joined(&format::amount(amount, unit, units.mark), &symbol),
            );
            Bar { at, value: value.map(|amount| amount.get(unit)), text }
        };
        let all: Vec<Bar> = row.values.iter().enumerate().map(bar).collect();
        let title = (state.words.compare.output)(row.output).label;
        el("li").markup(&bars(width, title, &all).inline())
    };
    let rows = DRAWN.iter().filter_map(|output| side.rows.iter().find(|row| row.output == *output));
    el("ul").class("multiples").child(rows.map(draw).collect::<View>()).view()
}

/// What was found about each system.
pub fn findings(state: State, shown: &Compared) -> View {
    let of = |(at, system): (usize, &ComparedSystem)| {
        let say = |finding: &Finding| {
            told(finding.grade, with_draft(state, &system.draft, |context| (state.words.finding)(finding, context)))
        };
        let all = &system.outcome.findings;
        el("div")
            .class("found")
            .child(el("h4").child(shown.name(at)))
            .child(all.is_empty().then(|| el("p").class("note").child(state.words.recipe_page.no_findings)))
            .child(all.iter().map(say).collect::<View>())
    };
    shown.systems.iter().enumerate().map(of).collect::<View>()
}
