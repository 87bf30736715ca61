//! A library file on a shared drive, chosen once and kept up to date (WICG File System Access, where the
//! browser has it). Others write to it, too: what is there is looked at right before each write and right
//! after it.

use super::database::{self, Durability, ObjectStore};
use super::words;
use js_sys::{Array, Object, Reflect};
use std::cell::RefCell;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{File, FileSystemFileHandle, FileSystemWritableFileStream};

/// The key of the file's handle in the database.
const LIBRARY: &str = "library";

#[wasm_bindgen]
extern "C" {
    // web-sys counts these as unstable.
    #[wasm_bindgen(js_name = showSaveFilePicker, catch)]
    async fn show_save_file_picker(options: &JsValue) -> Result<JsValue, JsValue>;
    #[wasm_bindgen(js_name = showOpenFilePicker, catch)]
    async fn show_open_file_picker(options: &JsValue) -> Result<JsValue, JsValue>;

    #[wasm_bindgen(extends = FileSystemFileHandle)]
    type Handle;
    #[wasm_bindgen(method, js_name = queryPermission, catch)]
    async fn query_permission(this: &Handle, wanted: &JsValue) -> Result<JsValue, JsValue>;
    #[wasm_bindgen(method, js_name = requestPermission, catch)]
    async fn request_permission(this: &Handle, wanted: &JsValue) -> Result<JsValue, JsValue>;
}

/// The file, and how it was when it was last seen.
#[derive(Default)]
struct Chosen {
    handle: Option<FileSystemFileHandle>,
    /// The stamp of the last text that was understood or written.
    seen: Option<String>,
    /// The stamp of the text that was read last and waits for [`accept`].
    looked_at: Option<String>,
}

thread_local! {
    static CHOSEN: RefCell<Chosen> = RefCell::default();
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
        let name = Reflect::get(&error, &"name".into()).ok().and_then(|name| name.as_string());
        match name.as_deref() {
            Some("AbortError") => Self::Cancelled,
            Some("NotAllowedError" | "SecurityError") => Self::NotAllowed,
            Some("NotFoundError") => Self::Gone,
            _ => Self::Other(words(&error)),
        }
    }
}

/// Whether this browser can keep a file up to date.
#[must_use]
pub fn can() -> bool {
    Reflect::has(&js_sys::global(), &"showSaveFilePicker".into()) == Ok(true)
}

/// The name of the file chosen in an earlier visit.
pub async fn recall() -> Option<String> {
    let found = database::read(ObjectStore::Files, &[LIBRARY.to_owned()]).await.ok()?;
    let handle: FileSystemFileHandle = found.into_iter().next()??.dyn_into().ok()?;
    Some(take(handle))
}

fn take(handle: FileSystemFileHandle) -> String {
    let name = handle.name();
    CHOSEN.set(Chosen { handle: Some(handle), ..Chosen::default() });
    name
}

/// Lets the person choose a new file, or one that is there; its name. A dialog for a new file empties one
/// that is there, so a file that is there is opened by another.
///
/// # Errors
/// When none was chosen.
pub async fn choose(fresh: bool, suggested: &str) -> Result<String, SharedFileError> {
    let accept = object(&[("application/json", Array::of1(&".json".into()).into())])?;
    let types = Array::of1(&object(&[("accept", accept)])?);
    let handle = if fresh {
        let options = object(&[("suggestedName", suggested.into()), ("types", types.into())])?;
        show_save_file_picker(&options).await?
    } else {
        let options = object(&[("types", types.into())])?;
        show_open_file_picker(&options).await?.unchecked_into::<Array>().get(0)
    };
    let name = take(handle.clone().unchecked_into());
    // Where it is not kept, it is chosen again in the next visit.
    _ = database::write(ObjectStore::Files, &[(LIBRARY.to_owned(), Some(handle))], Durability::Relaxed).await;
    Ok(name)
}

/// Forgets the file, which stays as it is.
pub async fn let_go() {
    CHOSEN.take();
    _ = database::write(ObjectStore::Files, &[(LIBRARY.to_owned(), None)], Durability::Relaxed).await;
}

/// The text of the file; `None` when it is as last seen. Asks the person for leave only when `ask` is set,
/// at a press.
///
/// # Errors
/// When it cannot be read, or is larger than `most` bytes.
pub async fn look(ask: bool, most: usize) -> Result<Option<String>, SharedFileError> {
    let handle = handle()?;
    let asking: &Handle = handle.unchecked_ref();
    let wanted = object(&[("mode", "readwrite".into())])?;
    let granted = |answer: JsValue| answer.as_string().as_deref() == Some("granted");
    let allowed =
        granted(asking.query_permission(&wanted).await?) || ask && granted(asking.request_permission(&wanted).await?);
    if !allowed {
        return Err(SharedFileError::NotAllowed);
    }
    let file = file(&handle).await?;
    let now = stamp(&file);
    CHOSEN.with_borrow_mut(|chosen| chosen.looked_at = None);
    if CHOSEN.with_borrow(|chosen| chosen.seen.as_ref() == Some(&now)) {
        return Ok(None);
    }
    // A size is a whole number from 0 up, at most 2⁵³.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let bytes = file.size() as u64;
    if bytes > most as u64 {
        return Err(SharedFileError::TooLarge(bytes));
    }
    let text = text(&file).await?;
    CHOSEN.with_borrow_mut(|chosen| chosen.looked_at = Some(now));
    Ok(Some(text))
}

/// The text of the last [`look`] was understood. Until then the file counts as never seen: it is read again at
/// each look and not written to.
pub fn accept() {
    CHOSEN.with_borrow_mut(|chosen| {
        if let Some(stamp) = chosen.looked_at.take() {
            chosen.seen = Some(stamp);
        }
    });
}

/// Writes the file and reads it back; `false` when somebody else has written since the last look, and
/// then nothing was written, or not what it says now.
///
/// # Errors
/// When it cannot be written.
pub async fn write(new: &str) -> Result<bool, SharedFileError> {
    let handle = handle()?;
    let before = stamp(&file(&handle).await?);
    if CHOSEN.with_borrow(|chosen| chosen.seen.as_ref() != Some(&before)) {
        return Ok(false);
    }
    let out: FileSystemWritableFileStream = JsFuture::from(handle.create_writable()).await?.unchecked_into();
    JsFuture::from(out.write_with_str(new)?).await?;
    JsFuture::from(out.close()).await?;
    let file = file(&handle).await?;
    if text(&file).await? != new {
        return Ok(false);
    }
    CHOSEN.with_borrow_mut(|chosen| chosen.seen = Some(stamp(&file)));
    Ok(true)
}

fn handle() -> Result<FileSystemFileHandle, SharedFileError> {
    CHOSEN.with_borrow(|chosen| chosen.handle.clone()).ok_or(SharedFileError::Gone)
}

async fn file(handle: &FileSystemFileHandle) -> Result<File, JsValue> {
    Ok(JsFuture::from(handle.get_file()).await?.unchecked_into())
}

async fn text(file: &File) -> Result<String, JsValue> {
    Ok(JsFuture::from(file.text()).await?.as_string().unwrap_or_default())
}

/// When it was written last, and how long it is.
fn stamp(file: &File) -> String {
    format!("{} {}", file.last_modified(), file.size())
}

fn object(fields: &[(&str, JsValue)]) -> Result<JsValue, JsValue> {
    let object = Object::new();
    for (key, value) in fields {
        Reflect::set(&object, &(*key).into(), value)?;
    }
    Ok(object.into())
}
