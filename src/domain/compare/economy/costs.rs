//! What a change of binder system costs or saves beside fibre and liquids: dryer and press energy, release agent,
//! freight, changeovers, and the capacity gained or lost.
//!
//! Costs are per volume of finished board in the base unit, money per m³.

use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::domain::compare::Output;
use crate::domain::compare::draft::CompareDraft;
use crate::domain::compare::economy::field::{EconomyField, SystemEconomyField};
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::liquid::Role;
use crate::quantity::{Amount, Kind};

/// Joules of a megawatt-hour.
const MEGAWATT_HOUR: f64 = 3.6e9;
/// Seconds of an hour.
const HOUR: f64 = 3600.0;

/// Energy by its price and how much of it reaches the water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct EnergyPrice {
    /// Money per joule bought.
    pub price: f64,
    /// Heat that reaches the water, per energy bought: above 0 and at most 1.
    pub efficiency: f64,
}

impl EnergyPrice {
    fn of(self, heat: f64) -> f64 {
        heat / self.efficiency * self.price
    }
}

/// Prices and habits that are the same for all systems.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Economy {
    /// Hours a year.
    pub hours: Option<f64>,
    /// Energy of the fibre dryer.
    pub dryer: Option<EnergyPrice>,
    /// Energy of the press.
    pub press: Option<EnergyPrice>,
    /// Freight of the liquids, money per kilogram delivered.
    pub freight: Option<f64>,
    /// Board scrapped at each changeover, m³.
    pub scrap: Option<f64>,
    /// Changeovers a year that the change brings.
    pub changeovers: Option<f64>,
    /// Selling price, money per m³.
    pub selling_price: Option<f64>,
}

/// One system's economy. `None` where something that it takes is not known.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SystemEconomy {
    /// Fibre and liquids.
    pub materials: Option<f64>,
    /// Dryer energy for the water beyond what the dryer removes now; below zero where it may leave water in.
    pub dryer_energy: Option<f64>,
    /// Press energy for the water driven out.
    pub press_energy: Option<f64>,
    /// Release agent.
    pub release_agent: Option<f64>,
    /// Freight of all liquids.
    pub freight: Option<f64>,
    /// Freight of the binders per kilogram of their solids.
    pub freight_per_solids: Option<f64>,
    /// The materials and every part that has a price; `None` where one of them is not known.
    pub total: Option<f64>,
    /// Finished board at the recipe's flow, m³ a year.
    pub volume_per_year: Option<f64>,
    /// Finished board with the bottleneck at its limit, m³ a year.
    pub capacity_per_year: Option<f64>,
    /// Selling price less total, per m³.
    pub margin: Option<f64>,
    /// Margin per hour of the press with the bottleneck at its limit; at the recipe's flow where no machine has a limit.
    pub margin_per_press_hour: Option<f64>,
}

/// What changing from one system to another brings.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Switch {
    /// More cost per m³.
    pub per_volume: Option<f64>,
    /// Board scrapped at changeovers, m³ a year.
    pub scrap_per_year: Option<f64>,
    /// What that scrap cost to make, money a year.
    pub scrap_cost: Option<f64>,
    /// Capacity gained, m³ a year; below zero where it is lost.
    pub capacity: Option<f64>,
    /// More margin a year with the bottleneck at its limit, scrap taken off: what the change earns, or loses below zero.
    pub margin_per_year: Option<f64>,
}

impl Economy {
    /// What is entered for all systems; an entry that is none leaves its part unknown.
    #[must_use]
    pub fn of(typed: &CompareDraft) -> Self {
        let read =
            |field: EconomyField| read_entry(typed.economy.entry(field), field.kind(), &field.limit()).ok().flatten();
        let energy = |price, efficiency| {
            Some(EnergyPrice { price: read(price)? / MEGAWATT_HOUR, efficiency: read(efficiency)? })
        };
        Self {
            hours: typed.hours().map(f64::from),
            dryer: energy(EconomyField::DryerEnergyPrice, EconomyField::DryerEfficiency),
            press: energy(EconomyField::PressEnergyPrice, EconomyField::PressEfficiency),
            freight: read(EconomyField::Freight),
            scrap: read(EconomyField::ChangeoverScrap),
            changeovers: read(EconomyField::Changeovers),
            selling_price: read(EconomyField::SellingPrice),
        }
    }

    /// The economy of a solved system; `release_agent` in money per m² of finished board, both faces.
    #[must_use]
    pub fn of_system(&self, case: &Case, release_agent: Option<f64>) -> SystemEconomy {
        let base = |output: Output| output.value(case).map(|amount| amount.base);
        let figure = |figure| base(Output::Figure(figure));
        // m³/s.
        let flow = figure(Figure::FinishedVolume).filter(|flow| *flow > 0.0);
        let per_volume = |money_per_second: f64| flow.map(|flow| money_per_second / flow);
        let energy = |price: Option<EnergyPrice>, heat: Option<f64>| per_volume(price?.of(heat?));
        let area = figure(Figure::FinishedArea);
        let freight = self.freight.and_then(|price| per_volume(price * base(Output::LiquidFlow)?));
        let materials = figure(Figure::Cost);
        let parts = [
            energy(self.dryer, base(Output::DryerHeat)),
            energy(self.press, figure(Figure::PressHeat)),
            release_agent.and_then(|price| per_volume(price * area?)),
            freight,
        ];
        // A part that has a price and no value leaves the total unknown; a part without a price counts for no system.
        let priced = [self.dryer.is_some(), self.press.is_some(), release_agent.is_some(), self.freight.is_some()];
        let known = parts.iter().zip(priced).all(|(part, priced)| part.is_some() == priced);
        let total = materials.filter(|_| known).map(|materials| materials + parts.iter().flatten().sum::<f64>());
        let at_limit = base(Output::VolumeAtLimit);
        let a_year = |flow: Option<f64>| Some(flow? * self.hours? * HOUR);
        let margin = self.selling_price.zip(total).map(|(price, total)| price - total);
        let [dryer_energy, press_energy, release_agent, freight] = parts;
        SystemEconomy {
            materials,
            dryer_energy,
            press_energy,
            release_agent,
            freight,
            freight_per_solids: self.freight.and_then(|price| Some(price * delivered_per_solids(case)?)),
            total,
            volume_per_year: a_year(flow),
            capacity_per_year: a_year(at_limit),
            margin,
            margin_per_press_hour: margin.zip(at_limit.or(flow)).map(|(margin, flow)| margin * flow * HOUR),
        }
    }

    /// What changing from one system to another brings.
    #[must_use]
    pub fn switch(&self, from: &SystemEconomy, to: &SystemEconomy) -> Switch {
        let less = |to: Option<f64>, from: Option<f64>| Some(to? - from?);
        let scrap = self.scrap.zip(self.changeovers).map(|(scrap, times)| scrap * times);
        let capacity = |economy: &SystemEconomy| economy.capacity_per_year.or(economy.volume_per_year);
        let a_year = |economy: &SystemEconomy| Some(economy.margin? * capacity(economy)?);
        let scrap_cost = scrap.zip(to.total).map(|(scrap, total)| scrap * total);
        // Scrap was made and is not sold: its whole selling price is lost.
        let lost = scrap.zip(self.selling_price).map_or(0.0, |(scrap, price)| scrap * price);
        Switch {
            per_volume: less(to.total, from.total),
            scrap_per_year: scrap,
            scrap_cost,
            capacity: less(capacity(to), capacity(from)),
            margin_per_year: less(a_year(to), a_year(from)).map(|more| more - lost),
        }
    }
}

/// The release agent entered for a system, money per m² of board; `None` for none that counts.
#[must_use]
pub fn release_agent(typed: &CompareDraft, system: &SystemChoice) -> Option<f64> {
    let field = SystemEconomyField::ReleaseAgent;
    read_entry(typed.system_economy.get(system)?.entry(field), field.kind(), &field.limit()).ok().flatten()
}

/// Binders as delivered per kilogram of their solids.
fn delivered_per_solids(case: &Case) -> Option<f64> {
    let binders = case.input.liquids.as_slice().iter().filter(|liquid| liquid.role == Role::Binder);
    let (mut delivered, mut solids) = (0.0, 0.0);
    for liquid in binders {
        let of = |figure| case.figure(Figure::Liquid(liquid.id, figure)).map(|amount| amount.base);
        delivered += of(LiquidFigure::Liquid)?;
        solids += of(LiquidFigure::Solids)?;
    }
    (solids > 0.0).then(|| delivered / solids)
}

/// Money per m³ as an amount.
#[must_use]
pub fn per_volume(money: f64) -> Amount {
    Amount::from_base(Kind::Cost, money)
}
