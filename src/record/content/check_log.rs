//! The log of checks of the running line: one sealed record a check, never changed.

use crate::domain::LiquidId;
use crate::domain::line::{Check, Deviation, RunFigure, Verdict};
use crate::quantity::Unit;
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::kind::UnitSystem;
use crate::quantity::number::finite;
use crate::record::content::sealed::{Content, Sealed};
use crate::record::id::{CheckId, RevisionId};
use crate::record::store::library::{Library, SaveError, Unread};
use crate::record::store::{Store, StoreError};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// Followed by the id of a check.
const CHECK: &str = "haulm/check/";

/// Checks of the same figures within so many milliseconds are one: nobody reads a whole line twice in a minute.
pub const ONE_PRESS: u64 = 60_000;

/// One figure of a check. Numbers are text, so that the record is the same on every machine.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct LoggedFigure {
    /// Which, by its key.
    pub figure: String,
    /// The liquid's name for a dose, the pump's for a flow.
    #[serde(default)]
    pub of: Option<String>,
    /// The unit of `actual` and `target`.
    pub unit: Unit,
    /// As it ran.
    pub actual: String,
    /// As the recipe had it.
    pub target: String,
    /// How far it was off, in percent or points.
    pub deviation: String,
    /// Whether the deviation is in points, and not relative.
    #[serde(default)]
    pub points: bool,
    /// How far it might be off, likewise.
    pub tolerance: String,
}

impl LoggedFigure {
    /// A check as it is logged, in metric units; `None` of what was not read. `name` names the liquid of a dose and the pump of a
    /// flow.
    #[must_use]
    pub fn from_check(check: &Check, name: impl Fn(RunFigure) -> Option<String>) -> Option<Self> {
        if check.verdict() == Verdict::NotRead {
            return None;
        }
        let unit = check.actual.kind.unit_in(UnitSystem::Metric);
        // Seven digits: far more than a line can tell, and none of a computer's own.
        let number = |value: f64| editable(value, DecimalMark::Point);
        let percent = |fraction: f64| number(Unit::Percent.from_base(fraction));
        Some(Self {
            figure: check.figure.key().to_owned(),
            of: name(check.figure),
            unit,
            actual: number(check.actual.get(unit)),
            target: number(check.target.get(unit)),
            deviation: percent(check.deviation.value()),
            points: matches!(check.deviation, Deviation::Points(_)),
            tolerance: percent(check.tolerance.value),
        })
    }

    /// The deviation as a fraction.
    #[must_use]
    pub fn deviation(&self) -> Option<f64> {
        fraction(&self.deviation)
    }

    /// The tolerance as a fraction.
    #[must_use]
    pub fn tolerance(&self) -> Option<f64> {
        fraction(&self.tolerance)
    }

    /// Whether it was read, and not computed from what was read.
    #[must_use]
    pub fn is_reading(&self) -> bool {
        let computed = [RunFigure::Dose(LiquidId(0)), RunFigure::Water, RunFigure::FurnishMoisture, RunFigure::Density];
        computed.iter().all(|figure| figure.key() != self.figure)
    }

    /// Whether it was within its tolerance.
    #[must_use]
    pub fn within(&self) -> Option<bool> {
        Some(self.deviation()?.abs() <= fraction(&self.tolerance)? + 1e-9)
    }
}

fn fraction(text: &str) -> Option<f64> {
    text.parse().ok().and_then(finite).map(|percent| Unit::Percent.to_base(percent))
}

/// What a check says. Every key is always written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CheckContent {
    /// Milliseconds since 1970-01-01 00:00 UTC.
    pub at: u64,
    /// The operator's initials.
    #[serde(default)]
    pub author: String,
    /// The recipe's name.
    pub recipe: String,
    /// The saved recipe that ran, if it was a saved one.
    #[serde(default)]
    pub revision: Option<RevisionId>,
    /// A remark.
    #[serde(default)]
    pub remark: String,
    /// What was checked.
    pub figures: Vec<LoggedFigure>,
    /// The check that this one strikes out, or the record that struck one out; such a record has no figures of its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub strikes: Option<CheckId>,
}

impl Content for CheckContent {
    const KIND: &'static str = "check";
    const VERSION: u32 = 1;
    const LARGEST: usize = 100_000;
}

/// One check of the running line, sealed.
pub type CheckRecord = Sealed<CheckContent>;

/// The deviations of one figure over the log: when, and how far off. In the order of the records given.
#[must_use]
pub fn series(log: &[CheckRecord], figure: &str, of: Option<&str>) -> Vec<(u64, f64)> {
    let wanted = |logged: &&LoggedFigure| logged.figure == figure && logged.of.as_deref() == of;
    let one = |record: &CheckRecord| {
        let content = record.content();
        let logged = content.figures.iter().find(wanted)?;
        Some((content.at, logged.deviation()?))
    };
    log.iter().filter_map(one).collect()
}

/// The log as the store has it.
#[derive(Debug, Clone, PartialEq)]
pub struct Log {
    /// The checks, the oldest first; those struck out too.
    pub checks: Vec<CheckRecord>,
    /// Those that were struck out: kept and shown, and left out of control limits.
    pub struck: BTreeSet<CheckId>,
    /// Of each of those, the records that strike it out.
    pub strikes: BTreeMap<CheckId, Vec<CheckId>>,
    /// Keys of records that cannot be read, and why. They stay as they are.
    pub unreadable: Vec<(String, Unread)>,
}

impl CheckContent {
    /// The readings that were outside their tolerance.
    pub fn outside(&self) -> impl Iterator<Item = &LoggedFigure> {
        self.figures.iter().filter(|figure| figure.is_reading() && figure.within() == Some(false))
    }
}

impl Log {
    /// The checks that count, the oldest first.
    #[must_use]
    pub fn counting(&self) -> Vec<CheckRecord> {
        self.checks.iter().filter(|check| !self.struck.contains(&CheckId(check.id()))).cloned().collect()
    }
}

impl<S: Store> Library<S> {
    /// Strikes a check out of the log: it stays, marked, and no longer counts. What strikes it out is a record of its own.
    ///
    /// # Errors
    /// When it is not in the store.
    pub fn strike_check(&self, check: &CheckRecord, at: u64, author: String) -> Result<CheckRecord, SaveError> {
        self.strike(CheckId(check.id()), check.content().recipe.clone(), at, author)
    }

    /// Makes a check that was struck out count again: what struck it out is struck out itself.
    ///
    /// # Errors
    /// When it is not in the store, or the store does not list its keys.
    pub fn restore_check(&self, check: &CheckRecord, at: u64, author: &str) -> Result<(), SaveError> {
        let strikes = self.log()?.strikes;
        for strike in strikes.get(&CheckId(check.id())).into_iter().flatten() {
            self.strike(*strike, check.content().recipe.clone(), at, author.to_owned())?;
        }
        Ok(())
    }

    fn strike(&self, strikes: CheckId, recipe: String, at: u64, author: String) -> Result<CheckRecord, SaveError> {
        self.log_check(CheckContent {
            at,
            author,
            recipe,
            revision: None,
            remark: String::new(),
            figures: Vec::new(),
            strikes: Some(strikes),
        })
    }

    /// Puts a check into the log, but for one that was put there a moment ago: a button pressed again makes no second entry.
    /// The same figures of the same recipe within [`ONE_PRESS`] are one check, unless there is another remark now.
    ///
    /// # Errors
    /// When it is not in the store, or the store does not list its keys.
    pub fn log_check_once(&self, content: CheckContent) -> Result<CheckRecord, SaveError> {
        let same = |record: &CheckRecord| {
            let logged = record.content();
            logged.at.abs_diff(content.at) < ONE_PRESS
                && (&logged.recipe, logged.revision, &logged.author)
                    == (&content.recipe, content.revision, &content.author)
                && logged.figures == content.figures
                && (content.remark.is_empty() || content.remark == logged.remark)
        };
        match self.log()?.counting().into_iter().rev().find(same) {
            Some(logged) => Ok(logged),
            None => self.log_check(content),
        }
    }

    /// Puts a check into the log.
    ///
    /// # Errors
    /// When it is not in the store.
    pub fn log_check(&self, content: CheckContent) -> Result<CheckRecord, SaveError> {
        let record = CheckRecord::new(content)?;
        self.put(&format!("{CHECK}{}", record.id()), record.text())?;
        Ok(record)
    }

    /// Reads the whole log.
    ///
    /// # Errors
    /// When the store does not list its keys. A single record that cannot be read is no error.
    pub fn log(&self) -> Result<Log, StoreError> {
        let (mut checks, mut strikes, mut unreadable) = (Vec::new(), Vec::new(), Vec::new());
        for key in self.store().keys()? {
            let Some(hex) = key.strip_prefix(CHECK) else { continue };
            let read = match CheckId::parse(hex) {
                Some(id) => match self.store().read(&key) {
                    Ok(text) => CheckRecord::read(id.0, &text.unwrap_or_default()).map_err(Unread::Refused),
                    Err(error) => Err(Unread::Store(error)),
                },
                None => Err(Unread::BadKey),
            };
            match read {
                Ok(check) => match check.content().strikes {
                    Some(struck) => strikes.push((CheckId(check.id()), struck)),
                    None => checks.push(check),
                },
                Err(why) => unreadable.push((key, why)),
            }
        }
        checks.sort_by(|a: &CheckRecord, b| a.content().at.cmp(&b.content().at).then(a.id().cmp(&b.id())));
        unreadable.sort_by(|a, b| a.0.cmp(&b.0));
        let strikes = in_force(&strikes);
        let is_check = |id: &CheckId| checks.iter().any(|check| check.id() == id.0);
        let struck = strikes.keys().copied().filter(is_check).collect();
        Ok(Log { checks, struck, strikes, unreadable })
    }
}

/// Strikes that are not struck out themselves, by what they strike out. A record's id is a hash of what it says, the id of what
/// it strikes out included: there are no circles.
fn in_force(strikes: &[(CheckId, CheckId)]) -> BTreeMap<CheckId, Vec<CheckId>> {
    fn holds(own: CheckId, strikes: &[(CheckId, CheckId)]) -> bool {
        !strikes.iter().any(|(other, struck)| *struck == own && holds(*other, strikes))
    }
    let mut by_struck: BTreeMap<CheckId, Vec<CheckId>> = BTreeMap::new();
    for (own, struck) in strikes.iter().filter(|(own, _)| holds(*own, strikes)) {
        by_struck.entry(*struck).or_default().push(*own);
    }
    by_struck
}
