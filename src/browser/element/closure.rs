//! Closures in boxes, each behind a trait of its own.
//!
//! The standard library's `dyn FnMut` and `dyn Fn` bring two functions more for every closure, which are
//! never called and stay in the download.

use super::{Part, Value, View};
use std::borrow::Cow;
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

/// What makes a piece of the page.
pub(super) trait Make {
    fn make(&self) -> View;
}

impl<V: Part, F: Fn() -> V> Make for F {
    fn make(&self) -> View {
        self().view()
    }
}

/// What makes the text of an attribute.
pub(super) trait Tell {
    fn tell(&self) -> Option<Cow<'static, str>>;
}

impl<V: Value, F: Fn() -> V> Tell for F {
    fn tell(&self) -> Option<Cow<'static, str>> {
        self().text()
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
