//! Drawings. The way from data to geometry is pure and tested without a page.

/// Lines of equal value over a grid.
pub mod contour;
pub mod legs;
/// From numbers to places on a drawing, and back; ticks and their labels.
pub mod scale;
pub mod strip_layout;
