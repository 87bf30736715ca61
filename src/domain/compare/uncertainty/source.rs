//! Sources of uncertainty as they stand on the page: those to start from, and what was typed for them.

use crate::domain::balance::outcome::Case;
use crate::domain::compare::draft::UncertaintyDraft;
use crate::domain::compare::number_key::{number_key, number_of};
use crate::domain::compare::side::ComparedSystem;
use crate::domain::compare::uncertainty::input_uncertainty::{Form, InputUncertainty, Size, width_from, width_in};
use crate::domain::compare::uncertainty::instrument::sources;
use crate::domain::compare::uncertainty::statement::Statement;
use crate::domain::compare::uncertainty::study::UncertainInput;
use crate::domain::compare::variable;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::{Draft, Entry};
use crate::domain::recipe::field::Field;
use crate::domain::recipe::limit::Limit;
use crate::quantity::number::read;
use crate::quantity::{Kind, Unit};

/// A source of uncertainty.
#[derive(Debug, Clone, PartialEq)]
pub struct UncertaintySource {
    /// What it is known by, see [`number_key`].
    pub key: String,
    /// The numbers that it acts on: a system's place, and the field there.
    pub targets: Vec<(usize, Field)>,
    /// The first number's value, in the base unit.
    pub at: f64,
    /// What the number measures.
    pub kind: Kind,
    /// The ± to start from; `None` for a source that was added.
    pub start: Option<InputUncertainty>,
}

/// What a ± may be; blank for an input that is taken to be exact.
pub const SIZE: Limit = Limit {
    unit: Unit::One,
    least: 0.0,
    above_least: true,
    most: 1e12,
    below_most: false,
    usual: None,
    optional: true,
};

/// What degrees of freedom may be; blank for a ± that is taken to be exactly known. A part of a degree, such
/// as a certificate's effective degrees, is allowed.
pub const FREEDOM: Limit = Limit {
    unit: Unit::One,
    least: 1.0,
    above_least: false,
    most: 1e6,
    below_most: false,
    usual: None,
    optional: true,
};

/// The sources of systems that all have a result: those to start from, then those that were added.
#[must_use]
pub fn all(draft: &UncertaintyDraft, systems: &[ComparedSystem]) -> Vec<UncertaintySource> {
    let pairs: Vec<(&Draft, &Case)> =
        systems.iter().filter_map(|system| system.case().map(|case| (&system.draft, case))).collect();
    let mut found: Vec<UncertaintySource> = Vec::new();
    for UncertainInput { targets, spread } in sources(&pairs) {
        let Some((key, at, kind)) = targets.first().and_then(|target| named(&pairs, *target)) else { continue };
        found.push(UncertaintySource { key, targets, at, kind, start: Some(spread) });
    }
    for entered in draft.sources.iter().filter(|source| source.size.is_some()) {
        let key = entered.key.as_str();
        if found.iter().any(|source| source.key == key) {
            continue;
        }
        let target = |(at, (draft, case)): (usize, &(&Draft, &Case))| Some((at, number_of(draft, case, key)?));
        let targets: Vec<_> = pairs.iter().enumerate().filter_map(target).collect();
        if let Some((key, at, kind)) = targets.first().and_then(|target| named(&pairs, *target)) {
            found.push(UncertaintySource { key, targets, at, kind, start: None });
        }
    }
    found
}

/// Key, value and kind of a number.
fn named(systems: &[(&Draft, &Case)], (system, field): (usize, Field)) -> Option<(String, f64, Kind)> {
    let (draft, case) = systems.get(system)?;
    Some((number_key(draft, field), variable::get(&case.input, field)?, draft.kind(field)))
}

impl UncertaintySource {
    /// How its ± is stated: as chosen, else as it starts.
    #[must_use]
    pub fn stated(&self, draft: &UncertaintyDraft) -> Statement {
        let chosen = draft.source(&self.key).and_then(|source| source.statement);
        chosen.unwrap_or(match self.start {
            Some(spread) => Statement { form: spread.form, relative: matches!(spread.size, Size::Relative(_)) },
            None => Statement { form: Form::HalfWidth, relative: false },
        })
    }

    /// The ± as the box holds it, in `unit` or as a percentage of the value; `None` for blank or for what is
    /// no number above zero.
    #[must_use]
    pub fn width(&self, draft: &UncertaintyDraft, unit: Unit) -> Option<f64> {
        match self.spread(draft)?.size {
            Size::Relative(share) => Some(share * 100.0),
            Size::Absolute(width) => Some(width_in(unit, width, self.at).abs()),
        }
    }

    /// Its uncertainty: as typed, else as it starts. `None` where the box is blank or holds no number
    /// above zero: the number is then taken to be exact.
    #[must_use]
    pub fn spread(&self, draft: &UncertaintyDraft) -> Option<InputUncertainty> {
        let Some(entry) = draft.source(&self.key).and_then(|source| source.size.as_ref()) else {
            return self.start.map(|start| InputUncertainty { freedom: self.freedom(draft), ..start });
        };
        let Statement { form, relative } = self.stated(draft);
        let value = read(&entry.text, Kind::Ratio, Unit::One).ok()?.value;
        if value <= 0.0 {
            return None;
        }
        let size = if relative {
            Size::Relative(value / 100.0)
        } else {
            Size::Absolute(width_from(entry.unit, value, self.at).abs())
        };
        InputUncertainty::new(form, size, self.freedom(draft))
    }

    /// The degrees of freedom typed; `None` where the box is blank or holds none that are allowed: the ± is
    /// then taken to be exactly known.
    #[must_use]
    pub fn freedom(&self, draft: &UncertaintyDraft) -> Option<f64> {
        read_entry(draft.source(&self.key)?.freedom.as_ref()?, Kind::Ratio, &FREEDOM).ok().flatten()
    }

    /// States the ± in another way, as wide as it is now.
    pub fn state(&self, draft: &mut UncertaintyDraft, to: Statement, unit: Unit, text: impl Fn(f64) -> String) {
        if let Some(spread) = self.spread(draft) {
            let width = spread.stated(self.at);
            let number = if to.relative { width / self.at.abs() * 100.0 } else { width_in(unit, width, self.at).abs() };
            if number.is_finite() {
                draft.source_mut(&self.key).size = Some(Entry::typed(text(number), unit));
            }
        }
        draft.source_mut(&self.key).statement = Some(to);
    }

    /// For a study; `None` for a number that is taken to be exact.
    #[must_use]
    pub fn uncertain(&self, draft: &UncertaintyDraft) -> Option<UncertainInput> {
        self.spread(draft).map(|spread| UncertainInput { targets: self.targets.clone(), spread })
    }
}
