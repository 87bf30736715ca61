//! The comparison as tables in a file, and on paper.

use super::chart_frame::given_out;
use super::context::CompareContext;
use super::solve::asked;
use super::sweep::swept_at;
use super::systems::Compared;
use super::uncertainty::{assumed, work_out};
use crate::browser::{file, print};
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::economy::costs::{Economy, SystemEconomy, release_agent};
use crate::domain::compare::emission::sheet;
use crate::domain::compare::side::{ComparedSystem, side_by_side};
use crate::domain::compare::system_choice::SystemChoice;
use crate::record::table::{Table, to_csv, to_xlsx};
use crate::t;
use crate::ui::state::compare::CompareSection;
use crate::ui::table::{
    answers, assumptions, economy as economy_sheet, emission, limits, shares, side_by_side as side_table, stacked,
    uncertainty,
};
use leptos::prelude::*;

/// Any width does: only its table is taken.
const ANY_WIDTH: f64 = 640.0;

/// Everything that is exported, a table each: the systems side by side, what was assumed, economy, limits, the sweep, the
/// emission sheet, answers, the chosen figures with their uncertainty, the share of each source, the sources.
fn tables(context: CompareContext) -> Option<Vec<Table>> {
    let state = context.state;
    let hours = context.hours.get();
    let typed = state.compare.typed.get();
    let asked = asked(context);
    let swept = swept_at(context, &typed.sweep, ANY_WIDTH).and_then(Result::ok);
    context.shown.with(|shown| {
        let reference = shown.side.as_ref().ok()?.reference;
        let side = side_by_side(&shown.systems, reference, hours).ok()?;
        let known = work_out(shown, &typed.uncertainty);
        Some(state.with_context(|own| {
            let mut all = vec![side_table(&shown.systems, &side, own)];
            all.push(assumptions(&shown.systems, own));
            all.extend(economy_table(context, &typed, shown));
            all.push(limits(&shown.systems, own));
            all.extend(swept.map(|swept| swept.table));
            all.push(emission(&sheet(&typed.emission)));
            all.push(answers(&asked));
            if let Some((known, study)) = known.as_ref().and_then(|known| Some((known, known.study.as_ref().ok()?))) {
                state.compare.found.with(|found| {
                    known.measured(found, hours, |figures| {
                        all.push(uncertainty(figures, study, &known.systems, found.seed, own));
                        all.push(shares(figures, &known.uncertain, &known.systems));
                    });
                });
                all.push(assumed(context, known));
            }
            all
        }))
    })
}

/// The economy of all systems; `None` where they cannot be compared side by side.
pub fn economy_table(context: CompareContext, typed: &CompareDraft, shown: &Compared) -> Option<Table> {
    let reference = shown.side.as_ref().ok()?.reference;
    let economy = Economy::of(typed);
    let of = |(system, key): (&ComparedSystem, &SystemChoice)| {
        system.case().map(|case| economy.of_system(case, release_agent(typed, key))).unwrap_or_default()
    };
    let all: Vec<SystemEconomy> = shown.systems.iter().zip(&shown.keys).map(of).collect();
    let first = shown.systems.first()?;
    Some(context.with_draft(&first.draft, |own| economy_sheet(&shown.systems, &all, (&economy, reference), own)))
}

/// One file of text: the tables below each other, each under its name.
pub fn export_csv(context: CompareContext) {
    let Some(all) = untrack(|| tables(context)) else { return };
    let text = to_csv(&stacked(all), context.state.units.get_untracked().mark);
    let name = file::file_name(&t!("compare-file"), "csv");
    given_out(context.state, file::give_out(&name, "text/csv", &text).map(|()| name));
}

/// A spreadsheet, a sheet a table.
pub fn export_xlsx(context: CompareContext) {
    let Some(all) = untrack(|| tables(context)) else { return };
    let name = file::file_name(&t!("compare-file"), "xlsx");
    let kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    given_out(context.state, file::give_out_bytes(&name, kind, &to_xlsx(&all)).map(|()| name));
}

/// Shows the report, and prints it.
pub fn print_report(context: CompareContext) {
    let state = context.state;
    state.compare.show(CompareSection::Report);
    request_animation_frame(move || {
        if !print::print() {
            state.tell(t!("compare-no-printer"));
        }
    });
}
