//! What a person sees. The words, the geometry of the drawings and what needs no page are plain Rust
//! and compile natively; the rest needs a browser.

/// Drawings to scale.
pub mod chart;
/// Boxes to type and choose in.
pub mod field;
/// Steps that can be taken back.
pub mod history;
/// Workings as MathML.
pub mod math;
/// The pages by their hash.
pub mod route;
/// Tables to take away, with their words.
pub mod table;
/// All words.
pub mod text;

#[cfg(target_arch = "wasm32")]
mod app;
/// The parts that pages are made of.
#[cfg(target_arch = "wasm32")]
pub mod components;
#[cfg(target_arch = "wasm32")]
mod frame;
#[cfg(target_arch = "wasm32")]
mod page;
#[cfg(target_arch = "wasm32")]
mod paper;
#[cfg(target_arch = "wasm32")]
mod part;
#[cfg(target_arch = "wasm32")]
mod persistence;
#[cfg(target_arch = "wasm32")]
mod state;
#[cfg(target_arch = "wasm32")]
pub use app::mount;
