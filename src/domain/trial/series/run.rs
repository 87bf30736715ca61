//! One run of a series.

use crate::domain::trial::series::made::MadeRun;

/// One run.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Run {
    /// Place in the run order, from 1.
    pub place: u16,
    /// Place in the standard order, from 1.
    pub standard: u16,
    /// Which replicate, from 1.
    pub replicate: u16,
    /// Which block, from 1.
    pub block: u16,
    /// The level of each factor, from 0; empty for a made run that does not belong to the design.
    pub levels: Vec<u8>,
    /// What it was made with, once it was.
    pub made: Option<MadeRun>,
}

impl Run {
    /// Whether it belongs to the design: a made run may be left over from an earlier plan.
    #[must_use]
    pub fn is_in_design(&self) -> bool {
        !self.levels.is_empty()
    }
}
