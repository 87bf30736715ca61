//! Acting once something has come to rest.

use leptos::prelude::*;
use std::time::Duration;

/// Does `act` once what `track` follows has changed and then stayed for `wait`.
pub fn when_settled(wait: Duration, track: impl Fn() + 'static, act: impl Fn() + Copy + 'static) {
    let mut before: Option<Option<TimeoutHandle>> = None;
    Effect::new(move |_| {
        track();
        let pending = match before.take() {
            None => None,
            Some(handle) => {
                handle.iter().for_each(TimeoutHandle::clear);
                set_timeout_with_handle(act, wait).ok()
            }
        };
        before = Some(pending);
    });
}
