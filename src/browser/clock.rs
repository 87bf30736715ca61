//! The time, and how it reads here: ISO 8601, which nobody takes for another day.

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
    let date = local(at);
    format!("{:04}-{:02}-{:02}", date.get_full_year(), date.get_month() + 1, date.get_date())
}

/// Local time of day: "10:42".
#[must_use]
pub fn time(at: u64) -> String {
    let date = local(at);
    format!("{:02}:{:02}", date.get_hours(), date.get_minutes())
}

/// Local time of day with its seconds: "10:42:07".
#[must_use]
pub fn time_exact(at: u64) -> String {
    format!("{}:{:02}", time(at), local(at).get_seconds())
}

/// Local date and time: "2025-11-24 10:42".
#[must_use]
pub fn date_time(at: u64) -> String {
    format!("{} {}", date(at), time(at))
}

fn local(at: u64) -> Date {
    // Beyond what a date can hold, a damaged record's time reads as the last one that it can.
    #[allow(clippy::cast_precision_loss)]
    let at = at.min(8_640_000_000_000_000) as f64;
    Date::new(&at.into())
}
