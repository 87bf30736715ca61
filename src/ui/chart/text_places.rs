//! Bold texts on a drawing that do not lie over each other.

/// About the width of a bold letter of 14 pixels.
const LETTER: f64 = 7.8;
/// How high such a letter reaches above its base line.
const ASCENT: f64 = 12.0;
/// The height of a line of text with the gap above it.
const ROW: f64 = 18.0;

/// The part of a drawing that texts lie in, and where there are some already.
#[derive(Debug)]
pub struct TextPlaces {
    across: (f64, f64),
    down: (f64, f64),
    /// Middle, base line and half of the width of each.
    taken: Vec<(f64, f64, f64)>,
}

/// Half of the width that a text takes.
#[must_use]
pub fn half_width(words: &str) -> f64 {
    words.chars().count() as f64 * LETTER / 2.0
}

impl TextPlaces {
    /// Nothing is taken yet between the left and the right edge, the top and the bottom one.
    #[must_use]
    pub const fn new(across: (f64, f64), down: (f64, f64)) -> Self {
        Self { across, down, taken: Vec::new() }
    }

    /// Keeps texts off something that is no text, as wide and as high as a few letters.
    pub fn keep_off(&mut self, (middle, base): (f64, f64), half: f64) {
        self.taken.push((middle, base, half));
    }

    /// The first of these places, each the middle of the text on its base line, at which it lies wholly inside and over nothing
    /// else; taken from now on.
    pub fn take(&mut self, words: &str, places: impl IntoIterator<Item = (f64, f64)>) -> Option<(f64, f64)> {
        let half = half_width(words);
        let found = places.into_iter().find(|place| self.is_free(*place, half))?;
        self.taken.push((found.0, found.1, half));
        Some(found)
    }

    fn is_free(&self, (middle, base): (f64, f64), half: f64) -> bool {
        let (left, right) = self.across;
        let (top, bottom) = self.down;
        // A text that was moved to the edge may be over it by the last digit.
        let is_inside =
            middle - half >= left - 0.1 && middle + half <= right + 0.1 && base - ASCENT >= top && base <= bottom;
        is_inside && !self.taken.iter().any(|(x, y, other)| (x - middle).abs() < half + other && (y - base).abs() < ROW)
    }
}
