//! What is chosen and typed where systems are compared, raw.
//!
//! Choices and boxes are known by their key, so that each figure keeps the value wanted of it and each
//! source its ±, whatever is chosen meanwhile.

use crate::domain::balance::outcome::Case;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::{Draft, Entry, LiquidDraft};
use crate::domain::recipe::field::{Field, LiquidField};
use crate::domain::recipe::limit;
use crate::domain::recipe::liquid::Substance;
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};

/// A choice.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Chosen {
    /// What is chosen: "solve.input".
    pub what: String,
    /// The key of what was chosen: "fibre_moisture".
    pub key: String,
}

/// A box that was typed into.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Typed {
    /// What the box holds: "wanted.water_dose".
    pub what: String,
    /// What was typed.
    pub entry: Entry,
}

/// What is chosen and typed where systems are compared.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct CompareDraft {
    /// The systems by their keys, in the order in which they stand; empty until something was chosen.
    pub systems: Vec<String>,
    /// The key of the system that the others are compared with; another than those there is the first.
    pub reference: String,
    /// Whether each recipe keeps its own fibre, board and line instead of those of the open recipe.
    pub own_conditions: bool,
    /// Choices made.
    pub chosen: Vec<Chosen>,
    /// Boxes typed into.
    pub typed: Vec<Typed>,
}

impl CompareDraft {
    /// What was chosen; empty for nothing yet.
    #[must_use]
    pub fn choice(&self, what: &str) -> &str {
        self.chosen.iter().find(|chosen| chosen.what == what).map_or("", |chosen| &chosen.key)
    }

    /// Chooses.
    pub fn choose(&mut self, what: &str, key: String) {
        match self.chosen.iter_mut().find(|chosen| chosen.what == what) {
            Some(chosen) => chosen.key = key,
            None => self.chosen.push(Chosen { what: what.to_owned(), key }),
        }
    }

    /// What was typed into a box; `None` for nothing yet.
    #[must_use]
    pub fn entry(&self, what: &str) -> Option<&Entry> {
        self.typed.iter().find(|typed| typed.what == what).map(|typed| &typed.entry)
    }

    /// Types into a box.
    pub fn put(&mut self, what: &str, entry: Entry) {
        match self.typed.iter_mut().find(|typed| typed.what == what) {
            Some(typed) => typed.entry = entry,
            None => self.typed.push(Typed { what: what.to_owned(), entry }),
        }
    }

    /// Forgets a box, so that it holds what it held at first.
    pub fn forget(&mut self, what: &str) {
        self.typed.retain(|typed| typed.what != what);
    }
}

/// What a liquid's numbers are known by when systems are compared: the same liquid in two systems has the
/// same price and the same instruments. Its name, or what it is made of while it has none.
#[must_use]
pub fn liquid_key(name: &str, substance: Substance) -> String {
    let name = name.trim();
    let place = || Substance::ALL.iter().position(|other| *other == substance).unwrap_or(0);
    if name.is_empty() { format!("#{}", place()) } else { name.to_owned() }
}

/// What a number of a recipe is known by when systems are compared: a liquid's by the liquid and not by its
/// place.
#[must_use]
pub fn number_key(draft: &Draft, field: Field) -> String {
    match field {
        Field::Liquid(id, part) => {
            let liquid = draft.liquid(id).map(|liquid| liquid_key(&liquid.name, liquid.substance));
            format!("{}: {}", part.key(), liquid.unwrap_or_default())
        }
        plain => plain.key(),
    }
}

/// The number of that key in a recipe, among those that it uses.
#[must_use]
pub fn number_of(draft: &Draft, case: &Case, key: &str) -> Option<Field> {
    crate::domain::compare::variable::used(&case.input).find(|field| number_key(draft, *field) == key)
}

/// The key of the box that holds a liquid's price.
#[must_use]
pub fn price_key(liquid: &LiquidDraft) -> String {
    format!("price.{}", liquid_key(&liquid.name, liquid.substance))
}

/// The price of a liquid that has none of its own: as typed for the comparison, else that of the same
/// liquid in the open recipe; blank for none.
#[must_use]
pub fn price_of(typed: &CompareDraft, open: &Draft, liquid: &LiquidDraft) -> Entry {
    let key = liquid_key(&liquid.name, liquid.substance);
    let same = |other: &&LiquidDraft| liquid_key(&other.name, other.substance) == key && !other.price.is_blank();
    let own = || open.liquids.iter().find(same).map(|other| Entry { preset: true, ..other.price.clone() });
    typed.entry(&price_key(liquid)).cloned().or_else(own).unwrap_or_else(|| Entry::empty(Unit::PerTonne))
}

/// Fills in the prices that a system leaves blank, so far as they can be read: one that cannot is told at
/// its box, and does not take the system's other figures with it.
pub fn fill_prices(typed: &CompareDraft, open: &Draft, system: &mut Draft) {
    for at in 0..system.liquids.len() {
        let Some(liquid) = system.liquids.get(at).filter(|liquid| liquid.price.is_blank()) else { continue };
        let price = price_of(typed, open, liquid);
        let limit = limit::liquid(liquid, LiquidField::Price, false);
        if matches!(read_entry(&price, Kind::Price, &limit), Ok(Some(_)))
            && let Some(liquid) = system.liquids.get_mut(at)
        {
            liquid.price = price;
        }
    }
}
