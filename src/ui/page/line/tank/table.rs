//! All tanks: one row a tank.

use super::context::TankSheet;
use super::row::TankRow;
use crate::browser::page;
use crate::domain::Entry;
use crate::domain::line::{Feeds, LineField, TankField, TankId};
use crate::quantity::Kind;
use crate::t;
use crate::ui::components::Grid;
use crate::ui::page::line::grid_box::{ColumnHead, LineRemarks};
use crate::ui::page::line::parts::ties;
use crate::ui::state::State;
use leptos::prelude::*;

/// The table, or the way to a first tank.
#[component]
pub fn TankTable() -> impl IntoView {
    let state = expect_context::<State>();
    let sheet = expect_context::<TankSheet>();
    let ids = Memo::new(move |_| sheet.tanks.with(|tanks| tanks.iter().map(|tank| tank.id).collect::<Vec<_>>()));
    let none = Memo::new(move |_| ids.with(Vec::is_empty));
    let fields = Signal::derive(move || {
        let of = |id: TankId| TankField::ALL.iter().map(move |part| LineField::Tank(id, *part));
        ids.get().into_iter().flat_map(of).collect::<Vec<_>>()
    });
    let add = move |_| {
        let first = ties(state, None).into_iter().next().map_or(Feeds::Water, |(feeds, _)| feeds);
        let mut added = None;
        state.line.edit(|book| added = Some(book.add_tank(first)));
        if let Some(id) = added {
            sheet.open_tank.set(Some(id));
            request_animation_frame(move || page::focus_field(&LineField::Tank(id, TankField::Content).key()));
        }
    };
    let pasted = Callback::new(move |cells: Vec<(String, String)>| paste(state, fields.get_untracked(), cells));
    let head = move || {
        view! {
            <th scope="col" class="l">{t!("tank-tank-liquid")}</th>
            <th scope="col">{t!("tank-level")}</th>
            <th scope="col" class="read">{t!("tank-read-at")}</th>
            <td class="level-drawn"><span class="heel-key">{t!("tank-heel")}</span></td>
            <th scope="col"><ColumnHead name=t!("tank-capacity") kind=Kind::BatchVolume choose=true/></th>
            <th scope="col"><ColumnHead name=t!("tank-heel") kind=Kind::BatchVolume/></th>
            <th scope="col"><ColumnHead name=t!("tank-lead-time") kind=Kind::ShiftTime/></th>
            <th scope="col" class="edge"><ColumnHead name=t!("tank-usable") kind=Kind::BatchVolume/></th>
            <th scope="col"><ColumnHead name=t!("tank-use") kind=Kind::PumpFlow choose=true/></th>
            <th scope="col"><ColumnHead name=t!("tank-per-shift") kind=Kind::BatchMass choose=true/></th>
            <th scope="col"><ColumnHead name=t!("tank-free") kind=Kind::BatchVolume/></th>
            <th scope="col">{t!("tank-runs-empty")}</th>
            <th scope="col" class="l order-by">{t!("tank-order-by")}</th>
            <td></td>
        }
        .into_any()
    };
    let foot = move || {
        view! { <td class="add" colspan="14"><button type="button" on:click=add>{t!("tank-add")}</button></td> }
            .into_any()
    };
    let empty = move || {
        view! { <p>{t!("tank-none")} " " <button type="button" class="primary" on:click=add>{t!("tank-add")}</button></p> }
    };
    view! {
        <Show when=move || !none.get() fallback=empty>
            <Grid name=t!("tank-tanks") class="tank-grid" head=head() foot=foot() on_paste=pasted>
                <For each=move || ids.get() key=|id| id.0 let:id><TankRow id=id/></For>
            </Grid>
            <LineRemarks fields=fields/>
        </Show>
    }
}

/// Fills a column down, as one step.
pub fn paste(state: State, fields: Vec<LineField>, cells: Vec<(String, String)>) {
    let all = cells.into_iter().filter_map(|(key, text)| {
        let field = *fields.iter().find(|field| field.key() == key)?;
        let kind = state.line.record.with_untracked(|record| record.book.kind(field));
        Some((field, text, state.units.with_untracked(|units| units.unit(kind))))
    });
    let all: Vec<_> = all.collect();
    let filled = state.line.change(|record| {
        for (field, text, unit) in &all {
            if let Some(entry) = record.book.entry_mut(*field) {
                *entry = Entry::typed(text.trim(), *unit);
            }
            state.note_line_entry(&mut record.book, *field);
        }
    });
    state.tell_undo(t!("tank-pasted", count = all.len()), move || state.line.take_back(&filled));
}
