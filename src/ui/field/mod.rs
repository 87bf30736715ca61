//! What is in and around the boxes that a person types in.

pub mod number_text;
