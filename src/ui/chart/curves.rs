//! Lines of several systems over one input, with axes, ticks, units and a legend.

use super::drawing::{Anchor, Drawing, path, place};
use super::scale::{LinearScale, Ticks};
use super::series;
use crate::quantity::format::DecimalMark;

/// One system's line.
#[derive(Debug, Clone, PartialEq)]
pub struct PlottedCurve {
    /// The system's place, which gives letter, mark and dash.
    pub at: usize,
    /// Its name.
    pub name: String,
    /// The figure at each input; `None` where there is none.
    pub values: Vec<Option<f64>>,
}

/// What stands at the axes, units included.
#[derive(Debug, Clone, Copy)]
pub struct Labels<'a> {
    /// Above the drawing, and its name.
    pub title: &'a str,
    /// Below.
    pub across: &'a str,
    /// At the left.
    pub up: &'a str,
    /// The decimal mark.
    pub mark: DecimalMark,
}

/// Room for the numbers and the label at the left, above, at the right, and below.
pub(super) const LEFT: f64 = 72.0;
pub(super) const TOP: f64 = 28.0;
pub(super) const RIGHT: f64 = 24.0;
pub(super) const BOTTOM: f64 = 48.0;
/// Height of a line of the legend.
pub(super) const LINE: f64 = 20.0;

/// The frame of a drawing: axes with ticks, grid and labels.
pub(super) fn frame(
    drawing: &mut Drawing,
    (x, across): (LinearScale, Ticks),
    (y, up): (LinearScale, Ticks),
    labels: Labels<'_>,
) {
    let (left, right) = x.range;
    let (bottom, top) = y.range;
    drawing.text((0.0, 16.0), Anchor::Start, 14, labels.title);
    let mut grid = String::new();
    for tick in across.iter().filter(|tick| within(x, *tick)) {
        let at = place(x.place(tick));
        grid.push_str(&format!("M{at} {bottom}V{top}"));
        drawing.text((at, bottom + 16.0), Anchor::Middle, 12, &across.label(tick, labels.mark));
    }
    for tick in up.iter().filter(|tick| within(y, *tick)) {
        let at = place(y.place(tick));
        grid.push_str(&format!("M{left} {at}H{right}"));
        drawing.text((left - 6.0, at + 4.0), Anchor::End, 12, &up.label(tick, labels.mark));
    }
    drawing.path(&grid, 1.0, "stroke-opacity=\"0.2\"");
    drawing.path(&format!("M{left} {top}V{bottom}H{right}"), 1.0, "");
    drawing.text((f64::midpoint(left, right), bottom + 36.0), Anchor::Middle, 13, labels.across);
    drawing.upward((14.0, f64::midpoint(top, bottom)), 13, labels.up);
}

fn within(scale: LinearScale, number: f64) -> bool {
    let (low, high) = (scale.domain.0.min(scale.domain.1), scale.domain.0.max(scale.domain.1));
    let slack = (high - low) * 1e-9;
    (low - slack..=high + slack).contains(&number)
}

/// The lines over `inputs`; `None` where no system has a value. A line across marks `now`, the recipe's own
/// input.
#[must_use]
pub fn curves(
    (width, height): (f64, f64),
    inputs: &[f64],
    curves: &[PlottedCurve],
    now: Option<f64>,
    labels: Labels<'_>,
) -> Option<Drawing> {
    let (first, last) = (inputs.first().copied()?, inputs.last().copied()?);
    let (right, bottom) = (width - RIGHT, height - BOTTOM);
    let x = LinearScale::new((first, last), (LEFT, right))?;
    let across = Ticks::new(first.min(last), first.max(last), if width < 500.0 { 4 } else { 7 })?;
    let values = curves.iter().flat_map(|curve| curve.values.iter().flatten().copied());
    let (y, up) = LinearScale::around(values, (bottom, TOP), 6)?;
    let mut drawing = Drawing::new(width, height + LINE * curves.len() as f64, labels.title);
    frame(&mut drawing, (x, across), (y, up), labels);
    if let Some(now) = now.filter(|now| within(x, *now)) {
        let at = place(x.place(now));
        drawing.path(&format!("M{at} {bottom}V{TOP}"), 1.0, "stroke-dasharray=\"1 3\"");
    }
    // A mark about every sixth of the way, each system's elsewhere, so that none hides another.
    let every = (inputs.len() / 6).max(1);
    for (row, curve) in curves.iter().enumerate() {
        let point = |(input, value): (&f64, &Option<f64>)| value.map(|value| (x.place(*input), y.place(value)));
        let points: Vec<_> = inputs.iter().zip(&curve.values).map(point).collect();
        let dash = format!("stroke-dasharray=\"{}\" stroke-linejoin=\"round\"", series::dash(curve.at));
        drawing.path(&path(points.iter().copied()), 2.0, &dash);
        let shift = every * row / curves.len().max(1);
        for point in points.iter().skip(shift).step_by(every).flatten() {
            series::mark(&mut drawing, curve.at, *point);
        }
        legend(&mut drawing, curve.at, &curve.name, height + LINE * row as f64);
    }
    Some(drawing)
}

/// A line of the legend: how the system is drawn, its letter and its name.
fn legend(drawing: &mut Drawing, at: usize, name: &str, top: f64) {
    let y = top + 6.0;
    drawing.path(&format!("M8 {y}H48"), 2.0, &format!("stroke-dasharray=\"{}\"", series::dash(at)));
    series::mark(drawing, at, (28.0, y));
    drawing.text((58.0, y + 4.0), Anchor::Start, 13, &format!("{} {name}", series::letter(at)));
}
