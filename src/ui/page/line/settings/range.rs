//! Rows and columns of the settings table.

use super::line_box::LineFieldBox;
use crate::domain::line::{LineField, TableField, TableRows};
use crate::t;
use crate::ui::components::{Choice, ChoiceOption};
use crate::ui::state::State;
use crate::ui::text::words;
use leptos::prelude::*;

fn key(rows: TableRows) -> &'static str {
    match rows {
        TableRows::Belt => "belt",
        TableRows::OvenDry => "oven-dry",
    }
}

/// What the rows are, from where to where, and in which steps.
#[component]
pub fn TableRange() -> impl IntoView {
    let state = expect_context::<State>();
    let value = Memo::new(move |_| state.line.book(|book| key(book.table_rows).to_owned()));
    let option = |rows: &TableRows| ChoiceOption::new(key(*rows), words::line::table_rows(*rows));
    let options: Vec<ChoiceOption> = TableRows::ALL.iter().map(option).collect();
    let choose = Callback::new(move |chosen: String| {
        if let Some(rows) = TableRows::ALL.iter().find(|rows| key(**rows) == chosen) {
            state.line.edit(|book| book.table_rows = *rows);
        }
    });
    let field = move |part: &TableField| {
        let field = LineField::Table(*part);
        let label = Memo::new(move |_| state.line.book(|book| words::line::field(field, book).label.to_owned()));
        view! { <LineFieldBox field=field label=label/> }
    };
    view! {
        <details class="fold-section table-range">
            <summary>{t!("line-change-range")}</summary>
            <div class="given">
                <Choice id="table-rows" name=t!("line-table-rows") labelled=true options=options value=value on_choose=choose/>
                {TableField::ALL.iter().map(field).collect_view()}
            </div>
        </details>
    }
}
