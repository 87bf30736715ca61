//! Density of aqueous solutions at 20 °C, from a published table.

use uom::si::f64::{MassDensity, Ratio};
use uom::si::mass_density::gram_per_cubic_centimeter;
use uom::si::ratio::percent;

use crate::domain::chemistry::interpolate::linear;
use crate::domain::chemistry::solute::Solute;

/// Water at 20 °C and 101.325 kPa, g/cm³ (IAPWS-95): the row that the table leaves out.
const WATER: f64 = 0.998_207;

/// Ammonium chloride.
#[rustfmt::skip]
const AMMONIUM_CHLORIDE: [(f64, f64); 24] = [
    (0.0, WATER), (0.5, 0.9998), (1.0, 1.0014), (2.0, 1.0045), (3.0, 1.0076), (4.0, 1.0107),
    (5.0, 1.0138), (6.0, 1.0168), (7.0, 1.0198), (8.0, 1.0227), (9.0, 1.0257), (10.0, 1.0286),
    (11.0, 1.0315), (12.0, 1.0344), (13.0, 1.0373), (14.0, 1.0401), (15.0, 1.0429), (16.0, 1.0457),
    (17.0, 1.0485), (18.0, 1.0512), (19.0, 1.054), (20.0, 1.0567), (22.0, 1.0621), (24.0, 1.0674),
];

/// Ammonium sulfate.
#[rustfmt::skip]
const AMMONIUM_SULFATE: [(f64, f64); 27] = [
    (0.0, WATER), (0.5, 1.0012), (1.0, 1.0042), (2.0, 1.0101), (3.0, 1.016), (4.0, 1.022),
    (5.0, 1.0279), (6.0, 1.0338), (7.0, 1.0397), (8.0, 1.0456), (9.0, 1.0515), (10.0, 1.0574),
    (12.0, 1.0691), (14.0, 1.0808), (16.0, 1.0924), (18.0, 1.1039), (20.0, 1.1154), (22.0, 1.1269),
    (24.0, 1.1383), (26.0, 1.1496), (28.0, 1.1609), (30.0, 1.1721), (32.0, 1.1833), (34.0, 1.1945),
    (36.0, 1.2056), (38.0, 1.2166), (40.0, 1.2277),
];

/// Urea.
#[rustfmt::skip]
const UREA: [(f64, f64); 35] = [
    (0.0, WATER), (0.5, 0.9995), (1.0, 1.0007), (2.0, 1.0033), (3.0, 1.0058), (4.0, 1.0085),
    (5.0, 1.0111), (6.0, 1.0138), (7.0, 1.0165), (8.0, 1.0192), (9.0, 1.022), (10.0, 1.0248),
    (11.0, 1.0276), (12.0, 1.0304), (13.0, 1.0332), (14.0, 1.036), (15.0, 1.0388), (16.0, 1.0417),
    (17.0, 1.0445), (18.0, 1.0473), (19.0, 1.0502), (20.0, 1.053), (22.0, 1.0586), (24.0, 1.0643),
    (26.0, 1.0699), (28.0, 1.0756), (30.0, 1.0812), (32.0, 1.0869), (34.0, 1.0926), (36.0, 1.0984),
    (38.0, 1.1044), (40.0, 1.1106), (42.0, 1.1171), (44.0, 1.1239), (46.0, 1.1313),
];

/// Why no density can be given for a solution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DensityError {
    /// There is no published table for this solute here; a measured density has to be given.
    NoTable {
        /// The solute asked for.
        solute: Solute,
    },
    /// The table does not reach to this mass fraction, or the fraction is not a number.
    OutsideTable {
        /// The solute asked for.
        solute: Solute,
        /// The mass fraction asked for.
        given: Ratio,
        /// The largest mass fraction in the table; the smallest is zero.
        max: Ratio,
    },
}

/// Density at 20 °C of a solution of the mass fraction `fraction` of `solute`.
///
/// Straight lines between the rows of the table, which start from pure water. The rows are rounded
/// to 0.0001 g/cm³; the straight line itself adds at most 0.00003 g/cm³, for urea above 40 %
/// 0.00008. Valid from 0 to the end of the table: ammonium sulfate 40 %, ammonium chloride 24 %,
/// urea 46 %.
///
/// # Errors
/// [`DensityError::NoTable`] for ammonium nitrate, [`DensityError::OutsideTable`] beyond the table:
/// nothing is extrapolated.
///
/// Source: CRC Handbook of Chemistry and Physics, 102nd ed., concentrative properties of aqueous
/// solutions; row 0 from IAPWS-95.
pub fn density_at_20c(solute: Solute, fraction: Ratio) -> Result<MassDensity, DensityError> {
    let table = table(solute).ok_or(DensityError::NoTable { solute })?;
    match linear(table, fraction.get::<percent>()) {
        Some(density) => Ok(MassDensity::new::<gram_per_cubic_centimeter>(density)),
        None => Err(DensityError::OutsideTable { solute, given: fraction, max: end(table) }),
    }
}

/// Largest mass fraction for which [`density_at_20c`] knows the density; `None` without a table.
pub fn largest_fraction(solute: Solute) -> Option<Ratio> {
    table(solute).map(end)
}

/// Last mass fraction of a table, of which each ends above zero.
fn end(table: &[(f64, f64)]) -> Ratio {
    Ratio::new::<percent>(table.last().map_or(0.0, |row| row.0))
}

/// The rows for a solute: mass percent, g/cm³.
fn table(solute: Solute) -> Option<&'static [(f64, f64)]> {
    match solute {
        Solute::AmmoniumSulfate => Some(&AMMONIUM_SULFATE),
        Solute::AmmoniumChloride => Some(&AMMONIUM_CHLORIDE),
        Solute::AmmoniumNitrate => None,
        Solute::Urea => Some(&UREA),
    }
}
