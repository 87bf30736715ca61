//! A library file that several laptops write to, and a library, made the same.
//!
//! No laptop can lock a file on a shared drive: it looks, merges, writes and looks again. What another one
//! overwrote in between is in its writer's library still, and goes out again at that one's next look.

use crate::record::file::library::Merged;
use crate::record::refusal::Refusal;
use crate::record::store::library::Library;
use crate::record::store::{Store, StoreError};

/// What comes of a look at the file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MergePlan {
    /// What the library took from it.
    pub merged: Merged,
    /// How many of our records the file has.
    pub there: usize,
    /// How many records the library has.
    pub count: usize,
    /// What the file has to say from now on; none when it says so already, or when writing it would leave
    /// out records that cannot be read here.
    pub write: Option<String>,
}

/// Why a file and the library are not the same.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum MergePlanError {
    /// The file is none that can be read.
    Refused(Refusal),
    /// The library's store cannot be reached.
    Store(StoreError),
}

/// Takes in what `text` has and finds what has to go out. Without a text the file is as it was last seen,
/// with `there` of our records.
///
/// # Errors
/// When the file or the store cannot be read. Nothing was changed then.
pub fn plan<S: Store>(library: &mut Library<S>, text: Option<&str>, there: usize) -> Result<MergePlan, MergePlanError> {
    let mut merged = Merged::default();
    let mut there = there;
    if let Some(text) = text {
        // A new file is empty.
        if !text.trim().is_empty() {
            merged = library.merge_file(text).map_err(MergePlanError::Refused)?;
        }
        there = merged.added + merged.known;
    }
    let (ours, count) = library.library_file().map_err(MergePlanError::Store)?;
    let write = (there != count && merged.refused == 0 && merged.stopped.is_none()).then_some(ours);
    Ok(MergePlan { merged, there, count, write })
}
