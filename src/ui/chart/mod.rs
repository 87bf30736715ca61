//! Drawings. The way from data to geometry is pure and tested without a page.

/// A catch test: flow over setting, and the residuals below.
pub mod catch_plot;
/// Lines of equal value over a grid.
pub mod contour;
/// A control chart of single values.
pub mod control;
/// Lines over one input.
pub mod curves;
/// Values on one axis, a mark a system.
pub mod dots;
/// A drawing as svg text, for the page and for a file.
pub mod drawing;
#[cfg(target_arch = "wasm32")]
pub mod frame;
/// Areas of a map and the strokes over them.
pub mod ground;
pub mod legs;
/// A figure over two inputs.
pub mod map;
/// Two scales at right angles, with ticks.
pub mod panel;
/// From numbers to places on a drawing, and back; ticks and their labels.
pub mod scale;
/// How systems are distinguished.
pub mod series;
pub mod strip_layout;
/// Texts on a drawing that do not lie over each other.
pub mod text_places;
/// Round moments along an axis of time.
pub mod time_ticks;
