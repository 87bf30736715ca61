//! Machines and streams of the balance, and what workings rest on.

use crate::domain::working::{Constant, Ground};
use crate::label;
use crate::ui::text::source_text;
use std::borrow::Cow;

/// A number from a table.
#[must_use]
pub fn constant(constant: Constant) -> &'static str {
    match constant {
        Constant::WaterDensity => label!("name-constant-water-density"),
        Constant::SensibleHeat => label!("name-constant-sensible-heat"),
        Constant::LatentHeat => label!("name-constant-latent-heat"),
        Constant::DryerHeat => label!("name-constant-dryer-heat"),
        Constant::HoursPerYear => label!("name-constant-hours-per-year"),
    }
}

/// Where a formula comes from.
#[must_use]
pub fn ground(ground: Ground) -> Cow<'static, str> {
    match ground {
        Ground::Entered => Cow::Borrowed(label!("name-ground-entered")),
        Ground::MassBalance => Cow::Borrowed(label!("name-ground-mass-balance")),
        Ground::Definition => Cow::Borrowed(label!("name-ground-definition")),
        Ground::Published(source) => Cow::Owned(source_text(source)),
    }
}
