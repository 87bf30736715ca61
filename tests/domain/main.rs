//! The trade: the balance and its workings, water, solutions, glues, and what ships with the app.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/formula.rs"]
mod formula;
#[path = "../support/mod.rs"]
mod support;

mod balance;
mod cases;
mod chemistry;
mod difference;
mod faces;
mod glue_batch;
mod isocyanate;
mod laboratory;
mod library;
mod mix;
mod plausible;
mod product;
mod solution;
mod total;
mod water;
mod worked_examples;
mod working;
