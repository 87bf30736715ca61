//! One input from a wanted value: closed forms against the root finder, no root, several, stretches.

use crate::support;
use haulm::domain::balance::outcome::Case;
use haulm::domain::compare::break_even::{BreakEven, BreakEvenError, break_even};
use haulm::domain::compare::feasibility::Obstacle;
use haulm::domain::compare::side::ComparedSystem;
use haulm::domain::compare::solve_for::{Method, Solution, SolveForError, is_linear, solve_for};
use haulm::domain::compare::sweep::{Axis, MOST_POINTS, grid, sweep};
use haulm::domain::compare::{Output, variable};
use haulm::domain::recipe::binder_system::SystemKey;
use haulm::domain::{Entry, Field, Figure, LiquidField, LiquidId, example, solve, work_out};
use haulm::quantity::Unit;
use proptest::prelude::*;

fn case() -> Case {
    work_out(&example()).case.unwrap()
}

#[track_caller]
fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() <= 1e-8 * expected.abs().max(1e-9), "{found} for {expected}");
}

/// The figure with the input set.
fn value(case: &Case, field: Field, at: f64, output: Output) -> f64 {
    let mut turned = case.clone();
    variable::set(&mut turned.input, field, at).unwrap();
    turned.solved = solve(&turned.input).unwrap();
    output.value(&turned).unwrap().base
}

#[track_caller]
fn one(case: &Case, field: Field, output: Output, wanted: f64) -> (f64, Method) {
    let answer = solve_for(case, field, output, wanted).unwrap();
    let Solution::One(at) = answer.found else { panic!("{answer:?}") };
    near(value(case, field, at, output), wanted);
    (at, answer.method)
}

/// The fibre moisture for no water is a figure of the balance: F·(ω_f − ω_f0) = W − W*.
#[test]
fn fibre_moisture_for_no_water() {
    let case = case();
    let closed = case.figure(Figure::FibreMoistureForNoWater).unwrap().base;
    let (at, method) = one(&case, Field::FibreMoisture, Output::DryerWater, 0.0);
    assert_eq!(method, Method::Linear);
    near(at, closed);
    // As a wanted dose of zero it is a whole stretch: every moister fibre needs none either.
    let answer = solve_for(&case, Field::FibreMoisture, Output::Figure(Figure::WaterDose), 0.0).unwrap();
    let Solution::Range { from, to } = answer.found else { panic!("{answer:?}") };
    near(from, closed);
    near(to, 2.0);
}

#[test]
fn density_for_a_mat_weight() {
    let case = case();
    let wanted = 12.0;
    let output = Output::Figure(Figure::MatOvenDry);
    let (at, method) = one(&case, Field::BoardDensity, output, wanted);
    near(at, 680.0 * wanted / case.figure(Figure::MatOvenDry).unwrap().base);
    assert_eq!(method, Method::Linear);
    // The moist weight is a line as well, but only for this recipe's water plan: it is searched for.
    let (_, method) = one(&case, Field::BoardDensity, Output::Figure(Figure::MatWet), wanted);
    assert_eq!(method, Method::Search);
}

#[test]
fn fibre_flow_at_a_pump_limit_and_at_a_machine_limit() {
    let case = case();
    let pump = Figure::Liquid(case.solved.liquids[0].id, haulm::domain::LiquidFigure::Volume);
    let now = case.figure(pump).unwrap().base;
    let (at, method) = one(&case, Field::FibreFlow, Output::Figure(pump), now * 1.3);
    near(at, case.solved.fibre.value * 1.3);
    assert_eq!(method, Method::Linear);
    for machine in [haulm::domain::balance::machine::Machine::Blender, haulm::domain::balance::machine::Machine::Press]
    {
        let limit = case.figure(Figure::FibreAtLimit(machine)).unwrap().base;
        near(one(&case, Field::FibreFlow, Output::Figure(Figure::Used(machine)), 1.0).0, limit);
    }
}

/// A dose for a cost: c(d) is no straight line, for the fibre in a board grows less when more of it is resin.
#[test]
fn dose_for_a_cost() {
    let case = case();
    let dose = Field::Liquid(case.solved.liquids[0].id, LiquidField::Dose);
    let cost = Output::Figure(Figure::Cost);
    let now = cost.value(&case).unwrap().base;
    let (at, method) = one(&case, dose, cost, now * 1.1);
    assert!(at > variable::get(&case.input, dose).unwrap());
    assert_eq!(method, Method::Search);
    near(one(&case, dose, cost, now).0, variable::get(&case.input, dose).unwrap());
}

/// Every straight line that is claimed is one, and its answer is the root finder's.
#[test]
fn lines_are_lines() {
    let case = work_out(&{
        let mut draft = example();
        draft.liquids = SystemKey::Uf.system().liquids;
        for liquid in &mut draft.liquids {
            liquid.price = Entry::typed("500", Unit::PerTonne);
        }
        *draft.entry_mut(Field::FibreMoisture).unwrap() = Entry::typed("1", Unit::PercentDryBasis);
        draft
    })
    .case
    .unwrap();
    let outputs: Vec<Output> = case
        .figures()
        .map(|(figure, _)| Output::Figure(figure))
        .chain([
            Output::LiquidFlow,
            Output::LiquidWater,
            Output::DryerWater,
            Output::DryerHeat,
            Output::BinderOnFibre,
            Output::CostPerYear(5000),
        ])
        .collect();
    let mut lines = 0;
    for field in variable::used(&case.input) {
        let at = variable::get(&case.input, field).unwrap();
        for output in &outputs {
            if !is_linear(&case, field, *output) {
                continue;
            }
            lines += 1;
            let [a, b, c] = [0.7, 0.9, 1.3].map(|turn| value(&case, field, at * turn, *output));
            let expected = a + (b - a) * 3.0;
            assert!((c - expected).abs() <= 1e-9 * c.abs().max(1e-12), "{output:?} over {field:?}: {c} for {expected}");
            if (c - a).abs() > 1e-9 * a.abs() {
                let answer = solve_for(&case, field, *output, c).unwrap();
                let Solution::One(found) = answer.found else { panic!("{answer:?}") };
                near(found, at * 1.3);
            }
        }
    }
    assert!(lines > 60, "{lines}");
}

#[test]
fn what_cannot_be_reached_names_the_nearest() {
    let case = case();
    // A mat moisture of 10.5 % is kept whatever the fibre brings, until the fibre alone is too wet; never below.
    let answer = solve_for(&case, Field::FibreMoisture, Output::Figure(Figure::MatMoisture), 0.05).unwrap();
    let Solution::Unreachable { nearest } = answer.found else { panic!("{answer:?}") };
    near(nearest.gives, 0.105);
    // A press factor that no fibre flow gives with this limit on the flow field.
    let answer = solve_for(&case, Field::AreaYield, Output::Figure(Figure::FinishedVolume), 1.0).unwrap();
    let Solution::Unreachable { nearest } = answer.found else { panic!("{answer:?}") };
    near(nearest.from, 1.0);
    near(nearest.gives, value(&case, Field::AreaYield, 1.0, Output::Figure(Figure::FinishedVolume)));
    // A cost below what the rest costs: the nearest is a price of nothing.
    let answer = solve_for(&case, Field::FibrePrice, Output::Figure(Figure::Cost), 1.0).unwrap();
    assert_eq!(answer.method, Method::Linear);
    let Solution::Unreachable { nearest } = answer.found else { panic!("{answer:?}") };
    assert_eq!(nearest.from, 0.0);
}

#[test]
fn an_input_that_changes_nothing_is_said() {
    let case = case();
    let answer = solve_for(&case, Field::MatTemperature, Output::Figure(Figure::WaterDose), 0.1).unwrap();
    let now = case.figure(Figure::WaterDose).unwrap().base;
    assert!(matches!(answer.found, Solution::Independent { gives } if (gives - now).abs() < 1e-9), "{answer:?}");
    let answer = solve_for(&case, Field::MatTemperature, Output::Figure(Figure::WaterDose), now).unwrap();
    assert!(matches!(answer.found, Solution::Range { .. }), "{answer:?}");
}

#[test]
fn a_question_that_does_not_fit_is_refused() {
    let case = case();
    let ask = |field, output, wanted| solve_for(&case, field, output, wanted).unwrap_err();
    let dose = Output::Figure(Figure::WaterDose);
    assert_eq!(ask(Field::WaterFlow, dose, 1.0), SolveForError::NotUsed);
    assert_eq!(ask(Field::Liquid(LiquidId(99), LiquidField::Dose), dose, 1.0), SolveForError::NotUsed);
    let spray = Figure::Liquid(case.solved.liquids[0].id, haulm::domain::LiquidFigure::Spray);
    assert_eq!(ask(Field::FibreFlow, Output::Figure(spray), 1.0), SolveForError::NotGiven);
    assert_eq!(ask(Field::FibreFlow, dose, f64::NAN), SolveForError::NotWanted);
}

/// Two answers: with heavily sanded, dense faces the fibre flow that the line can take grows with the
/// thickness while the line speed limits (it goes with t + k·a), and falls once the press does (it goes
/// with (t + k·a)/(t + a)).
#[test]
fn several_answers_are_all_found() {
    let mut draft = example();
    for (field, text, unit) in [
        (Field::SurfaceRatio, "3", Unit::One),
        (Field::SandTop, "1.5", Unit::Millimetre),
        (Field::SandBottom, "1.5", Unit::Millimetre),
        (Field::FibreSupply, "", Unit::KilogramPerHour),
        (Field::BlenderCapacity, "", Unit::KilogramPerHour),
    ] {
        *draft.entry_mut(field).unwrap() = Entry::typed(text, unit);
    }
    let case = work_out(&draft).case.unwrap();
    let output = Output::FibreAtLimit;
    // Both machines limit alike where v_max·φ_min·t_p = l: t = 18 m/(0.5 m/s·7 s/mm) − 3 mm.
    let peak = 18.0 / (0.5 * 7.0) * 1e-3 - 3e-3;
    let wanted = 0.95 * value(&case, Field::Thickness, peak, output);
    let answer = solve_for(&case, Field::Thickness, output, wanted).unwrap();
    let Solution::Several(all) = answer.found else { panic!("{answer:?}") };
    let [thin, thick] = all.as_slice() else { panic!("{all:?}") };
    assert!(*thin < peak && peak < *thick, "{all:?}");
    for at in all {
        near(value(&case, Field::Thickness, at, output), wanted);
    }
    // At the very peak, where no sign changes, one answer; above it none, and the peak comes nearest.
    let top = value(&case, Field::Thickness, peak, output);
    let answer = solve_for(&case, Field::Thickness, output, top * 1.1).unwrap();
    let Solution::Unreachable { nearest } = answer.found else { panic!("{answer:?}") };
    assert!((nearest.from - peak).abs() < 1e-6 && (nearest.gives - top).abs() < 1e-4 * top, "{nearest:?}");
}

fn priced(draft: &mut haulm::domain::Draft, price: &str) {
    for liquid in &mut draft.liquids {
        liquid.price = Entry::typed(price, Unit::PerTonne);
    }
    draft.plain.fibre_price = Entry::typed("90", Unit::PerTonne);
}

#[test]
fn price_at_which_two_systems_cost_the_same() {
    let cheap = ComparedSystem::new("cheap", example());
    let mut draft = example();
    draft.liquids = SystemKey::Uf.system().liquids;
    priced(&mut draft, "450");
    let other = ComparedSystem::new("UF", draft);
    let (case, other_case) = (cheap.case().unwrap(), other.case().unwrap());
    let field = Field::Liquid(case.solved.liquids[0].id, LiquidField::Price);
    let cost = Output::Figure(Figure::Cost);
    let BreakEven::At(price) = break_even(&cheap, field, &other, false).unwrap().at else { panic!() };
    near(value(case, field, price, cost), cost.value(other_case).unwrap().base);
    // The same by the root finder.
    let (at, _) = one(case, field, cost, cost.value(other_case).unwrap().base);
    near(at, price);
    // The fibre's price counts for both.
    let both = break_even(&cheap, Field::FibrePrice, &other, false).unwrap();
    assert_eq!((both.moves_with, both.other_keeps), (Some(Field::FibrePrice), None));
    match both.at {
        BreakEven::At(price) => {
            near(value(case, Field::FibrePrice, price, cost), value(other_case, Field::FibrePrice, price, cost));
        }
        BreakEven::DearerAtZero(_) => {}
        found => panic!("{found:?}"),
    }
    assert_eq!(break_even(&cheap, Field::FibrePrice, &cheap, false).unwrap().at, BreakEven::Always);
    assert_eq!(break_even(&cheap, Field::FibreFlow, &other, false), Err(BreakEvenError::NotAPrice));
    let free = break_even(&other, Field::Liquid(LiquidId(4), LiquidField::Price), &cheap, true).unwrap();
    assert!(matches!(free.at, BreakEven::At(_) | BreakEven::DearerAtZero(_)));
}

/// The price moves in the first system alone, though the other one uses the same material: the other keeps its own.
#[test]
fn a_price_can_move_in_one_system_alone() {
    let first = ComparedSystem::new("first", example());
    let mut draft = example();
    draft.liquids = SystemKey::Uf.system().liquids;
    priced(&mut draft, "450");
    let other = ComparedSystem::new("UF", draft);
    let found = break_even(&first, Field::FibrePrice, &other, true).unwrap();
    assert_eq!((found.moves_with, found.other_keeps.map(|price| (price * 1000.0).round())), (None, Some(90.0)));
    let cost = Output::Figure(Figure::Cost);
    let wanted = cost.value(other.case().unwrap()).unwrap().base;
    match found.at {
        BreakEven::At(price) => near(value(first.case().unwrap(), Field::FibrePrice, price, cost), wanted),
        BreakEven::DearerAtZero(more) => {
            near(value(first.case().unwrap(), Field::FibrePrice, 0.0, cost), wanted + more)
        }
        found => panic!("{found:?}"),
    }
}

/// A system that lacks a price has no cost, no bar and no break-even, and the missing prices are listed.
#[test]
fn without_a_price_there_is_no_cost_and_no_break_even() {
    let cheap = ComparedSystem::new("cheap", example());
    let mut draft = example();
    draft.liquids[1].price = Entry::empty(Unit::PerTonne);
    draft.plain.fibre_price = Entry::empty(Unit::PerTonne);
    let unpriced = ComparedSystem::new("unpriced", draft);
    let missing = vec![Field::FibrePrice, Field::Liquid(unpriced.draft.liquids[1].id, LiquidField::Price)];
    let case = unpriced.case().unwrap();
    for output in [Output::Figure(Figure::Cost), Output::CostPerYear(6000)] {
        assert_eq!((output.value(case), output.working(case)), (None, None), "{output:?}");
        assert!(output.value(cheap.case().unwrap()).is_some());
    }
    assert_eq!(unpriced.unpriced(), missing);
    let field = Field::Liquid(cheap.draft.liquids[0].id, LiquidField::Price);
    let found = break_even(&cheap, field, &unpriced, false);
    assert_eq!(found, Err(BreakEvenError::Unpriced([vec![], missing.clone()])));
    // The price that is looked for need not be there.
    let found = break_even(&unpriced, missing[1], &cheap, true);
    assert_eq!(found, Err(BreakEvenError::Unpriced([vec![Field::FibrePrice], vec![]])));
}

/// A sweep is nothing but single solves.
#[test]
fn sweeps_are_single_solves() {
    let case = case();
    let outputs = [Output::Figure(Figure::WaterDose), Output::DryerWater, Output::Figure(Figure::Cost)];
    let axis = Axis::around(&case, Field::FibreMoisture, 41).unwrap();
    let swept = sweep(&case, &axis, &outputs);
    assert_eq!(swept.inputs.len(), 41);
    assert_eq!((swept.inputs[0], swept.inputs[40]), (axis.from, axis.to));
    for (at, base) in swept.inputs.iter().enumerate() {
        for (output, values) in outputs.iter().zip(&swept.outputs) {
            assert_eq!(values[at], Some(value(&case, Field::FibreMoisture, *base, *output)));
        }
    }
    // The other input turned back and forth leaves no trace.
    let dose = Field::Liquid(case.solved.liquids[0].id, LiquidField::Dose);
    let up = Axis::around(&case, dose, 7).unwrap();
    let found = grid(&case, &Axis { points: 9, ..axis }, &up, outputs[0]);
    assert_eq!(found.values.len(), 63);
    for (row, second) in found.up.iter().enumerate() {
        for (column, first) in found.across.iter().enumerate() {
            let mut turned = case.clone();
            variable::set(&mut turned.input, dose, *second).unwrap();
            let expected = value(&turned, Field::FibreMoisture, *first, outputs[0]);
            assert_eq!(found.values[found.place(column, row)], Some(expected));
        }
    }
}

/// What prevents running is said for each point: dry enough, too wet, and beyond the blender.
#[test]
fn verdicts_follow_the_findings() {
    let case = case();
    let wet = case.figure(Figure::FibreMoistureForNoWater).unwrap().base;
    let axis = Axis { field: Field::FibreMoisture, from: 0.02, to: 0.2, points: 61 };
    let swept = sweep(&case, &axis, &[]);
    for (base, feasibility) in swept.inputs.iter().zip(&swept.feasibilities) {
        let obstacles: Vec<_> = feasibility.obstacles().collect();
        assert_eq!(obstacles.contains(&Obstacle::TooWet), *base > wet, "{base}: {obstacles:?}");
        assert_eq!(feasibility.is_feasible(), *base <= wet);
        assert_eq!(obstacles.contains(&Obstacle::Input), *base > 0.12 * (1.0 + 1e-9), "{base}: {obstacles:?}");
    }
    let blender = case.figure(Figure::FibreAtLimit(haulm::domain::balance::machine::Machine::Blender)).unwrap().base;
    let flow = Axis { field: Field::FibreFlow, from: blender * 0.5, to: blender * 1.5, points: MOST_POINTS + 100 };
    let swept = sweep(&case, &flow, &[]);
    assert_eq!(swept.inputs.len(), MOST_POINTS);
    for (base, feasibility) in swept.inputs.iter().zip(&swept.feasibilities) {
        let over = feasibility
            .obstacles()
            .any(|o| o == Obstacle::OverLimit(haulm::domain::balance::machine::Machine::Blender));
        assert_eq!(over, *base > blender * (1.0 + 1e-9));
    }
    let beyond = Axis { field: Field::AreaYield, from: 0.9, to: 1.1, points: 3 };
    let swept = sweep(&case, &beyond, &[Output::LiquidFlow]);
    assert!(swept.outputs[0][1].is_some() && swept.outputs[0][2].is_none());
    assert_eq!(swept.feasibilities[2].obstacles().collect::<Vec<_>>(), [Obstacle::NotAllowed]);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 120, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever is asked of whatever recipe: an answer that is one gives what was wanted, and a value that
    /// the input had before is found again.
    #[test]
    fn answers_are_answers((_, case) in support::solved(), pick in 0..1000_usize, what in 0..1000_usize, turn in 0.8..1.25_f64) {
        let fields: Vec<Field> = variable::used(&case.input).collect();
        let field = fields[pick % fields.len()];
        let outputs: Vec<Output> = Output::side_by_side(4000).into_iter().filter(|output| output.value(&case).is_some()).collect();
        let output = outputs[what % outputs.len()];
        let wanted = output.value(&case).unwrap().base * turn;
        let answer = solve_for(&case, field, output, wanted).unwrap();
        let reached = |at: f64| {
            let mut turned = case.clone();
            variable::set(&mut turned.input, field, at).ok()?;
            turned.solved = solve(&turned.input).ok()?;
            output.value(&turned).map(|amount| (amount.base - wanted).abs() <= 1e-6 * wanted.abs().max(1e-3))
        };
        match &answer.found {
            Solution::One(at) => prop_assert_eq!(reached(*at), Some(true)),
            Solution::Several(all) => for at in all { prop_assert_eq!(reached(*at), Some(true)); },
            Solution::Range { from, to } => {
                prop_assert!(from <= to);
                prop_assert_eq!(reached(*from), Some(true));
            }
            Solution::Unreachable { nearest } => prop_assert!(nearest.gives.is_finite() && nearest.from.is_finite()),
            Solution::Independent { gives } => prop_assert!(gives.is_finite()),
        }
        // What the recipe holds already is an answer to what it gives already.
        let now = output.value(&case).unwrap().base;
        let again = solve_for(&case, field, output, now).unwrap();
        let at = variable::get(&case.input, field).unwrap();
        let close = |found: f64| (found - at).abs() <= 1e-6 * at.abs().max(1e-6);
        let holds = match &again.found {
            Solution::One(found) => close(*found),
            Solution::Several(all) => all.iter().any(|found| close(*found)),
            Solution::Range { from, to } => *from <= at * (1.0 + 1e-9) && at <= *to * (1.0 + 1e-9),
            Solution::Independent { gives } => (gives - now).abs() <= 1e-9 * now.abs(),
            Solution::Unreachable { nearest } => (nearest.gives - now).abs() <= 1e-6 * now.abs(),
        };
        prop_assert!(holds, "{again:?}, held {at}, {now}");
    }
}
