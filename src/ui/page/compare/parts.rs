//! A table as the older pages of the bench show it.

use crate::browser::element::{Part, View, el};

/// A table: headings, then rows whose first cell heads them.
pub fn table(name: &str, head: &[String], rows: Vec<Vec<String>>) -> View {
    let head = head.iter().map(|words| el("th").set("scope", "col").child(words.clone())).collect::<View>();
    let row = |cells: Vec<String>| {
        let mut cells = cells.into_iter();
        let first = el("th").set("scope", "row").child(cells.next());
        el("tr").child(first).child(cells.map(|cell| el("td").child(cell)).collect::<View>())
    };
    let rows = rows.into_iter().map(row).collect::<View>();
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", name.to_owned())
        .child(el("table").child(el("thead").child(el("tr").child(head))).child(el("tbody").child(rows)))
        .view()
}
