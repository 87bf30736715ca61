//! How long 100 000 draws over all uncertain inputs take in a browser, built as it ships, beside numpy's time for the same draws:
//!
//! ```text
//! CHROMEDRIVER=/usr/bin/chromedriver cargo test --release --target wasm32-unknown-unknown --test wasm_draws -- --nocapture
//! tests/tool/numpy_compare.py --measured MILLISECONDS
//! ```
#![cfg(target_arch = "wasm32")]
#![allow(clippy::unwrap_used, clippy::panic, missing_docs)]

#[path = "support/study.rs"]
mod study;

use haulm::domain::compare::monte_carlo::{Run, USUAL_DRAWS};
use std::hint::black_box;
use wasm_bindgen_test::{console_log, wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// A whole run with its summaries, milliseconds: the budget.
const LIMIT: f64 = 100.0;

#[wasm_bindgen_test]
fn draws_in_a_browser() {
    let study = study::large(1);
    let mut times: Vec<f64> = (0..7)
        .map(|seed| {
            let mut run = Run::new(study.clone(), seed, USUAL_DRAWS);
            let start = js_sys::Date::now();
            run.step(USUAL_DRAWS);
            for asked in 0..run.study().asked().len() {
                black_box(run.summary(asked).unwrap());
            }
            js_sys::Date::now() - start
        })
        .collect();
    let first = times[0];
    times.sort_by(f64::total_cmp);
    console_log!("{USUAL_DRAWS} draws in the browser: {:.1} ms, the first run {first:.1} ms", times[0]);
    assert!(times[3] <= LIMIT, "{times:?}");
}
