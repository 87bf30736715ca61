//! What a person sees. The words are plain Rust and compile natively; the rest needs a browser.

/// Workings as MathML.
pub mod math;
pub mod text;

#[cfg(target_arch = "wasm32")]
mod app;
#[cfg(target_arch = "wasm32")]
pub use app::mount;
