//! Files of the app that are asked for while it runs.

use super::words;
use leptos::prelude::window;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// Tells the text of one of the app's own files once it has arrived, or the browser's words, or the status that the host answered with.
/// The app need not be mounted yet.
pub fn text(path: String, tell: impl FnOnce(Result<String, String>) + 'static) {
    wasm_bindgen_futures::spawn_local(async move { tell(fetched(&path).await) });
}

async fn fetched(path: &str) -> Result<String, String> {
    let told = |error| words(&error);
    let response: Response = JsFuture::from(window().fetch_with_str(path)).await.map_err(told)?.unchecked_into();
    if !response.ok() {
        return Err(response.status().to_string());
    }
    let text = JsFuture::from(response.text().map_err(told)?).await.map_err(told)?;
    Ok(text.as_string().unwrap_or_default())
}
