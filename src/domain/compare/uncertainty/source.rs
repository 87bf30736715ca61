//! Sources of uncertainty as they stand on the page: those to start from, and what was typed for them.

use crate::domain::balance::outcome::Case;
use crate::domain::compare::draft::{CompareDraft, number_key, number_of};
use crate::domain::compare::side::System;
use crate::domain::compare::uncertainty::instrument::sources;
use crate::domain::compare::uncertainty::spread::{Form, Size, Spread, width_from, width_in};
use crate::domain::compare::uncertainty::study::Uncertain;
use crate::domain::compare::variable;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::{Draft, Entry};
use crate::domain::recipe::field::Field;
use crate::domain::recipe::limit::Limit;
use crate::quantity::number::read;
use crate::quantity::{Kind, Unit};

/// A source of uncertainty.
#[derive(Debug, Clone, PartialEq)]
pub struct Source {
    /// What it is known by, see [`number_key`].
    pub key: String,
    /// The numbers that it acts on: a system's place, and the field there.
    pub targets: Vec<(usize, Field)>,
    /// The first number's value, in the base unit.
    pub at: f64,
    /// What the number measures.
    pub kind: Kind,
    /// The ± to start from; `None` for a source that was added.
    pub start: Option<Spread>,
}

/// How a ± is stated: what it means, and whether it is a share of the value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stated {
    /// What it means.
    pub form: Form,
    /// Whether it is a share of the value.
    pub relative: bool,
}

impl Stated {
    /// All ways, in the order in which they are offered.
    pub const ALL: [Stated; 6] = {
        const fn stated(form: Form, relative: bool) -> Stated {
            Stated { form, relative }
        }
        [
            stated(Form::HalfWidth, false),
            stated(Form::HalfWidth, true),
            stated(Form::Interval95, false),
            stated(Form::Interval95, true),
            stated(Form::Standard, false),
            stated(Form::Standard, true),
        ]
    };

    /// Its stable key.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match (self.form, self.relative) {
            (Form::HalfWidth, false) => "limits",
            (Form::HalfWidth, true) => "limits_share",
            (Form::Interval95, false) => "interval",
            (Form::Interval95, true) => "interval_share",
            (Form::Standard, false) => "standard",
            (Form::Standard, true) => "standard_share",
        }
    }
}

/// The key of the box that holds a source's ±.
#[must_use]
pub fn size_key(key: &str) -> String {
    format!("plus_minus.{key}")
}

/// The key of the box that holds the degrees of freedom of a source's ±.
#[must_use]
pub fn freedom_key(key: &str) -> String {
    format!("freedom.{key}")
}

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

/// The key of the choice how a source's ± is stated.
#[must_use]
pub fn form_key(key: &str) -> String {
    format!("form.{key}")
}

/// The sources of systems that all have a result: those to start from, then those that were added.
#[must_use]
pub fn all(draft: &CompareDraft, systems: &[System]) -> Vec<Source> {
    let pairs: Vec<(&Draft, &Case)> =
        systems.iter().filter_map(|system| system.case().map(|case| (&system.draft, case))).collect();
    let mut found: Vec<Source> = Vec::new();
    for Uncertain { targets, spread } in sources(&pairs) {
        let Some((key, at, kind)) = targets.first().and_then(|target| named(&pairs, *target)) else { continue };
        found.push(Source { key, targets, at, kind, start: Some(spread) });
    }
    for typed in &draft.typed {
        let Some(key) = typed.what.strip_prefix("plus_minus.") else { continue };
        if found.iter().any(|source| source.key == key) {
            continue;
        }
        let target = |(at, (draft, case)): (usize, &(&Draft, &Case))| Some((at, number_of(draft, case, key)?));
        let targets: Vec<_> = pairs.iter().enumerate().filter_map(target).collect();
        if let Some((key, at, kind)) = targets.first().and_then(|target| named(&pairs, *target)) {
            found.push(Source { key, targets, at, kind, start: None });
        }
    }
    found
}

/// Key, value and kind of a number.
fn named(systems: &[(&Draft, &Case)], (system, field): (usize, Field)) -> Option<(String, f64, Kind)> {
    let (draft, case) = systems.get(system)?;
    Some((number_key(draft, field), variable::get(&case.input, field)?, draft.kind(field)))
}

impl Source {
    /// How its ± is stated: as chosen, else as it starts.
    #[must_use]
    pub fn stated(&self, draft: &CompareDraft) -> Stated {
        let key = form_key(&self.key);
        let chosen = Stated::ALL.into_iter().find(|stated| stated.key() == draft.choice(&key));
        chosen.unwrap_or(match self.start {
            Some(spread) => Stated { form: spread.form, relative: matches!(spread.size, Size::Relative(_)) },
            None => Stated { form: Form::HalfWidth, relative: false },
        })
    }

    /// The ± as the box holds it, in `unit` or as a percentage of the value; `None` for blank or for what is
    /// no number above zero.
    #[must_use]
    pub fn width(&self, draft: &CompareDraft, unit: Unit) -> Option<f64> {
        match self.spread(draft)?.size {
            Size::Relative(share) => Some(share * 100.0),
            Size::Absolute(width) => Some(width_in(unit, width, self.at).abs()),
        }
    }

    /// Its uncertainty: as typed, else as it starts. `None` where the box is blank or holds no number
    /// above zero: the number is then taken to be exact.
    #[must_use]
    pub fn spread(&self, draft: &CompareDraft) -> Option<Spread> {
        let Some(entry) = draft.entry(&size_key(&self.key)) else {
            return self.start.map(|start| Spread { freedom: self.freedom(draft), ..start });
        };
        let Stated { form, relative } = self.stated(draft);
        let value = read(&entry.text, Kind::Ratio, Unit::One).ok()?.value;
        if value <= 0.0 {
            return None;
        }
        let size = if relative {
            Size::Relative(value / 100.0)
        } else {
            Size::Absolute(width_from(entry.unit, value, self.at).abs())
        };
        Spread::new(form, size, self.freedom(draft))
    }

    /// The degrees of freedom typed; `None` where the box is blank or holds none that are allowed: the ± is
    /// then taken to be exactly known.
    #[must_use]
    pub fn freedom(&self, draft: &CompareDraft) -> Option<f64> {
        read_entry(draft.entry(&freedom_key(&self.key))?, Kind::Ratio, &FREEDOM).ok().flatten()
    }

    /// States the ± in another way, as wide as it is now.
    pub fn state(&self, draft: &mut CompareDraft, to: Stated, unit: Unit, text: impl Fn(f64) -> String) {
        if let Some(spread) = self.spread(draft) {
            let width = spread.stated(self.at);
            let number = if to.relative { width / self.at.abs() * 100.0 } else { width_in(unit, width, self.at).abs() };
            if number.is_finite() {
                draft.put(&size_key(&self.key), Entry::typed(text(number), unit));
            }
        }
        draft.choose(&form_key(&self.key), to.key().to_owned());
    }

    /// For a study; `None` for a number that is taken to be exact.
    #[must_use]
    pub fn uncertain(&self, draft: &CompareDraft) -> Option<Uncertain> {
        self.spread(draft).map(|spread| Uncertain { targets: self.targets.clone(), spread })
    }
}
