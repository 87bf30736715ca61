//! What is entered for the economy of a change: one table each for what all systems have in common and for what each has of its own.

use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::quantity::Unit as U;

/// What a number of the economy is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EconomySection {
    /// Energy of dryer and press.
    Energy,
    /// Liquids and other consumables.
    Materials,
    /// Changing over and selling.
    Production,
}

form! {
    /// A number that all systems have in common.
    enum EconomyField at EconomySection {
        /// Price of the dryer's energy, money per MWh.
        DryerEnergyPrice: dryer_energy_price, Ratio, One, "", EconomySection::Energy,
            Limit::from_to(U::One, 0.0, 1e6).optional();
        /// Heat that reaches the water, per energy bought for the dryer.
        DryerEfficiency: dryer_efficiency, Share, Percent, "", EconomySection::Energy,
            Limit::above_to(U::Percent, 0.0, 100.0).optional();
        /// Price of the press's energy, money per MWh.
        PressEnergyPrice: press_energy_price, Ratio, One, "", EconomySection::Energy,
            Limit::from_to(U::One, 0.0, 1e6).optional();
        /// Heat that reaches the water, per energy bought for the press.
        PressEfficiency: press_efficiency, Share, Percent, "", EconomySection::Energy,
            Limit::above_to(U::Percent, 0.0, 100.0).optional();
        /// Freight of the liquids as delivered.
        Freight: freight, Price, PerTonne, "", EconomySection::Materials,
            Limit::from_to(U::PerTonne, 0.0, 1e6).optional();
        /// Board scrapped at each changeover, m³.
        ChangeoverScrap: changeover_scrap, Ratio, One, "", EconomySection::Production,
            Limit::from_to(U::One, 0.0, 1e6).optional();
        /// Changeovers a year.
        Changeovers: changeovers, Ratio, One, "", EconomySection::Production,
            Limit::from_to(U::One, 0.0, 1e6).optional();
        /// Selling price of the board, money per m³.
        SellingPrice: selling_price, Cost, PerCubicMetre, "", EconomySection::Production,
            Limit::from_to(U::PerCubicMetre, 0.0, 1e6).optional();
    }

    /// The numbers entered for all systems.
    struct EconomyEntries;
}

form! {
    /// A number that each system has of its own.
    enum SystemEconomyField at EconomySection {
        /// Release agent, money per m² of finished board.
        ReleaseAgent: release_agent, Ratio, One, "", EconomySection::Materials,
            Limit::from_to(U::One, 0.0, 1e6).optional();
    }

    /// The numbers entered for one system.
    struct SystemEconomyEntries;
}
