//! Persistence: what is on the page survives a reload, a recipe is saved as a revision, and whatever the
//! store refuses is told at once.

mod bench;
mod copies;
mod delivery;
pub mod documents;
mod library;
mod line;
pub mod link;
mod pause;
pub mod records;
pub mod shared;
mod systems;
pub mod trouble;

pub use bench::{TrialTable, has_begun};
pub use library::Imported;

use super::part::on_recipe::on_recipe;
use super::part::save::NAME;
use super::state::documents::Documents;
use super::state::line::example_line_record;
use super::state::{About, BrowserLibrary, OpenDocuments, State};
use super::text::{isolated, named_recipe};
use crate::browser::{LocalStore, clock, event, file, locale, page};
use crate::domain::Draft;
use crate::domain::mixing::MixDraft;
use crate::domain::recipe::example::example;
use crate::quantity::format::DecimalMark;
use crate::record::content::binder_system::NEW_SYSTEM;
use crate::record::content::comparison::COMPARISON;
use crate::record::content::decimal_mark::with_decimal_mark;
use crate::record::content::line::LINE;
use crate::record::content::mixing::MIXING;
use crate::record::content::revision::{Stamp, Standing, Title};
use crate::record::content::settings::Language;
use crate::record::document::open_draft::{OpenDraft, RECIPE};
use crate::record::file::recipe::RecipeFile;
use crate::record::store::library::save::{SaveAs, SaveOutcome};
use crate::record::store::library::{SETTINGS, SaveError, Unread};
use crate::record::{Cache, Library, RevisionId, Settings, Store, StoreError};
use crate::ui::state::settled::when_settled;
use crate::{label, t};
use leptos::prelude::*;
use leptos::task::spawn_local;
use pause::PAUSE;
use trouble::{settled, tell_not_exported, tell_unsaved, unread};

// --- at the start --------------------------------------------------------------------------------

/// The app as it was left, or the example at a first start. The records come after the first paint.
#[must_use]
pub fn start() -> State {
    let library: BrowserLibrary = Library::blank(Cache::new(LocalStore));
    let mut trouble = None;
    let mut unread = |why: &Unread, fix: &str| {
        // What cannot be reached at all is told when it is written.
        if let Some(told) = unread(why, fix) {
            trouble.get_or_insert(told);
        }
    };
    let settings = match first_settings(&library) {
        Some(settings) => settings,
        None => library.settings().unwrap_or_else(|why| {
            unread(&why, label!("record-settings-unread"));
            Settings::default()
        }),
    };
    let mark = settings.units.mark;
    let mut documents = Documents::default();
    let open = OpenDocuments {
        recipe: documents::begin(&library, &mut documents, &RECIPE, || example_recipe(mark), &mut |why| {
            unread(why, label!("record-draft-unread"));
        }),
        line: documents::begin(&library, &mut documents, &LINE, || example_line_record(mark), &mut |why| {
            unread(why, label!("line-unread"));
        }),
        mix: documents::begin(&library, &mut documents, &MIXING, MixDraft::default, &mut |why| {
            unread(why, label!("record-draft-unread"));
        }),
        compare: documents::begin(&library, &mut documents, &COMPARISON, Default::default, &mut |why| {
            unread(why, label!("record-draft-unread"));
        }),
        system: documents::begin(&library, &mut documents, &NEW_SYSTEM, Default::default, &mut |why| {
            unread(why, label!("record-draft-unread"));
        }),
    };
    State::new(library, settings, open, documents, trouble)
}

/// The language to speak: that of the settings, or the nearest to the browser's.
#[must_use]
pub fn language() -> Language {
    let library: BrowserLibrary = Library::blank(Cache::new(LocalStore));
    library.settings().unwrap_or_default().language.spoken(&locale::language())
}

/// Speaks another language from now on. What was said already stays as it was, so the page is loaded again.
pub fn speak(state: State, language: Language) {
    state.settings.update_untracked(|settings| settings.language = language);
    let kept = state.library.with_untracked(|library| library.keep_settings(&state.settings.get_untracked()));
    let heard = kept.is_ok();
    documents::note(state, SETTINGS, kept);
    if heard {
        page::reload();
    }
}

/// The example, its numbers with this decimal mark.
#[must_use]
pub fn example_recipe(mark: DecimalMark) -> OpenDraft {
    let title = Title { name: t!("frame-example-name"), note: t!("frame-example-note"), tags: Vec::new() };
    OpenDraft {
        from: None,
        title,
        draft: with_decimal_mark(named_recipe(example()), mark),
        remark: String::new(),
        example: true,
    }
}

/// A blank recipe.
#[must_use]
pub fn blank() -> OpenDraft {
    OpenDraft { from: None, title: Title::default(), draft: Draft::default(), remark: String::new(), example: false }
}

/// The settings of a first start: the decimal mark of the browser's language. `None` later on.
fn first_settings(library: &BrowserLibrary) -> Option<Settings> {
    let stored = library.store().read(SETTINGS).ok()?;
    let mut settings = Settings::default();
    settings.units.mark = locale::decimal_mark();
    stored.is_none().then_some(settings)
}

// --- while it runs -------------------------------------------------------------------------------

/// Keeps what is on all pages, and the settings, whenever they change; takes in what other tabs save.
pub fn autosave(state: State) {
    when_settled(
        PAUSE,
        move || {
            state.draft.track();
            state.title.track();
        },
        move || link::refresh(state),
    );
    link::refresh(state);
    let mut read = state.settings.get_untracked();
    Effect::new(move |_| {
        let settings = state.settings.get();
        if settings != read {
            let kept = state.library.with_untracked(|library| library.keep_settings(&settings));
            documents::note(state, SETTINGS, kept);
            read = settings;
        }
    });
    if let Some(listener) = event::on_storage(move |key| {
        if key.as_deref() == Some(SETTINGS)
            && let Ok(settings) = state.library.with_untracked(Library::settings)
        {
            state.settings.set(settings);
        }
    }) {
        listener.forget();
    }
    if let Some(listener) = event::on_newer(move || state.newer.set(true)) {
        listener.forget();
    }
    // A browser without a small store is told so before anything is typed.
    documents::note(state, RECIPE.key, LocalStore.probe().map_err(SaveError::from));
    documents::follow(state);
    records::follow(state);
    shared::follow(state);
}

/// Keeps all that is open and goes on with the newer version. Where it cannot be kept, that is told and
/// everything stays.
pub fn use_newer(state: State) {
    documents::keep_all(state);
    let lost = state.documents.with_value(|documents| !documents.failing.is_empty());
    if !lost {
        event::use_newer();
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

    /// Saves the recipe as a revision that follows the one it came from; whether that went well. Without a name it asks for
    /// one, at the name's box; before it puts one revision over another it asks as well.
    pub fn save(&self) -> bool {
        self.save_as(SaveAs::Next)
    }

    fn save_as(&self, how: SaveAs) -> bool {
        let mut page = self.current_recipe();
        page.title.name = page.title.name.trim().to_owned();
        self.naming.set(page.title.name.is_empty());
        if page.title.name.is_empty() {
            on_recipe(*self, || page::focus(NAME));
            return false;
        }
        let name = match &how {
            SaveAs::NewRecipe(name) => name.clone(),
            SaveAs::Next | SaveAs::OnTop => page.title.name.clone(),
        };
        let stamp = Stamp { remark: page.remark.trim().to_owned(), ..self.stamp() };
        let outcome = self.change_library(|library| library.save_page(&page, how, stamp));
        let id = match outcome {
            Some(SaveOutcome::Saved(id)) => id,
            Some(SaveOutcome::Unchanged) => {
                self.tell(t!("frame-nothing-to-save"));
                return false;
            }
            Some(SaveOutcome::Ask(question)) => {
                self.question.set(Some(question));
                on_recipe(*self, || ());
                return false;
            }
            None => return false,
        };
        if self.title.with_untracked(|title| title.name != name) {
            self.title.update(|title| title.name = name);
        }
        self.question.set(None);
        self.from.set(Some(id));
        self.remark.set(String::new());
        self.example.set(false);
        // After a kill the page does not come back older than the revision.
        documents::keep_all(*self);
        true
    }

    /// Saves the recipe, and tells so once it is on the disk.
    pub fn save_and_tell(&self) {
        self.save_when_loaded(|state| state.save().then(|| t!("frame-saved")));
    }

    /// Saves the recipe whatever there is to ask, after all that was saved meanwhile.
    pub fn save_on_top_and_tell(&self) {
        self.save_when_loaded(|state| state.save_as(SaveAs::OnTop).then(|| t!("frame-saved")));
    }

    /// Saves what is on the page as a recipe of its own. Unless it has another name already, it is called a copy.
    pub fn save_as_new_and_tell(&self) {
        self.save_when_loaded(|state| {
            let name = state.title.with_untracked(|title| title.name.trim().to_owned());
            let base = state.from.get_untracked();
            let base = base.and_then(|id| state.library.with_untracked(|library| library.revision(id)));
            let same = base.is_some_and(|base| base.content().name == name);
            let name = if same { t!("frame-copy-of", name = name) } else { name };
            state.save_as(SaveAs::NewRecipe(name.clone())).then(|| t!("record-saved-as-new", name = isolated(&name)))
        });
    }

    /// What a save follows has to be there first.
    fn save_when_loaded(&self, save: fn(State) -> Option<String>) {
        let state = *self;
        spawn_local(async move {
            records::loaded(state).await;
            if let Some(told) = save(state) {
                state.tell(told);
            }
        });
    }

    /// Does something with what is kept, has it written, and says what went wrong; `None` then.
    pub fn change_library<T>(&self, change: impl FnOnce(&mut BrowserLibrary) -> Result<T, SaveError>) -> Option<T> {
        let outcome = self.library.try_update(change)?;
        records::write(*self);
        match outcome {
            Ok(done) => {
                settled(*self, About::Save);
                Some(done)
            }
            Err(why) => {
                tell_unsaved(*self, &why);
                None
            }
        }
    }

    /// Puts a saved recipe on the page; whether it is there.
    pub fn open_revision(&self, id: RevisionId) -> bool {
        let Some(revision) = self.library.with_untracked(|library| library.revision(id)) else { return false };
        let draft = revision.content().draft.clone();
        self.open(OpenDraft { from: Some(id), title: revision.title(), draft, remark: String::new(), example: false });
        true
    }

    /// Whether the recipe is just as it was saved.
    #[must_use]
    pub fn saved(&self) -> Memo<bool> {
        let state = *self;
        // Read once a revision, not once a key.
        let base = Memo::new(move |_| {
            let id = state.from.get()?;
            let base = state.library.with(|library| library.revision(id))?;
            let kept = base.content().standing == Standing::Kept && state.unwritten.get() == 0;
            kept.then(|| (base.title(), base.content().draft.clone()))
        });
        Memo::new(move |_| {
            base.with(|base| match base {
                Some((title, draft)) => state.title.with(|now| now == title) && state.draft.with(|now| now == draft),
                None => false,
            })
        })
    }

    /// Saves the recipe on the page to a file.
    pub fn give_out(&self) {
        let OpenDraft { from, title, draft, .. } = self.current_recipe();
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
                settled(*self, About::Export);
                self.tell(t!("record-exported", file = name));
            }
            Err(why) => tell_not_exported(*self, &why),
        }
    }
}
