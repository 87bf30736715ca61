//! A control chart of single values: the points in their order, the tolerance as a band, mean and limits as lines that are labelled
//! where they end.

use super::scale::{LinearScale, Ticks};
use crate::statistics::control_chart::ControlChart;

/// Room on the left for the numbers of the axis, and below it for the times.
const LEFT: f64 = 44.0;
const BELOW: f64 = 30.0;
/// Room on the right for the labels of the lines.
const RIGHT: f64 = 150.0;
/// Room above.
const ABOVE: f64 = 10.0;
/// How near two labels may be, upward, and two times, sideways.
const LINE: f64 = 18.0;
const TIME: f64 = 110.0;
/// Under this width the labels of the lines are inside the chart.
const NARROW: f64 = 480.0;

/// Where everything of the chart is.
#[derive(Debug, Clone, PartialEq)]
pub struct ControlLayout {
    /// From left to right, where values are.
    pub across: (f64, f64),
    /// From top to bottom.
    pub height: f64,
    /// Upward axis: place and number.
    pub ticks: Vec<(f64, f64)>,
    /// The ticks, for their labels.
    pub scale: Ticks,
    /// Top and height of the tolerance.
    pub band: (f64, f64),
    /// Mean, lower and upper limit.
    pub lines: [f64; 3],
    /// Where the labels of mean, lower and upper limit are; the line's place where that is free.
    pub labels: [f64; 3],
    /// Whether the labels have room beside the chart.
    pub labels_beside: bool,
    /// The points.
    pub points: Vec<(f64, f64)>,
    /// The points that have their time below them.
    pub times: Vec<usize>,
}

/// The layout for a drawing of this size; `None` where there is no value. Values, tolerance and limits are in the unit shown.
#[must_use]
pub fn control_layout(
    (width, height): (f64, f64),
    values: &[f64],
    chart: &ControlChart,
    tolerance: f64,
) -> Option<ControlLayout> {
    let labels_beside = width >= NARROW;
    let across = (LEFT, (width - if labels_beside { RIGHT } else { 12.0 }).max(LEFT + 40.0));
    let bottom = height - BELOW;
    let lines = [chart.mean, chart.low, chart.high];
    let all = values.iter().copied().chain(lines).chain([tolerance, -tolerance]);
    let (up, scale) = LinearScale::around(all, (bottom, ABOVE), 5)?;
    // A point lies half a step from either end.
    let step = (across.1 - across.0) / values.len() as f64;
    let place = |at: usize| across.0 + step * (at as f64 + 0.5);
    let points: Vec<(f64, f64)> = values.iter().enumerate().map(|(at, value)| (place(at), up.place(*value))).collect();
    let mut times: Vec<usize> = Vec::new();
    for at in (0..points.len()).rev() {
        let is_free = times.last().is_none_or(|later| place(*later) - place(at) >= TIME);
        if is_free {
            times.push(at);
        }
    }
    let lines = lines.map(|line| up.place(line));
    let [mean, low, high] = lines;
    let labels = [mean, low.max(mean + LINE), high.min(mean - LINE)];
    Some(ControlLayout {
        across,
        height,
        ticks: scale.iter().map(|tick| (up.place(tick), tick)).collect(),
        scale,
        band: (up.place(tolerance), up.place(-tolerance) - up.place(tolerance)),
        lines,
        labels,
        labels_beside,
        points,
        times,
    })
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::statistics::control_chart::control_chart;

    fn layout(width: f64, values: &[f64]) -> ControlLayout {
        control_layout((width, 236.0), values, &control_chart(values).unwrap(), 3.0).unwrap()
    }

    #[test]
    fn everything_is_inside_the_drawing() {
        let values = [0.1, -0.4, 0.3, 0.2, -11.0, 0.0, 0.4];
        for width in [300.0, 700.0] {
            let found = layout(width, &values);
            let inside = |y: f64| (0.0..=236.0).contains(&y);
            assert!(found.points.iter().all(|(x, y)| (found.across.0..=found.across.1).contains(x) && inside(*y)));
            assert!(found.lines.iter().all(|y| inside(*y)) && inside(found.band.0));
            // Upward is less, and the lowest value is the lowest point.
            assert!(found.lines[2] < found.lines[0] && found.lines[0] < found.lines[1]);
            let lowest = found.points.iter().map(|(_, y)| *y).fold(0.0, f64::max);
            assert_eq!(found.points[4].1, lowest);
        }
    }

    #[test]
    fn labels_and_times_do_not_run_together() {
        let values: Vec<f64> = (0..40).map(|at| f64::from(at % 3) * 0.01).collect();
        let found = layout(700.0, &values);
        let [mean, low, high] = found.labels;
        assert!(low - mean >= LINE && mean - high >= LINE);
        assert!(found.times.windows(2).all(|pair| found.points[pair[0]].0 - found.points[pair[1]].0 >= TIME));
        assert_eq!(found.times[0], 39, "the last one has its time");
        assert!(found.labels_beside && !layout(300.0, &values).labels_beside);
    }
}
