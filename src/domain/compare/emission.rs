//! The emission sheet: what is entered for it, and what comes of it.

use crate::domain::chemistry::emission::{
    AminoResin, EmissionError, MixRatios, mass_concentration, of_mix, perforator_at_reference, urea_for, volume_share,
};
use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::recipe::check::read_entry;
use crate::quantity::Unit as U;
use uom::si::f64::{Mass, MassDensity, Ratio, ThermodynamicTemperature};
use uom::si::mass_density::milligram_per_cubic_meter;
use uom::si::ratio::{part_per_million, ratio};

/// What a number of the emission sheet is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EmissionSection {
    /// The molar ratio of resin and added urea.
    Resin,
    /// Formaldehyde in air.
    Air,
    /// The perforator test.
    Perforator,
}

form! {
    /// A number of the emission sheet.
    enum EmissionField at EmissionSection {
        /// F/U of the resin, mol/mol.
        FormaldehydePerUrea: formaldehyde_per_urea, Ratio, One, "", EmissionSection::Resin,
            Limit::above_to(U::One, 0.0, 100.0).optional();
        /// Melamine per urea of the resin, mol/mol; blank for a urea resin.
        MelaminePerUrea: melamine_per_urea, Ratio, One, "", EmissionSection::Resin,
            Limit::from_to(U::One, 0.0, 100.0).optional();
        /// Solids of the resin.
        ResinSolids: resin_solids, BatchMass, Kilogram, "100", EmissionSection::Resin,
            Limit::from_to(U::Kilogram, 0.0, 1e6).optional();
        /// Urea added to it; blank for none.
        AddedUrea: added_urea, BatchMass, Kilogram, "", EmissionSection::Resin,
            Limit::from_to(U::Kilogram, 0.0, 1e6).optional();
        /// F/(NH₂)₂ wanted of the mix.
        TargetRatio: target_ratio, Ratio, One, "", EmissionSection::Resin,
            Limit::above_to(U::One, 0.0, 100.0).optional();
        /// Formaldehyde in air, ppm by volume.
        Concentration: concentration, Ratio, One, "", EmissionSection::Air,
            Limit::from_to(U::One, 0.0, 1e6).optional();
        /// Formaldehyde in air, mg/m³.
        MassConcentration: mass_concentration, Ratio, One, "", EmissionSection::Air,
            Limit::from_to(U::One, 0.0, 1e6).optional();
        /// Air temperature; 23 °C as in the reference chamber (EN 717-1).
        AirTemperature: air_temperature, Temperature, Celsius, "23", EmissionSection::Air,
            Limit::from_to(U::Celsius, -50.0, 100.0).optional();
        /// Perforator value, mg per 100 g of oven-dry board.
        Perforator: perforator, Ratio, One, "", EmissionSection::Perforator,
            Limit::from_to(U::One, 0.0, 1e6).optional();
        /// Board moisture at the perforator test.
        BoardMoisture: board_moisture, Moisture, PercentDryBasis, "", EmissionSection::Perforator,
            Limit::from_to(U::PercentDryBasis, 0.0, 30.0).optional();
    }

    /// Entries of the emission sheet.
    struct EmissionEntries;
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
    let read = |field: EmissionField| read_entry(entries.entry(field), field.kind(), &field.limit());
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
