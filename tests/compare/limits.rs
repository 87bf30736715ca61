//! Answers, sweeps and maps know the machines' limits, and say what is wrong with a range.

use haulm::domain::balance::machine::Machine;
use haulm::domain::balance::outcome::Case;
use haulm::domain::compare::capacity::exceeded;
use haulm::domain::compare::draft::{CompareDraft, RangeDraft};
use haulm::domain::compare::feasibility::{FeasibilityGrade, Obstacle};
use haulm::domain::compare::range::{RangeError, range};
use haulm::domain::compare::side::ComparedSystem;
use haulm::domain::compare::solve_for::{Solution, solve_for};
use haulm::domain::compare::sweep::{Axis, EDGE, grid, sweep};
use haulm::domain::compare::variation::Variation;
use haulm::domain::compare::{Output, variable};
use haulm::domain::{Draft, Entry, Field, Figure, Grade, example};
use haulm::quantity::{Kind, Unit};

fn flow(tonnes: f64) -> f64 {
    Unit::TonnePerHour.to_base(tonnes)
}

fn set(draft: &mut Draft, field: Field, text: &str, unit: Unit) {
    *draft.entry_mut(field).unwrap() = Entry::typed(text, unit);
}

/// A line whose dryer gives 11.5 t/h and that nothing else limits.
fn dryer() -> Case {
    let mut draft = example();
    set(&mut draft, Field::FibreSupply, "11.5", Unit::TonnePerHour);
    for field in [Field::BlenderCapacity, Field::LeastPressFactor, Field::TopLineSpeed] {
        draft.entry_mut(field).unwrap().text.clear();
    }
    ComparedSystem::new("dryer", draft).case().unwrap().clone()
}

/// "13.0 t/h; the dryer gives 11.5."
#[test]
fn an_answer_beyond_a_machine_says_so() {
    let case = dryer();
    let volume = Output::Figure(Figure::FinishedVolume);
    let now = volume.value(&case).unwrap().base;
    let wanted = now * flow(13.0) / case.solved.fibre.value;
    let answer = solve_for(&case, Field::FibreFlow, volume, wanted).unwrap();
    let [over] = answer.over.as_slice() else { panic!("{answer:?}") };
    assert_eq!(over.exceeded.machine, Machine::FibreSupply);
    let tonnes = |amount: haulm::quantity::Amount| amount.get(Unit::TonnePerHour);
    assert!((tonnes(over.exceeded.asked) - 13.0).abs() < 1e-9 && (tonnes(over.exceeded.limit) - 11.5).abs() < 1e-9);
    // What can be had at the limit.
    let reachable = over.reachable.unwrap().base;
    assert!((reachable - wanted * 11.5 / 13.0).abs() < 1e-9 * wanted, "{over:?}");
    let within = solve_for(&case, Field::FibreFlow, volume, wanted * 11.4 / 13.0).unwrap();
    assert_eq!(within.over, []);
    assert_eq!(exceeded(&case), []);
}

#[test]
fn every_machine_is_named_in_its_own_terms() {
    let mut draft = example();
    set(&mut draft, Field::FibreFlow, "60", Unit::TonnePerHour);
    let found = exceeded(ComparedSystem::new("", draft).case().unwrap());
    let kinds: Vec<_> = found.iter().map(|one| (one.machine, one.asked.kind)).collect();
    for (machine, kind) in [
        (Machine::FibreSupply, Kind::FibreFlow),
        (Machine::Blender, Kind::FibreFlow),
        (Machine::Press, Kind::PressFactor),
        (Machine::LineSpeed, Kind::LineSpeed),
    ] {
        assert!(kinds.contains(&(machine, kind)), "{kinds:?}");
    }
    assert!(found.iter().all(|one| one.asked.kind == one.limit.kind));
    // The most exceeded one first: at its limit all others are within theirs.
    assert!(found.windows(2).all(|pair| pair[0].fibre.base <= pair[1].fibre.base));
}

/// Mat moisture stays at its target until the fibre alone is too wet: the nearest value holds for that whole range.
#[test]
fn the_nearest_value_names_the_whole_range_where_it_holds() {
    let case = dryer();
    let none = case.figure(Figure::FibreMoistureForNoWater).unwrap().base;
    let answer = solve_for(&case, Field::FibreMoisture, Output::Figure(Figure::MatMoisture), 0.05).unwrap();
    let Solution::Unreachable { nearest } = answer.found else { panic!("{answer:?}") };
    assert!(nearest.from.abs() < 1e-12 && (nearest.to - none).abs() < 1e-6, "{nearest:?} to {none}");
}

#[test]
fn a_sweep_marks_where_a_limit_begins_to_a_thousandth_of_the_axis() {
    let case = dryer();
    let axis = Axis { field: Field::FibreFlow, from: flow(6.0), to: flow(16.0), points: 11 };
    let swept = sweep(&case, &axis, &[]);
    let [span] = swept.limits.as_slice() else { panic!("{:?}", swept.limits) };
    assert_eq!((span.obstacle, span.to), (Obstacle::OverLimit(Machine::FibreSupply), axis.to));
    assert!((span.from - flow(11.5)).abs() <= EDGE * (axis.to - axis.from), "{span:?}");
}

#[test]
fn the_edges_of_a_map_are_refined_to_a_thousandth_of_the_axis() {
    let case = dryer();
    let across = Axis { field: Field::FibreFlow, from: flow(6.0), to: flow(16.0), points: 9 };
    let up = Axis { field: Field::Thickness, from: 0.012, to: 0.02, points: 9 };
    let found = grid(&case, &across, &up, Output::Figure(Figure::FinishedVolume));
    let near = |at: f64, expected: f64| (at - expected).abs() <= EDGE * (across.to - across.from);
    let on_limit = found.edges.iter().filter(|piece| piece.iter().all(|point| near(point.0, flow(11.5)))).count();
    assert_eq!(on_limit, 8, "{:?}", found.edges);
    // The hatching has the same places: one a row, where the dryer ends.
    let along: Vec<f64> = found.level.iter().flatten().copied().filter(|x| near(*x, flow(11.5))).collect();
    assert_eq!(along.len(), 9, "{:?}", found.level);
    // Each edge lies between two different states.
    let mut variation = Variation::new(&case);
    let mut standing =
        |x: f64, y: f64| variation.feasibility(&[(Field::FibreFlow, x), (Field::Thickness, y)]).standing();
    let step = 2.0 * EDGE * (across.to - across.from);
    assert_eq!(standing(flow(11.5) + step, 0.0151), FeasibilityGrade::Infeasible);
    assert_ne!(standing(flow(11.5) - step, 0.0151), FeasibilityGrade::Infeasible);
}

/// What the recipe page warns of is a limit or advice on the map, and what it does not mention is neither.
#[test]
fn the_map_agrees_with_the_recipe_page() {
    let percent = Unit::PercentDryBasis;
    for (name, field, text, unit, expected) in [
        ("as it is", Field::Thickness, "15", Unit::Millimetre, FeasibilityGrade::Free),
        ("more than the dryer gives", Field::FibreFlow, "30", Unit::TonnePerHour, FeasibilityGrade::Infeasible),
        ("wet board", Field::BoardMoisture, "14", percent, FeasibilityGrade::Advised),
        ("wet fibre", Field::FibreMoisture, "20", percent, FeasibilityGrade::Infeasible),
        ("wet mat", Field::MatMoisture, "19", percent, FeasibilityGrade::Advised),
    ] {
        let mut draft = example();
        set(&mut draft, field, text, unit);
        let system = ComparedSystem::new(name, draft);
        let warned = system.outcome.findings.iter().any(|finding| finding.grade == Grade::Unusual);
        let standing = Variation::new(system.case().unwrap()).feasibility(&[]).standing();
        assert_eq!(
            (standing, warned),
            (expected, expected != FeasibilityGrade::Free),
            "{name}: {:?}",
            system.outcome.findings
        );
    }
}

#[test]
fn a_range_that_is_none_is_said_and_never_replaced() {
    let system = ComparedSystem::new("", example());
    let entry = |text: &str| Some(Entry::typed(text, Unit::TonnePerHour));
    let ask = |from, to| range(&system, "fibre_flow", Some(&RangeDraft { from, to }), 5);
    assert_eq!(ask(entry("9"), entry("9")), Err(RangeError::Equal));
    assert_eq!(ask(entry("9"), entry("8")), Err(RangeError::Reversed));
    assert_eq!(ask(entry("much"), entry("8")), Err(RangeError::NotReadable));
    assert_eq!(ask(entry("-3"), entry("8")), Err(RangeError::NotReadable));
    assert_eq!(range(&system, "water_flow", None, 5), Err(RangeError::NotUsed));
    let found = ask(entry("8"), entry("9")).unwrap();
    assert_eq!((found.from, found.to), (flow(8.0), flow(9.0)));
    // A blank end is as it starts.
    let start = range(&system, "fibre_flow", None, 5).unwrap();
    assert_eq!(ask(entry(""), None), Ok(start));
    assert!(variable::get(&system.case().unwrap().input, Field::FibreFlow).is_some());
}

#[test]
fn sweep_and_map_keep_their_ranges_apart() {
    let mut typed = CompareDraft::default();
    typed.sweep.ranges.entry("fibre_flow".to_owned()).or_default().from = Some(Entry::typed("8", Unit::TonnePerHour));
    assert!(typed.map.ranges.is_empty());
}

/// Hours, seeds and targets that are none leave no answer that looks valid.
#[test]
fn an_entry_that_is_none_leaves_no_answer() {
    let mut typed = CompareDraft::default();
    assert_eq!((typed.hours(), typed.uncertainty.seed()), (Some(7500), Some(1)));
    for text in ["", "many", "0", "9000", "-1"] {
        typed.hours = Entry::typed(text, Unit::Hour);
        assert_eq!(typed.hours(), None, "{text}");
        let systems = [ComparedSystem::new("A", example()), ComparedSystem::new("B", example())];
        let side = haulm::domain::compare::side::side_by_side(&systems, 0, typed.hours()).unwrap();
        assert!(!side.rows.iter().any(|row| matches!(row.output, Output::CostPerYear(_))));
    }
    for text in ["", "x", "-1", "1e17"] {
        typed.uncertainty.seed = Entry::typed(text, Unit::One);
        assert_eq!(typed.uncertainty.seed(), None, "{text}");
    }
}
