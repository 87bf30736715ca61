//! Messages to the other tabs of this app.

use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{BroadcastChannel, MessageEvent};

/// Its name among the channels of this address.
const NAME: &str = "haulm";

thread_local! {
    /// None where the browser has no channels.
    static CHANNEL: Option<BroadcastChannel> = BroadcastChannel::new(NAME).ok();
}

/// Sends a text to all other tabs.
pub fn post(text: &str) {
    CHANNEL.with(|channel| {
        if let Some(channel) = channel {
            // Refused only for what cannot be copied; a text can.
            _ = channel.post_message(&JsValue::from(text));
        }
    });
}

/// Called with each text from another tab, as long as the page lives.
pub fn on_message(then: impl Fn(String) + 'static) {
    CHANNEL.with(|channel| {
        let Some(channel) = channel else { return };
        let hear = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            if let Some(text) = event.data().as_string() {
                then(text);
            }
        });
        channel.set_onmessage(Some(hear.as_ref().unchecked_ref()));
        hear.forget();
    });
}
