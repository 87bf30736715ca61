//! What the app shows, as far as it needs no page: messages in words, MathML, the geometry of charts.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/mod.rs"]
mod support;
#[macro_use]
#[path = "../support/words.rs"]
mod words;

mod catch_plot;
mod chart;
mod fluent;
mod math;
mod messages;
