//! The lines of the warning slot: what was found about each system, and what makes the comparison unfair.

use super::context::CompareContext;
use super::message::grade_word;
use crate::browser::page;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::{Finding, Grade, Place};
use crate::ui::components::SlotLine;
use crate::ui::part::on_recipe::on_recipe;
use crate::ui::text::{Message, words};
use leptos::prelude::*;

/// All there is to say, the gravest first.
pub fn lines(context: CompareContext) -> Vec<SlotLine> {
    let state = context.state;
    let line = |grade: Grade, words: String, show: Option<Callback<()>>| SlotLine {
        grade,
        word: grade_word(grade),
        words,
        show,
    };
    let said = |message: Message| format!("{} {}", message.what, message.fix);
    context.shown.with(|shown| {
        let side = match &shown.side {
            Ok(side) => side,
            Err(error) => return vec![line(Grade::Stop, said(words::compare::not_side_by_side(*error)), None)],
        };
        let mut all: Vec<((Grade, bool), SlotLine)> = Vec::new();
        for difference in side.differences.iter().filter(|difference| !difference.is_fair()) {
            let message = state.with_context(|context| words::compare::difference(difference, &shown.systems, context));
            all.push(((Grade::Unusual, false), line(Grade::Unusual, said(message), None)));
        }
        for (at, system) in shown.systems.iter().enumerate() {
            let name = shown.name(at);
            let is_open = shown.keys.get(at) == Some(&SystemChoice::OpenRecipe);
            for finding in &system.outcome.findings {
                let message = context.with_draft(&system.draft, |context| words::finding(finding, context));
                let show = is_open.then(|| go(context, finding)).flatten();
                all.push((finding.weight(), line(finding.grade, format!("{name}: {}", said(message)), show)));
            }
        }
        all.sort_by_key(|(weight, _)| *weight);
        let mut lines: Vec<SlotLine> = all.into_iter().map(|(_, line)| line).collect();
        lines.dedup_by(|one, other| one.words == other.words);
        lines
    })
}

/// Goes to the box of the open recipe.
fn go(context: CompareContext, finding: &Finding) -> Option<Callback<()>> {
    let Place::Field(field) = finding.place else { return None };
    Some(Callback::new(move |()| on_recipe(context.state, move || page::focus_field(&field.key()))))
}
