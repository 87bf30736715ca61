//! Ticks, scales, labels and lines of equal value.

use haulm::quantity::format::DecimalMark;
use haulm::ui::chart::contour::{CellRun, lines, runs};
use haulm::ui::chart::curves::{Labels, PlottedCurve, curves};
use haulm::ui::chart::dots::{DotValues, dot_strip};
use haulm::ui::chart::ground::{areas, strokes};
use haulm::ui::chart::map::{CellStatus, Legend, MapCells, RegionLabel, map};
use haulm::ui::chart::scale::{LinearScale, Ticks};
use haulm::ui::chart::time_ticks::time_ticks;
use proptest::prelude::*;

#[track_caller]
fn check(low: f64, high: f64, about: usize, expected: &[&str]) {
    let ticks = Ticks::new(low, high, about).unwrap();
    let labels: Vec<_> = ticks.iter().map(|tick| ticks.label(tick, DecimalMark::Point)).collect();
    assert_eq!(labels, expected, "{low} to {high}");
}

/// Source: Talbot, Lin and Hanrahan (2010): about 4 ticks from 8.1 to 14.1 are 8, 10, 12 and 14.
#[test]
fn the_published_example() {
    check(8.1, 14.1, 4, &["8", "10", "12", "14"]);
}

#[test]
fn ticks_are_round_and_their_labels_alike() {
    check(0.0, 1.0, 5, &["0", "0.25", "0.50", "0.75", "1.00"]);
    check(0.0, 100.0, 5, &["0", "25", "50", "75", "100"]);
    check(0.0, 100.0, 6, &["0", "20", "40", "60", "80", "100"]);
    check(-0.3, 0.3, 7, &["−0.3", "−0.2", "−0.1", "0", "0.1", "0.2", "0.3"]);
    check(
        12_000.0,
        20_000.0,
        5,
        &["12\u{202f}000", "14\u{202f}000", "16\u{202f}000", "18\u{202f}000", "20\u{202f}000"],
    );
    let ticks = Ticks::new(0.0, 0.5, 6).unwrap();
    assert_eq!(ticks.iter().nth(3).map(|tick| ticks.label(tick, DecimalMark::Comma)).as_deref(), Some("0,3"));
    let small = Ticks::new(0.0, 5e-9, 6).unwrap();
    assert_eq!(small.label(small.at(1), DecimalMark::Point), "1 × 10⁻⁹");
}

#[test]
fn no_ticks_for_no_range() {
    for (low, high) in [(1.0, 1.0), (2.0, 1.0), (f64::NAN, 1.0), (0.0, f64::INFINITY), (f64::MIN, f64::MAX)] {
        assert_eq!(Ticks::new(low, high, 5), None, "{low} to {high}");
    }
    assert_eq!(LinearScale::new((0.0, f64::NAN), (0.0, 1.0)), None);
    assert!(LinearScale::around([], (0.0, 1.0), 5).is_none());
    assert!(LinearScale::around([f64::NAN], (0.0, 1.0), 5).is_none());
}

#[test]
fn one_number_lies_in_the_middle() {
    for number in [0.0, 7.0, -3.0e5] {
        let (scale, ticks) = LinearScale::around([number], (0.0, 100.0), 5).unwrap();
        assert!((scale.place(number) - 50.0).abs() < 30.0, "{scale:?}");
        assert!(ticks.count >= 2);
    }
    let upward = LinearScale::new((0.0, 10.0), (200.0, 0.0)).unwrap();
    assert_eq!(
        (upward.place(0.0), upward.place(10.0), upward.place(2.5), upward.number(150.0)),
        (200.0, 0.0, 150.0, 2.5)
    );
}

proptest! {
    #[test]
    fn ticks_are_few_and_near(low in -1e6..1e6_f64, size in -6..6_i32, width in 1.0..10.0_f64, about in 3..10_usize) {
        let high = low + width * 10.0_f64.powi(size);
        prop_assume!(high - low > 1e-6 * low.abs());
        let ticks = Ticks::new(low, high, about).unwrap();
        prop_assert!((2..=2 * about).contains(&ticks.count), "{ticks:?}");
        let all: Vec<f64> = ticks.iter().collect();
        // Roundness is weighed against nearness, a zero counts as round: in three million random ranges one in five thousand had an
        // end further away than a step, and none further than 1.39.
        prop_assert!((all[0] - low).abs() <= ticks.step * 1.5 && (all[all.len() - 1] - high).abs() <= ticks.step * 1.5, "{all:?}");
        let mut labels: Vec<String> = all.iter().map(|tick| ticks.label(*tick, DecimalMark::Point)).collect();
        labels.dedup();
        prop_assert_eq!(labels.len(), ticks.count);
        let (scale, ticks) = LinearScale::around([low, high], (0.0, 300.0), about).unwrap();
        for number in ticks.iter().chain([low, high]) {
            let place = scale.place(number);
            prop_assert!((-1e-6..=300.000_001).contains(&place));
            prop_assert!((scale.number(place) - number).abs() <= 1e-9 * (high - low) + 1e-12 * number.abs());
        }
    }

    /// Along a plane every line of equal value is straight and runs from border to border.
    #[test]
    fn a_plane_has_straight_lines(a in 0.5..2.0_f64, b in 0.5..2.0_f64, share in 0.1..0.9_f64) {
        let (columns, rows) = (9, 7);
        let value = |column: f64, row: f64| a * column + b * row;
        let values: Vec<_> = (0..rows).flat_map(|row| (0..columns).map(move |column| Some(value(column as f64, row as f64)))).collect();
        let level = share * value(columns as f64 - 1.0, rows as f64 - 1.0);
        let found = lines(&values, columns, level);
        prop_assert_eq!(found.len(), 1);
        for (column, row) in &found[0] {
            prop_assert!((value(*column, *row) - level).abs() < 1e-9);
        }
        let on_border = |(column, row): (f64, f64)| column < 1e-9 || row < 1e-9 || column > 7.999_999 || row > 5.999_999;
        prop_assert!(on_border(found[0][0]) && on_border(*found[0].last().unwrap()));
    }
}

/// Around a hill a line closes, and its points lie on the hill's circle as well as straight pieces can.
#[test]
fn a_hill_has_closed_lines() {
    let size = 41;
    let height = |column: f64, row: f64| -((column - 20.0).powi(2) + (row - 20.0).powi(2));
    let values: Vec<_> = (0..size * size).map(|at| Some(height((at % size) as f64, (at / size) as f64))).collect();
    let found = lines(&values, size, -100.0);
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].first(), found[0].last());
    assert!(found[0].len() > 40);
    for (column, row) in &found[0] {
        let radius = ((column - 20.0).powi(2) + (row - 20.0).powi(2)).sqrt();
        assert!((radius - 10.0).abs() < 0.05, "{radius}");
    }
    assert_eq!(lines(&values, size, 1.0), Vec::<Vec<_>>::new());
}

/// A saddle joins by its mean, and a corner without a value has no line.
#[test]
fn saddles_and_gaps() {
    let saddle = |middle: f64| [Some(1.0), Some(0.0), Some(0.0), Some(middle)];
    // Corners a and c high: with a high mean two lines cut off the low corners, with a low one the high ones.
    let high = lines(&saddle(1.0), 2, 0.4);
    let low = lines(&saddle(1.0), 2, 0.6);
    assert_eq!((high.len(), low.len()), (2, 2));
    let ends = |lines: &[Vec<(f64, f64)>]| {
        let mut ends: Vec<_> = lines.iter().map(|line| format!("{line:?}")).collect();
        ends.sort();
        ends
    };
    assert_eq!(ends(&high), ["[(0.0, 0.6), (0.4, 1.0)]", "[(0.6, 0.0), (1.0, 0.4)]"]);
    assert_eq!(ends(&low), ["[(0.0, 0.4), (0.4, 0.0)]", "[(1.0, 0.6), (0.6, 1.0)]"]);
    assert_eq!(lines(&[Some(1.0), None, Some(0.0), Some(0.0)], 2, 0.5), Vec::<Vec<_>>::new());
    assert_eq!(lines(&[], 0, 0.5), Vec::<Vec<_>>::new());
}

#[test]
fn regions_are_runs() {
    let cells = [true, true, false, true, false, true, true, true];
    let run = |row, column, length| CellRun { row, column, length };
    assert_eq!(runs(&cells, 4, |cell| *cell), [run(0, 0, 2), run(0, 3, 1), run(1, 1, 3)]);
    assert_eq!(runs(&cells, 0, |cell| *cell).len(), 6);
}

const LABELS: Labels<'_> = Labels { title: "A & B <1>", across: "x (m)", up: "y (kg/h)", mark: DecimalMark::Point };

/// What a drawing is for a file: a document of its own, in which nothing is out of the frame.
#[track_caller]
fn whole(drawing: &haulm::ui::chart::drawing::Drawing) {
    let file = drawing.file();
    let read = roxmltree::Document::parse(&file).unwrap();
    assert!(!file.contains("NaN") && !file.contains("inf"), "{file}");
    assert!(read.descendants().any(|node| node.tag_name().name() == "title"));
    for node in read.descendants().filter(|node| node.attribute("x").is_some()) {
        let x: f64 = node.attribute("x").unwrap().parse().unwrap();
        assert!((0.0..=drawing.width).contains(&x), "{x} of {}", drawing.width);
    }
}

#[test]
fn curves_are_drawn_to_scale_and_labelled_directly() {
    let curve = |at: usize, values: [Option<f64>; 3], runs: [bool; 3]| PlottedCurve {
        at,
        name: format!("S<{at}>"),
        values: values.into(),
        runs: runs.into(),
        now: values[1].map(|value| (value, format!("at {value}"))),
        edges: Vec::new(),
    };
    let two = [
        curve(0, [Some(0.0), Some(5.0), Some(10.0)], [true; 3]),
        curve(1, [None, Some(2.0), Some(4.0)], [true, true, false]),
    ];
    let drawing = curves((680.0, 380.0), &[0.0, 1.0, 2.0], &two, Some((1.0, "now 1")), None, LABELS).unwrap();
    whole(&drawing);
    let text = drawing.inline();
    // Left edge 64, right 656; 0 lies at the bottom, 332, and 10 at the top, 44.
    assert!(text.contains("M64 332L360 188L656 44"), "{text}");
    // The second begins where it has a value, and is dashed where it cannot run.
    let dashed =
        text.split("<path").find(|path| path.contains("stroke-dasharray") && path.contains("M360 274.4L656 216.8"));
    assert!(dashed.is_some(), "{text}");
    for words in ["S&lt;0&gt;", "S&lt;1&gt;", "A &amp; B", ">at 5<", ">at 2<", ">now 1<"] {
        assert!(text.contains(words), "{words} in {text}");
    }
    assert!(!text.replace("stroke=\"#fff\"", "").contains('#'), "no colour but the paper's behind a label");
    assert!(curves((680.0, 380.0), &[0.0, 1.0], &[curve(0, [None; 3], [true; 3])], None, None, LABELS).is_none());
    assert!(curves((680.0, 380.0), &[], &[], None, None, LABELS).is_none());
}

#[test]
fn labels_of_lines_that_are_close_do_not_overlap() {
    let line = |at: usize, height: f64| PlottedCurve {
        at,
        name: format!("System {at}"),
        values: vec![Some(height); 41],
        runs: vec![true; 41],
        now: Some((height, format!("{height}"))),
        edges: Vec::new(),
    };
    let inputs: Vec<f64> = (0..41).map(f64::from).collect();
    let all = [line(0, 10.0), line(1, 10.1), line(2, 10.2), line(3, 40.0)];
    let text = curves((900.0, 380.0), &inputs, &all, Some((20.0, "now")), None, LABELS).unwrap().inline();
    let read = roxmltree::Document::parse(&text).unwrap();
    // Numbers at the same place are moved apart by the height of a line.
    let number = |node: &roxmltree::Node<'_, '_>, name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
    let bold: Vec<_> = read.descendants().filter(|node| node.attribute("class") == Some("halo")).collect();
    let values: Vec<f64> =
        bold.iter().filter(|node| node.text().unwrap().starts_with("10")).map(|node| number(node, "y")).collect();
    assert_eq!(values.len(), 3);
    for (at, one) in values.iter().enumerate() {
        for other in &values[at + 1..] {
            assert!((one - other).abs() >= 16.0, "{values:?}");
        }
    }
}

#[test]
fn systems_on_one_axis_between_round_ends() {
    let of = DotValues { values: vec![Some(0.0), Some(639.7), Some(228.7), None], now: None, typical: None };
    let strip = dot_strip(440.0, &of, DecimalMark::Point).unwrap();
    assert_eq!(strip.axis, (64.0, 376.0));
    assert_eq!(strip.ends.0, "0");
    let end: f64 = strip.ends.1.parse().unwrap();
    assert!(end >= 639.7, "{end}");
    let place = |at: usize| strip.marks.iter().find(|(own, _)| *own == at).map(|(_, place)| *place);
    assert_eq!((place(0), place(3)), (Some(64.0), None));
    let expected = 64.0 + 312.0 * 228.7 / end;
    assert!((place(2).unwrap() - expected).abs() < 1e-9);
    // Two at the same place have one label.
    let same = DotValues { values: vec![Some(5.0), Some(5.0), Some(9.0)], now: Some(7.0), typical: Some((6.0, 100.0)) };
    let strip = dot_strip(440.0, &same, DecimalMark::Point).unwrap();
    assert_eq!(strip.labels.iter().map(|(_, words)| words.as_str()).collect::<Vec<_>>(), ["A B", "C"]);
    let (from, to) = strip.typical.unwrap();
    assert!(from > strip.axis.0 && (to - strip.axis.1).abs() < 1e-9, "cut at the end of the axis");
    assert!(strip.now.is_some());
    let one = DotValues { values: vec![Some(5.0), None], ..DotValues::default() };
    assert_eq!(dot_strip(440.0, &one, DecimalMark::Point), None);
}

#[test]
fn a_map_shows_lines_and_where_it_cannot_be_run() {
    let legend = Legend { barred: "barred", unusual: "unusual", now: "now" };
    let values: Vec<Option<f64>> = (0..25).map(|at| Some(f64::from(at % 5))).collect();
    let mut grounds = vec![CellStatus::Free; 25];
    grounds[0] = CellStatus::Barred;
    let axis: Vec<f64> = (0..5).map(f64::from).collect();
    let cells = MapCells {
        across: axis.clone(),
        up: axis,
        values,
        grounds,
        level: [vec![Some(0.3)], vec![None; 24]].concat(),
        upright: [vec![Some(0.7)], vec![None; 24]].concat(),
        edges: vec![[(0.3, 0.0), (0.0, 0.7)]],
        now: Some((2.0, 2.0)),
    };
    let regions = [RegionLabel { at: (3.0, 3.0), words: "Feasible".to_owned() }];
    let drawing = map((680.0, 460.0), &cells, &regions, LABELS, legend).unwrap();
    whole(&drawing);
    // The value is the column, so the line of 2 stands upright in the middle.
    assert!(drawing.inline().contains("M360 412L360 320L360 228L360 136L360 44"), "{}", drawing.inline());
    assert!(drawing.inline().contains(">Feasible<") && drawing.inline().contains(">now<"), "{}", drawing.inline());
    // The hatching ends at the refined edge: a triangle from the corner to 0.3 along and 0.7 up, not half a cell.
    let barred = areas(&cells, CellStatus::Barred);
    assert_eq!(barred, [vec![(0.0, 0.0), (0.3, 0.0), (0.0, 0.7)]]);
    let free: f64 = areas(&cells, CellStatus::Free).iter().map(|area| size(area)).sum();
    assert!((free + size(&barred[0]) - 16.0).abs() < 1e-12, "the two cover the whole");
    let nothing = MapCells { values: vec![None; 25], ..cells };
    assert!(map((680.0, 460.0), &nothing, &regions, LABELS, legend).is_none());
}

#[test]
fn texts_on_a_narrow_map_are_whole_and_apart() {
    let legend = Legend { barred: "barred", unusual: "unusual", now: "4.5 % d.b., 8500 kg/h" };
    let axis: Vec<f64> = (0..41).map(f64::from).collect();
    let value = |at: usize| (at % 41) as f64 * 10.0 + (at / 41) as f64;
    // From the left edge of the map to the right one, and up from the bottom.
    for now in (0..=40).flat_map(|across| [(across, 4), (across, 20), (across, 36)]) {
        let cells = MapCells {
            across: axis.clone(),
            up: axis.clone(),
            values: (0..41 * 41).map(|at| Some(value(at))).collect(),
            grounds: vec![CellStatus::Free; 41 * 41],
            level: vec![None; 41 * 41],
            upright: vec![None; 41 * 41],
            edges: Vec::new(),
            now: Some((f64::from(now.0), f64::from(now.1))),
        };
        let text = map((340.0, 340.0), &cells, &[], LABELS, legend).unwrap().inline();
        let read = roxmltree::Document::parse(&text).unwrap();
        let bold: Vec<(f64, f64, f64)> = read
            .descendants()
            .filter(|node| node.attribute("class") == Some("halo"))
            .map(|node| {
                assert_eq!(node.attribute("text-anchor"), Some("middle"));
                let number = |name: &str| node.attribute(name).unwrap().parse::<f64>().unwrap();
                (number("x"), number("y"), node.text().unwrap().chars().count() as f64 * 7.8 / 2.0)
            })
            .collect();
        assert!(text.contains(">4.5 % d.b., 8500 kg/h<") && bold.len() >= 3, "{now:?}: {text}");
        for (at, (x, y, half)) in bold.iter().enumerate() {
            assert!(x - half >= 64.0 - 0.1 && x + half <= 316.1, "{now:?}: {bold:?}");
            for (other_x, other_y, other) in &bold[at + 1..] {
                assert!((x - other_x).abs() >= half + other - 0.2 || (y - other_y).abs() >= 17.8, "{now:?}: {bold:?}");
            }
        }
    }
}

/// Area of a polygon, by the shoelace formula.
fn size(polygon: &[(f64, f64)]) -> f64 {
    let next = polygon.iter().cycle().skip(1);
    let twice: f64 = polygon.iter().zip(next).map(|(a, b)| a.0 * b.1 - b.0 * a.1).sum();
    twice.abs() / 2.0
}

/// Strokes on x + y = n·5 over the triangle (0, 0), (10, 0), (0, 10): at 5 from one leg to the other, at 10 along the third side at most.
#[test]
fn strokes_end_at_the_sides_of_their_area() {
    let triangle = vec![(0.0, 0.0), (10.0, 0.0), (0.0, 10.0)];
    assert!(strokes(&[triangle], 5.0).starts_with("M0 5L5 0"));
    assert_eq!(strokes(&[], 5.0), "");
}

#[test]
fn moments_are_round_and_no_more_than_fit() {
    let minutes = |all: Vec<u64>| all.into_iter().map(|at| at / 60_000).collect::<Vec<_>>();
    // From 10:50 to 10:58:20, as minutes of the day.
    let (from, to) = (650 * 60_000, 658 * 60_000 + 20_000);
    assert_eq!(minutes(time_ticks(from, to, 10)), (650..=658).collect::<Vec<_>>());
    assert_eq!(minutes(time_ticks(from, to, 5)), [650, 652, 654, 656, 658]);
    assert_eq!(minutes(time_ticks(from + 1, to, 3)), [651, 654, 657]);
    assert_eq!(time_ticks(0, 25_000, 4), [0, 10_000, 20_000]);
    assert_eq!(time_ticks(5, 5, 0), [5, 5]);
    assert_eq!(time_ticks(0, 30 * 86_400_000, 4), [0, 30 * 86_400_000]);
}
