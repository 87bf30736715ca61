//! A figure over two inputs: lines of equal value, and where the recipe can be run.

use super::contour::lines;
use super::curves::{BOTTOM, LEFT, LINE, Labels, RIGHT, TOP, frame};
use super::drawing::{Anchor, Drawing, path, place};
use super::ground::{Polygon, areas, strokes};

pub use super::ground::{CellStatus, MapCells};
use super::scale::{LinearScale, Ticks};
use super::text_places::{TextPlaces, half_width};
use std::fmt::Write as _;

/// Names of the two grounds that are not free, and of the recipe's point.
#[derive(Debug, Clone, Copy)]
pub struct Legend<'a> {
    /// What cannot be run.
    pub barred: &'a str,
    /// What is unusual.
    pub unusual: &'a str,
    /// What the recipe's own point is called.
    pub now: &'a str,
}

/// The number at a place between the columns or rows of an axis.
fn between(values: &[f64], at: f64) -> f64 {
    let below = at.floor().max(0.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "floored and not below 0")]
    let left = (below as usize).min(values.len().saturating_sub(1));
    let (a, b) = (values.get(left).copied(), values.get(left + 1).copied());
    match (a, b) {
        (Some(a), Some(b)) => a + (b - a) * (at - below),
        (Some(a), None) => a,
        _ => f64::NAN,
    }
}

/// The name of a region, where its middle is in the units of the axes.
#[derive(Debug, Clone, PartialEq)]
pub struct RegionLabel {
    /// Its middle.
    pub at: (f64, f64),
    /// What holds there.
    pub words: String,
}

/// The map; `None` where no cell has a value.
#[must_use]
pub fn map(
    (width, height): (f64, f64),
    cells: &MapCells,
    regions: &[RegionLabel],
    labels: Labels<'_>,
    legend: Legend<'_>,
) -> Option<Drawing> {
    let ends = |values: &[f64]| Some((values.first().copied()?, values.last().copied()?));
    let (first, last) = ends(&cells.across)?;
    let (low, high) = ends(&cells.up)?;
    let (right, bottom) = (width - RIGHT, height - BOTTOM);
    let x = LinearScale::new((first, last), (LEFT, right))?;
    let y = LinearScale::new((low, high), (bottom, TOP))?;
    let across = Ticks::new(first.min(last), first.max(last), if width < 500.0 { 4 } else { 8 })?;
    let up = Ticks::new(low.min(high), low.max(high), 6)?;
    let mut drawing = Drawing::new(width, height + LINE * 2.0 + 8.0, labels.title);
    let columns = cells.across.len();
    for (ground, step, opacity) in [(CellStatus::Barred, 5.0, 0.5), (CellStatus::Unusual, 10.0, 0.35)] {
        let mut areas = areas(cells, ground);
        areas.iter_mut().flatten().for_each(|(across, up)| (*across, *up) = (x.place(*across), y.place(*up)));
        hatch(&mut drawing, &areas, step, opacity);
    }
    frame(&mut drawing, (x, across), (y, up), labels);
    let mut edges = String::new();
    for [(from_x, from_y), (to_x, to_y)] in &cells.edges {
        let [left, bottom, right, top] =
            [x.place(*from_x), y.place(*from_y), x.place(*to_x), y.place(*to_y)].map(place);
        let _ = write!(edges, "M{left} {bottom}L{right} {top}");
    }
    drawing.path(&edges, 2.5, "");
    let mut places = TextPlaces::new((LEFT, right), (TOP, bottom));
    if let Some((at, above)) = cells.now {
        let (at, above) = (place(x.place(at)), place(y.place(above)));
        if (LEFT..=right).contains(&at) && (TOP..=bottom).contains(&above) {
            cross(&mut drawing, at, above);
            places.keep_off((at, above + 6.0), 12.0);
            let half = half_width(legend.now);
            let inside = at.clamp(LEFT + half, (right - half).max(LEFT + half));
            let beside = [at + 14.0 + half, at - 14.0 - half].map(|middle| (middle, above - 10.0));
            let around = [(inside, above - 14.0), (inside, above + 28.0)];
            if let Some(found) = places.take(legend.now, beside.into_iter().chain(around)) {
                drawing.bold(found, Anchor::Middle, legend.now);
            }
        }
    }
    let found = || cells.values.iter().flatten().copied().filter(|value| value.is_finite());
    let (least, most) = found().fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), value| (a.min(value), b.max(value)));
    if let Some(levels) = Ticks::new(least, most, 7) {
        for level in levels.iter() {
            for line in lines(&cells.values, columns, level) {
                let at = |(column, row): &(f64, f64)| {
                    (x.place(between(&cells.across, *column)), y.place(between(&cells.up, *row)))
                };
                let points: Vec<_> = line.iter().map(at).collect();
                drawing.path(&path(points.iter().copied().map(Some)), 1.5, "");
                if points.len() <= 5 {
                    continue;
                }
                let number = levels.label(level, labels.mark);
                // Near its middle, where nothing else is.
                let along = [4, 5, 3, 6, 2].into_iter().filter_map(|eighth| points.get(points.len() * eighth / 8));
                if let Some(found) = places.take(&number, along.map(|(x, y)| (*x, y + 5.0))) {
                    drawing.bold(found, Anchor::Middle, &number);
                }
            }
        }
    } else if least.is_infinite() {
        return None;
    }
    for RegionLabel { at, words } in regions {
        let half = half_width(words).min((right - LEFT) / 2.0);
        let middle = x.place(at.0).clamp(LEFT + half, right - half);
        let base = y.place(at.1).clamp(TOP + 18.0, bottom - 8.0);
        let around = [0.0, 22.0, -22.0, 44.0, -44.0].map(|by| (middle, base + by));
        let found = places.take(words, around).unwrap_or((middle, base));
        drawing.bold(found, Anchor::Middle, words);
    }
    key(&mut drawing, height + 4.0, legend);
    Some(drawing)
}

fn cross(drawing: &mut Drawing, x: f64, y: f64) {
    drawing.path(&format!("M{} {y}h16M{x} {}v16", x - 8.0, y - 8.0), 3.0, "");
}

/// Rising strokes over some areas.
fn hatch(drawing: &mut Drawing, areas: &[Polygon], step: f64, opacity: f64) {
    drawing.path(&strokes(areas, step), 1.0, &format!("stroke-opacity=\"{opacity}\""));
}

fn key(drawing: &mut Drawing, height: f64, legend: Legend<'_>) {
    for (row, (words, step, opacity)) in [(legend.barred, 5.0, 0.5), (legend.unusual, 10.0, 0.35)].iter().enumerate() {
        let top = height + LINE * row as f64;
        let sample = vec![(8.0, top), (48.0, top), (48.0, top + 14.0), (8.0, top + 14.0)];
        hatch(drawing, &[sample], *step, *opacity);
        drawing.text((58.0, top + 12.0), Anchor::Start, 14, words);
    }
}
