//! How up to six systems are distinguished without colour: a letter, a mark, a dash and a tone each.

use super::drawing::{Drawing, place};

/// The letter of a system by its place.
#[must_use]
pub fn letter(at: usize) -> char {
    char::from(b'A' + (at % 26) as u8)
}

/// The dashes of a system's line, as svg has them; empty for a line without gaps.
#[must_use]
pub const fn dash(at: usize) -> &'static str {
    ["", "9 4", "2 3", "12 3 2 3", "5 2", "1 5"][at % 6]
}

/// How dark a system's area is filled, of 1.
#[must_use]
pub const fn tone(at: usize) -> f64 {
    [0.75, 0.5, 0.3, 0.16, 0.06, 0.4][at % 6]
}

/// The outline of a system's mark around a place, and whether it is filled: circle, square, triangle, diamond, ring, cross.
#[must_use]
pub fn mark_path(at: usize, (x, y): (f64, f64)) -> (String, bool) {
    let (x, y) = (place(x), place(y));
    match at % 6 {
        0 => (format!("M{} {y}a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z", place(x - 5.0)), true),
        1 => (format!("M{} {}h9v9h-9Z", place(x - 4.5), place(y - 4.5)), true),
        2 => (format!("M{x} {}l6 10.5h-12Z", place(y - 6.5)), true),
        3 => (format!("M{x} {}l6 6l-6 6l-6 -6Z", place(y - 6.0)), true),
        4 => (format!("M{} {y}a5 5 0 1 0 10 0a5 5 0 1 0 -10 0Z", place(x - 5.0)), false),
        _ => (format!("M{} {}l9 9m-9 0l9 -9", place(x - 4.5), place(y - 4.5)), false),
    }
}

/// Draws a system's mark around a place.
pub fn mark(drawing: &mut Drawing, at: usize, around: (f64, f64)) {
    let (path, is_filled) = mark_path(at, around);
    let fill = if is_filled { "currentColor" } else { "none" };
    drawing.put(&format!("<path d=\"{path}\" fill=\"{fill}\" stroke=\"currentColor\" stroke-width=\"1.5\"/>"));
}
