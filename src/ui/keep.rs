//! Keeping: what is on the page survives a reload, and a recipe is saved as a revision.

use super::state::{Library, State};
use super::text::{ENGLISH, Message};
use crate::browser::{LocalStore, clock, event, locale};
use crate::domain::Draft;
use crate::domain::example::example;
use crate::record::open_draft::OpenDraft;
use crate::record::revision::{Stamp, Title};
use crate::record::shelf::{SETTINGS, SaveError};
use crate::record::store::MemoryStore;
use crate::record::{Revision, RevisionId, Settings, Shelf, Store, StoreError};
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use std::time::Duration;

/// What is typed is kept when nothing more was typed for so long. Leaving the page keeps it at once.
const PAUSE: Duration = Duration::from_millis(400);

/// The app as it was left, or the example at a first start.
#[must_use]
pub fn start() -> State {
    let words = &ENGLISH;
    let (shelf, mut trouble) = library();
    let settings = match first_settings(&shelf) {
        Some(settings) => settings,
        None => shelf.settings().unwrap_or_else(|why| {
            trouble.get_or_insert((words.unread)(&why));
            Settings::default()
        }),
    };
    let open = match shelf.open_draft() {
        Ok(Some(open)) => open,
        Ok(None) => taught(),
        Err(why) => {
            trouble.get_or_insert((words.unread)(&why));
            taught()
        }
    };
    State::new(shelf, settings, open, trouble)
}

/// The example.
#[must_use]
pub fn taught() -> OpenDraft {
    let words = &ENGLISH.recipe_page;
    let title = Title { name: words.example_name.to_owned(), note: words.example_note.to_owned(), tags: Vec::new() };
    OpenDraft { from: None, title, draft: example(), example: true }
}

/// A blank recipe.
#[must_use]
pub fn blank() -> OpenDraft {
    OpenDraft { from: None, title: Title::default(), draft: Draft::default(), example: false }
}

/// The browser's storage; where it is blocked, a memory that lasts as long as the page, and why.
fn library() -> (Library, Option<Message>) {
    let open = |store: Box<dyn Store + Send + Sync>| Shelf::open(store);
    let opened = LocalStore.probe().and_then(|()| open(Box::new(LocalStore)));
    let why: StoreError = match opened {
        Ok(shelf) => return (shelf, None),
        // What is stored can still be read.
        Err(StoreError::Full) => match open(Box::new(LocalStore)) {
            Ok(shelf) => return (shelf, Some((ENGLISH.store)(&StoreError::Full))),
            Err(why) => why,
        },
        Err(why) => why,
    };
    let memory: Box<dyn Store + Send + Sync> = Box::new(MemoryStore::default());
    (Shelf::blank(memory), Some((ENGLISH.store)(&why)))
}

/// The settings of a first start: the decimal mark of the browser's language. `None` later on.
fn first_settings(shelf: &Library) -> Option<Settings> {
    let stored = shelf.store().read(SETTINGS).ok()?;
    let mut settings = Settings::default();
    settings.units.mark = locale::decimal_mark();
    stored.is_none().then_some(settings)
}

/// Keeps what is on the page, and the settings, whenever they change; takes in what other tabs save.
pub fn keep(state: State) {
    let open = Memo::new(move |_| {
        state.draft.track();
        state.title.track();
        state.from.track();
        state.example.track();
        state.at_hand()
    });
    Effect::new(move |before: Option<Option<TimeoutHandle>>| {
        open.track();
        let first = before.is_none();
        if let Some(handle) = before.flatten() {
            handle.clear();
        }
        if first { None } else { set_timeout_with_handle(move || keep_open(state), PAUSE).ok() }
    });
    if let Some(listeners) = event::on_leave(move || keep_open(state)) {
        listeners.into_iter().for_each(event::Listener::forget);
    }
    Effect::new(move |before: Option<()>| {
        let settings = state.settings.get();
        if before.is_some() {
            let kept = state.shelf.with_untracked(|shelf| shelf.keep_settings(&settings));
            note(state, kept);
        }
    });
    if let Some(listener) = event::on_storage(move |_| {
        // A store that has gone meanwhile is said when something is next kept there.
        state.shelf.update(|shelf| _ = shelf.refresh());
    }) {
        listener.forget();
    }
}

fn keep_open(state: State) {
    let open = state.at_hand();
    let kept = state.shelf.with_untracked(|shelf| shelf.keep_draft(&open));
    note(state, kept);
}

/// Puts down what went wrong, or that all is well again.
fn note<T>(state: State, outcome: Result<T, SaveError>) -> Option<T> {
    match outcome {
        Ok(value) => {
            if state.trouble.with_untracked(Option::is_some) {
                state.trouble.set(None);
            }
            Some(value)
        }
        Err(why) => {
            let message = (state.words.unsaved)(&why);
            if state.trouble.with_untracked(|trouble| trouble.as_ref() != Some(&message)) {
                state.trouble.set(Some(message));
            }
            None
        }
    }
}

impl State {
    /// Who saves, and when.
    #[must_use]
    pub fn stamp(&self) -> Stamp {
        Stamp { at: clock::now(), author: self.settings.with_untracked(|settings| settings.initials.clone()) }
    }

    /// Saves the recipe as a revision that follows the one it came from; whether that went well.
    pub fn save(&self) -> bool {
        let OpenDraft { from, title, draft, .. } = self.at_hand();
        let stamp = self.stamp();
        let base = from.and_then(|id| self.shelf.with_untracked(|shelf| shelf.revision(id)));
        let revision = match base {
            Some(base) => base.next(title, draft, stamp),
            None => Revision::first(title, draft, stamp),
        };
        let saved = match revision {
            Ok(revision) => self.change_shelf(|shelf| shelf.save(revision)),
            Err(error) => note(*self, Err(SaveError::from(error))),
        };
        let Some(id) = saved else { return false };
        self.from.set(Some(id));
        self.example.set(false);
        true
    }

    /// Does something with what is kept, and says what went wrong; `None` then.
    pub fn change_shelf<T>(&self, change: impl FnOnce(&mut Library) -> Result<T, SaveError>) -> Option<T> {
        let outcome = self.shelf.try_update(change)?;
        note(*self, outcome)
    }

    /// Puts a saved recipe on the page; whether it is there.
    pub fn open_revision(&self, id: RevisionId) -> bool {
        let Some(revision) = self.shelf.with_untracked(|shelf| shelf.revision(id)) else { return false };
        let draft = revision.content().draft.clone();
        self.open(OpenDraft { from: Some(id), title: revision.title(), draft, example: false });
        true
    }

    /// Whether the recipe is just as it was saved.
    #[must_use]
    pub fn saved(&self) -> Memo<bool> {
        let state = *self;
        // Read once a revision, not once a key.
        let base = Memo::new(move |_| {
            let id = state.from.get()?;
            state.shelf.with(|shelf| shelf.revision(id)).map(|base| (base.title(), base.content().draft.clone()))
        });
        Memo::new(move |_| {
            base.with(|base| match base {
                Some((title, draft)) => state.title.with(|now| now == title) && state.draft.with(|now| now == draft),
                None => false,
            })
        })
    }
}
