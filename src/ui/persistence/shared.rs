//! A library file on a shared drive and the library, kept the same: what others saved comes in, what is
//! saved here goes out, and nothing is overwritten.

use super::pause::PAUSE;
use super::records;
use crate::browser::shared::{self, SharedFileError};
use crate::browser::{clock, event};
use crate::record::file::library::LARGEST;
use crate::record::store::shared_file::{MergePlanError, plan};
use crate::ui::part::save::when;
use crate::ui::state::State;
use crate::ui::state::settled::when_settled;
use crate::ui::state::shared_file::SharedFile;
use crate::ui::text::{Carrier, Message, library, words};
use crate::{label, t, told};
use leptos::prelude::*;
use leptos::task::spawn_local;

/// How often others may write in between before that is told.
const TRIES: usize = 5;

/// Finds the file of an earlier visit, and keeps it and the library the same from now on.
pub fn follow(state: State) {
    if !shared::can() {
        return;
    }
    spawn_local(async move {
        if let Some(name) = shared::recall().await {
            state.shared.set(SharedFile { name, ..SharedFile::default() });
            level(state, false);
        }
    });
    when_settled(PAUSE, move || state.library.track(), move || level(state, false));
    if let Some(listener) = event::on_return(move || level(state, false)) {
        listener.forget();
    }
}

/// Lets the person choose the file: a new one, or one that is there.
pub fn choose(state: State, fresh: bool) {
    spawn_local(async move {
        let suggested = format!("{}.json", t!("record-library-file"));
        match shared::choose(fresh, &suggested).await {
            Ok(name) => {
                state.shared.set(SharedFile { name, ..SharedFile::default() });
                level(state, true);
            }
            Err(SharedFileError::Cancelled) => {}
            Err(why) => state.shared.update(|file| file.wrong = Some(in_words(&why))),
        }
    });
}

/// Forgets the file, which stays as it is.
pub fn let_go(state: State) {
    state.shared.set(SharedFile::default());
    spawn_local(shared::let_go());
}

/// Makes file and library the same. `ask` at somebody's press: the browser may then ask for leave.
pub fn level(state: State, ask: bool) {
    let mut begun = false;
    state.shared.update_untracked(|file| {
        begun = !file.name.is_empty() && !file.busy;
        file.again = file.busy;
        file.busy |= begun;
    });
    if !begun {
        return;
    }
    spawn_local(async move {
        let outcome = once(state, ask).await;
        let mut again = false;
        _ = state.shared.try_update(|file| {
            again = std::mem::take(&mut file.again);
            file.busy = false;
            match outcome {
                Ok(said) => {
                    file.says = said.unwrap_or_else(|| std::mem::take(&mut file.says));
                    file.wrong = None;
                }
                Err(message) => (file.says, file.wrong) = (String::new(), Some(message)),
            }
        });
        if again {
            level(state, ask);
        }
    });
}

/// What is said of it; `None` where nothing has changed.
async fn once(state: State, ask: bool) -> Result<Option<String>, Message> {
    let (mut came, mut went) = (0, 0);
    for _ in 0..TRIES {
        let text = match shared::look(ask, LARGEST).await {
            Ok(text) => text,
            Err(SharedFileError::NotAllowed) if !ask => return Ok(Some(t!("record-shared-ask"))),
            Err(why) => return Err(in_words(&why)),
        };
        let there = state.shared.with_untracked(|file| file.there);
        let looked = text.is_some();
        records::loaded(state).await;
        let Some(planned) = state.library.try_update_untracked(|library| plan(library, text.as_deref(), there)) else {
            return Ok(None);
        };
        // What follows the library looks at the file again: to tell it of a look that changed nothing would never end.
        if planned.as_ref().is_ok_and(|plan| plan.merged.added > 0) {
            state.library.notify();
        }
        let plan = planned.map_err(|why| match why {
            MergePlanError::Refused(why) => words::refusal(&why, Carrier::File),
            MergePlanError::Store(why) => words::store(&why),
        })?;
        records::write(state);
        if let Some(why) = plan.merged.stopped {
            return Err(words::unsaved(&why));
        }
        // To write would be to leave them out.
        if plan.merged.refused > 0 {
            return Err(told!("record-shared-foreign", records = library::records(plan.merged.refused)));
        }
        shared::accept();
        came += plan.merged.added;
        let written = match &plan.write {
            Some(text) => shared::write(text).await.map_err(|why| in_words(&why))?,
            None => true,
        };
        if written {
            went += plan.count - plan.there.min(plan.count);
            state.shared.update_untracked(|file| file.there = plan.count);
            if went > 0 {
                state.settings.update(|settings| settings.copied_at = Some(clock::now()));
            }
            let changed = looked || went > 0;
            return Ok(changed.then(|| {
                t!(
                    "record-shared-same",
                    time = when(clock::now()),
                    records = library::records(plan.count),
                    came = came,
                    went = went
                )
            }));
        }
        state.shared.update_untracked(|file| file.there = plan.there);
    }
    Err(told!("record-shared-restless"))
}

fn in_words(why: &SharedFileError) -> Message {
    let own = match why {
        SharedFileError::TooLarge(size) => return library::file_too_large(*size, LARGEST as u64),
        SharedFileError::Gone => label!("record-shared-gone"),
        SharedFileError::NotAllowed | SharedFileError::Cancelled => label!("record-shared-denied"),
        SharedFileError::Other(own) => own,
    };
    Message { what: own.to_owned(), fix: t!("record-shared-fix") }
}
