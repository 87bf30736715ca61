//! The name of a page.

use crate::ui::route::Page;
use crate::ui::text::Words;

/// The name of a page.
#[must_use]
pub const fn page_name(words: &Words, page: Page) -> &'static str {
    match page {
        Page::Recipe => words.tools.recipe,
        Page::Line => words.tools.line,
        Page::Bench => words.tools.bench,
        Page::Compare => words.tools.compare,
        Page::Mix => words.tools.mix,
        Page::Systems => words.tools.systems,
        Page::Library => words.tools.library,
        Page::Help => words.tools.help,
    }
}
