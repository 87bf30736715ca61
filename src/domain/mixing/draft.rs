//! Everything typed where solutions and glues are made up, raw.

use crate::domain::chemistry::solute::Solute;
use crate::domain::mixing::field::{Entries, MixField, SHARE};
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::finding::What;
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

/// Whether an amount is asked for by mass or by volume.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum AmountWay {
    /// By mass.
    Mass,
    /// By volume.
    Volume,
}

impl AmountWay {
    /// Both ways, in the order in which they are offered.
    pub const ALL: &'static [AmountWay] = &[Self::Mass, Self::Volume];
}

/// What fixes the proportions of a glue.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ShareWay {
    /// The flows of the recipe.
    Recipe,
    /// Parts by mass as typed.
    Typed,
}

impl ShareWay {
    /// Both ways, in the order in which they are offered.
    pub const ALL: &'static [ShareWay] = &[Self::Recipe, Self::Typed];
}

/// What a part of a glue is. A liquid is known by its name: so what was chosen for it holds in
/// every recipe that has a liquid of that name, and for no other.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PartKey {
    /// A liquid of the recipe.
    Liquid(String),
    /// The water that thins the liquids in the tank to their spray solids.
    Thinning,
    /// The recipe's water dose.
    Water,
}

/// What was chosen for a part of a glue.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct TankPart {
    /// The part.
    pub key: PartKey,
    /// Whether it goes into the tank; `None` as long as nobody said.
    #[serde(default)]
    pub in_tank: Option<bool>,
    /// Parts by mass, as typed.
    pub share: Entry,
}

impl TankPart {
    /// The part as long as nothing was chosen.
    #[must_use]
    pub fn untouched(key: PartKey) -> Self {
        Self { key, in_tank: None, share: Entry::empty(Unit::One) }
    }
}

/// Everything typed and chosen there.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct MixDraft {
    /// What is dissolved.
    pub solute: Solute,
    /// How the solution wanted is asked for.
    pub solution_way: AmountWay,
    /// How the glue wanted is asked for.
    pub glue_way: AmountWay,
    /// What fixes the glue's proportions.
    pub share_way: ShareWay,
    /// What was chosen for the parts of the glue, in no order.
    pub tank: Vec<TankPart>,
    /// The numbers.
    pub entries: Entries,
}

impl Default for MixDraft {
    fn default() -> Self {
        Self {
            solute: Solute::AmmoniumSulfate,
            solution_way: AmountWay::Mass,
            glue_way: AmountWay::Mass,
            share_way: ShareWay::Recipe,
            tank: Vec::new(),
            entries: Entries::default(),
        }
    }
}

impl MixDraft {
    /// The entry of a field.
    #[must_use]
    pub const fn entry(&self, field: MixField) -> &Entry {
        self.entries.entry(field)
    }

    /// The entry of a field, to type into.
    pub const fn entry_mut(&mut self, field: MixField) -> &mut Entry {
        self.entries.entry_mut(field)
    }

    /// The number of a field, in the base unit of its kind; `None` while it may be blank and is.
    ///
    /// # Errors
    /// As [`read_entry`].
    pub fn read(&self, field: MixField) -> Result<Option<f64>, What> {
        read_entry(self.entry(field), field.kind(), &field.limit())
    }

    /// What was chosen for a part.
    #[must_use]
    pub fn part(&self, key: &PartKey) -> Option<&TankPart> {
        self.tank.iter().find(|part| part.key == *key)
    }

    /// What was chosen for a part, to change.
    pub fn part_mut(&mut self, key: &PartKey) -> &mut TankPart {
        let at = self.tank.iter().position(|part| part.key == *key).unwrap_or_else(|| {
            self.tank.push(TankPart::untouched(key.clone()));
            self.tank.len() - 1
        });
        &mut self.tank[at]
    }

    /// The parts by mass typed for a part of the glue.
    ///
    /// # Errors
    /// As [`read_entry`].
    pub fn share(&self, key: &PartKey) -> Result<f64, What> {
        let part = self.part(key).ok_or(What::Missing)?;
        read_entry(&part.share, Kind::Ratio, &SHARE)?.ok_or(What::Missing)
    }
}
