//! What was entered of the furnish recovered from the blender.

use crate::domain::form::form;
use crate::domain::recipe::limit::{Limit, Source::CommonPractice};
use crate::domain::trial::weigh_sheet::field::WeighSection;
use crate::quantity::Unit as U;

form! {
    /// A box of the furnish recovered.
    enum RecoveryField at WeighSection {
        /// Mass of the furnish recovered, with its moisture.
        Mass: mass, BenchMass, Gram, "", WeighSection::Recovery, Limit::above_to(U::Gram, 0.0, 1_000_000.0).optional();
        /// Its moisture, measured.
        Moisture: moisture, Moisture, PercentDryBasis, "", WeighSection::Recovery,
            Limit::from_to(U::PercentDryBasis, 0.0, 200.0).usually(2.0, 25.0, CommonPractice).optional();
    }

    /// What was measured of the furnish that came out of the blender.
    struct RecoveryDraft;
}

impl RecoveryField {
    /// The key of its box on the page.
    #[must_use]
    pub fn box_key(self) -> String {
        format!("recovered_{}", self.key())
    }
}
