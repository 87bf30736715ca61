//! Tanks: when they run empty, and what still fits.

use crate::domain::balance::outcome::Case;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::tanks::draw::drawn;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::line::tanks::tank::{Content, Tank, TankId};
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::finding::Grade;
use crate::quantity::{Amount, Kind};
use uom::si::f64::{Mass, MassDensity, MassRate, Time, Volume};
use uom::{ConstZero, si::time::second};

/// How a tank stands at today's rate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TankState {
    /// The tank.
    pub tank: TankId,
    /// What it holds in this recipe.
    pub fed: Fed,
    /// Density of it.
    pub density: MassDensity,
    /// How it is used, by mass.
    pub rate: MassRate,
    /// What is in it, heel included.
    pub content: Volume,
    /// What can be pumped out of it, by volume; not below zero.
    pub usable: Volume,
    /// The same by mass.
    pub usable_mass: Mass,
    /// How long it lasts; `None` when nothing is drawn.
    pub lasts: Option<Time>,
    /// How long until it must be ordered; zero when that has passed. `None` without a lead time.
    pub order_within: Option<Time>,
    /// Use per shift, by mass.
    pub per_shift: Mass,
    /// The same by volume.
    pub per_shift_volume: Volume,
    /// Delivery that still fits, by volume.
    pub fits: Volume,
    /// The same by mass.
    pub fits_mass: Mass,
}

impl TankState {
    /// What there is to say about it; `tank` is the one that it is the state of.
    #[must_use]
    pub fn findings(&self, tank: &Tank) -> Vec<LineFinding> {
        let mut findings = Vec::new();
        let mut say = |what| findings.push(LineFinding::new(Grade::Unusual, LinePlace::Tank(self.tank), what));
        // A rounding error on the way from mass to volume is not too much.
        if self.content > tank.capacity * (1.0 + 1e-9) {
            say(LineFindingKind::OverFull);
        }
        if self.usable.value <= 0.0 {
            say(LineFindingKind::TankEmpty);
        }
        if let Some((lasts, within)) = self.lasts.zip(self.order_within)
            && within.value <= 0.0
        {
            say(LineFindingKind::OrderNow { left: Amount::from_base(Kind::ShiftTime, lasts.value) });
        }
        findings
    }

    /// When it is empty, in milliseconds since 1970-01-01 00:00 UTC, if it is now `now`.
    #[must_use]
    pub fn empty_at(&self, now: u64) -> Option<u64> {
        self.lasts.map(|lasts| after(now, lasts))
    }

    /// When it must be ordered at the latest, as [`empty_at`](Self::empty_at).
    #[must_use]
    pub fn order_at(&self, now: u64) -> Option<u64> {
        self.order_within.map(|within| after(now, within))
    }
}

/// A moment some time after another, both in milliseconds.
#[must_use]
pub fn after(start: u64, time: Time) -> u64 {
    // Bounded by what is checked; a cast from f64 saturates.
    start.saturating_add((time.get::<second>() * 1_000.0).round() as u64)
}

impl Tank {
    /// How the tank stands: usable = content − heel, lasts = usable·ρ/flow, fits = capacity − content.
    /// `None` when its liquid is not in the recipe, or its content is not known.
    #[must_use]
    pub fn state(&self, draft: &Draft, case: &Case) -> Option<TankState> {
        let fed = self.feeds.within(draft)?;
        let (rate, density) = drawn(case, fed)?;
        let content: Volume = match self.content? {
            Content::Level(level) => self.capacity * level,
            Content::Volume(volume) => volume,
            Content::Mass(mass) => mass / density,
        };
        let usable = Volume::ZERO.max(content - self.heel);
        let usable_mass: Mass = usable * density;
        let lasts = (rate.value > 0.0).then(|| usable_mass / rate).filter(|time: &Time| time.is_finite());
        let fits = Volume::ZERO.max(self.capacity - content);
        let shift = case.input.line.shift;
        Some(TankState {
            tank: self.id,
            fed,
            density,
            rate,
            content,
            usable,
            usable_mass,
            lasts,
            order_within: lasts.zip(self.lead_time).map(|(lasts, lead)| Time::ZERO.max(lasts - lead)),
            per_shift: rate * shift,
            per_shift_volume: rate * shift / density,
            fits,
            fits_mass: fits * density,
        })
    }
}
