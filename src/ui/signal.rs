//! Short forms of leptos's signals, for the pages that are still built with `browser::element`.

use leptos::prelude::Effect;
use leptos::prelude::Memo as Computed;

pub use leptos::prelude::{RwSignal, Signal};

/// What [`memo`] yields.
pub type Memo<T> = Signal<T>;

/// A value worked out anew when what it has read changes.
pub fn memo<T: PartialEq + Send + Sync + 'static>(work_out: impl Fn() -> T + Send + Sync + 'static) -> Signal<T> {
    Computed::new(move |_| work_out()).into()
}

/// Does `act` soon, and again whenever a signal it has read changes.
pub fn effect(mut act: impl FnMut() + 'static) {
    Effect::new(move |_| act());
}
