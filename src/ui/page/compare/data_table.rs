//! A table of figures that is also exported.

use crate::quantity::format::DecimalMark;
use crate::record::table::{Cell, Table};
use crate::ui::state::State;
use crate::ui::text::trimmed_to;
use leptos::prelude::*;

/// Heads, then rows whose first cell heads them; it scrolls by itself where it is too wide.
#[component]
pub fn DataTable(
    /// What it lists.
    #[prop(into)]
    name: String,
    /// Its heads.
    head: Vec<String>,
    /// Its rows.
    rows: Vec<Vec<String>>,
) -> impl IntoView {
    let row = |cells: Vec<String>| {
        let mut cells = cells.into_iter();
        let first = cells.next();
        let rest = cells.map(|cell| view! { <td>{cell}</td> }).collect_view();
        view! { <tr><th scope="row">{first}</th>{rest}</tr> }
    };
    let head = head.into_iter().map(|words| view! { <th scope="col">{words}</th> }).collect_view();
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=name>
            <table class="data"><thead><tr>{head}</tr></thead><tbody>{rows.into_iter().map(row).collect_view()}</tbody></table>
        </div>
    }
}

/// A table that is exported, on the page.
pub fn exported(state: State, table: &Table) -> AnyView {
    let mark = state.units.get().mark;
    let mut rows = table.rows.iter().map(|cells| cells.iter().map(|cell| cell_text(cell, mark)).collect());
    let head: Vec<String> = rows.next().unwrap_or_default();
    let rows: Vec<Vec<String>> = rows.collect();
    view! { <DataTable name=table.name.clone() head=head rows=rows/> }.into_any()
}

/// A cell as text.
fn cell_text(cell: &Cell, mark: DecimalMark) -> String {
    match cell {
        Cell::Empty => String::new(),
        Cell::Text(words) | Cell::Heading(words) => words.clone(),
        Cell::Number { value, .. } | Cell::Formula { value, .. } => trimmed_to(*value, 5, mark),
    }
}
