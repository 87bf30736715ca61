//! What happens to the page. Each function listens until its [`Listener`] is dropped;
//! [`Listener::forget`](gloo_events::EventListener::forget) listens as long as the page lives.

use gloo_events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::{StorageEvent, VisibilityState};

pub use gloo_events::EventListener as Listener;

/// Another tab wrote or removed the key; `None` when it cleared everything. Never called for this
/// tab's own writes.
#[must_use]
pub fn on_storage(mut then: impl FnMut(Option<String>) + 'static) -> Option<Listener> {
    on_window("storage", move |event| {
        if let Some(event) = event.dyn_ref::<StorageEvent>() {
            then(event.key());
        }
    })
}

/// The part of the address behind `#` changed.
#[must_use]
pub fn on_hash(mut then: impl FnMut() + 'static) -> Option<Listener> {
    on_window("hashchange", move |_| then())
}

/// The page is about to be left, hidden, or put to sleep, and may never run again: the last moment to
/// write. Called once or more often.
#[must_use]
pub fn on_leave(then: impl Fn() + Clone + 'static) -> Option<[Listener; 2]> {
    let document = web_sys::window()?.document()?;
    let leave = then.clone();
    let hidden = EventListener::new(&document.clone(), "visibilitychange", move |_| {
        if document.visibility_state() == VisibilityState::Hidden {
            then();
        }
    });
    Some([on_window("pagehide", move |_| leave())?, hidden])
}

/// A file was dropped on the page.
pub fn on_drop(then: impl Fn(web_sys::File) + 'static) -> Option<[Listener; 2]> {
    let options = gloo_events::EventListenerOptions::enable_prevent_default();
    let window = web_sys::window()?;
    // Without this the browser opens the file in place of the app.
    let over = EventListener::new_with_options(&window, "dragover", options, |event| event.prevent_default());
    let drop = EventListener::new_with_options(&window, "drop", options, move |event| {
        event.prevent_default();
        let files = event.dyn_ref::<web_sys::DragEvent>().and_then(|event| event.data_transfer()?.files());
        if let Some(file) = files.and_then(|files| files.get(0)) {
            then(file);
        }
    });
    Some([over, drop])
}

/// The text that is being pasted; `None` for an event that pastes none.
#[must_use]
pub fn pasted(event: &web_sys::Event) -> Option<String> {
    event.dyn_ref::<web_sys::ClipboardEvent>()?.clipboard_data()?.get_data("text/plain").ok()
}

/// The window is looked at again.
#[must_use]
pub fn on_return(then: impl Fn() + 'static) -> Option<Listener> {
    on_window("focus", move |_| then())
}

/// A newer version of the app is here and waits to be used.
#[must_use]
pub fn on_newer(mut then: impl FnMut() + 'static) -> Option<Listener> {
    on_window("haulm-newer", move |_| then())
}

/// Goes on with the newer version: start.js puts it in place and loads the page anew.
pub fn use_newer() {
    if let (Some(window), Ok(event)) = (web_sys::window(), web_sys::Event::new("haulm-use")) {
        _ = window.dispatch_event(&event);
    }
}

/// A key was pressed anywhere on the page: its name, and whether Ctrl or the command key was held.
/// What returns `true` takes the key from the browser.
#[must_use]
pub fn on_key(mut then: impl FnMut(&str, bool) -> bool + 'static) -> Option<Listener> {
    let options = gloo_events::EventListenerOptions::enable_prevent_default();
    let window = web_sys::window()?;
    Some(EventListener::new_with_options(&window, "keydown", options, move |event| {
        if let Some(event) = event.dyn_ref::<web_sys::KeyboardEvent>()
            && then(&event.key(), event.ctrl_key() || event.meta_key())
        {
            event.prevent_default();
        }
    }))
}

fn on_window(name: &'static str, then: impl FnMut(&web_sys::Event) + 'static) -> Option<Listener> {
    let window = web_sys::window()?;
    Some(EventListener::new(&window, name, then))
}
