//! The width of an element as it changes.

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Element, ResizeObserver};

/// Watches until it is dropped.
pub struct WidthWatch {
    observer: ResizeObserver,
    _tell: Closure<dyn FnMut()>,
}

impl Drop for WidthWatch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}

/// Tells the width of an element in whole pixels, now and each time that it changes.
pub fn watch_width(element: &Element, tell: impl Fn(f64) + 'static) -> Option<WidthWatch> {
    let watched = element.clone();
    let tell = Closure::<dyn FnMut()>::new(move || tell(f64::from(watched.client_width())));
    let observer = ResizeObserver::new(tell.as_ref().unchecked_ref()).ok()?;
    observer.observe(element);
    Some(WidthWatch { observer, _tell: tell })
}
