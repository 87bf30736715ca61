//! Small plots: points, straight lines, and two axes.

use crate::browser::element::{Part, View, svg};
use crate::quantity::format::DecimalMark;
use crate::ui::chart::scale::LinearScale;

/// A point.
pub struct Mark {
    /// To the right.
    pub x: f64,
    /// Upward.
    pub y: f64,
    /// Whether it is pointed at: by shape as well as by colour.
    pub odd: bool,
}

/// A straight line from one place to another, with its class.
pub type Stroke = ((f64, f64), (f64, f64), &'static str);

/// What is plotted.
pub struct Plot {
    /// What a screen reader reads.
    pub label: String,
    /// Name and unit of the axis to the right.
    pub x_name: String,
    /// Name and unit of the upward axis.
    pub y_name: String,
    /// The points.
    pub points: Vec<Mark>,
    /// Lines.
    pub lines: Vec<Stroke>,
    /// Whether the points follow each other.
    pub joined: bool,
}

const WIDTH: f64 = 440.0;
const HEIGHT: f64 = 240.0;

/// The plot; nothing without a point.
pub fn plot(mark: DecimalMark, plot: &Plot) -> Option<View> {
    let ends = |of: fn(&(f64, f64)) -> f64| plot.lines.iter().flat_map(move |line| [of(&line.0), of(&line.1)]);
    let xs = plot.points.iter().map(|point| point.x).chain(ends(|end| end.0));
    let ys = plot.points.iter().map(|point| point.y).chain(ends(|end| end.1));
    let (x, x_ticks) = LinearScale::around(xs, (64.0, WIDTH - 16.0), 6)?;
    let (y, y_ticks) = LinearScale::around(ys, (HEIGHT - 48.0, 28.0), 5)?;
    let text = |at: (f64, f64), anchor: &'static str, words: String| {
        svg("text")
            .set("x", format!("{:.1}", at.0))
            .set("y", format!("{:.1}", at.1))
            .set("text-anchor", anchor)
            .child(words)
            .view()
    };
    let line = |class: &'static str, from: (f64, f64), to: (f64, f64)| {
        let path = format!("M{:.1},{:.1}L{:.1},{:.1}", from.0, from.1, to.0, to.1);
        svg("path").class(class).set("d", path).view()
    };
    let below = HEIGHT - 48.0;
    // Points that follow each other are counted: there is no check 1.5.
    let whole = |tick: &f64| !plot.joined || (tick - tick.round()).abs() < 1e-9;
    let x_axis = x_ticks.iter().filter(whole).map(|tick| {
        let at = x.place(tick);
        View::Many(vec![
            line("grid", (at, 28.0), (at, below)),
            text(
                (at, below + 18.0),
                "middle",
                if plot.joined { format!("{tick:.0}") } else { x_ticks.label(tick, mark) },
            ),
        ])
    });
    let y_axis = y_ticks.iter().map(|tick| {
        let at = y.place(tick);
        View::Many(vec![
            line("grid", (64.0, at), (WIDTH - 16.0, at)),
            text((58.0, at + 4.0), "end", y_ticks.label(tick, mark)),
        ])
    });
    let place = |(a, b): (f64, f64)| (x.place(a), y.place(b));
    let strokes = plot.lines.iter().map(|(from, to, class)| line(class, place(*from), place(*to)));
    let pairs = plot.points.windows(2).filter(|_| plot.joined);
    let joins = pairs.filter_map(|pair| {
        let [from, to] = pair else { return None };
        Some(line("join", place((from.x, from.y)), place((to.x, to.y))))
    });
    let points = plot.points.iter().map(|point| {
        let (a, b) = place((point.x, point.y));
        let outline = if point.odd {
            format!("M{a:.1},{:.1}l8,8l-8,8l-8,-8z", b - 8.0)
        } else {
            format!("M{:.1},{b:.1}a4,4 0 1 1 8,0a4,4 0 1 1 -8,0z", a - 4.0)
        };
        svg("path").class(if point.odd { "odd" } else { "point" }).set("d", outline).view()
    });
    Some(
        svg("svg")
            .class("plot")
            .set("viewBox", "0 0 440 240")
            .set("role", "img")
            .set("aria-label", plot.label.clone())
            .child(x_axis.collect::<View>())
            .child(y_axis.collect::<View>())
            .child(text((WIDTH - 16.0, HEIGHT - 8.0), "end", plot.x_name.clone()))
            .child(text((8.0, 16.0), "start", plot.y_name.clone()))
            .child(joins.collect::<View>())
            .child(strokes.collect::<View>())
            .child(points.collect::<View>())
            .view(),
    )
}
