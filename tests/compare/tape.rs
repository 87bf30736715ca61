//! The formulas run over many draws at once give what one full solve gives.

use crate::support;
use haulm::domain::balance::outcome::Case;
use haulm::domain::compare::uncertainty::tape::{LANES, Tape};
use haulm::domain::compare::{Output, variable};
use haulm::domain::{Field, Figure, LiquidField, solve};
use proptest::prelude::*;

/// Everything that the recipe gives.
fn outputs(case: &Case) -> Vec<Output> {
    let figures = case.figures().map(|(figure, _)| Output::Figure(figure));
    let more = Output::side_by_side(6000).into_iter().filter(|output| !matches!(output, Output::Figure(_)));
    figures.chain(more).filter(|output| output.value(case).is_some()).collect()
}

fn near(a: f64, b: f64, scale: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(scale)
}

/// What rounding may leave of a difference of flows, such as a water dose near zero.
fn scale(output: Output, case: &Case) -> f64 {
    let solids = case.solved.solids.value;
    match output {
        Output::Figure(figure) => match figure {
            Figure::WaterDose | Figure::WaterExcess | Figure::PressVapour => solids,
            Figure::WaterDoseVolume => solids * 1e-3,
            Figure::PressHeat => solids * 3e6,
            Figure::MatMoisture | Figure::BlenderMoisture | Figure::FibreMoistureForNoWater => 1.0,
            Figure::MatWater => case.solved.mat.od.value,
            Figure::WaterPerVolume => case.solved.usage.fibre_per_volume.value,
            Figure::Trim | Figure::Offcuts => solids,
            Figure::Liquid(..) => solids,
            _ => 0.0,
        },
        Output::LiquidWater | Output::DryerWater => solids,
        Output::DryerHeat => solids * 3e6,
        _ => 0.0,
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 80, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_tape_gives_what_solve_gives((_, case) in support::solved(), turns in prop::collection::vec(0.9..1.1_f64, 120)) {
        let fields: Vec<Field> = variable::used(&case.input)
            // A board that leaves the press as it is sold has one moisture.
            .filter(|field| *field != Field::ExitMoisture || case.input.line.exit_moisture.is_some())
            .collect();
        let outputs = outputs(&case);
        prop_assert!(outputs.len() > 40);
        let tape = Tape::new(&case, &fields, &outputs).expect("a tape");
        let mut block = tape.block();
        let mut turned = case.clone();
        let mut allowed = true;
        for (at, (field, turn)) in fields.iter().zip(&turns).enumerate() {
            let base = variable::get(&case.input, *field).unwrap();
            // Temperatures are counted from absolute zero.
            let base = if *field == Field::MatTemperature { base + (turn - 1.0) * 20.0 } else { base * turn };
            allowed &= variable::set(&mut turned.input, *field, base).is_ok();
            block.input_mut(at).unwrap().fill(base);
        }
        prop_assume!(allowed);
        tape.run(&mut block);
        let mut impossible = [false; LANES];
        tape.mark_impossible(&block, &mut impossible);
        match solve(&turned.input).ok().filter(|_| variable::consistent(&turned.input)) {
            None => prop_assert!(impossible.iter().all(|mark| *mark)),
            Some(solved) => {
                prop_assert!(impossible.iter().all(|mark| !mark));
                turned.solved = solved;
                for (at, output) in outputs.iter().enumerate() {
                    // Only where no fibre is dry enough is the figure held back.
                    let Some(expected) = output.value(&turned) else { continue };
                    let lane = tape.output(&block, at).unwrap();
                    for value in lane {
                        prop_assert!(near(*value, expected.base, scale(*output, &turned)), "{output:?}: {value} for {}", expected.base);
                    }
                }
            }
        }
    }

    #[test]
    fn derivatives_are_those_of_solve((_, case) in support::solved()) {
        let fields: Vec<Field> = variable::used(&case.input).filter(|field| *field != Field::ExitMoisture || case.input.line.exit_moisture.is_some()).collect();
        let outputs = outputs(&case);
        let tape = Tape::new(&case, &fields, &outputs).expect("a tape");
        let at: Vec<f64> = fields.iter().map(|field| variable::get(&case.input, *field).unwrap()).collect();
        for (place, output) in outputs.iter().enumerate() {
            let (value, slopes) = tape.derivatives(&at, place).unwrap();
            prop_assert!(near(value, output.value(&case).unwrap().base, scale(*output, &case)));
            for (input, field) in fields.iter().enumerate() {
                let step = if *field == Field::MatTemperature { 0.1 } else { at[input] * 1e-5 };
                let mut ends = [value; 2];
                for (end, sign) in ends.iter_mut().zip([-1.0, 1.0]) {
                    let mut turned = case.clone();
                    let set = variable::set(&mut turned.input, *field, at[input] + sign * step);
                    match set.ok().and_then(|()| solve(&turned.input).ok()) {
                        Some(solved) => {
                            turned.solved = solved;
                            *end = output.value(&turned).map_or(f64::NAN, |amount| amount.base);
                        }
                        None => *end = f64::NAN,
                    }
                }
                // One-sided differences that do not agree: at an end of the range, or at a kink.
                let (left, right) = (value - ends[0], ends[1] - value);
                let size = value.abs().max(scale(*output, &case));
                if step == 0.0 || !left.is_finite() || !right.is_finite() || (left - right).abs() > 1e-3 * left.abs().max(right.abs()) + 1e-9 * size {
                    continue;
                }
                let change = (ends[1] - ends[0]) / 2.0;
                prop_assert!(
                    (slopes[input] * step - change).abs() <= 1e-3 * change.abs() + 1e-9 * size,
                    "{output:?} by {field:?}: {} for {change}", slopes[input] * step
                );
            }
        }
    }
}

/// The instructions for what is usually asked for are few: that is where the speed comes from.
#[test]
fn a_tape_is_short() {
    let case = haulm::domain::work_out(&haulm::domain::example()).case.unwrap();
    let liquid = case.solved.liquids[0].id;
    let fields = [Field::FibreFlow, Field::FibreMoisture, Field::Liquid(liquid, LiquidField::Dose)];
    let tape = Tape::new(&case, &fields, &[Output::Figure(Figure::WaterDose), Output::Figure(Figure::Cost)]).unwrap();
    assert!(tape.instructions() < 60, "{}", tape.instructions());
    assert!(Tape::new(&case, &[Field::WaterFlow], &[Output::LiquidFlow]).is_none(), "no water flow in this recipe");
}
