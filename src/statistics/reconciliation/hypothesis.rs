//! The global test and the measurement test.

use statrs::distribution::{ChiSquared, ContinuousCDF, Normal};

/// The global test: is the whole set of readings consistent?
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GlobalTest {
    /// Σ(adjustment/uncertainty)², for correlated readings the like of it.
    pub chi_squared: f64,
    /// Independent constraints that are left once the unmeasured quantities are inferred.
    pub degrees_of_freedom: usize,
    /// What chance exceeds with a probability of one less the level.
    pub critical: f64,
    /// Probability that chance makes it as large.
    pub p_value: f64,
}

impl GlobalTest {
    /// `None` without degrees of freedom: nothing is checked.
    pub(super) fn new(chi_squared: f64, degrees_of_freedom: usize, level: f64) -> Option<Self> {
        let freedom = u32::try_from(degrees_of_freedom).ok()?;
        let chance = ChiSquared::new(f64::from(freedom)).ok()?;
        let critical = chance.inverse_cdf(level);
        Some(Self { chi_squared, degrees_of_freedom, critical, p_value: chance.sf(chi_squared) })
    }

    /// Whether the readings are consistent.
    #[must_use]
    pub fn passes(&self) -> bool {
        self.chi_squared <= self.critical
    }
}

/// The test of one reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeasurementTest {
    /// |adjustment| in standard deviations of the adjustment. For correlated readings that of the power test.
    pub statistic: f64,
    /// What chance exceeds in any of the readings tested with a probability of one less the level.
    pub critical: f64,
}

impl MeasurementTest {
    /// Whether the adjustment is no larger than chance makes it.
    #[must_use]
    pub fn passes(&self) -> bool {
        self.statistic <= self.critical
    }
}

/// Critical value of the measurement test where `readings` are tested: Φ⁻¹(1 − β/2) with β = 1 − level^(1/readings)
/// (Šidák, 1967).
pub(super) fn critical_value(level: f64, readings: usize) -> f64 {
    let readings = u32::try_from(readings.max(1)).unwrap_or(u32::MAX);
    let beta = -(level.ln() / f64::from(readings)).exp_m1();
    -Normal::standard().inverse_cdf(beta / 2.0)
}

/// What chance exceeds of a χ² value with some degrees of freedom; zero for none.
pub(super) fn chi_squared_limit(level: f64, degrees_of_freedom: usize) -> f64 {
    GlobalTest::new(0.0, degrees_of_freedom, level).map_or(0.0, |test| test.critical)
}
