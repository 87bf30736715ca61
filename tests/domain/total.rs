//! All that is dosed, summed by hand.

use haulm::domain::balance::total::dosed;
use haulm::domain::{Field, Figure, LiquidField, LiquidFigure, example, work_out};
use haulm::quantity::Unit;

/// The sum is that of the figures shown in the column; thinning water counts as dosed, and volumes with it do not add up.
#[test]
fn the_total_of_a_column_is_the_sum_of_its_rows() {
    let mut draft = example();
    let case = work_out(&draft).case.expect("the example has a result");
    let base = |figure| case.figure(figure).map_or(0.0, |amount| amount.base);
    let liquids: Vec<_> = draft.liquids.iter().map(|liquid| liquid.id).collect();
    let columns = [
        (LiquidFigure::Liquid, base(Figure::WaterDose)),
        (LiquidFigure::Volume, base(Figure::WaterDoseVolume)),
        (LiquidFigure::PerVolume, base(Figure::WaterPerVolume)),
        (LiquidFigure::Cost, 0.0),
    ];
    for (part, water) in columns {
        let by_hand = liquids.iter().map(|id| base(Figure::Liquid(*id, part))).sum::<f64>() + water;
        let total = dosed(&case, part).expect("a total");
        approx::assert_relative_eq!(total.base, by_hand, max_relative = 1e-12);
        assert!(total.base > 0.0, "{part:?}");
    }
    assert_eq!(dosed(&case, LiquidFigure::Share), None);

    // The wax emulsion, sprayed at 30 % solids: its thinning water is part of what is dosed.
    let wax = liquids[1];
    *draft.entry_mut(Field::Liquid(wax, LiquidField::SpraySolids)).expect("the wax") =
        haulm::domain::Entry::typed("30", Unit::Percent);
    let thinned = work_out(&draft).case.expect("a result");
    let thinning = thinned.figure(Figure::Liquid(wax, LiquidFigure::Thinning)).expect("thinning").base;
    assert!(thinning > 0.0);
    let before = dosed(&case, LiquidFigure::Liquid).expect("a total").base;
    let after = dosed(&thinned, LiquidFigure::Liquid).expect("a total").base;
    // The mat needs the same water, whichever way it comes.
    approx::assert_relative_eq!(after, before, max_relative = 1e-9);
    assert_eq!(dosed(&thinned, LiquidFigure::Volume), None);
}
