//! The only code that touches the browser. Nothing here panics: what the browser refuses comes back
//! as an error or as `None`.

/// Messages to the other tabs.
pub mod channel;
/// The time, and how it reads here.
pub mod clock;
/// The browser's database.
pub mod database;
/// What happens to the page: other tabs' saves, another address, being left.
pub mod event;
/// Files exported and imported.
pub mod file;
/// The part of the address behind `#`.
pub mod hash;
/// Recipes in links.
pub mod link;
/// What the browser says about its user's habits.
pub mod locale;
/// Where the focus is, what is in view, and what the device answers to a media query.
pub mod page;
/// Drawings given out as pictures.
pub mod picture;
/// The page on paper.
pub mod print;
/// Files of the app that are asked for while it runs.
pub mod resource;
/// A library file on a shared drive.
pub mod shared;
/// The browser's local storage.
pub mod storage;
/// Light and dark.
pub mod theme;
/// The width of an element as it changes.
pub mod width;

pub use storage::LocalStore;

use wasm_bindgen::JsValue;

/// The browser's own words for what went wrong.
fn words(error: &JsValue) -> String {
    use wasm_bindgen::JsCast;
    match error.dyn_ref::<js_sys::Error>() {
        Some(error) => String::from(error.message()),
        // A DOMException is no Error to every engine, but has the same field.
        None => js_sys::Reflect::get(error, &"message".into())
            .ok()
            .and_then(|message| message.as_string())
            .or_else(|| error.as_string())
            .unwrap_or_default(),
    }
}
