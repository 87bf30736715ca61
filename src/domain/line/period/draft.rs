//! What was read over a period, as typed.

use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::limit::Source::CommonPractice;
use crate::domain::line::entries::density;
use crate::domain::line::tanks::feeds::Tie;
use crate::domain::recipe::draft::{Draft, Entry};
use crate::quantity::Unit as U;
use serde::{Deserialize, Serialize};

/// Names a liquid of a period, whatever recipes ran in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct PeriodLiquidId(pub u16);

const fn total() -> Limit {
    Limit::above_to(U::Kilogram, 0.0, 1e9)
}

const fn moisture() -> Limit {
    Limit::from_to(U::PercentDryBasis, 0.0, 200.0)
}

const fn content() -> Limit {
    Limit::from_to(U::Litre, 0.0, 1e7)
}

/// What a reading of a period is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PeriodPart {
    /// Fibre and boards.
    Furnish,
    /// How well dips, deliveries and counts are known.
    Uncertainty,
}

form! {
    /// A number read over a period.
    enum PeriodField at PeriodPart {
        /// Total of the belt scale, moist fibre.
        BeltTotal: belt_total, BatchMass, Kilogram, "", PeriodPart::Furnish, total();
        /// Mean moisture of that fibre.
        FibreMoisture: fibre_moisture, Moisture, PercentDryBasis, "", PeriodPart::Furnish,
            moisture().usually(1.0, 12.0, CommonPractice);
        /// Raw boards counted.
        Boards: boards, Count, One, "", PeriodPart::Furnish, Limit::above_to(U::One, 0.0, 1e6);
        /// Mean mass of one of them.
        BoardMass: board_mass, BatchMass, Kilogram, "", PeriodPart::Furnish, Limit::above_to(U::Kilogram, 0.0, 10_000.0);
        /// Their mean moisture.
        BoardMoisture: board_moisture, Moisture, PercentDryBasis, "", PeriodPart::Furnish,
            moisture().usually(2.0, 12.0, CommonPractice);
        /// Part of the furnish that the sifter rejected.
        Reject: reject, Share, Percent, "0", PeriodPart::Furnish,
            Limit::from_to(U::Percent, 0.0, 100.0).below_most().usually(0.0, 2.0, CommonPractice);
        /// Standard uncertainty of a tank dip.
        // Common practice, no source: 3 mm on the dipstick of a tank of 10 m².
        Dip: dip, BatchVolume, Litre, "30", PeriodPart::Uncertainty, Limit::above_to(U::Litre, 0.0, 1e6);
        /// Standard uncertainty of a delivery, relative.
        // Common practice, no source: two weighings of a lorry.
        Delivery: delivery, Share, Percent, "0.2", PeriodPart::Uncertainty, Limit::above_to(U::Percent, 0.0, 50.0);
    }

    /// What was read over a period beside the liquids, as entered.
    struct PeriodEntries;
}

form! {
    /// A number of a liquid over a period.
    enum PeriodLiquidField {
        /// In its tanks at the start, by dip.
        Start: start, BatchVolume, Litre, "", content();
        /// Delivered since, by the weighbridge.
        Delivered: delivered, BatchMass, Kilogram, "0", Limit::from_to(U::Kilogram, 0.0, 1e9);
        /// In its tanks at the end, by dip.
        End: end, BatchVolume, Litre, "", content();
        /// Total of its flow meter.
        Metered: metered, BatchMass, Kilogram, "", Limit::from_to(U::Kilogram, 0.0, 1e9);
        /// Its density.
        Density: density, LiquidDensity, KilogramPerCubicMetre, "", density();
        /// Its solids content.
        Solids: solids, Solids, Percent, "", Limit::above_to(U::Percent, 0.0, 100.0);
    }

    /// The numbers of a liquid over a period as entered.
    struct PeriodLiquidEntries;
}

/// A liquid over a period as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct PeriodLiquidDraft {
    /// Its number within the period.
    pub id: PeriodLiquidId,
    /// Which liquid of the mill it is.
    pub tie: Tie,
    /// Its numbers.
    pub entries: PeriodLiquidEntries,
}

/// A period as entered; without a liquid none was started.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct PeriodDraft {
    /// When it was started, milliseconds since 1970-01-01 00:00 UTC.
    pub started: Option<u64>,
    /// The liquids, in the order of the recipe that it was started with.
    pub liquids: Vec<PeriodLiquidDraft>,
    /// The rest.
    pub entries: PeriodEntries,
}

impl PeriodDraft {
    /// The next period, started `at` with the liquids of a recipe: its density and solids are offered, the last dips of this
    /// period are its first ones, and uncertainties and reject stay.
    #[must_use]
    pub fn next(&self, draft: &Draft, at: u64) -> Self {
        let offered = |entry: &Entry| Entry::preset(entry.text.clone(), entry.unit);
        let liquids = (1..).zip(&draft.liquids).map(|(id, liquid)| {
            let tie = Tie::to(liquid);
            let mut entries = PeriodLiquidEntries {
                density: offered(&liquid.density),
                solids: offered(&liquid.solids),
                ..PeriodLiquidEntries::default()
            };
            if let Some(last) = self.liquids.iter().find(|own| own.tie.is(liquid)).map(|own| &own.entries.end)
                && !last.is_blank()
            {
                entries.start = last.clone();
            }
            PeriodLiquidDraft { id: PeriodLiquidId(id), tie, entries }
        });
        let kept = [PeriodField::Reject, PeriodField::Dip, PeriodField::Delivery];
        let mut entries = PeriodEntries::default();
        for field in kept {
            entries.entry_mut(field).clone_from(self.entries.entry(field));
        }
        Self { started: Some(at), liquids: liquids.collect(), entries }
    }

    /// The liquid with that number.
    #[must_use]
    pub fn liquid(&self, id: PeriodLiquidId) -> Option<&PeriodLiquidDraft> {
        self.liquids.iter().find(|liquid| liquid.id == id)
    }

    /// The liquid with that number, to change.
    pub fn liquid_mut(&mut self, id: PeriodLiquidId) -> Option<&mut PeriodLiquidDraft> {
        self.liquids.iter_mut().find(|liquid| liquid.id == id)
    }
}
