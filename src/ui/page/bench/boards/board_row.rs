//! The row of a board, and its details below it.

use super::board_details::BoardDetails;
use super::column::{column, head};
use crate::domain::Grade;
use crate::domain::trial::boards::density::{OFF_TARGET, density_target};
use crate::domain::trial::boards::field::BoardField;
use crate::domain::trial::boards::working::BoardFigure;
use crate::domain::trial::{BoardId, Property};
use crate::quantity::Kind;
use crate::record::content::trial::field::TrialField;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::page::bench::entry::{BoardsFigure, FigureOfBoard, TrialBox, TrialDesk, amount_parts, signed_share};
use crate::ui::state::State;
use crate::ui::text::{lower_first, unit_short};
use leptos::prelude::*;

/// What the row shows right of the rule, but for the density with its working.
#[derive(Debug, Clone, PartialEq, Default)]
struct RowFigures {
    thickness: String,
    /// The density of the pieces, where the whole board was not measured.
    density: String,
    target: String,
    deviation: String,
    /// Whether the density misses the target by more than the limit: upwards or downwards.
    off: Option<bool>,
    bond: String,
    bending: String,
    swelling: String,
    is_tested: bool,
}

fn row_figures(state: State, desk: TrialDesk, id: BoardId) -> RowFigures {
    desk.tested.with(|tested| {
        let Some(board) = tested.board(id) else { return RowFigures::default() };
        let number = |kind: Kind, base: f64| amount_parts(state, kind, base).0;
        let mean =
            |property: Property| board.mean(property).map_or_else(String::new, |mean| number(property.kind(), mean));
        let sheet = tested.sheet(id);
        let target = sheet.and_then(|sheet| density_target(sheet, std::slice::from_ref(board)));
        let planned = sheet.map(|sheet| sheet.plan.case.input.board.density.value);
        let deviation = target.map(|target| target.split.total.value).filter(|_| !board.doubtful);
        let is_whole = board.whole.is_some();
        let is_tested = !(board.bond.is_empty() && board.bending.is_empty() && board.swelling.is_empty());
        RowFigures {
            thickness: mean(Property::Thickness),
            density: if is_whole { String::new() } else { mean(Property::Density) },
            target: target
                .map(|target| target.target)
                .or(planned)
                .map_or_else(String::new, |base| number(Kind::BoardDensity, base)),
            deviation: deviation.map_or_else(String::new, |share| signed_share(state, share)),
            off: deviation.filter(|share| share.abs() > OFF_TARGET).map(|share| share > 0.0),
            bond: mean(Property::InternalBond),
            bending: mean(Property::BendingStrength),
            swelling: mean(Property::Swelling),
            is_tested,
        }
    })
}

/// The row.
#[component]
pub fn BoardRow(
    /// The board.
    id: BoardId,
    /// How many columns of thickness there are.
    points: Memo<usize>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let desk = expect_context::<TrialDesk>();
    let figures = Memo::new(move |_| row_figures(state, desk, id));
    let heading = Memo::new(move |_| {
        state.bench.open.with(|open| {
            open.trial.board(id).map(|board| {
                let name = match board.name.trim() {
                    "" => board.id.0.to_string(),
                    name => name.to_owned(),
                };
                (name, board.run, board.sanded, board.thickness.len())
            })
        })
    });
    let name = move || heading.with(|own| own.as_ref().map(|(name, ..)| name.clone()).unwrap_or_default());
    let run = move || heading.with(|own| own.as_ref().and_then(|(_, run, ..)| *run));
    let note = move || {
        let sanded = heading.with(|own| own.as_ref().is_some_and(|(_, _, sanded, _)| *sanded));
        let run = run().map(|run| lower_first(&t!("trial-run-n", number = u32::from(run))));
        let sanded = sanded.then(|| lower_first(&t!("trial-sanded")));
        run.into_iter().chain(sanded).collect::<Vec<_>>().join(", ")
    };
    let is_on = Memo::new(move |_| desk.board.get() == Some(id));
    let select = move || {
        if desk.board.get_untracked() != Some(id) {
            desk.board.set(Some(id));
            // A working of the board before belongs to pieces that are no longer shown.
            desk.open_figure.set(None);
        }
    };
    let details = RwSignal::new(false);
    let details_id = format!("board-details-{}", id.0);
    let own = move |field| TrialField::Board(id, field);
    // What the heads say, for where there is no room for them.
    let labelled = move |name: String, field: BoardField| {
        move || format!("{name}, {}", state.currency.with(|currency| unit_short(state.unit(field.kind()), currency)))
    };
    let cell = move |field: BoardField, class: &'static str| {
        view! { <td class=class data-label=labelled(head(field), field)><TrialBox field=own(field) column=column(field) unit_in_head=true/></td> }
    };
    let point = move |at: usize| {
        let at = u8::try_from(at).unwrap_or(u8::MAX);
        let field = BoardField::Thickness(at);
        let is_there = Memo::new(move |_| heading.with(|own| own.as_ref().is_some_and(|own| usize::from(at) < own.3)));
        view! {
            <td class="input pt" data-label=labelled(format!("{} {}", head(field), at + 1), field)>
                <Show when=move || is_there.get()>
                    <TrialBox
                        field=own(field)
                        column=column(field)
                        unit_in_head=true
                    />
                </Show>
            </td>
        }
    };
    let figure = move |read: fn(&RowFigures) -> &String| move || figures.with(|figures| read(figures).clone());
    let deviation = move || {
        let (deviation, off) = figures.with(|figures| (figures.deviation.clone(), figures.off));
        match off {
            Some(is_high) => {
                let word = if is_high { t!("trial-high") } else { t!("trial-low") };
                view! { <span class="flag"><Mark grade=Grade::Unusual/> " " {word} " "</span> {deviation} }.into_any()
            }
            None => deviation.into_any(),
        }
    };
    let bond = move || {
        let (bond, is_tested) = figures.with(|figures| (figures.bond.clone(), figures.is_tested));
        if is_tested {
            bond.into_any()
        } else {
            view! { <span class="note">{t!("trial-not-tested")}</span> }.into_any()
        }
    };
    view! {
        <tr
            class="board"
            data-board=id.0.to_string()
            class:on=move || is_on.get()
            class:warn=move || figures.with(|figures| figures.off.is_some())
            on:focusin=move |_| select()
            on:click=move |_| select()
        >
            <th scope="row" class="l name">
                <button
                    type="button"
                    class="bare"
                    aria-pressed=move || if is_on.get() { "true" } else { "false" }
                    aria-label=move || t!("trial-board-n", name = name())
                >
                    <b>{name}</b>
                </button>
                <span class="note">{note}</span>
            </th>
            {cell(BoardField::Mass, "input")}
            {cell(BoardField::Length, "input")}
            {cell(BoardField::Width, "input")}
            <For each=move || 0..points.get() key=|at| *at children=point/>
            {cell(BoardField::Moisture, "input")}
            <td class="edge roomy">{figure(|own| &own.thickness)}</td>
            <td class="first-result">
                <FigureOfBoard figure=BoardsFigure::Of(id, BoardFigure::WholeDensity) unit_in_head=true/>
                {figure(|own| &own.density)}
            </td>
            <td class="roomy">{figure(|own| &own.target)}</td>
            <td class="deviation">{deviation}</td>
            <td class="bond-mean">{bond}</td>
            <td class="roomy">{figure(|own| &own.bending)}</td>
            <td class="roomy">{figure(|own| &own.swelling)}</td>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    aria-label=move || t!("trial-details-of-board", name = name())
                    aria-expanded=move || if details.get() { "true" } else { "false" }
                    aria-controls=details_id.clone()
                    on:click=move |_| details.update(|open| *open = !*open)
                >
                    "⋯"
                </button>
            </td>
        </tr>
        <Show when=move || details.get()>
            <tr class="details" id=format!("board-details-{}", id.0)>
                <td colspan=move || (points.get() + 13).to_string()><BoardDetails id=id/></td>
            </tr>
        </Show>
    }
}
