//! Where the focus is, what is in view, and what the device answers to a media query.

use leptos::ev::{FocusEvent, KeyboardEvent};
use leptos::prelude::{document, window};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{
    ClipboardEvent, Element, Event, HtmlElement, HtmlInputElement, Node, ScrollIntoViewOptions, ScrollLogicalPosition,
};

/// The language that the page is written in, as a BCP 47 code.
pub fn set_language(code: &str) {
    if let Some(root) = document().document_element() {
        // Refused for a name that is none; this one is.
        _ = root.set_attribute("lang", code);
    }
}

/// Takes the first paint of index.html away.
pub fn remove_first_paint() {
    if let Some(start) = document().get_element_by_id("start") {
        start.remove();
    }
}

/// Loads the page again.
pub fn reload() {
    // A browser that refuses leaves the page as it is.
    _ = window().location().reload();
}

/// The title of window and tab.
pub fn set_title(title: &str) {
    document().set_title(title);
}

/// Whether the device answers to a media query now.
#[must_use]
pub fn matches(media: &str) -> bool {
    window().match_media(media).ok().flatten().is_some_and(|list| list.matches())
}

/// Tells whether the device answers to a media query each time that changes, as long as the page lasts.
pub fn watch(media: &str, tell: impl Fn(bool) + 'static) {
    let Ok(Some(list)) = window().match_media(media) else { return };
    let source = list.clone();
    let changed = Closure::<dyn Fn()>::new(move || tell(source.matches()));
    if list.add_event_listener_with_callback("change", changed.as_ref().unchecked_ref()).is_ok() {
        changed.forget();
    }
}

fn find(selector: &str) -> Option<HtmlElement> {
    document().query_selector(selector).ok().flatten()?.dyn_into().ok()
}

/// Puts the focus on the element with an id and brings it into view.
pub fn focus(id: &str) {
    if let Some(element) = document().get_element_by_id(id).and_then(|element| element.dyn_into::<HtmlElement>().ok()) {
        // What is folded away can take no focus.
        unfold(&element);
        _ = element.focus();
    }
}

/// The field that has the focus, by its key.
#[must_use]
pub fn focused_field() -> Option<String> {
    document().active_element()?.get_attribute("data-field")
}

/// The id of the box that is typed in; `None` where the focus is on something else.
#[must_use]
pub fn box_in_use() -> Option<String> {
    let element = document().active_element()?;
    let takes_text = element.matches("input[type=text], textarea").unwrap_or(false);
    takes_text.then(|| element.id()).filter(|id| !id.is_empty())
}

/// Puts the focus into a field by its key and selects what it holds, so that the next key replaces it.
pub fn focus_field(key: &str) {
    if let Some(element) = find(&format!("[data-field=\"{key}\"]")) {
        unfold(&element);
        _ = element.focus();
        if let Some(input) = element.dyn_ref::<HtmlInputElement>() {
            input.select();
        }
    }
}

/// Opens a fold by its id and brings it into view.
pub fn open_fold(id: &str) {
    unfold_by_id(id);
    if let Some(fold) = document().get_element_by_id(id) {
        fold.scroll_into_view();
    }
}

/// Opens the fold with an id.
pub fn unfold_by_id(id: &str) {
    if let Some(fold) = document().get_element_by_id(id) {
        _ = fold.set_attribute("open", "");
    }
}

/// Opens every `<details>` around an element.
fn unfold(element: &Element) {
    let mut around = element.parent_element();
    while let Some(parent) = around {
        if parent.tag_name() == "DETAILS" {
            _ = parent.set_attribute("open", "");
        }
        around = parent.parent_element();
    }
}

/// Puts the focus into the field after the one with `key`, in the order of the page, and selects
/// what it holds. At the last field nothing happens.
pub fn focus_after(key: &str) {
    let fields = inputs("input[data-field]");
    let after = fields.iter().skip_while(|field| field.get_attribute("data-field").as_deref() != Some(key)).skip(1);
    select_first(after);
}

/// Puts the focus into the box below the focused one in its grid column; after the last one into the first box
/// of the next column.
pub fn focus_below() {
    let column = column_below();
    if let Some(next) = column.get(1) {
        focus_field(next);
    } else if let Some(last) = column.first() {
        focus_after(last);
    }
}

/// The keys of the focused box in a grid and of those below it in the same column.
#[must_use]
pub fn column_below() -> Vec<String> {
    let Some(focused) = document().active_element() else { return Vec::new() };
    let (Some(column), Some(key)) = (focused.get_attribute("data-column"), focused.get_attribute("data-field")) else {
        return Vec::new();
    };
    let keys = inputs(&format!("input[data-column=\"{column}\"]"));
    let keys = keys.iter().filter_map(|input| input.get_attribute("data-field"));
    keys.skip_while(|other| *other != key).collect()
}

fn inputs(selector: &str) -> Vec<HtmlInputElement> {
    let Ok(found) = document().query_selector_all(selector) else { return Vec::new() };
    (0..found.length()).filter_map(|at| found.get(at)).filter_map(|node| node.dyn_into().ok()).collect()
}

/// Puts the focus into the first of the boxes that can be typed in and selects what it holds. A box in a closed fold
/// has its place on the page in some engines, but takes no focus.
fn select_first<'a>(mut boxes: impl Iterator<Item = &'a HtmlInputElement>) {
    let folded = |input: &HtmlInputElement| input.closest("details:not([open])").is_ok_and(|fold| fold.is_some());
    if let Some(input) = boxes.find(|input| input.get_client_rects().length() > 0 && !folded(input)) {
        _ = input.focus();
        input.select();
    }
}

/// The text that is being pasted.
#[must_use]
pub fn pasted(event: &ClipboardEvent) -> Option<String> {
    event.clipboard_data()?.get_data("text").ok()
}

/// Pushes what scrolls around an element just as far that all of it is in view.
pub fn reveal(element: &Element) {
    let options = ScrollIntoViewOptions::new();
    options.set_block(ScrollLogicalPosition::Nearest);
    options.set_inline(ScrollLogicalPosition::Nearest);
    element.scroll_into_view_with_scroll_into_view_options(&options);
}

/// Brings all elements that match `selector` into view, each in what scrolls around it, and puts
/// the focus on the first one.
pub fn show(selector: &str) {
    let Ok(found) = document().query_selector_all(selector) else { return };
    let found: Vec<HtmlElement> =
        (0..found.length()).filter_map(|at| found.get(at)).filter_map(|node: Node| node.dyn_into().ok()).collect();
    for element in found.iter().rev() {
        element.scroll_into_view();
    }
    if let Some(first) = found.first() {
        _ = first.focus();
    }
}

/// Whether a key goes into a box that takes text, so that it is no shortcut.
#[must_use]
pub fn in_text(event: &KeyboardEvent) -> bool {
    let Some(element) = event.target().and_then(|target| target.dyn_into::<Element>().ok()) else { return false };
    match element.dyn_ref::<HtmlInputElement>() {
        Some(input) => !matches!(input.type_().as_str(), "checkbox" | "radio" | "file"),
        None => element.tag_name() == "TEXTAREA",
    }
}

/// Whether the element that the focus goes to lies inside the one that hears of it.
#[must_use]
pub fn stays_inside(event: &FocusEvent) -> bool {
    let inside = || {
        let around = event.current_target()?.dyn_into::<Node>().ok()?;
        let to = event.related_target()?.dyn_into::<Node>().ok()?;
        Some(around.contains(Some(&to)))
    };
    inside().unwrap_or(false)
}

/// Whether the focus goes from the element that hears of it to another part of the page.
#[must_use]
pub fn leaves(event: &FocusEvent) -> bool {
    event.related_target().is_some() && !stays_inside(event)
}

/// Whether something outside the elements that match `selector` was pressed.
#[must_use]
pub fn is_outside(event: &Event, selector: &str) -> bool {
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    target.is_none_or(|target| target.closest(selector).is_ok_and(|around| around.is_none()))
}

/// Puts the focus on the button that opens the part of the page with an id.
pub fn focus_opener(id: &str) {
    if let Some(element) = find(&format!("[aria-controls=\"{id}\"]")) {
        _ = element.focus();
    }
}

/// Takes the focus from a box of the page's content, so that what was typed there counts as entered.
pub fn leave_box() {
    let active = document().active_element().and_then(|element| element.dyn_into::<HtmlElement>().ok());
    if let Some(element) = active.filter(|element| matches!(element.closest("#content"), Ok(Some(_)))) {
        _ = element.blur();
    }
}

/// Whether the browser knows of no network.
#[must_use]
pub fn is_offline() -> bool {
    web_sys::window().is_some_and(|window| !window.navigator().on_line())
}

/// Whether nobody sees the page just now.
#[must_use]
pub fn is_hidden() -> bool {
    document().hidden()
}
