//! What is kept: recipes, their revisions, and the file formats.
//!
//! A save is a [`Revision`](revision::Revision): a record that never changes, under a name made from
//! its own text. So two libraries merge as a union, a second tab cannot overwrite the first, and a
//! record that was damaged shows itself. What follows a revision, even its removal, is another one.

pub mod content;
pub mod document;
pub mod file;
pub mod id;
pub mod limits;
pub mod refusal;
pub mod store;
pub mod table;
pub mod time;

pub use content::check_log::{CheckRecord, LoggedFigure};
pub use content::line::{LineRecord, PlannedChangeover};
pub use content::lineage::Version;
pub use content::revision::Revision;
pub use content::settings::Settings;
pub use content::summary::Summary;
pub use content::trial::{OpenTrial, Trial, TrialContent};
pub use document::{Document, Stored};
pub use file::line_check::LineCheckFile;
pub use id::{CheckId, KeptLineId, RecipeId, ReleaseId, RevisionId, SystemId, TrialId};
pub use refusal::Refusal;
pub use store::cache::Cache;
pub use store::library::Library;
pub use store::{Store, StoreError};
