//! Boxes that a person types or chooses in.

#[cfg(target_arch = "wasm32")]
pub mod choice;
#[cfg(target_arch = "wasm32")]
pub mod loose;
#[cfg(target_arch = "wasm32")]
pub mod number;
pub mod number_text;
#[cfg(target_arch = "wasm32")]
pub mod text;
