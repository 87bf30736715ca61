//! The tabs of the page by their places.

/// The weigh sheet.
pub const SHEET: usize = 0;
/// The series.
pub const SERIES: usize = 1;
/// Boards and test pieces.
pub const BOARDS: usize = 2;
/// Effects.
pub const EFFECTS: usize = 3;
