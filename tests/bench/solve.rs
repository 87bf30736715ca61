//! How long one full solve takes natively, and one reading of a draft before it. Fails above the budget.
//!
//! `cargo bench --bench solve`. The budget is asserted here, which a benchmark library does not do; a
//! median over batches is all the statistic it takes.
#![allow(clippy::print_stdout, clippy::unwrap_used, clippy::panic, missing_docs)]

#[path = "../support/mod.rs"]
mod support;

use haulm::domain::{check, solve, work_out};
use std::hint::black_box;
use std::time::Instant;

/// One full solve, microseconds.
const LIMIT: f64 = 2.0;

fn median_micros(mut run: impl FnMut()) -> f64 {
    const BATCHES: usize = 51;
    const RUNS: u32 = 2_000;
    let mut times: Vec<f64> = (0..BATCHES)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..RUNS {
                run();
            }
            start.elapsed().as_secs_f64() * 1e6 / f64::from(RUNS)
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[BATCHES / 2]
}

fn main() {
    let mut draft = support::plain_recipe();
    draft.liquids = vec![
        support::liquid(1, "12", "66", "1280"),
        support::liquid(2, "0.3", "35", "1200"),
        support::liquid(3, "1", "58", "950"),
        support::liquid(4, "0.5", "40", "1110"),
    ];
    let input = check(&draft).input.unwrap();
    let solved = median_micros(|| {
        black_box(solve(black_box(&input)).unwrap());
    });
    let whole = median_micros(|| {
        black_box(work_out(black_box(&draft)));
    });
    println!("one full solve, four liquids: {solved:.3} µs (limit {LIMIT} µs)");
    println!("draft to outcome, numbers read and checked: {whole:.3} µs");
    assert!(solved <= LIMIT, "one solve takes {solved:.3} µs, more than {LIMIT} µs");
}
