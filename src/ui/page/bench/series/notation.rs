//! The notation of a design with its exponent raised.

use leptos::prelude::*;

/// "2^(4−1), resolution IV" with 4−1 raised. The mark of the power and its brackets stay in the text, out of sight, for screen
/// readers and for what is copied.
pub fn raised(notation: &str) -> AnyView {
    let Some((base, power)) = notation.split_once('^') else { return notation.to_owned().into_any() };
    let bracketed = power.strip_prefix('(').and_then(|power| power.split_once(')'));
    let (exponent, rest) = bracketed
        .unwrap_or_else(|| power.split_at(power.find(|sign: char| !sign.is_ascii_digit()).unwrap_or(power.len())));
    let (open, close) = if bracketed.is_some() { ("^(", ")") } else { ("^", "") };
    view! {
        {base.to_owned()}
        <span class="out-of-sight">{open}</span>
        <sup>{exponent.to_owned()}</sup>
        <span class="out-of-sight">{close}</span>
        {rest.to_owned()}
    }
    .into_any()
}
