//! How long 100 000 draws over all uncertain inputs take natively, quantiles included. Fails above the budget.
//!
//! `cargo bench --bench monte_carlo`. With `-- --json` it prints inputs, figures and its time for
//! `tests/tool/numpy_compare.py`, which makes the same draws with numpy beside it.
#![allow(clippy::print_stdout, clippy::unwrap_used, clippy::panic, missing_docs)]

#[path = "../support/study.rs"]
mod study;

use haulm::domain::compare::uncertainty::monte_carlo::{MonteCarloRun, USUAL_DRAWS};
use haulm::domain::compare::uncertainty::study::Study;
use std::hint::black_box;
use std::time::Instant;

/// A whole run with its summaries, milliseconds.
const LIMIT: f64 = 100.0;

/// Milliseconds of the draws and of the summaries, each the least of a few runs.
fn times(study: &Study) -> (f64, f64) {
    let mut least = (f64::INFINITY, f64::INFINITY);
    for seed in 0..7 {
        let mut run = MonteCarloRun::new(study.clone(), seed, USUAL_DRAWS);
        let start = Instant::now();
        run.step(USUAL_DRAWS);
        let drawn = start.elapsed().as_secs_f64() * 1e3;
        let start = Instant::now();
        for asked in 0..run.study().asked().len() {
            black_box(run.summary(asked).unwrap());
        }
        let summed = start.elapsed().as_secs_f64() * 1e3;
        assert_eq!(run.progress().left_out, 0);
        least = (least.0.min(drawn), least.1.min(summed));
    }
    least
}

fn main() {
    if std::env::args().any(|argument| argument == "--json") {
        let (drawn, summed) = times(&study::large(1));
        println!("{}", study::json(drawn + summed));
        return;
    }
    let page = study::page();
    let (drawn, summed) = times(&page);
    println!(
        "{USUAL_DRAWS} draws of the page's {} figures from {} sources: {drawn:.1} ms, summaries {summed:.1} ms",
        page.asked().len(),
        page.sources()
    );
    for systems in [1, 2, 6] {
        let (drawn, summed) = times(&study::large(systems));
        println!(
            "{USUAL_DRAWS} draws, 14 inputs and 7 figures a system, {systems} systems: {drawn:.1} ms, summaries {summed:.1} ms"
        );
        if systems == 1 {
            println!("total_ms {:.2}", drawn + summed);
            assert!(drawn + summed <= LIMIT, "{:.1} ms, more than {LIMIT} ms", drawn + summed);
        }
    }
}
