//! Tanks: how long they last, and what still fits.

use crate::domain::balance::outcome::Case;
use crate::domain::line::finding::{LineFinding, LinePlace, LineWhat};
use crate::domain::line::tanks::feeds::{Fed, Feeds};
use crate::domain::recipe::draft::{Draft, Entry};
use crate::domain::recipe::finding::Grade;
use crate::quantity::{Amount, Kind, Unit};
use serde::{Deserialize, Serialize};
use std::marker::PhantomData;
use uom::si::f64::{Mass, MassDensity, MassRate, Ratio, Time, Volume};
use uom::{ConstZero, si::time::second};

/// Names a tank of the mill.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct TankId(pub u16);

/// How a tank's content is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TankWay {
    /// As a share of its capacity.
    Level,
    /// By volume.
    Volume,
    /// By mass.
    Mass,
}

impl TankWay {
    /// All of them, in the order in which they are offered.
    pub const ALL: &'static [TankWay] = &[Self::Level, Self::Volume, Self::Mass];
}

/// A number of a tank.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum TankField {
    /// What it holds when full.
    Capacity,
    /// What stays in it and cannot be pumped.
    Heel,
    /// What is in it, heel included, in the way of its [`TankWay`].
    Content,
    /// How long before a delivery it must be ordered.
    LeadTime,
}

impl TankField {
    /// All of them, in the order of the page.
    pub const ALL: &'static [TankField] = &[Self::Capacity, Self::Heel, Self::Content, Self::LeadTime];

    /// The stable key of the field.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Capacity => "capacity",
            Self::Heel => "heel",
            Self::Content => "content",
            Self::LeadTime => "lead_time",
        }
    }
}

/// A tank as entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct TankDraft {
    /// Its number within the mill.
    pub id: TankId,
    /// The mill's name for it.
    pub name: String,
    /// What it holds.
    pub feeds: Feeds,
    /// How its content is read.
    pub way: TankWay,
    /// What it holds when full.
    pub capacity: Entry,
    /// What cannot be pumped out of it.
    pub heel: Entry,
    /// What is in it.
    pub content: Entry,
    /// How long before a delivery it must be ordered.
    pub lead_time: Entry,
}

impl TankDraft {
    /// A tank without a name or numbers.
    #[must_use]
    pub fn blank(id: TankId, feeds: Feeds) -> Self {
        Self {
            id,
            name: String::new(),
            feeds,
            way: TankWay::Level,
            capacity: Entry::empty(Unit::Litre),
            heel: Entry::preset("0", Unit::Litre),
            content: Entry::empty(Unit::Percent),
            lead_time: Entry::empty(Unit::Hour),
        }
    }

    /// Changes how its content is read. A number of another kind makes no sense there and goes.
    pub fn set_way(&mut self, way: TankWay) {
        if way != self.way {
            self.way = way;
            self.content = Entry::empty(match way {
                TankWay::Level => Unit::Percent,
                TankWay::Volume => Unit::Litre,
                TankWay::Mass => Unit::Kilogram,
            });
        }
    }

    /// The entry of a field.
    #[must_use]
    pub const fn entry(&self, field: TankField) -> &Entry {
        match field {
            TankField::Capacity => &self.capacity,
            TankField::Heel => &self.heel,
            TankField::Content => &self.content,
            TankField::LeadTime => &self.lead_time,
        }
    }

    /// The entry of a field, to type into.
    pub const fn entry_mut(&mut self, field: TankField) -> &mut Entry {
        match field {
            TankField::Capacity => &mut self.capacity,
            TankField::Heel => &mut self.heel,
            TankField::Content => &mut self.content,
            TankField::LeadTime => &mut self.lead_time,
        }
    }

    /// What a field measures.
    #[must_use]
    pub const fn kind(&self, field: TankField) -> Kind {
        match field {
            TankField::Capacity | TankField::Heel => Kind::BatchVolume,
            TankField::Content => match self.way {
                TankWay::Level => Kind::Share,
                TankWay::Volume => Kind::BatchVolume,
                TankWay::Mass => Kind::BatchMass,
            },
            TankField::LeadTime => Kind::ShiftTime,
        }
    }
}

/// What is in a tank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Content {
    /// As a share of its capacity.
    Level(Ratio),
    /// By volume.
    Volume(Volume),
    /// By mass.
    Mass(Mass),
}

/// A tank that was checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Tank {
    /// Its number within the mill.
    pub id: TankId,
    /// What it holds.
    pub feeds: Feeds,
    /// What it holds when full.
    pub capacity: Volume,
    /// What cannot be pumped out of it.
    pub heel: Volume,
    /// What is in it, heel included.
    pub content: Option<Content>,
    /// How long before a delivery it must be ordered.
    pub lead_time: Option<Time>,
}

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
            say(LineWhat::OverFull);
        }
        if self.usable.value <= 0.0 {
            say(LineWhat::TankEmpty);
        }
        if let Some((lasts, within)) = self.lasts.zip(self.order_within)
            && within.value <= 0.0
        {
            say(LineWhat::OrderNow { left: Amount::from_base(Kind::ShiftTime, lasts.value) });
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

/// How much of something the recipe takes, and its density.
///
/// The dosed and thinning water is reckoned at 20 °C.
#[must_use]
pub fn drawn(case: &Case, fed: Fed) -> Option<(MassRate, MassDensity)> {
    let flow = |id| case.solved.liquids.iter().find(|flow| flow.id == id);
    match fed {
        Fed::Liquid(id) => {
            let liquid = case.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)?;
            Some((flow(id)?.liquid, liquid.density))
        }
        Fed::Thinning(id) => Some((flow(id)?.thinning, water_density())),
        Fed::Water => Some((case.solved.water.dose, water_density())),
    }
}

/// Density of the water that is dosed, at 20 °C; see [`water::density`](crate::domain::chemistry::water::density).
#[must_use]
pub fn water_density() -> MassDensity {
    use uom::si::f64::ThermodynamicTemperature;
    use uom::si::thermodynamic_temperature::degree_celsius;
    let at = ThermodynamicTemperature::new::<degree_celsius>(20.0);
    // 20 °C is within the table; the number behind is that of the table.
    let known = MassDensity { dimension: PhantomData, units: PhantomData, value: 998.2 };
    crate::domain::chemistry::water::density(at).unwrap_or(known)
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
