//! What weighed masses really give: doses and moisture, against the target.

use crate::domain::LiquidId;
use crate::domain::recipe::input::Dosing;
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::masses::{dose_as_entered, target_on_fibre};
use crate::domain::trial::weigh_sheet::plan::Plan;
use crate::quantity::Amount;
use uom::si::f64::{Mass, Ratio};
use uom::si::ratio::ratio;

/// The dose of one liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ActualDose {
    /// The liquid.
    pub id: LiquidId,
    /// Target, solids on oven-dry fibre.
    pub target: Ratio,
    /// Actual, solids on oven-dry fibre.
    pub actual: Ratio,
    /// Actual/target − 1; 0 where the target is 0.
    pub deviation: Ratio,
    /// Target, as the recipe enters it.
    pub target_as_entered: Option<Amount>,
    /// Actual, as the recipe enters it. A dose on the solids of another liquid is that of both as they
    /// were weighed.
    pub actual_as_entered: Option<Amount>,
}

/// What weighed masses give.
#[derive(Debug, Clone, PartialEq)]
pub struct ActualBatch {
    /// The doses, in the recipe's order.
    pub doses: Vec<ActualDose>,
    /// Moisture of the mat, dry basis, after the drying loss. Negative where that dries more than
    /// there is.
    pub mat_moisture: Ratio,
    /// Oven-dry furnish, without what is spilled and what stays on the walls.
    pub furnish: Mass,
}

impl ActualBatch {
    /// The dose of a liquid.
    #[must_use]
    pub fn dose(&self, id: LiquidId) -> Option<&ActualDose> {
        self.doses.iter().find(|dose| dose.id == id)
    }

    pub(in crate::domain::trial) fn is_finite(&self) -> bool {
        let dose = |dose: &ActualDose| dose.actual.is_finite() && dose.deviation.is_finite();
        self.doses.iter().all(dose) && self.mat_moisture.is_finite() && self.furnish.is_finite()
    }
}

/// What the masses `weighed` of one batch give.
///
/// Oven-dry fibre that meets the liquids F = m_f/(1+ω_f), less what the overage's way says is spilled
/// before; solids of a liquid m·s·(1−λ); water that of the fibre, the liquids, the thinning and the
/// water line, the sprayed ones times 1−λ; mat moisture W/S − δ.
#[must_use]
pub fn actual(plan: &Plan, weighed: impl Fn(LineId) -> Mass) -> ActualBatch {
    let input = &plan.case.input;
    let kept = Ratio::new::<ratio>(1.0) - plan.wall_loss;
    let fibre = weighed(LineId::Fibre) / input.fibre_moisture.wet_per_dry() / plan.spilled();
    let solids: Vec<Mass> = input
        .liquids
        .as_slice()
        .iter()
        .map(|liquid| weighed(LineId::Liquid(liquid.id)) * liquid.solids.ratio() * kept)
        .collect();
    let furnish = fibre + solids.iter().copied().sum::<Mass>();
    let mut water = fibre * input.fibre_moisture.dry_basis() + weighed(LineId::Water) * kept;
    for (liquid, solids) in input.liquids.as_slice().iter().zip(&solids) {
        let sprayed = weighed(LineId::Liquid(liquid.id)) + weighed(LineId::Thinning(liquid.id));
        water += sprayed * kept - *solids;
    }
    let doses = input
        .liquids
        .as_slice()
        .iter()
        .zip(&solids)
        .filter_map(|(liquid, own)| {
            let target = target_on_fibre(plan, liquid.id)?;
            let actual = *own / fibre;
            let change = |actual: Ratio, target: Ratio| {
                if target.value > 0.0 { actual / target } else { Ratio::new::<ratio>(1.0) }
            };
            let on_fibre = change(actual, target);
            let as_entered = match liquid.dosing {
                Dosing::SolidsOnLiquid(_, base) => {
                    let base_id = input.liquids.as_slice().get(base)?.id;
                    let of_base = change(*solids.get(base)? / fibre, target_on_fibre(plan, base_id)?);
                    on_fibre / of_base
                }
                _ => on_fibre,
            };
            let target_as_entered = dose_as_entered(plan, liquid.id);
            let scaled = |amount: Amount| Amount::from_base(amount.kind, amount.base * as_entered.value);
            Some(ActualDose {
                id: liquid.id,
                target,
                actual,
                deviation: on_fibre - Ratio::new::<ratio>(1.0),
                target_as_entered,
                actual_as_entered: target_as_entered.map(scaled).filter(|amount| amount.base.is_finite()),
            })
        })
        .collect();
    ActualBatch { doses, mat_moisture: water / furnish - input.drying_loss, furnish }
}
