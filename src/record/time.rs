//! Moments as text: RFC 3339 in files, ISO 8601 in local time on the page, which nobody takes for another day.
//!
//! A moment is milliseconds since 1970-01-01 00:00 UTC, cut to the second. One beyond the year 9999, which only a damaged record has,
//! shows as the last that a date can hold.

use jiff::Timestamp;
use jiff::civil::DateTime;
use jiff::tz::Offset;

fn timestamp(at: u64) -> Timestamp {
    let seconds = i64::try_from(at / 1_000).unwrap_or(i64::MAX);
    Timestamp::from_second(seconds.min(Timestamp::MAX.as_second())).unwrap_or(Timestamp::MAX)
}

/// A moment in UTC: "2026-03-02T06:00:00Z".
#[must_use]
pub fn utc(at: u64) -> String {
    timestamp(at).to_string()
}

/// A moment as the clocks of a place show it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Local(DateTime);

impl Local {
    /// The moment where clocks are so many seconds ahead of UTC.
    #[must_use]
    pub fn new(at: u64, seconds_ahead: i32) -> Self {
        let offset = Offset::from_seconds(seconds_ahead).unwrap_or(Offset::UTC);
        Self(offset.to_datetime(timestamp(at)))
    }

    /// The date: "2025-11-24".
    #[must_use]
    pub fn date(self) -> String {
        self.0.date().to_string()
    }

    /// The time of day: "10:42".
    #[must_use]
    pub fn time(self) -> String {
        format!("{:02}:{:02}", self.0.hour(), self.0.minute())
    }

    /// The time of day with its seconds: "10:42:07".
    #[must_use]
    pub fn time_exact(self) -> String {
        self.0.time().to_string()
    }

    /// Date and time: "2025-11-24 10:42".
    #[must_use]
    pub fn date_time(self) -> String {
        format!("{} {}", self.date(), self.time())
    }
}

/// Minutes since midnight of a time of day such as "10:42"; `None` of anything else.
fn minutes(time: &str) -> Option<u64> {
    let (hours, minutes) = time.split_once(':')?;
    let (hours, minutes) = (hours.parse::<u64>().ok()?, minutes.get(..2)?.parse::<u64>().ok()?);
    (hours < 24 && minutes < 60).then_some(60 * hours + minutes)
}

/// The last moment at which a clock showed the time of day `then`, where it shows `present` at the moment `now`.
#[must_use]
pub fn last_at(then: &str, present: &str, now: u64) -> Option<u64> {
    const MINUTE: u64 = 60_000;
    const DAY: u64 = 24 * 60;
    let ago = (minutes(present)? + DAY - minutes(then)?) % DAY;
    Some((now / MINUTE).saturating_sub(ago) * MINUTE)
}

#[cfg(test)]
mod tests {
    use super::{Local, last_at, utc};

    /// 2026-03-02 06:00:07 UTC: 05:40 was twenty minutes ago, 06:10 was yesterday.
    #[test]
    fn the_last_time_that_a_clock_showed() {
        let now = 1_772_431_207_999;
        let shown = |then| last_at(then, "06:00", now).map(utc);
        assert_eq!(shown("05:40").as_deref(), Some("2026-03-02T05:40:00Z"));
        assert_eq!(shown("06:00").as_deref(), Some("2026-03-02T06:00:00Z"));
        assert_eq!(shown("06:10").as_deref(), Some("2026-03-01T06:10:00Z"));
        for nonsense in ["", "6", "24:00", "12:60", "a:b", "12:3"] {
            assert_eq!(shown(nonsense), None, "{nonsense}");
        }
    }

    /// Source: RFC 3339 by the definition of the Unix time; leap days of 2000 and 2024, none in 2100.
    #[test]
    fn moments_in_utc() {
        for (at, expected) in [
            (0, "1970-01-01T00:00:00Z"),
            (951_782_400_999, "2000-02-29T00:00:00Z"),
            (1_709_164_800_000, "2024-02-29T00:00:00Z"),
            (1_772_431_200_000, "2026-03-02T06:00:00Z"),
            (4_107_542_399_000, "2100-02-28T23:59:59Z"),
            (4_107_542_400_000, "2100-03-01T00:00:00Z"),
        ] {
            assert_eq!(utc(at), expected);
        }
        assert!(utc(u64::MAX).starts_with("9999-12-30T"), "{}", utc(u64::MAX));
    }

    /// Offsets east of UTC, west of it, with half an hour and across the end of a year.
    #[test]
    fn moments_in_local_time() {
        let hour = 3_600;
        for (at, ahead, date, time) in [
            (1_772_431_207_999, 0, "2026-03-02", "06:00:07"),
            (1_772_431_207_999, hour, "2026-03-02", "07:00:07"),
            (1_772_431_207_999, -7 * hour, "2026-03-01", "23:00:07"),
            (1_772_431_207_999, 5 * hour + hour / 2, "2026-03-02", "11:30:07"),
            (946_684_799_000, 14 * hour, "2000-01-01", "13:59:59"),
        ] {
            let local = Local::new(at, ahead);
            assert_eq!((local.date().as_str(), local.time_exact().as_str()), (date, time));
            assert_eq!(local.time(), time[..5]);
            assert_eq!(local.date_time(), format!("{date} {}", &time[..5]));
        }
        assert!(Local::new(u64::MAX, 14 * hour).date_time().starts_with("9999-12-31"));
    }
}
