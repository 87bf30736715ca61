//! What is chosen and entered where systems are compared, raw.
//!
//! Figures and numbers are chosen by their keys (see [`Output::key`](crate::domain::compare::Output::key) and
//! [`number_key`](crate::domain::compare::number_key::number_key)); an empty key stands for nothing chosen yet. A value
//! entered for one figure or number stays its own, whatever is chosen meanwhile.

use crate::domain::compare::economy::field::{EconomyEntries, SystemEconomyEntries};
use crate::domain::compare::emission::EmissionEntries;
use crate::domain::compare::system_choice::SystemChoice;
use crate::domain::compare::uncertainty::monte_carlo::USUAL_DRAWS;
use crate::domain::compare::uncertainty::statement::Statement;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::limit::Limit;
use crate::quantity::{Kind, Unit};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Hours a year to start from: three shifts, with some weeks for repairs. Common practice, no source.
const TYPICAL_HOURS: &str = "7500";

/// Everything that is chosen and entered where systems are compared.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct CompareDraft {
    /// The systems in the order in which they are shown; empty until something was chosen.
    pub systems: Vec<SystemChoice>,
    /// The system that the others are compared with; the first one where it is not among them.
    pub reference: Option<SystemChoice>,
    /// Whether each recipe keeps its own fibre, board and line instead of those of [`conditions`](Self::conditions).
    pub own_conditions: bool,
    /// The recipe whose fibre, board and line the systems are put on; `None` for the open recipe.
    pub conditions: Option<SystemChoice>,
    /// The saved revision that the open recipe was, or came from, when it was last compared.
    pub open_revision: Option<String>,
    /// Hours a year, for the cost per year.
    pub hours: Entry,
    /// Prices of liquids that have none of their own, by the liquid's key.
    pub prices: BTreeMap<String, Entry>,
    /// Energy, freight, changeovers and selling price, for the economy of a change.
    pub economy: EconomyEntries,
    /// The same of each system by itself.
    pub system_economy: BTreeMap<SystemChoice, SystemEconomyEntries>,
    /// The emission sheet.
    pub emission: EmissionEntries,
    /// Solving for an input.
    pub solve: SolveDraft,
    /// The break-even price.
    pub break_even: BreakEvenDraft,
    /// Sensitivity: one input over a range.
    pub sweep: SweepDraft,
    /// Operating map: two inputs at once.
    pub map: MapDraft,
    /// Uncertainty.
    pub uncertainty: UncertaintyDraft,
}

impl Default for CompareDraft {
    fn default() -> Self {
        Self {
            systems: Vec::new(),
            reference: None,
            own_conditions: false,
            conditions: None,
            open_revision: None,
            hours: Entry::preset(TYPICAL_HOURS, Unit::Hour),
            prices: BTreeMap::new(),
            economy: EconomyEntries::default(),
            system_economy: BTreeMap::new(),
            emission: EmissionEntries::default(),
            solve: SolveDraft::default(),
            break_even: BreakEvenDraft::default(),
            sweep: SweepDraft::default(),
            map: MapDraft::default(),
            uncertainty: UncertaintyDraft::default(),
        }
    }
}

/// What the hours a year may be.
#[must_use]
pub const fn hours_limit() -> Limit {
    any_from(Unit::Hour, 1.0, 8784.0)
}

/// What the seed may be: a whole number that every program reads without loss.
#[must_use]
pub const fn seed_limit() -> Limit {
    any_from(Unit::One, 0.0, 9_007_199_254_740_991.0)
}

/// What a target value may be: any number; the answer says whether it can be reached.
#[must_use]
pub const fn target_limit() -> Limit {
    any_from(Unit::One, -1e12, 1e12)
}

const fn any_from(unit: Unit, least: f64, most: f64) -> Limit {
    Limit { unit, least, above_least: false, most, below_most: false, usual: None, optional: false }
}

/// What opening another recipe did to a comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OpenRecipeChange {
    /// The open recipe is the one that was compared.
    Same,
    /// Another recipe is open: the revision that was compared took its place.
    Kept,
}

impl CompareDraft {
    /// Notes which revision the open recipe comes from. Where another recipe was opened since the last comparison, the
    /// revision compared then takes the open recipe's place, so that no comparison changes in silence.
    /// `same_recipe` tells whether two revisions belong to one recipe.
    pub fn follow_open(&mut self, now: Option<&str>, same_recipe: impl Fn(&str, &str) -> bool) -> OpenRecipeChange {
        let before = std::mem::replace(&mut self.open_revision, now.map(str::to_owned));
        if self.systems.is_empty() {
            return OpenRecipeChange::Same;
        }
        match (before, now) {
            (Some(before), Some(now)) if before == now || same_recipe(&before, now) => OpenRecipeChange::Same,
            // A recipe that was never saved, and is saved now, or is still the same one for all that is known.
            (None, _) => OpenRecipeChange::Same,
            (Some(before), _) => {
                let kept = SystemChoice::Revision(before);
                let there = self.systems.contains(&kept);
                for choice in &mut self.systems {
                    if *choice == SystemChoice::OpenRecipe {
                        *choice = kept.clone();
                    }
                }
                if there {
                    let mut seen = false;
                    self.systems.retain(|choice| *choice != kept || !std::mem::replace(&mut seen, true));
                }
                let SolveDraft { system, .. } = &mut self.solve;
                let BreakEvenDraft { system: first, other, .. } = &mut self.break_even;
                for choice in [&mut self.reference, system, first, other, &mut self.map.system] {
                    if *choice == Some(SystemChoice::OpenRecipe) {
                        *choice = Some(kept.clone());
                    }
                }
                if self.conditions.as_ref().is_none_or(|conditions| *conditions == SystemChoice::OpenRecipe) {
                    self.conditions = Some(kept);
                }
                OpenRecipeChange::Kept
            }
        }
    }

    /// The hours a year; `None` where what was entered is none: there is no cost per year then.
    #[must_use]
    pub fn hours(&self) -> Option<u16> {
        let base = read_entry(&self.hours, Kind::ShiftTime, &hours_limit()).ok().flatten()?;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 1 to 8784")]
        let whole = Unit::Hour.from_base(base).round() as u16;
        Some(whole)
    }
}

impl UncertaintyDraft {
    /// The seed; `None` where what was entered is none.
    #[must_use]
    pub fn seed(&self) -> Option<u64> {
        let base = read_entry(&self.seed, Kind::Ratio, &seed_limit()).ok().flatten()?;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "from 0 to 2⁵³")]
        let whole = base as u64;
        Some(whole)
    }
}

/// One input from a target value of one figure.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct SolveDraft {
    /// The system.
    pub system: Option<SystemChoice>,
    /// The input to find, by its number key.
    pub input: String,
    /// The figure, by its key.
    pub output: String,
    /// The target values entered, by the figure's key.
    pub targets: BTreeMap<String, Entry>,
}

/// The price at which two systems cost the same.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct BreakEvenDraft {
    /// The system with the price.
    pub system: Option<SystemChoice>,
    /// The price to find, by its number key.
    pub price: String,
    /// The system that it is to cost as much as.
    pub other: Option<SystemChoice>,
    /// Whether the price moves in the first system alone, though the other one uses the same material.
    pub alone: bool,
}

/// Both ends of a range, where they were entered.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct RangeDraft {
    /// Where it begins.
    pub from: Option<Entry>,
    /// Where it ends.
    pub to: Option<Entry>,
}

/// Ranges entered, by the input's number key.
pub type RangeDrafts = BTreeMap<String, RangeDraft>;

/// One input over a range.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct SweepDraft {
    /// The input, by its number key.
    pub input: String,
    /// The figure, by its key.
    pub output: String,
    /// The ranges entered here; the map has its own.
    pub ranges: RangeDrafts,
}

/// Two inputs of one system at once.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct MapDraft {
    /// The system.
    pub system: Option<SystemChoice>,
    /// The input across, by its number key.
    pub across: String,
    /// The input upward, by its number key.
    pub up: String,
    /// The figure, by its key.
    pub output: String,
    /// The ranges entered here; the sweep has its own.
    pub ranges: RangeDrafts,
}

/// One source of uncertainty, as entered.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct SourceDraft {
    /// The number it acts on, by its key.
    pub key: String,
    /// The ±; `None` while it is as it starts.
    pub size: Option<Entry>,
    /// How it is stated; `None` while it is as it starts.
    pub statement: Option<Statement>,
    /// Degrees of freedom; `None` while nothing was entered.
    pub freedom: Option<Entry>,
}

/// How uncertain the inputs are, and the draws.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct UncertaintyDraft {
    /// The sources that something was entered for, in the order in which that was done.
    pub sources: Vec<SourceDraft>,
    /// The figures whose uncertainty is worked out, by their keys; empty for those to start from.
    pub figures: Vec<String>,
    /// The figure whose shares are shown, by its key.
    pub output: String,
    /// The place of the system or difference whose shares are shown.
    pub of: usize,
    /// How many draws.
    pub draws: usize,
    /// What the draws begin from.
    pub seed: Entry,
}

impl Default for UncertaintyDraft {
    fn default() -> Self {
        Self {
            sources: Vec::new(),
            figures: Vec::new(),
            output: String::new(),
            of: 0,
            draws: USUAL_DRAWS,
            seed: Entry::preset("1", Unit::One),
        }
    }
}

/// The figures whose uncertainty is worked out at first.
const FIRST_FIGURES: [&str; 2] = ["water_dose", "cost"];

impl UncertaintyDraft {
    /// Whether the uncertainty of a figure is worked out.
    #[must_use]
    pub fn is_chosen(&self, key: &str) -> bool {
        if self.figures.is_empty() { FIRST_FIGURES.contains(&key) } else { self.figures.iter().any(|own| own == key) }
    }

    /// Adds a figure or leaves it out. The last one stays.
    pub fn choose(&mut self, key: &str, chosen: bool) {
        if self.figures.is_empty() {
            self.figures = FIRST_FIGURES.map(str::to_owned).to_vec();
        }
        if chosen && !self.is_chosen(key) {
            self.figures.push(key.to_owned());
        } else if !chosen && self.figures.len() > 1 {
            self.figures.retain(|own| own != key);
        }
    }

    /// What was entered for a source; `None` for nothing yet.
    #[must_use]
    pub fn source(&self, key: &str) -> Option<&SourceDraft> {
        self.sources.iter().find(|source| source.key == key)
    }

    /// What is entered for a source, to be changed.
    pub fn source_mut(&mut self, key: &str) -> &mut SourceDraft {
        let at = self.sources.iter().position(|source| source.key == key).unwrap_or_else(|| {
            self.sources.push(SourceDraft { key: key.to_owned(), ..SourceDraft::default() });
            self.sources.len() - 1
        });
        &mut self.sources[at]
    }

    /// Forgets what was entered for a source, so that it is as it starts.
    pub fn forget(&mut self, key: &str) {
        self.sources.retain(|source| source.key != key);
    }
}
