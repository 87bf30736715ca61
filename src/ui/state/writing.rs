//! The state of writing records to the database.

use crate::record::StoreError;

/// How far the database agrees with the records in memory.
#[derive(Debug, Clone, Default)]
pub struct Writing {
    /// Records are being written.
    pub writing: bool,
    /// All that the database had at the start is in memory.
    pub loaded: bool,
    /// Records that the database has lost.
    pub missing: usize,
    /// The Undo button of the next notice gets the focus as soon as it is there.
    pub focus_undo: bool,
    /// Something will be tried again.
    pub waiting: bool,
    /// Why the database failed the last time.
    pub why: Option<StoreError>,
}
