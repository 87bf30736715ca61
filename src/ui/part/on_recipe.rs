//! Going to the recipe page.

use crate::browser::hash;
use crate::ui::route::Page;
use crate::ui::state::State;
use leptos::prelude::*;

/// Goes to the recipe and acts there once it is shown.
pub fn on_recipe(state: State, act: impl FnOnce() + 'static) {
    if state.page.get_untracked() == Page::Recipe {
        act();
    } else {
        state.page.set(Page::Recipe);
        hash::go(Page::Recipe.key());
        request_animation_frame(act);
    }
}
