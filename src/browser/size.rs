//! How wide a part of the page is, and when that changes.

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::{Closure, wasm_bindgen};
use web_sys::Element;

// Two calls, declared here: web-sys has them behind a feature that all it depends on would be compiled anew for.
#[wasm_bindgen]
extern "C" {
    type ResizeObserver;
    #[wasm_bindgen(constructor)]
    fn new(told: &js_sys::Function) -> ResizeObserver;
    #[wasm_bindgen(method)]
    fn observe(this: &ResizeObserver, of: &Element);
    #[wasm_bindgen(method)]
    fn disconnect(this: &ResizeObserver);
}

/// Tells of the width as long as it is kept.
pub struct WidthWatch {
    observer: ResizeObserver,
    _told: Closure<dyn Fn()>,
}

impl Drop for WidthWatch {
    fn drop(&mut self) {
        self.observer.disconnect();
    }
}

/// Tells how wide the inside of `element` is, in pixels: at once and whenever that changes.
pub fn watch_width(element: &Element, tell: impl Fn(f64) + 'static) -> WidthWatch {
    let watched = element.clone();
    let told = Closure::<dyn Fn()>::new(move || tell(f64::from(watched.client_width())));
    let observer = ResizeObserver::new(told.as_ref().unchecked_ref());
    observer.observe(element);
    WidthWatch { observer, _told: told }
}
