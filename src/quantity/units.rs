//! Which unit each kind of figure is typed and shown in, and sets of units that fit each other.

use super::format::DecimalMark;
use super::kind::UnitSystem;
use super::{Dimension, Kind, Unit};

/// The units chosen: a system, and for single kinds another unit than the system's usual one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Units {
    /// The system that kinds without a choice of their own follow.
    pub system: UnitSystem,
    /// The decimal mark that numbers are shown with. Both are read.
    pub mark: DecimalMark,
    /// The unit chosen for a kind, at the kind's place in [`Kind::ALL`].
    own: [Option<Unit>; Kind::ALL.len()],
}

impl Default for Units {
    fn default() -> Self {
        Self { system: UnitSystem::default(), mark: DecimalMark::default(), own: [None; Kind::ALL.len()] }
    }
}

impl Units {
    /// The unit that figures of `kind` are typed and shown in.
    #[must_use]
    pub fn unit(&self, kind: Kind) -> Unit {
        self.own.get(kind as usize).copied().flatten().unwrap_or(kind.unit_in(self.system))
    }

    /// Chooses `unit` for `kind`. The system's usual unit is no choice of its own; a unit that the
    /// kind does not offer changes nothing.
    pub fn choose(&mut self, kind: Kind, unit: Unit) {
        if let Some(own) = self.own.get_mut(kind as usize)
            && kind.units().any(|offered| offered == unit)
        {
            *own = (unit != kind.unit_in(self.system)).then_some(unit);
        }
    }

    /// The kinds that have a unit chosen for themselves, and that unit.
    pub fn chosen(&self) -> impl Iterator<Item = (Kind, Unit)> {
        Kind::ALL.iter().zip(self.own).filter_map(|(kind, unit)| Some((*kind, unit?)))
    }

    /// Goes over to `system`, all kinds at once: choices made in the other system are dropped.
    /// Those for kinds that both systems show alike stay, as the basis of a moisture.
    pub fn set_system(&mut self, system: UnitSystem) {
        if system == self.system {
            return;
        }
        self.system = system;
        for (kind, own) in Kind::ALL.iter().zip(&mut self.own) {
            if kind.unit_in(UnitSystem::Metric) != kind.unit_in(UnitSystem::Us) {
                *own = None;
            }
        }
    }
}

/// A set with one unit a dimension in which formulas hold between the bare numbers (percent read as
/// 0.01): what workings are written in, so that their numbers can be followed with a calculator.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Coherent {
    /// kg, m, h, kJ.
    #[default]
    Metric,
    /// lb, ft, h, Btu.
    Us,
}

impl From<UnitSystem> for Coherent {
    fn from(system: UnitSystem) -> Self {
        match system {
            UnitSystem::Metric => Self::Metric,
            UnitSystem::Us => Self::Us,
        }
    }
}

impl Coherent {
    /// The set's unit of a dimension. Moisture is on the dry basis in both.
    #[must_use]
    pub const fn unit(self, dimension: Dimension) -> Unit {
        let (metric, us) = match dimension {
            Dimension::Mass => (Unit::Kilogram, Unit::Pound),
            Dimension::MassFlow => (Unit::KilogramPerHour, Unit::PoundPerHour),
            Dimension::Volume => (Unit::CubicMetre, Unit::CubicFoot),
            Dimension::VolumeFlow => (Unit::CubicMetrePerHour, Unit::CubicFootPerHour),
            Dimension::Density => (Unit::KilogramPerCubicMetre, Unit::PoundPerCubicFoot),
            Dimension::ArealMass => (Unit::KilogramPerSquareMetre, Unit::PoundPerSquareFoot),
            Dimension::LinearMass => (Unit::KilogramPerMetre, Unit::PoundPerFoot),
            Dimension::Length => (Unit::Metre, Unit::Foot),
            Dimension::Area => (Unit::SquareMetre, Unit::SquareFoot),
            Dimension::AreaFlow => (Unit::SquareMetrePerHour, Unit::SquareFootPerHour),
            Dimension::Speed => (Unit::MetrePerHour, Unit::FootPerHour),
            Dimension::Time => (Unit::Hour, Unit::Hour),
            Dimension::Slowness => (Unit::HourPerMetre, Unit::HourPerFoot),
            Dimension::Temperature => (Unit::Celsius, Unit::Fahrenheit),
            Dimension::SpecificEnergy => (Unit::KilojoulePerKilogram, Unit::BtuPerPound),
            Dimension::HeatFlow => (Unit::KilojoulePerHour, Unit::BtuPerHour),
            // No formula turns a mass into a force, so newtons are used beside hours.
            Dimension::Force => (Unit::Newton, Unit::PoundForce),
            Dimension::Stress => (Unit::Pascal, Unit::PoundForcePerSquareFoot),
            Dimension::Stiffness => (Unit::NewtonPerMetre, Unit::PoundForcePerFoot),
            Dimension::Fraction => (Unit::Percent, Unit::Percent),
            Dimension::Moisture => (Unit::PercentDryBasis, Unit::PercentDryBasis),
            Dimension::Frequency => (Unit::Hertz, Unit::Hertz),
            Dimension::Rotation => (Unit::TurnPerMinute, Unit::TurnPerMinute),
            Dimension::FlowPerFrequency => (Unit::KilogramPerHourPerHertz, Unit::PoundPerHourPerHertz),
            Dimension::FlowPerRotation => (Unit::KilogramPerHourPerTurn, Unit::PoundPerHourPerTurn),
            Dimension::SpecificVolume => (Unit::CubicMetrePerKilogram, Unit::CubicFootPerPound),
            Dimension::Expansion => (Unit::PerKelvin, Unit::PerFahrenheit),
            Dimension::Price => (Unit::PerKilogram, Unit::PerPound),
            Dimension::Cost => (Unit::PerCubicMetre, Unit::PerCubicFoot),
            Dimension::YearCost => (Unit::PerYear, Unit::PerYear),
            Dimension::Number => (Unit::One, Unit::One),
        };
        match self {
            Self::Metric => metric,
            Self::Us => us,
        }
    }
}
