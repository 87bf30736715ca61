//! The boxes of the weigh sheet: one table, from which the fields, the entries, their checks and their storage follow.

use crate::domain::form::form;
use crate::domain::recipe::field::Field as RecipeField;
use crate::domain::recipe::limit::Source::{CommonPractice, FromMemory};
use crate::domain::recipe::limit::{LABORATORY_PRESS_FACTOR, Limit, plain};
use crate::quantity::Unit as U;

/// Maximum number of boards that one sheet is made out for.
pub const MAX_BOARDS: f64 = 100.0;

/// A section of the weigh sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WeighSection {
    /// Mat and board.
    Mat,
    /// Moistures and water.
    Moistures,
    /// Overage and batches.
    Overage,
    /// Balances.
    Balances,
    /// Press and spray.
    Press,
    /// Furnish recovered from the blender.
    Recovery,
}

form! {
    /// A number on the weigh sheet.
    enum WeighField at WeighSection {
        /// Length of the mat, which is that of the mould or forming frame.
        MatLength: mat_length, BenchExtent, Millimetre, "", WeighSection::Mat,
            Limit::above_to(U::Millimetre, 0.0, 5_000.0).usually(100.0, 1_000.0, CommonPractice);
        /// Width of the mat.
        MatWidth: mat_width, BenchExtent, Millimetre, "", WeighSection::Mat,
            Limit::above_to(U::Millimetre, 0.0, 5_000.0).usually(100.0, 1_000.0, CommonPractice);
        /// How many boards are made from what is weighed out, all batches together.
        Boards: boards, Count, One, "1", WeighSection::Mat,
            Limit::from_to(U::One, 1.0, MAX_BOARDS).usually(1.0, 12.0, CommonPractice);
        /// Thickness, finished or pressed as the way says; blank for the recipe's.
        Thickness: thickness, Thickness, Millimetre, "", WeighSection::Mat, plain(RecipeField::Thickness).optional();
        /// Board density at its moisture (EN 323); blank for the recipe's.
        BoardDensity: board_density, BoardDensity, KilogramPerCubicMetre, "", WeighSection::Mat,
            plain(RecipeField::BoardDensity).optional();
        /// Moisture at which the board's density is meant; blank for the recipe's.
        BoardMoisture: board_moisture, Moisture, PercentDryBasis, "", WeighSection::Mat,
            plain(RecipeField::BoardMoisture).optional();
        /// Moisture of the fibre on the bench; blank for the recipe's.
        FibreMoisture: fibre_moisture, Moisture, PercentDryBasis, "", WeighSection::Moistures,
            plain(RecipeField::FibreMoisture).optional();
        /// Target moisture of the mat; blank for the recipe's.
        MatMoisture: mat_moisture, Moisture, PercentDryBasis, "", WeighSection::Moistures,
            plain(RecipeField::MatMoisture).optional();
        /// Points of moisture lost between blender and press on the bench; blank for none: the line's loss is not the
        /// bench's.
        DryingLoss: drying_loss, Share, Percent, "", WeighSection::Moistures, plain(RecipeField::DryingLoss).optional();
        /// What is weighed out beyond the boards' need, as a share of the mass that the way names.
        Overage: overage, Share, Percent, "5", WeighSection::Overage,
            Limit::from_to(U::Percent, 0.0, 100.0).usually(0.0, 15.0, CommonPractice);
        /// Share of every sprayed liquid that stays on the walls of the blender.
        WallLoss: wall_loss, Share, Percent, "0", WeighSection::Overage,
            Limit::from_to(U::Percent, 0.0, 100.0).below_most().usually(0.0, 15.0, CommonPractice);
        /// The capacity of the blender, moist; blank for no limit.
        Capacity: capacity, BenchMass, Gram, "", WeighSection::Overage,
            Limit::above_to(U::Kilogram, 0.0, 1_000.0).usually(0.2, 50.0, CommonPractice).optional();
        /// Step to which the fibre's balance shows; blank for no rounding.
        FibreStep: fibre_step, BenchMass, Gram, "1", WeighSection::Balances, step();
        /// Step to which the liquids' balance shows; blank for no rounding.
        LiquidStep: liquid_step, BenchMass, Gram, "0.01", WeighSection::Balances, step();
        /// The minimum mass of fibre worth weighing on its balance; blank for no limit.
        FibreMinimum: fibre_minimum, BenchMass, Gram, "", WeighSection::Balances,
            Limit::above_to(U::Gram, 0.0, 10_000.0).optional();
        /// The minimum mass of a liquid worth weighing on its balance; blank for no limit.
        LiquidMinimum: liquid_minimum, BenchMass, Gram, "2", WeighSection::Balances,
            Limit::above_to(U::Gram, 0.0, 10_000.0).optional();
        /// Overshoot of a mass that asks for nothing, a share of it; blank for one step of its balance.
        Tolerance: tolerance, Share, Percent, "", WeighSection::Balances,
            Limit::from_to(U::Percent, 0.0, 20.0).usually(0.0, 2.0, CommonPractice).optional();
        /// Pressing time per pressed thickness; blank for that of the recipe's line, where it has one.
        PressFactor: press_factor, PressFactor, SecondPerMillimetre, "", WeighSection::Press,
            Limit::above_to(U::SecondPerMillimetre, 0.0, 1_000.0).within(LABORATORY_PRESS_FACTOR).optional();
        /// Flow of the spray pump by volume; blank for no spray time.
        SprayVolume: spray_volume, BenchFlow, MillilitrePerMinute, "", WeighSection::Press,
            Limit::above_to(U::MillilitrePerMinute, 0.0, 100_000.0).usually(10.0, 2_000.0, FromMemory).optional();
        /// Flow of the spray nozzle by mass; blank for no spray time.
        SprayMass: spray_mass, BenchMassFlow, GramPerMinute, "", WeighSection::Press,
            Limit::above_to(U::GramPerMinute, 0.0, 100_000.0).usually(10.0, 2_000.0, FromMemory).optional();
    }

    /// What was typed into the boxes of the weigh sheet.
    struct WeighBoxes;
}

const fn step() -> Limit {
    Limit::above_to(U::Gram, 0.0, 1_000.0).usually(0.001, 10.0, CommonPractice).optional()
}

impl WeighField {
    /// The key of its box on the page, where the recipe's boxes have theirs.
    #[must_use]
    pub fn box_key(self) -> String {
        format!("bench_{}", self.key())
    }

    /// The recipe's field that the box stands in for when something is typed into it.
    #[must_use]
    pub const fn stands_for(self) -> Option<RecipeField> {
        Some(match self {
            Self::Thickness => RecipeField::Thickness,
            Self::BoardDensity => RecipeField::BoardDensity,
            Self::BoardMoisture => RecipeField::BoardMoisture,
            Self::FibreMoisture => RecipeField::FibreMoisture,
            Self::MatMoisture => RecipeField::MatMoisture,
            Self::DryingLoss => RecipeField::DryingLoss,
            _ => return None,
        })
    }
}
