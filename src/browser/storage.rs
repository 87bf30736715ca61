//! The browser's local storage.

use super::words;
use crate::record::{Store, StoreError};
use gloo_storage::{LocalStorage, Storage as _};
use wasm_bindgen::JsValue;

/// The browser's local storage: texts that outlast the page, shared by the tabs of one origin. It
/// writes a text whole or not at all.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct LocalStore;

impl LocalStore {
    /// The storage, if the browser gives it out. Asked anew each time: it can be taken away.
    fn raw(self) -> Result<web_sys::Storage, StoreError> {
        let window = web_sys::window().ok_or(StoreError::Blocked)?;
        match window.local_storage() {
            // gloo panics where this is an error or nothing, so it is asked only now.
            Ok(Some(_)) => Ok(LocalStorage::raw()),
            Ok(None) => Err(StoreError::Blocked),
            Err(error) => Err(reason(&error)),
        }
    }

    /// Whether something can be written and read back. Some browsers give the storage out and then
    /// refuse every write, so this writes a key of its own and removes it.
    ///
    /// # Errors
    /// Why not.
    pub fn probe(self) -> Result<(), StoreError> {
        let key = "haulm/probe";
        self.write(key, "1")?;
        let there = self.read(key)?;
        self.remove(key)?;
        if there.as_deref() == Some("1") { Ok(()) } else { Err(StoreError::Blocked) }
    }
}

impl Store for LocalStore {
    fn keys(&self) -> Result<Vec<String>, StoreError> {
        let raw = self.raw()?;
        // The keys as the object's own properties: one call, and no key moves to another place
        // meanwhile because another tab writes.
        let keys = js_sys::Object::keys(raw.as_ref());
        Ok(keys.iter().filter_map(|key| key.as_string()).collect())
    }

    fn read(&self, key: &str) -> Result<Option<String>, StoreError> {
        self.raw()?.get_item(key).map_err(|error| reason(&error))
    }

    fn write(&self, key: &str, text: &str) -> Result<(), StoreError> {
        self.raw()?.set_item(key, text).map_err(|error| reason(&error))
    }

    fn remove(&self, key: &str) -> Result<(), StoreError> {
        self.raw()?.remove_item(key).map_err(|error| reason(&error))
    }
}

/// Tells a full storage from a blocked one by the exception's name (WHATWG HTML, Web Storage; the
/// second name of the first is an older one).
fn reason(error: &JsValue) -> StoreError {
    let name = js_sys::Reflect::get(error, &"name".into()).ok().and_then(|name| name.as_string());
    match name.as_deref() {
        Some("QuotaExceededError" | "NS_ERROR_DOM_QUOTA_REACHED") => StoreError::Full,
        Some("SecurityError" | "InvalidStateError" | "NS_ERROR_NOT_AVAILABLE") => StoreError::Blocked,
        _ => StoreError::Other(words(error)),
    }
}

/// Asks the browser not to clear this origin's storage of its own accord. `None` where it cannot be
/// asked, as on a page from a file.
pub async fn ask_for_persistence() -> Option<bool> {
    wasm_bindgen_futures::JsFuture::from(manager()?.persist().ok()?).await.ok()?.as_bool()
}

/// The manager of what this origin keeps, where there is one.
pub(super) fn manager() -> Option<web_sys::StorageManager> {
    let navigator = web_sys::window()?.navigator();
    // Absent where the page is no secure context; the typed way in would throw then.
    let manager = js_sys::Reflect::get(navigator.as_ref(), &"storage".into()).ok()?;
    (!manager.is_undefined()).then(|| navigator.storage())
}
