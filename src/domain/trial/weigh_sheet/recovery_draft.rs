//! What was entered of the furnish recovered from the blender.

use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::{Limit, Source::CommonPractice};
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

/// What was measured of the furnish that came out of the blender.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(default)]
pub struct RecoveryDraft {
    /// Mass of the furnish recovered, with its moisture.
    pub mass: Entry,
    /// Its moisture, measured.
    pub moisture: Entry,
}

impl Default for RecoveryDraft {
    fn default() -> Self {
        Self { mass: Entry::empty(Unit::Gram), moisture: Entry::empty(Unit::PercentDryBasis) }
    }
}

/// A box of the furnish recovered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RecoveryField {
    /// Mass of the furnish recovered.
    Mass,
    /// Its moisture.
    Moisture,
}

impl RecoveryField {
    /// Both, in the order of the page.
    pub const ALL: &'static [RecoveryField] = &[Self::Mass, Self::Moisture];

    /// The stable key of the box.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Mass => "recovered_mass",
            Self::Moisture => "recovered_moisture",
        }
    }

    /// What the box measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::Mass => Kind::BenchMass,
            Self::Moisture => Kind::Moisture,
        }
    }

    /// What the box may hold.
    #[must_use]
    pub const fn limit(self) -> Limit {
        match self {
            Self::Mass => Limit::above_to(Unit::Gram, 0.0, 1_000_000.0).optional(),
            Self::Moisture => {
                Limit::from_to(Unit::PercentDryBasis, 0.0, 200.0).usually(2.0, 25.0, CommonPractice).optional()
            }
        }
    }
}

impl RecoveryDraft {
    /// The entry of a box.
    #[must_use]
    pub const fn entry(&self, field: RecoveryField) -> &Entry {
        match field {
            RecoveryField::Mass => &self.mass,
            RecoveryField::Moisture => &self.moisture,
        }
    }

    /// The entry of a box, to type into.
    pub const fn entry_mut(&mut self, field: RecoveryField) -> &mut Entry {
        match field {
            RecoveryField::Mass => &mut self.mass,
            RecoveryField::Moisture => &mut self.moisture,
        }
    }
}
