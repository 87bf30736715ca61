//! Values that follow the recipe, worked out in one go after each change.
//!
//! Behind a memo every effect wakes at each change and asks whether it has to run; on a page of some
//! hundred figures that is most of the time between key and paint. A cell tells nobody unless its
//! value is another one.
//!
//! What has to be dosed is worked out and painted first, all the rest right after that paint.

use crate::browser::graph::*;
use crate::ui::signal::{RwSignal, Signal, effect};
use std::sync::Arc;
use std::time::Duration;

/// From that paint to the rest: nobody sees it, and a key that comes meanwhile goes first.
const BREATH: Duration = Duration::from_millis(10);

/// Works a cell out anew. No `dyn Fn`, for the reason given at `browser::element::closure`.
trait Refresh: Send + Sync {
    fn refresh(&self);
}

impl<F: Fn() + Send + Sync> Refresh for F {
    fn refresh(&self) {
        self();
    }
}

/// Gives the value of a cell.
trait Give<T>: Send + Sync {
    fn give(&self) -> T;
}

impl<T, F: Fn() -> T + Send + Sync> Give<T> for F {
    fn give(&self) -> T {
        self()
    }
}

/// When a cell is worked out after a change.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// At once.
    First,
    /// As soon as what came first was painted.
    Rest,
}

/// A cell: its number, when it is worked out, and how.
type Known = (usize, Turn, Arc<dyn Refresh>);

/// All cells that are on the page.
#[derive(Clone, Copy)]
pub struct Cells {
    all: StoredValue<Vec<Known>>,
    next: StoredValue<usize>,
    /// Whether the rest is on its way.
    waiting: StoredValue<bool>,
}

impl Default for Cells {
    fn default() -> Self {
        Self { all: StoredValue::new(Vec::new()), next: StoredValue::new(0), waiting: StoredValue::new(false) }
    }
}

impl Cells {
    /// Works all cells out anew whenever what `track` follows changes.
    pub fn follow(self, track: impl Fn() + 'static) {
        effect(move || {
            track();
            self.refresh(Turn::First);
            if !self.waiting.get_value() {
                self.waiting.set_value(true);
                // What is set up in a frame's own callback comes after that frame was painted.
                let rest = move || {
                    self.waiting.set_value(false);
                    self.refresh(Turn::Rest);
                };
                request_animation_frame(move || set_timeout(rest, BREATH));
            }
        });
    }

    fn refresh(self, turn: Turn) {
        let all: Vec<Arc<dyn Refresh>> = self.all.with_value(|all| {
            all.iter().filter(|(_, own, _)| *own == turn).map(|(_, _, refresh)| refresh.clone()).collect()
        });
        untrack(|| all.iter().for_each(|cell| cell.refresh()));
    }

    /// A value worked out by `f` from what [`follow`](Self::follow) follows and from nothing else. It
    /// goes with the part of the page that asked for it.
    pub fn cell<T: Clone + PartialEq + Send + Sync + 'static>(
        self,
        turn: Turn,
        f: impl Fn() -> T + Send + Sync + 'static,
    ) -> Signal<T> {
        self.boxed(turn, Box::new(f))
    }

    /// One piece of machine code a type of value, not one a cell.
    fn boxed<T: Clone + PartialEq + Send + Sync + 'static>(self, turn: Turn, f: Box<dyn Give<T>>) -> Signal<T> {
        let value = RwSignal::new(untrack(|| f.give()));
        let refresh = move || {
            let new = f.give();
            if value.try_with_untracked(|old| *old != new) == Some(true) {
                value.set(new);
            }
        };
        self.put(turn, Arc::new(refresh));
        value.into()
    }

    fn put(self, turn: Turn, refresh: Arc<dyn Refresh>) {
        let name = self.next.get_value();
        self.next.set_value(name + 1);
        self.all.update_value(|all| all.push((name, turn, refresh)));
        on_cleanup(move || {
            // At the very end of the page the list may be gone first.
            self.all.try_update_value(|all| all.retain(|(other, _, _)| *other != name));
        });
    }
}
