//! What is entered for the economy of a change: one table of fields, kinds and limits.

use crate::domain::recipe::limit::Limit;
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

/// A number of the economy.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum EconomyField {
    /// Price of the dryer's energy, money per MWh.
    DryerEnergyPrice,
    /// Heat that reaches the water, per energy bought for the dryer.
    DryerEfficiency,
    /// Price of the press's energy, money per MWh.
    PressEnergyPrice,
    /// Heat that reaches the water, per energy bought for the press.
    PressEfficiency,
    /// Freight of the liquids as delivered.
    Freight,
    /// Board scrapped at each changeover, m³.
    ChangeoverScrap,
    /// Changeovers a year.
    Changeovers,
    /// Selling price of the board, money per m³.
    SellingPrice,
    /// Release agent, money per m² of finished board; each system has its own.
    ReleaseAgent,
}

impl EconomyField {
    /// Those that all systems have in common, in the order of the page.
    pub const COMMON: [Self; 8] = [
        Self::DryerEnergyPrice,
        Self::DryerEfficiency,
        Self::PressEnergyPrice,
        Self::PressEfficiency,
        Self::Freight,
        Self::ChangeoverScrap,
        Self::Changeovers,
        Self::SellingPrice,
    ];

    /// The stable key, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::DryerEnergyPrice => "dryer_energy_price",
            Self::DryerEfficiency => "dryer_efficiency",
            Self::PressEnergyPrice => "press_energy_price",
            Self::PressEfficiency => "press_efficiency",
            Self::Freight => "freight",
            Self::ChangeoverScrap => "changeover_scrap",
            Self::Changeovers => "changeovers",
            Self::SellingPrice => "selling_price",
            Self::ReleaseAgent => "release_agent",
        }
    }

    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::DryerEfficiency | Self::PressEfficiency => Kind::Share,
            Self::Freight => Kind::Price,
            Self::SellingPrice => Kind::Cost,
            _ => Kind::Ratio,
        }
    }

    /// The unit that it starts with.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::DryerEfficiency | Self::PressEfficiency => Unit::Percent,
            Self::Freight => Unit::PerTonne,
            Self::SellingPrice => Unit::PerCubicMetre,
            _ => Unit::One,
        }
    }

    /// What it may hold; blank: not known.
    #[must_use]
    pub const fn limit(self) -> Limit {
        let efficiency = matches!(self, Self::DryerEfficiency | Self::PressEfficiency);
        Limit {
            unit: self.unit(),
            least: 0.0,
            above_least: efficiency,
            most: if efficiency { 100.0 } else { 1e6 },
            below_most: false,
            usual: None,
            optional: true,
        }
    }
}
