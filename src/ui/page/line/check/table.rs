//! The table: a row for each thing that is read, inputs and results side by side.

use super::now::{CheckSheet, fields};
use super::reconciliation::ReconciliationFold;
use super::row::ReadingRow;
use super::tolerances::TolerancesFold;
use super::workings::WorkingsFold;
use crate::domain::line::LineField;
use crate::t;
use crate::ui::components::Grid;
use crate::ui::page::line::grid_box::LineRemarks;
use crate::ui::state::State;
use leptos::prelude::*;

/// The table with its folds.
#[component]
pub fn CheckTable() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<CheckSheet>();
    let figures = Memo::new(move |_| sheet.now.with(|now| now.rows.iter().map(|row| row.figure).collect::<Vec<_>>()));
    let fields = Memo::new(move |_| sheet.now.with(|now| fields(&now.rows)));
    let paste = Callback::new(move |cells: Vec<(String, String)>| paste(state, &fields.get_untracked(), cells));
    view! {
        <section class="panel" aria-label=t!("line-tab-check")>
            <Grid name=t!("line-tab-check") class="line-check" head=head().into_any() foot=().into_any() on_paste=paste>
                <For each=move || figures.get() key=|figure| *figure let:figure><ReadingRow figure=figure/></For>
            </Grid>
            <LineRemarks fields=fields/>
            <ReconciliationFold/>
            <WorkingsFold/>
            <TolerancesFold/>
        </section>
    }
}

/// A column pasted from a spreadsheet is one step, which can be taken back as one.
fn paste(state: State, fields: &[LineField], cells: Vec<(String, String)>) {
    let entry = |(key, text): (String, String)| {
        let field = *fields.iter().find(|field| field.key() == key)?;
        let kind = state.line.record.with_untracked(|record| record.book.kind(field));
        Some((field, text, untrack(|| state.line_units_at(field, kind)).unit(kind)))
    };
    let entries: Vec<_> = cells.into_iter().filter_map(entry).collect();
    let count = entries.len();
    let pasted = state.line.change(|record| {
        for (field, text, unit) in entries {
            if let Some(place) = record.book.entry_mut(field) {
                *place = crate::domain::Entry::typed(text, unit);
            }
            state.note_line_entry(&mut record.book, field);
        }
    });
    state.tell_undo(t!("check-pasted", count = count), move || state.line.take_back(&pasted));
}

fn head() -> impl IntoView {
    view! {
        <th scope="col" class="l">{t!("check-reading")}</th>
        <td></td>
        <th scope="col">{t!("check-target")}</th>
        <th scope="col"><b>{t!("check-actual")}</b></th>
        <th scope="col" class="edge">{t!("check-deviation")}</th>
        <td></td>
        <th scope="col" class="strip">{t!("check-strip")}</th>
        <td></td>
        <th scope="col" class="l">{t!("check-status")}</th>
        <th scope="col" class="reconciled">{t!("check-reconciled")} <span class="sub">{t!("check-half-interval")}</span></th>
        <th scope="col" class="edge">{t!("check-now")}</th>
        <th scope="col" class="l new" colspan="2"><b>{t!("check-new-setting")}</b></th>
    }
}
