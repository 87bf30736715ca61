//! Binder systems of the mill's own, kept apart from recipes and reused in them.

use crate::domain::LiquidDraft;
use crate::record::content::revision::{Stamp, Standing};
use crate::record::content::sealed::{Content, Sealed};
use crate::record::document::Document;
use crate::record::id::SystemId;
use serde::{Deserialize, Serialize};

/// What a binder system says. Every key is always written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct SystemContent {
    /// The save that this one stands for from now on.
    #[serde(default)]
    pub replaces: Option<SystemId>,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub saved_at: u64,
    /// The author's initials.
    #[serde(default)]
    pub author: String,
    /// Its name.
    pub name: String,
    /// The note: where the values come from.
    #[serde(default)]
    pub note: String,
    /// Whether it is kept from here on.
    #[serde(default)]
    pub standing: Standing,
    /// Its liquids; their numbers are those within this system.
    pub liquids: Vec<LiquidDraft>,
}

/// Name and note of a system that is not saved yet. Its liquids are the recipe's.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct SystemDraft {
    /// Its name.
    pub name: String,
    /// The note.
    pub note: String,
}

/// The system to be saved.
pub const NEW_SYSTEM: Document<SystemDraft> = Document::new("haulm/new-system", "system_draft", 1, 100_000);

impl Content for SystemContent {
    const KIND: &'static str = "system";
    const VERSION: u32 = 1;
}

/// One save of a binder system, sealed.
pub type SystemRevision = Sealed<SystemContent>;

impl SystemRevision {
    /// The first save of a binder system.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn first(
        name: String,
        note: String,
        liquids: Vec<LiquidDraft>,
        stamp: Stamp,
    ) -> Result<Self, serde_json::Error> {
        Self::new(SystemContent {
            replaces: None,
            saved_at: stamp.at,
            author: stamp.author,
            name,
            note,
            standing: Standing::Kept,
            liquids,
        })
    }

    /// A save that replaces this one and differs from it by what `change` does: another name, other
    /// liquids, or its removal.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn follow(&self, stamp: Stamp, change: impl FnOnce(&mut SystemContent)) -> Result<Self, serde_json::Error> {
        let mut content = self.content().clone();
        content.replaces = Some(self.system());
        (content.saved_at, content.author) = (stamp.at, stamp.author);
        change(&mut content);
        Self::with(content, self.extra())
    }

    /// Its name among the records.
    #[must_use]
    pub const fn system(&self) -> SystemId {
        SystemId(self.id())
    }
}
