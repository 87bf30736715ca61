//! Recipes in links: packed by the browser itself, behind the `#`, which no server is ever sent.

use crate::record::file::link::{LONGEST, PREFIX};
use js_sys::{Array, Function, Reflect, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, ReadableWritablePair, Response};

/// The address of this app with `text` behind the `#`; `None` where the browser cannot pack.
pub async fn with_text(text: &str) -> Option<String> {
    let packed = through(text.as_bytes(), stream("CompressionStream")?).await?;
    // Its address without what is behind the `#`.
    let location = web_sys::window()?.location();
    let page = location.href().ok()?;
    let page = page.split('#').next()?;
    Some(format!("{page}#{PREFIX}{}", letters(&packed)?))
}

/// The text of a link, or of the part of it behind the `#`. `None` where there is none, or a damaged
/// or longer one than any of ours.
pub async fn text_of(link: &str) -> Option<String> {
    let (_, packed) = link.trim().split_once(PREFIX)?;
    if packed.len() > LONGEST {
        return None;
    }
    let text = through(&bytes(packed)?, stream("DecompressionStream")?).await?;
    String::from_utf8(text).ok()
}

/// Whether the address holds a recipe.
#[must_use]
pub fn is_one(hash: &str) -> bool {
    hash.starts_with(PREFIX)
}

/// Puts a text on the clipboard; whether the browser took it.
pub async fn copy(text: &str) -> bool {
    let Some(window) = web_sys::window() else { return false };
    let navigator = window.navigator();
    // Absent where the page is no secure context; the typed way in would throw then.
    let there = Reflect::get(navigator.as_ref(), &"clipboard".into());
    if there.is_ok_and(|clipboard| clipboard.is_undefined()) {
        return false;
    }
    JsFuture::from(navigator.clipboard().write_text(text)).await.is_ok()
}

/// A stream of the browser's own (WHATWG Compression) for DEFLATE; `None` in a browser without.
fn stream(name: &str) -> Option<ReadableWritablePair> {
    let class: Function = Reflect::get(&js_sys::global(), &name.into()).ok()?.dyn_into().ok()?;
    Reflect::construct(&class, &Array::of1(&"deflate-raw".into())).ok().map(JsCast::unchecked_into)
}

async fn through(bytes: &[u8], pair: ReadableWritablePair) -> Option<Vec<u8>> {
    let parts = Array::of1(&Uint8Array::from(bytes));
    let blob = Blob::new_with_u8_array_sequence(&parts).ok()?;
    let stream = blob.stream().pipe_through(&pair);
    let response = Response::new_with_opt_readable_stream(Some(&stream)).ok()?;
    let buffer = JsFuture::from(response.array_buffer().ok()?).await.ok()?;
    Some(Uint8Array::new(&buffer).to_vec())
}

/// Base64 with the letters that an address takes (RFC 4648, section 5).
fn letters(bytes: &[u8]) -> Option<String> {
    let binary: String = bytes.iter().map(|byte| char::from(*byte)).collect();
    let letters = web_sys::window()?.btoa(&binary).ok()?;
    Some(letters.trim_end_matches('=').replace('+', "-").replace('/', "_"))
}

fn bytes(letters: &str) -> Option<Vec<u8>> {
    let letters = letters.replace('-', "+").replace('_', "/");
    let binary = web_sys::window()?.atob(&letters).ok()?;
    binary.chars().map(|c| u8::try_from(u32::from(c)).ok()).collect()
}
