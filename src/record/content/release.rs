//! That a revision is released for the line: a record of its own, so that a release changes no recipe and needs no save.

use crate::record::content::revision::Stamp;
use crate::record::content::sealed::{Content, Sealed};
use crate::record::id::{ReleaseId, RevisionId};
use serde::{Deserialize, Serialize};

/// What a release says. A withdrawal is another record: nothing is ever taken out of the library.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReleaseContent {
    /// The revision that is released.
    pub revision: RevisionId,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// The initials of who released or withdrew it.
    #[serde(default)]
    pub author: String,
    /// The release that this record withdraws; such a record releases nothing.
    #[serde(default)]
    pub withdraws: Option<ReleaseId>,
}

impl Content for ReleaseContent {
    const KIND: &'static str = "release";
    const VERSION: u32 = 1;
    const LARGEST: usize = 10_000;
}

/// A release or a withdrawal, sealed.
pub type Release = Sealed<ReleaseContent>;

impl Release {
    /// The release of a revision.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn of(revision: RevisionId, stamp: Stamp) -> Result<Self, serde_json::Error> {
        Self::new(ReleaseContent { revision, at: stamp.at, author: stamp.author, withdraws: None })
    }

    /// The withdrawal of this release.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn withdrawal(&self, stamp: Stamp) -> Result<Self, serde_json::Error> {
        Self::new(ReleaseContent {
            revision: self.content().revision,
            at: stamp.at,
            author: stamp.author,
            withdraws: Some(self.release()),
        })
    }

    /// Its name among the records.
    #[must_use]
    pub const fn release(&self) -> ReleaseId {
        ReleaseId(self.id())
    }
}
