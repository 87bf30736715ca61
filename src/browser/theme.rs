//! Light and dark.

use crate::record::content::settings::Theme;

/// Puts the theme on the root element as `data-theme="light"` or `"dark"`; for [`Theme::System`] the
/// attribute is absent and the style sheet's `prefers-color-scheme` decides.
pub fn apply(theme: Theme) {
    let Some(root) = web_sys::window().and_then(|w| w.document()).and_then(|d| d.document_element()) else {
        return;
    };
    // An attribute name that is always valid cannot be refused.
    drop(match theme {
        Theme::System => root.remove_attribute("data-theme"),
        Theme::Light => root.set_attribute("data-theme", "light"),
        Theme::Dark => root.set_attribute("data-theme", "dark"),
    });
}

/// Whether the device asks for dark.
#[must_use]
pub fn device_is_dark() -> bool {
    let query = web_sys::window().and_then(|w| w.match_media("(prefers-color-scheme: dark)").ok().flatten());
    query.is_some_and(|query| query.matches())
}
