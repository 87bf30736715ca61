//! The emission sheet: what is entered for it, and what comes of it.

use crate::domain::chemistry::emission::{
    AminoResin, EmissionError, MixRatios, mass_concentration, of_mix, perforator_at_reference, urea_for, volume_share,
};
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::Limit;
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use uom::si::f64::{Mass, MassDensity, Ratio, ThermodynamicTemperature};
use uom::si::mass_density::milligram_per_cubic_meter;
use uom::si::ratio::{part_per_million, ratio};

/// A number of the emission sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum EmissionField {
    /// F/U of the resin, mol/mol.
    FormaldehydePerUrea,
    /// Melamine per urea of the resin, mol/mol; blank for a urea resin.
    MelaminePerUrea,
    /// Solids of the resin.
    ResinSolids,
    /// Urea added to it; blank for none.
    AddedUrea,
    /// F/(NH₂)₂ wanted of the mix.
    TargetRatio,
    /// Formaldehyde in air, ppm by volume.
    Concentration,
    /// Formaldehyde in air, mg/m³.
    MassConcentration,
    /// Air temperature.
    AirTemperature,
    /// Perforator value, mg per 100 g of oven-dry board.
    Perforator,
    /// Board moisture at the perforator test.
    BoardMoisture,
}

/// Entries of the emission sheet.
pub type EmissionEntries = BTreeMap<EmissionField, Entry>;

impl EmissionField {
    /// All of them, in the order of the page.
    pub const ALL: [Self; 10] = [
        Self::FormaldehydePerUrea,
        Self::MelaminePerUrea,
        Self::ResinSolids,
        Self::AddedUrea,
        Self::TargetRatio,
        Self::Concentration,
        Self::MassConcentration,
        Self::AirTemperature,
        Self::Perforator,
        Self::BoardMoisture,
    ];

    /// The stable key, on the page.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::FormaldehydePerUrea => "formaldehyde_per_urea",
            Self::MelaminePerUrea => "melamine_per_urea",
            Self::ResinSolids => "resin_solids",
            Self::AddedUrea => "added_urea",
            Self::TargetRatio => "target_ratio",
            Self::Concentration => "concentration",
            Self::MassConcentration => "mass_concentration",
            Self::AirTemperature => "air_temperature",
            Self::Perforator => "perforator",
            Self::BoardMoisture => "board_moisture",
        }
    }

    /// What it measures.
    #[must_use]
    pub const fn kind(self) -> Kind {
        match self {
            Self::ResinSolids | Self::AddedUrea => Kind::BatchMass,
            Self::AirTemperature => Kind::Temperature,
            Self::BoardMoisture => Kind::Moisture,
            _ => Kind::Ratio,
        }
    }

    /// The unit that it starts with.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::ResinSolids | Self::AddedUrea => Unit::Kilogram,
            Self::AirTemperature => Unit::Celsius,
            Self::BoardMoisture => Unit::PercentDryBasis,
            _ => Unit::One,
        }
    }

    /// What it may hold.
    #[must_use]
    pub const fn limit(self) -> Limit {
        let (least, most, above_least) = match self {
            Self::FormaldehydePerUrea | Self::TargetRatio => (0.0, 100.0, true),
            Self::MelaminePerUrea => (0.0, 100.0, false),
            Self::AirTemperature => (-50.0, 100.0, false),
            Self::BoardMoisture => (0.0, 30.0, false),
            _ => (0.0, 1e6, false),
        };
        Limit { unit: self.unit(), least, above_least, most, below_most: false, usual: None, optional: true }
    }

    /// What the box holds at first: 100 kg of resin solids, air at 23 °C as in the reference chamber (EN 717-1).
    #[must_use]
    pub fn start(self) -> Entry {
        match self {
            Self::ResinSolids => Entry::preset("100", self.unit()),
            Self::AirTemperature => Entry::preset("23", self.unit()),
            _ => Entry::empty(self.unit()),
        }
    }
}

/// What came of an entry; `None` where something that it needs is blank or not valid.
type Found<T> = Option<Result<T, EmissionError>>;

/// What comes of the emission sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct EmissionSheet {
    /// Ratios of the mix.
    pub ratios: Found<MixRatios>,
    /// Urea in all for the target ratio.
    pub urea: Found<[Mass; 2]>,
    /// The concentration by mass, from that by volume.
    pub concentration: Found<MassDensity>,
    /// The concentration by volume, from that by mass.
    pub share: Found<Ratio>,
    /// The perforator value at 6.5 % board moisture.
    pub perforator: Found<f64>,
}

/// Works out the emission sheet.
#[must_use]
pub fn sheet(entries: &EmissionEntries) -> EmissionSheet {
    let read = |field: EmissionField| {
        let start = field.start();
        read_entry(entries.get(&field).unwrap_or(&start), field.kind(), &field.limit())
    };
    let needed = |field| read(field).ok().flatten();
    // Blank stands for none; what is not valid leaves no answer.
    let or_none = |field| read(field).ok().map(|value| value.unwrap_or(0.0));
    let of = |value: f64| Ratio::new::<ratio>(value);
    let mass = |value: f64| Mass { value, ..Mass::default() };
    let resin = || {
        let resin = AminoResin {
            formaldehyde_per_urea: of(needed(EmissionField::FormaldehydePerUrea)?),
            melamine_per_urea: of(or_none(EmissionField::MelaminePerUrea)?),
        };
        Some([(resin, mass(needed(EmissionField::ResinSolids)?))])
    };
    let perforator = needed(EmissionField::Perforator).zip(needed(EmissionField::BoardMoisture));
    let air = || needed(EmissionField::AirTemperature);
    let at = |kelvin| ThermodynamicTemperature { value: kelvin, ..ThermodynamicTemperature::default() };
    EmissionSheet {
        ratios: resin().zip(or_none(EmissionField::AddedUrea)).map(|(resin, urea)| of_mix(&resin, mass(urea))),
        urea: resin().zip(needed(EmissionField::TargetRatio)).map(|(resin, target)| urea_for(&resin, of(target))),
        concentration: needed(EmissionField::Concentration)
            .zip(air())
            .map(|(ppm, kelvin)| mass_concentration(Ratio::new::<part_per_million>(ppm), at(kelvin))),
        share: needed(EmissionField::MassConcentration).zip(air()).map(|(milligram, kelvin)| {
            volume_share(MassDensity::new::<milligram_per_cubic_meter>(milligram), at(kelvin))
        }),
        perforator: perforator.map(|(value, moisture)| perforator_at_reference(value, of(moisture))),
    }
}
