//! What the reconciliation of a line check says: which reading to distrust, and what runs without it.

use super::model::{LineModel, raw_board};
use super::quantity::LineQuantity;
use crate::domain::balance::outcome::Case;
use crate::domain::line::period::Uncertain;
use crate::statistics::reconciliation::{
    Diagnosis, GrossError, Reconciliation, ReconciliationError, Status, SuspectReading, TestConclusion as Found,
};

/// A reading that may be wrong.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoubtfulReading {
    /// What it reads.
    pub quantity: LineQuantity,
    /// As read.
    pub read: f64,
    /// What everything else gives.
    pub estimate: f64,
    /// Reading less that, in standard uncertainties of the reading.
    pub error_in_uncertainties: f64,
}

impl DoubtfulReading {
    /// How far the reading is off: relative, or in points as a fraction.
    #[must_use]
    pub fn error(&self) -> f64 {
        if self.quantity.in_points() { self.read - self.estimate } else { self.read / self.estimate - 1.0 }
    }
}

/// One error among the readings.
#[derive(Debug, Clone, PartialEq)]
pub struct Doubt {
    /// The reading to distrust; several where they cannot be separated.
    pub readings: Vec<DoubtfulReading>,
    /// The extra reading that would separate them.
    pub extra_reading: Option<LineQuantity>,
}

impl Doubt {
    /// Whether several readings may be meant.
    #[must_use]
    pub const fn is_open(&self) -> bool {
        self.readings.len() > 1
    }

    /// Whether a reading may be meant.
    #[must_use]
    pub fn names(&self, quantity: LineQuantity) -> bool {
        self.readings.iter().any(|reading| reading.quantity == quantity)
    }
}

/// What the readings say together.
#[derive(Debug, Clone, PartialEq)]
pub enum LineVerdict {
    /// No balance checks any reading.
    NothingChecked,
    /// The readings agree within their uncertainties.
    Consistent,
    /// They agree once these are left out.
    Distrust(Vec<Doubt>),
    /// They disagree, and no few of them explain it.
    Unexplained,
}

/// How a density deviation comes about: each part as ln(actual/target); their sum is that of the density.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineDensitySplit {
    /// Actual over target, less one.
    pub deviation: f64,
    /// Oven-dry mass per area: former or line speed.
    pub mass: f64,
    /// Thickness: press gap. A thicker board is less dense.
    pub thickness: f64,
    /// Moisture: drying.
    pub moisture: f64,
}

/// A reconciled line check.
#[derive(Debug, Clone, PartialEq)]
pub struct LineReconciliation {
    /// The quantities and their readings.
    pub model: LineModel,
    /// With all readings.
    pub all: Reconciliation,
    /// Without the readings to distrust.
    pub best: Reconciliation,
    /// What the readings say together.
    pub verdict: LineVerdict,
}

impl LineReconciliation {
    /// Reconciles a line check.
    ///
    /// # Errors
    /// As for [`Problem::reconcile`](crate::statistics::reconciliation::Problem::reconcile).
    pub fn of(model: LineModel) -> Result<Self, ReconciliationError> {
        let Diagnosis { all, verdict } = model.diagnose()?;
        let (best, verdict) = match verdict {
            Found::NothingChecked => (all.clone(), LineVerdict::NothingChecked),
            Found::Consistent => (all.clone(), LineVerdict::Consistent),
            Found::Unexplained { .. } => (all.clone(), LineVerdict::Unexplained),
            Found::Suspects { errors, without } => {
                let doubts = errors.iter().map(|error| doubt(&model, &all, error)).collect();
                (*without, LineVerdict::Distrust(doubts))
            }
        };
        Ok(Self { model, all, best, verdict })
    }

    /// The readings to distrust; empty where all agree.
    #[must_use]
    pub fn doubts(&self) -> &[Doubt] {
        match &self.verdict {
            LineVerdict::Distrust(doubts) => doubts,
            _ => &[],
        }
    }

    /// The reconciled value of a quantity, without the readings to distrust.
    #[must_use]
    pub fn value(&self, quantity: LineQuantity) -> Option<f64> {
        self.model.value(&self.best, quantity)
    }

    /// The same with its standard uncertainty.
    #[must_use]
    pub fn uncertain(&self, quantity: LineQuantity) -> Option<Uncertain> {
        let at = self.model.quantities.iter().position(|other| *other == quantity)?;
        let found = self.best.quantities.get(at)?.estimate?;
        Some(Uncertain { value: found.value, uncertainty: found.uncertainty })
    }

    /// Reconciled oven-dry mat weight M/(1+ω_mat), with the uncertainty of both together.
    #[must_use]
    pub fn mat_od(&self) -> Option<Uncertain> {
        let (mass, moisture) = (self.value(LineQuantity::MatMass)?, self.value(LineQuantity::MatMoisture)?);
        let wet = 1.0 + moisture;
        let slope = |quantity: &LineQuantity| match quantity {
            LineQuantity::MatMass => 1.0 / wet,
            LineQuantity::MatMoisture => -mass / (wet * wet),
            _ => 0.0,
        };
        let gradient: Vec<f64> = self.model.quantities.iter().map(slope).collect();
        Some(Uncertain { value: mass / wet, uncertainty: self.best.uncertainty_of(&gradient)? })
    }

    /// The readings that nothing checks.
    pub fn unchecked(&self) -> impl Iterator<Item = LineQuantity> {
        let pairs = self.model.quantities.iter().zip(&self.all.quantities);
        pairs.filter(|(_, found)| found.status == Status::Unchecked).map(|(quantity, _)| *quantity)
    }

    /// Splits the deviation of the raw board's density from the recipe's; `None` where it is not known.
    #[must_use]
    pub fn density_split(&self, case: &Case) -> Option<LineDensitySplit> {
        let ratio = |quantity| Some(self.value(quantity)? / raw_board(case, quantity)?);
        let wet = |moisture: f64| 1.0 + moisture;
        let moisture = LineQuantity::BoardMoisture;
        let moisture = (wet(self.value(moisture)?) / wet(raw_board(case, moisture)?)).ln();
        let split = LineDensitySplit {
            deviation: ratio(LineQuantity::Density)? - 1.0,
            mass: ratio(LineQuantity::BoardMass)?.ln() - moisture,
            thickness: -ratio(LineQuantity::Thickness)?.ln(),
            moisture,
        };
        [split.deviation, split.mass, split.thickness, split.moisture]
            .iter()
            .all(|part| part.is_finite())
            .then_some(split)
    }
}

/// How many times larger an error may be, in uncertainties of its reading, than that of the likeliest reading: for a reading
/// that explains the data nearly as well, and for one that explains them equally well. Our own choice.
const RIVAL: f64 = 2.0;
const EQUAL: f64 = 10.0;

/// What cannot be is no suspect, unless nothing else is left; neither is a reading that would have to err by far more than its
/// instrument does, where another explains as much.
fn doubt(model: &LineModel, all: &Reconciliation, error: &GrossError) -> Doubt {
    let reading = |suspect: &SuspectReading| {
        let quantity = *model.quantities.get(suspect.quantity)?;
        let read = all.quantities.get(suspect.quantity)?.reading?.value;
        Some(DoubtfulReading {
            quantity,
            read,
            estimate: read - suspect.error,
            error_in_uncertainties: suspect.error_in_uncertainties,
        })
    };
    let equal: Vec<DoubtfulReading> = error.suspects.iter().filter_map(reading).collect();
    let least = equal.first().map_or(0.0, |first| first.error_in_uncertainties.abs());
    let rivals = error.rivals.iter().filter_map(reading).map(|reading| (RIVAL, reading));
    let all = equal.into_iter().map(|reading| (EQUAL, reading)).chain(rivals);
    let plausible = all.filter(|(times, reading)| reading.error_in_uncertainties.abs() <= times * least);
    let named: Vec<DoubtfulReading> = plausible.map(|(_, reading)| reading).collect();
    let can_be: Vec<DoubtfulReading> =
        named.iter().copied().filter(|reading| reading.quantity.can_be(reading.estimate)).collect();
    let readings = if can_be.is_empty() { named } else { can_be };
    let extra_reading = error
        .extra_readings
        .first()
        .filter(|_| readings.len() > 1)
        .and_then(|extra| model.quantities.get(extra.quantity).copied());
    Doubt { readings, extra_reading }
}
