//! How long one full solve takes in WebAssembly, built as it ships. By itself:
//! `cargo test --release --target wasm32-unknown-unknown --test wasm_speed -- --nocapture`
#![cfg(target_arch = "wasm32")]
#![allow(clippy::unwrap_used, missing_docs)]

use haulm::domain::{check, example, solve, work_out};
use std::hint::black_box;
use wasm_bindgen_test::{console_log, wasm_bindgen_test};

/// One full solve in WebAssembly, microseconds: the aim of one solve out of 100 000 in 100 ms.
const LIMIT: f64 = 2.0;

fn median_micros(mut run: impl FnMut()) -> f64 {
    const BATCHES: usize = 11;
    const RUNS: u32 = 20_000;
    let mut times: Vec<f64> = (0..BATCHES)
        .map(|_| {
            let start = js_sys::Date::now();
            for _ in 0..RUNS {
                run();
            }
            (js_sys::Date::now() - start) * 1e3 / f64::from(RUNS)
        })
        .collect();
    times.sort_by(f64::total_cmp);
    times[BATCHES / 2]
}

#[wasm_bindgen_test]
fn one_solve_in_wasm() {
    let draft = example::example();
    let input = check(&draft).input.unwrap();
    let solved = median_micros(|| {
        black_box(solve(black_box(&input)).unwrap());
    });
    let whole = median_micros(|| {
        black_box(work_out(black_box(&draft)));
    });
    console_log!("one full solve in wasm: {solved:.3} µs; draft to outcome: {whole:.3} µs");
    assert!(solved <= LIMIT, "one solve takes {solved:.3} µs");
}
