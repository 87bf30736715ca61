//! The open documents of the store.

use crate::record::document::{Document, Stored};
use crate::record::store::Store;
use crate::record::store::library::{Library, SaveError, Unread};
use serde::Serialize;
use serde::de::DeserializeOwned;

impl<S: Store> Library<S> {
    /// An open document, if there is any.
    ///
    /// # Errors
    /// When it cannot be read.
    pub fn document<T: Serialize + DeserializeOwned>(
        &self,
        document: &Document<T>,
    ) -> Result<Option<Stored<T>>, Unread> {
        match self.store().read(document.key).map_err(Unread::Store)? {
            Some(text) => document.read(&text).map(Some).map_err(Unread::Refused),
            None => Ok(None),
        }
    }

    /// Keeps an open document in place of what was there. What was there and cannot be read is set aside first.
    ///
    /// # Errors
    /// When it is not in the store.
    pub fn keep<T: Serialize + DeserializeOwned>(
        &self,
        document: &Document<T>,
        stored: &Stored<T>,
    ) -> Result<(), SaveError> {
        self.overwrite(document.key, &document.text(stored), |text| document.read(text).is_ok())
    }
}
