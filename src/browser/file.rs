//! Files exported and imported.

use super::words;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, HtmlAnchorElement, HtmlInputElement, Url};

/// A file that the person chose or dropped.
pub use web_sys::File as ChosenFile;

/// How long an address of a file stays good after the click, in milliseconds: some engines begin to
/// read it only later.
const LINGER: i32 = 10_000;

/// Why a chosen file was not read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ReadFileError {
    /// Larger than wanted; nothing was read.
    TooLarge {
        /// Its size in bytes.
        bytes: u64,
        /// The largest size read.
        limit: u64,
    },
    /// The browser could not read it; its words.
    Unreadable(String),
}

/// Hands a text to the user as a file called `name`.
///
/// # Errors
/// The browser's words.
pub fn give_out(name: &str, media_type: &str, text: &str) -> Result<(), String> {
    give(name, media_type, &text.into()).map_err(|error| words(&error))
}

/// Hands bytes to the user as a file called `name`.
///
/// # Errors
/// The browser's words.
pub fn give_out_bytes(name: &str, media_type: &str, bytes: &[u8]) -> Result<(), String> {
    give(name, media_type, &js_sys::Uint8Array::from(bytes)).map_err(|error| words(&error))
}

fn give(name: &str, media_type: &str, part: &JsValue) -> Result<(), JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(media_type);
    // The sequence may hold texts as well as bytes.
    let blob = Blob::new_with_blob_sequence_and_options(&js_sys::Array::of1(part), &options)?;
    give_blob(name, &blob)
}

/// Hands what is there already to the user.
pub(super) fn give_blob(name: &str, blob: &Blob) -> Result<(), JsValue> {
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    let document = window.document().ok_or(JsValue::NULL)?;
    let url = Url::create_object_url_with_blob(blob)?;
    let link: HtmlAnchorElement = document.create_element("a")?.unchecked_into();
    link.set_href(&url);
    link.set_download(name);
    link.click();
    let revoke = Closure::once_into_js(move || drop(Url::revoke_object_url(&url)));
    window.set_timeout_with_callback_and_timeout_and_arguments_0(revoke.unchecked_ref(), LINGER)?;
    Ok(())
}

/// A file name made from any text: letters, digits and hyphens of it, and `ending`.
#[must_use]
pub fn file_name(text: &str, ending: &str) -> String {
    let mut name = String::new();
    for c in text.chars().take(60) {
        if c.is_alphanumeric() {
            name.extend(c.to_lowercase());
        } else if !name.is_empty() && !name.ends_with('-') {
            name.push('-');
        }
    }
    let name = name.trim_end_matches('-');
    format!("{}.{ending}", if name.is_empty() { "recipe" } else { name })
}

/// The first file chosen in a file input, which is then empty again so that the same file can be
/// chosen once more.
#[must_use]
pub fn chosen(input: &HtmlInputElement) -> Option<web_sys::File> {
    let file = input.files()?.get(0)?;
    input.set_value("");
    Some(file)
}

/// The text of a file of at most `limit` bytes. What is no UTF-8 in it becomes U+FFFD.
///
/// # Errors
/// Too large, known before it is read; or unreadable.
pub async fn read_text(file: &web_sys::File, limit: u64) -> Result<String, ReadFileError> {
    let size = file.size();
    // A size is a whole number from 0 up, at most 2⁵³.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let bytes = size as u64;
    if bytes > limit {
        return Err(ReadFileError::TooLarge { bytes, limit });
    }
    let text = JsFuture::from(file.text()).await.map_err(|error| ReadFileError::Unreadable(words(&error)))?;
    text.as_string().ok_or_else(|| ReadFileError::Unreadable(String::new()))
}
