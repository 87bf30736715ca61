//! False alarms and detection, by simulation with a fixed seed. These are few sets, to be fast without optimisation;
//! `tests/bench/reconciliation.rs` asserts the same of 10 000.

use super::network::{CONSTRAINTS, balances, problem};
use haulm::statistics::reconciliation::{Diagnosis, Equations, TestConclusion};
use rand_distr::{Distribution, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::SeedableRng;

/// Sets of errors in standard uncertainties.
pub fn normal_errors(seed: u64) -> impl Iterator<Item = [f64; 16]> {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
    std::iter::repeat_with(move || std::array::from_fn(|_| StandardNormal.sample(&mut random)))
}

fn diagnose(errors: &[f64; 16]) -> Diagnosis {
    problem(errors).diagnose(&Equations::new(CONSTRAINTS, balances), &[]).unwrap()
}

/// Readings that a diagnosis names, without and with the rivals.
pub fn named(diagnosis: &Diagnosis) -> (Vec<usize>, Vec<usize>) {
    let TestConclusion::Suspects { errors, .. } = &diagnosis.verdict else { return (Vec::new(), Vec::new()) };
    let suspects: Vec<usize> = errors.iter().flat_map(|error| &error.suspects).map(|s| s.quantity).collect();
    let rivals = errors.iter().flat_map(|error| &error.rivals).map(|s| s.quantity);
    let all = suspects.iter().copied().chain(rivals).collect();
    (suspects, all)
}

#[test]
fn one_clean_set_in_twenty_raises_an_alarm() {
    const SETS: usize = 600;
    let alarms =
        normal_errors(1).take(SETS).filter(|errors| diagnose(errors).verdict != TestConclusion::Consistent).count();
    // 30 expected, standard deviation 5.3.
    assert!((15..=45).contains(&alarms), "{alarms} alarms in {SETS} sets");
}

/// Where at least 0.85 of an error shows, six standard uncertainties are found. What shows less cannot be: the network
/// gives the reading too little to be compared with.
#[test]
fn six_standard_uncertainties_are_named() {
    const SETS: usize = 30;
    let clean = diagnose(&[0.0; 16]).all;
    let shown = |at: &usize| clean.quantities[*at].reading.unwrap().detectability >= 0.85;
    let detectable: Vec<usize> = (0..16).filter(shown).collect();
    assert_eq!(detectable, [2, 5, 9, 10, 11, 12, 15]);
    let mut found = 0;
    for at in &detectable {
        for (set, mut errors) in normal_errors(100 + *at as u64).take(SETS).enumerate() {
            errors[*at] += if set % 2 == 0 { 6.0 } else { -6.0 };
            found += usize::from(named(&diagnose(&errors)).0.contains(at));
        }
    }
    let sets = SETS * detectable.len();
    assert!(found * 100 >= sets * 95, "named in {found} of {sets} sets");
}
