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

/// Draws a system's mark around a place: circle, square, triangle, diamond, ring, cross.
pub fn mark(drawing: &mut Drawing, at: usize, (x, y): (f64, f64)) {
    let (x, y) = (place(x), place(y));
    let (path, fill) = match at % 6 {
        0 => (format!("M{} {y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0Z", x - 4.0), true),
        1 => (format!("M{} {}h8v8h-8Z", x - 4.0, y - 4.0), true),
        2 => (format!("M{x} {}l5 9h-10Z", y - 5.0), true),
        3 => (format!("M{x} {}l5 5l-5 5l-5 -5Z", y - 5.0), true),
        4 => (format!("M{} {y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0Z", x - 4.0), false),
        _ => (format!("M{} {}l8 8m-8 0l8 -8", x - 4.0, y - 4.0), false),
    };
    let fill = if fill { "currentColor" } else { "none" };
    drawing.put(&format!("<path d=\"{path}\" fill=\"{fill}\" stroke=\"currentColor\" stroke-width=\"1.5\"/>"));
}
