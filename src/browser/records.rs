//! The store with room for all records that never change (src/start.js): it says when a text has
//! reached the disk, which local storage does not.

use crate::record::two_stores::Large;
use js_sys::Promise;
use std::cell::RefCell;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen_futures::JsFuture;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_namespace = haulmRecords, js_name = there)]
    fn is_there() -> bool;
    #[wasm_bindgen(js_namespace = haulmRecords)]
    fn holds(key: &str) -> bool;
    #[wasm_bindgen(js_namespace = haulmRecords)]
    fn alone(key: &str) -> Option<String>;
    #[wasm_bindgen(js_namespace = haulmRecords, js_name = keysAlone)]
    fn keys_alone() -> Vec<String>;
    #[wasm_bindgen(js_namespace = haulmRecords, js_name = sizeAlone)]
    fn size_alone() -> usize;
    #[wasm_bindgen(js_namespace = haulmRecords, js_name = standIn)]
    fn stand_in(key: &str, text: &str);
    #[wasm_bindgen(js_namespace = haulmRecords, js_name = standBack)]
    fn stand_back(key: &str);
    #[wasm_bindgen(js_namespace = haulmRecords)]
    fn put(key: &str, text: &str) -> Promise;
    #[wasm_bindgen(js_namespace = haulmRecords, js_name = putOpen)]
    fn put_open(key: &str, text: &str);
    #[wasm_bindgen(js_namespace = haulmRecords)]
    fn look() -> Promise;
}

/// The records in this browser's database. src/start.js has looked at it before the app starts.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Records;

thread_local! {
    /// The last text on its way. Texts reach the disk in the order in which they were put.
    static LAST: RefCell<Option<Promise>> = const { RefCell::new(None) };
}

impl Large for Records {
    fn is_there(&self) -> bool {
        is_there()
    }
    fn put(&self, key: &str, text: &str) {
        LAST.with(|last| last.replace(Some(put(key, text))));
    }
    fn put_open(&self, key: &str, text: &str) {
        put_open(key, text);
    }
    fn holds(&self, key: &str) -> bool {
        holds(key)
    }
    fn stand_in(&self, key: &str, text: &str) {
        stand_in(key, text);
    }
    fn stand_back(&self, key: &str) {
        stand_back(key);
    }
    fn alone(&self, key: &str) -> Option<String> {
        alone(key)
    }
    fn keys_alone(&self) -> Vec<String> {
        keys_alone()
    }
    fn size_alone(&self) -> usize {
        size_alone()
    }
}

/// Waits until all texts are on the disk, or have failed: then they stand in local storage all the
/// same, or [`TwoStores::is_unsure`](crate::record::TwoStores::is_unsure) says that they do not.
pub async fn settled() {
    if let Some(last) = LAST.with(RefCell::take) {
        _ = JsFuture::from(last).await;
    }
}

/// Looks anew at what the database has, such as what another tab has taken out of local storage.
/// Where there is none, nothing changes.
pub async fn look_again() {
    _ = JsFuture::from(look()).await;
}

/// Bytes that this browser lets the app keep, about; `None` where it does not tell, or there is no
/// database.
pub async fn room() -> Option<u64> {
    let asked = super::storage::manager()?.estimate().ok()?;
    let told = JsFuture::from(asked).await.ok().filter(|_| is_there())?;
    Some(js_sys::Reflect::get(&told, &"quota".into()).ok()?.as_f64()? as u64)
}
