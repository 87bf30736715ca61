//! Elements of the page, and the parts of it that follow signals.
//!
//! The signals, memos and effects are leptos's. Its `view!` is not used: it makes a type, and with it
//! machine code, of every element, which was near half of the whole download. Here an element is a
//! few calls to code that all of them share.
//!
//! A part is built once. A closure among an element's parts or attributes is run again whenever a
//! signal it has read changes, and only what it returned is replaced.

mod closure;

pub use closure::Act;

use crate::browser::graph::{Executor, Owner, RenderEffect, document, on_cleanup, untrack};
use closure::{Ask, Hear, Hold};
use std::borrow::Cow;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::prelude::{Closure, JsValue};
use wasm_bindgen::{JsCast, UnwrapThrowExt};
use web_sys::{Element, Event, KeyboardEvent, Node, Text};

/// An element that is being built.
pub struct El(Element);

/// A piece of the page, not yet in its place.
pub enum View {
    /// Takes no room.
    Nothing,
    /// Text, shown as it is.
    Text(Cow<'static, str>),
    /// An element, or a fragment of several nodes.
    Node(Node),
    /// Several pieces, one after the other.
    Many(Vec<View>),
}

/// What can stand on the page. A closure is run again whenever a signal it has read changes.
pub trait Part {
    /// The piece of the page.
    fn view(self) -> View;
}

/// What an attribute can be set to. A closure is run again whenever a signal it has read changes.
pub trait Attribute {
    /// Sets the attribute `name` of `element`.
    fn put(self, element: &Element, name: &'static str);
}

/// What a property of an element can be set to.
pub trait ElementProperty {
    /// Sets the property `name` of `element`.
    fn put_property(self, element: &Element, name: &'static str);
}

/// An HTML element.
#[must_use]
pub fn el(tag: &'static str) -> El {
    // Only a name that is none is refused, and ours are written out.
    El(document().create_element(tag).unwrap_throw())
}

/// A button that sends no form.
#[must_use]
pub fn button() -> El {
    el("button").set("type", "button")
}

/// An SVG element.
#[must_use]
pub fn svg(tag: &'static str) -> El {
    El(document().create_element_ns(Some("http://www.w3.org/2000/svg"), tag).unwrap_throw())
}

/// Puts the app into the page's body.
pub fn mount(app: impl FnOnce() -> View + 'static) {
    _ = Executor::init_wasm_bindgen();
    let owner = Owner::new();
    owner.with(|| {
        if let Some(body) = document().body() {
            app().append_to(&body);
        }
    });
    // It lasts as long as the page.
    std::mem::forget(owner);
}

impl El {
    /// Its classes.
    #[must_use]
    pub fn class(self, names: impl Attribute) -> Self {
        self.set("class", names)
    }

    /// One class more, where `on`.
    #[must_use]
    pub fn class_if(self, name: &'static str, on: impl Flag) -> Self {
        on.toggle(&self.0, name);
        self
    }

    /// Sets an attribute. `None` and `false` leave it out.
    #[must_use]
    pub fn set(self, name: &'static str, value: impl Attribute) -> Self {
        value.put(&self.0, name);
        self
    }

    /// Sets a property, such as what a box holds.
    #[must_use]
    pub fn property(self, name: &'static str, value: impl ElementProperty) -> Self {
        value.put_property(&self.0, name);
        self
    }

    /// Puts `part` behind what it holds so far.
    #[must_use]
    pub fn child(self, part: impl Part) -> Self {
        part.view().append_to(&self.0);
        self
    }

    /// Puts a text behind what it holds so far.
    #[must_use]
    pub fn text(self, text: &str) -> Self {
        _ = self.0.append_with_str_1(text);
        self
    }

    /// Fills it with markup of our own making: nothing that a person wrote goes through here unescaped.
    #[must_use]
    pub fn markup(self, markup: &str) -> Self {
        self.0.set_inner_html(markup);
        self
    }

    /// What to do at an event.
    #[must_use]
    pub fn on(self, event: &'static str, act: impl FnMut(Event) + 'static) -> Self {
        self.hear(event, Box::new(act))
    }

    /// What to do at a key.
    #[must_use]
    pub fn on_key(self, mut act: impl FnMut(KeyboardEvent) + 'static) -> Self {
        self.hear("keydown", Box::new(move |event: Event| act(event.unchecked_into())))
    }

    /// What to do at a click.
    #[must_use]
    pub fn on_click(self, act: impl FnMut() + 'static) -> Self {
        self.click(Box::new(act))
    }

    fn click(self, mut act: Box<dyn Act>) -> Self {
        self.listen("click", Box::new(move |_| act.act()))
    }

    fn hear(self, event: &'static str, mut act: Box<dyn Hear>) -> Self {
        self.listen(event, Box::new(move |event| act.hear(event)))
    }

    fn listen(self, event: &'static str, act: Box<dyn FnMut(Event)>) -> Self {
        let act = Closure::wrap(act).into_js_value();
        _ = self.0.add_event_listener_with_callback(event, act.unchecked_ref());
        self
    }
}

impl View {
    /// Puts its nodes into `place`, instead of what was there.
    pub fn fill(self, place: &Element) {
        place.set_text_content(None);
        self.append_to(place);
    }

    fn append_to(self, parent: &Node) {
        self.insert(parent, None);
    }

    /// Puts its nodes into `parent`, before `next` or at the end.
    fn insert(self, parent: &Node, next: Option<&Node>) {
        match self {
            Self::Nothing => {}
            Self::Text(text) => put(parent, &text_node(&text), next),
            Self::Node(node) => put(parent, &node, next),
            Self::Many(parts) => parts.into_iter().for_each(|part| part.insert(parent, next)),
        }
    }
}

fn put(parent: &Node, node: &Node, next: Option<&Node>) {
    // Refused only where something else, such as a translator, has moved our nodes away: what is there stays then.
    _ = parent.insert_before(node, next);
}

fn text_node(text: &str) -> Text {
    document().create_text_node(text)
}

/// A mark in the page that nobody sees.
fn mark() -> Node {
    document().create_comment("").into()
}

/// Runs `act` now, and again whenever a signal it has read changes, as long as the part of the page
/// lasts that asks for it.
pub fn follow(mut act: Box<dyn Act>) {
    let effect = RenderEffect::new(move |_: Option<()>| act.act());
    on_cleanup(move || drop(effect));
}

/// The nodes between two marks.
struct Range {
    start: Node,
    end: Node,
}

impl Range {
    fn new() -> Self {
        Self { start: mark(), end: mark() }
    }

    /// Puts `view` in the place of what was there.
    fn fill(&self, view: View) {
        let Some(parent) = self.end.parent_node() else { return };
        while let Some(node) = self.start.next_sibling().filter(|node| *node != self.end) {
            if parent.remove_child(&node).is_err() {
                break;
            }
        }
        view.insert(&parent, Some(&self.end));
    }

    /// Takes nodes and marks off the page.
    fn remove(&self) {
        self.fill(View::Nothing);
        for mark in [&self.start, &self.end] {
            if let Some(parent) = mark.parent_node() {
                _ = parent.remove_child(mark);
            }
        }
    }

    /// Puts nodes and marks before `next`.
    fn shift(&self, parent: &Node, next: &Node) {
        let mut at = Some(self.start.clone());
        while let Some(node) = at {
            at = if node == self.end { None } else { node.next_sibling() };
            put(parent, &node, Some(next));
        }
    }
}

/// Where a part that follows signals stands. Most are a text and stay one: that text is changed in its
/// place.
enum Place {
    Text(Text),
    Range(Range),
}

/// A part that follows signals.
fn following(make: Box<dyn Make>) -> View {
    let fragment: Node = document().create_document_fragment().into();
    let parent = fragment.clone();
    let mut place = None;
    follow(Box::new(move || {
        let view = make.make();
        place = Some(match (place.take(), view) {
            (None, View::Nothing) => Place::Text(first_text(&parent, "")),
            (None, View::Text(text)) => Place::Text(first_text(&parent, &text)),
            (None, view) => {
                let range = Range::new();
                put(&parent, &range.start, None);
                put(&parent, &range.end, None);
                range.fill(view);
                Place::Range(range)
            }
            (Some(Place::Text(node)), View::Nothing) => {
                node.set_data("");
                Place::Text(node)
            }
            (Some(Place::Text(node)), View::Text(text)) => {
                if node.data() != text {
                    node.set_data(&text);
                }
                Place::Text(node)
            }
            (Some(Place::Text(node)), view) => {
                let range = Range::new();
                if let Some(parent) = node.parent_node() {
                    put(&parent, &range.start, Some(&node));
                    _ = parent.replace_child(&range.end, &node);
                }
                range.fill(view);
                Place::Range(range)
            }
            (Some(Place::Range(range)), view) => {
                range.fill(view);
                Place::Range(range)
            }
        });
    }));
    View::Node(fragment)
}

fn first_text(parent: &Node, text: &str) -> Text {
    let node = text_node(text);
    put(parent, &node, None);
    node
}

/// A row to come: what it is known by, and what makes it.
type Row = (String, Box<dyn FnOnce() -> View>);

/// A row of a list for each of `items`. A row whose key stays is kept as it is, with what was typed
/// in it and the focus.
pub fn each<T: 'static, V: Part>(
    items: impl Fn() -> Vec<T> + 'static,
    key: impl Fn(&T) -> String + 'static,
    make: impl Fn(T) -> V + 'static,
) -> View {
    let make = Rc::new(make);
    list(Box::new(move || {
        let row = |item| -> Row {
            let make = make.clone();
            (key(&item), Box::new(move || make(item).view()))
        };
        items().into_iter().map(row).collect()
    }))
}

fn list(rows: Box<dyn Fn() -> Vec<Row>>) -> View {
    let fragment: Node = document().create_document_fragment().into();
    let end = mark();
    put(&fragment, &end, None);
    // Rows outlast the run of the effect that made them.
    let owner = Owner::current().unwrap_or_default();
    let kept: RefCell<Vec<(String, Owner, Range)>> = RefCell::default();
    follow(Box::new(move || {
        let rows = rows();
        let Some(parent) = end.parent_node() else { return };
        let mut before = kept.take();
        let mut now = Vec::with_capacity(rows.len());
        for (key, make) in rows {
            let place = before.iter().position(|(other, ..)| *other == key);
            now.push(match place {
                Some(at) => before.remove(at),
                None => {
                    let own = owner.child();
                    let range = Range::new();
                    put(&parent, &range.start, Some(&end));
                    put(&parent, &range.end, Some(&end));
                    range.fill(untrack(|| own.with(make)));
                    (key, own, range)
                }
            });
        }
        for (_, own, range) in before {
            own.cleanup();
            range.remove();
        }
        let mut next = end.clone();
        for (.., range) in now.iter().rev() {
            if range.end.next_sibling().as_ref() != Some(&next) {
                range.shift(&parent, &next);
            }
            next = range.start.clone();
        }
        kept.replace(now);
    }));
    View::Node(fragment)
}

/// Several parts, one after the other.
#[must_use]
pub fn many<const N: usize>(parts: [View; N]) -> View {
    View::Many(parts.into())
}

impl<P: Part> FromIterator<P> for View {
    fn from_iter<I: IntoIterator<Item = P>>(parts: I) -> Self {
        Self::Many(parts.into_iter().map(P::view).collect())
    }
}

impl Part for View {
    fn view(self) -> View {
        self
    }
}

impl Part for El {
    fn view(self) -> View {
        View::Node(self.0.into())
    }
}

impl Part for () {
    fn view(self) -> View {
        View::Nothing
    }
}

impl Part for &'static str {
    fn view(self) -> View {
        View::Text(self.into())
    }
}

impl Part for Cow<'static, str> {
    fn view(self) -> View {
        View::Text(self)
    }
}

impl<P: Part, const N: usize> Part for [P; N] {
    fn view(self) -> View {
        self.into_iter().collect()
    }
}

impl Part for String {
    fn view(self) -> View {
        View::Text(self.into())
    }
}

impl<P: Part> Part for Option<P> {
    fn view(self) -> View {
        self.map_or(View::Nothing, P::view)
    }
}

impl<P: Part> Part for Vec<P> {
    fn view(self) -> View {
        self.into_iter().collect()
    }
}

impl<V: Part, F: Fn() -> V + 'static> Part for F {
    fn view(self) -> View {
        following(Box::new(self))
    }
}

/// A value of an attribute: text, or set bare, or left out.
pub trait AttributeValue {
    /// The attribute's text.
    fn text(self) -> Option<Cow<'static, str>>;
}

impl AttributeValue for &'static str {
    fn text(self) -> Option<Cow<'static, str>> {
        Some(self.into())
    }
}

impl AttributeValue for String {
    fn text(self) -> Option<Cow<'static, str>> {
        Some(self.into())
    }
}

impl AttributeValue for bool {
    fn text(self) -> Option<Cow<'static, str>> {
        self.then_some("".into())
    }
}

impl<V: AttributeValue> AttributeValue for Option<V> {
    fn text(self) -> Option<Cow<'static, str>> {
        self.and_then(V::text)
    }
}

fn attribute(element: &Element, name: &str, value: Option<&str>) {
    _ = match value {
        Some(value) => element.set_attribute(name, value),
        None => element.remove_attribute(name),
    };
}

macro_rules! plain_attribute {
    ($($kind:ty),*) => {$(
        impl Attribute for $kind {
            fn put(self, element: &Element, name: &'static str) {
                if let Some(text) = self.text() {
                    attribute(element, name, Some(&text));
                }
            }
        }
    )*};
}

plain_attribute!(&'static str, String, bool, Option<&'static str>, Option<String>);

impl<V: AttributeValue, F: Fn() -> V + 'static> Attribute for F {
    fn put(self, element: &Element, name: &'static str) {
        follow_attribute(element.clone(), name, Box::new(self));
    }
}

fn follow_attribute(element: Element, name: &'static str, value: Box<dyn Tell>) {
    let mut last = None;
    follow(Box::new(move || {
        let now = value.tell();
        if last != now {
            attribute(&element, name, now.as_deref());
            last = now;
        }
    }));
}

/// Yes or no, or a closure that says so and follows signals.
pub trait Flag {
    /// Sets a class of `element`, or takes it away.
    fn toggle(self, element: &Element, class: &'static str);
}

fn toggle(element: &Element, class: &str, on: bool) {
    _ = element.class_list().toggle_with_force(class, on);
}

impl Flag for bool {
    fn toggle(self, element: &Element, class: &'static str) {
        toggle(element, class, self);
    }
}

impl<F: Fn() -> bool + 'static> Flag for F {
    fn toggle(self, element: &Element, class: &'static str) {
        follow_flag(element.clone(), class, Box::new(self));
    }
}

fn follow_flag(element: Element, class: &'static str, on: Box<dyn Ask>) {
    follow(Box::new(move || toggle(&element, class, on.ask())));
}

fn property(element: &Element, name: &str, value: &JsValue) {
    let name = JsValue::from_str(name);
    // To set what a box holds already would move the caret.
    if js_sys::Reflect::get(element, &name).as_ref() != Ok(value) {
        _ = js_sys::Reflect::set(element, &name, value);
    }
}

impl<V: Into<JsValue>, F: Fn() -> V + 'static> ElementProperty for F {
    fn put_property(self, element: &Element, name: &'static str) {
        follow_property(element.clone(), name, Box::new(self));
    }
}

fn follow_property(element: Element, name: &'static str, value: Box<dyn Hold>) {
    follow(Box::new(move || property(&element, name, &value.hold())));
}

/// What makes a piece of the page.
trait Make {
    fn make(&self) -> View;
}

impl<V: Part, F: Fn() -> V> Make for F {
    fn make(&self) -> View {
        self().view()
    }
}

/// What makes the text of an attribute.
trait Tell {
    fn tell(&self) -> Option<Cow<'static, str>>;
}

impl<V: AttributeValue, F: Fn() -> V> Tell for F {
    fn tell(&self) -> Option<Cow<'static, str>> {
        self().text()
    }
}
