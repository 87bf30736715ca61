//! The recipe as solved, and the words' context, for the parts of the page.

use crate::domain::Draft;
use crate::domain::line::{CheckedLine, LineBook, on_line};
use crate::ui::state::State;
use crate::ui::text::LineContext;
use leptos::reactive::prelude::*;

/// What words of the line need; follows every change.
pub fn with_context<T>(state: State, act: impl FnOnce(&LineContext<'_>) -> T) -> T {
    state.with_context(|plain| state.line.book(|book| act(&LineContext { plain: *plain, book })))
}

/// Something of the recipe as solved, with its line; `None` without a result or a fibre flow. Follows all of it.
pub fn solved<T>(
    state: State,
    act: impl FnOnce(&Draft, &crate::domain::Case, &CheckedLine, &LineBook) -> T,
) -> Option<T> {
    state.shown.with(|shown| {
        let case = on_line(shown.case.as_ref()).ok()?;
        Some(
            state
                .draft
                .with(|draft| state.line.checked.with(|line| state.line.book(|book| act(draft, case, line, book)))),
        )
    })
}
