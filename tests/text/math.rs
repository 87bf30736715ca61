//! The MathML of the workings.

use crate::support::{liquid, plain_recipe, solved};
use haulm::domain::{Figure, LiquidFigure, LiquidId, working};
use haulm::quantity::Coherent;
use haulm::quantity::format::DecimalMark;
use haulm::ui::math::{Style, letters, numbers, symbol};
use proptest::prelude::*;

const STYLE: Style<'_> = Style { set: Coherent::Metric, mark: DecimalMark::Point, currency: "<&>" };

#[test]
fn a_liquid_over_its_solids() {
    let mut draft = plain_recipe();
    draft.liquids = vec![liquid(1, "12", "60", "1280")];
    let case = haulm::domain::work_out(&draft).case.unwrap();
    let working = working(Figure::Liquid(LiquidId(1), LiquidFigure::Liquid), &case).unwrap();
    assert_eq!(
        letters(&working),
        "<math><mrow><msub><mi>L</mi><mn>1</mn></msub><mo>=</mo><mfrac><msub><mi>m</mi><mn>1</mn></msub>\
         <msub><mi>s</mi><mn>1</mn></msub></mfrac></mrow></math>"
    );
    let put_in = numbers(&working, STYLE);
    assert!(
        put_in.contains("<mn>1200</mn>") && put_in.contains("<mn>60</mn>") && put_in.contains("<mn>2000</mn>"),
        "{put_in}"
    );
    assert!(put_in.contains("kg/h") && put_in.contains('%'));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 100, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_working_is_well_formed((_, case) in solved()) {
        for (figure, _) in case.figures() {
            let working = working(figure, &case).unwrap();
            for text in [letters(&working), numbers(&working, STYLE), symbol(working.symbol)] {
                let document = roxmltree::Document::parse(&text).unwrap_or_else(|e| panic!("{figure:?}: {e}: {text}"));
                for node in document.descendants() {
                    let children = node.children().filter(roxmltree::Node::is_element).count();
                    if node.has_tag_name("mfrac") || node.has_tag_name("msub") {
                        prop_assert_eq!(children, 2, "{}", text);
                    }
                }
                prop_assert!(!text.contains("NaN") && !text.contains("inf"));
            }
        }
    }
}

/// √(3² + 4²) = 5, in the unit shown; the parts are the costs of two prices.
#[test]
fn a_combined_uncertainty_shows_its_parts() {
    use haulm::domain::compare::Output;
    use haulm::domain::compare::uncertainty::input_uncertainty::{Form, InputUncertainty, Size};
    use haulm::domain::compare::uncertainty::study::{RequestedFigure, Study, UncertainInput};
    use haulm::domain::{DoseWay, Entry, Field, LiquidField};
    use haulm::quantity::Unit;
    let mut draft = plain_recipe();
    draft.liquids = vec![liquid(1, "1", "50", "1000"), liquid(2, "1", "50", "1000")];
    for liquid in &mut draft.liquids {
        liquid.dose_way = DoseWay::LiquidPerBoard;
        liquid.dose = Entry::typed("1", Unit::KilogramPerCubicMetre);
        liquid.price = Entry::typed("100", Unit::PerKilogram);
    }
    draft.plain.fibre_price = Entry::typed("0", Unit::PerTonne);
    let case = haulm::domain::work_out(&draft).case.unwrap();
    let uncertain = [(1, 3.0), (2, 4.0)].map(|(id, width)| UncertainInput {
        targets: vec![(0, Field::Liquid(LiquidId(id), LiquidField::Price))],
        spread: InputUncertainty::new(Form::Standard, Size::Absolute(width), None).unwrap(),
    });
    let asked = [RequestedFigure::Of { system: 0, output: Output::Figure(Figure::Cost) }];
    let budget = Study::new(&[case], &uncertain, &asked).unwrap().budget(0).unwrap();
    let single = budget.shares[0].single.unwrap();
    assert!((single.slope - 1.0).abs() < 1e-12 && (single.standard - 4.0).abs() < 1e-12, "{single:?}");
    let text = haulm::ui::math::combined_numbers(&budget, None, STYLE);
    let document = roxmltree::Document::parse(&text).unwrap();
    let put_in: Vec<_> =
        document.descendants().filter(|node| node.has_tag_name("mn")).filter_map(|n| n.text()).collect();
    assert_eq!(put_in, ["4", "2", "3", "2", "5"]);
    assert!(text.contains("&lt;&amp;&gt;/m³"), "{text}");
    assert!(roxmltree::Document::parse(&haulm::ui::math::combined_letters()).is_ok());
}
