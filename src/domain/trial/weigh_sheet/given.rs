//! What weighed masses really give: doses and moisture, against what was wanted.

use crate::domain::LiquidId;
use crate::domain::recipe::input::Dosing;
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::plan::Plan;
use crate::domain::trial::weigh_sheet::sheet::{dose_as_entered, wanted_on_fibre};
use crate::quantity::Amount;
use uom::si::f64::{Mass, Ratio};
use uom::si::ratio::ratio;

/// The dose of one liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoseGiven {
    /// The liquid.
    pub id: LiquidId,
    /// Wanted, solids on oven-dry fibre.
    pub wanted: Ratio,
    /// Given, solids on oven-dry fibre.
    pub given: Ratio,
    /// Given/wanted − 1; 0 where nothing was wanted.
    pub deviation: Ratio,
    /// Wanted, as the recipe enters it.
    pub wanted_as_entered: Option<Amount>,
    /// Given, as the recipe enters it. A dose on the solids of another liquid is that of both as they
    /// were weighed.
    pub given_as_entered: Option<Amount>,
}

/// What weighed masses give.
#[derive(Debug, Clone, PartialEq)]
pub struct Given {
    /// The doses, in the recipe's order.
    pub doses: Vec<DoseGiven>,
    /// Moisture of the mat, dry basis, after the drying loss. Negative where that dries more than
    /// there is.
    pub mat_moisture: Ratio,
    /// Oven-dry furnish, without what is spilled and what stays on the walls.
    pub furnish: Mass,
}

impl Given {
    /// The dose of a liquid.
    #[must_use]
    pub fn dose(&self, id: LiquidId) -> Option<&DoseGiven> {
        self.doses.iter().find(|dose| dose.id == id)
    }

    pub(in crate::domain::trial) fn is_finite(&self) -> bool {
        let dose = |dose: &DoseGiven| dose.given.is_finite() && dose.deviation.is_finite();
        self.doses.iter().all(dose) && self.mat_moisture.is_finite() && self.furnish.is_finite()
    }
}

/// What the masses `weighed` of one batch give.
///
/// Oven-dry fibre that meets the liquids F = m_f/(1+ω_f), less what the overage's way says is spilled
/// before; solids of a liquid m·s·(1−λ); water that of the fibre, the liquids, the thinning and the
/// water line, the sprayed ones times 1−λ; mat moisture W/S − δ.
#[must_use]
pub fn given(plan: &Plan, weighed: impl Fn(LineId) -> Mass) -> Given {
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
            let wanted = wanted_on_fibre(plan, liquid.id)?;
            let given = *own / fibre;
            let change = |given: Ratio, wanted: Ratio| {
                if wanted.value > 0.0 { given / wanted } else { Ratio::new::<ratio>(1.0) }
            };
            let on_fibre = change(given, wanted);
            let as_entered = match liquid.dosing {
                Dosing::SolidsOnLiquid(_, base) => {
                    let base_id = input.liquids.as_slice().get(base)?.id;
                    let of_base = change(*solids.get(base)? / fibre, wanted_on_fibre(plan, base_id)?);
                    on_fibre / of_base
                }
                _ => on_fibre,
            };
            let wanted_as_entered = dose_as_entered(plan, liquid.id);
            let scaled = |amount: Amount| Amount::from_base(amount.kind, amount.base * as_entered.value);
            Some(DoseGiven {
                id: liquid.id,
                wanted,
                given,
                deviation: on_fibre - Ratio::new::<ratio>(1.0),
                wanted_as_entered,
                given_as_entered: wanted_as_entered.map(scaled).filter(|amount| amount.base.is_finite()),
            })
        })
        .collect();
    Given { doses, mat_moisture: water / furnish - input.drying_loss, furnish }
}
