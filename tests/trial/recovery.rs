//! The true blending loss, and the mass to lay, from what came out of the blender.

use crate::sample::{bare_sheet, recipe, sheet};
use approx::assert_relative_eq;
use haulm::domain::Entry;
use haulm::domain::trial::weigh_sheet::recovery::{Recovery, recovery};
use haulm::domain::trial::weigh_sheet::recovery_draft::{RecoveryDraft, RecoveryField};
use haulm::domain::trial::weigh_sheet::weighing::{BatchDraft, weigh};
use haulm::domain::trial::{TrialFinding, TrialPlace, TrialProblem};
use haulm::quantity::Unit;

fn recovered(mass: &str, moisture: &str) -> (Option<Recovery>, Vec<TrialFinding>) {
    let sheet = sheet(&recipe(), &bare_sheet());
    let weighing = weigh(&sheet, &BatchDraft::default());
    let draft =
        RecoveryDraft { mass: Entry::typed(mass, Unit::Gram), moisture: Entry::typed(moisture, Unit::PercentDryBasis) };
    let mut findings = Vec::new();
    (recovery(&sheet, &weighing, &draft, &mut findings), findings)
}

/// By hand: the batch holds the solids of one mat, 2 268/1.07 = 2 119.6 g. 2 200 g at 10 % are 2 000 g oven-dry: 5.6 % lost.
/// A mat of the same oven-dry mass weighs 2 119.6·1.10 = 2 331.6 g at the moisture measured.
#[test]
fn loss_and_mass_to_lay() {
    let (own, findings) = recovered("2200", "10");
    let own = own.unwrap();
    let solids = 700.0 * 0.45 * 0.45 * 16.0 / 1.07;
    assert_relative_eq!(own.put_in.value * 1e3, solids, max_relative = 1e-9);
    assert_relative_eq!(own.loss.value, 1.0 - 2_000.0 / solids, max_relative = 1e-9);
    assert_relative_eq!(own.mat_mass.value * 1e3, solids * 1.1, max_relative = 1e-9);
    assert_relative_eq!(own.mats.value, 2_000.0 / solids, max_relative = 1e-9);
    assert!(findings.is_empty());
}

#[test]
fn nothing_entered_is_nothing_said_and_too_much_is_asked_about() {
    assert_eq!(recovered("", "10"), (None, Vec::new()));
    assert_eq!(recovered("2200", ""), (None, Vec::new()));
    assert!(matches!(
        recovered("2600", "10").1[..],
        [TrialFinding { what: TrialProblem::RecoveredTooMuch { .. }, .. }]
    ));
    let (none, findings) = recovered("2.2.2", "10");
    assert!(none.is_none() && findings[0].place == TrialPlace::Recovery(RecoveryField::Mass));
}

/// The line loses 2 points between blender and former; the bench does not, unless it is entered there.
#[test]
fn the_bench_does_not_inherit_the_lines_loss_of_moisture() {
    let mut line = recipe();
    line.plain.drying_loss.text = "2".to_owned();
    let (with, without) = (sheet(&line, &bare_sheet()), sheet(&recipe(), &bare_sheet()));
    assert!(with.plan.case.input.drying_loss.value.abs() < f64::EPSILON);
    assert_relative_eq!(with.batch.value, without.batch.value, max_relative = 1e-12);
    let mut draft = bare_sheet();
    crate::sample::type_in(&mut draft, haulm::domain::trial::WeighField::DryingLoss, "2");
    assert!(sheet(&recipe(), &draft).batch.value > without.batch.value);
}
