//! Closures in boxes, each behind a trait of its own.
//!
//! The standard library's `dyn FnMut` and `dyn Fn` bring two functions more for every closure, which are
//! never called and stay in the download.

use wasm_bindgen::JsValue;
use web_sys::Event;

/// What is done again and again.
pub trait Act {
    /// Does it.
    fn act(&mut self);
}

impl<F: FnMut()> Act for F {
    fn act(&mut self) {
        self();
    }
}

/// What is done at an event.
pub(super) trait Hear {
    fn hear(&mut self, event: Event);
}

impl<F: FnMut(Event)> Hear for F {
    fn hear(&mut self, event: Event) {
        self(event);
    }
}

/// What says yes or no.
pub(super) trait Ask {
    fn ask(&self) -> bool;
}

impl<F: Fn() -> bool> Ask for F {
    fn ask(&self) -> bool {
        self()
    }
}

/// What makes the value of a property.
pub(super) trait Hold {
    fn hold(&self) -> JsValue;
}

impl<V: Into<JsValue>, F: Fn() -> V> Hold for F {
    fn hold(&self) -> JsValue {
        self().into()
    }
}
