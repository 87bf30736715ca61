//! The page on paper.

use leptos::leptos_dom::helpers::window_event_listener_untyped;
use leptos::mount::mount_to;
use leptos::prelude::AnyView;
use std::cell::RefCell;
use std::rc::Rc;

/// Opens the browser's print dialogue; `false` where it has none.
#[must_use]
pub fn print() -> bool {
    web_sys::window().is_some_and(|window| window.print().is_ok())
}

/// While the browser prints, and where `wanted`, what `documents` makes is at the end of the page's body. It is complete when the
/// browser's `beforeprint` is over: a signal that the page follows would change it only later, when a button has printed already.
pub fn on_print(wanted: impl Fn() -> bool + 'static, documents: impl Fn() -> AnyView + Clone + 'static) {
    let shown = Rc::new(RefCell::new(None));
    let gone = Rc::clone(&shown);
    window_event_listener_untyped("beforeprint", move |_| {
        let body = web_sys::window().and_then(|window| window.document()?.body()).filter(|_| wanted());
        // The one before goes first, should the browser not have told that it has printed.
        drop(shown.take());
        shown.replace(body.map(|body| mount_to(body, documents.clone())));
    });
    window_event_listener_untyped("afterprint", move |_| drop(gone.take()));
}
