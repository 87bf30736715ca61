//! What a person sees. The words, the geometry of the drawings and what needs no page are plain Rust
//! and compile natively; the rest needs a browser.

pub mod chart;
pub mod history;
pub mod route;
pub mod text;

#[cfg(target_arch = "wasm32")]
mod app;
#[cfg(target_arch = "wasm32")]
pub use app::mount;
