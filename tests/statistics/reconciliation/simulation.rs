//! False alarms and detection, by simulation with a fixed seed.

use super::network::{CONSTRAINTS, balances, problem};
use haulm::statistics::reconciliation::{Diagnosis, Equations, Verdict};
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
    let Verdict::Suspects { errors, .. } = &diagnosis.verdict else { return (Vec::new(), Vec::new()) };
    let suspects: Vec<usize> = errors.iter().flat_map(|error| &error.suspects).map(|s| s.quantity).collect();
    let rivals = errors.iter().flat_map(|error| &error.rivals).map(|s| s.quantity);
    let all = suspects.iter().copied().chain(rivals).collect();
    (suspects, all)
}

#[test]
fn explore() {
    let sets: usize = std::env::var("SETS").map_or(300, |s| s.parse().unwrap());
    let alarms = normal_errors(1).take(sets).filter(|e| diagnose(e).verdict != Verdict::Consistent).count();
    println!("alarms {alarms}/{sets}");
    let det = diagnose(&[0.0; 16]).all;
    for at in 0..16 {
        let (mut alone, mut all, mut alarm, mut any) = (0, 0, 0, 0);
        for (n, mut e) in normal_errors(2 + at as u64).take(sets).enumerate() {
            e[at] += if n % 2 == 0 { 6.0 } else { -6.0 };
            let d = diagnose(&e);
            if d.verdict == Verdict::Consistent {
                continue;
            }
            alarm += 1;
            let (s, r) = named(&d);
            alone += usize::from(s.contains(&at));
            all += usize::from(r.contains(&at));
            any += usize::from(s.is_empty());
        }
        println!(
            "{at}: det {:.3} alarm {} named {} with rivals {} unexplained {any}",
            det.quantities[at].reading.unwrap().detectability,
            alarm,
            alone,
            all
        );
    }
}
