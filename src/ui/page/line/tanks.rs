//! Tanks: how long they last, and what still fits.

use super::context::solved;
use super::parts::{choose, figure, findings, numbered, numbers, offered, remove, shown, text_box, ties};
use crate::browser::clock;
use crate::browser::element::{Part, View, button, each, el, many};
use crate::domain::line::working::tank_working;
use crate::domain::line::{Feeds, LineField, LineFigure, LinePlace, TankField, TankId, TankWay};
use crate::quantity::{Amount, Kind};
use crate::ui::part::amount::with_unit;
use crate::ui::signal::memo;
use crate::ui::state::State;
use leptos::reactive::prelude::*;

/// The section.
pub fn tanks(state: State) -> View {
    let page = &state.words.line_page;
    let keys = move || state.line.book(|book| book.tanks.iter().map(|tank| (tank.id, tank.way)).collect::<Vec<_>>());
    let add = move || {
        let first = ties(state, None).into_iter().next().map_or(Feeds::Water, |(feeds, _)| feeds);
        state.line.edit(|book| {
            book.add_tank(first);
        });
    };
    let none = move || state.line.book(|book| book.tanks.is_empty());
    many([
        el("p").class("empty").set("hidden", move || !none()).child(page.no_tanks).view(),
        each(keys, |(id, way)| format!("{} {}", id.0, *way as u8), move |(id, _)| tank(state, id)),
        el("p").child(button().class("primary").on_click(add).child(page.add_tank)).view(),
    ])
}

fn tank(state: State, id: TankId) -> View {
    let page = &state.words.line_page;
    let name = move || {
        state.line.book(|book| book.tank(id).map(|tank| (state.words.line.tank)(tank).into_owned())).unwrap_or_default()
    };
    let offered_ties = memo(move || {
        let now = state.line.book(|book| book.tank(id).map(|tank| tank.feeds.clone()));
        ties(state, now)
    });
    let take_away = move || {
        let removed = state.line.change(|record| record.book.tanks.retain(|tank| tank.id != id));
        state.tell_undo(page.tank_removed, move || state.line.take_back(&removed));
    };
    // By the minute: nobody reads a tank by the second.
    let minute = memo(move || state.line.now.get() / 60_000);
    let own = format!("tank-{}", id.0);
    el("article")
        .class("pump")
        .set("aria-labelledby", own.clone())
        .child(el("h3").set("id", own).child(name))
        .child(
            el("div")
                .class("fields")
                .child(text_box(
                    state,
                    format!("tank-name-{}", id.0),
                    page.tank_name,
                    |book, of| book.tank(TankId(of)).map(|tank| tank.name.clone()).unwrap_or_default(),
                    |book, of, text| {
                        if let Some(tank) = book.tank_mut(TankId(of)) {
                            tank.name = text;
                        }
                    },
                    id.0,
                ))
                .child(choose(
                    state,
                    format!("tank-feeds-{}", id.0),
                    page.holds,
                    memo(move || numbered(offered_ties.get().into_iter().map(|(_, name)| name))),
                    move |book| {
                        let own = book.tank(id).map(|tank| &tank.feeds);
                        let same = |all: &Vec<(Feeds, String)>| {
                            all.iter().position(|(other, _)| own.is_some_and(|own| own.same(other)))
                        };
                        offered_ties.with(same).unwrap_or(0)
                    },
                    move |book, at| {
                        let chosen = offered_ties.with_untracked(|all| all.get(at).map(|(feeds, _)| feeds.clone()));
                        if let Some((tank, feeds)) = book.tank_mut(id).zip(chosen) {
                            tank.feeds = feeds;
                        }
                    },
                ))
                .child(choose(
                    state,
                    format!("tank-way-{}", id.0),
                    page.read_by,
                    offered(TankWay::ALL, state.words.line.tank_way),
                    move |book| {
                        let way = book.tank(id).map(|tank| tank.way);
                        TankWay::ALL.iter().position(|other| Some(*other) == way).unwrap_or(0)
                    },
                    move |book, at| {
                        if let Some((tank, way)) = book.tank_mut(id).zip(TankWay::ALL.get(at)) {
                            tank.set_way(*way);
                        }
                    },
                )),
        )
        .child(numbers(state, TankField::ALL.iter().map(|part| LineField::Tank(id, *part))))
        .child(el("div").class("results").set("aria-live", "polite").child(move || standing(state, id, minute.get())))
        .child(el("div").class("actions").child(remove(state, name(), take_away)))
        .view()
}

fn standing(state: State, id: TankId, minute: u64) -> View {
    use LineFigure as Fig;
    let page = &state.words.line_page;
    let now = minute * 60_000;
    let scope = format!("tank.{}", id.0);
    let about = state.line.checked.with(|line| {
        let field =
            |place| matches!(place, LinePlace::Field(LineField::Tank(tank, _)) | LinePlace::Tank(tank) if tank == id);
        findings(state, line.findings.iter().filter(|finding| field(finding.place)))
    });
    let told = solved(state, |draft, case, line, _| {
        let tank = line.tank(id)?;
        let standing = tank.state_among(&line.tanks, draft, case)?;
        let one = |of: Fig, base: f64| {
            figure(state, &scope, of, shown(state, of, base), tank_working(of, tank, &standing, case))
        };
        let at = |label: &'static str, at: u64| {
            el("div")
                .class("figure")
                .child(el("dt").child(label))
                .child(el("dd").child(el("span").class("value").child(clock::date_time(at))))
        };
        Some(many([
            findings(state, &standing.findings(tank, now)),
            el("dl")
                .class("figures")
                .child(standing.lasts.map(|lasts| one(Fig::Lasts, lasts.value)))
                .child(standing.empty_at(now).map(|empty| at(page.empty_at, empty)))
                .child(standing.order_at(now).map(|order| at(page.order_at, order)))
                .child(standing.overdue_by(now).map(|late| {
                    let late = Amount::from_base(Kind::ShiftTime, late.value);
                    el("div")
                        .class("figure")
                        .child(el("dt").child(page.overdue_by))
                        .child(el("dd").child(el("span").class("value").child(with_unit(state, late, None))))
                }))
                .child(standing.read_at.map(|read| at(page.level_read, read)))
                .child(one(Fig::PerShift, standing.per_shift.value))
                .child(one(Fig::Fits, standing.fits.value))
                .child(one(Fig::Content, standing.content.value))
                .child(one(Fig::Usable, standing.usable.value))
                .child(one(Fig::UsableMass, standing.usable_mass.value))
                .child(figure(state, &scope, Fig::Rate, shown(state, Fig::Rate, standing.rate.value), None))
                .view(),
        ]))
    });
    let none = || el("p").class("empty").child(page.no_tank_state).view();
    many([about, told.flatten().unwrap_or_else(none)])
}
