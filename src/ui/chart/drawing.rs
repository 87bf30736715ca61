//! A drawing as svg text: the same for the page, where it takes the page's ink, and for a file.
//!
//! Everything is drawn in the one ink of the page (`currentColor`): lines differ by dash, mark and
//! tone, never by colour. Text that a person wrote is escaped.

use html_escape::encode_double_quoted_attribute as escape;
use std::fmt::Write as _;

/// A drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing {
    /// Its width, in pixels of the page.
    pub width: f64,
    /// Its height.
    pub height: f64,
    /// What it shows, in words.
    pub name: String,
    body: String,
}

/// How a text is aligned at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// It begins there.
    Start,
    /// Its middle is there.
    Middle,
    /// It ends there.
    End,
}

impl Anchor {
    const fn name(self) -> &'static str {
        match self {
            Self::Start => "start",
            Self::Middle => "middle",
            Self::End => "end",
        }
    }
}

/// A place with a tenth of a pixel, short.
#[must_use]
pub fn place(number: f64) -> f64 {
    // Adding zero turns a negative zero into one without a sign.
    (number * 10.0).round() / 10.0 + 0.0
}

impl Drawing {
    /// A blank one.
    #[must_use]
    pub fn new(width: f64, height: f64, name: impl Into<String>) -> Self {
        Self { width, height, name: name.into(), body: String::new() }
    }

    /// Puts markup of our own making behind what is there.
    pub fn put(&mut self, markup: &str) {
        self.body.push_str(markup);
    }

    /// A text. `size` in pixels.
    pub fn text(&mut self, (x, y): (f64, f64), anchor: Anchor, size: u8, text: &str) {
        let (x, y, anchor) = (place(x), place(y), anchor.name());
        let _ = write!(
            self.body,
            "<text x=\"{x}\" y=\"{y}\" text-anchor=\"{anchor}\" font-size=\"{size}\" fill=\"currentColor\">{}</text>",
            escape(text)
        );
    }

    /// A bold text of 14 pixels on a ground of the paper's colour, so that it is legible over lines.
    pub fn bold(&mut self, (x, y): (f64, f64), anchor: Anchor, text: &str) {
        let (x, y, anchor) = (place(x), place(y), anchor.name());
        let _ = write!(
            self.body,
            "<text class=\"halo\" x=\"{x}\" y=\"{y}\" text-anchor=\"{anchor}\" font-size=\"14\" font-weight=\"650\" \
             fill=\"currentColor\" stroke=\"#fff\" stroke-width=\"4\" stroke-linejoin=\"round\" \
             paint-order=\"stroke\">{}</text>",
            escape(text)
        );
    }

    /// A path. `more` are further attributes.
    pub fn path(&mut self, path: &str, width: f64, more: &str) {
        let _ = write!(
            self.body,
            "<path d=\"{path}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"{width}\" {more}/>"
        );
    }

    /// For the page: it takes the page's ink and, on a narrow one, less room. A screen reader reads its
    /// name; the numbers are in a table beside it.
    #[must_use]
    pub fn inline(&self) -> String {
        format!(
            "<svg role=\"img\" aria-label=\"{}\" viewBox=\"0 0 {} {}\" width=\"{}\">{}</svg>",
            escape(&self.name),
            self.width,
            self.height,
            self.width,
            self.body
        )
    }

    /// For a file: black on white.
    #[must_use]
    pub fn file(&self) -> String {
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {w} {h}\" width=\"{w}\" height=\"{h}\" \
             color=\"#000\" font-family=\"sans-serif\"><title>{}</title><rect width=\"{w}\" height=\"{h}\" \
             fill=\"#fff\"/>{}</svg>",
            escape(&self.name),
            self.body,
            w = self.width,
            h = self.height
        )
    }
}

/// A path through points; a gap where there is none.
#[must_use]
pub fn path(points: impl Iterator<Item = Option<(f64, f64)>>) -> String {
    let mut path = String::new();
    let mut on = false;
    for point in points {
        if let Some((x, y)) = point {
            let _ = write!(path, "{}{} {}", if on { 'L' } else { 'M' }, place(x), place(y));
        }
        on = point.is_some();
    }
    path
}
