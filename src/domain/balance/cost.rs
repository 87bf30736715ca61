//! Prices and costs. uom knows no money; the currency is a text that the mill sets and takes no part
//! in any arithmetic.

use uom::si::f64::{Mass, MassDensity};
use uom::si::mass::kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;

/// Money per mass.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Price(f64);

/// Money per volume of finished board.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Cost(f64);

impl Price {
    /// Money per kilogram; 0 or more, finite. `None` otherwise.
    #[must_use]
    pub fn per_kilogram(money: f64) -> Option<Self> {
        (money.is_finite() && money >= 0.0).then_some(Self(money))
    }

    /// Money per kilogram.
    #[must_use]
    pub fn get(self) -> f64 {
        self.0
    }

    /// What a mass costs.
    #[must_use]
    pub fn of(self, mass: Mass) -> f64 {
        self.0 * mass.get::<kilogram>()
    }

    /// What a use per volume of board costs per volume of board.
    #[must_use]
    pub fn of_use(self, per_volume: MassDensity) -> Cost {
        Cost(self.0 * per_volume.get::<kilogram_per_cubic_meter>())
    }
}

impl Cost {
    /// Money per cubic metre of finished board.
    #[must_use]
    pub fn per_cubic_metre(self) -> f64 {
        self.0
    }

    /// Whether it is a number.
    #[must_use]
    pub fn is_finite(self) -> bool {
        self.0.is_finite()
    }
}

impl std::ops::Add for Cost {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl std::iter::Sum for Cost {
    fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
        items.fold(Self::default(), |sum, item| sum + item)
    }
}
