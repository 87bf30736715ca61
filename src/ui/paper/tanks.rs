//! The tanks: what is in them, when each runs empty and by when to order.

use super::context::{amount, hours, solved};
use super::end::End;
use super::not_valid::{LineNotValid, NothingPaper, line_lines};
use super::sheet::{Sheet, line_kind, recipe_line};
use super::warnings::{PaperLine, Warnings};
use crate::browser::clock;
use crate::domain::line::{LineField, LineFinding, LinePlace, Tank, TankState, on_line};
use crate::domain::{Caution, Grade, cautions};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::page::line::lines::common_lines;
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

/// The document.
#[component]
pub fn TanksPaper() -> impl IntoView {
    let state = expect_context::<State>();
    let off = state.outcome.with(|outcome| on_line(outcome.case.as_ref()).err());
    if let Some(off) = off {
        return view! { <LineNotValid title=t!("paper-tanks") lines=line_lines(state, &[off])/> }.into_any();
    }
    if state.line.book(|book| book.tanks.is_empty()) {
        return view! { <NothingPaper kind=t!("paper-tanks") why=t!("paper-no-tanks")/> }.into_any();
    }
    view! { <Levels/> }.into_any()
}

#[component]
fn Levels() -> impl IntoView {
    let state = expect_context::<State>();
    let now = clock::now();
    let found = solved(state, |draft, case, line, _| {
        let own = |tank: &Tank| (tank.clone(), tank.state_among(&line.tanks, draft, case));
        line.tanks.iter().map(own).collect::<Vec<_>>()
    });
    let found = found.unwrap_or_default();
    let mut findings: Vec<LineFinding> = state.line.checked.with(|line| {
        let of_tank =
            |found: &&LineFinding| matches!(found.place, LinePlace::Tank(_) | LinePlace::Field(LineField::Tank(..)));
        line.findings.iter().filter(of_tank).cloned().collect()
    });
    findings.extend(found.iter().filter_map(|(tank, standing)| Some(standing.as_ref()?.findings(tank, now))).flatten());
    let mut lines: Vec<PaperLine> = common_lines(state).into_iter().map(PaperLine::from).collect();
    lines.extend(line_lines(state, &findings));
    let is_meant = |caution: &Caution| {
        use Caution::{Advice, Alkaline, Emulsion, Isocyanate, IsocyanateTank};
        matches!(caution, Isocyanate | IsocyanateTank | Emulsion | Alkaline | Advice)
    };
    let cautions = state.outcome.with(|outcome| state.draft.with(|draft| cautions(draft, outcome)));
    let cautions = cautions.into_iter().filter(is_meant).collect();
    let row = |(tank, standing): &(Tank, Option<TankState>)| tank_row(state, tank, standing.as_ref(), now);
    let rows = found.iter().map(row).collect_view();
    view! {
        <Sheet title=t!("paper-tanks") about=recipe_line(state) kind=line_kind(state)>
            <Warnings lines=lines/>
            <table class="print-table print-tanks">
                <thead><tr>
                    <th scope="col" class="l">{t!("paper-tank")}</th>
                    <th scope="col">{t!("paper-in-tank")}</th>
                    <th scope="col">{t!("paper-usable")}</th>
                    <th scope="col">{t!("paper-use-now")}</th>
                    <th scope="col">{t!("paper-runs-empty")}</th>
                    <th scope="col">{t!("paper-order-by")}</th>
                    <th scope="col">{t!("paper-still-fits")}</th>
                </tr></thead>
                <tbody>{rows}</tbody>
            </table>
            <p class="print-small">{t!("paper-at-rate")}</p>
            <End cautions=cautions signature=[t!("paper-read-by"), t!("paper-checked-by"), t!("paper-date-time")]/>
        </Sheet>
    }
}

fn tank_row(state: State, tank: &Tank, standing: Option<&TankState>, now: u64) -> impl IntoView + use<> {
    let name = state.line.book(|book| book.tank(tank.id).map(|tank| words::line::tank(tank).into_owned()));
    let capacity = t!("paper-capacity", volume = amount(state, Kind::BatchVolume, tank.capacity.value));
    let Some(standing) = standing else {
        return view! {
            <tr><th scope="row" class="l"><b>{name}</b><span>{capacity}</span></th><td class="l" colspan="6">{t!("paper-tank-unknown")}</td></tr>
        }
        .into_any();
    };
    let fed = state.draft.with(|draft| words::line::fed(standing.fed, draft));
    let volume = |base| amount(state, Kind::BatchVolume, base);
    let mass = |base| amount(state, Kind::BatchMass, base);
    let read = standing.read_at.map(|at| t!("paper-read-at", time = clock::date_time(at)));
    let lasts = standing.lasts.map(|lasts| hours(state, lasts));
    let order = match (standing.overdue_by(now), standing.order_at(now)) {
        (Some(late), _) => {
            let words = t!("paper-overdue", time = hours(state, late));
            view! { <b><Mark grade=Grade::Unusual/> " " {words}</b> }.into_any()
        }
        (None, Some(order)) => view! { <b>{clock::date_time(order)}</b> }.into_any(),
        (None, None) => t!("line-none").into_any(),
    };
    let per_shift = t!("paper-per-shift", mass = mass(standing.per_shift.value));
    view! {
        <tr>
            <th scope="row" class="l"><b>{name}</b><span>{fed} " · " {capacity}</span></th>
            <td>{volume(standing.content.value)}<span>{read}</span></td>
            <td>{volume(standing.usable.value)}<span>{mass(standing.usable_mass.value)}</span></td>
            <td>{amount(state, Kind::LiquidFlow, standing.rate.value)}<span>{per_shift}</span></td>
            <td><b>{standing.empty_at(now).map(clock::date_time)}</b><span>{lasts}</span></td>
            <td>{order}</td>
            <td>{volume(standing.fits.value)}<span>{mass(standing.fits_mass.value)}</span></td>
        </tr>
    }
    .into_any()
}
