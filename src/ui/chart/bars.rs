//! Bars of one figure, a bar a system, from zero.

use super::drawing::{Anchor, Drawing, place};
use super::scale::LinearScale;
use super::series;

/// One bar.
#[derive(Debug, Clone, PartialEq)]
pub struct Bar {
    /// The system's place, which gives letter, mark and tone.
    pub at: usize,
    /// Its length in the unit shown; `None` where there is no value.
    pub value: Option<f64>,
    /// The value with its unit.
    pub text: String,
}

/// Room for letter and mark.
const NAMES: f64 = 36.0;
/// Least room for the text behind the longest bar.
const TEXT: f64 = 125.0;
/// Room for one letter of it, at a size of 13.
const LETTER: f64 = 7.0;
/// Height of a bar's row.
const ROW: f64 = 24.0;

/// The bars under each other, as wide as `width`, each behind its system's letter and mark.
#[must_use]
pub fn bars(width: f64, title: &str, bars: &[Bar]) -> Drawing {
    let head = 24.0;
    let said: Vec<String> = bars.iter().map(|bar| format!("{} {}", letter(bar), bar.text)).collect();
    let name = format!("{title}: {}", said.join("; "));
    let mut drawing = Drawing::new(width, head + ROW * bars.len() as f64, name);
    drawing.text((0.0, 15.0), Anchor::Start, 13, title);
    let longest = bars.iter().map(|bar| bar.text.chars().count()).max().unwrap_or(0);
    let room = width - NAMES - TEXT.max(longest as f64 * LETTER + 12.0);
    let values = || bars.iter().filter_map(|bar| bar.value).filter(|value| value.is_finite());
    let (low, high) = values().fold((0.0_f64, 0.0_f64), |(low, high), value| (low.min(value), high.max(value)));
    let scale = if high > low { LinearScale::new((low, high), (0.0, room)) } else { None };
    for (row, bar) in bars.iter().enumerate() {
        let top = head + ROW * row as f64;
        let base = top + 16.0;
        series::mark(&mut drawing, bar.at, (NAMES - 10.0, top + 11.0));
        drawing.text((0.0, base), Anchor::Start, 13, &letter(bar));
        let mut end = NAMES;
        if let Some((scale, value)) = scale.zip(bar.value.filter(|value| value.is_finite())) {
            let (zero, at) = (NAMES + scale.place(0.0), NAMES + scale.place(value));
            let (x, long) = (place(zero.min(at)), place((at - zero).abs()));
            end = zero.max(at);
            drawing.put(&format!(
                "<rect x=\"{x}\" y=\"{}\" width=\"{long}\" height=\"16\" fill=\"currentColor\" fill-opacity=\"{}\" \
                 stroke=\"currentColor\" stroke-dasharray=\"{}\"/>",
                top + 3.0,
                series::tone(bar.at),
                series::dash(bar.at)
            ));
        }
        drawing.text((end + 6.0, base), Anchor::Start, 13, &bar.text);
    }
    drawing
}

fn letter(bar: &Bar) -> String {
    series::letter(bar.at).to_string()
}
