//! The true blending loss of a batch, and the mass to mat_mass, from the furnish recovered and its measured moisture.

use crate::domain::recipe::check::read_entry;
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::recovery_draft::{RecoveryDraft, RecoveryField};
use crate::domain::trial::weigh_sheet::sheet::WeighSheet;
use crate::domain::trial::weigh_sheet::weighing::Weighing;
use crate::quantity::{Amount, Kind};
use uom::si::f64::{Mass, Ratio};
use uom::si::ratio::ratio;

/// More solids recovered than weighed in by this share is no rounding. Common practice, no source.
const SURPLUS: f64 = 0.005;

/// What came out of the blender.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Recovery {
    /// Solids weighed into the blender, fibre and liquids.
    pub put_in: Mass,
    /// Solids recovered.
    pub recovered: Mass,
    /// Share of the solids that stayed in the blender or was spilled, 1 − recovered/put in.
    pub loss: Ratio,
    /// Furnish to lay for one mat at its measured moisture: oven-dry mat mass · (1 + ω).
    pub mat_mass: Mass,
    /// Mats that the furnish recovered makes.
    pub mats: Ratio,
}

/// What the furnish recovered comes to; `None` while something is not entered. What was not weighed counts as planned.
pub fn recovery(
    sheet: &WeighSheet,
    weighing: &Weighing,
    draft: &RecoveryDraft,
    findings: &mut Vec<TrialFinding>,
) -> Option<Recovery> {
    let mut number = |field: RecoveryField| match read_entry(draft.entry(field), field.kind(), &field.limit()) {
        Ok(number) => number,
        Err(what) => {
            findings.push(TrialFinding::stop(TrialPlace::Recovery(field), TrialProblem::Entry(what)));
            None
        }
    };
    let (mass, moisture) = (number(RecoveryField::Mass), number(RecoveryField::Moisture));
    let (mass, moisture) = (si!(Mass, mass?), si!(Ratio, moisture?));
    let one = Ratio::new::<ratio>(1.0);
    let input = &sheet.plan.case.input;
    let weighed = |id: LineId| weighing.mass_used(id);
    let liquids = input.liquids.as_slice().iter();
    let resin: Mass = liquids.map(|liquid| weighed(LineId::Liquid(liquid.id)) * liquid.solids.ratio()).sum();
    let put_in = weighed(LineId::Fibre) / input.fibre_moisture.wet_per_dry() + resin;
    let recovered = mass / (one + moisture);
    let loss = one - recovered / put_in;
    if loss.value < -SURPLUS {
        let amount = |mass: Mass| Amount::from_base(Kind::BenchMass, mass.value);
        let what = TrialProblem::RecoveredTooMuch { put_in: amount(put_in), recovered: amount(recovered) };
        findings.push(TrialFinding::unusual(TrialPlace::Recovery(RecoveryField::Mass), what));
    }
    let mat_mass = sheet.mat.oven_dry * (one + moisture);
    let recovery = Recovery { put_in, recovered, loss, mat_mass, mats: recovered / sheet.mat.oven_dry };
    (loss.is_finite() && recovery.mats.is_finite() && mat_mass.is_finite()).then_some(recovery)
}
