//! Values that follow the recipe, worked out in one go after each change.
//!
//! Behind a memo every effect wakes at each change and asks whether it has to run; on a page of some
//! hundred figures that is most of the time between key and paint. A cell tells nobody unless its
//! value is another one.

use leptos::prelude::*;
use std::sync::Arc;

type Refresh = Arc<dyn Fn() + Send + Sync>;

/// All cells that are on the page.
#[derive(Clone, Copy)]
pub struct Cells {
    all: StoredValue<Vec<(usize, Refresh)>>,
    next: StoredValue<usize>,
}

impl Default for Cells {
    fn default() -> Self {
        Self { all: StoredValue::new(Vec::new()), next: StoredValue::new(0) }
    }
}

impl Cells {
    /// Works all cells out anew whenever what `track` follows changes.
    pub fn follow(self, track: impl Fn() + 'static) {
        Effect::new(move |_| {
            track();
            let all: Vec<Refresh> = self.all.with_value(|all| all.iter().map(|(_, refresh)| refresh.clone()).collect());
            untrack(|| all.iter().for_each(|refresh| refresh()));
        });
    }

    /// A value worked out by `f` from what [`follow`](Self::follow) follows and from nothing else. It
    /// goes with the part of the page that asked for it.
    pub fn cell<T: Clone + PartialEq + Send + Sync + 'static>(
        self,
        f: impl Fn() -> T + Send + Sync + 'static,
    ) -> Signal<T> {
        self.boxed(Box::new(f))
    }

    /// One piece of machine code a type of value, not one a cell.
    fn boxed<T: Clone + PartialEq + Send + Sync + 'static>(self, f: Box<dyn Fn() -> T + Send + Sync>) -> Signal<T> {
        let value = RwSignal::new(untrack(&f));
        let refresh = move || {
            let new = f();
            if value.try_with_untracked(|old| *old != new) == Some(true) {
                value.set(new);
            }
        };
        self.put(Arc::new(refresh));
        value.into()
    }

    fn put(self, refresh: Refresh) {
        let name = self.next.get_value();
        self.next.set_value(name + 1);
        self.all.update_value(|all| all.push((name, refresh)));
        on_cleanup(move || {
            // At the very end of the page the list may be gone first.
            self.all.try_update_value(|all| all.retain(|(other, _)| *other != name));
        });
    }
}
