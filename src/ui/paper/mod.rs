//! What goes on paper: a document of its own for each page and tab, made when the browser prints.

mod bench;
mod changeover;
mod context;
mod doses;
mod end;
mod inputs;
mod key_figures;
mod line_check;
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
use crate::ui::route::Page;
use crate::ui::state::State;
use crate::ui::state::line::LineSection;
use bench::BenchPaper;
use changeover::ChangeoverPaper;
use leptos::prelude::*;
use line_check::LineCheckPaper;
use next_print::{NextPrint, PrintScope};
use not_valid::NothingPaper;
use pump_settings::PumpSettingsPaper;
use recipe::RecipePaper;
use settings_table::SettingsTablePaper;
use tanks::TanksPaper;

/// From now on the browser prints documents made for paper.
pub fn on_print(state: State) {
    let next = NextPrint::new();
    provide_context(next);
    let documents = move || {
        provide_context(state);
        documents(state, next.take())
    };
    print::on_print(move || has_documents(state.page.get_untracked()), documents);
}

/// Whether a page has documents of its own. Another page prints as it is.
fn has_documents(page: Page) -> bool {
    matches!(page, Page::Recipe | Page::Line | Page::Bench)
}

fn documents(state: State, scope: PrintScope) -> AnyView {
    let inside = match state.page.get_untracked() {
        Page::Recipe => view! { <RecipePaper/> }.into_any(),
        Page::Line => line_documents(state, scope),
        Page::Bench => view! { <BenchPaper/> }.into_any(),
        Page::Compare | Page::Mixing | Page::Systems | Page::Trials | Page::Library | Page::Help => ().into_any(),
    };
    view! { <div class="paper">{inside}</div> }.into_any()
}

fn line_documents(state: State, scope: PrintScope) -> AnyView {
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
