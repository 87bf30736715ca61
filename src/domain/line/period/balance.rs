//! The mass balance of a period, a shift or a week: tank dips, deliveries and totalisers against the boards that were made.
//!
//! Of each liquid the tanks say start + delivered − end, its totaliser says the same again. With fibre F = G/(1+ω_f), solids
//! contents s and the sifter's reject r the raw boards hold (F + Σ s·L)·(1−r) oven-dry. What both sides differ by is
//! unaccounted for; data reconciliation says whether that is more than the readings' uncertainties, and which of them errs.

use super::draft::PeriodLiquidId;
use crate::statistics::distribution::two_sided_normal;
use crate::statistics::reconciliation::{
    Diagnosis, Dual64, Equations, GrossError, Problem, Quantity, ReconciliationError, SuspectReading, TestConclusion,
};

/// A value with its standard uncertainty, in SI base units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Uncertain {
    /// The value.
    pub value: f64,
    /// Its standard uncertainty, above zero.
    pub uncertainty: f64,
}

impl Uncertain {
    /// Half of the 95 % interval: the two-sided normal quantile times the standard uncertainty.
    #[must_use]
    pub fn half_interval(&self) -> f64 {
        two_sided_normal(0.95).unwrap_or(f64::INFINITY) * self.uncertainty
    }

    /// Value and half interval with no more digits than the interval has meaning: its first three.
    #[must_use]
    pub fn rounded(&self) -> (f64, f64) {
        let half = self.half_interval();
        let step = 10.0_f64.powf(half.log10().floor() - 2.0);
        let to_step = |value: f64| (value / step).round() * step;
        // What rounds to nothing has no sign.
        if step.is_finite() && step > 0.0 { (to_step(self.value) + 0.0, to_step(half)) } else { (self.value, half) }
    }

    /// Whether a difference that should be zero is farther from it than chance allows at 95 %.
    #[must_use]
    pub fn is_beyond_chance(&self) -> bool {
        self.value.abs() > self.half_interval()
    }
}

/// One liquid over the period; masses in kg as delivered.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PeriodLiquid {
    /// The liquid.
    pub id: PeriodLiquidId,
    /// In its tanks at the start, by dip.
    pub start: Uncertain,
    /// Delivered in between, by the weighbridge.
    pub delivered: Uncertain,
    /// In its tanks at the end, by dip.
    pub end: Uncertain,
    /// What its flow meter totalled.
    pub metered: Uncertain,
    /// Its solids content.
    pub solids: Uncertain,
}

/// What was read over a period.
#[derive(Debug, Clone, PartialEq)]
pub struct PeriodReadings {
    /// What the belt scale totalled, wet, in kg.
    pub belt: Uncertain,
    /// Mean fibre moisture, dry basis.
    pub fibre_moisture: Uncertain,
    /// The liquids.
    pub liquids: Vec<PeriodLiquid>,
    /// Raw boards counted times their mean mass, in kg.
    pub boards: Uncertain,
    /// Their mean moisture, dry basis.
    pub board_moisture: Uncertain,
    /// Part of the furnish that the sifter rejects, from the recipe.
    pub reject: f64,
}

/// A reading of a period.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PeriodQuantity {
    /// Totaliser of the belt scale.
    Belt,
    /// Fibre moisture.
    FibreMoisture,
    /// Mass of the raw boards.
    Boards,
    /// Their moisture.
    BoardMoisture,
    /// Dip at the start.
    Start(PeriodLiquidId),
    /// Deliveries.
    Delivered(PeriodLiquidId),
    /// Dip at the end.
    End(PeriodLiquidId),
    /// Totaliser of the flow meter.
    Metered(PeriodLiquidId),
    /// Solids content.
    Solids(PeriodLiquidId),
}

impl PeriodQuantity {
    /// Whether it is the total of a meter or of the belt scale, which drifts; a dip or a weighing is right or is a slip.
    #[must_use]
    pub const fn is_meter(self) -> bool {
        matches!(self, Self::Belt | Self::Metered(_))
    }

    /// Whether its error is meant in points, and not relative.
    #[must_use]
    pub const fn in_points(self) -> bool {
        matches!(self, Self::FibreMoisture | Self::BoardMoisture | Self::Solids(_))
    }
}

/// A reading that disagrees with the others.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PeriodDrift {
    /// What it reads.
    pub quantity: PeriodQuantity,
    /// As read.
    pub read: f64,
    /// What everything else gives.
    pub estimate: f64,
}

impl PeriodDrift {
    /// How far the reading is off: relative, or in points as a fraction. A dip has no size to be relative to.
    #[must_use]
    pub fn error(&self) -> f64 {
        if self.quantity.in_points() { self.read - self.estimate } else { self.read / self.estimate - 1.0 }
    }
}

/// What was found over a period.
#[derive(Debug, Clone, PartialEq)]
pub struct PeriodBalance {
    /// Of each liquid: what left the tanks less what its meter totalled, in kg as delivered.
    pub liquids: Vec<(PeriodLiquidId, Uncertain)>,
    /// Fibre that went in less what the boards hold, oven-dry, in kg.
    pub fibre: Uncertain,
    /// Readings that disagree with the others beyond chance: those of one entry cannot be separated. A meter comes first, since
    /// meters drift; then the likeliest.
    pub drifting: Vec<Vec<PeriodDrift>>,
    /// Whether the readings agree within their uncertainties, or once those are left out.
    pub explained: bool,
}

impl PeriodReadings {
    /// The balance of the period.
    ///
    /// # Errors
    /// As for [`Problem::reconcile`].
    pub fn balance(&self) -> Result<PeriodBalance, ReconciliationError> {
        let (quantities, readings) = self.listed();
        let measured =
            |reading: &Uncertain| Quantity::Measured { value: reading.value, uncertainty: reading.uncertainty };
        let problem = Problem::new(readings.iter().map(measured).collect());
        let reject = self.reject;
        let count = 1 + self.liquids.len();
        let constraints = Equations::new(count, move |x: &[Dual64], residuals: &mut [Dual64]| {
            let Some((&[belt, fibre_wet, boards, board_wet], liquids)) = x.split_first_chunk() else { return };
            let mut solids = belt / (fibre_wet + 1.0);
            for (at, liquid) in liquids.as_chunks::<5>().0.iter().enumerate() {
                let [start, delivered, end, metered, content] = *liquid;
                solids += metered * content;
                residuals[1 + at] = start + delivered - end - metered;
            }
            residuals[0] = solids * (1.0 - reject) - boards / (board_wet + 1.0);
        });
        let Diagnosis { all, verdict } = problem.diagnose(&constraints, &[])?;
        let (drifting, explained) = match verdict {
            TestConclusion::NothingChecked | TestConclusion::Consistent => (Vec::new(), true),
            TestConclusion::Unexplained { .. } => (Vec::new(), false),
            TestConclusion::Suspects { errors, .. } => {
                let drift = |suspect: &SuspectReading| {
                    let quantity = *quantities.get(suspect.quantity)?;
                    let read = all.quantities.get(suspect.quantity)?.reading?.value;
                    Some(PeriodDrift { quantity, read, estimate: read - suspect.error })
                };
                let named = |error: &GrossError| {
                    let mut named: Vec<PeriodDrift> =
                        error.suspects.iter().chain(&error.rivals).filter_map(drift).collect();
                    named.sort_by_key(|drift| !drift.quantity.is_meter());
                    named
                };
                (errors.iter().map(named).collect(), true)
            }
        };
        Ok(PeriodBalance { liquids: self.unaccounted(), fibre: self.unaccounted_fibre(), drifting, explained })
    }

    fn listed(&self) -> (Vec<PeriodQuantity>, Vec<Uncertain>) {
        let plain = [
            (PeriodQuantity::Belt, self.belt),
            (PeriodQuantity::FibreMoisture, self.fibre_moisture),
            (PeriodQuantity::Boards, self.boards),
            (PeriodQuantity::BoardMoisture, self.board_moisture),
        ];
        let liquids = self.liquids.iter().flat_map(|liquid| {
            [
                (PeriodQuantity::Start(liquid.id), liquid.start),
                (PeriodQuantity::Delivered(liquid.id), liquid.delivered),
                (PeriodQuantity::End(liquid.id), liquid.end),
                (PeriodQuantity::Metered(liquid.id), liquid.metered),
                (PeriodQuantity::Solids(liquid.id), liquid.solids),
            ]
        });
        plain.into_iter().chain(liquids).unzip()
    }

    fn unaccounted(&self) -> Vec<(PeriodLiquidId, Uncertain)> {
        let one = |liquid: &PeriodLiquid| {
            let value = liquid.start.value + liquid.delivered.value - liquid.end.value - liquid.metered.value;
            let parts = [liquid.start, liquid.delivered, liquid.end, liquid.metered];
            (liquid.id, Uncertain { value, uncertainty: combined(parts.map(|part| part.uncertainty)) })
        };
        self.liquids.iter().map(one).collect()
    }

    /// F − (B/(1+ω_b)/(1−r) − Σ s·L), with first-order uncertainty.
    fn unaccounted_fibre(&self) -> Uncertain {
        let (wet, board_wet) = (1.0 + self.fibre_moisture.value, 1.0 + self.board_moisture.value);
        let kept = 1.0 - self.reject;
        let fibre = self.belt.value / wet;
        let boards = self.boards.value / board_wet / kept;
        let solids: f64 = self.liquids.iter().map(|liquid| liquid.solids.value * liquid.metered.value).sum();
        let mut parts = vec![
            self.belt.uncertainty / wet,
            fibre / wet * self.fibre_moisture.uncertainty,
            self.boards.uncertainty / board_wet / kept,
            boards / board_wet * self.board_moisture.uncertainty,
        ];
        for liquid in &self.liquids {
            parts.push(liquid.solids.value * liquid.metered.uncertainty);
            parts.push(liquid.metered.value * liquid.solids.uncertainty);
        }
        Uncertain { value: fibre + solids - boards, uncertainty: combined(parts) }
    }
}

fn combined(parts: impl IntoIterator<Item = f64>) -> f64 {
    parts.into_iter().map(|part| part * part).sum::<f64>().sqrt()
}
