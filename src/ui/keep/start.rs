//! What is there when the app starts.

use super::{Origin, Trouble};
use crate::browser::{LocalStore, locale};
use crate::domain::example;
use crate::domain::mix::MixDraft;
use crate::record::open_draft::OpenDraft;
use crate::record::revision::Title;
use crate::record::shelf::{SETTINGS, Unread};
use crate::record::{Settings, Shelf, Store};
use crate::ui::state::State;
use crate::ui::text::ENGLISH;

/// What was kept when the app was last used. Records are not among it: they are read when somebody
/// asks for them.
pub struct Start {
    pub(super) shelf: Shelf<LocalStore>,
    pub(super) origin: Option<Origin>,
    pub(super) mix: MixDraft,
    pub(super) trouble: Option<Trouble>,
    settings: Settings,
    open: OpenDraft,
}

/// Reads what was kept. What cannot be read is told, and what stands at a first start takes its
/// place.
#[must_use]
pub fn read() -> Start {
    let mut shelf = Shelf::unread(LocalStore);
    // The gravest last: it is the one that is told.
    let mut trouble = None;
    let settings = match shelf.settings() {
        Ok(settings) => settings,
        Err(Unread::Store(_)) => Settings::default(),
        Err(unread) => {
            trouble = Some(Trouble::Settings(unread));
            Settings::default()
        }
    };
    let open = match shelf.open_draft() {
        Ok(Some(open)) => open,
        Ok(None) | Err(Unread::Store(_)) => first(),
        Err(unread) => {
            trouble = Some(Trouble::Draft(unread));
            first()
        }
    };
    // What cannot be read here is set aside when something is typed, and shown on the shelf.
    let mix = shelf.mix().unwrap_or_default();
    if let Err(error) = LocalStore.probe() {
        trouble = Some(Trouble::Store(error));
    }
    let origin = open.from.and_then(|from| shelf.look_up(from)).map(|revision| Origin::of(&revision));
    Start { settings: with_mark(settings, &shelf), shelf, origin, mix, trouble, open }
}

/// Until somebody chose, numbers have the decimal mark of the browser's language.
fn with_mark(mut settings: Settings, shelf: &Shelf<LocalStore>) -> Settings {
    if shelf.store().read(SETTINGS).is_ok_and(|there| there.is_none()) {
        settings.units.mark = locale::decimal_mark();
    }
    settings
}

/// What a first start shows.
fn first() -> OpenDraft {
    let words = &ENGLISH.recipe_page;
    let title = Title { name: words.example_name.to_owned(), note: words.example_note.to_owned(), tags: Vec::new() };
    OpenDraft { from: None, title, draft: example(), example: true }
}

impl Start {
    /// The state of the app with it.
    #[must_use]
    pub fn state(&self) -> State {
        let OpenDraft { title, draft, example, .. } = self.open.clone();
        State::new(self.settings.clone(), draft, title, example)
    }
}
