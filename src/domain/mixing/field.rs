//! The boxes where solutions and glues are made up: one table, from which the fields, the entries, their checks and their storage follow.

use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::limit::Source::{CommonPractice, FromMemory};
use crate::quantity::Unit as U;

/// A section of the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MixSection {
    /// A solution made up from crystals.
    Solution,
    /// A premixed glue.
    Glue,
    /// What an isocyanate does with water.
    Isocyanate,
    /// Formaldehyde to urea.
    Ratio,
}

form! {
    /// A number typed beside the recipe.
    enum MixField at MixSection {
        /// Salt per solution, by mass.
        Concentration: concentration, Solids, Percent, "20", MixSection::Solution,
            Limit::above_to(U::Percent, 0.0, 100.0).below_most();
        /// Solution wanted, by mass.
        SolutionMass: solution_mass, BatchMass, Kilogram, "100", MixSection::Solution,
            Limit::above_to(U::Kilogram, 0.0, 1e6);
        /// Solution wanted, by volume at 20 °C.
        SolutionVolume: solution_volume, BatchVolume, Litre, "100", MixSection::Solution,
            Limit::above_to(U::Litre, 0.0, 1e6);
        /// Coldest temperature at which the salt has to stay dissolved.
        // As far as the solubilities reach.
        Coldest: coldest, Temperature, Celsius, "10", MixSection::Solution,
            Limit::from_to(U::Celsius, 0.0, 60.0);
        /// Density of the solution as measured.
        MeasuredDensity: measured_density, LiquidDensity, KilogramPerCubicMetre, "", MixSection::Solution,
            Limit::above_to(U::KilogramPerCubicMetre, 0.0, 3_000.0) .usually(990.0, 1_400.0, CommonPractice) .optional();
        /// Glue wanted, by mass.
        GlueMass: glue_mass, BatchMass, Kilogram, "500", MixSection::Glue,
            Limit::above_to(U::Kilogram, 0.0, 1e6);
        /// Glue wanted, by volume.
        GlueVolume: glue_volume, BatchVolume, Litre, "500", MixSection::Glue,
            Limit::above_to(U::Litre, 0.0, 1e6);
        /// NCO groups per isocyanate, by mass.
        Nco: nco, Share, Percent, "31", MixSection::Isocyanate,
            Limit::above_to(U::Percent, 0.0, 100.0).usually(30.0, 32.0, FromMemory);
        /// Formalin in the charge of a resin.
        Formalin: formalin, BatchMass, Kilogram, "", MixSection::Ratio,
            Limit::above_to(U::Kilogram, 0.0, 1e6);
        /// Formaldehyde per formalin, by mass.
        Strength: strength, Share, Percent, "37", MixSection::Ratio,
            Limit::above_to(U::Percent, 0.0, 100.0).usually(35.0, 55.0, FromMemory);
        /// Urea in the charge.
        Urea: urea, BatchMass, Kilogram, "", MixSection::Ratio,
            Limit::above_to(U::Kilogram, 0.0, 1e6);
        /// Urea added to it later.
        ExtraUrea: extra_urea, BatchMass, Kilogram, "", MixSection::Ratio,
            Limit::from_to(U::Kilogram, 0.0, 1e6).optional();
    }

    /// The numbers typed.
    struct Entries;
}

/// What the share of a part of a glue may hold: parts by mass of the liquid as delivered.
pub const SHARE: Limit = Limit::from_to(U::One, 0.0, 1e6);

impl MixField {
    /// The fields of a section, in the order of the page.
    pub fn of(section: MixSection) -> impl Iterator<Item = MixField> {
        Self::ALL.iter().copied().filter(move |field| field.place() == section)
    }
}
