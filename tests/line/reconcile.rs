//! The line check by data reconciliation: which reading errs.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::reconcile::{LineProblem, LineQuantity, LineReading};
use haulm::statistics::reconciliation::{Diagnosis, Verdict};

/// Everything read exactly as the recipe wants it, some readings off by a factor.
fn check(mill: &Mill, wrong: &[(LineQuantity, f64)]) -> (LineProblem, Diagnosis) {
    let plain = LineProblem::new(&mill.case, &[]);
    let state = plain.diagnose().unwrap().all;
    assert!(state.is_consistent());
    let derived = |quantity: &LineQuantity| {
        !matches!(quantity, LineQuantity::Fibre | LineQuantity::FurnishSolids | LineQuantity::Solids(_))
    };
    let start = |at: usize| match plain.problem.quantities[at] {
        haulm::statistics::reconciliation::Quantity::Measured { value, .. } => value,
        haulm::statistics::reconciliation::Quantity::Unmeasured { start } => start,
    };
    let readings: Vec<LineReading> = plain
        .quantities
        .iter()
        .enumerate()
        .filter(|(_, quantity)| derived(quantity))
        .map(|(at, quantity)| {
            let factor = wrong.iter().find(|(other, _)| other == quantity).map_or(1.0, |(_, factor)| *factor);
            LineReading { quantity: *quantity, value: start(at) * factor, uncertainty: None }
        })
        .collect();
    let problem = LineProblem::new(&mill.case, &readings);
    let diagnosis = problem.diagnose().unwrap();
    (problem, diagnosis)
}

fn suspects(problem: &LineProblem, diagnosis: &Diagnosis) -> Vec<LineQuantity> {
    let Verdict::Suspects { errors, .. } = &diagnosis.verdict else { return Vec::new() };
    errors.iter().flat_map(|error| &error.suspects).map(|suspect| problem.quantities[suspect.quantity]).collect()
}

/// The targets of the recipe satisfy the balances of the line check: two derivations of the same mass balance.
#[test]
fn a_line_that_runs_as_the_recipe_says_is_consistent() {
    let (_, diagnosis) = check(&Mill::new(), &[]);
    assert_eq!(diagnosis.verdict, Verdict::Consistent);
    assert!(diagnosis.all.global.unwrap().chi_squared < 1e-9);
}

#[test]
fn a_belt_scale_that_reads_5_percent_low_is_named() {
    let (problem, diagnosis) = check(&Mill::new(), &[(LineQuantity::BeltScale, 0.95)]);
    assert_eq!(suspects(&problem, &diagnosis), [LineQuantity::BeltScale]);
    let Verdict::Suspects { without, .. } = &diagnosis.verdict else { panic!("no suspect") };
    let belt = problem.value(without, LineQuantity::BeltScale).unwrap();
    assert_relative_eq!(belt, Mill::new().case.solved.fibre_wet.value, max_relative = 1e-6);
}

#[test]
fn a_density_deviation_is_split() {
    let mill = Mill::new();
    let thick = [(LineQuantity::Thickness, 1.03), (LineQuantity::Density, 1.0 / 1.03)];
    let (problem, diagnosis) = check(&mill, &thick);
    assert_eq!(diagnosis.verdict, Verdict::Consistent);
    let split = problem.density_split(&mill.case, &diagnosis.all).unwrap();
    assert_relative_eq!(split.thickness, -(1.03_f64.ln()), max_relative = 1e-6);
    assert!(split.mass.abs() < 1e-9 && split.moisture.abs() < 1e-9, "{split:?}");
}
