//! What the browser says about its user's habits.

use crate::quantity::format::DecimalMark;
use js_sys::{Array, Function, Intl::NumberFormat, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// The browser's language (BCP 47), such as "de-AT".
#[must_use]
pub fn language() -> String {
    leptos::prelude::window()
        .navigator()
        .language()
        .filter(|language| !language.is_empty())
        .unwrap_or_else(|| "en".to_owned())
}

/// The decimal mark of the browser's language: the first guess, until the user chooses. A point where the browser names a language
/// that it does not know itself, as some do without one.
#[must_use]
pub fn decimal_mark() -> DecimalMark {
    one_and_a_half().filter(|text| text.contains(',')).map_or(DecimalMark::Point, |_| DecimalMark::Comma)
}

/// 1.5 as it is written in the browser's language.
fn one_and_a_half() -> Option<String> {
    let intl = Reflect::get(&js_sys::global(), &"Intl".into()).ok()?;
    let constructor: Function = Reflect::get(&intl, &"NumberFormat".into()).ok()?.dyn_into().ok()?;
    // By `Reflect`, since a name that is no language's is an exception.
    let format: NumberFormat = Reflect::construct(&constructor, &Array::of1(&language().into())).ok()?.unchecked_into();
    format.format().call1(&JsValue::UNDEFINED, &1.5.into()).ok()?.as_string()
}
