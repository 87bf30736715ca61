//! One step of an open document, and how it is taken back by itself.

use super::Document;
use super::merge::merge;
use serde::Serialize;
use serde::de::DeserializeOwned;

/// A document before and after one step.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DocumentStep<T> {
    /// Before it.
    pub before: T,
    /// After it.
    pub after: T,
}

impl<T: Serialize + DeserializeOwned + Clone> DocumentStep<T> {
    /// The document without this step: what was changed since stays, whatever it was. Where the two make no sense together, the
    /// document stays as it is now.
    #[must_use]
    pub fn taken_back(&self, document: &Document<T>, now: &T) -> T {
        let [before, after, latest] = [&self.before, &self.after, now].map(|each| document.tree(each));
        document.content(&merge(&after, &latest, &before)).unwrap_or_else(|| now.clone())
    }
}
