//! How long 100 000 draws over all uncertain inputs take natively, quantiles included. Fails above the budget.
//!
//! `cargo bench --bench monte_carlo`. With `-- --json` it prints inputs, figures and its time for
//! `tests/tool/numpy_compare.py`, which makes the same draws with numpy beside it.
#![allow(clippy::print_stdout, clippy::unwrap_used, clippy::panic, missing_docs)]

#[path = "../support/study.rs"]
mod study;

use haulm::domain::compare::monte_carlo::{Run, USUAL_DRAWS};
use std::hint::black_box;
use std::time::Instant;

/// A whole run with its summaries, milliseconds.
const LIMIT: f64 = 100.0;

/// Milliseconds of the draws and of the summaries, each the least of a few runs.
fn times(systems: usize) -> (f64, f64) {
    let study = study::large(systems);
    let mut least = (f64::INFINITY, f64::INFINITY);
    for seed in 0..7 {
        let mut run = Run::new(study.clone(), seed, USUAL_DRAWS);
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

/// Everything that another program needs to make the same draws, and what came of them here.
fn print_json() {
    use haulm::domain::compare::knob;
    use haulm::domain::compare::spread::Form;
    let case = study::case();
    let recipe: serde_json::Map<_, _> =
        knob::used(&case.input).map(|field| (field.key(), knob::get(&case.input, field).into())).collect();
    let inputs: Vec<_> = study::INPUTS
        .iter()
        .map(|(field, form, share)| {
            let at = knob::get(&case.input, *field).unwrap();
            let rectangular = *form == Form::HalfWidth;
            serde_json::json!({ "field": field.key(), "width": share * at, "rectangular": rectangular })
        })
        .collect();
    let (drawn, summed) = times(1);
    let mut run = Run::new(study::large(1), 1, USUAL_DRAWS);
    run.step(USUAL_DRAWS);
    let figures: Vec<_> = (0..study::OUTPUTS.len())
        .map(|asked| {
            let found = run.summary(asked).unwrap();
            let budget = run.study().budget(asked).unwrap();
            serde_json::json!({
                "figure": study::OUTPUTS[asked].key(), "value": budget.value, "first_order": budget.standard,
                "mean": found.mean, "standard": found.standard, "low": found.low, "high": found.high,
            })
        })
        .collect();
    let heat = case.figure(haulm::domain::Figure::HeatPerWater).unwrap().base;
    let all = serde_json::json!({
        "draws": USUAL_DRAWS, "ms": drawn + summed, "recipe": recipe, "heat_per_water": heat,
        "inputs": inputs, "figures": figures,
    });
    println!("{all}");
}

fn main() {
    if std::env::args().any(|argument| argument == "--json") {
        return print_json();
    }
    for systems in [1, 2, 6] {
        let (drawn, summed) = times(systems);
        println!(
            "{USUAL_DRAWS} draws, 14 inputs and 7 figures a system, {systems} systems: {drawn:.1} ms, summaries {summed:.1} ms"
        );
        if systems == 1 {
            println!("total_ms {:.2}", drawn + summed);
            assert!(drawn + summed <= LIMIT, "{:.1} ms, more than {LIMIT} ms", drawn + summed);
        }
    }
}
