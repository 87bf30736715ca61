//! The page on paper.

/// Opens the browser's print dialogue; `false` where it has none.
#[must_use]
pub fn print() -> bool {
    web_sys::window().is_some_and(|window| window.print().is_ok())
}
