//! Tanks, as entered and as checked.

use crate::domain::form::form;
use crate::domain::limit::Limit;
use crate::domain::line::tanks::feeds::Feeds;
use crate::domain::recipe::draft::Entry;
use crate::quantity::{Kind, Unit, Unit as U};
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

    /// The unit of a content that is not typed yet.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::Level => Unit::Percent,
            Self::Volume => Unit::Litre,
            Self::Mass => Unit::Kilogram,
        }
    }
}

form! {
    /// A number of a tank.
    enum TankField {
        /// What it holds when full.
        Capacity: capacity, BatchVolume, Litre, "", Limit::above_to(U::Litre, 0.0, 1e7);
        /// What cannot be pumped out of it.
        Heel: heel, BatchVolume, Litre, "0", Limit::from_to(U::Litre, 0.0, 1e7);
        /// What is in it, heel included, in the way of its [`TankWay`], here as a level.
        Content: content, Share, Percent, "", Limit::from_to(U::Percent, 0.0, 100.0);
        /// How long before a delivery it must be ordered.
        LeadTime: lead_time, ShiftTime, Hour, "", Limit::from_to(U::Hour, 0.0, 8_760.0).optional();
    }

    /// The numbers of a tank as entered.
    struct TankEntries;
}

impl TankField {
    /// What the field may hold where the content is read in this way.
    #[must_use]
    pub const fn limit_by(self, way: TankWay) -> Limit {
        match (self, way) {
            (Self::Content, TankWay::Volume) => Limit::from_to(U::Litre, 0.0, 1e7),
            (Self::Content, TankWay::Mass) => Limit::from_to(U::Kilogram, 0.0, 1e7),
            _ => self.limit(),
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
    /// Its numbers.
    pub entries: TankEntries,
    /// When its content was read, milliseconds since 1970-01-01 00:00 UTC.
    #[serde(default)]
    pub read_at: Option<u64>,
    /// When its next delivery was ordered, milliseconds since 1970-01-01 00:00 UTC; `None` while none is under way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ordered_at: Option<u64>,
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
            entries: TankEntries::default(),
            read_at: None,
            ordered_at: None,
        }
    }

    /// Changes how its content is read. A number of another kind makes no sense there and goes.
    pub fn set_way(&mut self, way: TankWay) {
        if way != self.way {
            self.way = way;
            self.entries.content = Entry::empty(way.unit());
        }
    }

    /// The entry of a field.
    #[must_use]
    pub const fn entry(&self, field: TankField) -> &Entry {
        self.entries.entry(field)
    }

    /// The entry of a field, to type into.
    pub const fn entry_mut(&mut self, field: TankField) -> &mut Entry {
        self.entries.entry_mut(field)
    }

    /// What a field measures.
    #[must_use]
    pub const fn kind(&self, field: TankField) -> Kind {
        match (field, self.way) {
            (TankField::Content, TankWay::Volume) => Kind::BatchVolume,
            (TankField::Content, TankWay::Mass) => Kind::BatchMass,
            _ => field.kind(),
        }
    }
}

/// What is in a tank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TankContent {
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
    pub content: Option<TankContent>,
    /// When that was read, milliseconds since 1970-01-01 00:00 UTC.
    pub read_at: Option<u64>,
    /// How long before a delivery it must be ordered.
    pub lead_time: Option<Time>,
    /// When its next delivery was ordered, milliseconds since 1970-01-01 00:00 UTC.
    pub ordered_at: Option<u64>,
}
