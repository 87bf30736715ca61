//! What is done by itself: keeping what is typed, and following what other tabs do.

use super::{Keep, Trouble};
use crate::browser::event;
use crate::record::shelf::{DRAFT, MIX, SETTINGS};
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use std::time::Duration;

/// What is typed is kept when nothing was typed for so long: often enough that a crash costs little,
/// seldom enough that no key waits for it.
const QUIET: Duration = Duration::from_millis(300);
/// Another tab writes several records at once.
const SETTLED: Duration = Duration::from_millis(100);

pub(super) fn watch(keep: Keep) {
    let state = keep.state;
    let last = StoredValue::new(keep.open_draft());
    let keep_changed = move || {
        let now = keep.open_draft();
        if last.with_value(|last| *last != now) {
            last.set_value(now);
            keep.keep_draft();
        }
    };
    after_changes(
        move || {
            state.draft.track();
            state.title.track();
            state.example.track();
            keep.origins.track();
        },
        keep_changed,
    );
    after_changes(
        move || keep.mix.track(),
        move || {
            let mix = keep.mix.get_untracked();
            keep.overwrite(|shelf| shelf.keep_mix(&mix));
        },
    );
    keep_settings(keep);
    // Another tab may have written since, and this one is what a reload brings back.
    if let Some(listeners) = event::on_leave(move || keep.keep_draft()) {
        for listener in listeners {
            listener.forget();
        }
    }
    let pending: StoredValue<Option<TimeoutHandle>> = StoredValue::new(None);
    let other_tab = event::on_storage(move |key| match key.as_deref() {
        Some(DRAFT | MIX) => {}
        Some(SETTINGS) => take_settings(keep),
        Some(_) | None => {
            pending.with_value(|pending| pending.iter().for_each(TimeoutHandle::clear));
            pending.set_value(set_timeout_with_handle(move || refresh(keep), SETTLED).ok());
        }
    });
    if let Some(listener) = other_tab {
        listener.forget();
    }
    save_key(keep);
}

/// Does something some time after the last change of what `track` follows.
fn after_changes(track: impl Fn() + 'static, act: impl Fn() + Copy + 'static) {
    Effect::new(move |before: Option<Option<TimeoutHandle>>| {
        track();
        match before {
            // The first time nothing has changed yet.
            None => None,
            Some(pending) => {
                pending.iter().for_each(TimeoutHandle::clear);
                set_timeout_with_handle(act, QUIET).ok()
            }
        }
    });
}

/// Settings are chosen one at a time: each is kept at once.
fn keep_settings(keep: Keep) {
    let settings = keep.state.settings;
    Effect::new(move |before: Option<()>| {
        settings.track();
        if before.is_some() {
            let settings = settings.get_untracked();
            let stands = keep.shelf.with_value(|shelf| shelf.settings()).is_ok_and(|there| there == settings);
            if !stands {
                keep.overwrite(|shelf| shelf.keep_settings(&settings));
            }
        }
    });
}

fn take_settings(keep: Keep) {
    if let Ok(settings) = keep.shelf.with_value(|shelf| shelf.settings())
        && keep.state.settings.with_untracked(|own| *own != settings)
    {
        keep.state.settings.set(settings);
    }
}

/// Another tab saved, or cleared the store.
fn refresh(keep: Keep) {
    if !keep.records_read.get_value() {
        return;
    }
    match keep.shelf.try_update_value(crate::record::Shelf::refresh) {
        Some(Ok(changes)) => {
            if changes.missing > 0 {
                keep.trouble.set(Some(Trouble::Missing(changes.missing)));
            } else if matches!(keep.trouble.get_untracked(), Some(Trouble::Missing(_))) {
                keep.trouble.set(None);
            }
            keep.changed.notify();
        }
        Some(Err(error)) => keep.trouble.set(Some(Trouble::Store(error))),
        None => {}
    }
}

/// Ctrl+S saves, wherever one is.
fn save_key(keep: Keep) {
    let listener = event::on_key(move |key, command| {
        let save = command && key.eq_ignore_ascii_case("s");
        if save {
            keep.save();
        }
        save
    });
    if let Some(listener) = listener {
        listener.forget();
    }
}
