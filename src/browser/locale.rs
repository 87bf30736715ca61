//! What the browser says about its user's habits.

use crate::quantity::format::DecimalMark;
use js_sys::{Array, Intl::NumberFormat, Object};
use wasm_bindgen::JsValue;

/// The browser's language (BCP 47), such as "de-AT".
#[must_use]
pub fn language() -> String {
    leptos::prelude::window()
        .navigator()
        .language()
        .filter(|language| !language.is_empty())
        .unwrap_or_else(|| "en".to_owned())
}

/// The decimal mark of the browser's language: the first guess, until the user chooses.
#[must_use]
pub fn decimal_mark() -> DecimalMark {
    let format = NumberFormat::new(&Array::of1(&language().into()), &Object::new()).format();
    let one_and_a_half = format.call1(&JsValue::UNDEFINED, &1.5.into()).ok().and_then(|text| text.as_string());
    if one_and_a_half.is_some_and(|text| text.contains(',')) { DecimalMark::Comma } else { DecimalMark::Point }
}
