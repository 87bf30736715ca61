//! Runs that were made: what each was made with, whatever becomes of the plan.
//!
//! A run counts as made once something of it was weighed or measured. From then on it keeps its number, its levels, its
//! recipe and its sheet: another run order, another number of replicates or another factor moves only the runs that are
//! not made yet.

use crate::domain::recipe::draft::Draft;
use crate::domain::trial::SheetDraft;
use crate::domain::trial::series::draft::LevelDraft;
use crate::domain::trial::series::factor::OwnFactor;
use crate::domain::trial::series::field::Of;
use serde::{Deserialize, Serialize};

/// The level of one factor of a made run.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct MadeLevel {
    /// What the factor changes.
    pub of: Of,
    /// Its name and unit then, where it changed nothing computed.
    #[serde(default, skip_serializing_if = "OwnFactor::is_absent")]
    pub own: OwnFactor,
    /// The level as entered.
    pub level: LevelDraft,
}

/// What boards were made with.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct MadeWith {
    /// The recipe, with the levels of the run in their places.
    pub recipe: Draft,
    /// The weigh sheet as entered, with the levels of the run in their places.
    pub sheet: SheetDraft,
}

/// A run that was made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct MadeRun {
    /// Its place in the run order, from 1: the number on its boards.
    pub place: u16,
    /// Its place in the standard order when it was made.
    pub standard: u16,
    /// Its replicate when it was made.
    pub replicate: u16,
    /// The block in which it was made.
    pub block: u16,
    /// The level of each factor.
    pub levels: Vec<MadeLevel>,
    /// What it was made with.
    pub with: MadeWith,
}
