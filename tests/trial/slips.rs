//! Slips are asked about in words before anything is corrected by them.

use crate::boards::tested;
use crate::sample::{bare_sheet, recipe, sheet, type_in};
use approx::assert_relative_eq;
use haulm::domain::LiquidId;
use haulm::domain::trial::boards::group::{BoardMade, GroupBy, groups};
use haulm::domain::trial::boards::measured::measure;
use haulm::domain::trial::weigh_sheet::slip::Slip;
use haulm::domain::trial::weigh_sheet::weighing::{Answer, BatchDraft, Weighing, weigh};
use haulm::domain::trial::{BoardDraft, LineId, TrialPlace, TrialProblem, WeighField, WeighSheet};
use haulm::domain::{Entry, What as EntryWhat};
use haulm::quantity::Unit;

const FIBRE: LineId = LineId::Fibre;
const RESIN: LineId = LineId::Liquid(LiquidId(1));
const HARDENER: LineId = LineId::Liquid(LiquidId(2));
const WAX: LineId = LineId::Liquid(LiquidId(3));

fn example() -> WeighSheet {
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::FibreStep, "1");
    type_in(&mut draft, WeighField::LiquidStep, "0.01");
    sheet(&recipe(), &draft)
}

fn rounded(sheet: &WeighSheet, id: LineId) -> f64 {
    sheet.line(id).unwrap().rounded.value * 1e3
}

fn batch(lines: &[(LineId, String)]) -> BatchDraft {
    let mut batch = BatchDraft::default();
    for (id, text) in lines {
        batch.enter(*id, Entry::typed(text.clone(), Unit::Gram));
    }
    batch
}

fn slips(weighing: &Weighing) -> Vec<(TrialPlace, Slip)> {
    let slip = |finding: &haulm::domain::trial::TrialFinding| match finding.what {
        TrialProblem::LikelySlip { slip, .. } => Some((finding.place, slip)),
        _ => None,
    };
    weighing.findings.iter().filter_map(slip).collect()
}

fn to_add(weighing: &Weighing, id: LineId) -> f64 {
    weighing.lines.iter().find(|line| line.id == id).unwrap().to_add.value * 1e3
}

/// "7.28 g planned, 72.8 g entered": the other lines would have grown tenfold.
#[test]
fn ten_times_the_mass_is_asked_about_and_moves_nothing() {
    let sheet = example();
    let planned = rounded(&sheet, HARDENER);
    let mut batch = batch(&[(FIBRE, rounded(&sheet, FIBRE).to_string()), (HARDENER, format!("{:.2}", 10.0 * planned))]);
    let weighing = weigh(&sheet, &batch);
    let [(place, Slip::Factor { meant })] = slips(&weighing)[..] else { panic!("{:?}", weighing.findings) };
    assert_eq!(place, TrialPlace::Line(HARDENER));
    assert_relative_eq!(meant.base * 1e3, planned, max_relative = 1e-6);
    assert_relative_eq!(weighing.scale.value, 1.0, max_relative = 1e-12);
    assert!(to_add(&weighing, FIBRE).abs() < 1e-12);
    // Confirmed, it counts.
    batch.set_answer(HARDENER, Answer::Correct);
    let weighing = weigh(&sheet, &batch);
    assert!(slips(&weighing).is_empty() && weighing.scale.value > 9.9);
    // Entered anew, it is asked about again.
    batch.enter(HARDENER, Entry::typed("0.5", Unit::Gram));
    assert_eq!(slips(&weigh(&sheet, &batch)).len(), 1);
}

#[test]
fn kilograms_for_grams_and_what_no_slip_explains() {
    let sheet = example();
    let kilograms = format!("{}", rounded(&sheet, FIBRE) / 1e3);
    let weighing = weigh(&sheet, &batch(&[(FIBRE, kilograms)]));
    assert!(matches!(slips(&weighing)[..], [(TrialPlace::Line(FIBRE), Slip::Factor { .. })]));
    let weighing = weigh(&sheet, &batch(&[(RESIN, format!("{}", 4.2 * rounded(&sheet, RESIN)))]));
    assert!(matches!(slips(&weighing)[..], [(TrialPlace::Line(RESIN), Slip::FarOff)]));
}

#[test]
fn two_rows_that_fit_each_other_are_asked_about() {
    let sheet = example();
    let lines = [(HARDENER, rounded(&sheet, WAX).to_string()), (WAX, rounded(&sheet, HARDENER).to_string())];
    let weighing = weigh(&sheet, &batch(&lines));
    assert_eq!(
        slips(&weighing),
        [
            (TrialPlace::Line(HARDENER), Slip::Swapped { with: WAX }),
            (TrialPlace::Line(WAX), Slip::Swapped { with: HARDENER }),
        ]
    );
}

#[test]
fn planned_masses_entered_exactly_leave_nothing_to_add() {
    let sheet = example();
    let lines: Vec<(LineId, String)> =
        sheet.lines.iter().map(|line| (line.id, format!("{:.2}", rounded(&sheet, line.id)))).collect();
    let weighing = weigh(&sheet, &batch(&lines));
    assert!(weighing.findings.is_empty(), "{:?}", weighing.findings);
    assert!(weighing.lines.iter().all(|line| line.to_add.value == 0.0));
    assert!((weighing.scale.value - 1.0).abs() < 1e-12);
}

/// A drop too much is within the balance's step; half a per cent is within a tolerance of 1 %.
#[test]
fn an_overshoot_within_the_tolerance_asks_for_nothing() {
    let quiet = |sheet: &WeighSheet, excess: f64| {
        let fibre = (FIBRE, rounded(sheet, FIBRE).to_string());
        let weighing = weigh(sheet, &batch(&[fibre, (RESIN, format!("{:.4}", rounded(sheet, RESIN) + excess))]));
        (weighing.scale.value - 1.0).abs() < 1e-12
            && to_add(&weighing, FIBRE).abs() < 1e-12
            && weighing.findings.is_empty()
    };
    let sheet = example();
    assert!(quiet(&sheet, 0.01) && !quiet(&sheet, 3.0));
    let mut draft = bare_sheet();
    type_in(&mut draft, WeighField::Tolerance, "1");
    let tolerant = crate::sample::sheet(&recipe(), &draft);
    assert!(
        quiet(&tolerant, 0.009 * rounded(&tolerant, RESIN)) && !quiet(&tolerant, 0.011 * rounded(&tolerant, RESIN))
    );
}

/// 10 % too much resin: either everything grows by 10 %, or the dose of 12 % is accepted as 13.2 %.
#[test]
fn an_overshot_dose_can_be_accepted() {
    let sheet = example();
    let resin = format!("{}", 1.1 * sheet.line(RESIN).unwrap().mass.value * 1e3);
    let mut batch = batch(&[(FIBRE, rounded(&sheet, FIBRE).to_string()), (RESIN, resin)]);
    let weighing = weigh(&sheet, &batch);
    let said = weighing.findings.iter().find_map(|finding| match finding.what {
        TrialProblem::WeighedOver { scale, accepted } => Some((scale.base, accepted.unwrap().base)),
        _ => None,
    });
    let (scale, accepted) = said.unwrap();
    assert_relative_eq!(scale, 1.1, max_relative = 1e-9);
    assert_relative_eq!(accepted, 0.132, max_relative = 1e-3);
    assert!(to_add(&weighing, FIBRE) > 150.0);
    batch.set_answer(RESIN, Answer::Accept);
    let weighing = weigh(&sheet, &batch);
    assert!(to_add(&weighing, FIBRE).abs() < 1e-12 && to_add(&weighing, RESIN).abs() < 1e-12);
    assert!(weighing.findings.is_empty());
}

#[test]
fn a_sum_is_read_and_two_cells_never_are_one_number() {
    let sheet = example();
    let weighed = |text: &str| {
        let weighing = weigh(&sheet, &batch(&[(FIBRE, text.to_owned())]));
        let fibre = weighing.lines.iter().find(|line| line.id == FIBRE).unwrap().weighed.map(|mass| mass.value * 1e3);
        (
            fibre,
            weighing
                .findings
                .iter()
                .any(|finding| matches!(finding.what, TrialProblem::Entry(EntryWhat::Unreadable(_)))),
        )
    };
    for (text, sum) in [("961+21", 982.0), (" 961 + 21 + 3,5", 985.5), ("+961", 961.0), ("1 kg + 21", 1_021.0)] {
        let (mass, refused) = weighed(text);
        assert_relative_eq!(mass.unwrap(), sum, max_relative = 1e-12);
        assert!(!refused);
    }
    for text in ["112\n108", "112\t108", "112\r\n108", "961+x"] {
        assert_eq!(weighed(text), (None, true), "{text:?}");
    }
    assert!(weigh(&sheet, &batch(&[(FIBRE, "961+".to_owned())])).lines[0].weighed.is_none());
}

#[test]
fn a_pasted_column_fills_the_lines() {
    let sheet = example();
    let order: Vec<LineId> = sheet.lines.iter().map(|line| line.id).collect();
    let mut batch = BatchDraft::default();
    assert!(!batch.paste(&order, FIBRE, "112"));
    assert!(batch.paste(&order, RESIN, "112\r\n10,8\n"));
    assert_eq!(
        (batch.entry(RESIN).unwrap().text.as_str(), batch.entry(HARDENER).unwrap().text.as_str()),
        ("112", "10,8")
    );
    assert!(batch.entry(FIBRE).is_none() && batch.entry(WAX).is_none());
    // More cells than lines are left over.
    assert!(batch.paste(&order, *order.last().unwrap(), "1\t2\t3"));
}

fn asked(edit: impl FnOnce(&mut BoardDraft)) -> Vec<TrialProblem> {
    let mut draft = tested();
    edit(&mut draft);
    measure(&draft).findings.into_iter().map(|finding| finding.what).collect()
}

/// By hand: 560 N over 320 mm is 21 N/mm²; 0.56 typed for kN is 0.021. 1 375 N on 50 × 50 mm is 0.55 N/mm².
#[test]
fn kilonewtons_centimetres_and_swapped_thicknesses() {
    assert!(asked(|_| {}).is_empty());
    let kilonewton = |whats: &[TrialProblem], newton: f64| {
        whats
            .iter()
            .any(|what| matches!(what, TrialProblem::LoadInKilonewton { meant } if (meant.base - newton).abs() < 1e-9))
    };
    assert!(kilonewton(&asked(|board| board.bending[0].load.text = "0.56".to_owned()), 560.0));
    assert!(kilonewton(&asked(|board| board.bond[0].load.text = "1.375".to_owned()), 1_375.0));
    let span = asked(|board| board.bending[0].span.text = "32".to_owned());
    assert!(
        matches!(span[..], [TrialProblem::SpanInCentimetre { meant }] if (meant.base - 0.32).abs() < 1e-12),
        "{span:?}"
    );
    let swelling = asked(|board| board.swelling[0].after.text = "15.2".to_owned());
    assert_eq!(swelling, [TrialProblem::NegativeSwelling]);
}

#[test]
fn a_density_that_no_board_has_corrects_nothing() {
    for (mass, ask) in [("2200", false), ("220", true), ("22000", true)] {
        let mut draft = tested();
        draft.pieces.clear();
        draft.mass.text = mass.to_owned();
        let measured = measure(&draft);
        let asked =
            measured.findings.iter().any(|finding| matches!(finding.what, TrialProblem::UnlikelyDensity { .. }));
        assert_eq!((asked, measured.board.doubtful), (ask, ask), "{mass}");
        let made = BoardMade { board: measured.board, run: None, sheet: Some(example()) };
        assert_eq!(groups(&[made], GroupBy::Run)[0].density.is_none(), ask);
    }
}

/// Source: EN 310 (from memory): the span is 20 times the thickness, at least 100 and at most 1 000 mm.
#[test]
fn the_span_is_compared_with_the_standard() {
    let span = |thickness: &str, span: &str| {
        asked(|board| {
            board.bending[0].thickness.text = thickness.to_owned();
            board.bending[0].span.text = span.to_owned();
        })
        .into_iter()
        .find_map(|what| match what {
            TrialProblem::SpanOffStandard { required } => Some((required.base * 1e3).round()),
            _ => None,
        })
    };
    assert_eq!(span("16", "320"), None);
    assert_eq!(span("16.3", "320"), None);
    assert_eq!(span("16", "250"), Some(320.0));
    assert_eq!(span("3", "100"), None);
    assert_eq!(span("3", "60"), Some(100.0));
    assert_eq!(span("60", "1200"), Some(1_000.0));
}
