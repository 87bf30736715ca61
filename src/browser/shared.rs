//! A library file on a shared drive, chosen once and kept up to date (src/start.js; WICG File System
//! Access, where the browser has it).

use super::words;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_namespace = haulmFile, js_name = can)]
    fn can_() -> bool;
    #[wasm_bindgen(js_namespace = haulmFile, js_name = recall, catch)]
    async fn recall_() -> Result<JsValue, JsValue>;
    #[wasm_bindgen(js_namespace = haulmFile, js_name = choose, catch)]
    async fn choose_(fresh: bool, suggested: &str) -> Result<JsValue, JsValue>;
    #[wasm_bindgen(js_namespace = haulmFile, js_name = letGo, catch)]
    async fn let_go_() -> Result<JsValue, JsValue>;
    #[wasm_bindgen(js_namespace = haulmFile, js_name = look, catch)]
    async fn look_(ask: bool, most: f64) -> Result<JsValue, JsValue>;
    #[wasm_bindgen(js_namespace = haulmFile, js_name = write, catch)]
    async fn write_(text: &str) -> Result<JsValue, JsValue>;
}

/// Why nothing came of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SharedFileError {
    /// The person closed the dialog.
    Cancelled,
    /// The browser wants to ask the person first, or the person said no.
    NotAllowed,
    /// It is not where it was.
    Gone,
    /// It is larger than what was to be read, so many bytes.
    TooLarge(u64),
    /// Anything else, in the browser's own words.
    Other(String),
}

impl From<JsValue> for SharedFileError {
    fn from(error: JsValue) -> Self {
        let name = js_sys::Reflect::get(&error, &"name".into()).ok().and_then(|name| name.as_string());
        match name.as_deref() {
            Some("AbortError") => Self::Cancelled,
            Some("NotAllowedError" | "SecurityError") => Self::NotAllowed,
            Some("NotFoundError") => Self::Gone,
            Some("RangeError") => Self::TooLarge(words(&error).parse().unwrap_or_default()),
            _ => Self::Other(words(&error)),
        }
    }
}

/// Whether this browser can keep a file up to date.
#[must_use]
pub fn can() -> bool {
    can_()
}

/// The name of the file chosen in an earlier visit.
pub async fn recall() -> Option<String> {
    recall_().await.ok()?.as_string()
}

/// Lets the person choose a new file, or one that is there; its name.
///
/// # Errors
/// When none was chosen.
pub async fn choose(fresh: bool, suggested: &str) -> Result<String, SharedFileError> {
    Ok(choose_(fresh, suggested).await?.as_string().unwrap_or_default())
}

/// Forgets the file, which stays as it is.
pub async fn let_go() {
    _ = let_go_().await;
}

/// The text of the file; `None` when it stands as last seen. Asks the person for leave only when `ask`
/// is set, at a press.
///
/// # Errors
/// When it cannot be read, or is larger than `most` bytes.
pub async fn look(ask: bool, most: usize) -> Result<Option<String>, SharedFileError> {
    Ok(look_(ask, most as f64).await?.as_string())
}

/// Writes the file and reads it back; `false` when somebody else has written since the last look, and
/// then nothing was written, or not what it says now.
///
/// # Errors
/// When it cannot be written.
pub async fn write(text: &str) -> Result<bool, SharedFileError> {
    Ok(write_(text).await?.as_bool() == Some(true))
}
