//! The recipe on the page as a link, and the other way round.

use super::trouble::{settled, tell_message};
use crate::browser::{hash, link};
use crate::record::document::open_draft::OpenDraft;
use crate::record::file::recipe::RecipeFile;
use crate::ui::route::Page;
use crate::ui::state::recipe_link::RecipeLink;
use crate::ui::state::{About, State};
use crate::ui::text::{Carrier, words};
use crate::{t, told};
use leptos::prelude::*;
use leptos::task::spawn_local;

/// The recipe on the page as the text of a link; `None` where it has none.
fn link_text(state: State) -> Option<String> {
    let OpenDraft { title, draft, .. } = state.current_recipe();
    RecipeFile::new(title, draft, None).slim().ok()
}

/// The address of the recipe as it is now; `None` while the link is still that of an earlier one. Follows no change.
#[must_use]
pub fn present(state: State) -> Option<String> {
    let link = state.link.get_untracked()?;
    (link_text(state).as_ref() == Some(&link.text)).then_some(link.address)
}

/// Makes the link anew.
pub fn refresh(state: State) {
    spawn_local(async move {
        let link = match link_text(state) {
            Some(text) => link::with_text(&text).await.map(|address| RecipeLink { address, text }),
            None => None,
        };
        // The page may be gone meanwhile.
        _ = state.link.try_set(link);
    });
}

/// Puts the recipe of a link on the page, as one that is not saved yet. What it took the place of
/// comes back with Undo.
pub fn open(state: State, link: String) {
    spawn_local(async move {
        let read = match link::text_of(&link).await {
            Some(text) => RecipeFile::read_slim(&text).map_err(|refusal| words::refusal(&refusal, Carrier::Link)),
            None => Err(told!("record-no-link")),
        };
        // What is not saved is known only then.
        super::records::loaded(state).await;
        hash::replace(Page::Recipe.key());
        match read {
            Ok(recipe) => {
                settled(state, About::Import);
                let name = state.called(&recipe.name);
                state.open(OpenDraft {
                    from: None,
                    title: recipe.title(),
                    draft: recipe.draft,
                    remark: String::new(),
                    example: false,
                });
                state.page.set(Page::Recipe);
                state.tell_step(t!("record-opened-link", name = name));
            }
            Err(message) => tell_message(state, About::Import, message),
        }
    });
}
