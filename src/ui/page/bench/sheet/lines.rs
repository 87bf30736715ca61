//! What there is to say about the weigh sheet, as lines of the warning slot, and the way to where each belongs.

use super::boxes::SheetBox;
use super::context::WeighContext;
use super::recovery::recovered;
use crate::browser::{hash, page};
use crate::domain::recipe::finding::What;
use crate::domain::trial::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::{Entry, Grade};
use crate::t;
use crate::ui::components::SlotLine;
use crate::ui::page::bench::tab::SERIES;
use crate::ui::route::Page;
use crate::ui::state::State;
use leptos::prelude::*;

/// The fold of the laboratory.
pub const LAB: &str = "lab-setup";
/// The fold of the furnish recovered.
pub const RECOVERED: &str = "recovered";

/// A grade in a word.
pub fn word(grade: Grade) -> String {
    match grade {
        Grade::Stop => t!("common-error"),
        Grade::Unusual => t!("common-warning"),
        Grade::Note => t!("common-note"),
    }
}

/// All there is to say.
pub fn lines(sheet: WeighContext) -> Vec<SlotLine> {
    let state = sheet.desk.state;
    let (_, of_recovery) = recovered(sheet);
    sheet.desk.made.with(|made| {
        sheet.desk.weighing.with(|weighing| {
            let of_batch = weighing.iter().flat_map(|weighing| &weighing.findings);
            let all = made.findings.iter().chain(of_batch).chain(&of_recovery);
            let told = all.filter(|finding| !is_to_fill_in(state, finding)).map(|finding| {
                let message = sheet.desk.message(finding, &made.recipe, &made.typed);
                let words = format!("{} {}", message.what, message.fix);
                SlotLine { grade: finding.grade, word: word(finding.grade), words, show: way_to(state, finding) }
            });
            told.collect()
        })
    })
}

/// Whether a finding only says that a box that nobody has touched is blank: the page asks for it where the table will be.
fn is_to_fill_in(state: State, finding: &TrialFinding) -> bool {
    let TrialPlace::Field(field) = finding.place else { return false };
    let untouched = || state.bench.open.with(|open| Entry::is_blank(open.trial.sheet.entry(field)));
    finding.what == TrialProblem::Entry(What::Missing) && untouched()
}

/// The way to where a finding belongs.
fn way_to(state: State, finding: &TrialFinding) -> Option<Callback<()>> {
    match finding.place {
        TrialPlace::Field(field) => {
            let fold = field.is_of_lab().then_some(LAB);
            Some(Callback::new(move |()| go_to(SheetBox::Field(field), fold)))
        }
        TrialPlace::Line(id) => Some(Callback::new(move |()| go_to(SheetBox::Weighed(id), None))),
        TrialPlace::Recovery(field) => {
            Some(Callback::new(move |()| go_to(SheetBox::Recovered(field), Some(RECOVERED))))
        }
        TrialPlace::Recipe(_) => Some(Callback::new(move |()| {
            state.page.set(Page::Recipe);
            hash::go(Page::Recipe.key());
            page::focus("content");
        })),
        TrialPlace::Series(_) | TrialPlace::Design => Some(Callback::new(move |()| state.bench.section.set(SERIES))),
        TrialPlace::Sheet | TrialPlace::Board(..) | TrialPlace::Property(_) => None,
    }
}

/// Goes to a box, and opens the fold that it is in. What is in a fold is made when that opens.
fn go_to(which: SheetBox, fold: Option<&'static str>) {
    if let Some(fold) = fold {
        page::unfold_by_id(fold);
    }
    request_animation_frame(move || request_animation_frame(move || page::focus_field(&which.key())));
}
