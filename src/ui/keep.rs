//! Keeping: what is on the page survives a reload, a recipe is saved as a revision, and whatever the
//! store refuses is told at once.

mod bench;
pub mod link;
pub mod shared;
mod shelf;
mod systems;

pub use bench::{TrialTable, is_tied};
pub use shelf::Imported;

use super::part::find::on_recipe;
use super::part::save::NAME;
use super::state::{Library, State, Trouble, WayOut};
use super::text::{ENGLISH, Message};
use crate::browser::graph::TimeoutHandle;
use crate::browser::graph::spawn_local;
use crate::browser::graph::*;
use crate::browser::{LocalStore, Records, clock, event, file, locale, page, records};
use crate::domain::Draft;
use crate::domain::recipe::example::example;
use crate::record::bench::OPEN;
use crate::record::compare::COMPARE;
use crate::record::file::RecipeFile;
use crate::record::line::LINE;
use crate::record::open_draft::OpenDraft;
use crate::record::revision::{Stamp, Standing, Title};
use crate::record::shelf::{Changes, DRAFT, MIX, SETTINGS, SaveError, Unread};
use crate::record::two_stores::{LAST, ROOM};
use crate::record::{Revision, RevisionId, Settings, Shelf, Store, StoreError, TwoStores};
use crate::ui::signal::{Memo, effect, memo, when_settled};
use std::time::Duration;

/// What is typed is kept when nothing more was typed for so long. Leaving the page keeps it at once.
const PAUSE: Duration = Duration::from_millis(400);
/// How many records are read whole in one go.
const SLICE_OF_WHOLE: usize = 20;
/// Records are read for so many milliseconds at a time: a key typed meanwhile waits no longer.
const SLICE: u64 = 8;
/// Another tab may write several records in a row.
const SETTLED: Duration = Duration::from_millis(100);

// --- at the start --------------------------------------------------------------------------------

/// The app as it was left, or the example at a first start. The records are not read yet.
#[must_use]
pub fn start() -> State {
    let words = &ENGLISH;
    let mut shelf: Library = Shelf::blank(TwoStores::new(LocalStore, Records));
    let mut trouble = LocalStore.probe().err().map(|why| of_store(&why));
    let mut unread = |why: &Unread, mend: &str| {
        // What cannot be reached at all is told above.
        if !matches!(why, Unread::Store(_)) {
            let message = Message { mend: mend.to_owned(), ..(words.unread)(why) };
            trouble.get_or_insert(Trouble { message, way_out: None });
        }
    };
    let settings = match first_settings(&shelf) {
        Some(settings) => settings,
        None => shelf.settings().unwrap_or_else(|why| {
            unread(&why, words.shelf_page.settings_unread);
            Settings::default()
        }),
    };
    let open = match shelf.open_draft() {
        Ok(Some(open)) => open,
        Ok(None) => taught(),
        Err(why) => {
            unread(&why, words.shelf_page.draft_unread);
            taught()
        }
    };
    // Whether the recipe is as it was saved is shown before the other records are there.
    _ = open.from.and_then(|from| shelf.look_up(from));
    State::new(shelf, settings, open, trouble)
}

/// The example.
#[must_use]
pub fn taught() -> OpenDraft {
    let words = &ENGLISH.recipe_page;
    let title = Title { name: words.example_name.to_owned(), note: words.example_note.to_owned(), tags: Vec::new() };
    OpenDraft { from: None, title, draft: example(), remark: String::new(), example: true }
}

/// A blank recipe.
#[must_use]
pub fn blank() -> OpenDraft {
    OpenDraft { from: None, title: Title::default(), draft: Draft::default(), remark: String::new(), example: false }
}

/// The settings of a first start: the decimal mark of the browser's language. `None` later on.
fn first_settings(shelf: &Library) -> Option<Settings> {
    let stored = shelf.store().read(SETTINGS).ok()?;
    let mut settings = Settings::default();
    settings.units.mark = locale::decimal_mark();
    stored.is_none().then_some(settings)
}

/// Trouble with the store: what is on the page can still go to a file.
fn of_store(why: &StoreError) -> Trouble {
    Trouble { message: (ENGLISH.store)(why), way_out: Some(WayOut::ToFile) }
}

// --- while it runs -------------------------------------------------------------------------------

/// Keeps what is on the page, and the settings, whenever they change; takes in what other tabs save.
pub fn keep(state: State) {
    let open = memo(move || {
        state.draft.track();
        state.title.track();
        state.remark.track();
        state.from.track();
        state.example.track();
        state.at_hand()
    });
    // A memo that nobody reads would never be worked out.
    later(
        move || open.with(|_| ()),
        move || {
            keep_open(state);
            link::refresh(state);
        },
    );
    link::refresh(state);
    later(move || state.mix.track(), move || keep_mix(state));
    later(
        move || state.compare.typed.track(),
        move || {
            let typed = state.compare.typed.get_untracked();
            note(state, state.shelf.with_untracked(|shelf| shelf.keep_compare(&typed)));
        },
    );
    later(move || state.line.record.track(), move || keep_line(state));
    later(move || state.bench.open.track(), move || bench::keep_open(state));
    // Another tab may have kept its own since, and this page is what a reload brings back.
    if let Some(listeners) = event::on_leave(move || keep_all(state)) {
        listeners.into_iter().for_each(event::Listener::forget);
    }
    let mut read = state.settings.get_untracked();
    effect(move || {
        let settings = state.settings.get();
        if settings != read {
            let kept = state.shelf.with_untracked(|shelf| shelf.keep_settings(&settings));
            note(state, kept);
            read = settings;
        }
    });
    if let Some(listener) = event::on_newer(move || state.newer.set(true)) {
        listener.forget();
    }
    level(state);
    shared::follow(state);
    follow_other_tabs(state);
    set_timeout(move || read_in_slices(state), PAUSE);
}

/// Does something when what `track` follows has changed and then stood still for a while.
fn later(track: impl Fn() + 'static, act: impl Fn() + Copy + 'static) {
    when_settled(PAUSE, track, act);
}

fn keep_open(state: State) {
    let open = state.at_hand();
    let kept = state.shelf.with_untracked(|shelf| shelf.keep_draft(&open));
    note(state, kept);
}

fn keep_line(state: State) {
    let record = state.line.record.get_untracked();
    let kept = state.shelf.with_untracked(|shelf| shelf.keep_line(&record));
    note(state, kept);
}

/// The page is left: what was typed a moment ago is kept at once.
fn keep_all(state: State) {
    keep_open(state);
    bench::keep_open(state);
    let as_kept = state.shelf.with_untracked(Shelf::line);
    // Another tab's line stays unless something was typed here.
    if state.line.record.with_untracked(|record| !as_kept.is_ok_and(|kept| kept == *record)) {
        keep_line(state);
    }
}

/// Saves that the browser had not written to its quick store when it was killed come back to it, and
/// records move out of it when it fills.
fn level(state: State) {
    match state.shelf.with_untracked(|shelf| shelf.store().level(ROOM)) {
        Ok(0) => {}
        Ok(count) => state.tell((state.words.shelf_page.brought_back)(count)),
        Err(why) => _ = note(state, Err::<(), _>(SaveError::Store(why))),
    }
}

/// Keeps all that is open and goes on with the newer version. Where it cannot be kept, that is told and
/// everything stays.
pub fn use_newer(state: State) {
    keep_all(state);
    keep_mix(state);
    let lost =
        state.trouble.with_untracked(|told| told.as_ref().is_some_and(|told| told.way_out == Some(WayOut::ToFile)));
    if !lost {
        event::use_newer();
    }
}

fn keep_mix(state: State) {
    let mix = state.mix.get_untracked();
    let kept = state.shelf.with_untracked(|shelf| shelf.keep_mix(&mix));
    note(state, kept);
}

/// Puts down what went wrong, or that the store works again.
fn note<T>(state: State, outcome: Result<T, SaveError>) -> Option<T> {
    match outcome {
        Ok(value) => {
            let store = |trouble: &Trouble| trouble.way_out == Some(WayOut::ToFile);
            if state.trouble.with_untracked(|trouble| trouble.as_ref().is_some_and(store)) {
                state.trouble.set(None);
            }
            Some(value)
        }
        Err(why) => {
            let trouble = Some(Trouble { message: (state.words.unsaved)(&why), way_out: Some(WayOut::ToFile) });
            if state.trouble.with_untracked(|before| *before != trouble) {
                state.trouble.set(trouble);
            }
            None
        }
    }
}

/// Reads the records a few at a time, so that nothing waits for them.
fn read_in_slices(state: State) {
    match state.shelf.with_untracked(Shelf::waiting) {
        Ok(keys) => read_slice(state, keys),
        Err(why) => state.trouble.set(Some(of_store(&why))),
    }
}

fn read_slice(state: State, mut keys: Vec<String>) {
    if state.all_read.get_untracked() {
        return;
    }
    let began = clock::now();
    state.shelf.update_untracked(|shelf| {
        while let Some(key) = keys.pop() {
            shelf.take_in(key);
            if clock::now().saturating_sub(began) >= SLICE {
                break;
            }
        }
    });
    if keys.is_empty() {
        state.all_read.set(true);
        state.shelf.notify();
        verify_slice(state);
    } else {
        set_timeout(move || read_slice(state, keys), Duration::ZERO);
    }
}

/// Reads whole what was only glanced at, a few at a time: a record that was damaged shows itself.
fn verify_slice(state: State) {
    let before = state.shelf.with_untracked(|shelf| shelf.unreadable().count());
    let left = state.shelf.try_update_untracked(|shelf| shelf.verify(SLICE_OF_WHOLE)).unwrap_or_default();
    if state.shelf.with_untracked(|shelf| shelf.unreadable().count()) != before {
        state.shelf.notify();
    }
    if left > 0 {
        set_timeout(move || verify_slice(state), Duration::ZERO);
    }
}

fn follow_other_tabs(state: State) {
    let pending: StoredValue<Option<TimeoutHandle>> = StoredValue::new(None);
    let listener = event::on_storage(move |key| match key.as_deref() {
        Some(DRAFT | MIX | COMPARE | OPEN | LAST) => {}
        Some(LINE) => {
            if let Ok(record) = state.shelf.with_untracked(Shelf::line) {
                state.line.record.set(record);
            }
        }
        Some(SETTINGS) => {
            if let Ok(settings) = state.shelf.with_untracked(Shelf::settings) {
                state.settings.set(settings);
            }
        }
        Some(_) | None => {
            pending.with_value(|pending| pending.iter().for_each(TimeoutHandle::clear));
            pending.set_value(set_timeout_with_handle(move || refresh(state), SETTLED).ok());
        }
    });
    if let Some(listener) = listener {
        listener.forget();
    }
}

/// Another tab has saved, or cleared the store, or taken records out of the quick one.
fn refresh(state: State) {
    let found = state.shelf.try_update(Shelf::refresh);
    if !matches!(found, Some(Ok(changes)) if changes.missing > 0) {
        return refreshed(state, found);
    }
    spawn_local(async move {
        records::look_again().await;
        level(state);
        refreshed(state, state.shelf.try_update(Shelf::refresh));
    });
}

fn refreshed(state: State, found: Option<Result<Changes, StoreError>>) {
    match found {
        Some(Ok(changes)) => {
            state.all_read.set(true);
            let missing = |trouble: &Trouble| trouble.way_out == Some(WayOut::WriteBack);
            if changes.missing > 0 {
                let what = (state.words.shelf_page.missing)(changes.missing);
                let message = Message { what, mend: String::new() };
                state.trouble.set(Some(Trouble { message, way_out: Some(WayOut::WriteBack) }));
            } else if state.trouble.with_untracked(|trouble| trouble.as_ref().is_some_and(missing)) {
                state.trouble.set(None);
            }
        }
        Some(Err(why)) => state.trouble.set(Some(of_store(&why))),
        None => {}
    }
}

// --- what a person does --------------------------------------------------------------------------

impl State {
    /// Who saves, and when.
    #[must_use]
    pub fn stamp(&self) -> Stamp {
        let author = self.settings.with_untracked(|settings| settings.initials.trim().to_owned());
        Stamp { at: clock::now(), author, remark: String::new() }
    }

    /// Reads all records now, if that has not been done yet.
    pub fn read_records(&self) {
        if !self.all_read.get_untracked() {
            refresh(*self);
        }
    }

    /// Saves the recipe as a revision that follows the one it came from; whether that went well.
    /// Without a name it asks for one, at the name's box.
    pub fn save(&self) -> bool {
        let OpenDraft { from, mut title, draft, remark, .. } = self.at_hand();
        title.name = title.name.trim().to_owned();
        self.naming.set(title.name.is_empty());
        if title.name.is_empty() {
            on_recipe(*self, || page::focus(NAME));
            return false;
        }
        let base = from.and_then(|id| self.shelf.with_untracked(|shelf| shelf.revision(id)));
        let same = |base: &Revision| {
            let content = base.content();
            content.standing == Standing::Kept && content.draft == draft && base.title() == title
        };
        if base.as_ref().is_some_and(same) {
            // There may be room again for what had none a while ago.
            keep_open(*self);
            self.tell(self.words.tools.nothing_to_save);
            return false;
        }
        let stamp = Stamp { remark: remark.trim().to_owned(), ..self.stamp() };
        let revision = match base {
            Some(base) => base.follow(stamp, |content| {
                (content.name, content.note, content.tags) = (title.name, title.note, title.tags);
                content.draft = draft;
                // A removed recipe that is saved again is kept again.
                content.standing = Standing::Kept;
            }),
            None => Revision::first(title, draft, stamp),
        };
        let saved = match revision {
            Ok(revision) => self.change_shelf(|shelf| shelf.save(revision)),
            Err(error) => note(*self, Err(SaveError::from(error))),
        };
        let Some(id) = saved else { return false };
        if self.title.with_untracked(|title| title.name.trim() != title.name) {
            self.title.update(|title| title.name = title.name.trim().to_owned());
        }
        self.from.set(Some(id));
        self.remark.set(String::new());
        self.example.set(false);
        true
    }

    /// Saves the recipe, and tells so once it is on the disk.
    pub fn save_and_tell(&self) {
        if self.save() {
            let state = *self;
            spawn_local(async move {
                records::settled().await;
                if state.shelf.with_untracked(|shelf| shelf.store().is_unsure()) {
                    _ = note(state, Err::<(), _>(SaveError::Store(StoreError::Full)));
                } else {
                    state.tell(state.words.tools.saved);
                }
            });
        }
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
        self.open(OpenDraft { from: Some(id), title: revision.title(), draft, remark: String::new(), example: false });
        true
    }

    /// Whether the recipe is just as it was saved.
    #[must_use]
    pub fn saved(&self) -> Memo<bool> {
        let state = *self;
        // Read once a revision, not once a key.
        let base = memo(move || {
            let id = state.from.get()?;
            let base = state.shelf.with(|shelf| shelf.revision(id))?;
            let kept = base.content().standing == Standing::Kept;
            kept.then(|| (base.title(), base.content().draft.clone()))
        });
        memo(move || {
            base.with(|base| match base {
                Some((title, draft)) => state.title.with(|now| now == title) && state.draft.with(|now| now == draft),
                None => false,
            })
        })
    }

    /// Saves the recipe on the page to a file.
    pub fn give_out(&self) {
        let OpenDraft { from, title, draft, .. } = self.at_hand();
        self.give_out_file(&RecipeFile::new(title, draft, from));
    }

    fn give_out_file(&self, recipe: &RecipeFile) {
        let given = recipe.text().map_err(SaveError::from).and_then(|text| {
            let name = file::file_name(&recipe.name, "haulm.json");
            let outcome = file::give_out(&name, "application/json", &text);
            outcome.map(|()| name).map_err(|own| SaveError::Store(StoreError::Other(own)))
        });
        match given {
            Ok(name) => {
                self.tell((self.words.shelf_page.given_out)(&name));
                let now = clock::now();
                self.settings.update(|settings| settings.copied_at = Some(now));
            }
            Err(why) => {
                let message = (self.words.unsaved)(&why);
                self.trouble.set(Some(Trouble { message, way_out: None }));
            }
        }
    }
}
