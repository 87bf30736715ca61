//! The systems side by side as a table, each figure with its working.

use super::comparison::Comparison;
use super::parts::{given_out, with_draft};
use super::sweep::{Swept, swept_of};
use super::systems::Compared;
use super::uncertainty::sources::assumed as assumed_sources;
use super::uncertainty::study::PageStudy;
use super::{break_even, solve};
use crate::browser::element::{Part, View, button, el, many};
use crate::browser::file;
use crate::browser::graph::*;
use crate::domain::compare::Output;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::economy::costs::{Economy, SystemEconomy, release_agent};
use crate::domain::compare::emission::sheet;
use crate::domain::compare::range::RangeError;
use crate::domain::compare::side::{ComparedSystem, Row, SideBySide, side_by_side as beside};
use crate::domain::compare::system_choice::SystemChoice;
use crate::quantity::{Unit, format};
use crate::record::table::{Table, to_csv, to_xlsx};
use crate::ui::part::working;
use crate::ui::signal::{Memo, RwSignal};
use crate::ui::state::State;
use crate::ui::table::{
    answers, assumptions, economy as economy_sheet, emission, limits, shares, side_by_side, stacked, uncertainty,
};
use crate::ui::text::{Context, Message, trimmed_to, unit_shown};
use std::sync::Arc;

/// A number with its sign in front, in three digits.
#[must_use]
pub fn signed(state: State, number: f64) -> String {
    let text = trimmed_to(number, 3, state.units.get().mark);
    if number > 0.0 { format!("+{text}") } else { text }
}

/// What a system has more of it than the reference: in the unit shown, and as a share.
#[must_use]
pub fn more(state: State, row: &Row, at: usize, reference: usize, unit: Unit) -> String {
    let Some(more) = row.difference(at, reference, unit) else { return String::new() };
    match row.relative(at, reference) {
        Some(share) if share != 0.0 => format!("{} ({}\u{a0}%)", signed(state, more), signed(state, share * 100.0)),
        _ => signed(state, more),
    }
}

/// The table. `open` holds "row system" of the working that is open; without it no figure can be opened.
pub fn table(comparison: Comparison, shown: &Arc<Compared>, side: &SideBySide, open: Option<RwSignal<String>>) -> View {
    let Comparison { state, hours, .. } = comparison;
    let page = &state.words.compare.page;
    let sheet = &state.words.compare.sheet;
    let reference = side.reference;
    let head = |at: usize| {
        el("th")
            .set("scope", "col")
            .child(shown.name(at))
            .child((at == reference).then(|| el("span").class("note").child(page.reference)))
    };
    let columns = shown.systems.len();
    let mut rows = Vec::new();
    for (line, row) in side.rows.iter().enumerate() {
        if matches!(row.output, Output::CostPerYear(_)) {
            // The hours are typed: this row alone follows them.
            let shown = shown.clone();
            let yearly = move || {
                let hours = hours.get();
                let output = Output::CostPerYear(hours.unwrap_or(1));
                let value = |system: &ComparedSystem| hours.and(system.case()).and_then(|case| output.value(case));
                let row = Row { output, values: shown.systems.iter().map(value).collect() };
                line_of(state, &shown, &row, (line, reference), open)
            };
            rows.push(yearly.view());
        } else {
            rows.push(line_of(state, shown, row, (line, reference), open));
        }
    }
    let limits = |at: usize| {
        let machine = shown.systems.get(at).and_then(|system| system.limiting());
        el("td").child(machine.map_or(state.words.tools.no_figure, state.words.machine))
    };
    rows.push(
        el("tr")
            .child(el("th").set("scope", "row").child(page.what_limits))
            .child(el("td"))
            .child((0..columns).map(limits).collect::<View>())
            .view(),
    );
    el("div")
        .class("scroll")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", sheet.side_by_side)
        .child(
            el("table")
                .class("beside")
                .child(
                    el("thead").child(
                        el("tr")
                            .child(el("th").set("scope", "col").child(sheet.figure))
                            .child(el("th").set("scope", "col").child(sheet.unit))
                            .child((0..columns).map(head).collect::<View>()),
                    ),
                )
                .child(el("tbody").child(View::Many(rows))),
        )
        .view()
}

/// The row of one figure, and the working that is open below it.
fn line_of(
    state: State,
    shown: &Compared,
    row: &Row,
    (line, reference): (usize, usize),
    open: Option<RwSignal<String>>,
) -> View {
    let columns = shown.systems.len();
    let words = (state.words.compare.output)(row.output);
    let unit = state.unit(row.output.kind());
    let symbol = state.currency.with(|currency| unit_shown(unit, currency).into_owned());
    let mark = state.units.get().mark;
    let cell = |at: usize| {
        let Some(amount) = row.values.get(at).copied().flatten() else {
            return el("td").child(state.words.tools.no_figure).view();
        };
        let number = format::amount(amount, unit, mark);
        let key = format!("{line} {at}");
        let difference = (at != reference).then(|| more(state, row, at, reference, unit));
        let figure = el("span").set("data-figure", format!("{}.{at}", row.output.key())).child(number.clone());
        let value = match open {
            Some(open) => {
                let (own, now) = (key.clone(), key.clone());
                let named = format!("{}, {}: {number} {symbol}", words.label, shown.name(at));
                button()
                    .class("link")
                    .set("title", state.words.recipe_page.show_working)
                    .set("aria-label", named)
                    .set("aria-expanded", move || if open.with(|open| *open == own) { "true" } else { "false" })
                    .on_click(move || {
                        let same = open.with_untracked(|open| *open == now);
                        open.set(if same { String::new() } else { now.clone() });
                    })
                    .child(figure)
            }
            None => figure,
        };
        el("td").child(value).child(difference.map(|text| el("span").class("note").child(text))).view()
    };
    let note = (!words.note.is_empty()).then(|| el("span").class("note").child(words.note));
    many([
        el("tr")
            .child(el("th").set("scope", "row").child(words.label).child(note))
            .child(el("td").class("unit").child(symbol.clone()))
            .child((0..columns).map(cell).collect::<View>())
            .view(),
        open.map(|open| opened(state, shown, row, line, open, columns)).view(),
    ])
    .view()
}

/// The working of one of a row's figures, below the row; nothing while none is open.
fn opened(state: State, shown: &Compared, row: &Row, line: usize, open: RwSignal<String>, columns: usize) -> View {
    let (output, systems) = (row.output, shown.systems.clone());
    let prefix = format!("{line} ");
    (move || {
        let at: usize = open.with(|open| open.strip_prefix(&prefix).and_then(|at| at.parse().ok()))?;
        let system = systems.get(at)?;
        let worked = output.working(system.case()?)?.without_figure();
        Some(el("tr").class("opened").child(el("td").set("colspan", (columns + 2).to_string()).child(
            el("div").class("working").child(el("p").child(el("strong").child(system.name.clone()))).child(
                working::told(state, &worked, |origin| working::origin_name(state, *origin, &system.draft, false)),
            ),
        )))
    })
    .view()
}

/// Everything that is given out, a table each: the systems side by side, what was assumed, every figure with its
/// uncertainty, the share of each source, the sources, and the sweep with its limits.
fn tables(
    comparison: Comparison,
    study: Memo<Option<PageStudy>>,
    swept: Memo<Option<Result<Swept, RangeError>>>,
) -> Option<Vec<Table>> {
    let Comparison { state, shown, hours } = comparison;
    let hours = hours.get_untracked();
    let asked = asked(comparison);
    shown.with_untracked(|shown| {
        let reference = shown.side.as_ref().ok()?.reference;
        let side = beside(&shown.systems, reference, hours).ok()?;
        state.with_context(|context: &Context<'_>| {
            let words = state.words;
            let mut all = vec![side_by_side(&shown.systems, &side, words, context)];
            all.push(assumptions(&shown.systems, words, context));
            all.extend(state.compare.typed.with_untracked(|typed| worked(state, typed, shown, context)));
            all.push(limits(&shown.systems, words, context));
            all.extend(swept.with_untracked(|swept| swept_of(swept).map(|swept| swept.table.clone())));
            all.push(emission_sheet(state));
            all.push(answers(&asked, words));
            study.with_untracked(|known| {
                let Some((known, study)) = known.as_ref().and_then(|known| Some((known, known.study.as_ref().ok()?)))
                else {
                    return;
                };
                state.compare.found.with_untracked(|found| {
                    known.measured(found, hours, |figures| {
                        all.push(uncertainty(figures, study, &known.systems, found.seed, words, context));
                        all.push(shares(figures, &known.uncertain, &known.systems, words));
                    });
                });
                all.push(assumed_sources(state, known));
            });
            Some(all)
        })
    })
}

/// The table of all systems; `None` where they do not stand side by side.
fn worked(state: State, typed: &CompareDraft, shown: &Compared, context: &Context<'_>) -> Option<Table> {
    let reference = shown.side.as_ref().ok()?.reference;
    let economy = Economy::of(typed);
    let of = |(system, key): (&ComparedSystem, &SystemChoice)| {
        system.case().map(|case| economy.of_system(case, release_agent(typed, key))).unwrap_or_default()
    };
    let all: Vec<SystemEconomy> = shown.systems.iter().zip(&shown.keys).map(of).collect();
    Some(economy_sheet(&shown.systems, &all, (&economy, reference), state.words, context))
}

/// The emission sheet.
pub fn emission_sheet(state: State) -> Table {
    emission(&state.compare.typed.with(|typed| sheet(&typed.emission)), state.words)
}

/// The economy of all systems, on the page.
pub fn economy(state: State, shown: &Compared) -> Option<View> {
    let first = shown.systems.first()?;
    let found = state
        .compare
        .typed
        .with(|typed| with_draft(state, &first.draft, |context| worked(state, typed, shown, context)));
    Some(self::shown(state, &found?))
}

/// Everything that was asked for, with its answer.
pub fn asked(comparison: Comparison) -> Vec<(String, Message)> {
    let Comparison { state, hours, .. } = comparison;
    let page = &state.words.compare.page;
    let said = |what: String| Message { what, fix: String::new() };
    let no_answer = || state.words.tools.no_figure.to_owned();
    let mut all = vec![(page.hours.to_owned(), said(hours.get().map_or_else(no_answer, |hours| hours.to_string())))];
    let typed = state.compare.typed.get();
    match solve::answered(comparison, &typed.solve) {
        Some(Ok(answered)) => all.push((answered.question, answered.message)),
        Some(Err(question)) => all.push((question, said(page.wanted_missing.to_owned()))),
        None => {}
    }
    if let Some(Some(answered)) = break_even::answered(comparison, &typed.break_even) {
        all.push((answered.question, answered.message));
    }
    all
}

/// The buttons that give the comparison out as tables.
pub fn exports(
    comparison: Comparison,
    study: Memo<Option<PageStudy>>,
    swept: Memo<Option<Result<Swept, RangeError>>>,
) -> View {
    let state = comparison.state;
    let page = &state.words.compare.page;
    let csv = move || {
        let Some(all) = untrack(|| tables(comparison, study, swept)) else { return };
        // A file of text has no sheets: one below the other, each under its name.
        let text = to_csv(&stacked(all), state.units.get_untracked().mark);
        let name = file::file_name(page.file_name, "csv");
        given_out(state, file::give_out(&name, "text/csv", &text).map(|()| name));
    };
    let xlsx = move || {
        let Some(all) = untrack(|| tables(comparison, study, swept)) else { return };
        let name = file::file_name(page.file_name, "xlsx");
        let kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
        given_out(state, file::give_out_bytes(&name, kind, &to_xlsx(&all)).map(|()| name));
    };
    el("div")
        .class("actions")
        .child(button().on_click(csv).child(page.save_csv))
        .child(button().on_click(xlsx).child(page.save_xlsx))
        .view()
}

/// What was assumed for each system, as a table on the page.
pub fn assumed(state: State, shown: &Compared) -> View {
    let Some(first) = shown.systems.first() else { return View::Nothing };
    let table = with_draft(state, &first.draft, |context| assumptions(&shown.systems, state.words, context));
    self::shown(state, &table)
}

/// What limits each system, and the prices that it lacks, on the page.
pub fn limited(state: State, shown: &Compared) -> View {
    let Some(first) = shown.systems.first() else { return View::Nothing };
    let table = with_draft(state, &first.draft, |context| limits(&shown.systems, state.words, context));
    self::shown(state, &table)
}

/// A table that is also given out, on the page.
pub fn shown(state: State, table: &Table) -> View {
    let mark = state.units.get().mark;
    let mut rows = table.rows.iter().map(|cells| cells.iter().map(|cell| text(cell, mark)).collect());
    let head: Vec<String> = rows.next().unwrap_or_default();
    many([super::parts::table(&table.name, &head, rows.collect())]).view()
}

/// A cell as text.
fn text(cell: &crate::record::table::Cell, mark: format::DecimalMark) -> String {
    use crate::record::table::Cell;
    match cell {
        Cell::Empty => String::new(),
        Cell::Text(words) | Cell::Heading(words) => words.clone(),
        Cell::Number { value, .. } | Cell::Formula { value, .. } => trimmed_to(*value, 5, mark),
    }
}
