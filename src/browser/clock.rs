//! The time, and how the clock of this place shows it.

use crate::record::time::Local;
use js_sys::Date;

/// Milliseconds since 1970-01-01 00:00 UTC.
#[must_use]
pub fn now() -> u64 {
    let now = Date::now();
    // Whole and far below 2⁵³; a clock set before 1970 counts as 0.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let now = now.max(0.0) as u64;
    now
}

/// Local date of a time in milliseconds since 1970: "2025-11-24".
#[must_use]
pub fn date(at: u64) -> String {
    local(at).date()
}

/// Local time of day: "10:42".
#[must_use]
pub fn time(at: u64) -> String {
    local(at).time()
}

/// Local time of day with its seconds: "10:42:07".
#[must_use]
pub fn time_exact(at: u64) -> String {
    local(at).time_exact()
}

/// Local date and time: "2025-11-24 10:42".
#[must_use]
pub fn date_time(at: u64) -> String {
    local(at).date_time()
}

/// The browser knows the offset of its time zone at any moment, summer time included.
fn local(at: u64) -> Local {
    #[allow(clippy::cast_precision_loss, reason = "an offset does not change within a rounding")]
    let minutes_behind = Date::new(&(at as f64).into()).get_timezone_offset();
    // Below a day; a moment that no date can hold has no offset, and NaN becomes 0.
    #[allow(clippy::cast_possible_truncation)]
    let seconds_ahead = (-60.0 * minutes_behind).round() as i32;
    Local::new(at, seconds_ahead)
}
