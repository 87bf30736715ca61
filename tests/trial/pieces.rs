//! Test pieces with a mass: their density, and the strength at the target density; swelling after 2 and 24 hours, water
//! absorption.

use crate::boards::tested;
use approx::assert_relative_eq;
use haulm::domain::trial::boards::at_density::{at_densities, at_density};
use haulm::domain::trial::boards::field::{BondDraft, BondField};
use haulm::domain::trial::boards::measured::{MeasuredBoard, measure};
use haulm::domain::trial::{BoardDraft, BoardId, Property};

/// Bond pieces 50 × 50 × 16 mm by mass in grams and load in newtons.
fn bonded(pieces: &[(f64, f64)]) -> MeasuredBoard {
    let mut draft = BoardDraft::blank(BoardId(1));
    for (mass, load) in pieces {
        let mut piece = BondDraft::default();
        for (field, value) in [
            (BondField::Length, 50.0),
            (BondField::Width, 50.0),
            (BondField::Thickness, 16.0),
            (BondField::Mass, *mass),
            (BondField::Load, *load),
        ] {
            piece.entry_mut(field).text = format!("{value}");
        }
        draft.bond.push(piece);
    }
    measure(&draft).board
}

/// By hand: 28 g in 50 × 50 × 16 mm are 700 kg/m³. Densities 650, 700, 750, 800 with bonds 0.5, 0.56, 0.58, 0.64 N/mm²:
/// slope 0.00088 N/mm² per kg/m³, at 725 (the mean) 0.57; residuals 0.0040, sum of squares 0.00032, s = 0.012649;
/// half width there t₀.₉₇₅(2)·s/√4 = 4.3027·0.0063246 = 0.027213.
#[test]
fn internal_bond_at_the_target_density() {
    let board = bonded(&[(26.0, 1_250.0), (28.0, 1_400.0), (30.0, 1_450.0), (32.0, 1_600.0)]);
    assert_relative_eq!(board.bond[1].1.density.unwrap().value, 700.0, max_relative = 1e-12);
    let own = at_density(Property::InternalBond, std::slice::from_ref(&board), 725.0).unwrap();
    assert_relative_eq!(own.slope * 1e-6, 0.00088, max_relative = 1e-9);
    assert_relative_eq!(own.value * 1e-6, 0.57, max_relative = 1e-9);
    assert_relative_eq!(own.half_width * 1e-6, 0.027_213, max_relative = 1e-4);
    assert_eq!((own.pieces, own.outside), (4, false));
    assert!(at_density(Property::InternalBond, std::slice::from_ref(&board), 900.0).unwrap().outside);
    assert!(at_density(Property::BendingStrength, &[board], 725.0).is_none());
    assert!(at_density(Property::InternalBond, &[bonded(&[(28.0, 1_400.0), (30.0, 1_450.0)])], 725.0).is_none());
}

/// By hand: 16.0 mm to 17.2 mm after 2 h is 7.5 %; 28.0 g to 39.2 g is 40 %.
#[test]
fn swelling_after_two_hours_and_water_absorption() {
    let mut draft = tested();
    draft.swelling[0].after_two.text = "17.2".to_owned();
    draft.swelling[0].mass_before.text = "28.0".to_owned();
    draft.swelling[0].mass_after.text = "39.2".to_owned();
    let measured = measure(&draft);
    assert!(measured.findings.is_empty());
    assert_relative_eq!(measured.board.mean(Property::SwellingTwo).unwrap(), 0.075, max_relative = 1e-9);
    assert_relative_eq!(measured.board.mean(Property::Absorption).unwrap(), 0.4, max_relative = 1e-9);
    assert_relative_eq!(measured.board.mean(Property::Swelling).unwrap(), 0.12, max_relative = 1e-9);
}

/// By hand: F 300 N, l 320, b 50, t 16 mm give 3·300·320/(2·50·16²) = 11.25 N/mm² by the formula of EN 310.
#[test]
fn bending_strength_by_hand() {
    let mut draft = tested();
    draft.bending[0].load.text = "300".to_owned();
    let strength = measure(&draft).board.mean(Property::BendingStrength).unwrap();
    assert_relative_eq!(strength * 1e-6, 11.25, max_relative = 1e-12);
}

/// Two combinations of two pieces each, which alone give no interval. Their slopes are alike, so that they share one. By hand: 650 and
/// 700 kg/m³ with 0.5 and 0.55 N/mm², mean 675 and 0.525; 750 and 800 with 0.6 and 0.6505, mean 775 and 0.62525. The shared slope is
/// Σ(x − x̄)(y − ȳ)/Σ(x − x̄)² over both, (25·0.05 + 25·0.0505)/(4·25²).
#[test]
fn combinations_with_like_slopes_share_one() {
    let low = [bonded(&[(26.0, 1_250.0), (28.0, 1_375.0)])];
    let high = [bonded(&[(30.0, 1_500.0), (32.0, 1_626.25)])];
    assert!(at_density(Property::InternalBond, &low, 700.0).is_none(), "two pieces alone leave no freedom");
    let groups = [(&low[..], Some(700.0)), (&high[..], Some(750.0)), (&[][..], Some(700.0))];
    let found = at_densities(Property::InternalBond, &groups);
    let (one, other) = (found[0].unwrap(), found[1].unwrap());
    let slope = (25.0 * 0.05 + 25.0 * 0.0505) / (4.0 * 625.0);
    assert_relative_eq!(one.slope * 1e-6, slope, max_relative = 1e-9);
    assert_relative_eq!(one.value * 1e-6, 0.525 + 25.0 * slope, max_relative = 1e-9);
    assert_relative_eq!(other.value * 1e-6, 0.62525 - 25.0 * slope, max_relative = 1e-9);
    assert_eq!((one.groups, one.pieces, one.outside, found[2]), (2, 2, false, None));
    // Where one falls and the other rises, each has its own line, or none.
    let falling = [bonded(&[(26.0, 1_375.0), (28.0, 1_300.0), (30.0, 1_240.0)])];
    let rising = [bonded(&[(26.0, 1_250.0), (28.0, 1_400.0), (30.0, 1_545.0)])];
    let found = at_densities(Property::InternalBond, &[(&falling[..], Some(700.0)), (&rising[..], Some(700.0))]);
    for (found, boards) in found.iter().zip([&falling, &rising]) {
        assert_eq!(*found, at_density(Property::InternalBond, &boards[..], 700.0));
        assert_eq!(found.unwrap().groups, 1);
    }
}
