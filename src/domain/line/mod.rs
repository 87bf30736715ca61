//! Temporary.
/// Student.
pub mod student;
