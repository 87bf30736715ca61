//! Every figure's formula, evaluated with its numbers, gives the figure.

use crate::formula::check;
use crate::sheet::any_made_out;
use haulm::domain::trial::boards::measured::measure;
use haulm::domain::trial::boards::working::{BoardFigure, board_working, correction_working, summary_working};
use haulm::domain::trial::weigh_sheet::working::working;
use haulm::domain::trial::{Property, WeighFigure, WeighLineFigure};
use haulm::ui::math::{Style, letters, numbers};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig { cases: 150, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn formulas_of_the_sheet_give_its_figures(sheet in any_made_out()) {
        let mut count = 0;
        for (figure, _) in sheet.figures() {
            match working(figure, &sheet) {
                Some(working) => {
                    check(&working);
                    let style = Style { set: haulm::quantity::Coherent::Metric, mark: Default::default(), currency: "€" };
                    for text in [letters(&working), numbers(&working, style)] {
                        prop_assert!(roxmltree::Document::parse(&text).is_ok(), "{}", text);
                    }
                    // Spilled before the liquids are on it, the fibre takes all the overage: the factor is one.
                    prop_assert!(!working.givens.is_empty() || figure == WeighFigure::LiquidFactor, "{figure:?}");
                    count += 1;
                }
                // Rounding is no formula.
                None => prop_assert!(matches!(figure, WeighFigure::Line(_, WeighLineFigure::Rounded)), "{figure:?}"),
            }
        }
        prop_assert!(count > 10);
    }
}

#[test]
fn formulas_of_the_boards_give_their_figures() {
    let board = measure(&crate::boards::tested()).board;
    let figures = [
        BoardFigure::WholeDensity,
        BoardFigure::Density(0),
        BoardFigure::Moisture(0),
        BoardFigure::OvenDryDensity(0),
        BoardFigure::BendingStrength(0),
        BoardFigure::BendingModulus(0),
        BoardFigure::InternalBond(0),
        BoardFigure::Swelling(0),
    ];
    for figure in figures {
        check(&board_working(figure, &board).unwrap_or_else(|| panic!("{figure:?}")));
    }
    let summary = haulm::statistics::sample::SampleSummary::of(&[612.0, 648.0, 655.0]).unwrap();
    let density = Property::Density;
    for figure in [BoardFigure::HalfWidth(density), BoardFigure::Lower(density), BoardFigure::Upper(density)] {
        check(&summary_working(figure, &summary).unwrap());
    }
    check(&correction_working(&crate::boards::target()));
}
