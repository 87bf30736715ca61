//! The drawing of a catch test: everything lies within it, at every width.

use haulm::quantity::format::DecimalMark;
use haulm::ui::chart::catch_plot::{CatchData, CatchMark, CatchPlot, CatchPoint, HEIGHT, catch_plot};
use haulm::ui::chart::panel::LineSegment;

/// The binder pump of the example: settings in %, flows in kg/h, the fourth catch excluded.
fn data() -> CatchData {
    let catch = |(number, (setting, flow)): (usize, (f64, f64))| {
        let mark = if number == 4 { CatchMark::Excluded } else { CatchMark::Used };
        CatchPoint { number, setting, flow, mark }
    };
    let measured = [(20.0, 162.6), (35.0, 279.6), (50.0, 400.8), (50.0, 373.2), (65.0, 518.4), (80.0, 636.6)];
    CatchData {
        catches: (1..).zip(measured).map(catch).collect(),
        line: Some(LineSegment { intercept: 4.0, slope: 7.912, from: 20.0, to: 80.0 }),
        band: [15.0, 32.5, 50.0, 67.5, 85.0].map(|x: f64| (x, 3.8 + ((x - 50.0) / 40.0).powi(2))).to_vec(),
        before: Some(LineSegment { intercept: 4.1, slope: 7.75, from: 20.0, to: 80.0 }),
        set: Some((42.5, 340.0, "42.5 % → 340.0 kg/h".to_owned())),
    }
}

fn drawn(width: f64) -> CatchPlot {
    catch_plot(width, &data(), DecimalMark::Point).unwrap()
}

#[test]
fn both_panels_share_their_settings_and_show_what_is_out_of_line() {
    let plot = drawn(560.0);
    assert_eq!(plot.flow.x, plot.residual.x);
    let labels =
        |ticks: &[haulm::ui::chart::panel::TickMark]| ticks.iter().map(|tick| tick.label.clone()).collect::<Vec<_>>();
    assert_eq!(labels(&plot.residual.up), ["−10", "−5", "0", "+5", "+10"]);
    assert!(labels(&plot.flow.up).contains(&"600".to_owned()));
    let [one, .., excluded, _, last] = &plot.catches[..] else { panic!("{:?}", plot.catches) };
    assert!(one.flow.0 < last.flow.0 && one.flow.1 > last.flow.1, "more flow is further up");
    // 4 % of the setting: 162.6 − (4 + 7.912 · 20) = +0.36 kg/h.
    let above = plot.residual.place((20.0, 162.6 - 4.0 - 7.912 * 20.0));
    assert_eq!(one.residual, Some(above));
    assert_eq!((excluded.mark, excluded.residual), (CatchMark::Excluded, None), "26 kg/h below is beyond the panel");
    // What was tested before is 4.1 − 4 + (7.75 − 7.912) · 20 = −3.1 kg/h at 20 %, and leaves the panel at −10.
    let (path, _) = plot.before.unwrap();
    let from = plot.residual.place((20.0, 0.1 - 0.162 * 20.0));
    assert!(path.starts_with(&format!("M{} {}L", from.0, from.1)), "{path}");
    let down: f64 = path.split(' ').next_back().unwrap().parse().unwrap();
    assert!(down <= plot.residual.y.range.0 + 0.1, "clipped at the foot of the panel: {down}");
}

#[test]
fn texts_lie_within_the_drawing_at_every_width() {
    for width in [300.0, 338.0, 420.0, 560.0, 900.0] {
        let plot = drawn(width);
        let set = plot.set.unwrap();
        let wide = 8.0 * set.label.chars().count() as f64;
        let (from, to) =
            if set.text.anchor == "end" { (set.text.x - wide, set.text.x) } else { (set.text.x, set.text.x + wide) };
        assert!(from >= 0.0 && to <= width, "{width}: {from} to {to}");
        let places = plot
            .catches
            .iter()
            .map(|each| each.text)
            .chain(plot.band.map(|(_, text)| text))
            .chain(plot.before.map(|(_, text)| text));
        for text in places {
            assert!((0.0..=width).contains(&text.x) && (0.0..=HEIGHT).contains(&text.y), "{width}: {text:?}");
        }
        let apart: Vec<f64> = plot.residual.across.windows(2).map(|pair| pair[1].at - pair[0].at).collect();
        assert!(apart.iter().all(|apart| *apart > 30.0), "{width}: {apart:?}");
    }
    assert_eq!(catch_plot(80.0, &data(), DecimalMark::Point), None, "no room");
}

#[test]
fn little_is_known_of_a_test_that_begins() {
    let mut data = data();
    data.catches.truncate(1);
    (data.line, data.before, data.set) = (None, None, None);
    data.band.clear();
    let plot = catch_plot(560.0, &data, DecimalMark::Point).unwrap();
    assert!(plot.line.is_none() && plot.band.is_none() && plot.catches[0].residual.is_none());
    // Two catches fix a line without scatter: their residuals are zero, and the panel has its width all the same.
    data.catches = vec![
        CatchPoint { number: 1, setting: 20.0, flow: 160.0, mark: CatchMark::Used },
        CatchPoint { number: 2, setting: 60.0, flow: 480.0, mark: CatchMark::Suspect },
    ];
    data.line = Some(LineSegment { intercept: 0.0, slope: 8.0, from: 20.0, to: 60.0 });
    let plot = catch_plot(560.0, &data, DecimalMark::Point).unwrap();
    assert!(plot.residual.y.domain.1 > 0.0 && plot.catches.iter().all(|each| each.residual.is_some()));
    data.catches.clear();
    assert_eq!(catch_plot(560.0, &data, DecimalMark::Point), None);
}
