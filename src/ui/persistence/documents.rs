//! The open documents of all pages: each is kept after every change, and what other tabs type comes in.
//!
//! A tab writes what it changed over the newest text there is, never its own older one: see
//! [`merge`](crate::record::document::merge).

use super::copies;
use super::trouble::tell;
use crate::browser::{channel, event, page};
use crate::domain::compare::draft::CompareDraft;
use crate::domain::mixing::MixDraft;
use crate::record::content::binder_system::{NEW_SYSTEM, SystemDraft};
use crate::record::content::comparison::COMPARISON;
use crate::record::content::line::LINE;
use crate::record::content::mixing::MIXING;
use crate::record::content::sealed::Extra;
use crate::record::content::trial::{OpenTrial, TRIAL_ON_PAGE};
use crate::record::document::merge::merge;
use crate::record::document::open_draft::{OpenDraft, RECIPE};
use crate::record::store::library::{SaveError, Unread};
use crate::record::{Document, LineRecord, Store, Stored};
use crate::ui::state::documents::{Documents, Known};
use crate::ui::state::{BrowserLibrary, State};
use leptos::prelude::*;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::time::Duration;

/// From the paint that shows a change to its keeping: what else follows a change goes first.
const BREATH: Duration = Duration::from_millis(30);

/// A document and the page that it is typed on.
struct OnPage<T: 'static> {
    document: Document<T>,
    now: fn(State) -> T,
    show: fn(State, T),
    track: fn(State),
}

const ON_PAGE_RECIPE: OnPage<OpenDraft> = OnPage {
    document: RECIPE,
    now: |state| state.current_recipe(),
    show: |state, open| state.follow_tab(open),
    track: |state| {
        state.draft.track();
        state.title.track();
        state.remark.track();
        state.from.track();
        state.example.track();
    },
};

const ON_PAGE_LINE: OnPage<LineRecord> = OnPage {
    document: LINE,
    now: |state| state.line.record.get_untracked(),
    show: |state, line| state.line.record.set(line),
    track: |state| state.line.record.track(),
};

const ON_PAGE_TRIAL: OnPage<OpenTrial> = OnPage {
    document: TRIAL_ON_PAGE,
    now: |state| state.bench.open.get_untracked(),
    show: |state, open| state.bench.follow_tab(open),
    track: |state| state.bench.open.track(),
};

const ON_PAGE_MIXING: OnPage<MixDraft> = OnPage {
    document: MIXING,
    now: |state| state.mix.get_untracked(),
    show: |state, mix| state.mix.set(mix),
    track: |state| state.mix.track(),
};

const ON_PAGE_COMPARISON: OnPage<CompareDraft> = OnPage {
    document: COMPARISON,
    now: |state| state.compare.typed.get_untracked(),
    show: |state, typed| state.compare.typed.set(typed),
    track: |state| state.compare.typed.track(),
};

const ON_PAGE_SYSTEM: OnPage<SystemDraft> = OnPage {
    document: NEW_SYSTEM,
    now: |state| state.new_system.get_untracked(),
    show: |state, system| state.new_system.set(system),
    track: |state| state.new_system.track(),
};

/// What is done with a document whatever it holds.
trait Keep {
    fn key(&self) -> &'static str;
    fn track(&self, state: State);
    fn keep(&self, state: State);
    fn changed(&self, state: State, before: &Value, after: &Value, edition: u64);
    fn look(&self, state: State, text: Option<&str>);
}

/// All documents, in the order of the pages.
const ALL: [&dyn Keep; 6] =
    [&ON_PAGE_RECIPE, &ON_PAGE_LINE, &ON_PAGE_TRIAL, &ON_PAGE_COMPARISON, &ON_PAGE_MIXING, &ON_PAGE_SYSTEM];

fn by_key(key: &str) -> Option<&'static dyn Keep> {
    ALL.into_iter().find(|each| each.key() == key)
}

/// Reads a document at the start, or begins with `first`. One that cannot be read is set aside, and why it
/// cannot be is told to `unread`.
pub fn begin<T: Serialize + DeserializeOwned + Clone>(
    library: &BrowserLibrary,
    documents: &mut Documents,
    document: &Document<T>,
    first: impl FnOnce() -> T,
    unread: &mut dyn FnMut(&Unread),
) -> T {
    let stored = match library.document(document) {
        Ok(Some(stored)) => stored,
        Ok(None) => Stored::new(first()),
        Err(why) => {
            // Where there is no room for it, it stays where it is until there is.
            _ = library.set_aside(document.key);
            unread(&why);
            Stored::new(first())
        }
    };
    let text = library.store().read(document.key).ok().flatten();
    let known = Known { base: document.tree(&stored.content), edition: stored.edition, extra: stored.extra, text };
    documents.known.insert(document.key, known);
    stored.content
}

/// Keeps all documents from now on.
pub fn follow(state: State) {
    for each in ALL {
        let mut first = true;
        Effect::new(move |_| {
            each.track(state);
            if !std::mem::take(&mut first) {
                keep_soon(state, each.key());
            }
        });
    }
    if let Some(listeners) = event::on_leave(move || keep_all(state)) {
        listeners.into_iter().for_each(event::Listener::forget);
    }
    let look = move |key: Option<&str>| {
        for each in ALL.into_iter().filter(|each| key.is_none_or(|key| each.key() == key)) {
            let text = state.library.with_untracked(|library| library.store().read(each.key())).ok().flatten();
            each.look(state, text.as_deref());
        }
    };
    if let Some(listener) = event::on_storage(move |key| look(key.as_deref())) {
        listener.forget();
    }
    // A tab that slept has heard of nothing.
    if let Some(listener) = event::on_return(move || {
        look(None);
        retry(state);
    }) {
        listener.forget();
    }
}

/// What another tab says.
pub fn hear(state: State, message: &Value) {
    let (Some(key), Some(edition)) = (message["key"].as_str(), message["edition"].as_u64()) else { return };
    if let Some(each) = by_key(key) {
        each.changed(state, &message["before"], &message["after"], edition);
    }
}

/// The database has this text of a document, perhaps a newer one than the small store.
pub fn bring_back(state: State, key: &str, text: &str) {
    let Some(each) = by_key(key) else { return };
    let edition = || state.documents.with_value(|documents| documents.known.get(each.key()).map(|known| known.edition));
    let before = edition();
    each.look(state, Some(text));
    if edition() != before {
        // So that the next start has it at once.
        let kept = state.library.with_untracked(|library| library.store().write(each.key(), text));
        note(state, each.key(), kept.map_err(SaveError::from));
    }
}

/// Keeps all documents now.
pub fn keep_all(state: State) {
    ALL.into_iter().for_each(|each| each.keep(state));
}

/// There may be room again for what had none.
fn retry(state: State) {
    let failing: Vec<&str> = state.documents.with_value(|documents| documents.failing.keys().copied().collect());
    for key in failing {
        let text =
            state.documents.with_value(|documents| documents.known.get(key).and_then(|known| known.text.clone()));
        if let Some(text) = text {
            let kept = state.library.with_untracked(|library| library.store().write(key, &text));
            note(state, key, kept.map_err(SaveError::from));
        }
    }
}

fn keep_soon(state: State, key: &'static str) {
    let mut begun = false;
    state.documents.update_value(|documents| {
        begun = documents.pending.is_empty();
        documents.pending.insert(key);
    });
    if !begun {
        return;
    }
    let keep = move || {
        let mut keys = BTreeSet::new();
        state.documents.try_update_value(|documents| keys = std::mem::take(&mut documents.pending));
        keys.into_iter().filter_map(by_key).for_each(|each| each.keep(state));
    };
    if page::is_hidden() {
        // Nothing is painted then.
        set_timeout(keep, Duration::ZERO);
    } else {
        request_animation_frame(move || set_timeout(keep, BREATH));
    }
}

/// Puts down whether the small store took what is under `key`.
pub fn note(state: State, key: &'static str, kept: Result<(), SaveError>) {
    state.documents.update_value(|documents| {
        match kept {
            Ok(()) => documents.failing.remove(key),
            Err(why) => documents.failing.insert(key, why),
        };
    });
    tell(state);
}

impl<T: Serialize + DeserializeOwned + Clone> OnPage<T> {
    fn known(&self, state: State) -> Option<Known> {
        state.documents.try_with_value(|documents| documents.known.get(self.document.key).cloned()).flatten()
    }

    fn set_known(&self, state: State, known: Known) {
        state.documents.update_value(|documents| drop(documents.known.insert(self.document.key, known)));
    }

    /// Writes a version, in the small store at once and in the database soon.
    fn write(&self, state: State, base: Value, content: T, edition: u64, extra: Extra) {
        let stored = Stored { content, edition, extra };
        let text = self.document.text(&stored);
        let kept = state.library.with_untracked(|library| library.keep(&self.document, &stored));
        self.set_known(state, Known { base, edition, extra: stored.extra, text: Some(text.clone()) });
        copies::copy(self.document.key, text);
        note(state, self.document.key, kept);
    }
}

impl<T: Serialize + DeserializeOwned + Clone> Keep for OnPage<T> {
    fn key(&self) -> &'static str {
        self.document.key
    }

    fn track(&self, state: State) {
        (self.track)(state);
    }

    fn keep(&self, state: State) {
        let Some(known) = self.known(state) else { return };
        let content = (self.now)(state);
        let mine = self.document.tree(&content);
        if mine == known.base {
            return;
        }
        let text = state.library.with_untracked(|library| library.store().read(self.document.key)).ok().flatten();
        let other = text
            .filter(|text| known.text.as_ref() != Some(text))
            .and_then(|text| self.document.read(&text).ok())
            .filter(|other| other.edition > known.edition);
        let (theirs, edition, extra) = match other {
            Some(other) => (self.document.tree(&other.content), other.edition, other.extra),
            None => (known.base.clone(), known.edition, known.extra),
        };
        let merged = merge(&known.base, &mine, &theirs);
        // Where the two make no sense together, the later one stays.
        let (merged, content) = match self.document.content(&merged) {
            Some(content) => (merged, content),
            None => (mine.clone(), content),
        };
        if merged != mine {
            (self.show)(state, content.clone());
        }
        let message =
            json!({ "key": self.document.key, "before": known.base, "after": merged, "edition": edition + 1 });
        self.write(state, merged, content, edition + 1, extra);
        channel::post(&message.to_string());
    }

    /// Another tab has changed `before` to `after`.
    fn changed(&self, state: State, before: &Value, after: &Value, edition: u64) {
        let Some(known) = self.known(state) else { return };
        let mine = self.document.tree(&(self.now)(state));
        let base = merge(before, after, &known.base);
        let merged = merge(&known.base, &mine, &base);
        let (Some(of_base), Some(content)) = (self.document.content(&base), self.document.content(&merged)) else {
            return;
        };
        if merged != mine {
            (self.show)(state, content);
        }
        // Both wrote without having heard of each other: both now write what both have said.
        let both = edition <= known.edition && base != known.base;
        if both {
            self.write(state, base, of_base, known.edition.max(edition) + 1, known.extra);
        } else {
            let edition = known.edition.max(edition);
            self.set_known(state, Known { base, edition, extra: known.extra, text: None });
        }
        if merged != mine {
            keep_soon(state, self.document.key);
        }
    }

    /// The store says this. Nothing happens unless it is newer.
    fn look(&self, state: State, text: Option<&str>) {
        let (Some(known), Some(text)) = (self.known(state), text) else { return };
        if known.text.as_deref() == Some(text) {
            return;
        }
        let Ok(other) = self.document.read(text) else { return };
        if other.edition <= known.edition {
            return;
        }
        let base = self.document.tree(&other.content);
        let mine = self.document.tree(&(self.now)(state));
        let merged = merge(&known.base, &mine, &base);
        let Some(content) = self.document.content(&merged) else { return };
        if merged != mine {
            (self.show)(state, content);
        }
        self.set_known(state, Known { base, edition: other.edition, extra: other.extra, text: None });
        keep_soon(state, self.document.key);
    }
}
