//! The state of the library file on a shared drive.

use crate::ui::text::Message;

/// The file and its state.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SharedFile {
    /// Its name; empty when none was chosen.
    pub name: String,
    /// Whether it and the library hold the same, in words.
    pub says: String,
    /// What is wrong, in words.
    pub wrong: Option<Message>,
    /// How many of our records were there when it was last seen.
    pub there: usize,
    /// Being looked at.
    pub busy: bool,
    /// Something was saved meanwhile.
    pub again: bool,
}
