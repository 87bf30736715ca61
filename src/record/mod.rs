//! What is kept: recipes, their revisions, and the file formats.
//!
//! A save is a [`Revision`](revision::Revision): a record that never changes, under a name made from
//! its own text. So two libraries merge as a union, a second tab cannot overwrite the first, and a
//! record that was damaged shows itself. What follows a revision, even its removal, is another one.

pub mod bench;
pub mod bench_csv;
pub mod cache;
pub mod check_log;
pub mod compare;
pub mod csv;
pub mod document;
pub mod file;
pub mod id;
pub mod library;
pub mod limits;
pub mod line;
pub mod line_check_file;
pub mod link;
pub mod merge;
pub mod mix;
pub mod open_draft;
pub mod refusal;
pub mod revision;
pub mod sealed;
pub mod settings;
pub mod shared_file;
pub mod shelf;
pub mod store;
pub mod summary;
pub mod system;
pub mod table;
pub mod time;

pub use bench::{OpenTrial, Trial, TrialContent};
pub use cache::Cache;
pub use check_log::{CheckRecord, LoggedFigure};
pub use document::{Document, Stored};
pub use id::{CheckId, RecipeId, RevisionId, SystemId, TrialId};
pub use line::{LineRecord, Planned};
pub use line_check_file::LineCheckFile;
pub use refusal::Refusal;
pub use revision::Revision;
pub use settings::Settings;
pub use shelf::Shelf;
pub use store::{Store, StoreError};
pub use summary::Summary;

#[cfg(test)]
mod schema;
