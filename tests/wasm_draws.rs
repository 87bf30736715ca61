//! How long 100 000 draws over all uncertain inputs take in a browser, built as it ships. `tests/tool/numpy_compare.py` runs it and
//! makes the same draws with numpy in the same run; by itself:
//!
//! ```text
//! CHROMEDRIVER=/usr/bin/chromedriver cargo test --release --target wasm32-unknown-unknown --test wasm_draws -- --nocapture
//! ```
#![cfg(target_arch = "wasm32")]
#![allow(clippy::unwrap_used, clippy::panic, missing_docs)]

#[path = "support/study.rs"]
mod study;

use haulm::domain::compare::uncertainty::monte_carlo::{MonteCarloRun, USUAL_DRAWS};
use haulm::domain::compare::uncertainty::study::Study;
use std::hint::black_box;
use wasm_bindgen_test::{console_log, wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// A whole run with its summaries, milliseconds: of 14 inputs and 7 figures, and of all that the page asks for.
const LIMITS: [f64; 2] = [100.0, 400.0];

/// Milliseconds of a few runs with their summaries, in the order in which they were made.
fn times(study: &Study) -> Vec<f64> {
    (0..7)
        .map(|seed| {
            let start = js_sys::Date::now();
            let mut run = MonteCarloRun::new(study.clone(), seed, USUAL_DRAWS);
            run.step(USUAL_DRAWS);
            for asked in 0..run.study().asked().len() {
                black_box(run.summary(asked).unwrap());
            }
            js_sys::Date::now() - start
        })
        .collect()
}

#[wasm_bindgen_test]
fn draws_in_a_browser() {
    let mut times_all = Vec::new();
    for study in [study::large(1), study::page()] {
        let mut times = times(&study);
        let first = times[0];
        times.sort_by(f64::total_cmp);
        console_log!(
            "{USUAL_DRAWS} draws of {} figures from {} sources in the browser: {:.1} ms, the first run {first:.1} ms",
            study.asked().len(),
            study.sources(),
            times[0]
        );
        times_all.push(times);
    }
    console_log!("{}", study::json(times_all[0][0]));
    for (times, limit) in times_all.iter().zip(LIMITS) {
        assert!(times[3] <= limit, "{times:?}, more than {limit} ms");
    }
}
