//! A pump's line: mass flow over setting at the density of today.

use crate::domain::line::pumps::metering::Metering;
use crate::domain::line::pumps::setting::{Setting, SettingRange};
use crate::quantity::number::finite;
use crate::statistics::regression::{Fit, Interval};
use std::marker::PhantomData;
use uom::si::f64::{MassDensity, MassRate, Ratio};
use uom::si::ratio::ratio;

/// The line of a catch test, carried over to the density of the liquid that runs.
///
/// A pump that meters volume delivers ρ/ρ_test times the mass flow of its catch test; one that meters mass
/// delivers what it was tested with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curve {
    /// The line as caught: kg/s on the setting's base unit.
    pub fit: Fit,
    /// Mass flow now per mass flow as caught.
    pub scale: Ratio,
}

/// A setting for a wanted flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SettingFor {
    /// The setting at which the line reaches the flow.
    pub setting: Setting,
    /// The settings at which one catch may well give that flow, 95 %. `None` where the rows are too few, or
    /// scatter so much that none is ruled out.
    pub interval: Option<SettingRange>,
    /// Where one catch at the setting is expected, 95 %.
    pub flow: Option<Flows>,
}

/// From one mass flow to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flows {
    /// Lower end.
    pub low: MassRate,
    /// Upper end.
    pub high: MassRate,
}

const fn rate(value: f64) -> MassRate {
    MassRate { dimension: PhantomData, units: PhantomData, value }
}

impl Curve {
    /// The line at the density of its own catch test.
    #[must_use]
    pub fn as_caught(fit: Fit) -> Self {
        Self { fit, scale: Ratio::new::<ratio>(1.0) }
    }

    /// The line for a liquid of `now`, caught at `then`.
    #[must_use]
    pub fn at_density(self, metering: Metering, then: MassDensity, now: MassDensity) -> Self {
        let scale = match metering {
            Metering::Volume => now / then,
            Metering::Mass => Ratio::new::<ratio>(1.0),
        };
        Self { scale, ..self }
    }

    /// Mass flow at a setting, not below zero.
    #[must_use]
    pub fn flow(&self, setting: Setting) -> MassRate {
        rate(self.fit.at(setting.0).max(0.0)) * self.scale
    }

    /// Slope, mass flow per setting's base unit.
    #[must_use]
    pub fn slope(&self) -> MassRate {
        rate(self.fit.slope) * self.scale
    }

    /// Intercept, mass flow at a setting of zero as the line has it; may be below zero.
    #[must_use]
    pub fn intercept(&self) -> MassRate {
        rate(self.fit.intercept) * self.scale
    }

    /// Residual standard deviation.
    #[must_use]
    pub fn residual_sd(&self) -> Option<MassRate> {
        self.fit.residual_sd.map(|sd| rate(sd) * self.scale)
    }

    /// Lowest and highest tested setting.
    #[must_use]
    pub const fn tested(&self) -> SettingRange {
        SettingRange { low: Setting(self.fit.tested.low), high: Setting(self.fit.tested.high) }
    }

    /// Where one catch at the setting is expected, 95 %.
    #[must_use]
    pub fn prediction(&self, setting: Setting) -> Option<Flows> {
        let Interval { low, high } = self.fit.prediction(setting.0)?;
        Some(Flows { low: rate(low) * self.scale, high: rate(high) * self.scale })
    }

    /// The setting for a mass flow, (L − a)/b; `None` when the line gives none from zero up.
    #[must_use]
    pub fn setting(&self, flow: MassRate) -> Option<Setting> {
        self.fit.inverse((flow / self.scale).value).filter(|x| *x >= 0.0).map(Setting)
    }

    /// The same with its intervals.
    #[must_use]
    pub fn setting_for(&self, flow: MassRate) -> Option<SettingFor> {
        let setting = self.setting(flow)?;
        let interval = self.fit.inverse_interval((flow / self.scale).value);
        Some(SettingFor {
            setting,
            interval: interval.map(|Interval { low, high }| SettingRange { low: Setting(low), high: Setting(high) }),
            flow: self.prediction(setting),
        })
    }

    /// Standard deviation of the line itself at a setting.
    #[must_use]
    pub fn sd_of_mean(&self, setting: Setting) -> Option<MassRate> {
        Some(rate(finite(self.fit.sd_of_mean(setting.0)?)?) * self.scale)
    }
}
