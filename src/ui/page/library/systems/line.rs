//! What the table shows of a binder system.

use crate::domain::LiquidDraft;
use crate::record::SystemId;

/// A system in the table.
#[derive(Debug, Clone, PartialEq)]
pub struct SystemLine {
    /// The mill's own; `None` for a typical one.
    pub id: Option<SystemId>,
    /// Its name.
    pub name: String,
    /// What to know about it.
    pub note: String,
    /// When it was saved; blank for a typical one.
    pub saved: String,
    /// Its liquids.
    pub liquids: Vec<LiquidDraft>,
}
