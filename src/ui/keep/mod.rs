//! Keeping: what is on the page is kept as it is typed, each save is a revision that never changes,
//! and whatever the store refuses is told at once.

mod shelf;
mod start;
mod systems;
mod watch;

pub use shelf::Imported;
pub use start::{Start, read};

use super::part::find::on_recipe;
use super::state::State;
use crate::browser::{LocalStore, clock, file, page};
use crate::domain::Draft;
use crate::domain::mix::MixDraft;
use crate::record::file::RecipeFile;
use crate::record::open_draft::OpenDraft;
use crate::record::revision::{Stamp, Standing, Title};
use crate::record::shelf::{SaveError, Unread};
use crate::record::{Revision, RevisionId, Shelf, StoreError};
use leptos::prelude::*;
use std::collections::BTreeMap;

/// The media type of every file that is given out.
const JSON: &str = "application/json";
/// Behind the name of a recipe file.
const ENDING: &str = "haulm.json";

/// What an opened recipe was when it was last saved.
#[derive(Clone, PartialEq)]
struct Origin {
    revision: RevisionId,
    saved_at: u64,
    kept: bool,
    draft: Draft,
    title: Title,
}

impl Origin {
    fn of(revision: &Revision) -> Self {
        let content = revision.content();
        Self {
            revision: revision.revision(),
            saved_at: content.saved_at,
            kept: content.standing == Standing::Kept,
            draft: content.draft.clone(),
            title: revision.title(),
        }
    }
}

/// How what is on the page stands to what is on the shelf.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Saved {
    /// It is not on the shelf.
    Not,
    /// It is there as it stands here, saved at that time.
    AsItIs(u64),
    /// It has changed since it was saved at that time.
    Before(u64),
}

/// What went wrong with the store.
#[derive(Debug, Clone, PartialEq)]
pub enum Trouble {
    /// The store itself.
    Store(StoreError),
    /// Something was not saved.
    Unsaved(SaveError),
    /// What was on the page before cannot be read.
    Draft(Unread),
    /// The settings cannot be read.
    Settings(Unread),
    /// Records that this tab knows are gone.
    Missing(usize),
}

/// What keeps, handed to every part.
#[derive(Clone, Copy)]
pub struct Keep {
    state: State,
    shelf: StoredValue<Shelf<LocalStore>>,
    records_read: StoredValue<bool>,
    /// Told each time that something on the shelf may have changed.
    changed: Trigger,
    /// What each opening was made from, by its name.
    origins: RwSignal<BTreeMap<u32, Origin>>,
    /// How what is on the page stands to what is on the shelf.
    pub saved: Memo<Saved>,
    /// What went wrong last, until it is mended or closed.
    pub trouble: RwSignal<Option<Trouble>>,
    /// Whether a save waits for the recipe's name.
    pub naming: RwSignal<bool>,
    /// What is typed where solutions and glues are made up.
    pub mix: RwSignal<MixDraft>,
}

/// Takes up keeping with what [`read`] found, and hands it to all parts below.
pub fn provide(state: State, start: Start) {
    let Start { shelf, origin, mix, trouble, .. } = start;
    let origins = RwSignal::new(origin.map(|origin| (state.opened.get_untracked(), origin)).into_iter().collect());
    let saved = Memo::new(move |_| {
        origins.with(|origins: &BTreeMap<u32, Origin>| match origins.get(&state.opened.get()) {
            Some(origin) if origin.kept => {
                let same = state.draft.with(|draft| *draft == origin.draft)
                    && state.title.with(|title| *title == origin.title);
                if same { Saved::AsItIs(origin.saved_at) } else { Saved::Before(origin.saved_at) }
            }
            Some(_) | None => Saved::Not,
        })
    });
    let keep = Keep {
        state,
        shelf: StoredValue::new(shelf),
        records_read: StoredValue::new(false),
        changed: Trigger::new(),
        origins,
        saved,
        trouble: RwSignal::new(trouble),
        naming: RwSignal::new(false),
        mix: RwSignal::new(mix),
    };
    provide_context(keep);
    watch::watch(keep);
}

/// What [`provide`] put there.
#[must_use]
pub fn keep() -> Keep {
    expect_context::<Keep>()
}

impl Keep {
    fn stamp(&self) -> Stamp {
        let initials = self.state.settings.with_untracked(|settings| settings.initials.trim().to_owned());
        Stamp { at: clock::now(), author: initials }
    }

    /// The revision that what is on the page was opened from or last saved as.
    #[must_use]
    pub fn on_page(&self) -> Option<RevisionId> {
        let opened = self.state.opened.get();
        self.origins.with(|origins| origins.get(&opened).map(|origin| origin.revision))
    }

    fn on_page_untracked(&self) -> Option<RevisionId> {
        untrack(|| self.on_page())
    }

    /// What is on the page now was made from `revision`, or is it.
    fn set_origin(&self, revision: &Revision) {
        let opened = self.state.opened.get_untracked();
        self.origins.update(|origins| _ = origins.insert(opened, Origin::of(revision)));
    }

    /// Acts on the shelf; what went wrong is told. `None` then.
    fn act<T>(&self, act: impl FnOnce(&mut Shelf<LocalStore>) -> Result<T, SaveError>) -> Option<T> {
        match self.shelf.try_update_value(act)? {
            Ok(done) => {
                self.mended();
                self.changed.notify();
                Some(done)
            }
            Err(error) => {
                self.trouble.set(Some(Trouble::Unsaved(error)));
                None
            }
        }
    }

    // --- what is on the page -------------------------------------------------------------------

    /// Saves what is on the page as a revision. Without a name it asks for one, at the name's box.
    pub fn save(&self) {
        let state = self.state;
        if self.saved.get_untracked().is_as_it_is() {
            state.tell(state.words.tools.nothing_to_save);
            return;
        }
        let mut title = state.title.get_untracked();
        title.name = title.name.trim().to_owned();
        self.naming.set(title.name.is_empty());
        if title.name.is_empty() {
            on_recipe(state, || page::focus(super::part::save::NAME));
            return;
        }
        let draft = state.draft.get_untracked();
        let (from, stamp) = (self.on_page_untracked(), self.stamp());
        let saved = self.act(|shelf| {
            // A revision that is gone has nothing to follow; the work is saved all the same.
            let revision = match from.and_then(|from| shelf.look_up(from)) {
                Some(before) => before.follow(stamp, |content| {
                    (content.name, content.note, content.tags) =
                        (title.name.clone(), title.note.clone(), title.tags.clone());
                    content.draft = draft;
                    content.standing = Standing::Kept;
                })?,
                None => Revision::first(title.clone(), draft, stamp)?,
            };
            shelf.save(revision.clone())?;
            Ok(revision)
        });
        if let Some(revision) = saved {
            if state.title.with_untracked(|shown| shown.name != title.name) {
                state.title.update(|shown| shown.name.clone_from(&title.name));
            }
            self.set_origin(&revision);
            self.keep_draft();
        }
    }

    /// What is on the page, to be there again after a reload.
    fn open_draft(&self) -> OpenDraft {
        OpenDraft {
            from: self.on_page_untracked(),
            title: self.state.title.get_untracked(),
            draft: self.state.draft.get_untracked(),
            example: self.state.example.get_untracked(),
        }
    }

    /// Keeps what is on the page.
    fn keep_draft(&self) {
        let draft = self.open_draft();
        self.overwrite(|shelf| shelf.keep_draft(&draft));
    }

    /// Overwrites one of the texts that are no records. A store that works again ends the trouble.
    fn overwrite(&self, write: impl FnOnce(&Shelf<LocalStore>) -> Result<(), SaveError>) {
        let Some(outcome) = self.shelf.try_with_value(write) else { return };
        match outcome {
            Ok(()) => self.mended(),
            Err(error) => {
                let trouble = Some(Trouble::Unsaved(error));
                if self.trouble.with_untracked(|before| *before != trouble) {
                    self.trouble.set(trouble);
                }
            }
        }
    }

    /// The store works again.
    fn mended(&self) {
        if self.trouble.with_untracked(|before| matches!(before, Some(Trouble::Store(_) | Trouble::Unsaved(_)))) {
            self.trouble.set(None);
        }
    }

    /// Saves what is on the page to a file.
    pub fn give_out(&self) {
        let OpenDraft { from, title, draft, .. } = self.open_draft();
        self.give_out_file(&RecipeFile::new(title, draft, from));
    }

    fn give_out_file(&self, recipe: &RecipeFile) {
        let given = recipe.text().map_err(SaveError::from).and_then(|text| {
            let name = file::file_name(&recipe.name, ENDING);
            let outcome = file::give_out(&name, JSON, &text);
            outcome.map(|()| name).map_err(|own| SaveError::Store(StoreError::Other(own)))
        });
        match given {
            Ok(name) => {
                self.state.tell((self.state.words.shelf_page.given_out)(&name));
                let now = clock::now();
                self.state.settings.update(|settings| settings.copied_at = Some(now));
            }
            Err(error) => self.trouble.set(Some(Trouble::Unsaved(error))),
        }
    }
}

impl Saved {
    const fn is_as_it_is(self) -> bool {
        matches!(self, Self::AsItIs(_))
    }
}
