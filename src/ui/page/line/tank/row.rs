//! The row of a tank, and its details below it.

use super::context::{TankNow, TankSheet, figure_name, figure_text, hours, moment, number, tank_key};
use super::level_bar::level_bar;
use crate::browser::{clock, page};
use crate::domain::Grade;
use crate::domain::line::{Feeds, LineField, LineFigure, TankField, TankId, TankState, TankWay};
use crate::quantity::Kind;
use crate::record::limits::LONGEST_TEXT;
use crate::t;
use crate::ui::components::{Choice, ChoiceOption, Mark, Rank, TextBox};
use crate::ui::page::line::grid_box::{LineGridBox, with_column_unit};
use crate::ui::page::line::parts::ties;
use crate::ui::page::line::worked::WorkedFigure;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;
use uom::si::f64::Time;
use uom::si::time::second;

/// The row.
#[component]
pub fn TankRow(
    /// The tank.
    id: TankId,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let row = Memo::new(move |_| sheet.tanks.with(|tanks| tanks.iter().find(|tank| tank.id == id).cloned()));
    let name = Memo::new(move |_| row.with(|row| row.as_ref().map(|row| row.name.clone()).unwrap_or_default()));
    let holds = Memo::new(move |_| row.with(|row| row.as_ref().map(|row| row.holds.clone()).unwrap_or_default()));
    let found = Memo::new(move |_| row.with(|row| row.as_ref().and_then(|row| row.state)));
    let warn = Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| !row.findings.is_empty())));
    let is_open = Memo::new(move |_| sheet.open_tank.get() == Some(id));
    let toggle = move |_| sheet.open_tank.update(|open| *open = if *open == Some(id) { None } else { Some(id) });
    let read_at = move || {
        let at = row.with(|row| row.as_ref().and_then(|row| row.read_at))?;
        Some(moment(at, sheet.now.get()))
    };
    let use_now = move || found.get().map(|found| number(state, Kind::PumpFlow, (found.rate / found.density).value));
    let empty_at =
        move || found.get().and_then(|found| found.empty_at(sheet.now.get())).map(|at| moment(at, sheet.now.get()));
    let left = move || {
        let lasts = found.get().and_then(|found| found.lasts);
        lasts.map(|lasts| t!("tank-left", time = in_hours(state, lasts)))
    };
    let heading = move |name: String, kind: Kind| move || with_column_unit(state, &name, kind);
    let capacity = LineField::Tank(id, TankField::Capacity);
    let heel = LineField::Tank(id, TankField::Heel);
    view! {
        <tr class="tank" id=format!("tank-row-{}", id.0) class:warn=move || warn.get() class:open=move || is_open.get()>
            <th scope="row" class="l name">
                <b>{move || name.get()}</b> " " <span class="fed">{move || holds.get()}</span>
                <span class="sub tank-left">{left}</span>
            </th>
            <td class="level">
                <LineGridBox field=LineField::Tank(id, TankField::Content) column=Some("level") unit_in_box=true placeholder=t!("common-required")/>
            </td>
            <td class="extra read" data-label=t!("tank-read-at")>{read_at}</td>
            <td class="extra level-drawn">{move || row.with(|row| level_bar(state, row.as_ref()?))}</td>
            <td class="extra" data-label=heading(t!("tank-capacity"), Kind::BatchVolume)>
                <LineGridBox field=capacity column=Some("capacity") placeholder=t!("common-required")/>
            </td>
            <td class="extra" data-label=heading(t!("tank-heel"), Kind::BatchVolume)>
                <LineGridBox field=heel column=Some("heel")/>
            </td>
            <td class="extra" data-label=heading(t!("tank-lead-time"), Kind::ShiftTime)>
                <LineGridBox field=LineField::Tank(id, TankField::LeadTime) column=Some("lead")/>
            </td>
            <td class="extra edge" data-label=t!("tank-usable")><Figure id=id name=name found=found figure=LineFigure::Usable/></td>
            <td class="extra" data-label=heading(t!("tank-use"), Kind::PumpFlow)>{use_now}</td>
            <td class="extra" data-label=t!("tank-per-shift")><Figure id=id name=name found=found figure=LineFigure::PerShift/></td>
            <td class="extra" data-label=t!("tank-free")><Figure id=id name=name found=found figure=LineFigure::Fits/></td>
            <td class="extra empty-in" data-label=t!("tank-runs-empty")>
                <Figure id=id name=name found=found figure=LineFigure::Lasts own_unit=true/>
                <span class="sub">{empty_at}</span>
            </td>
            <td class="l order-by">{move || row.with(|row| order(state, row.as_ref()?, sheet.now.get()))}</td>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    aria-label=move || t!("line-details-of", name = name.get())
                    aria-expanded=move || if is_open.get() { "true" } else { "false" }
                    aria-controls=format!("tank-details-{}", id.0)
                    on:click=toggle
                >
                    "⋯"
                </button>
            </td>
        </tr>
        <Show when=move || is_open.get()>
            <tr class="details" id=format!("tank-details-{}", id.0)>
                <td colspan="14"><Details id=id name=name found=found row=row/></td>
            </tr>
        </Show>
    }
}

/// A figure of the tank.
#[component]
fn Figure(
    /// The tank.
    id: TankId,
    /// Its name.
    name: Memo<String>,
    /// Its state.
    found: Memo<Option<TankState>>,
    /// The figure.
    figure: LineFigure,
    /// Whether its unit is beside it.
    #[prop(optional)]
    own_unit: bool,
) -> impl IntoView {
    let state = expect_context::<State>();
    view! {
        <WorkedFigure
            key=tank_key(id, figure)
            name=Signal::derive(move || figure_name(&name.get(), figure))
            text=Signal::derive(move || figure_text(state, found.get(), figure))
            rank=Rank::Body
            unit_in_head=!own_unit
        />
    }
}

fn in_hours(state: State, time: Time) -> String {
    let (number, unit) = hours(state, time.value);
    joined(&number, &unit)
}

/// When to order, or when what was ordered comes.
fn order(state: State, row: &TankNow, now: u64) -> Option<AnyView> {
    let found = row.state?;
    let hours = |time: Time| in_hours(state, time);
    let said = |first: AnyView, below: String| view! { {first} " " <span class="sub">{below}</span> }.into_any();
    let flag =
        |words: String| view! { <span class="lead flag"><Mark grade=Grade::Unusual/> " " {words}</span> }.into_any();
    let lead = |words: String| view! { <span class="lead">{words}</span> }.into_any();
    if row.ordered_at.is_some() {
        let Some(comes) = found.delivery_at(now) else { return Some(lead(t!("tank-ordered"))) };
        let comes = t!("tank-comes", time = moment(comes, now));
        let first = match found.delivery_late_by(now) {
            Some(by) => flag(t!("tank-comes-late", time = hours(by))),
            None => lead(t!("tank-ordered")),
        };
        return Some(said(first, comes));
    }
    let at = found.order_at(now)?;
    Some(match found.overdue_by(now) {
        Some(by) => said(flag(t!("tank-overdue", time = hours(by))), t!("tank-was", time = moment(at, now))),
        None => {
            let within = Time::new::<second>(at.saturating_sub(now) as f64 / 1_000.0);
            said(lead(moment(at, now)), t!("tank-in", time = hours(within)))
        }
    })
}

/// What is needed less often.
#[component]
fn Details(
    /// The tank.
    id: TankId,
    /// Its name.
    name: Memo<String>,
    /// Its state.
    found: Memo<Option<TankState>>,
    /// All of it.
    row: Memo<Option<TankNow>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let own_name =
        Memo::new(move |_| state.line.book(|book| book.tank(id).map(|tank| tank.name.clone()).unwrap_or_default()));
    let rename = Callback::new(move |text: String| {
        state.line.type_into(format!("tank-name-{}", id.0), |book| {
            if let Some(tank) = book.tank_mut(id) {
                tank.name = text;
            }
        });
    });
    let offered = Memo::new(move |_| {
        let now = state.line.book(|book| book.tank(id).map(|tank| tank.feeds.clone()));
        ties(state, now)
    });
    let feeds = Memo::new(move |_| {
        let own = state.line.book(|book| book.tank(id).map(|tank| tank.feeds.clone()));
        let same = |(other, _): &(Feeds, String)| own.as_ref().is_some_and(|own| own.same(other));
        offered.with(|all| all.iter().position(same).unwrap_or(0)).to_string()
    });
    let feed_options = Memo::new(move |_| {
        let all = offered.get().into_iter().enumerate();
        all.map(|(at, (_, name))| ChoiceOption::new(at.to_string(), name)).collect::<Vec<_>>()
    });
    let choose_feeds = Callback::new(move |at: String| {
        let chosen = at
            .parse()
            .ok()
            .and_then(|at: usize| offered.with_untracked(|all| all.get(at).map(|(feeds, _)| feeds.clone())));
        if let Some(feeds) = chosen {
            state.line.edit(|book| {
                if let Some(tank) = book.tank_mut(id) {
                    tank.feeds = feeds;
                }
            });
        }
    });
    let ways = TankWay::ALL.iter().enumerate();
    let ways: Vec<_> = ways.map(|(at, way)| ChoiceOption::new(at.to_string(), words::line::tank_way(*way))).collect();
    let way = Memo::new(move |_| {
        let own = row.with(|row| row.as_ref().map(|row| row.way));
        TankWay::ALL.iter().position(|other| Some(*other) == own).unwrap_or(0).to_string()
    });
    let choose_way = Callback::new(move |at: String| {
        if let Some(way) = at.parse().ok().and_then(|at: usize| TankWay::ALL.get(at)) {
            state.line.edit(|book| {
                if let Some(tank) = book.tank_mut(id) {
                    tank.set_way(*way);
                }
            });
        }
    });
    let further = move |figure: LineFigure| {
        let words = words::line::figure(figure);
        view! {
            <div class="fig">
                <span class="label">{words.label} " " <span class="note">{words.note}</span></span>
                <Figure id=id name=name found=found figure=figure own_unit=true/>
            </div>
        }
    };
    let has_state = Memo::new(move |_| found.with(Option::is_some));
    view! {
        <div class="tank-details">
            <TextBox
                id=format!("tank-name-{}", id.0)
                label=t!("tank-name")
                value=own_name
                longest=LONGEST_TEXT
                on_input=rename
                on_leave=Callback::new(move |()| state.leave_line())
            />
            <Choice id=format!("tank-feeds-{}", id.0) name=t!("tank-holds") labelled=true options=feed_options value=feeds on_choose=choose_feeds/>
            <Choice id=format!("tank-way-{}", id.0) name=t!("tank-read-by") labelled=true options=Signal::stored(ways) value=way on_choose=choose_way/>
            <Show when=move || has_state.get() fallback=|| view! { <p class="note">{t!("tank-no-state")}</p> }>
                <div class="figs">{[LineFigure::Content, LineFigure::UsableMass, LineFigure::Rate].map(further).into_iter().collect_view()}</div>
            </Show>
            <div class="tank-actions">
                <OrderButton id=id row=row/>
                <button type="button" on:click=move |_| remove(state, sheet, id)>{t!("tank-remove")}</button>
            </div>
        </div>
    }
}

/// Says that a delivery is under way, or that it is not.
#[component]
fn OrderButton(
    /// The tank.
    id: TankId,
    /// All of it.
    row: Memo<Option<TankNow>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let is_ordered = Memo::new(move |_| row.with(|row| row.as_ref().is_some_and(|row| row.ordered_at.is_some())));
    let flip = move |_| {
        let at = (!is_ordered.get_untracked()).then(clock::now);
        state.line.edit(|book| {
            if let Some(tank) = book.tank_mut(id) {
                tank.ordered_at = at;
            }
        });
    };
    let words = move || if is_ordered.get() { t!("tank-not-ordered") } else { t!("tank-mark-ordered") };
    view! { <button type="button" id=format!("tank-order-{}", id.0) on:click=flip>{words}</button> }
}

fn remove(state: State, sheet: TankSheet, id: TankId) {
    let removed = state.line.change(|record| record.book.tanks.retain(|tank| tank.id != id));
    sheet.open_tank.set(None);
    state.tell_undo(t!("tank-removed"), move || state.line.take_back(&removed));
    request_animation_frame(|| page::focus("line-section"));
}
