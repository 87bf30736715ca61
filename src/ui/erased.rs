//! Closures of one type each kind.
//!
//! leptos makes machine code for every closure that a view holds: to build it, to run it again, to
//! drop it. Behind a box all closures of a kind share that code, which takes a third off the
//! download. Views hand their closures through here; nothing else changes.

use leptos::prelude::*;

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
