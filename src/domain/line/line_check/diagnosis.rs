//! The likely reason when something runs off the recipe.
//!
//! Reasoning of the trade, as data: a wrong fibre flow shifts all doses alike, a wrong pump shifts one; a mat
//! that weighs too much with the right doses was laid so. It points, it does not decide.
//!
//! Common practice, no source.

use crate::domain::line::checked::Tolerances;
use crate::domain::line::line_check::deviation::RunFigure;
use crate::domain::line::line_check::running::{Known, Running};
use crate::domain::line::pumps::pump::PumpId;
use crate::domain::line::tanks::feeds::Fed;
use crate::quantity::Moisture;
use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

/// A likely reason.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Culprit {
    /// All doses are off alike, and the mat's moisture says that the fibre is not as moist as was read.
    MoistureReading {
        /// By how much the doses are off together; zero when only the mat's moisture is off.
        shift: Ratio,
        /// The fibre moisture that was read.
        read: Moisture,
        /// The fibre moisture that fits the sample.
        implied: Moisture,
    },
    /// All doses are off alike: belt scale or moisture reading.
    FibreFlow {
        /// By how much, together.
        shift: Ratio,
        /// The fibre moisture that would explain it alone; `None` when no moisture does.
        explained_by: Option<Moisture>,
    },
    /// One flow is off and the others are not, or not alike.
    Flow {
        /// What flows.
        fed: Fed,
        /// The pump, when a single one delivers it.
        pump: Option<PumpId>,
        /// By how much it is off the others.
        by: Ratio,
    },
    /// Doses and moisture are right, the mat weight is not: former or line speed.
    Former {
        /// Relative deviation of the mat weight.
        by: Ratio,
    },
    /// The flows give another mat moisture than the sample has: the way to the former loses more or less than
    /// the recipe says, or the sample dried or was not representative.
    WayToFormer {
        /// Points that the sample is moister than the flows say.
        by: Ratio,
    },
}

/// What there is to judge by.
pub(in crate::domain::line) struct Signs<'a> {
    pub(in crate::domain::line) running: &'a Running,
    pub(in crate::domain::line) tolerances: &'a Tolerances,
}

/// The likely reasons, the likeliest first; empty when all is within its tolerance.
pub(in crate::domain::line) fn culprits(signs: &Signs<'_>) -> Vec<Culprit> {
    let Signs { running, tolerances, .. } = signs;
    let mut found = Vec::new();
    let doses: Vec<(Fed, f64)> = running
        .liquids
        .iter()
        .filter(|liquid| liquid.known == Known::Read)
        .filter_map(|liquid| Some((Fed::Liquid(liquid.id), liquid.deviation?.value)))
        .collect();
    let tolerance = tolerances.dose.value + 1e-9;
    let common = common_shift(&doses, tolerance);
    let shifted = common.abs() > tolerance;
    if shifted {
        found.push(signs.fibre(common));
    }
    found.extend(
        doses.iter().filter(|(_, by)| (by - common).abs() > tolerance).map(|(fed, by)| signs.flow(*fed, *by - common)),
    );
    let off = |figure| running.check(figure).filter(|check| !check.within());
    let misread = signs.misread();
    let doses_right = found.is_empty();
    if let Some(implied) = misread.filter(|_| doses_right) {
        // What water the recipe wants follows from the moisture that was read, so its pump is not judged.
        let none = Ratio::new::<ratio>(0.0);
        found.push(Culprit::MoistureReading { shift: none, read: running.fibre_moisture, implied });
    } else if let Some(check) = off(RunFigure::Water).filter(|_| !shifted) {
        found.push(signs.flow(Fed::Water, check.deviation.value()));
    }
    // What the flows say of the mat, against what the sample says.
    if let Some(sample) = running.sample_moisture.filter(|_| !shifted) {
        let by = sample.dry_basis() - running.mat_moisture.dry_basis();
        if by.value.abs() > tolerances.moisture.value + 1e-9 {
            found.push(Culprit::WayToFormer { by });
        }
    }
    if let Some(check) = off(RunFigure::MatWeight) {
        found.push(Culprit::Former { by: Ratio::new::<ratio>(check.deviation.value()) });
    }
    found
}

/// What all deviations have in common: of three or more their median; of two their mean, when they are
/// alike; of one nothing.
fn common_shift(doses: &[(Fed, f64)], tolerance: f64) -> f64 {
    let mut sorted: Vec<f64> = doses.iter().map(|(_, by)| *by).collect();
    sorted.sort_unstable_by(f64::total_cmp);
    match sorted[..] {
        [] | [_] => 0.0,
        [low, high] => {
            if high - low <= tolerance {
                f64::midpoint(low, high)
            } else {
                0.0
            }
        }
        _ => f64::midpoint(sorted[(sorted.len() - 1) / 2], sorted[sorted.len() / 2]),
    }
}

impl Signs<'_> {
    /// The fibre moisture that fits the sample, when it is not the one that was read.
    fn misread(&self) -> Option<Moisture> {
        let by = |implied: &Moisture| (implied.dry_basis() - self.running.fibre_moisture.dry_basis()).value;
        self.running.implied_fibre_moisture.filter(|implied| by(implied).abs() > self.tolerances.moisture.value + 1e-9)
    }

    /// All doses are off alike: m/F is off by c when F really is F·(1+c), so G/(1+ω′) = F·(1+c).
    fn fibre(&self, shift: f64) -> Culprit {
        let read = self.running.fibre_moisture;
        let explaining = (1.0 + read.dry_basis().value) / (1.0 + shift) - 1.0;
        let explained_by = Moisture::from_dry_basis(explaining);
        let shift = Ratio::new::<ratio>(shift);
        // The sample speaks for the moisture when what it implies is nearer to that than to what was read.
        let speaks = |implied: &Moisture| {
            let away = |from: Moisture| (implied.dry_basis() - from.dry_basis()).value.abs();
            explained_by.is_some_and(|explained| away(explained) < away(read))
        };
        match self.misread().filter(speaks) {
            Some(implied) => Culprit::MoistureReading { shift, read, implied },
            None => Culprit::FibreFlow { shift, explained_by },
        }
    }

    fn flow(&self, fed: Fed, by: f64) -> Culprit {
        let mut own = self.running.pumps.iter().filter(|pump| pump.fed == fed).map(|pump| pump.pump);
        let pump = own.next().filter(|_| own.next().is_none());
        Culprit::Flow { fed, pump, by: Ratio::new::<ratio>(by) }
    }
}
