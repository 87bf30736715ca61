//! All that is taken of leptos: signals, what owns them, and the browser's clockwork. Views are
//! [`element`](super::element)'s.

pub use any_spawner::Executor;
pub use leptos::callback::{Callable, Callback};
pub use leptos::leptos_dom::helpers::{
    TimeoutHandle, WindowListenerHandle, document, event_target, event_target_checked, event_target_value,
    request_animation_frame, set_interval_with_handle, set_timeout, set_timeout_with_handle, window,
    window_event_listener_untyped as on_window,
};
pub use leptos::reactive::computed::Memo;
pub use leptos::reactive::effect::{Effect, RenderEffect};
pub use leptos::reactive::graph::untrack;
pub use leptos::reactive::owner::{Owner, StoredValue, expect_context, on_cleanup, provide_context};
pub use leptos::reactive::prelude::*;
pub use leptos::reactive::signal::RwSignal;

use wasm_bindgen::JsCast;
pub use wasm_bindgen_futures::spawn_local;
pub use web_sys::{Event, FocusEvent, KeyboardEvent};

/// Does `act` at every key, wherever the focus is.
pub fn on_key(act: impl Fn(KeyboardEvent) + 'static) {
    on_window("keydown", move |event| act(event.unchecked_into()));
}
