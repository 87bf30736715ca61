//! The recipe on the page as a link.

use super::State;
use crate::record::document::open_draft::OpenDraft;
use crate::record::file::recipe::RecipeFile;
use leptos::prelude::*;

/// A link with what it was made of: it comes a moment after the recipe, since the browser packs it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RecipeLink {
    /// The address.
    pub address: String,
    /// The recipe's text that is in it.
    pub text: String,
}

impl State {
    /// The recipe on the page as the text of a link; `None` where it has none. Follows no change.
    #[must_use]
    pub fn link_text(&self) -> Option<String> {
        let OpenDraft { title, draft, .. } = self.current_recipe();
        RecipeFile::new(title, draft, None).slim().ok()
    }

    /// The address of the recipe as it is now; `None` while the link is still that of an earlier one.
    #[must_use]
    pub fn present_link(&self) -> Option<String> {
        let link = self.link.get_untracked()?;
        (self.link_text().as_ref() == Some(&link.text)).then_some(link.address)
    }
}
