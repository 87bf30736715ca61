//! A new delivery: what its certificate moves, before it is accepted.

use super::context::solved;
use super::delivery_recipes as recipes;
use super::delivery_recipes::Using;
use super::parts::{choose, findings, numbered, numbers, off_line, setting, shown, table, table_row};
use super::settings_text::pump_name;
use crate::browser::element::{Part, View, button, el, many};
use crate::domain::line::tanks::delivery::Moved;
use crate::domain::line::working::density_working;
use crate::domain::line::{
    DeliveryField, Fed, LineBook, LineField, LineFigure, RangeStatus, Setting, Stock, TankId, deliver,
};
use crate::domain::{Draft, LiquidId};
use crate::quantity::{Amount, Kind};
use crate::ui::part::amount::with_unit;
use crate::ui::part::working::figure_name;
use crate::ui::signal::{Memo, memo};
use crate::ui::state::State;
use leptos::reactive::prelude::*;
use std::marker::PhantomData;
use uom::si::f64::{MassDensity, ThermodynamicTemperature};

/// The section.
pub fn delivery(state: State) -> View {
    let page = &state.words.line_page;
    let liquids =
        move || -> Vec<LiquidId> { state.draft.with(|draft| draft.liquids.iter().map(|liquid| liquid.id).collect()) };
    let choices = memo(move || {
        let names = liquids().into_iter().map(|id| state.liquid_name(id));
        numbered(std::iter::once(page.choose.to_owned()).chain(names))
    });
    let using = recipes::using(state);
    let tanks = memo(move || state.draft.with(|draft| state.line.book(|book| holding(state, draft, book))));
    let into = choose(
        state,
        "delivery-into".to_owned(),
        page.into_tank,
        memo(move || numbered(tanks.get().into_iter().map(|(_, name)| name))),
        move |book| {
            let at = |id| tanks.with(|tanks| tanks.iter().position(|(other, _)| *other == id));
            book.delivered_into.and_then(at).unwrap_or(0)
        },
        move |book, at| {
            book.delivered_into = tanks.with_untracked(|tanks| tanks.get(at).map(|(id, _)| *id));
        },
    );
    many([
        el("p").child(page.delivery_hint).view(),
        el("div")
            .class("fields")
            .child(choose(
                state,
                "delivery-liquid".to_owned(),
                page.liquid,
                choices,
                move |book| {
                    let at = |id| liquids().iter().position(|other| *other == id);
                    book.delivered.and_then(at).map_or(0, |at| at + 1)
                },
                move |book, at| {
                    book.delivered = at.checked_sub(1).and_then(|at| liquids().get(at).copied());
                },
            ))
            .child(el("div").set("hidden", move || tanks.with(|tanks| tanks.len() < 2)).child(into))
            .view(),
        numbers(state, DeliveryField::ALL.iter().map(|part| LineField::Delivery(*part))),
        recipes::list(state, using),
        el("div").class("results").set("aria-live", "polite").child(move || result(state, using)).view(),
    ])
}

/// The tanks that hold the liquid delivered.
fn holding(state: State, draft: &Draft, book: &LineBook) -> Vec<(TankId, String)> {
    let fed = book.delivered.map(Fed::Liquid);
    let own = book.tanks.iter().filter(|tank| fed.is_some() && tank.feeds.within(draft) == fed);
    own.map(|tank| (tank.id, (state.words.line.tank)(tank).into_owned())).collect()
}

fn result(state: State, using: Memo<Vec<Using>>) -> View {
    let page = &state.words.line_page;
    let old = state.shown.with(|shown| shown.old);
    solved(state, |draft, case, line, book| {
        let (delivered, said) = deliver(draft, case, line, book);
        let said = findings(state, &said);
        let Some(delivered) = delivered else { return said };
        let one = |moved: &Moved| {
            let at = |found: Option<Setting>| match found {
                Some(found) => setting(state, found, moved.unit),
                None => page.no_setting.to_owned(),
            };
            table_row(
                pump_name(state, moved.pump).view(),
                [
                    at(moved.before).view(),
                    many([
                        el("strong").child(at(moved.after)).view(),
                        (moved.status_after != RangeStatus::Within)
                            .then(|| {
                                el("span").class("note").child((state.words.line.range_status)(moved.status_after))
                            })
                            .view(),
                    ]),
                    shown(state, LineFigure::RunFlow, moved.mass_before.value).view(),
                    shown(state, LineFigure::RunFlow, moved.mass_after.value).view(),
                ],
            )
        };
        let heads = [page.pump, page.setting_before, page.setting_after, page.flow_before, page.flow_after];
        let figures = delivered.figures.iter().map(|(figure, was, is)| {
            table_row(
                figure_name(state, *figure).view(),
                [with_unit(state, *was, None).view(), with_unit(state, *is, None).view()],
            )
        });
        let density = delivered.density.map(|density| {
            let value = shown(state, LineFigure::DensityPumped, density.value);
            let working = pumped(state, case, delivered.liquid);
            el("dl").class("figures").child(super::parts::figure(
                state,
                "delivery",
                LineFigure::DensityPumped,
                value,
                working,
            ))
        });
        let blend = delivered.blend.map(|blend| {
            let row = |stock: &Stock, name: &'static str| {
                let amount = |kind, base| with_unit(state, Amount::from_base(kind, base), None).view();
                table_row(
                    name.view(),
                    [
                        amount(Kind::BatchMass, stock.mass.value),
                        amount(Kind::Solids, stock.solids.ratio().value),
                        amount(Kind::LiquidDensity, stock.density.value),
                    ],
                )
            };
            let rows =
                [row(&blend.before, page.before), row(&blend.delivered, page.delivered), row(&blend.after, page.blend)];
            let reaches = blend.reaches_nozzle.map(|time| {
                let time = with_unit(state, Amount::from_base(Kind::RunTime, time.value), None);
                el("p").child(format!("{} {time}", page.reaches_nozzle))
            });
            many([
                table(page.blend, &[page.liquid, page.mass, page.solids, page.density], rows.into_iter().collect()),
                reaches.view(),
            ])
        });
        let unsolved = delivered.after.is_none();
        let after = delivered.after.as_ref().map(|after| findings(state, &after.findings));
        let changed = delivered.draft != *draft;
        let heads_selected = recipes::selected(state, using);
        let enters = changed || (delivered.says_something() && !heads_selected.is_empty());
        let accept = {
            let delivered = delivered.clone();
            move || state.accept_delivery(&delivered, &heads_selected)
        };
        many([
            said,
            blend.view(),
            density.view(),
            unsolved.then(|| el("p").class("empty").child(page.delivery_unsolved)).view(),
            after.view(),
            if delivered.moved.is_empty() {
                el("p").class("empty").child(page.nothing_moves).view()
            } else {
                table(page.moves, &heads, delivered.moved.iter().map(one).collect())
            },
            (!delivered.figures.is_empty())
                .then(|| table(page.figures_move, &[page.figure, page.before, page.after], figures.collect()))
                .view(),
            (enters && !unsolved && !old)
                .then(|| el("p").child(button().class("primary").on_click(accept).child(page.accept)))
                .view(),
        ])
    })
    .unwrap_or_else(|| off_line(state))
}

/// How the density at the pump came about, where a temperature moves it.
fn pumped(state: State, case: &crate::domain::Case, liquid: LiquidId) -> Option<crate::domain::line::LineWorking> {
    let read = |field: DeliveryField| {
        state.line.book(|book| {
            let entry = book.delivery.entry(field);
            let limit = crate::domain::line::limit::limit(LineField::Delivery(field), book);
            crate::domain::recipe::check::read_entry(entry, field.kind(), &limit).ok().flatten()
        })
    };
    let now = case.input.liquids.as_slice().iter().find(|own| own.id == liquid)?.density;
    let density = read(DeliveryField::Density).map_or(now, |value| MassDensity {
        dimension: PhantomData,
        units: PhantomData,
        value,
    });
    let temperature =
        |field| read(field).map(|value| ThermodynamicTemperature { dimension: PhantomData, units: PhantomData, value });
    Some(density_working(
        density,
        read(DeliveryField::Expansion)?,
        temperature(DeliveryField::MeasuredAt)?,
        temperature(DeliveryField::PumpedAt)?,
    ))
}
