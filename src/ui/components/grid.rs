//! An editable grid: one row a thing, units in the head, inputs and results in the same row.

use crate::browser::page;
use leptos::ev::{ClipboardEvent, KeyboardEvent};
use leptos::prelude::*;

/// The table around the rows. Enter goes down a column, Tab along a row; a column pasted from a spreadsheet fills down
/// from the focused box. On a phone the sheet folds each row to one line.
#[component]
pub fn Grid(
    /// What the grid lists.
    #[prop(into)]
    name: String,
    /// A class for the widths of its columns.
    class: &'static str,
    /// The cells of the head.
    head: AnyView,
    /// The cells of the foot.
    foot: AnyView,
    /// Hears of a pasted column: the keys of the boxes from the focused one down, each with its text.
    on_paste: Callback<Vec<(String, String)>>,
    /// Whether a column may be longer than the boxes: what goes on below them comes with a blank key.
    #[prop(optional)]
    grows: bool,
    /// The rows.
    children: Children,
) -> impl IntoView {
    let down = move |event: KeyboardEvent| {
        if event.key() == "Enter" && page::focused_field().is_some() {
            event.prevent_default();
            event.stop_propagation();
            page::focus_below();
        }
    };
    let paste = move |event: ClipboardEvent| {
        let boxes = page::column_below();
        let Some(text) = page::pasted(&event) else { return };
        let cells: Vec<&str> = text.trim_end().split('\n').map(|line| line.trim_end_matches('\r')).collect();
        // Several columns are not a column; the box says so.
        if cells.len() > 1 && !text.contains('\t') && boxes.len() > usize::from(!grows) {
            event.prevent_default();
            event.stop_propagation();
            let new = std::iter::repeat_with(String::new).take(if grows { cells.len() } else { 0 });
            let boxes = boxes.into_iter().chain(new);
            on_paste.run(boxes.zip(cells.into_iter().map(str::to_owned)).collect());
        }
    };
    view! {
        <table class=format!("grid {class}") aria-label=name on:keydown=down on:paste:capture=paste>
            <thead><tr>{head}</tr></thead>
            <tbody>{children()}</tbody>
            <tfoot><tr>{foot}</tr></tfoot>
        </table>
    }
}
