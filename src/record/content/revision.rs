//! One save of a recipe.

use crate::domain::Draft;
use crate::record::content::sealed::{Content, Sealed};
use crate::record::id::{RecipeId, RevisionId};
use serde::{Deserialize, Serialize};

/// Whether a recipe is kept or removed. A removal is a revision like any other, so it can be undone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// On the library.
    #[default]
    Kept,
    /// Removed from the library by this revision.
    Removed,
}

/// What a recipe is called and what is noted about it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Title {
    /// Name, any text.
    pub name: String,
    /// Note, any text.
    pub note: String,
    /// Tags, in the order given.
    pub tags: Vec<String>,
}

/// Who saves, and when.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Stamp {
    /// Milliseconds since 1970-01-01 00:00 UTC, as the caller's clock has it.
    pub at: u64,
    /// The author's initials, blank when not given.
    pub author: String,
    /// Why, in the author's words, blank when not given.
    pub remark: String,
}

/// What a revision says. Every key is always written, so none can be taken over by an unknown one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct RevisionContent {
    /// The recipe that it belongs to; `None` in the first revision, whose own id names the recipe.
    #[serde(default)]
    pub recipe: Option<RecipeId>,
    /// What it was made from: nothing in a first revision, one revision as a rule, two or more in a
    /// merge.
    #[serde(default)]
    pub parents: Vec<RevisionId>,
    /// The revision of another recipe that a first revision is a copy of.
    #[serde(default)]
    pub copy_of: Option<RevisionId>,
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub saved_at: u64,
    /// The author's initials.
    #[serde(default)]
    pub author: String,
    /// What the author remarks on this very save.
    #[serde(default)]
    pub remark: String,
    /// The recipe's name.
    pub name: String,
    /// The note.
    #[serde(default)]
    pub note: String,
    /// The tags.
    #[serde(default)]
    pub tags: Vec<String>,
    /// Whether the recipe is kept from here on.
    #[serde(default)]
    pub standing: Standing,
    /// What was typed.
    pub draft: Draft,
}

impl Content for RevisionContent {
    const KIND: &'static str = "revision";
    const VERSION: u32 = 1;
}

/// One save of a recipe, sealed.
pub type Revision = Sealed<RevisionContent>;

impl Revision {
    /// The first revision of a new recipe.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn first(title: Title, draft: Draft, stamp: Stamp) -> Result<Self, serde_json::Error> {
        Self::new(RevisionContent {
            recipe: None,
            parents: Vec::new(),
            copy_of: None,
            saved_at: stamp.at,
            author: stamp.author,
            remark: stamp.remark,
            name: title.name,
            note: title.note,
            tags: title.tags,
            standing: Standing::Kept,
            draft,
        })
    }

    /// The revision that follows this one, with what was changed.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn next(&self, title: Title, draft: Draft, stamp: Stamp) -> Result<Self, serde_json::Error> {
        self.follow(stamp, |content| {
            (content.name, content.note, content.tags) = (title.name, title.note, title.tags);
            content.draft = draft;
        })
    }

    /// The revision that follows this one and differs from it by what `change` does.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn follow(&self, stamp: Stamp, change: impl FnOnce(&mut RevisionContent)) -> Result<Self, serde_json::Error> {
        let mut content = self.content().clone();
        content.recipe = Some(self.recipe());
        content.parents = vec![self.revision()];
        content.copy_of = None;
        (content.saved_at, content.author, content.remark) = (stamp.at, stamp.author, stamp.remark);
        change(&mut content);
        Self::with(content, self.extra())
    }

    /// The first revision of a new recipe of that name that begins from this one: as its copy, or with what was changed.
    ///
    /// # Errors
    /// As [`Sealed::new`].
    pub fn copy(&self, name: String, stamp: Stamp, title: Title, draft: Draft) -> Result<Self, serde_json::Error> {
        self.follow(stamp, |content| {
            (content.recipe, content.parents) = (None, Vec::new());
            content.copy_of = Some(self.revision());
            (content.name, content.note, content.tags) = (name, title.note, title.tags);
            content.draft = draft;
            content.standing = Standing::Kept;
        })
    }

    /// Its name.
    #[must_use]
    pub const fn revision(&self) -> RevisionId {
        RevisionId(self.id())
    }

    /// The recipe that it belongs to.
    #[must_use]
    pub fn recipe(&self) -> RecipeId {
        self.content().recipe.unwrap_or(RecipeId(self.id()))
    }

    /// Name, note and tags.
    #[must_use]
    pub fn title(&self) -> Title {
        let content = self.content();
        Title { name: content.name.clone(), note: content.note.clone(), tags: content.tags.clone() }
    }
}
