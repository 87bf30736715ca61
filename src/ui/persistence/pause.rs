//! When typing counts as done.

use std::time::Duration;

/// The link and the shared file follow when nothing more was typed for so long.
pub const PAUSE: Duration = Duration::from_millis(400);
