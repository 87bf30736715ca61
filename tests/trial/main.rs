//! Trial boards: weigh sheets, series, boards made, and what they tell.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

#[path = "../support/formula.rs"]
mod formula;
#[path = "../support/json.rs"]
mod json;
#[path = "../support/mod.rs"]
mod support;
#[macro_use]
#[path = "../support/words.rs"]
mod words;

mod boards;
mod columns;
mod designs;
mod effects;
mod groups;
mod made;
mod messages;
mod order;
mod pieces;
mod progress;
mod record;
mod recovery;
mod sample;
mod series;
mod sheet;
mod slips;
mod weighing;
mod workings;
