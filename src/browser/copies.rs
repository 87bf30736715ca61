//! The second copy of the records that never change (src/start.js): it says when a text has reached the disk, which local storage
//! does not.

use js_sys::{Array, Promise};
use std::cell::RefCell;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen_futures::JsFuture;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_namespace = haulmCopies, js_name = put, catch)]
    fn put_copy(key: &str, text: &str) -> Result<Promise, JsValue>;
    #[wasm_bindgen(js_namespace = haulmCopies, js_name = level, catch)]
    fn level_copies() -> Result<Promise, JsValue>;
}

thread_local! {
    /// The last copy on its way. Copies reach the disk in the order in which they were made.
    static LAST: RefCell<Option<Promise>> = const { RefCell::new(None) };
}

/// Makes a second copy of a record.
pub fn put(key: &str, text: &str) {
    if let Ok(copy) = put_copy(key, text) {
        LAST.with(|last| last.replace(Some(copy)));
    }
}

/// Waits until all copies are on the disk, or have failed: the first one holds then all the same.
pub async fn settled() {
    if let Some(last) = LAST.with(RefCell::take) {
        _ = JsFuture::from(last).await;
    }
}

/// Keys and texts of records that only the second copy has; what has no second copy gets one.
pub async fn level() -> Vec<(String, String)> {
    let Ok(asked) = level_copies() else { return Vec::new() };
    let Ok(lost) = JsFuture::from(asked).await else { return Vec::new() };
    let texts: Vec<String> = Array::from(&lost).iter().filter_map(|text| text.as_string()).collect();
    texts.chunks_exact(2).filter_map(|pair| Some((pair.first()?.clone(), pair.get(1)?.clone()))).collect()
}
