//! The boxes of the weigh sheet: address, kind, usual unit and preset, each declared once.

use crate::domain::recipe::draft::Entry;
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

/// Declares the boxes: the address, its key, its kind, the unit beside it and what stands in it at first.
macro_rules! boxes {
    ($( $(#[$doc:meta])* $field:ident $name:ident: $kind:ident, $unit:ident, $preset:literal; )*) => {
        /// A number on the weigh sheet.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum WeighField { $( $(#[$doc])* $field, )* }

        impl WeighField {
            /// All of them, in the order of the page.
            pub const ALL: &'static [WeighField] = &[ $( WeighField::$field, )* ];

            /// The stable key of the field: in stored files, and as `data-field` on the page.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $( Self::$field => concat!("bench_", stringify!($name)), )* }
            }

            /// What the field measures.
            #[must_use]
            pub const fn kind(self) -> Kind {
                match self { $( Self::$field => Kind::$kind, )* }
            }
        }

        /// What was typed into the boxes of the weigh sheet.
        #[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
        #[cfg_attr(test, derive(schemars::JsonSchema))]
        #[serde(default)]
        #[allow(missing_docs, reason = "each is the field of the same name")]
        pub struct WeighBoxes { $( pub $name: Entry, )* }

        impl Default for WeighBoxes {
            fn default() -> Self {
                Self { $( $name: Entry::preset($preset, Unit::$unit), )* }
            }
        }

        impl WeighBoxes {
            /// The entry of a field.
            #[must_use]
            pub fn entry(&self, field: WeighField) -> &Entry {
                match field { $( WeighField::$field => &self.$name, )* }
            }

            /// The entry of a field, to type into.
            pub fn entry_mut(&mut self, field: WeighField) -> &mut Entry {
                match field { $( WeighField::$field => &mut self.$name, )* }
            }
        }
    };
}

boxes! {
    /// Length of the mat, which is that of the mould or forming frame.
    MatLength mat_length: BenchExtent, Millimetre, "";
    /// Width of the mat.
    MatWidth mat_width: BenchExtent, Millimetre, "";
    /// How many boards are made from what is weighed out, all batches together.
    Boards boards: Count, One, "1";
    /// Thickness, finished or pressed as the way says; blank for the recipe's.
    Thickness thickness: Thickness, Millimetre, "";
    /// Board density at its moisture (EN 323); blank for the recipe's.
    BoardDensity board_density: BoardDensity, KilogramPerCubicMetre, "";
    /// Moisture at which the board's density is meant; blank for the recipe's.
    BoardMoisture board_moisture: Moisture, PercentDryBasis, "";
    /// Moisture of the fibre on the bench; blank for the recipe's.
    FibreMoisture fibre_moisture: Moisture, PercentDryBasis, "";
    /// Target moisture of the mat; blank for the recipe's.
    MatMoisture mat_moisture: Moisture, PercentDryBasis, "";
    /// Points of moisture lost between blender and press on the bench; blank for none: the line's loss is not the
    /// bench's.
    DryingLoss drying_loss: Share, Percent, "";
    /// What is weighed out beyond the boards' need, as a share of the mass that the way names.
    Overage overage: Share, Percent, "5";
    /// Share of every sprayed liquid that stays on the walls of the blender.
    WallLoss wall_loss: Share, Percent, "0";
    /// The capacity of the blender, moist; blank for no limit.
    Capacity capacity: BenchMass, Gram, "";
    /// Step to which the fibre's balance shows; blank for no rounding.
    FibreStep fibre_step: BenchMass, Gram, "1";
    /// Step to which the liquids' balance shows; blank for no rounding.
    LiquidStep liquid_step: BenchMass, Gram, "0.01";
    /// The minimum mass of fibre worth weighing on its balance; blank for no limit.
    FibreMinimum fibre_minimum: BenchMass, Gram, "";
    /// The minimum mass of a liquid worth weighing on its balance; blank for no limit.
    LiquidMinimum liquid_minimum: BenchMass, Gram, "2";
    /// Overshoot of a mass that asks for nothing, a share of it; blank for one step of its balance.
    Tolerance tolerance: Share, Percent, "";
    /// Pressing time per pressed thickness; blank for that of the recipe's line, where it has one.
    PressFactor press_factor: PressFactor, SecondPerMillimetre, "";
    /// Flow of the spray pump by volume; blank for no spray time.
    SprayVolume spray_volume: BenchFlow, MillilitrePerMinute, "";
    /// Flow of the spray nozzle by mass; blank for no spray time.
    SprayMass spray_mass: BenchMassFlow, GramPerMinute, "";
}
