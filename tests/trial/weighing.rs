//! What was really weighed, and what remains to be added.

use crate::sample::{bare_sheet, recipe, sheet, type_in};
use crate::sheet::any_made_out;
use approx::assert_relative_eq;
use haulm::domain::trial::weigh_sheet::weighing::{Answer, BatchDraft, Weighing, weigh};
use haulm::domain::trial::{LineId, TrialPlace, TrialProblem, WeighField, WeighSheet};
use haulm::domain::{Grade, LiquidId};
use proptest::prelude::*;

const RESIN: LineId = LineId::Liquid(LiquidId(1));

fn example() -> WeighSheet {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::FibreStep, "1");
    type_in(&mut draft, WeighField::LiquidStep, "0.01");
    sheet(&recipe(), &draft)
}

fn weighed(sheet: &WeighSheet, lines: &[(LineId, &str)]) -> Weighing {
    let mut batch = BatchDraft::default();
    for (id, text) in lines {
        batch.entry_mut(*id).unwrap().text = (*text).to_owned();
    }
    weigh(sheet, &batch)
}

fn to_add(weighing: &Weighing, id: LineId) -> f64 {
    weighing.lines.iter().find(|line| line.id == id).unwrap().to_add.value * 1_000.0
}

fn planned(sheet: &WeighSheet, id: LineId) -> f64 {
    sheet.line(id).unwrap().mass.value * 1_000.0
}

#[test]
fn nothing_weighed_is_the_plan() {
    let sheet = example();
    let weighing = weighed(&sheet, &[]);
    for (line, planned) in weighing.lines.iter().zip(&sheet.lines) {
        assert_eq!((line.to_add, line.planned), (planned.rounded, planned.rounded));
    }
    assert!(weighing.actual.is_none() && weighing.findings.is_empty());
}

#[test]
fn less_fibre_makes_a_smaller_batch() {
    let sheet = example();
    let fibre = planned(&sheet, LineId::Fibre);
    let weighing = weighed(&sheet, &[(LineId::Fibre, &format!("{:.1}", 0.9 * fibre))]);
    let scale = (0.9 * fibre * 10.0).round() / 10.0 / fibre;
    assert_relative_eq!(weighing.scale.value, scale, max_relative = 1e-12);
    assert_relative_eq!(to_add(&weighing, RESIN), scale * planned(&sheet, RESIN), epsilon = 0.005 + 1e-9);
    assert!(weighing.findings.is_empty());
}

#[test]
fn too_much_of_a_liquid_asks_for_more_of_all() {
    let sheet = example();
    let (fibre, resin) = (planned(&sheet, LineId::Fibre), planned(&sheet, RESIN));
    let weighing = weighed(&sheet, &[(LineId::Fibre, &format!("{fibre}")), (RESIN, &format!("{}", 1.1 * resin))]);
    assert_relative_eq!(weighing.scale.value, 1.1, max_relative = 1e-12);
    assert_relative_eq!(to_add(&weighing, LineId::Fibre), 0.1 * fibre, epsilon = 0.5 + 1e-9);
    assert!(to_add(&weighing, RESIN).abs() < 1e-9);
    let said = weighing.findings.iter().any(|finding| {
        finding.place == TrialPlace::Line(RESIN) && matches!(finding.what, TrialProblem::WeighedOver { .. })
    });
    assert!(said);
}

#[test]
fn too_little_of_a_liquid_is_topped_up() {
    let sheet = example();
    let (fibre, resin) = (planned(&sheet, LineId::Fibre), planned(&sheet, RESIN));
    let weighing = weighed(&sheet, &[(LineId::Fibre, &format!("{fibre}")), (RESIN, &format!("{}", 0.8 * resin))]);
    assert_relative_eq!(to_add(&weighing, RESIN), 0.2 * resin, epsilon = 0.005 + 1e-9);
    assert!(weighing.findings.is_empty());
}

#[test]
fn a_slip_of_the_key_is_said_at_the_line() {
    let weighing = weighed(&example(), &[(LineId::Fibre, "12..5"), (RESIN, "0")]);
    assert_eq!(weighing.findings.len(), 1);
    assert_eq!(
        (weighing.findings[0].grade, weighing.findings[0].place),
        (Grade::Stop, TrialPlace::Line(LineId::Fibre))
    );
    assert!(weighing.lines.iter().all(|line| line.weighed.is_none()));
}

#[test]
fn a_batch_that_outgrows_the_blender() {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::Capacity, "3.5 kg");
    let sheet = sheet(&recipe(), &draft);
    assert_eq!(sheet.batches, 1);
    let fibre = 1.5 * planned(&sheet, LineId::Fibre);
    let weighing = weighed(&sheet, &[(LineId::Fibre, &format!("{fibre}"))]);
    assert!(weighing.findings.iter().any(|finding| matches!(finding.what, TrialProblem::OverCapacity { .. })));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    /// Add what is asked for, whatever was weighed before, and the ratio holds.
    #[test]
    fn adding_what_is_asked_for_keeps_the_ratio(
        sheet in any_made_out(),
        parts in prop::collection::vec(prop::option::of(0.3..1.6_f64), 15),
    ) {
        // What one balance takes.
        prop_assume!(sheet.batch.value < 300.0);
        let mut sheet = sheet;
        sheet.plan.fibre_balance.step = None;
        sheet.plan.liquid_balance.step = None;
        let mut batch = BatchDraft::default();
        for (line, part) in sheet.lines.iter().zip(&parts) {
            if let Some(part) = part {
                batch.entry_mut(line.id).unwrap().text = format!("{:e}", part * line.mass.value * 1_000.0);
                // Some look like another line's mass; all are meant here.
                batch.set_answer(line.id, Answer::Correct);
            }
        }
        let first = weigh(&sheet, &batch);
        for line in &first.lines {
            let all = (line.weighed.unwrap_or_default() + line.to_add).value * 1_000.0;
            batch.entry_mut(line.id).unwrap().text = format!("{all:e}");
            batch.set_answer(line.id, Answer::Correct);
        }
        let then = weigh(&sheet, &batch);
        let actual = then.actual.unwrap();
        for dose in &actual.doses {
            assert_relative_eq!(dose.actual.value, dose.target.value, max_relative = 1e-9);
        }
        for line in &then.lines {
            prop_assert!(line.to_add.value <= 1e-9 * line.target.value);
        }
    }
}
