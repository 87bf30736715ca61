//! A row of the table.

use super::now::{CheckSheet, field_of, pair_of, setting_of};
use super::row_text::{CheckRowText, NewSetting, full_name, row_name, row_text, row_units, while_blank};
use super::row_unit::RowUnit;
use super::strip::ToleranceStrip;
use crate::domain::Grade;
use crate::domain::line::{LineField, RunFigure};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::Mark;
use crate::ui::page::line::grid_box::LineGridBox;
use crate::ui::state::State;
use crate::ui::text::unit_short;
use leptos::prelude::*;

/// The row.
#[component]
pub fn ReadingRow(
    /// What is read.
    figure: RunFigure,
) -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CheckSheet>();
    let name = Memo::new(move |_| row_name(state, figure));
    let full = Memo::new(move |_| full_name(state, figure));
    let text = Memo::new(move |_| sheet.now.with(|now| row_text(state, now, figure)));
    let kind = Memo::new(move |_| sheet.now.with(|now| now.row(figure).map_or(Kind::Ratio, |row| row.kind)));
    let unit = Memo::new(move |_| row_units(state, figure, kind.get()).unit(kind.get()));
    let unit_text = move || format!("\u{a0}{}", unit_short(unit.get(), ""));
    let part = move |of: fn(&CheckRowText) -> &String| move || text.with(|text| of(text).clone());
    let is_outside = Memo::new(move |_| text.with(|text| text.is_outside));
    let is_flagged = Memo::new(move |_| text.with(|text| text.is_outside || matches!(text.new, NewSetting::Flag(..))));
    let is_open = Memo::new(move |_| sheet.open_row.get() == Some(figure));
    let toggle = move |_| sheet.open_row.update(|open| *open = if *open == Some(figure) { None } else { Some(figure) });
    let id = match figure {
        RunFigure::Flow(id) => format!("{}.{}", figure.key(), id.0),
        _ => figure.key().to_owned(),
    };
    let strip = move || {
        let (offset, deviation, tolerance) =
            text.with(|text| (text.offset, text.deviation.0.clone(), text.tolerance.clone()));
        view! { <ToleranceStrip offset=offset deviation=deviation tolerance=tolerance/> }
    };
    let status = move || {
        let mark = is_outside.get().then(|| view! { <Mark grade=Grade::Unusual/> " " });
        view! { {mark} {text.with(|text| text.status.clone())} }
    };
    let actual = match field_of(figure) {
        Some(field) => {
            let blank = Signal::derive(move || sheet.now.with(|now| while_blank(state, now, figure, field)));
            view! { <LineGridBox field=field column=Some("actual") placeholder=blank/> }.into_any()
        }
        None => view! { <span class="computed-value">{part(|text| &text.actual)}</span> }.into_any(),
    };
    let present = match setting_of(figure) {
        Some(field) => view! { <LineGridBox field=field column=Some("now")/> }.into_any(),
        None => view! { <span class="computed-value">{part(|text| &text.now)}</span> }.into_any(),
    };
    let has_new = Memo::new(move |_| text.with(|text| text.new != NewSetting::Blank));
    view! {
        <tr
            class="reading"
            data-row=id
            class:warn=move || is_flagged.get()
            class:open=move || is_open.get()
            class:has-new=move || has_new.get()
        >
            <th scope="row" class="l name">
                <span class="named"><span><b>{move || name.with(|(name, _)| name.clone())}</b> " " <span class="fed">{move || name.with(|(_, note)| note.clone())}</span></span></span>
                {pair_of(figure).map(|pair| view! { <Pair pair=pair/> })}
            </th>
            <td class="unit-cell"><RowUnit figure=figure kind=kind unit=unit name=full/></td>
            <td class="target" data-label=t!("check-target")>{part(|text| &text.target)} <span class="out-of-sight">{unit_text}</span></td>
            <td class="actual">{actual}</td>
            <td class="edge deviation" class:flag=move || is_outside.get()>
                {move || is_outside.get().then(|| view! { <Mark grade=Grade::Unusual/> " " })}
                <span data-check=figure.key()>
                    {part(|text| &text.deviation.0)}
                    <span class="u">{move || text.with(|text| format!("\u{a0}{}", text.deviation.1))}</span>
                </span>
            </td>
            <td class="deviation-unit" aria-hidden="true">{part(|text| &text.deviation.1)}</td>
            <td class="strip extra">{strip}</td>
            <td class="l tolerance extra" data-label=t!("check-tolerance")>{part(|text| &text.tolerance)}</td>
            <td class="l status" class:flag=move || is_outside.get()>{status}</td>
            <td class="reconciled extra" data-label=t!("check-reconciled")>
                <span>{part(|text| &text.reconciled.0)} " " <span class="half">{part(|text| &text.reconciled.1)}</span></span>
            </td>
            <td class="edge present extra" data-label=t!("check-now")>{present}</td>
            <NewSettingCells text=text/>
            <td class="more">
                <button
                    type="button"
                    class="bare"
                    aria-label=move || t!("line-details-of", name = full.get())
                    aria-expanded=move || if is_open.get() { "true" } else { "false" }
                    on:click=toggle
                >
                    "⋯"
                </button>
            </td>
        </tr>
    }
}

/// Mass and area of a sample, from which the row is computed.
#[component]
fn Pair(
    /// Both.
    pair: [LineField; 2],
) -> impl IntoView {
    let each = |field: LineField| view! { <LineGridBox field=field column=Some("actual") unit_in_box=true/> };
    view! { <span class="pair">{pair.map(each).collect_view()}</span> }
}

/// What to set instead: the number and its unit, or what prevents it.
#[component]
fn NewSettingCells(
    /// The row.
    text: Memo<CheckRowText>,
) -> impl IntoView {
    let new = Memo::new(move |_| text.with(|text| text.new.clone()));
    move || match new.get() {
        NewSetting::Blank => view! { <td class="new" colspan="2"></td> }.into_any(),
        NewSetting::Number(number, unit, remark) => {
            let remark = (!remark.is_empty())
                .then(|| view! { <span class="dot">" · "</span> <span class="remark">{remark}</span> });
            view! {
                <td class="l new" colspan="2">
                    <span class="new-set"><b>{number}</b> " " <span class="new-unit">{unit} {remark}</span></span>
                </td>
            }
            .into_any()
        }
        NewSetting::Words(words) => view! { <td class="l new note" colspan="2">{words}</td> }.into_any(),
        NewSetting::Flag(words, more) => {
            let more = (!more.is_empty()).then(|| view! { <span class="sub flag">{more}</span> });
            view! { <td class="l new flag" colspan="2"><Mark grade=Grade::Unusual/> " " {words} " " {more}</td> }
                .into_any()
        }
    }
}
