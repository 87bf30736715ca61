//! The geometry of charts: pure numbers, tested natively. Drawing them is the page's.

/// Lines of equal value over a grid.
pub mod contour;
/// From numbers to places on a drawing, and back; ticks and their labels.
pub mod scale;
