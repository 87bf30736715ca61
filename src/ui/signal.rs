//! leptos's signals, with one piece of machine code for values of all types.
//!
//! leptos makes the whole of a signal anew for every type of value, which was an eighth of the
//! download. Here every signal holds a [`SignalValue`], and only the cast to the value's own type is made for
//! each.

use crate::browser::element::Act;
use crate::browser::graph;
use crate::browser::graph::TimeoutHandle;
use crate::browser::graph::{Get as _, GetUntracked as _, Notify as _, Set as _, Track as _, UpdateUntracked as _};
use std::any::Any;
use std::marker::PhantomData;
use std::sync::Arc;
use std::time::Duration;

/// A value of any type, and how two of that type are compared.
#[derive(Clone)]
struct SignalValue {
    value: BoxedValue,
    same: fn(&BoxedValue, &BoxedValue) -> bool,
}

/// The value; nothing while it is being changed.
type BoxedValue = Option<Arc<dyn Any + Send + Sync>>;

impl PartialEq for SignalValue {
    fn eq(&self, other: &Self) -> bool {
        (self.same)(&self.value, &other.value)
    }
}

impl SignalValue {
    fn new<T: Send + Sync + 'static>(value: T) -> Self {
        Self { value: Some(Arc::new(value)), same: |_, _| false }
    }

    fn compared<T: PartialEq + Send + Sync + 'static>(value: T) -> Self {
        Self { value: Some(Arc::new(value)), same: |one, other| cast::<T>(one) == cast::<T>(other) }
    }
}

/// Where a readable value comes from.
#[derive(Clone, Copy)]
enum Source {
    Set(graph::RwSignal<SignalValue>),
    WorkedOut(graph::Memo<SignalValue>),
}

impl Source {
    fn read(self) -> SignalValue {
        match self {
            Self::Set(signal) => signal.get(),
            Self::WorkedOut(memo) => memo.get(),
        }
    }

    fn read_untracked(self) -> SignalValue {
        match self {
            Self::Set(signal) => signal.get_untracked(),
            Self::WorkedOut(memo) => memo.get_untracked(),
        }
    }

    fn track(self) {
        match self {
            Self::Set(signal) => signal.track(),
            Self::WorkedOut(memo) => memo.track(),
        }
    }
}

/// A value that can be read and followed.
pub struct Signal<T> {
    source: Source,
    of: PhantomData<fn() -> T>,
}

/// A value that can be set.
pub struct RwSignal<T> {
    signal: graph::RwSignal<SignalValue>,
    of: PhantomData<fn() -> T>,
}

/// A value worked out anew when what it has read changes. It tells nobody unless it is another one.
pub type Memo<T> = Signal<T>;

impl<T> Clone for Signal<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Signal<T> {}

impl<T> Clone for RwSignal<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for RwSignal<T> {}

// Once for each type: the type's own number, which it is compared with, does not compress.
#[inline(never)]
fn cast<T: 'static>(held: &BoxedValue) -> &T {
    match held.as_deref().and_then(|value| value.downcast_ref()) {
        Some(value) => value,
        None => lost(),
    }
}

#[cold]
#[inline(never)]
#[allow(clippy::unreachable, reason = "a signal of T never holds anything else, and is not read while it is changed")]
fn lost() -> ! {
    unreachable!()
}

/// The value to change; `None` while somebody else reads it.
#[inline(never)]
fn cast_mut<T: 'static>(held: &mut BoxedValue) -> Option<&mut T> {
    Arc::get_mut(held.as_mut()?)?.downcast_mut()
}

impl<T: 'static> Signal<T> {
    fn of(source: Source) -> Self {
        Self { source, of: PhantomData }
    }

    /// What `read` makes of the value.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(cast(&self.source.read().value))
    }

    /// As [`with`](Self::with), without following the value.
    pub fn with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> U {
        read(cast(&self.source.read_untracked().value))
    }

    /// Follows the value without reading it.
    pub fn track(self) {
        self.source.track();
    }
}

impl<T: Clone + 'static> Signal<T> {
    /// The value.
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// The value, without following it.
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

impl<T: Send + Sync + 'static> Signal<T> {
    /// A value that stays.
    pub fn stored(value: T) -> Self {
        RwSignal::new(value).into()
    }
}

impl<T: Send + Sync + 'static> RwSignal<T> {
    /// A signal that holds `value`.
    pub fn new(value: T) -> Self {
        Self { signal: graph::RwSignal::new(SignalValue::new(value)), of: PhantomData }
    }

    fn readable(self) -> Signal<T> {
        Signal::of(Source::Set(self.signal))
    }

    /// What `read` makes of the value.
    pub fn with<U>(self, read: impl FnOnce(&T) -> U) -> U {
        self.readable().with(read)
    }

    /// As [`with`](Self::with), without following the value.
    pub fn with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> U {
        self.readable().with_untracked(read)
    }

    /// As [`with_untracked`](Self::with_untracked); `None` where the part of the page is gone that the signal belongs to.
    pub fn try_with_untracked<U>(self, read: impl FnOnce(&T) -> U) -> Option<U> {
        self.signal.try_get_untracked().filter(|kept| kept.value.is_some()).map(|kept| read(cast(&kept.value)))
    }

    /// Follows the value without reading it.
    pub fn track(self) {
        self.signal.track();
    }

    /// Tells all that follow the value that it is another one.
    pub fn notify(self) {
        self.signal.notify();
    }

    /// Puts another value in its place.
    pub fn set(self, value: T) {
        self.signal.set(SignalValue::new(value));
    }

    /// As [`set`](Self::set); gives the value back where the part of the page is gone that the signal belongs to.
    pub fn try_set(self, value: T) -> Option<()> {
        self.signal.try_set(SignalValue::new(value)).map(|_| ())
    }

    /// Changes the value in its place.
    pub fn update(self, change: impl FnOnce(&mut T)) {
        self.try_update(change);
    }

    /// As [`update`](Self::update), without telling anybody.
    pub fn update_untracked(self, change: impl FnOnce(&mut T)) {
        self.try_update_untracked(change);
    }

    /// Changes the value in its place and gives what came of it; `None` where the part of the page is gone that
    /// the signal belongs to, and within a reading of this very value.
    pub fn try_update<U>(self, change: impl FnOnce(&mut T) -> U) -> Option<U> {
        let changed = self.try_update_untracked(change);
        if changed.is_some() {
            self.notify();
        }
        changed
    }

    /// As [`try_update`](Self::try_update), without telling anybody.
    pub fn try_update_untracked<U>(self, change: impl FnOnce(&mut T) -> U) -> Option<U> {
        let mut held = take(self.signal);
        let out = cast_mut(&mut held).map(change);
        put_back(self.signal, held);
        out
    }
}

/// Takes the value out, to be changed; nothing where somebody else has.
fn take(signal: graph::RwSignal<SignalValue>) -> BoxedValue {
    signal.try_update_untracked(|kept| kept.value.take()).flatten()
}

fn put_back(signal: graph::RwSignal<SignalValue>, held: BoxedValue) {
    if held.is_some() {
        signal.try_update_untracked(|kept| kept.value = held);
    }
}

impl<T: Clone + Send + Sync + 'static> RwSignal<T> {
    /// The value.
    pub fn get(self) -> T {
        self.with(T::clone)
    }

    /// The value, without following it.
    pub fn get_untracked(self) -> T {
        self.with_untracked(T::clone)
    }
}

impl<T: Send + Sync + 'static> From<RwSignal<T>> for Signal<T> {
    fn from(signal: RwSignal<T>) -> Self {
        signal.readable()
    }
}

impl From<String> for Signal<String> {
    fn from(text: String) -> Self {
        Self::stored(text)
    }
}

/// A value worked out anew when what it has read changes.
pub fn memo<T: PartialEq + Send + Sync + 'static>(work_out: impl Fn() -> T + Send + Sync + 'static) -> Memo<T> {
    memo_kept(Box::new(Anew(work_out)))
}

/// As [`memo`], from the value before as well.
pub fn memo_after<T: PartialEq + Send + Sync + 'static>(
    work_out: impl Fn(Option<&T>) -> T + Send + Sync + 'static,
) -> Memo<T> {
    memo_kept(Box::new(After(work_out, PhantomData)))
}

/// Works a value out, perhaps from the one before. No `dyn Fn`, for the reason given at [`Act`].
trait WorkOut: Send + Sync {
    fn work_out(&self, before: Option<&SignalValue>) -> SignalValue;
}

struct Anew<F>(F);

impl<T: PartialEq + Send + Sync + 'static, F: Fn() -> T + Send + Sync> WorkOut for Anew<F> {
    fn work_out(&self, _: Option<&SignalValue>) -> SignalValue {
        SignalValue::compared(self.0())
    }
}

struct After<F, T>(F, PhantomData<fn() -> T>);

impl<T: PartialEq + Send + Sync + 'static, F: Fn(Option<&T>) -> T + Send + Sync> WorkOut for After<F, T> {
    fn work_out(&self, before: Option<&SignalValue>) -> SignalValue {
        SignalValue::compared(self.0(before.map(|before| cast(&before.value))))
    }
}

fn memo_kept<T: 'static>(work_out: Box<dyn WorkOut>) -> Memo<T> {
    fn inner(work_out: Box<dyn WorkOut>) -> graph::Memo<SignalValue> {
        graph::Memo::new(move |before: Option<&SignalValue>| work_out.work_out(before))
    }
    Signal::of(Source::WorkedOut(inner(work_out)))
}

/// Does `act` soon, and again whenever a signal it has read changes.
pub fn effect(act: impl FnMut() + 'static) {
    fn inner(mut act: Box<dyn Act>) {
        graph::Effect::new(move |_: Option<()>| act.act());
    }
    inner(Box::new(act));
}

/// Does `act` once what `track` follows has changed and then stayed for `wait`.
pub fn when_settled(wait: Duration, track: impl Fn() + 'static, act: impl Fn() + Copy + 'static) {
    let mut before: Option<Option<TimeoutHandle>> = None;
    effect(move || {
        track();
        let pending = match before.take() {
            None => None,
            Some(handle) => {
                handle.iter().for_each(TimeoutHandle::clear);
                graph::set_timeout_with_handle(act, wait).ok()
            }
        };
        before = Some(pending);
    });
}
