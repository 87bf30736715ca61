//! The line check by data reconciliation: which reading errs.

use super::mill::Mill;
use approx::assert_relative_eq;
use haulm::domain::line::reconcile::{LineProblem, LineQuantity, LineReading};
use haulm::statistics::reconciliation::{Diagnosis, Verdict};

/// Everything read exactly as the recipe wants it, some readings off by a factor.
fn check(mill: &Mill, wrong: &[(LineQuantity, f64)]) -> (LineProblem, Diagnosis) {
    let plain = LineProblem::new(&mill.case, &[]);
    let state = plain.diagnose(&mill.case).unwrap().all;
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
    let diagnosis = problem.diagnose(&mill.case).unwrap();
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

/// The fibre moisture that was read shows in the mat's moisture; an error of one point is a multiple of its uncertainty.
#[test]
fn wet_fibre_is_found() {
    let mill = Mill::new();
    let moisture = mill.case.input.fibre_moisture.dry_basis().value;
    // The meter reads three points low.
    let (problem, diagnosis) = check(&mill, &[(LineQuantity::FibreMoisture, 1.0 - 0.03 / moisture)]);
    let Verdict::Suspects { errors, .. } = &diagnosis.verdict else { panic!("no suspect") };
    assert_eq!(errors.len(), 1);
    let named = errors[0].suspects.iter().chain(&errors[0].rivals);
    let suspect = named.into_iter().find(|s| problem.quantities[s.quantity] == LineQuantity::FibreMoisture);
    assert_relative_eq!(suspect.expect("the fibre moisture is named").error, -0.03, max_relative = 1e-6);
    // The moisture comes first, before solids contents that would have to err by a multiple of themselves; a second
    // reading of it decides.
    assert_eq!(problem.quantities[errors[0].suspects[0].quantity], LineQuantity::FibreMoisture);
    assert_eq!(problem.quantities[errors[0].extra_readings[0].quantity], LineQuantity::FibreMoisture);
}

/// Meter and setting of a pump disagree by 8 %: the rest of the line says which of them is wrong only where the liquid
/// weighs enough in the balances; otherwise both are named, and one more reading decides.
#[test]
fn a_pump_that_delivers_too_little_is_found() {
    let mill = Mill::new();
    let id = mill.case.solved.liquids[0].id;
    let (problem, diagnosis) = check(&mill, &[(LineQuantity::Setting(id), 1.08)]);
    let Verdict::Suspects { errors, .. } = &diagnosis.verdict else { panic!("no suspect") };
    assert_eq!(errors.len(), 1);
    let named = errors[0].suspects.iter().chain(&errors[0].rivals).map(|suspect| problem.quantities[suspect.quantity]);
    let named: Vec<LineQuantity> = named.collect();
    assert!(named.contains(&LineQuantity::Setting(id)), "{named:?}");
    let allowed = [LineQuantity::Setting(id), LineQuantity::Meter(id)];
    assert!(named.iter().all(|quantity| allowed.contains(quantity)), "{named:?}");
}

#[test]
fn without_a_width_the_speed_is_not_known() {
    let mut mill = Mill::new();
    mill.case.input.line.width = None;
    let readings = [LineReading { quantity: LineQuantity::BeltScale, value: 2.0, uncertainty: None }];
    let problem = LineProblem::new(&mill.case, &readings);
    let result = problem.diagnose(&mill.case).unwrap();
    assert_eq!(problem.value(&result.all, LineQuantity::LineSpeed), None);
    assert_eq!(problem.value(&result.all, LineQuantity::MatWidth), None);
    assert_eq!(result.verdict, Verdict::NothingChecked);
}

/// Speed, width and reject stand in one balance: a speed that reads 5 % high is named first, for the others would have to
/// err by far more than their instruments do.
#[test]
fn a_line_speed_is_named_before_what_shows_alike() {
    let mill = Mill::new();
    let (problem, diagnosis) = check(&mill, &[(LineQuantity::LineSpeed, 1.05)]);
    let named = suspects(&problem, &diagnosis);
    assert_eq!(named[0], LineQuantity::LineSpeed);
    assert!(named.contains(&LineQuantity::MatWidth) && named.contains(&LineQuantity::Reject), "{named:?}");
}
