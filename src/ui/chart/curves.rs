//! Lines of several systems over one input, labelled directly, with the value of each at the present input.

use super::drawing::{Anchor, Drawing, path, place};
use super::scale::{LinearScale, Ticks};
use super::series;
use crate::quantity::format::DecimalMark;

/// One system's line.
#[derive(Debug, Clone, PartialEq)]
pub struct PlottedCurve {
    /// The system's place, which gives letter and mark.
    pub at: usize,
    /// Its name, with its letter.
    pub name: String,
    /// The figure at each input; `None` where there is none.
    pub values: Vec<Option<f64>>,
    /// Whether the system can run at each input; its line is dashed where it cannot.
    pub runs: Vec<bool>,
    /// Its value at the present input, and how that is written.
    pub now: Option<(f64, String)>,
    /// Inputs from which on it cannot run, and how they are written.
    pub edges: Vec<(f64, String)>,
}

/// What is at the axes, units included.
#[derive(Debug, Clone, Copy)]
pub struct Labels<'a> {
    /// The drawing's name.
    pub title: &'a str,
    /// Below.
    pub across: &'a str,
    /// Above, at the left: what goes up.
    pub up: &'a str,
    /// The decimal mark.
    pub mark: DecimalMark,
}

/// The present input, and what it is called.
pub type Present<'a> = (f64, &'a str);

/// Room for the numbers at the left, for the labels above, at the right, and below.
pub(super) const LEFT: f64 = 64.0;
pub(super) const TOP: f64 = 44.0;
pub(super) const RIGHT: f64 = 24.0;
pub(super) const BOTTOM: f64 = 48.0;
/// Height of a line of a legend.
pub(super) const LINE: f64 = 22.0;
/// Room of a letter at a size of 14.
const LETTER: f64 = 7.8;
/// Height of a label.
const HIGH: f64 = 17.0;

/// The frame of a drawing: axes with ticks, grid and labels.
pub(super) fn frame(
    drawing: &mut Drawing,
    (x, across): (LinearScale, Ticks),
    (y, up): (LinearScale, Ticks),
    labels: Labels<'_>,
) {
    let (left, right) = x.range;
    let (bottom, top) = y.range;
    drawing.text((0.0, 16.0), Anchor::Start, 14, labels.up);
    let mut grid = String::new();
    for tick in across.iter().filter(|tick| within(x, *tick)) {
        let at = place(x.place(tick));
        grid.push_str(&format!("M{at} {bottom}V{top}"));
        drawing.text((at, bottom + 18.0), Anchor::Middle, 14, &across.label(tick, labels.mark));
    }
    for tick in up.iter().filter(|tick| within(y, *tick)) {
        let at = place(y.place(tick));
        grid.push_str(&format!("M{left} {at}H{right}"));
        drawing.text((left - 8.0, at + 5.0), Anchor::End, 14, &up.label(tick, labels.mark));
    }
    drawing.path(&grid, 1.0, "stroke-opacity=\"0.15\"");
    drawing.path(&format!("M{left} {top}V{bottom}H{right}"), 1.0, "stroke-opacity=\"0.6\"");
    drawing.text((f64::midpoint(left, right), bottom + 40.0), Anchor::Middle, 14, labels.across);
}

fn within(scale: LinearScale, number: f64) -> bool {
    let (low, high) = (scale.domain.0.min(scale.domain.1), scale.domain.0.max(scale.domain.1));
    let slack = (high - low) * 1e-9;
    (low - slack..=high + slack).contains(&number)
}

/// A rectangle taken by a label: left, top, right, bottom.
type Taken = (f64, f64, f64, f64);

fn overlap(one: Taken, other: Taken) -> bool {
    one.0 < other.2 && other.0 < one.2 && one.1 < other.3 && other.1 < one.3
}

/// The lines over `inputs`; `None` where no system has a value. `below` says what holds below zero, where that is shown.
#[must_use]
pub fn curves(
    (width, height): (f64, f64),
    inputs: &[f64],
    curves: &[PlottedCurve],
    now: Option<Present<'_>>,
    below: Option<&str>,
    labels: Labels<'_>,
) -> Option<Drawing> {
    let (first, last) = (inputs.first().copied()?, inputs.last().copied()?);
    let (right, bottom) = (width - RIGHT, height - BOTTOM);
    let x = LinearScale::new((first, last), (LEFT, right))?;
    let across = Ticks::new(first.min(last), first.max(last), if width < 500.0 { 4 } else { 10 })?;
    let values = curves.iter().flat_map(|curve| curve.values.iter().flatten().copied());
    let (y, up) = LinearScale::around(values, (bottom, TOP), 6)?;
    let mut drawing = Drawing::new(width, height, labels.title);
    let zero = y.place(0.0);
    if let Some(words) = below.filter(|_| zero < bottom - 1.0) {
        drawing.put(&format!(
            "<rect class=\"below\" x=\"{LEFT}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"currentColor\" fill-opacity=\"0.07\"/>",
            place(zero),
            place(right - LEFT),
            place(bottom - zero)
        ));
        if bottom - zero > 24.0 {
            drawing.text((LEFT + 8.0, bottom - 8.0), Anchor::Start, 14, words);
        }
    }
    frame(&mut drawing, (x, across), (y, up), labels);
    if below.is_some() && zero < bottom {
        drawing.path(&format!("M{LEFT} {}H{right}", place(zero)), 1.0, "stroke-opacity=\"0.6\"");
    }
    let points: Vec<Vec<Option<(f64, f64)>>> = curves
        .iter()
        .map(|curve| {
            let point = |(input, value): (&f64, &Option<f64>)| value.map(|value| (x.place(*input), y.place(value)));
            inputs.iter().zip(&curve.values).map(point).collect()
        })
        .collect();
    for (curve, points) in curves.iter().zip(&points) {
        let runs = |step: usize| curve.runs.get(step).copied().unwrap_or(true);
        // A piece belongs to what holds at both of its ends.
        let part = |wanted: bool| {
            let inside = |step: usize| {
                let near = [step.checked_sub(1), Some(step + 1)];
                runs(step) == wanted || (!wanted && near.into_iter().flatten().any(|other| !runs(other)))
            };
            path(points.iter().enumerate().map(|(step, point)| point.filter(|_| inside(step))))
        };
        drawing.path(&part(true), 2.0, "stroke-linejoin=\"round\"");
        drawing.path(&part(false), 1.5, "stroke-dasharray=\"5 4\" stroke-linejoin=\"round\"");
    }
    let mut taken: Vec<Taken> = Vec::new();
    if let Some((now, words)) = now.filter(|(now, _)| within(x, *now)) {
        let at = place(x.place(now));
        drawing.path(&format!("M{at} {bottom}V{}", TOP - 6.0), 2.0, "");
        let wide = words.chars().count() as f64 * LETTER / 2.0;
        drawing.bold((at.clamp(LEFT + wide, right - wide), TOP - 12.0), Anchor::Middle, words);
        at_now(&mut drawing, curves, (at, right), y, &mut taken);
        taken.push((at - 4.0, TOP, at + 4.0, bottom));
    }
    for curve in curves {
        edges(&mut drawing, curve, inputs, (x, y), below.is_some(), &mut taken);
    }
    for (curve, own) in curves.iter().zip(&points) {
        name(&mut drawing, curve, own, &points, (right, bottom), &mut taken);
    }
    Some(drawing)
}

/// Marks and values at the present input; values that would run together are moved apart.
fn at_now(
    drawing: &mut Drawing,
    curves: &[PlottedCurve],
    (at, right): (f64, f64),
    y: LinearScale,
    taken: &mut Vec<Taken>,
) {
    let mut values: Vec<(usize, f64, &str)> = curves
        .iter()
        .filter_map(|curve| curve.now.as_ref().map(|(value, words)| (curve.at, y.place(*value), words.as_str())))
        .collect();
    values.sort_by(|one, other| one.1.total_cmp(&other.1));
    let mut lowest = f64::NEG_INFINITY;
    for (system, height, words) in values {
        series::mark(drawing, system, (at, height));
        let base = (height - 8.0).max(lowest + HIGH);
        lowest = base;
        let wide = words.chars().count() as f64 * LETTER;
        let is_left = at + 12.0 + wide > right;
        let (x, anchor) = if is_left { (at - 12.0, Anchor::End) } else { (at + 12.0, Anchor::Start) };
        drawing.bold((x, base), anchor, words);
        let from = if is_left { x - wide } else { x };
        taken.push((from, base - HIGH, from + wide, base + 4.0));
    }
}

/// Where a system stops being able to run.
fn edges(
    drawing: &mut Drawing,
    curve: &PlottedCurve,
    inputs: &[f64],
    (x, y): (LinearScale, LinearScale),
    with_words: bool,
    taken: &mut Vec<Taken>,
) {
    for (edge, words) in curve.edges.iter().filter(|(edge, _)| within(x, *edge)) {
        let Some(value) = between(inputs, &curve.values, *edge) else { continue };
        let (at, height) = (x.place(*edge), y.place(value));
        drawing.path(&format!("M{} {}v12", place(at), place(height - 6.0)), 2.0, "");
        let wide = words.chars().count() as f64 * LETTER;
        let own = (at - wide - 4.0, height + 4.0, at - 4.0, height + 4.0 + HIGH);
        if with_words && !taken.iter().any(|other| overlap(*other, own)) {
            drawing.bold((at - 4.0, height + HIGH), Anchor::End, words);
            taken.push(own);
        }
    }
}

/// The value of a line between two of its points.
fn between(inputs: &[f64], values: &[Option<f64>], at: f64) -> Option<f64> {
    let place = inputs.windows(2).position(|pair| matches!(pair, [a, b] if (*a..=*b).contains(&at)))?;
    let (a, b) = (*inputs.get(place)?, *inputs.get(place + 1)?);
    let (from, to) = (values.get(place).copied()??, values.get(place + 1).copied()??);
    Some(from + (to - from) * (at - a) / (b - a))
}

/// A line's name beside it, where it lies on nothing else.
fn name(
    drawing: &mut Drawing,
    curve: &PlottedCurve,
    own: &[Option<(f64, f64)>],
    all: &[Vec<Option<(f64, f64)>>],
    (right, bottom): (f64, f64),
    taken: &mut Vec<Taken>,
) {
    let wide = curve.name.chars().count() as f64 * LETTER;
    let mut best: Option<(usize, (f64, f64))> = None;
    for twentieth in [4, 3, 5, 6, 2, 7, 8, 12, 14, 10, 16, 17, 1, 19] {
        let Some((x, y)) = own.get(own.len() * twentieth / 20).copied().flatten() else { continue };
        // Over a line that falls it begins there, over one that rises it ends there.
        let starts = [x + 4.0, x - wide / 2.0, x - wide - 4.0];
        for (from, base) in starts.into_iter().flat_map(|from| [(from, y - 8.0), (from, y + 20.0)]) {
            let area = (from - 4.0, base - HIGH + 3.0, from + wide + 4.0, base + 5.0);
            let outside = area.0 < LEFT || area.1 < TOP || area.2 > right || area.3 > bottom;
            let on = |point: &&(f64, f64)| (area.0..area.2).contains(&point.0) && (area.1..area.3).contains(&point.1);
            let crossed = all.iter().flatten().flatten().filter(on).count();
            let hit = taken.iter().filter(|other| overlap(**other, area)).count();
            let cost = crossed + 20 * hit + if outside { 1_000 } else { 0 };
            if best.is_none_or(|(least, _)| cost < least) {
                best = Some((cost, (from, base)));
            }
        }
    }
    if let Some((_, (from, base))) = best {
        let from = from.clamp(LEFT + 4.0, (right - wide).max(LEFT + 4.0));
        drawing.bold((from, base), Anchor::Start, &curve.name);
        taken.push((from - 4.0, base - HIGH, from + wide + 4.0, base + 5.0));
    }
}
