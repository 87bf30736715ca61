//! A catch.

use super::context::{CatchFigure, ColumnSteps, OpenTest, in_column, scatter, signed_in_column};
use super::figure::CatchValue;
use crate::browser::page;
use crate::domain::Grade;
use crate::domain::line::{LineFigure, RowField, RowId};
use crate::quantity::{Amount, Kind};
use crate::record::limits::LONGEST_NAME;
use crate::t;
use crate::ui::components::{Mark, TextBox};
use crate::ui::page::line::settings::line_box::LineFieldBox;
use crate::ui::part::amount::joined;
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, trimmed_to, words};
use leptos::prelude::*;

/// What a row shows beside its boxes.
#[derive(Debug, Clone, PartialEq, Default)]
struct CatchRowView {
    number: usize,
    /// Whether it is the row for the next catch.
    is_spare: bool,
    is_excluded: bool,
    is_suspect: bool,
    net: String,
    flow: String,
    residual: String,
    /// How far an excluded catch is off the line.
    far: Option<String>,
}

fn row_view(state: State, open: OpenTest, row: RowId, steps: ColumnSteps) -> CatchRowView {
    let (number, excluded) = state.line.book(|book| {
        let rows = book.calibration(open.pump, open.test).map_or(&[][..], |test| &test.rows);
        let at = rows.iter().position(|other| other.id == row);
        (at.map_or(rows.len(), |at| at) + 1, at.and_then(|at| rows.get(at)).map(|row| row.excluded))
    });
    let plain = CatchRowView {
        number,
        is_spare: excluded.is_none(),
        is_excluded: excluded == Some(true),
        ..CatchRowView::default()
    };
    open.examined.with(|examined| {
        let Some((examined, caught)) = examined.as_ref().and_then(|all| Some((all, all.caught(row)?))) else {
            return plain;
        };
        let amount = |kind, base| Amount::from_base(kind, base);
        let residual = examined.fit.map(|fit| caught.residual(&fit).value);
        let far = residual.filter(|_| plain.is_excluded).map(|residual| {
            let by = amount(Kind::LiquidFlow, residual.abs());
            let scatter = examined.fit.and_then(|fit| scatter(&fit));
            let by = joined(&in_column(state, by, steps.residual), symbol_shown(state.unit(Kind::LiquidFlow)));
            let times = scatter.map(|sd| trimmed_to((residual.abs() / sd).round(), 3, state.units.get().mark));
            match (residual < 0.0, times) {
                (true, Some(times)) => t!("catch-far-below", by = by, times = times),
                (false, Some(times)) => t!("catch-far-above", by = by, times = times),
                (true, None) => t!("catch-below", by = by),
                (false, None) => t!("catch-above", by = by),
            }
        });
        CatchRowView {
            is_suspect: examined.suspects.iter().any(|suspect| suspect.row == row),
            net: in_column(state, amount(Kind::BatchMass, caught.net().value), steps.net),
            flow: in_column(state, amount(Kind::LiquidFlow, caught.flow().value), steps.flow),
            residual: residual.map_or_else(String::new, |base| {
                signed_in_column(state, amount(Kind::LiquidFlow, base), steps.residual)
            }),
            far,
            ..plain
        }
    })
}

/// The row.
#[component]
pub fn CatchRow(
    /// Its number within the test.
    row: RowId,
    /// The decimals of the columns.
    steps: Memo<ColumnSteps>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let open = expect_context::<OpenTest>();
    let shows = Memo::new(move |_| row_view(state, open, row, steps.get()));
    let is = move |of: fn(&CatchRowView) -> bool| Memo::new(move |_| shows.with(of));
    let (is_spare, is_excluded, is_suspect) =
        (is(|row| row.is_spare), is(|row| row.is_excluded), is(|row| row.is_suspect));
    let number = Memo::new(move |_| shows.with(|row| row.number));
    let result = move |figure: LineFigure, kind: Kind, of: fn(&CatchRowView) -> &String| {
        let text = Memo::new(move |_| {
            let unit = symbol_shown(state.unit(kind)).to_owned();
            shows.with(|row| (of(row).clone(), unit))
        });
        view! { <CatchValue figure=CatchFigure::Catch(row, figure) text=text unit_in_head=true/> }
    };
    let use_it = move |event| {
        let excluded = !event_target_checked(&event);
        state.line.edit(|book| {
            let test = book.pump_mut(open.pump).and_then(|pump| pump.calibration_mut(open.test));
            if let Some(row) = test.and_then(|test| test.row_mut(row)) {
                row.excluded = excluded;
            }
        });
    };
    let field = move |part| open.field(row, part);
    view! {
        <tr
            class="catch"
            class:out=move || is_excluded.get()
            class:warn=move || is_suspect.get()
            class:spare=move || is_spare.get()
        >
            <th scope="row" class="l">
                <Show when=move || is_suspect.get()><Mark grade=Grade::Unusual/> " "</Show>
                <span class="out-of-sight">{t!("catch-catch")} " "</span>
                {move || number.get()}
            </th>
            <td class="setting"><LineFieldBox field=field(RowField::Setting) column="setting" unit_in_head=true/></td>
            <td class="extra" data-label=t!("catch-time")>
                <LineFieldBox field=field(RowField::Seconds) column="time" unit_in_head=true/>
            </td>
            <td class="gross"><LineFieldBox field=field(RowField::Mass) column="gross" unit_in_head=true/></td>
            <td class="extra" data-label=t!("catch-tare")>
                <LineFieldBox field=field(RowField::Tare) column="tare" unit_in_head=true/>
            </td>
            <td class="edge extra" data-label=t!("catch-net")>{result(LineFigure::CaughtNet, Kind::BatchMass, |row| &row.net)}</td>
            <td class="flow">
                {result(LineFigure::CaughtFlow, Kind::LiquidFlow, |row| &row.flow)}
                // A phone has it below the flow.
                <span class="note below">
                    {move || if is_spare.get() { t!("catch-new") } else { shows.with(|row| row.residual.clone()) }}
                </span>
            </td>
            <td class="residual extra" data-label=words::line::figure(LineFigure::CaughtResidual).label>{result(LineFigure::CaughtResidual, Kind::LiquidFlow, |row| &row.residual)}</td>
            <td class="use">
                <Show when=move || !is_spare.get()>
                    <label>
                        <input
                            type="checkbox"
                            aria-label=move || t!("catch-use-catch", number = number.get())
                            prop:checked=move || !is_excluded.get()
                            on:change=use_it
                        />
                    </label>
                </Show>
            </td>
        </tr>
        <Show when=move || is_excluded.get()>
            <tr class="why"><td colspan="9" class="l"><WhyExcluded row=row far=Signal::derive(move || shows.with(|row| row.far.clone()))/></td></tr>
        </Show>
    }
}

/// Why a catch does not count, how far off it is, and the way to be rid of it.
#[component]
fn WhyExcluded(
    /// Its number within the test.
    row: RowId,
    /// How far it is off the line.
    far: Signal<Option<String>>,
) -> impl IntoView {
    let state = expect_context::<State>();
    let open = expect_context::<OpenTest>();
    let id = format!("reason-{}-{}-{}", open.pump.0, open.test.0, row.0);
    let session = id.clone();
    let reason = Memo::new(move |_| {
        state.line.book(|book| book.row(open.pump, open.test, row).map(|row| row.reason.clone()).unwrap_or_default())
    });
    let put = Callback::new(move |text: String| {
        state.line.type_into(session.clone(), |book| {
            let test = book.pump_mut(open.pump).and_then(|pump| pump.calibration_mut(open.test));
            if let Some(row) = test.and_then(|test| test.row_mut(row)) {
                row.reason = text;
            }
        });
    });
    let delete = move |_| {
        let mut next = None;
        let deleted = state.line.change(|record| {
            let test = record.book.pump_mut(open.pump).and_then(|pump| pump.calibration_mut(open.test));
            if let Some(test) = test {
                let at = test.rows.iter().position(|other| other.id == row);
                test.rows.retain(|other| other.id != row);
                let after = at.and_then(|at| test.rows.get(at)).map(|row| row.id);
                next = after.or_else(|| test.spare_row(open.unit).map(|row| row.id));
            }
        });
        state.tell_undo(t!("catch-deleted"), move || state.line.take_back(&deleted));
        if let Some(next) = next {
            request_animation_frame(move || page::focus_field(&open.field(next, RowField::Setting).key()));
        }
    };
    view! {
        <div class="why-excluded">
            <TextBox
                id=id
                label=t!("catch-reason")
                value=reason
                longest=LONGEST_NAME
                on_input=put
                on_leave=Callback::new(move |()| state.leave_line())
            />
            <span class="note">{move || far.get()}</span>
            <button type="button" on:click=delete>{t!("catch-delete")}</button>
        </div>
    }
}
