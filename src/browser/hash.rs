//! The part of the address behind `#`.

/// What is after `#`, without it; empty when nothing does.
#[must_use]
pub fn read() -> String {
    let hash = web_sys::window().and_then(|window| window.location().hash().ok()).unwrap_or_default();
    hash.strip_prefix('#').unwrap_or(&hash).to_owned()
}

/// Puts `hash` in place of what is after `#`: the browser's back button does not go there again.
pub fn replace(hash: &str) {
    if let Some(window) = web_sys::window() {
        // As below.
        drop(window.location().replace(&format!("#{hash}")));
    }
}

/// Goes to `#hash`, as a step that the browser's back button undoes.
pub fn go(hash: &str) {
    if let Some(window) = web_sys::window() {
        // Refused only in a page being unloaded, where it no longer matters.
        drop(window.location().set_hash(hash));
    }
}
