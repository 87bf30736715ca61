//! What a pump's setting fixes.

use serde::{Deserialize, Serialize};

/// What a pump's setting fixes when the liquid's density changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Metering {
    /// The volume, as a displacement pump does: its mass flow follows the density.
    Volume,
    /// The mass, as a pump under a mass flow meter does: its mass flow stays.
    Mass,
}

impl Metering {
    /// Both, in the order in which they are offered.
    pub const ALL: &'static [Metering] = &[Self::Volume, Self::Mass];
}
