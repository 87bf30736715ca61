//! All that is dosed together.

use crate::domain::balance::figure::{Figure, LiquidFigure};
use crate::domain::balance::outcome::Case;
use crate::quantity::Amount;

/// A figure of the liquids summed over all of them and the water: mass and volume flow, use per volume of board, cost.
/// `None` for other figures, where there is nothing to sum, and for a volume where water thins a liquid, as volumes do
/// not add up then.
#[must_use]
pub fn dosed(case: &Case, part: LiquidFigure) -> Option<Amount> {
    let of_liquids = |part: LiquidFigure| {
        let ids = case.solved.liquids.iter().map(|flow| flow.id);
        ids.filter_map(move |id| case.figure(Figure::Liquid(id, part))).map(|amount| amount.base)
    };
    let thinning: f64 = of_liquids(LiquidFigure::Thinning).sum();
    let water = |figure: Figure| case.figure(figure).map_or(0.0, |amount| amount.base);
    let of_water = match part {
        LiquidFigure::Liquid => water(Figure::WaterDose) + thinning,
        LiquidFigure::Volume if thinning > 0.0 => return None,
        LiquidFigure::Volume => water(Figure::WaterDoseVolume),
        LiquidFigure::PerVolume => water(Figure::WaterPerVolume),
        LiquidFigure::Cost if of_liquids(part).next().is_none() => return None,
        LiquidFigure::Cost => 0.0,
        _ => return None,
    };
    Some(Amount::from_base(part.kind(), of_liquids(part).sum::<f64>() + of_water))
}
