//! A line that another one took the place of: kept in the library, to be opened again.

use crate::domain::Draft;
use crate::record::content::line::LineRecord;
use crate::record::content::revision::{Stamp, Standing};
use crate::record::content::sealed::{Content, Sealed};
use crate::record::id::KeptLineId;
use crate::record::store::library::{Library, SaveError};
use crate::record::store::{Store, StoreError};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// Followed by the id of a line.
pub(in crate::record) const KEPT_LINE: &str = "haulm/kept-line/";

/// What is kept of a line: all that was typed about it, and the recipe that was on the page with it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct LineContent {
    /// The save that this one stands for from now on.
    #[serde(default)]
    pub replaces: Option<KeptLineId>,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub saved_at: u64,
    /// The author's initials.
    #[serde(default)]
    pub author: String,
    /// Its name.
    pub name: String,
    /// Whether it is kept from here on.
    #[serde(default)]
    pub standing: Standing,
    /// The recipe.
    pub recipe: Draft,
    /// The line.
    pub line: LineRecord,
}

impl Content for LineContent {
    const KIND: &'static str = "kept_line";
    const VERSION: u32 = 1;
    const LARGEST: usize = 3_000_000;
}

/// A line in the library, sealed.
pub type KeptLine = Sealed<LineContent>;

impl LineContent {
    /// A line set aside with the recipe on the page.
    #[must_use]
    pub fn new(name: String, recipe: Draft, line: LineRecord, stamp: Stamp) -> Self {
        let Stamp { at, author, .. } = stamp;
        Self { replaces: None, saved_at: at, author, name, standing: Standing::Kept, recipe, line }
    }
}

impl KeptLine {
    /// Its name among the records.
    #[must_use]
    pub const fn line(&self) -> KeptLineId {
        KeptLineId(self.id())
    }

    /// A save that replaces this one and takes the line out of the library, or puts it back.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn with_standing(&self, standing: Standing, stamp: Stamp) -> Result<Self, serde_json::Error> {
        let Stamp { at, author, .. } = stamp;
        let content = self.content().clone();
        Self::new(LineContent { replaces: Some(self.line()), saved_at: at, author, standing, ..content })
    }
}

impl<S: Store> Library<S> {
    /// Keeps a line. Once this is `Ok`, the store has it.
    ///
    /// # Errors
    /// When it is not in the store; nothing else has changed then.
    pub fn save_line(&self, line: &KeptLine) -> Result<KeptLineId, SaveError> {
        self.put(&format!("{KEPT_LINE}{}", line.id()), line.text())?;
        Ok(line.line())
    }

    /// A line that is kept; `None` where it is not there or cannot be read.
    #[must_use]
    pub fn line(&self, id: KeptLineId) -> Option<KeptLine> {
        KeptLine::read(id.0, &self.store().read(&format!("{KEPT_LINE}{id}")).ok()??).ok()
    }

    /// The lines that are kept, the newest first.
    ///
    /// # Errors
    /// When the store does not list its keys. A single record that cannot be read is left out.
    pub fn lines(&self) -> Result<Vec<KeptLine>, StoreError> {
        let keys = self.store().keys()?;
        let ids = keys.iter().filter_map(|key| KeptLineId::parse(key.strip_prefix(KEPT_LINE)?));
        let mut lines: Vec<KeptLine> = ids.filter_map(|id| self.line(id)).collect();
        let replaced: BTreeSet<KeptLineId> = lines.iter().filter_map(|line| line.content().replaces).collect();
        lines.retain(|line| !replaced.contains(&line.line()) && line.content().standing == Standing::Kept);
        lines.sort_by(|a, b| b.content().saved_at.cmp(&a.content().saved_at).then(a.id().cmp(&b.id())));
        Ok(lines)
    }

    /// Whether a line would lose something if another one took its place: it is of the mill's own, and in no line of the
    /// library. Where the library cannot be read, it would.
    #[must_use]
    pub fn is_line_unsaved(&self, line: &LineRecord) -> bool {
        let own = !line.example && *line != LineRecord::default();
        own && !self.lines().is_ok_and(|lines| lines.iter().any(|kept| kept.content().line == *line))
    }
}
