//! What goes on paper: a document of its own for each page and tab, made when the browser prints.

mod bench;
mod changeover;
mod context;
mod doses;
mod end;
mod inputs;
mod key_figures;
mod line_check;
mod mixing;
pub mod next_print;
mod not_valid;
mod pump;
mod pump_settings;
mod recipe;
mod settings_table;
mod sheet;
mod tanks;
mod warnings;

use crate::browser::print;
use crate::t;
use crate::ui::state::State;
use crate::ui::state::line::LineSection;
use bench::BenchPaper;
use changeover::ChangeoverPaper;
use leptos::prelude::*;
use line_check::LineCheckPaper;
use mixing::MixingPaper;
use next_print::{NextPrint, PageDocuments, PrintScope};
use not_valid::NothingPaper;
use pump_settings::PumpSettingsPaper;
use recipe::RecipePaper;
use settings_table::SettingsTablePaper;
use tanks::TanksPaper;

/// From now on the browser prints documents made for paper, where the page that is open has some.
pub fn on_print(state: State) {
    let next = NextPrint::new();
    provide_context(next);
    let documents = move || {
        provide_context(state);
        let scope = next.take();
        let inside = next.documents().map(|documents| documents(state, scope));
        view! { <div class="paper">{inside}</div> }.into_any()
    };
    print::on_print(move || next.documents().is_some(), documents);
}

/// Says what the page that is being made prints, until it is gone. A page that says nothing prints as it is.
pub fn prints(documents: PageDocuments) {
    let next = expect_context::<NextPrint>();
    next.set_documents(Some(documents));
    on_cleanup(move || next.set_documents(None));
}

/// The recipe's one page.
pub fn recipe_documents(_: State, _: PrintScope) -> AnyView {
    view! { <RecipePaper/> }.into_any()
}

/// The mixing card.
pub fn mixing_documents(_: State, _: PrintScope) -> AnyView {
    view! { <MixingPaper/> }.into_any()
}

/// What the open tab of the Bench page prints.
pub fn bench_documents(_: State, _: PrintScope) -> AnyView {
    view! { <BenchPaper/> }.into_any()
}

/// What the open tab of the Line page prints, or a part of it.
pub fn line_documents(state: State, scope: PrintScope) -> AnyView {
    match (LineSection::at(state.line.section.get_untracked()), scope) {
        (LineSection::Sheet, PrintScope::Page) => {
            view! { <PumpSettingsPaper/> <SettingsTablePaper follows=true/> }.into_any()
        }
        (LineSection::Sheet, PrintScope::SettingsTable) => view! { <SettingsTablePaper/> }.into_any(),
        (LineSection::Running, _) => view! { <LineCheckPaper/> }.into_any(),
        (LineSection::Pumps, _) => {
            view! { <NothingPaper kind=t!("line-tab-pumps") why=t!("paper-no-pumps-sheet")/> }.into_any()
        }
        (LineSection::Tanks, _) => view! { <TanksPaper/> }.into_any(),
        (LineSection::Change, _) => view! { <ChangeoverPaper/> }.into_any(),
    }
}
