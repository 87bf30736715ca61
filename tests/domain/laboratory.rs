//! A recipe of a laboratory has no fibre flow: its doses and its mat weight are there, and nothing of a flow is.

use crate::formula;
use crate::support::{of_laboratory, plain_recipe};
use approx::assert_relative_eq;
use haulm::domain::recipe::binder_system::{SystemKey, add_liquids};
use haulm::domain::recipe::draft::{FeedWay, WaterWay};
use haulm::domain::working::working;
use haulm::domain::{Draft, Entry, Field, Figure, Grade, LiquidFigure, LiquidId, What, work_out};
use haulm::quantity::{Kind, Unit};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    /// What it has is what the same recipe has at any fibre flow, and all of that.
    #[test]
    fn it_has_every_figure_that_needs_no_flow((laboratory, flowing) in of_laboratory()) {
        for (figure, amount) in laboratory.figures() {
            prop_assert!(!figure.is_of_flow(), "{figure:?}");
            let there = flowing.figure(figure).map_or(f64::NAN, |amount| amount.base);
            assert_relative_eq!(there, amount.base, max_relative = 1e-9, epsilon = 1e-9);
        }
        for (figure, _) in flowing.figures() {
            prop_assert_eq!(laboratory.figure(figure).is_some(), !figure.is_of_flow(), "{:?}", figure);
        }
    }

    /// Each has a working that needs no flow.
    #[test]
    fn every_figure_has_a_working((laboratory, _) in of_laboratory()) {
        let mut count = 0;
        for (figure, _) in laboratory.figures() {
            let working = working(figure, &laboratory).unwrap_or_else(|| panic!("{figure:?} has no working"));
            formula::check(&working);
            count += 1;
        }
        prop_assert!(count > 15);
    }
}

fn of_uf() -> Draft {
    let mut draft = plain_recipe();
    draft.plain.fibre_flow = Entry::empty(Unit::KilogramPerHour);
    draft.feed_way = FeedWay::None;
    crate::support::set(&mut draft, Field::FibreMoisture, "2", Unit::PercentDryBasis);
    add_liquids(&mut draft, &SystemKey::Uf.system().liquids);
    draft
}

/// Worked by hand: 12 % UF solids of 66 % are 18.18 kg per 100 kg of fibre; hardener 2 % and urea 3 % of the resin, wax 0.8 %, so
/// that the furnish is 1.134 of the fibre. At 10 % it needs 11.34 kg of water and has 2 with the fibre and 8.34 with the liquids.
#[test]
fn doses_per_hundred_of_fibre_and_the_mat_weight() {
    let outcome = work_out(&of_uf());
    assert!(!outcome.findings.iter().any(|finding| finding.grade == Grade::Stop), "{:?}", outcome.findings);
    let case = outcome.case.unwrap();
    let percent = |figure| case.figure(figure).unwrap().get(Unit::Percent);
    let resin = Figure::Liquid(LiquidId(1), LiquidFigure::LiquidOnFibre);
    assert_relative_eq!(percent(resin), 12.0 / 0.66, max_relative = 1e-12);
    let furnish = 1.0 + 0.12 * 1.05 + 0.008;
    let with_liquids = 0.12 * (1.0 / 0.66 - 1.0)
        + 0.0024 * (1.0 / 0.2 - 1.0)
        + 0.0036 * (1.0 / 0.4 - 1.0)
        + 0.008 * (1.0 / 0.55 - 1.0);
    let water: f64 = 100.0 * (0.10 * furnish - 0.02 - with_liquids);
    assert!(water > 0.9, "{water}");
    assert_relative_eq!(percent(Figure::WaterDoseOnFibre), water, max_relative = 1e-9);
    let mat = case.figure(Figure::MatOvenDry).unwrap().get(Unit::KilogramPerSquareMetre);
    assert_relative_eq!(mat, 0.7 * 16.0 / 1.07, max_relative = 1e-12);
    assert_eq!(case.figure(Figure::Fibre), None);
    assert_eq!(case.figure(Figure::LineSpeed), None);
    assert!(case.solved.capacities.is_empty());
}

#[test]
fn a_flow_of_water_needs_a_flow_of_fibre() {
    let mut draft = of_uf();
    draft.water_way = WaterWay::Flow;
    draft.plain.water_flow = Entry::typed("300", Unit::KilogramPerHour);
    let outcome = work_out(&draft);
    assert!(outcome.case.is_none());
    assert!(outcome.findings.iter().any(|finding| finding.what == What::NeedsFibreFlow));
}

/// Too wet is said without a flow: as a share of the fibre.
#[test]
fn too_wet_is_a_share_of_the_fibre() {
    let mut draft = of_uf();
    crate::support::set(&mut draft, Field::FibreMoisture, "14", Unit::PercentDryBasis);
    let said = work_out(&draft).findings.into_iter().find_map(|finding| match finding.what {
        What::TooWet { excess, .. } => Some(excess),
        _ => None,
    });
    assert_eq!(said.unwrap().kind, Kind::Dose);
}

/// A dose per volume of board and one per area of face are computed without a flow too.
#[test]
fn doses_on_the_board_need_no_flow() {
    let mut draft = of_uf();
    draft.liquids[3].dose_way = haulm::domain::DoseWay::LiquidPerBoard;
    draft.liquids[3].dose = Entry::typed("9", Unit::KilogramPerCubicMetre);
    let case = work_out(&draft).case.unwrap();
    let wax = |part| case.figure(Figure::Liquid(LiquidId(4), part)).unwrap();
    assert_relative_eq!(wax(LiquidFigure::PerVolume).get(Unit::KilogramPerCubicMetre), 9.0, max_relative = 1e-12);
    assert!(wax(LiquidFigure::SolidsOnFibre).base > 0.0);
}
