//! What is kept: one module a kind of record, and what all records share.

pub mod binder_system;
pub mod check_log;
pub mod comparison;
pub mod decimal_mark;
pub mod kept_line;
pub mod line;
pub mod lineage;
pub mod mixing;
pub mod release;
pub mod revision;
pub mod sealed;
pub mod search;
pub mod settings;
pub mod summary;
pub mod trial;
pub mod unsaved;
