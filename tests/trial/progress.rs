//! How far each line of a batch is: what is asked, what is over, which dose was given; and the laboratory that stays.

use crate::sample::{bare_sheet, recipe, sheet, type_in};
use approx::assert_relative_eq;
use haulm::domain::trial::weigh_sheet::draft::{OverageOn, ThicknessWay};
use haulm::domain::trial::weigh_sheet::example::example_sheet;
use haulm::domain::trial::weigh_sheet::progress::{LineProgress, LineStatus, next_line, progress};
use haulm::domain::trial::weigh_sheet::slip::Slip;
use haulm::domain::trial::weigh_sheet::weighing::{Answer, BatchDraft, Weighing, weigh};
use haulm::domain::trial::{LineId, SheetDraft, WeighField, WeighSheet};
use haulm::domain::{Entry, LiquidId};
use haulm::quantity::Unit;

const RESIN: LineId = LineId::Liquid(LiquidId(1));
const HARDENER: LineId = LineId::Liquid(LiquidId(2));

fn example() -> WeighSheet {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::FibreStep, "1");
    type_in(&mut draft, WeighField::LiquidStep, "0.01");
    sheet(&recipe(), &draft)
}

fn planned(sheet: &WeighSheet, id: LineId) -> f64 {
    sheet.line(id).unwrap().rounded.value * 1_000.0
}

fn batch(lines: &[(LineId, f64)]) -> BatchDraft {
    let mut batch = BatchDraft::default();
    for (id, grams) in lines {
        batch.enter(*id, Entry::typed(format!("{grams:.2}"), Unit::Gram));
    }
    batch
}

fn states(sheet: &WeighSheet, batch: &BatchDraft) -> (Weighing, Vec<LineProgress>) {
    let weighing = weigh(sheet, batch);
    let states = progress(sheet, &weighing, batch);
    (weighing, states)
}

fn state(states: &[LineProgress], id: LineId) -> LineProgress {
    *states.iter().find(|state| state.line.id == id).unwrap()
}

#[test]
fn lines_are_weighed_in_their_order() {
    let sheet = example();
    let (_, before) = states(&sheet, &BatchDraft::default());
    assert!(before.iter().all(|state| state.status == LineStatus::ToAdd && state.dose.is_none()));
    assert_eq!(next_line(&before), Some(LineId::Fibre));
    let fibre = planned(&sheet, LineId::Fibre);
    let (_, after) = states(&sheet, &batch(&[(LineId::Fibre, fibre)]));
    assert_eq!(state(&after, LineId::Fibre).status, LineStatus::Done);
    assert_eq!(next_line(&after), Some(RESIN));
    let all: Vec<(LineId, f64)> = sheet.lines.iter().map(|line| (line.id, planned(&sheet, line.id))).collect();
    let all = batch(&all);
    let (weighing, done) = states(&sheet, &all);
    assert_eq!((next_line(&done), weighing.actual.is_some()), (None, true));
    let order: Vec<LineId> = sheet.lines.iter().map(|line| line.id).collect();
    assert!(all.is_complete(&order) && !BatchDraft::default().is_complete(&order));
}

/// The dose of the resin by hand: solids 65 % of its mass over the oven-dry fibre, whose moisture is 2 % of that.
#[test]
fn a_dose_is_given_once_fibre_and_liquid_are_weighed() {
    let sheet = example();
    let (fibre, resin) = (planned(&sheet, LineId::Fibre), planned(&sheet, RESIN));
    let (_, only_resin) = states(&sheet, &batch(&[(RESIN, resin)]));
    assert!(state(&only_resin, RESIN).dose.is_none());
    let (_, both) = states(&sheet, &batch(&[(LineId::Fibre, fibre), (RESIN, resin * 1.02)]));
    let given = state(&both, RESIN).dose.unwrap().actual.value;
    let entered: f64 = format!("{:.2}", resin * 1.02).parse().unwrap();
    assert_relative_eq!(given, entered * 0.65 / (fibre / 1.02), max_relative = 1e-9);
}

#[test]
fn fibre_over_its_target_scales_the_rest_or_keeps_the_targets() {
    let sheet = example();
    let fibre = planned(&sheet, LineId::Fibre);
    let mut typed = batch(&[(LineId::Fibre, fibre + 5.0)]);
    let (weighing, over) = states(&sheet, &typed);
    let LineStatus::Over { by, scale, accepted: false } = state(&over, LineId::Fibre).status else {
        panic!("{over:?}")
    };
    assert_relative_eq!(by.value * 1_000.0, 5.0, max_relative = 1e-9);
    assert_eq!(scale, weighing.scale);
    assert!(state(&over, RESIN).line.to_add > state(&over, RESIN).line.planned);
    typed.set_answer(LineId::Fibre, Answer::Accept);
    let (weighing, kept) = states(&sheet, &typed);
    assert!(matches!(state(&kept, LineId::Fibre).status, LineStatus::Over { accepted: true, .. }));
    assert_relative_eq!(weighing.scale.value, 1.0);
    assert_eq!(state(&kept, RESIN).line.to_add, state(&kept, RESIN).line.planned);
    // And back again.
    typed.set_answer(LineId::Fibre, Answer::Correct);
    assert_eq!(states(&sheet, &typed).0.scale, scale);
}

/// Ten times the hardener: asked about, used for nothing, and not part of what a full batch gives.
#[test]
fn a_slip_is_used_for_nothing_before_it_is_answered() {
    let sheet = example();
    let mut typed: Vec<(LineId, f64)> = sheet.lines.iter().map(|line| (line.id, planned(&sheet, line.id))).collect();
    let ten_times = planned(&sheet, HARDENER) * 10.0;
    typed.iter_mut().filter(|(id, _)| *id == HARDENER).for_each(|(_, grams)| *grams = ten_times);
    let mut typed = batch(&typed);
    let (weighing, asked) = states(&sheet, &typed);
    let LineStatus::Asked(Slip::Factor { meant }) = state(&asked, HARDENER).status else { panic!("{asked:?}") };
    assert_relative_eq!(meant.base * 1_000.0, planned(&sheet, HARDENER), max_relative = 1e-2);
    assert!(weighing.is_asked(HARDENER) && weighing.actual.is_none(), "no doses of a batch with an open question");
    assert_eq!(weighing.mass_used(HARDENER), sheet.line(HARDENER).unwrap().rounded);
    assert!(state(&asked, HARDENER).dose.is_none() && state(&asked, RESIN).dose.is_some());
    assert_relative_eq!(weighing.scale.value, 1.0);
    typed.set_answer(HARDENER, Answer::Correct);
    let (weighing, kept) = states(&sheet, &typed);
    assert!(matches!(state(&kept, HARDENER).status, LineStatus::Over { accepted: false, .. }), "{kept:?}");
    assert!(weighing.scale.value > 9.0 && weighing.actual.is_some());
}

#[test]
fn two_swapped_masses_are_exchanged() {
    let sheet = example();
    let (resin, hardener) = (planned(&sheet, RESIN), planned(&sheet, HARDENER));
    let mut typed = batch(&[(RESIN, hardener), (HARDENER, resin)]);
    let (_, asked) = states(&sheet, &typed);
    assert_eq!(state(&asked, RESIN).status, LineStatus::Asked(Slip::Swapped { with: HARDENER }));
    typed.swap(RESIN, HARDENER);
    assert_eq!(typed, {
        let mut right = batch(&[(RESIN, resin), (HARDENER, hardener)]);
        right.lines.sort_by_key(|line| line.line);
        right
    });
}

#[test]
fn the_laboratory_stays_from_one_trial_to_the_next() {
    let mut first =
        SheetDraft { overage_on: OverageOn::Fibre, thickness_way: ThicknessWay::Pressed, ..example_sheet() };
    type_in(&mut first, WeighField::LiquidStep, "0.1");
    type_in(&mut first, WeighField::BoardDensity, "720");
    let lab = first.lab_setup();
    assert_eq!(lab.entry(WeighField::MatLength), SheetDraft::default().entry(WeighField::MatLength));
    type_in(&mut first, WeighField::LiquidStep, "1");
    let next = first.of_next_trial(&lab);
    for (field, text) in [
        (WeighField::LiquidStep, "0.1"),
        (WeighField::Capacity, "1500"),
        (WeighField::SprayVolume, "50"),
        (WeighField::MatLength, "350"),
        (WeighField::Boards, "3"),
        (WeighField::BoardDensity, ""),
    ] {
        assert_eq!(next.entry(field).text, text, "{field:?}");
    }
    assert_eq!((next.overage_on, next.thickness_way), (OverageOn::Fibre, ThicknessWay::Finished));
    for field in WeighField::ALL {
        assert!(!(field.is_of_lab() && field.is_of_mat()), "{field:?}");
        assert!(field.stands_for().is_none() || !field.is_of_lab() || *field == WeighField::DryingLoss, "{field:?}");
    }
}

/// The example makes three boards in three batches of the mill's recipe.
#[test]
fn the_example_can_be_weighed_out() {
    let made = sheet(&haulm::domain::recipe::example::example(), &example_sheet());
    assert_eq!((made.batches, made.plan.boards), (3, 3));
    assert!(made.spray_time.is_some() && made.press_time.is_some());
}
