//! When a database that says nothing counts as one that does not answer.
//!
//! A wall clock would blame the database for a page that was busy, a machine that runs something else, or a lid that was closed. So
//! the wait is counted in short ticks, and each counts by how fast it came: a tick that comes in time counts whole, one that takes
//! twice as long counts about half, for the machine then runs at half its speed, and the database with it.

/// How long a database may say nothing, in milliseconds of a machine that runs at its own speed.
pub const PATIENCE: f64 = 3000.0;
/// The time asked for from one tick to the next, in milliseconds.
pub const TICK: u32 = 100;
/// A tick that takes no longer is in time: no timer is exact.
const IN_TIME: f64 = 120.0;

/// How long a database has said nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Silence {
    last: u64,
    counted: f64,
}

impl Silence {
    /// Begins to count at a time in milliseconds.
    #[must_use]
    pub const fn new(now: u64) -> Self {
        Self { last: now, counted: 0.0 }
    }

    /// A tick that was asked for [`TICK`] after the one before has come. Whether the database has been silent for
    /// [`PATIENCE`]: of a late tick as much less is counted as it took longer, and of none more than `TICK`.
    pub fn tick(&mut self, now: u64) -> bool {
        // A clock that was set back says nothing of how long the tick took: it counts as in time.
        let elapsed = now.saturating_sub(self.last);
        self.last = now;
        #[allow(clippy::cast_precision_loss, reason = "milliseconds far below 2⁵³")]
        let elapsed = (elapsed as f64).max(IN_TIME);
        self.counted += f64::from(TICK) * IN_TIME / elapsed;
        self.counted >= PATIENCE
    }
}
