//! Tanks, as entered and as checked.

use crate::domain::line::tanks::feeds::Feeds;
use crate::domain::recipe::draft::Entry;
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};
use uom::si::f64::{Mass, Ratio, Time, Volume};

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
    /// When that was read, milliseconds since 1970-01-01 00:00 UTC.
    #[serde(default)]
    pub read_at: Option<u64>,
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
            read_at: None,
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
    /// When that was read, milliseconds since 1970-01-01 00:00 UTC.
    pub read_at: Option<u64>,
    /// How long before a delivery it must be ordered.
    pub lead_time: Option<Time>,
}
