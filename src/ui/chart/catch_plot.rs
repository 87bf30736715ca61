//! The drawing of a catch test: flow over setting with the fitted line, and below it the residuals, where the 95 % band can be seen.

use super::panel::{ChartPanel, LineSegment};
use super::scale::LinearScale;
use crate::quantity::format::DecimalMark;

/// Height of the drawing.
pub const HEIGHT: f64 = 494.0;
/// Room for the numbers at the left, and at the right.
const LEFT: f64 = 52.0;
const RIGHT: f64 = 16.0;
/// Top and bottom of the two panels.
const FLOW: (f64, f64) = (26.0, 238.0);
const RESIDUAL: (f64, f64) = (284.0, 448.0);
/// Width of a letter of a label, on average.
const LETTER: f64 = 8.0;

/// How a catch counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CatchMark {
    /// It counts.
    Used,
    /// It counts, and is far off the line.
    Suspect,
    /// It is excluded.
    Excluded,
}

/// A catch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CatchPoint {
    /// Its number in the grid.
    pub number: usize,
    /// Its setting, in the unit of the axis.
    pub setting: f64,
    /// Its flow, in the unit of the axis.
    pub flow: f64,
    /// How it counts.
    pub mark: CatchMark,
}

/// What is drawn, in the units of the axes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CatchData {
    /// The catches.
    pub catches: Vec<CatchPoint>,
    /// The fitted line.
    pub line: Option<LineSegment>,
    /// Half the width of the 95 % prediction interval over settings, from left to right; empty where the catches are too few.
    pub band: Vec<(f64, f64)>,
    /// The line of the test before.
    pub before: Option<LineSegment>,
    /// The setting for the flow wanted, that flow, and what is written at it.
    pub set: Option<(f64, f64, String)>,
}

/// Where a text is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TextPlace {
    /// To the right.
    pub x: f64,
    /// Downward.
    pub y: f64,
    /// `text-anchor` of svg.
    pub anchor: &'static str,
}

/// A catch as drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DrawnCatch {
    /// Its number in the grid.
    pub number: usize,
    /// How it counts.
    pub mark: CatchMark,
    /// Its place in the panel of flows.
    pub flow: (f64, f64),
    /// Its place in the panel of residuals; `None` where it lies beyond.
    pub residual: Option<(f64, f64)>,
    /// Where its number is written, for one that does not simply count.
    pub text: TextPlace,
}

/// The setting for the flow wanted, as drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct DrawnSetting {
    /// Its place.
    pub at: (f64, f64),
    /// From the axis of flows to it and down to that of settings.
    pub guide: String,
    /// Through the panel of residuals.
    pub guide_below: String,
    /// Where its label is.
    pub text: TextPlace,
    /// Its label.
    pub label: String,
}

/// The drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct CatchPlot {
    /// Its width.
    pub width: f64,
    /// The panel of flows.
    pub flow: ChartPanel,
    /// The panel of residuals.
    pub residual: ChartPanel,
    /// The catches.
    pub catches: Vec<DrawnCatch>,
    /// The fitted line in both panels.
    pub line: Option<[String; 2]>,
    /// The band in the panel of residuals, and where its label is.
    pub band: Option<(String, TextPlace)>,
    /// The line of the test before in the panel of residuals, and where its label is.
    pub before: Option<(String, TextPlace)>,
    /// The setting for the flow wanted.
    pub set: Option<DrawnSetting>,
}

/// Draws a catch test for a width; `None` without a catch.
#[must_use]
pub fn catch_plot(width: f64, data: &CatchData, mark: DecimalMark) -> Option<CatchPlot> {
    let across = (LEFT, width - RIGHT);
    let room = across.1 - across.0;
    if data.catches.is_empty() || room < 120.0 {
        return None;
    }
    let ticks = if room > 400.0 { 9 } else { 5 };
    let settings = data.catches.iter().map(|point| point.setting);
    let settings = settings.chain(data.set.as_ref().map(|set| set.0)).chain(data.band.iter().map(|(x, _)| *x));
    let x = LinearScale::around(settings, across, ticks)?;
    let flows = data.catches.iter().map(|point| point.flow).chain(data.set.as_ref().map(|set| set.1));
    let flows = flows.chain(data.line.iter().map(|line| line.at(line.to))).chain([0.0]);
    let y = LinearScale::around(flows, (FLOW.1, FLOW.0), if room > 400.0 { 7 } else { 4 })?;
    let most = extent(data);
    let below = LinearScale::around([-most, most], (RESIDUAL.1, RESIDUAL.0), 5)?;
    let flow = ChartPanel::new(x, y, mark, false);
    let residual = ChartPanel::new(x, below, mark, true);
    let line = data.line.map(|line| {
        let ends = [line.from, line.to];
        [flow.path(ends.map(|x| (x, line.at(x)))), residual.path(ends.map(|x| (x, 0.0)))]
    });
    Some(CatchPlot {
        width,
        catches: data.catches.iter().map(|point| drawn(point, data, &flow, &residual)).collect(),
        line,
        band: band(data, &residual),
        before: before(data, &residual),
        set: data.set.as_ref().map(|set| setting(set, &flow)),
        flow,
        residual,
    })
}

fn residual_of(data: &CatchData, point: &CatchPoint) -> Option<f64> {
    Some(point.flow - data.line?.at(point.setting))
}

/// How far the panel of residuals reaches to both sides: what counts, the band, and of the test before as much as does not
/// press these together.
fn extent(data: &CatchData) -> f64 {
    let counts = data.catches.iter().filter(|point| point.mark != CatchMark::Excluded);
    let own = counts.filter_map(|point| residual_of(data, point)).map(f64::abs);
    let own = own.chain(data.band.iter().map(|(_, half)| *half)).fold(0.0, f64::max);
    let before = data.before.zip(data.line).map_or(0.0, |(before, line)| {
        [before.from, before.to].map(|x| (before.at(x) - line.at(x)).abs()).into_iter().fold(0.0, f64::max)
    });
    let most = (own * 1.15).max(before.min(own * 2.2));
    // Catches on the line itself: some room about it.
    let level = data.catches.iter().map(|point| point.flow.abs()).fold(0.0, f64::max);
    if most > 1e-9 * level { most } else { (level * 0.01).max(1e-9) }
}

fn drawn(point: &CatchPoint, data: &CatchData, flow: &ChartPanel, residual: &ChartPanel) -> DrawnCatch {
    let at = flow.place((point.setting, point.flow));
    let below = residual_of(data, point).map(|residual| (point.setting, residual));
    // Below the line at the right of the point, or at its left where there is no room.
    let is_far_right = at.0 > flow.x.range.1 - 90.0;
    let (x, anchor) = if is_far_right { (at.0 - 12.0, "end") } else { (at.0 + 12.0, "start") };
    DrawnCatch {
        number: point.number,
        mark: point.mark,
        flow: at,
        residual: below.filter(|point| residual.holds(*point)).map(|point| residual.place(point)),
        text: TextPlace { x, y: (at.1 + 24.0).min(FLOW.1 - 6.0), anchor },
    }
}

fn band(data: &CatchData, residual: &ChartPanel) -> Option<(String, TextPlace)> {
    let (last, half) = *data.band.last()?;
    let upper = data.band.iter().copied();
    let lower = data.band.iter().rev().map(|(x, half)| (*x, -half));
    let (x, y) = residual.place((last, half));
    let text = TextPlace { x, y: (y - 6.0).max(RESIDUAL.0 + 12.0), anchor: "end" };
    Some((format!("{}Z", residual.path(upper.chain(lower))), text))
}

fn before(data: &CatchData, residual: &ChartPanel) -> Option<(String, TextPlace)> {
    let (before, line) = data.before.zip(data.line)?;
    let apart =
        LineSegment { intercept: before.intercept - line.intercept, slope: before.slope - line.slope, ..before };
    let ends = residual.clip(&apart)?;
    let places = ends.map(|end| residual.place(end));
    let [(left, start), (right, end)] = places;
    // Beside the line's end where there is room, else along its beginning on the side away from the new line.
    let text = if right + 8.0 + 20.0 * LETTER < residual.x.range.1 {
        TextPlace { x: right + 8.0, y: end + 2.0, anchor: "start" }
    } else {
        let along = start + (end - start) * (20.0 * LETTER / (right - left).max(1.0)).min(1.0);
        let is_below = ends[0].1 + ends[1].1 < 0.0;
        let y = if is_below { start.max(along) + 16.0 } else { start.min(along) - 8.0 };
        TextPlace { x: left, y, anchor: "start" }
    };
    Some((residual.path(ends), TextPlace { y: text.y.clamp(RESIDUAL.0 + 12.0, RESIDUAL.1 - 4.0), ..text }))
}

fn setting((x, y, label): &(f64, f64, String), flow: &ChartPanel) -> DrawnSetting {
    let at = flow.place((*x, *y));
    let wide = LETTER * label.chars().count() as f64;
    // Left of the line above it, or right of the line below it.
    let text = if at.0 - 14.0 - wide > LEFT {
        TextPlace { x: at.0 - 14.0, y: (at.1 - 10.0).max(FLOW.0 + 12.0), anchor: "end" }
    } else {
        TextPlace {
            x: (at.0 + 10.0).min(flow.x.range.1 - wide).max(LEFT),
            y: (at.1 + 34.0).min(FLOW.1 - 6.0),
            anchor: "start",
        }
    };
    DrawnSetting {
        at,
        guide: format!("M{LEFT} {}H{}V{}", at.1, at.0, FLOW.1),
        guide_below: format!("M{} {}V{}", at.0, RESIDUAL.0, RESIDUAL.1),
        text,
        label: label.clone(),
    }
}
