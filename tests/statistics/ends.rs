//! Only the ends of the draws are kept; what they say is what all draws say, sorted.

use haulm::statistics::ends::{Ends, pilot};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};

const PILOT: usize = 4_096;

/// Holds what the ends say against the same draws, all kept and sorted.
#[track_caller]
fn check(what: &str, draws: &[f64]) {
    let mut ends = Ends::new(draws.len(), PILOT);
    draws.chunks(64).for_each(|block| ends.extend(block));
    assert_eq!(ends.count(), draws.len());
    let found = ends.summary(3).unwrap_or_else(|| panic!("{what}: nothing is said"));
    let mut sorted = draws.to_vec();
    sorted.sort_by(f64::total_cmp);
    let count = draws.len();
    // JCGM 101, 7.7: q = pM to the nearest whole, r = (M − q)/2 or the next whole, ranks from 1.
    let span = (0.95 * count as f64 + 0.5).floor() as usize;
    let low = (count - span).div_ceil(2) - 1;
    let (off, high) = ((count as f64 * 0.025 * 0.975).sqrt().round() as usize, low + span);
    assert_eq!((found.low, found.high), (sorted[low], sorted[high]), "{what}");
    let wavers = |rank: usize| (sorted[(rank + off).min(count - 1)] - sorted[rank.saturating_sub(off)]) / 2.0;
    assert_eq!((found.low_error, found.high_error), (wavers(low), wavers(high)), "{what}");
    let held = sorted.iter().filter(|draw| **draw == sorted[0]).count();
    assert_eq!(found.held, if held > 1 { held as f64 / count as f64 } else { 0.0 }, "{what}");
    let mean = draws.iter().sum::<f64>() / count as f64;
    let variance = draws.iter().map(|draw| (draw - mean).powi(2)).sum::<f64>() / (count - 1) as f64;
    assert!((found.mean - mean).abs() <= 1e-9 * (mean.abs() + variance.sqrt()), "{what}: {} {mean}", found.mean);
    assert!((found.standard - variance.sqrt()).abs() <= 1e-9 * variance.sqrt() + 1e-12, "{what}");
    assert_eq!((found.draws, found.left_out), (count, 3));
}

fn uniform(seed: u64, count: usize) -> Vec<f64> {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
    (0..count).map(|_| (random.next_u64() >> 11) as f64 / 9_007_199_254_740_992.0).collect()
}

#[test]
fn the_ends_say_what_all_draws_say() {
    for count in [1_000, PILOT - 1, PILOT, PILOT + 1, 10_000, 50_000] {
        for seed in 0..4 {
            let plain = uniform(seed, count);
            let of = |shape: fn(f64) -> f64| plain.iter().map(|draw| shape(*draw)).collect::<Vec<_>>();
            check("even", &plain);
            check(
                "normal in effect",
                &plain
                    .iter()
                    .zip(uniform(seed + 100, count))
                    .map(|(a, b)| (-2.0 * (1.0 - a).ln()).sqrt() * (std::f64::consts::TAU * b).cos())
                    .collect::<Vec<_>>(),
            );
            check("lopsided", &of(|draw| 1.0 / (1.0 - draw)));
            check("lopsided the other way", &of(|draw| -1.0 / (1.0 - draw)));
            check("half held at zero", &of(|draw| (draw - 0.5).max(0.0)));
            check("two per cent held at zero", &of(|draw| (draw - 0.02).max(0.0)));
            check("held at the upper end", &of(|draw| draw.min(0.7)));
            check("a few values", &of(|draw| (draw * 7.0).floor()));
            check("one value", &of(|_| 3.25));
        }
    }
}

#[test]
fn too_few_draws_say_nothing_and_more_may_come() {
    assert_eq!(pilot(100_000), PILOT);
    let draws = uniform(1, 20_000);
    let mut ends = Ends::new(20_000, pilot(20_000));
    ends.extend(&draws[..999]);
    assert_eq!(ends.summary(0), None);
    ends.extend(&draws[999..3_000]);
    assert_eq!(ends.summary(0).unwrap().draws, 3_000);
    ends.extend(&draws[3_000..]);
    let mut at_once = Ends::new(20_000, pilot(20_000));
    at_once.extend(&draws);
    assert_eq!(ends.summary(0), at_once.summary(0));
}
