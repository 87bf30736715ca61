//! Tanks: when they run empty, and what still fits.

use crate::domain::balance::outcome::Case;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::tanks::draw::drawn;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::line::tanks::tank::{Tank, TankContent, TankId};
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::finding::Grade;
use crate::quantity::{Amount, Kind};
use uom::si::f64::{Mass, MassDensity, MassRate, Time, Volume, VolumeRate};
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
    /// Its share of what the recipe draws, by mass.
    pub rate: MassRate,
    /// What is in it, heel included.
    pub content: Volume,
    /// What can be pumped out of it, by volume; not below zero.
    pub usable: Volume,
    /// The same by mass.
    pub usable_mass: Mass,
    /// How long it lasts; `None` when nothing is drawn.
    pub lasts: Option<Time>,
    /// How long from the reading until it must be ordered; below zero when it was overdue then. `None` without a lead time.
    pub order_within: Option<Time>,
    /// When its content was read, milliseconds since 1970-01-01 00:00 UTC.
    pub read_at: Option<u64>,
    /// When its next delivery was ordered, milliseconds since 1970-01-01 00:00 UTC.
    pub ordered_at: Option<u64>,
    /// How long a delivery takes from its order.
    pub lead_time: Option<Time>,
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
    /// What there is to say about it at `now`; `tank` is the one that it is the state of.
    #[must_use]
    pub fn findings(&self, tank: &Tank, now: u64) -> Vec<LineFinding> {
        let mut findings = Vec::new();
        let mut say = |what| findings.push(LineFinding::new(Grade::Unusual, LinePlace::Tank(self.tank), what));
        // A rounding error on the way from mass to volume is not too much.
        if self.content > tank.capacity * (1.0 + 1e-9) {
            say(LineFindingKind::OverFull);
        }
        if self.usable.value <= 0.0 || self.empty_at(now).is_some_and(|empty| empty <= now) {
            say(LineFindingKind::TankEmpty);
        }
        let hours = |time: Time| Amount::from_base(Kind::ShiftTime, time.value);
        let at_most = self.use_at_most(now).map(|flow| Amount::from_base(Kind::PumpFlow, flow.value));
        if let Some(by) = self.overdue_by(now) {
            say(LineFindingKind::OrderOverdue { by: hours(by), at_most });
        }
        if let Some(by) = self.delivery_late_by(now) {
            say(LineFindingKind::DeliveryLate { by: hours(by), at_most });
        }
        findings
    }

    /// When its next delivery comes, milliseconds since 1970-01-01 00:00 UTC: a lead time after its order, and after `now` where it is
    /// not ordered yet. `None` without a lead time.
    #[must_use]
    pub fn delivery_at(&self, now: u64) -> Option<u64> {
        self.lead_time.map(|lead| after(self.ordered_at.unwrap_or(now), lead))
    }

    /// How long before the delivery that was ordered it runs empty at today's rate; `None` where it lasts, or where nothing is ordered.
    #[must_use]
    pub fn delivery_late_by(&self, now: u64) -> Option<Time> {
        self.ordered_at?;
        span(self.empty_at(now)?, self.delivery_at(now)?)
    }

    /// The largest flow at which it lasts until its next delivery, by volume: what is left in it at `now` over the time until then.
    /// `None` without a lead time, or once the delivery should be there.
    #[must_use]
    pub fn use_at_most(&self, now: u64) -> Option<VolumeRate> {
        let left = span(now, self.empty_at(now)?).unwrap_or(Time::ZERO);
        let until = span(now, self.delivery_at(now)?)?;
        let flow: VolumeRate = self.rate / self.density * (left / until);
        flow.is_finite().then_some(flow)
    }

    /// When it runs empty, milliseconds since 1970-01-01 00:00 UTC, counted from when its content was read; from `now` where that
    /// is not known.
    #[must_use]
    pub fn empty_at(&self, now: u64) -> Option<u64> {
        self.lasts.map(|lasts| after(self.read_at.unwrap_or(now), lasts))
    }

    /// By when it must be ordered, as [`empty_at`](Self::empty_at); may have passed.
    #[must_use]
    pub fn order_at(&self, now: u64) -> Option<u64> {
        let read = self.read_at.unwrap_or(now);
        self.order_within.map(|within| {
            if within.value >= 0.0 { after(read, within) } else { read.saturating_sub(after(0, -within)) }
        })
    }

    /// By how much its order is overdue at `now`; `None` while there is time, or once it is ordered.
    #[must_use]
    pub fn overdue_by(&self, now: u64) -> Option<Time> {
        if self.ordered_at.is_some() {
            return None;
        }
        span(self.order_at(now)?, now)
    }
}

/// The time from one moment to a later one, both in milliseconds; `None` where it is not later.
fn span(from: u64, to: u64) -> Option<Time> {
    let milliseconds = to.checked_sub(from).filter(|span| *span > 0)?;
    Some(Time::new::<second>(milliseconds as f64 / 1_000.0))
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
        self.state_among(&[], draft, case)
    }

    /// The same beside other tanks: those of one liquid share its draw by what can be pumped out of each, so that they run
    /// empty together. Their contents count as read at one time.
    #[must_use]
    pub fn state_among(&self, tanks: &[Tank], draft: &Draft, case: &Case) -> Option<TankState> {
        let fed = self.feeds.within(draft)?;
        let (whole, density) = drawn(case, fed)?;
        let (content, usable) = self.usable(density)?;
        let usable_mass: Mass = usable * density;
        let others = tanks.iter().filter(|other| other.id != self.id && other.feeds.within(draft) == Some(fed));
        let (count, theirs) = others
            .filter_map(|other| other.usable(density))
            .fold((1.0, Volume::ZERO), |(count, sum), (_, usable)| (count + 1.0, sum + usable));
        let together = usable + theirs;
        let rate = if together > Volume::ZERO { whole * (usable / together) } else { whole / count };
        let lasts: Option<Time> =
            (whole.value > 0.0).then(|| together * density / whole).filter(|time: &Time| time.is_finite());
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
            order_within: lasts.zip(self.lead_time).map(|(lasts, lead)| lasts - lead),
            read_at: self.read_at,
            ordered_at: self.ordered_at,
            lead_time: self.lead_time,
            per_shift: rate * shift,
            per_shift_volume: rate * shift / density,
            fits,
            fits_mass: fits * density,
        })
    }

    /// What is in it, and what of that can be pumped out.
    fn usable(&self, density: MassDensity) -> Option<(Volume, Volume)> {
        let content: Volume = match self.content? {
            TankContent::Level(level) => self.capacity * level,
            TankContent::Volume(volume) => volume,
            TankContent::Mass(mass) => mass / density,
        };
        Some((content, Volume::ZERO.max(content - self.heel)))
    }
}
