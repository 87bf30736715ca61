//! From one recipe to another.

use super::mill::Mill;
use super::support::{solved, something};
use approx::assert_relative_eq;
use haulm::domain::line::changeover::{Downstream, Recipe, Stop};
use haulm::domain::line::step::{Change, Pipe, StepReason};
use haulm::domain::line::{
    Changeover, Feeds, LineField, LineFindingKind, PumpField, PumpId, Scheduled, ScheduledEvent, SettingUnit, Tie,
    TransportField, changeover, next_steps, schedule,
};
use haulm::domain::recipe::binder_system::{SystemKey, add_liquids};
use haulm::domain::recipe::draft::Entry;
use haulm::domain::{Case, Draft, Field, LiquidField, LiquidId, Role, example, work_out};
use haulm::quantity::Unit;
use proptest::prelude::*;
use std::collections::BTreeMap;

const START: u64 = 1_772_431_200_000;

fn changed(fields: &[(Field, &str)]) -> (Draft, Case) {
    let mut draft = example();
    for (field, text) in fields {
        draft.entry_mut(*field).unwrap().text = (*text).to_owned();
    }
    let case = work_out(&draft).case.unwrap();
    (draft, case)
}

fn plan(mill: &Mill, (draft, case): &(Draft, Case)) -> Changeover {
    let old = Recipe { draft: &mill.draft, case: &mill.case };
    changeover(old, Recipe { draft, case }, &mill.line(), START)
}

#[test]
fn nothing_to_change_is_said() {
    let mill = Mill::new();
    let plan = plan(&mill, &changed(&[]));
    assert!(plan.steps.is_empty() && plan.complete == Some(START) && plan.between.unwrap().time.value == 0.0);
    assert!(matches!(plan.findings[..], [ref f] if f.what == LineFindingKind::NothingChanges));
}

#[test]
fn less_water_goes_first_and_more_goes_last() {
    let mill = Mill::new();
    let dose = Field::Liquid(LiquidId(1), LiquidField::Dose);
    let drier = plan(&mill, &changed(&[(Field::MatMoisture, "9"), (dose, "5"), (Field::FibreMoisture, "4")]));
    let why = |plan: &Changeover| plan.steps.iter().map(|step| step.why).collect::<Vec<_>>();
    assert_eq!(why(&drier), [StepReason::DrierFibreFirst, StepReason::LessWaterFirst, StepReason::Together]);
    let wetter = plan(&mill, &changed(&[(Field::MatMoisture, "12"), (dose, "3"), (Field::FibreMoisture, "5")]));
    assert_eq!(why(&wetter), [StepReason::Together, StepReason::MoreWaterLast, StepReason::MoisterFibreLast]);
    // Ten seconds from one moment to the next.
    assert_eq!(wetter.steps.iter().map(|step| step.at - START).collect::<Vec<_>>(), [0, 10_000, 20_000]);
}

/// From pMDI to UF resin: the one pump stops and is flushed, the other starts and fills, at one moment.
#[test]
fn binders_change_together() {
    let mut mill = Mill::new();
    let mut draft = example();
    draft.liquids.retain(|liquid| liquid.role != Role::Binder);
    add_liquids(&mut draft, &SystemKey::Uf.system().liquids[..1]);
    let case = work_out(&draft).case.unwrap();
    let tie = Tie::to(draft.liquids.last().unwrap());
    let id = mill.book.add_pump(Feeds::Liquid(tie), SettingUnit::Percent);
    mill.put(LineField::Pump(id, PumpField::PipeVolume), "10", Unit::Litre);
    let plan = plan(&mill, &(draft, case));
    let pumps: Vec<_> = plan
        .steps
        .iter()
        .filter_map(|step| match step.change {
            Change::Pump { pump, pipe, .. } => Some((pump, step.why, pipe.map(|(way, _, time)| (way, time)))),
            _ => None,
        })
        .collect();
    assert_eq!(pumps[0], (PumpId(3), StepReason::LessWaterFirst, None));
    assert_eq!(pumps[1], (PumpId(1), StepReason::Together, Some((Pipe::Flush, None))));
    let (pump, why, Some((Pipe::Fills, Some(time)))) = pumps[2] else { panic!("{pumps:?}") };
    assert_eq!((pump, why), (id, StepReason::Together));
    // Ten litres at its flow, and the new furnish is not there before.
    assert!(time.value > 10.0);
    let lasts = (plan.complete.unwrap() - plan.start) as f64 / 1_000.0;
    assert_relative_eq!(lasts, 10.0 + time.value + 90.0, max_relative = 1e-3);
}

/// Worked by hand with the example's times: 150 s to the former, 40 s to the press, the pressing time, 25 s to
/// the saw; two moments 10 s apart, 90 s of mixing.
#[test]
fn arrivals_by_hand() {
    let mill = Mill::new();
    let new = changed(&[(Field::MatMoisture, "9"), (Field::Liquid(LiquidId(1), LiquidField::Dose), "5")]);
    let plan = plan(&mill, &new);
    assert_eq!(plan.findings, vec![]);
    let press = new.1.solved.line.press_time.unwrap().value;
    let expected = [0.0, 150.0, 190.0, 190.0 + press, 215.0 + press];
    assert_eq!(plan.arrivals.iter().map(|arrival| arrival.stop).collect::<Vec<_>>(), Stop::ALL);
    for (arrival, way) in plan.arrivals.iter().zip(expected) {
        let after = |at: u64| (at - START) as f64 / 1_000.0;
        assert!((after(arrival.begins) - way).abs() < 1e-3);
        assert!((after(arrival.complete.unwrap()) - way - 100.0).abs() < 2e-3);
    }
    assert_relative_eq!(plan.between.unwrap().time.value, 100.0, max_relative = 1e-12);
    assert_relative_eq!(
        plan.between.unwrap().length.unwrap().value,
        100.0 * new.1.solved.line.speed.unwrap().value,
        max_relative = 1e-12
    );
    assert_relative_eq!(
        plan.between.unwrap().volume.value,
        plan.between.unwrap().area.value * new.1.input.board.thickness.value,
        max_relative = 1e-12
    );
}

#[test]
fn unknown_times_are_said_and_the_rest_stands() {
    let mut mill = Mill::new();
    mill.put(LineField::Transport(TransportField::FormerToPress), "", Unit::Second);
    let plan = plan(&mill, &changed(&[(Field::MatMoisture, "9")]));
    assert_eq!(plan.arrivals.last().unwrap().stop, Stop::Former);
    assert_eq!(plan.findings.iter().filter(|f| f.what == LineFindingKind::NoTransport).count(), 1);
    let mut mill = Mill::new();
    let mut new = changed(&[(Field::MatMoisture, "9")]);
    *new.0.entry_mut(Field::PressLength).unwrap() = Entry::empty(Unit::Metre);
    new.1 = work_out(&new.0).case.unwrap();
    mill.draft = example();
    let plan = self::plan(&mill, &new);
    assert_eq!(plan.arrivals.last().unwrap().stop, Stop::PressIn);
    assert!(plan.findings.iter().any(|f| f.what == LineFindingKind::NoPressTime));
}

/// The same liquid with other solids has to get through the pipe first.
#[test]
fn other_solids_displace_the_pipe() {
    let mill = Mill::new();
    let plan = plan(&mill, &changed(&[(Field::Liquid(LiquidId(2), LiquidField::Solids), "40")]));
    let pipe = plan.steps.iter().find_map(|step| match step.change {
        Change::Pump { pump: PumpId(2), pipe, .. } => pipe,
        _ => None,
    });
    let (Pipe::Displaces, volume, Some(time)) = pipe.unwrap() else { panic!("{pipe:?}") };
    let flow = plan.steps.iter().find_map(|step| match step.change {
        Change::Pump { pump: PumpId(2), to, .. } => Some(to),
        _ => None,
    });
    assert_relative_eq!(time.value, volume.value * 950.0 / flow.unwrap().value, max_relative = 1e-9);
}

/// A thicker board: mat weight and line speed at the former, the gap at the press, when the new furnish is there.
#[test]
fn former_and_press_have_their_steps() {
    let mill = Mill::new();
    let new = changed(&[(Field::Thickness, "18")]);
    let thicker = plan(&mill, &new);
    let press = thicker.arrivals.iter().find(|arrival| arrival.stop == Stop::PressIn).unwrap().begins;
    let steps: Vec<_> = thicker.downstream.iter().map(|step| (step.stop, step.at)).collect();
    assert_eq!(
        steps,
        [(Stop::Former, Some(START + 150_000)), (Stop::Former, Some(START + 150_000)), (Stop::PressIn, Some(press))]
    );
    let Downstream::MatWeight { from, to } = thicker.downstream[0].change else { panic!("{:?}", thicker.downstream) };
    assert_eq!((from, to), (mill.case.solved.mat.wet, new.1.solved.mat.wet));
    let Downstream::LineSpeed { from, to } = thicker.downstream[1].change else { panic!("{:?}", thicker.downstream) };
    assert!(to < from, "the same furnish makes less length of a heavier mat");
    let Downstream::PressGap { from, to } = thicker.downstream[2].change else { panic!("{:?}", thicker.downstream) };
    assert_relative_eq!((to - from).value, 0.003, max_relative = 1e-9);
}

/// Another binder cures at another temperature.
#[test]
fn another_binder_has_its_press_temperature() {
    let mill = Mill::new();
    let mut draft = example();
    draft.liquids.retain(|liquid| liquid.role != Role::Binder);
    add_liquids(&mut draft, &SystemKey::Uf.system().liquids[..1]);
    let case = work_out(&draft).case.unwrap();
    let changes: Vec<_> = plan(&mill, &(draft, case)).downstream.iter().map(|step| step.change).collect();
    assert!(changes.contains(&Downstream::PressTemperature), "{changes:?}");
    let same = plan(&mill, &changed(&[(Field::Thickness, "18")]));
    assert!(!same.downstream.iter().any(|step| step.change == Downstream::PressTemperature));
}

/// A blank time gives no times behind it, rather than a time of zero.
#[test]
fn blank_times_give_no_times() {
    let mut mill = Mill::new();
    mill.put(LineField::Transport(TransportField::BlenderToFormer), "", Unit::Second);
    mill.put(LineField::Transport(TransportField::Mixing), "", Unit::Second);
    let plan = plan(&mill, &changed(&[(Field::Thickness, "18"), (Field::MatMoisture, "9")]));
    assert!(!plan.downstream.is_empty() && plan.downstream.iter().all(|step| step.at.is_none()));
    assert_eq!((plan.complete, plan.between), (None, None));
    assert_eq!(
        plan.arrivals.iter().map(|arrival| (arrival.stop, arrival.complete)).collect::<Vec<_>>(),
        [(Stop::Blender, None)]
    );
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    /// Between any two recipes without release agents the mat is never moister than the moister of both.
    #[test]
    fn in_between_is_never_moister((old, old_case) in solved(), (new, new_case) in solved()) {
        let mut mill = Mill::new();
        mill.book.pumps.clear();
        for liquid in old.liquids.iter().chain(&new.liquids) {
            mill.book.add_pump(Feeds::Liquid(Tie::to(liquid)), SettingUnit::Percent);
        }
        mill.book.add_pump(Feeds::Water, SettingUnit::Percent);
        let loss = old_case.input.drying_loss.max(new_case.input.drying_loss).value;
        let from = Recipe { draft: &old, case: &old_case };
        let plan = changeover(from, Recipe { draft: &new, case: &new_case }, &mill.line(), START);
        let wettest = old_case.solved.water.mat.dry_basis().value.max(new_case.solved.water.mat.dry_basis().value);
        let scale = 1e-9 * (1.0 + loss);
        let mats: Vec<_> = plan.steps.iter().filter_map(|step| step.mat_after.map(|mat| (step.why, mat.dry_basis().value))).collect();
        something(mats.first())?;
        for (why, mat) in mats {
            prop_assert!(mat <= wettest + scale, "{why:?} {mat} > {wettest}");
        }
        prop_assert!(plan.steps.is_sorted_by_key(|step| (step.why, step.at)));
        // The last step leaves the new recipe's mat.
        if let Some(mat) = plan.steps.last().filter(|step| step.why == StepReason::MoisterFibreLast).and_then(|step| step.mat_after) {
            assert_relative_eq!(mat.dry_basis().value, new_case.solved.water.mat.dry_basis().value, max_relative = 1e-9, epsilon = 1e-12);
        }
    }
}

/// All steps as one list: pumps at the start, the former after 150 s, the press 40 s later, transition boards and the first new board at
/// the saw. What is next is the first moment that is not done.
#[test]
fn the_schedule_runs_from_the_start_to_the_first_new_board() {
    let mill = Mill::new();
    let plan = plan(&mill, &changed(&[(Field::Thickness, "18"), (Field::MatMoisture, "9")]));
    let all = schedule(&plan);
    let keys: Vec<String> = all.iter().map(Scheduled::key).collect();
    assert_eq!(keys, ["pump.3", "mat_weight", "line_speed", "press_gap", "transition_boards", "first_board"]);
    let times: Vec<u64> = all.iter().map(|scheduled| scheduled.at.unwrap()).collect();
    assert!(times.is_sorted());
    let saw = plan.arrivals.iter().find(|arrival| arrival.stop == Stop::Saw).unwrap();
    assert_eq!(times[..4], [START, START + 150_000, START + 150_000, START + 190_000]);
    assert_eq!((times[4], Some(times[5])), (saw.begins, saw.complete));
    assert_eq!(all[4].event, ScheduledEvent::TransitionBoards { until: saw.complete });

    let mut done = BTreeMap::new();
    assert_eq!(next_steps(&all, &done), ["pump.3"]);
    done.insert("pump.3".to_owned(), START);
    assert_eq!(next_steps(&all, &done), ["mat_weight", "line_speed"]);
    done.insert("mat_weight".to_owned(), START);
    assert_eq!(next_steps(&all, &done), ["line_speed"]);
    done.extend(keys.into_iter().map(|key| (key, START)));
    assert_eq!(next_steps(&all, &done), Vec::<String>::new());
}

/// Without a time from former to press, what comes behind it has no time and stands at the end.
#[test]
fn a_step_without_a_time_is_in_the_schedule() {
    let mut mill = Mill::new();
    mill.put(LineField::Transport(TransportField::FormerToPress), "", Unit::Second);
    let all = schedule(&plan(&mill, &changed(&[(Field::Thickness, "18")])));
    let untimed: Vec<String> = all.iter().filter(|scheduled| scheduled.at.is_none()).map(Scheduled::key).collect();
    assert_eq!(untimed, ["press_gap", "transition_boards", "first_board"]);
}
