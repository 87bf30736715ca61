//! All questions of the tab, with their answers.

use super::{break_even, input};
use crate::t;
use crate::ui::page::compare::context::CompareContext;
use crate::ui::text::Message;
use leptos::prelude::*;

/// Everything that was asked for, with its answer.
pub fn asked(context: CompareContext) -> Vec<(String, Message)> {
    let said = |what: String| Message { what, fix: String::new() };
    let hours = context.hours.get().map_or_else(|| "–".to_owned(), |hours| hours.to_string());
    let mut all = vec![(t!("compare-hours"), said(hours))];
    let typed = context.state.compare.typed.get();
    match input::answered(context, &typed.solve) {
        Some(Ok(answered)) => all.push((answered.question, answered.message)),
        Some(Err(question)) => all.push((question, said(t!("compare-target-missing")))),
        None => {}
    }
    if let Some(Some(answered)) = break_even::answered(context, &typed.break_even) {
        all.push((answered.question, answered.message));
    }
    all
}
