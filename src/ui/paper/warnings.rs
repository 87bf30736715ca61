//! The warnings, first of all on a page.

use crate::domain::Grade;
use crate::t;
use crate::ui::components::{Mark, SlotLine};
use crate::ui::page::line::lines::common_lines;
use crate::ui::state::State;
use leptos::prelude::*;

/// One thing to say.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PaperLine {
    /// How grave.
    pub grade: Grade,
    /// In words.
    pub words: String,
}

impl From<SlotLine> for PaperLine {
    fn from(line: SlotLine) -> Self {
        Self { grade: line.grade, words: line.words }
    }
}

/// The box: how many errors and warnings there are, and each; notes below them in smaller letters.
#[component]
pub fn Warnings(
    /// All there is to say.
    lines: Vec<PaperLine>,
) -> impl IntoView {
    let mut lines = lines;
    lines.sort_by_key(|line| line.grade);
    let count = |grade: Grade| lines.iter().filter(|line| line.grade == grade).count();
    let (errors, warnings) = (count(Grade::Stop), count(Grade::Unusual));
    let counted = [
        (errors > 0).then(|| t!("paper-errors", count = errors)),
        (warnings > 0).then(|| t!("paper-warnings", count = warnings)),
    ];
    let title = counted.into_iter().flatten().collect::<Vec<_>>().join(" · ");
    let is_none = title.is_empty();
    let title = if is_none { t!("common-no-warnings") } else { title };
    let line = |PaperLine { grade, words }: PaperLine| {
        view! { <li class:note=grade == Grade::Note><Mark grade=grade/> " " {words}</li> }
    };
    view! {
        <section class="print-warnings" class:none=is_none>
            <b>{title}</b>
            <ul>{lines.into_iter().map(line).collect_view()}</ul>
        </section>
    }
}

/// What is said about the recipe, and which revision is released.
pub fn recipe_lines(state: State) -> Vec<PaperLine> {
    let mut said = state.said(|_| true);
    said.sort_by_key(|said| said.finding.weight());
    let line = |said: crate::ui::state::Said| PaperLine {
        grade: said.finding.grade,
        words: format!("{} {}", said.message.what, said.message.fix),
    };
    common_lines(state).into_iter().map(PaperLine::from).chain(said.into_iter().map(line)).collect()
}
