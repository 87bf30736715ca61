//! All that is taken of leptos: signals, what owns them, and the browser's clockwork. Views are
//! [`element`](super::element)'s.

pub use any_spawner::Executor;

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
use std::sync::Arc;
use wasm_bindgen::JsCast;
pub use wasm_bindgen_futures::spawn_local;
pub use web_sys::{Event, FocusEvent, KeyboardEvent};

/// Does `act` at every key, wherever the focus is.
pub fn on_key(act: impl Fn(KeyboardEvent) + 'static) {
    on_window("keydown", move |event| act(event.unchecked_into()));
}

/// What is done with a value that was typed or chosen. It goes with the part of the page that made it.
pub struct Callback<T: 'static>(StoredValue<Arc<dyn Take<T>>>);

/// No `dyn Fn`, for the reason given at [`element`](super::element).
trait Take<T>: Send + Sync {
    fn take(&self, value: T);
}

impl<T, F: Fn(T) + Send + Sync> Take<T> for F {
    fn take(&self, value: T) {
        self(value);
    }
}

impl<T> Clone for Callback<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Callback<T> {}

impl<T> Callback<T> {
    /// Does `act`.
    pub fn new(act: impl Fn(T) + Send + Sync + 'static) -> Self {
        Self(StoredValue::new(Arc::new(act)))
    }

    /// Does it with `value`.
    pub fn run(self, value: T) {
        if let Some(act) = self.0.try_get_value() {
            act.take(value);
        }
    }
}
