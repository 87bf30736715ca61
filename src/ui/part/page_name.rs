//! The name of a page.

use crate::t;
use crate::ui::route::Page;
use crate::ui::text::Words;

/// The name of a page.
#[must_use]
pub fn page_name(words: &Words, page: Page) -> String {
    match page {
        Page::Recipe => words.tools.recipe.to_owned(),
        Page::Line => words.tools.line.to_owned(),
        Page::Bench => words.tools.bench.to_owned(),
        Page::Compare => words.tools.compare.to_owned(),
        Page::Mixing => t!("mixing-title"),
        Page::Systems => t!("library-systems"),
        Page::Trials => t!("library-trials"),
        Page::Library => t!("library-title"),
        Page::Help => t!("help-title"),
    }
}
