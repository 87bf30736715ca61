//! The name of a page.

use crate::t;
use crate::ui::route::Page;

/// The name of a page.
#[must_use]
pub fn page_name(page: Page) -> String {
    match page {
        Page::Recipe => t!("recipe-title"),
        Page::Line => t!("line-title"),
        Page::Bench => t!("bench-title"),
        Page::Compare => t!("compare-title"),
        Page::Mixing => t!("mixing-title"),
        Page::Systems => t!("library-systems"),
        Page::Trials => t!("library-trials"),
        Page::Library => t!("library-title"),
        Page::Help => t!("help-title"),
    }
}
