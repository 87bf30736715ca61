//! Closures of one type each kind.
//!
//! leptos makes machine code for every closure that a view holds: to build it, to run it again, to
//! drop it. Behind a box all closures of a kind share that code, which takes a third off the
//! download. Views hand their closures through here; nothing else changes.

use leptos::prelude::*;

/// A part of a view that follows signals.
pub fn live<V: IntoAny + 'static>(f: impl Fn() -> V + Send + 'static) -> AnyView {
    fn inner(f: Box<dyn Fn() -> AnyView + Send>) -> AnyView {
        f.into_any()
    }
    inner(Box::new(move || f().into_any()))
}

/// Whether a class or a bare attribute is set.
pub fn flag(f: impl Fn() -> bool + Send + 'static) -> Box<dyn Fn() -> bool + Send> {
    Box::new(f)
}

/// An attribute that follows signals; `None` leaves it out.
pub fn attr<T: Attribute>(f: impl Fn() -> T + Send + 'static) -> Box<dyn Fn() -> Option<String> + Send> {
    Box::new(move || f().value())
}

/// What an attribute can be set to.
pub trait Attribute {
    /// The attribute's text; `None` leaves it out.
    fn value(self) -> Option<String>;
}

impl Attribute for String {
    fn value(self) -> Option<String> {
        Some(self)
    }
}

impl Attribute for &'static str {
    fn value(self) -> Option<String> {
        Some(self.to_owned())
    }
}

impl<T: Attribute> Attribute for Option<T> {
    fn value(self) -> Option<String> {
        self.and_then(T::value)
    }
}

/// A property that follows signals.
pub fn prop(f: impl Fn() -> String + Send + 'static) -> Box<dyn Fn() -> String + Send> {
    Box::new(f)
}

/// What to do at an event.
pub fn on<E: 'static>(f: impl FnMut(E) + 'static) -> Box<dyn FnMut(E)> {
    Box::new(f)
}

/// A value kept until what it follows changes.
pub fn memo<T: PartialEq + Send + Sync + 'static>(f: impl Fn() -> T + Send + Sync + 'static) -> Memo<T> {
    fn inner<T: PartialEq + Send + Sync + 'static>(f: Box<dyn Fn() -> T + Send + Sync>) -> Memo<T> {
        Memo::new(move |_| f())
    }
    inner(Box::new(f))
}

/// A value worked out each time it is asked for.
pub fn derive<T: Send + Sync + 'static>(f: impl Fn() -> T + Send + Sync + 'static) -> Signal<T> {
    fn inner<T: Send + Sync + 'static>(f: Box<dyn Fn() -> T + Send + Sync>) -> Signal<T> {
        Signal::derive(f)
    }
    inner(Box::new(f))
}
