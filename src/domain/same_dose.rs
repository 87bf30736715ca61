//! The same dose in another way of entering it, so that changing the way changes nothing else.

use super::figure::{Figure, LiquidFigure};
use super::liquid::{DoseWay, LiquidId};
use super::outcome::Case;
use crate::quantity::{Amount, Kind};

/// The dose of a solved liquid as it would be entered in `way`. `None` for a liquid or a base that
/// is not there, or a base without solids.
#[must_use]
pub fn same_dose(case: &Case, id: LiquidId, way: DoseWay) -> Option<Amount> {
    let figure = |part| case.figure(Figure::Liquid(id, part));
    match way {
        DoseWay::SolidsOnFibre => figure(LiquidFigure::SolidsOnFibre),
        DoseWay::LiquidOnFibre => figure(LiquidFigure::LiquidOnFibre),
        DoseWay::LiquidPerBoard => figure(LiquidFigure::PerVolume),
        DoseWay::SolidsOnLiquid(base) => {
            let ratio = case.liquid(id)?.solids.value / case.liquid(base)?.solids.value;
            ratio.is_finite().then(|| Amount::from_base(Kind::Dose, ratio))
        }
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::domain::example::example;
    use crate::domain::library::{SystemKey, add_liquids};
    use crate::domain::{Draft, Entry, work_out};
    use crate::quantity::format::{self, DecimalMark};

    fn uf() -> Draft {
        let mut draft = example();
        draft.liquids.clear();
        add_liquids(&mut draft, &SystemKey::Uf.system().liquids);
        draft
    }

    /// Whatever way the dose is entered in, the flow stays.
    #[test]
    fn the_flow_stays_when_the_way_changes() {
        let draft = uf();
        let before = work_out(&draft).case.unwrap();
        let (resin, hardener) = (draft.liquids[0].id, draft.liquids[1].id);
        let on = DoseWay::SolidsOnLiquid;
        for (id, way) in [
            (resin, DoseWay::SolidsOnFibre),
            (resin, DoseWay::LiquidOnFibre),
            (resin, DoseWay::LiquidPerBoard),
            (hardener, DoseWay::SolidsOnFibre),
            (hardener, DoseWay::LiquidPerBoard),
            (hardener, on(resin)),
        ] {
            let dose = same_dose(&before, id, way).unwrap();
            let unit = dose.kind.units().next().unwrap();
            let mut changed = draft.clone();
            let liquid = changed.liquid_mut(id).unwrap();
            liquid.dose_way = way;
            liquid.dose = Entry::typed(format::editable(dose.get(unit), DecimalMark::Point), unit);
            let after = work_out(&changed).case.unwrap();
            let flow = |case: &Case| case.liquid(id).unwrap().liquid.value;
            assert!((flow(&after) / flow(&before) - 1.0).abs() < 1e-6, "{way:?}");
        }
        assert_eq!(same_dose(&before, resin, on(LiquidId(99))), None);
        assert_eq!(same_dose(&before, LiquidId(99), DoseWay::SolidsOnFibre), None);
    }
}
