//! Releasing revisions for the line, and withdrawing that.

use crate::record::content::release::Release;
use crate::record::content::revision::Stamp;
use crate::record::id::{ReleaseId, RevisionId};
use crate::record::store::Store;
use crate::record::store::library::{Library, RELEASE, Record, SaveError};
use std::collections::BTreeSet;

impl<S: Store> Library<S> {
    /// Releases a revision for the line. The revision stays as it is.
    ///
    /// # Errors
    /// When there is no such revision, or the release is not in the store.
    pub fn release(&mut self, revision: RevisionId, stamp: Stamp) -> Result<ReleaseId, SaveError> {
        self.known(revision)?;
        self.save_release(Release::of(revision, stamp)?)
    }

    /// Withdraws every release of a revision that holds; how many they were.
    ///
    /// # Errors
    /// When a withdrawal is not in the store. Those before it are.
    pub fn withdraw(&mut self, revision: RevisionId, stamp: &Stamp) -> Result<usize, SaveError> {
        let withdrawn: BTreeSet<ReleaseId> =
            self.releases().filter_map(|release| release.content().withdraws).collect();
        let holds = |release: &&Release| {
            let content = release.content();
            content.revision == revision && content.withdraws.is_none() && !withdrawn.contains(&release.release())
        };
        let releases: Vec<Release> = self.releases().filter(holds).cloned().collect();
        for release in &releases {
            self.save_release(release.withdrawal(stamp.clone())?)?;
        }
        Ok(releases.len())
    }

    fn save_release(&mut self, release: Release) -> Result<ReleaseId, SaveError> {
        let id = release.release();
        let key = format!("{RELEASE}{id}");
        self.put(&key, release.text())?;
        self.records.insert(key, Record::Release(release));
        Ok(id)
    }
}
