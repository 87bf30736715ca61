//! Boards made: the standards' formulas, statistics over boards, and what is said against the target.

use crate::sample::{bare_sheet, recipe, sheet};
use approx::assert_relative_eq;
use haulm::domain::trial::boards::density::{DensityTarget, density_target, off_target};
use haulm::domain::trial::boards::field::{
    BendingDraft, BendingField, BoardField, BondDraft, BondField, PieceDraft, PieceField, SwellingDraft, SwellingField,
};
use haulm::domain::trial::boards::group::results;
use haulm::domain::trial::boards::measured::{MeasuredBoard, measure};
use haulm::domain::trial::boards::requirement_set::RequirementSet;
use haulm::domain::trial::boards::target::{RequirementDraft, judge, profile, uneven};
use haulm::domain::trial::{BoardDraft, BoardId, Property, TrialPlace, TrialProblem};
use haulm::domain::{BoardKind, Entry, What as EntryWhat};
use haulm::quantity::Unit;
use haulm::statistics::sample::SampleSummary;
use proptest::prelude::*;

pub fn piece(mass: &str, thickness: &str, dry: &str) -> PieceDraft {
    let mut piece = PieceDraft::default();
    for (field, text) in [
        (PieceField::Mass, mass),
        (PieceField::Length, "50"),
        (PieceField::Width, "50"),
        (PieceField::Thickness, thickness),
        (PieceField::Dry, dry),
    ] {
        piece.entry_mut(field).text = text.to_owned();
    }
    piece
}

/// A board with one of each test.
pub fn tested() -> BoardDraft {
    let mut board = BoardDraft::blank(BoardId(1));
    for (field, text) in [
        (BoardField::Mass, "2200"),
        (BoardField::Length, "450"),
        (BoardField::Width, "450"),
        (BoardField::Thickness(0), "15.9"),
        (BoardField::Thickness(1), "16.1"),
        (BoardField::Thickness(3), "16.0"),
    ] {
        board.entry_mut(field).unwrap().text = text.to_owned();
    }
    board.pieces = vec![piece("28", "16", "26.2")];
    let mut bending = BendingDraft::default();
    for (field, text) in [
        (BendingField::Span, "320"),
        (BendingField::Width, "50"),
        (BendingField::Thickness, "16"),
        (BendingField::Load, "560"),
        (BendingField::Slope, "75"),
    ] {
        bending.entry_mut(field).text = text.to_owned();
    }
    board.bending = vec![bending];
    let mut bond = BondDraft::default();
    for (field, text) in [(BondField::Length, "50"), (BondField::Width, "50"), (BondField::Load, "1375")] {
        bond.entry_mut(field).text = text.to_owned();
    }
    board.bond = vec![bond];
    let mut swelling = SwellingDraft::default();
    for (field, text) in [(SwellingField::Before, "16"), (SwellingField::After, "17.92")] {
        swelling.entry_mut(field).text = text.to_owned();
    }
    board.swelling = vec![swelling];
    board
}

fn of_density(density: f64, moisture: &str) -> MeasuredBoard {
    let mut draft = BoardDraft::blank(BoardId(1));
    draft.pieces = vec![piece(&format!("{}", density * 0.05 * 0.05 * 0.016 * 1_000.0), "16", "")];
    draft.moisture.text = moisture.to_owned();
    measure(&draft).board
}

pub fn target() -> DensityTarget {
    density_target(&sheet(&recipe(), &bare_sheet()), &[of_density(665.0, "7")]).unwrap()
}

fn mean(board: &MeasuredBoard, property: Property, unit: Unit) -> f64 {
    unit.from_base(board.mean(property).unwrap())
}

/// By hand from the formulas of EN 323, EN 322, EN 310, EN 319 and EN 317.
#[test]
fn formulas_of_the_standards() {
    let measured = measure(&tested());
    assert!(measured.findings.is_empty(), "{:?}", measured.findings);
    let board = measured.board;
    let check = |property, unit, expected: f64| {
        assert_relative_eq!(mean(&board, property, unit), expected, max_relative = 1e-12);
    };
    check(Property::Density, Unit::KilogramPerCubicMetre, 28e6 / (50.0 * 50.0 * 16.0));
    check(Property::Moisture, Unit::PercentDryBasis, 100.0 * 1.8 / 26.2);
    check(Property::OvenDryDensity, Unit::KilogramPerCubicMetre, 26.2e6 / (50.0 * 50.0 * 16.0));
    check(Property::Thickness, Unit::Millimetre, 16.0);
    check(Property::BendingStrength, Unit::NewtonPerSquareMillimetre, 3.0 * 560.0 * 320.0 / (2.0 * 50.0 * 256.0));
    let modulus = 320.0_f64.powi(3) * 75.0 / (4.0 * 50.0 * 16.0_f64.powi(3));
    check(Property::BendingModulus, Unit::NewtonPerSquareMillimetre, modulus);
    check(Property::InternalBond, Unit::NewtonPerSquareMillimetre, 0.55);
    check(Property::Swelling, Unit::Percent, 12.0);
    let whole = board.whole.unwrap().density().value;
    assert_relative_eq!(whole, 2.2 / (0.45 * 0.45 * 0.016), max_relative = 1e-12);
}

/// By hand: green 136 g, oven-dry 100 g is 36 % on the dry basis.
#[test]
fn moisture_on_the_dry_basis() {
    let mut draft = BoardDraft::blank(BoardId(1));
    draft.pieces = vec![piece("136", "16", "100")];
    assert_relative_eq!(mean(&measure(&draft).board, Property::Moisture, Unit::PercentDryBasis), 36.0);
}

/// Steel in bending: a bar of 10 × 5 mm at 210 kN/mm² over 200 mm bends by F·l³/(48·E·I) in the middle, with
/// I = b·t³/12; the slope put back in gives the modulus.
#[test]
fn the_modulus_of_a_known_beam() {
    let (b, t, l, e) = (10.0_f64, 5.0_f64, 200.0_f64, 210_000.0_f64);
    let slope = 48.0 * e * (b * t.powi(3) / 12.0) / l.powi(3);
    let mut draft = tested();
    for (field, value) in
        [(BendingField::Span, l), (BendingField::Width, b), (BendingField::Thickness, t), (BendingField::Slope, slope)]
    {
        draft.bending[0].entry_mut(field).text = format!("{value}");
    }
    let made = mean(&measure(&draft).board, Property::BendingModulus, Unit::NewtonPerSquareMillimetre);
    assert_relative_eq!(made, e, max_relative = 1e-9);
}

#[test]
fn a_blank_piece_is_passed_over_and_a_half_one_is_asked_about() {
    let mut draft = tested();
    draft.pieces.push(PieceDraft::default());
    assert!(measure(&draft).findings.is_empty());
    draft.pieces[1].mass.text = "28".to_owned();
    let measured = measure(&draft);
    assert_eq!(measured.board.pieces.len(), 1);
    let missing: Vec<_> = measured
        .findings
        .iter()
        .filter(|finding| finding.what == TrialProblem::Entry(EntryWhat::Missing))
        .map(|finding| finding.place)
        .collect();
    let at = |field| TrialPlace::Board(BoardId(1), BoardField::Piece(1, field));
    assert_eq!(missing, [at(PieceField::Length), at(PieceField::Width), at(PieceField::Thickness)]);
}

#[test]
fn a_dry_mass_above_the_moist_one_is_refused() {
    let mut draft = tested();
    draft.pieces[0].dry.text = "29".to_owned();
    let measured = measure(&draft);
    assert!(measured.board.pieces.is_empty());
    assert!(measured.findings.iter().any(|finding| finding.what == TrialProblem::DryAboveMoist));
}

#[test]
fn a_thickness_that_cannot_be_read_leaves_the_board_out() {
    let mut draft = tested();
    draft.thickness[1].text = "sixteen".to_owned();
    assert!(measure(&draft).board.whole.is_none());
    draft.thickness.iter_mut().for_each(|entry| entry.text.clear());
    let measured = measure(&draft);
    assert!(measured.board.whole.is_none());
    assert!(measured.findings.iter().any(|finding| finding.what == TrialProblem::Entry(EntryWhat::Missing)));
}

/// Source: Student's t, any table: 2.776 (two-sided 95 %) and 2.132 (one-sided 95 %) at 4 degrees. The
/// quantile is x̄ − t·s as EN 326-1 forms it, from memory.
#[test]
fn statistics_over_boards() {
    let values = [612.0, 648.0, 655.0, 630.0, 640.0];
    let summary = SampleSummary::of(&values).unwrap();
    let mean = 637.0;
    let deviation = ((25.0_f64.powi(2) + 11.0_f64.powi(2) + 18.0_f64.powi(2) + 7.0_f64.powi(2) + 9.0) / 4.0).sqrt();
    assert_relative_eq!(summary.mean, mean, max_relative = 1e-12);
    assert_relative_eq!(summary.deviation.unwrap(), deviation, max_relative = 1e-12);
    assert_relative_eq!(summary.half_width.unwrap(), 2.776 * deviation / 5.0_f64.sqrt(), max_relative = 5e-4);
    assert_relative_eq!(summary.lower.unwrap(), mean - 2.132 * deviation, max_relative = 5e-4);
    assert_relative_eq!(summary.upper.unwrap(), mean + 2.132 * deviation, max_relative = 5e-4);
}

#[test]
fn one_board_has_no_scatter_and_none_has_nothing() {
    let one = SampleSummary::of(&[640.0]).unwrap();
    assert_eq!((one.deviation, one.half_width, one.lower, one.upper), (None, None, None, None));
    assert!(SampleSummary::of(&[]).is_none() && SampleSummary::of(&[f64::MAX, f64::MAX]).is_none());
}

#[test]
fn each_board_counts_once() {
    let mut two = BoardDraft::blank(BoardId(1));
    two.pieces = vec![piece("28", "16", ""), piece("30", "16", "")];
    let mut one = BoardDraft::blank(BoardId(2));
    one.pieces = vec![piece("26", "16", "")];
    let boards = [measure(&two).board, measure(&one).board];
    let results = results(&boards);
    let density = results.iter().find(|result| result.property == Property::Density).unwrap();
    assert_relative_eq!(density.summary.mean, (725.0 + 650.0) / 2.0, max_relative = 1e-12);
    assert_eq!(density.boards.len(), 2);
}

/// Wanted 700 kg/m³ at 7 %; made 665 kg/m³ at 5 %, which is 665/1.05·1.07 at 7 %.
#[test]
fn the_next_mat_weighs_what_was_missing() {
    let sheet = sheet(&recipe(), &bare_sheet());
    let target = density_target(&sheet, &[of_density(665.0, "5")]).unwrap();
    let made = 665.0 / 1.05 * 1.07;
    assert_relative_eq!(target.made, made, max_relative = 1e-12);
    assert_relative_eq!(target.correction.value, 700.0 / made, max_relative = 1e-12);
    assert_relative_eq!(target.next_mat.value, sheet.mat.moist.value * 700.0 / made, max_relative = 1e-12);
    assert!(target.moisture_known);
    let unknown = density_target(&sheet, &[of_density(665.0, "")]).unwrap();
    assert!(!unknown.moisture_known);
    assert_relative_eq!(unknown.made, 665.0, max_relative = 1e-12);
    assert!(off_target(&unknown).is_some());
    let close = density_target(&sheet, &[of_density(690.0, "7")]).unwrap();
    assert!(off_target(&close).is_none());
}

#[test]
fn requirements_are_held_against_the_quantile() {
    let boards: Vec<MeasuredBoard> = ["1375", "1400", "1350"]
        .iter()
        .map(|load| {
            let mut draft = tested();
            draft.bond[0].load.text = (*load).to_owned();
            measure(&draft).board
        })
        .collect();
    let results = results(&boards);
    let require = |text: &str| RequirementDraft {
        property: Property::InternalBond,
        value: Entry::typed(text, Unit::NewtonPerSquareMillimetre),
    };
    // 0.55 ± 0.01, t 2.92 at 2 degrees: 0.5208.
    let (judged, findings) = judge(&results, &[require("0.52")]);
    assert_eq!((judged[0].met, findings.len()), (Some(true), 0));
    let (judged, findings) = judge(&results, &[require("0.53")]);
    assert_eq!(judged[0].met, Some(false));
    assert!(matches!(findings[0].what, TrialProblem::MissesRequirement { .. }));
    let (judged, findings) = judge(&haulm::domain::trial::boards::group::results(&boards[..1]), &[require("0.5")]);
    assert_eq!((judged[0].met, findings[0].what), (None, TrialProblem::TooFewBoards));
    assert!(judge(&results, &[require("much")]).1.iter().any(|f| matches!(f.what, TrialProblem::Entry(_))));
    assert!(judge(&results, &[require(" ")]).0.is_empty());
}

/// Sources: EN 622-1: the density within a fibreboard stays within ±7 % of its mean; EN 312: within a particleboard ±10 %.
#[test]
fn the_profile_of_a_board() {
    let mut draft = BoardDraft::blank(BoardId(1));
    let at = |position: &str, mass: &str| {
        let mut piece = piece(mass, "16", "");
        piece.position.text = position.to_owned();
        piece
    };
    draft.pieces = vec![at("400", "27"), at("50", "28"), at("225", "29")];
    let board = measure(&draft).board;
    let profile = profile(&board);
    let places: Vec<f64> = profile.iter().map(|point| (point.position.value * 1_000.0).round()).collect();
    assert_eq!(places, [50.0, 225.0, 400.0]);
    assert_relative_eq!(profile[2].deviation, 27.0 / 28.0 - 1.0, max_relative = 1e-12);
    assert!(uneven(&board, BoardKind::Fibreboard).is_none());
    draft.pieces[0].mass.text = "24".to_owned();
    let uneven_of = |draft: &BoardDraft, kind| uneven(&measure(draft).board, kind);
    let said = uneven_of(&draft, BoardKind::Fibreboard).unwrap();
    assert!(matches!(said.what, TrialProblem::UnevenProfile { deviation, .. } if deviation.base < -0.07));
    // 24 g is 11 % below the mean of the three, 25 g is 8.5 % below it; of another board no standard is known.
    assert!(uneven_of(&draft, BoardKind::Particleboard).is_some());
    assert!(uneven_of(&draft, BoardKind::Other).is_none());
    draft.pieces[0].mass.text = "25".to_owned();
    assert!(uneven_of(&draft, BoardKind::Fibreboard).is_some());
    assert!(uneven_of(&draft, BoardKind::Particleboard).is_none());
}

proptest! {
    /// Nothing that is typed into the boxes of a board brings it down, and no figure leaves the numbers.
    #[test]
    fn anything_typed(texts in prop::collection::vec(".{0,6}|[0-9.,e-]{0,6}", 24), unit in 0..Unit::ALL.len()) {
        let mut draft = tested();
        let mut next = texts.into_iter();
        for field in [BoardField::Laid, BoardField::Mass, BoardField::Length, BoardField::Thickness(1), BoardField::Moisture]
            .into_iter()
            .chain(PieceField::ALL.iter().map(|field| BoardField::Piece(0, *field)))
            .chain(BendingField::ALL.iter().map(|field| BoardField::Bending(0, *field)))
            .chain(BondField::ALL.iter().map(|field| BoardField::Bond(0, *field)))
            .chain(SwellingField::ALL.iter().map(|field| BoardField::Swelling(0, *field)))
        {
            if let Some(text) = next.next().filter(|text| !text.is_empty()) {
                draft.entry_mut(field).unwrap().text = text;
            }
        }
        draft.mass.unit = Unit::ALL[unit];
        let board = measure(&draft).board;
        for result in results(&[board.clone(), board]) {
            prop_assert!(result.summary.mean.is_finite());
        }
    }

    #[test]
    fn the_correction_brings_the_density_home(density in 300.0..1_100.0_f64) {
        let sheet = sheet(&recipe(), &bare_sheet());
        let target = density_target(&sheet, &[of_density(density, "7")]).unwrap();
        let next = target.made * target.next_mat.value / sheet.mat.moist.value;
        assert_relative_eq!(next, target.target, max_relative = 1e-9);
    }
}

/// No value of a standard is given as if it were verified; one that is typed over is.
#[test]
fn requirement_sets_are_named_and_unverified_until_typed() {
    for set in RequirementSet::ALL {
        assert!(!set.standard().is_empty());
        for requirement in set.requirements() {
            assert!(requirement.value.preset && requirement.property.tail().is_some());
        }
    }
    assert!(RequirementSet::ParticleboardAnsi.requirements().is_empty());
    let mut requirements = RequirementSet::ParticleboardInterior.requirements();
    let boards = [measure(&tested()).board, measure(&tested()).board];
    let of = |requirements: &[RequirementDraft]| judge(&results(&boards), requirements).0;
    assert_eq!(of(&requirements).len(), 3);
    assert!(of(&requirements).iter().all(|judged| judged.unverified && judged.met.is_some()));
    requirements[0].value = Entry::typed("30", Unit::NewtonPerSquareMillimetre);
    let judged = of(&requirements);
    assert!(!judged[0].unverified && judged[0].met == Some(false) && judged[1].unverified);
}
