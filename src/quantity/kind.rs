//! Kinds of figures: what is measured decides which units are offered and how finely it is shown.

use super::{Dimension, Unit};
use Unit as U;
use serde::{Deserialize, Serialize};

/// A kind of figure. Every field and every result is of one kind, and the unit chosen for a kind
/// holds all over the app.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Fibre or furnish flow, large.
    FibreFlow,
    /// Flow of a liquid or of water by mass.
    LiquidFlow,
    /// Flow of a liquid or of water by volume.
    PumpFlow,
    /// Flow of water or solids lost or driven out, by mass.
    LossFlow,
    /// Density of board at its conditioned moisture.
    BoardDensity,
    /// Density of a liquid.
    LiquidDensity,
    /// Bulk density of the loose mat, with its moisture.
    BulkDensity,
    /// Use per volume of finished board.
    UsePerVolume,
    /// Use per area of finished board.
    UsePerArea,
    /// Mass of board per area, and mat weight.
    MatWeight,
    /// Mat weight per running length.
    RunningWeight,
    /// Thickness of board, sanding, mat height.
    Thickness,
    /// Widths and lengths of machines.
    Extent,
    /// Board area made per hour.
    AreaFlow,
    /// Board volume made per hour.
    BoardFlow,
    /// Line speed.
    LineSpeed,
    /// Pressing time.
    PressTime,
    /// Pressing time per pressed thickness.
    PressFactor,
    /// Hours of a shift.
    ShiftTime,
    /// Temperature.
    Temperature,
    /// Heat per mass of water.
    SpecificHeat,
    /// Heat flow.
    HeatFlow,
    /// A share of something, without a moisture's or a dose's basis.
    Share,
    /// Solids of a liquid, by mass.
    Solids,
    /// A dose; its base is in its label.
    Dose,
    /// Moisture, on the basis that the unit says.
    Moisture,
    /// Price per mass.
    Price,
    /// Cost per volume of finished board.
    Cost,
    /// Cost per year of given hours.
    YearCost,
    /// Batch masses.
    BatchMass,
    /// Batch volumes.
    BatchVolume,
    /// Masses on a laboratory balance.
    BenchMass,
    /// Volumes at the bench.
    BenchVolume,
    /// Flow of a spray pump at the bench, by volume.
    BenchFlow,
    /// Flow of a spray nozzle at the bench, by mass.
    BenchMassFlow,
    /// Lengths and widths of mats, boards and test pieces.
    BenchExtent,
    /// Area of mats and boards.
    BenchArea,
    /// Load on a test piece.
    Force,
    /// Slope of load over deflection.
    Slope,
    /// Strength and modulus of elasticity.
    Strength,
    /// A whole number of things.
    Count,
    /// A ratio without a unit.
    Ratio,
    /// A pump's setting in percent of its full setting.
    SettingPercent,
    /// A pump's setting as the frequency of its drive.
    SettingFrequency,
    /// A pump's setting as the speed of its shaft.
    SettingRotation,
    /// Mass flow of a pump per frequency of its drive.
    FlowPerFrequency,
    /// Mass flow of a pump per speed of its shaft.
    FlowPerRotation,
    /// Seconds and minutes at the line: catching, travelling.
    RunTime,
    /// Area of a mat sample.
    SampleArea,
    /// Mass of a liquid per mass of moist fibre.
    DoseRate,
    /// Volume of a liquid per mass of moist fibre.
    VolumeDoseRate,
    /// Thermal expansion of a liquid.
    Expansion,
}

/// Which customary system a figure is shown in unless its kind has a unit of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum UnitSystem {
    /// Metric units of the trade.
    #[default]
    Metric,
    /// US customary units.
    Us,
}

impl Kind {
    /// All kinds.
    pub const ALL: &'static [Kind] = &[
        Kind::FibreFlow,
        Kind::LiquidFlow,
        Kind::PumpFlow,
        Kind::LossFlow,
        Kind::BoardDensity,
        Kind::LiquidDensity,
        Kind::BulkDensity,
        Kind::UsePerVolume,
        Kind::UsePerArea,
        Kind::MatWeight,
        Kind::RunningWeight,
        Kind::Thickness,
        Kind::Extent,
        Kind::AreaFlow,
        Kind::BoardFlow,
        Kind::LineSpeed,
        Kind::PressTime,
        Kind::PressFactor,
        Kind::ShiftTime,
        Kind::Temperature,
        Kind::SpecificHeat,
        Kind::HeatFlow,
        Kind::Share,
        Kind::Solids,
        Kind::Dose,
        Kind::Moisture,
        Kind::Price,
        Kind::Cost,
        Kind::YearCost,
        Kind::BatchMass,
        Kind::BatchVolume,
        Kind::BenchMass,
        Kind::BenchVolume,
        Kind::BenchFlow,
        Kind::BenchMassFlow,
        Kind::BenchExtent,
        Kind::BenchArea,
        Kind::Force,
        Kind::Slope,
        Kind::Strength,
        Kind::Count,
        Kind::Ratio,
        Kind::SettingPercent,
        Kind::SettingFrequency,
        Kind::SettingRotation,
        Kind::FlowPerFrequency,
        Kind::FlowPerRotation,
        Kind::RunTime,
        Kind::SampleArea,
        Kind::DoseRate,
        Kind::VolumeDoseRate,
        Kind::Expansion,
    ];

    /// The units offered, the usual metric one first, the usual US one second (the same one twice
    /// where both systems share it).
    const fn table(self) -> &'static [Unit] {
        match self {
            Self::FibreFlow => &[U::KilogramPerHour, U::PoundPerHour, U::TonnePerHour, U::ShortTonPerHour],
            Self::LiquidFlow => {
                &[U::KilogramPerHour, U::PoundPerHour, U::KilogramPerMinute, U::GramPerMinute, U::PoundPerMinute]
            }
            Self::LossFlow => &[U::KilogramPerHour, U::PoundPerHour, U::TonnePerHour],
            Self::PumpFlow => {
                &[U::LitrePerHour, U::GallonPerMinute, U::LitrePerMinute, U::CubicMetrePerHour, U::GallonPerHour]
            }
            Self::BoardDensity | Self::BulkDensity => &[U::KilogramPerCubicMetre, U::PoundPerCubicFoot],
            Self::LiquidDensity => {
                &[U::KilogramPerCubicMetre, U::PoundPerGallon, U::KilogramPerLitre, U::PoundPerCubicFoot]
            }
            Self::UsePerVolume => &[U::KilogramPerCubicMetre, U::PoundPerCubicFoot],
            Self::UsePerArea => &[U::GramPerSquareMetre, U::PoundPerThousandSquareFeet, U::KilogramPerSquareMetre],
            Self::MatWeight => &[
                U::KilogramPerSquareMetre,
                U::PoundPerThousandSquareFeet,
                U::GramPerSquareMetre,
                U::PoundPerSquareFoot,
            ],
            Self::RunningWeight => &[U::KilogramPerMetre, U::PoundPerFoot],
            Self::Thickness => &[U::Millimetre, U::Inch],
            Self::Extent => &[U::Metre, U::Foot, U::Millimetre, U::Inch],
            Self::AreaFlow => &[U::SquareMetrePerHour, U::SquareFootPerHour],
            Self::BoardFlow => &[U::CubicMetrePerHour, U::CubicFootPerHour],
            Self::LineSpeed => &[U::MetrePerMinute, U::FootPerMinute, U::MillimetrePerSecond],
            Self::PressTime => &[U::Second, U::Second, U::Minute],
            Self::PressFactor => &[U::SecondPerMillimetre, U::SecondPerMillimetre, U::SecondPerInch],
            Self::ShiftTime => &[U::Hour, U::Hour],
            Self::Temperature => &[U::Celsius, U::Fahrenheit],
            Self::SpecificHeat => &[U::KilojoulePerKilogram, U::BtuPerPound],
            Self::HeatFlow => &[U::Kilowatt, U::BtuPerHour],
            Self::Share => &[U::Percent, U::Percent],
            Self::Solids | Self::Dose => &[U::Percent, U::Percent, U::PerUnit],
            Self::Moisture => &[U::PercentDryBasis, U::PercentDryBasis, U::PercentWetBasis],
            Self::Price => &[U::PerTonne, U::PerPound, U::PerKilogram, U::PerShortTon],
            Self::Cost => &[U::PerCubicMetre, U::PerThousandSquareFeetThreeQuarter, U::PerCubicFoot],
            Self::YearCost => &[U::PerYear, U::PerYear],
            Self::BatchMass => &[U::Kilogram, U::Pound, U::Gram, U::Tonne],
            Self::BatchVolume => &[U::Litre, U::Gallon, U::Millilitre, U::CubicMetre],
            Self::BenchMass => &[U::Gram, U::Gram, U::Kilogram, U::Pound],
            Self::BenchVolume => &[U::Millilitre, U::Millilitre, U::Litre],
            Self::BenchFlow => &[U::MillilitrePerMinute, U::MillilitrePerMinute, U::LitrePerHour, U::LitrePerMinute],
            Self::BenchMassFlow => &[U::GramPerMinute, U::GramPerMinute, U::KilogramPerHour],
            Self::BenchExtent => &[U::Millimetre, U::Inch, U::Centimetre],
            Self::BenchArea => &[U::SquareMetre, U::SquareFoot],
            Self::Force => &[U::Newton, U::PoundForce, U::Kilonewton],
            Self::Slope => &[U::NewtonPerMillimetre, U::PoundForcePerInch],
            Self::Strength => &[U::NewtonPerSquareMillimetre, U::PoundForcePerSquareInch],
            Self::Ratio | Self::Count => &[U::One, U::One],
            Self::SettingPercent => &[U::Percent, U::Percent],
            Self::SettingFrequency => &[U::Hertz, U::Hertz],
            Self::SettingRotation => &[U::TurnPerMinute, U::TurnPerMinute],
            Self::FlowPerFrequency => &[U::KilogramPerHourPerHertz, U::PoundPerHourPerHertz],
            Self::FlowPerRotation => &[U::KilogramPerHourPerTurn, U::PoundPerHourPerTurn],
            Self::RunTime => &[U::Second, U::Second, U::Minute, U::Hour],
            Self::SampleArea => &[U::SquareMetre, U::SquareFoot, U::SquareCentimetre],
            Self::DoseRate => &[U::KilogramPerTonne, U::PoundPerShortTon],
            Self::VolumeDoseRate => &[U::LitrePerTonne, U::GallonPerShortTon],
            Self::Expansion => &[U::PercentPerKelvin, U::PercentPerFahrenheit],
        }
    }

    /// The units offered for this kind, each once, the usual metric one first.
    pub fn units(self) -> impl Iterator<Item = Unit> {
        let table = self.table();
        table.iter().copied().enumerate().filter(|(at, unit)| !table[..*at].contains(unit)).map(|(_, unit)| unit)
    }

    /// The usual unit of a system.
    #[must_use]
    pub const fn unit_in(self, system: UnitSystem) -> Unit {
        match system {
            UnitSystem::Metric => self.table()[0],
            UnitSystem::Us => self.table()[1],
        }
    }

    /// What the kind's units measure.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        self.table()[0].dimension()
    }

    /// How many significant digits a figure of this kind is shown with: what a pump, a belt scale
    /// or a gauge at the line can still tell apart, and one more.
    ///
    /// Common practice, no source.
    #[must_use]
    pub const fn digits(self) -> u8 {
        match self {
            Self::Temperature | Self::Dose | Self::Moisture | Self::Share | Self::PressFactor | Self::PressTime => 3,
            Self::Strength => 3,
            Self::BenchMass => 5,
            // Every digit of a whole number is shown, and none after it.
            Self::Count => 1,
            Self::SettingPercent | Self::SettingFrequency | Self::RunTime | Self::Expansion => 3,
            _ => 4,
        }
    }
}
