//! The catches of a test: one row a catch, what was entered at the left and what follows at the right.

use super::context::{CatchFigure, ColumnSteps, OpenTest, column_step, flow_step};
use super::figure::CatchWorking;
use super::messages::CatchMessages;
use super::row::CatchRow;
use crate::browser::page;
use crate::domain::line::{LineField, LineFigure, RowField, RowId};
use crate::quantity::{Kind, Unit};
use crate::t;
use crate::ui::components::{Grid, UnitChoice};
use crate::ui::state::State;
use crate::ui::text::{symbol_shown, unit_short, words};
use leptos::prelude::*;

/// The grid with its messages and its note.
#[component]
pub fn CatchGrid() -> impl IntoView {
    let state = expect_context::<State>();
    let open = expect_context::<OpenTest>();
    // The spare row is the one for the next catch. Its number stays when it becomes a row, and so do its boxes.
    let rows = Memo::new(move |_| {
        state.line.book(|book| {
            let Some(test) = book.calibration(open.pump, open.test) else { return Vec::new() };
            test.rows.iter().map(|row| row.id).chain(test.spare_row(open.unit).map(|row| row.id)).collect::<Vec<_>>()
        })
    });
    let steps = Memo::new(move |_| {
        let (mass, flow) = (state.unit(Kind::BatchMass), state.unit(Kind::LiquidFlow));
        open.examined.with(|examined| {
            let all = || examined.iter().flat_map(|examined| examined.rows.iter().chain(&examined.excluded));
            let fit = examined.as_ref().and_then(|examined| examined.fit);
            ColumnSteps {
                net: column_step(all().map(|caught| mass.from_base(caught.net().value)), 4),
                flow: column_step(all().map(|caught| flow.from_base(caught.flow().value)), 4),
                residual: fit.and_then(|fit| flow_step(state, &fit)),
            }
        })
    });
    // A phone shows time and tare on demand.
    let all_boxes = RwSignal::new(false);
    let typical = Memo::new(move |_| state.line.book(|book| carried(state, book, open)));
    let paste = Callback::new(move |cells: Vec<(String, String)>| paste(state, open, cells));
    let toggle = move |_| all_boxes.update(|all| *all = !*all);
    view! {
        <div class="catch-grid" class:all-boxes=move || all_boxes.get()>
            <Grid name=t!("catch-catches") class="catches-grid" head=head(open).into_any() foot=().into_any() on_paste=paste grows=true>
                <For each=move || rows.get() key=|row| row.0 let:row><CatchRow row=row steps=steps/></For>
            </Grid>
        </div>
        <CatchMessages/>
        <CatchWorking belongs=|figure| matches!(figure, CatchFigure::Catch(..))/>
        <p class="note narrow-only">
            {move || typical.get()}
            " "
            <button type="button" class="link" aria-pressed=move || if all_boxes.get() { "true" } else { "false" } on:click=toggle>
                {t!("catch-show-time-and-tare")}
            </button>
        </p>
        <p class="note">{t!("catch-carried")}</p>
    }
}

/// Time and tare of the last catch, in words.
fn carried(state: State, book: &crate::domain::line::LineBook, open: OpenTest) -> String {
    let last = book.calibration(open.pump, open.test).and_then(|test| test.rows.last()).map(|row| row.id);
    let told = |part: RowField| {
        let field = open.field(last?, part);
        let entry = book.entry(field).filter(|entry| !entry.is_blank())?;
        let units = state.units.get();
        let kind = book.kind(field);
        let number = crate::ui::field::number_text::in_box(entry, kind, &units);
        Some(format!("{number}\u{a0}{}", symbol_shown(units.unit(kind))))
    };
    let blank = || "–".to_owned();
    t!(
        "catch-time-and-tare",
        time = told(RowField::Seconds).unwrap_or_else(blank),
        tare = told(RowField::Tare).unwrap_or_else(blank)
    )
}

/// A pasted column is one step, with as many new catches as it takes.
fn paste(state: State, open: OpenTest, cells: Vec<(String, String)>) {
    let Some((key, _)) = cells.first() else { return };
    let rows = state.line.record.with_untracked(|record| {
        let test = record.book.calibration(open.pump, open.test);
        test.map_or_else(Vec::new, |test| {
            test.rows.iter().map(|row| row.id).chain(test.spare_row(open.unit).map(|row| row.id)).collect()
        })
    });
    let all = rows.into_iter().flat_map(|row: RowId| RowField::ALL.iter().map(move |part| (row, *part)));
    let Some((row, part)) = all.into_iter().find(|(row, part)| open.field(*row, *part).key() == *key) else { return };
    let unit = state.unit(part.kind_on(open.unit));
    let texts: Vec<String> = cells.into_iter().map(|(_, text)| text).collect();
    let count = texts.len();
    let pasted = state.line.change(|record| {
        let test = record.book.pump_mut(open.pump).and_then(|pump| pump.calibration_mut(open.test));
        if let Some(test) = test {
            test.fill_column(row, part, &texts, unit, open.unit);
        }
    });
    state.tell_undo(t!("catch-pasted", count = count), move || state.line.take_back(&pasted));
    // The box that had the focus still has its old text in some engines.
    request_animation_frame(move || page::focus_field(&open.field(row, part).key()));
}

fn head(open: OpenTest) -> impl IntoView {
    let setting = unit_short(open.unit.unit(), "");
    view! {
        <th scope="col" class="l">"#"</th>
        <th scope="col">{t!("catch-setting")} <span class="head-unit">{setting}</span></th>
        <th scope="col" class="extra">{t!("catch-time")} <ColumnUnit kind=Kind::RunTime name=t!("catch-time")/></th>
        <th scope="col">{t!("catch-gross")} <ColumnUnit kind=Kind::BatchMass name=t!("catch-gross")/></th>
        <th scope="col" class="extra">{t!("catch-tare")} <HeadUnit kind=Kind::BatchMass/></th>
        <th scope="col" class="edge extra">{t!("catch-net")} <HeadUnit kind=Kind::BatchMass/></th>
        <th scope="col" class="flow">{t!("catch-flow")} <ColumnUnit kind=Kind::LiquidFlow name=t!("catch-flow")/></th>
        <th scope="col" class="residual">{words::line::figure(LineFigure::CaughtResidual).label} <HeadUnit kind=Kind::LiquidFlow/></th>
        <th scope="col" class="use">{t!("catch-use")}</th>
    }
}

/// The unit of a column.
#[component]
fn HeadUnit(
    /// What the column measures.
    kind: Kind,
) -> impl IntoView {
    let state = expect_context::<State>();
    view! { <span class="head-unit">{move || unit_short(state.unit(kind), "")}</span> }
}

/// The unit of a column, to choose. What was just typed in the column keeps its digits.
#[component]
fn ColumnUnit(
    /// What the column measures.
    kind: Kind,
    /// What the column is.
    #[prop(into)]
    name: String,
) -> impl IntoView {
    let state = expect_context::<State>();
    let unit = Memo::new(move |_| state.unit(kind));
    let symbol = Callback::new(|unit: Unit| unit_short(unit, ""));
    let choose = Callback::new(move |unit: Unit| {
        let in_column = |field: &LineField| state.line.record.with_untracked(|record| record.book.kind(*field)) == kind;
        match state.line.typed_last.get_value().filter(in_column) {
            Some(field) => state.choose_line_unit(field, unit),
            None => state.choose_unit(kind, unit),
        }
    });
    view! { <UnitChoice kind=kind unit=unit symbol=symbol name=name on_choose=choose/> }
}
