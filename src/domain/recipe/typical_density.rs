//! A typical density that follows the solids content, as long as nobody typed a density.

use crate::domain::chemistry::solute::Solute;
use crate::domain::chemistry::solution_density::density_at_20c;
use crate::domain::recipe::binder_system::typical;
use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::{Draft, Entry, LiquidDraft};
use crate::domain::recipe::field::LiquidField;
use crate::domain::recipe::limit::Limit;
use crate::domain::recipe::liquid::{DoseWay, Faces, LiquidId, Role, Substance};
use crate::quantity::format::{DecimalMark, editable};
use crate::quantity::{Kind, Unit};
use uom::si::f64::Ratio;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::ratio::ratio;

/// Density of water at 20 °C, kg/m³ (IAPWS-95).
const WATER: f64 = 998.207;

/// The typical density at 20 °C of a substance with these solids, kg/m³: a solution's from the CRC Handbook of Chemistry and Physics,
/// any other's by ideal mixing of water with what the typical liquid holds. `None` where nothing typical is known.
#[must_use]
pub fn typical_density(substance: Substance, solids: f64) -> Option<f64> {
    let solution = |solute| {
        density_at_20c(solute, Ratio::new::<ratio>(solids))
            .ok()
            .map(|density| density.get::<kilogram_per_cubic_meter>())
    };
    match substance {
        Substance::AmmoniumSulfate => solution(Solute::AmmoniumSulfate),
        Substance::AmmoniumChloride => solution(Solute::AmmoniumChloride),
        Substance::Urea => solution(Solute::Urea),
        _ => {
            let typical = typical(substance)?;
            let (known, density) =
                (number(&typical.solids, Unit::Percent)?, number(&typical.density, Unit::KilogramPerCubicMetre)?);
            let known = known / 100.0;
            // 1/ρ = s/ρ_s + (1 − s)/ρ_w gives the volume of a mass of solids.
            let of_solids = (1.0 / density - (1.0 - known) / WATER) / known;
            Some(1.0 / (solids * of_solids + (1.0 - solids) / WATER))
        }
    }
}

fn number(entry: &Entry, unit: Unit) -> Option<f64> {
    (entry.unit == unit).then(|| entry.text.parse().ok()).flatten()
}

/// Gives a liquid the typical density of its solids, as long as its density is a typical value.
pub fn follow_solids(liquid: &mut LiquidDraft) {
    if !liquid.density.preset {
        return;
    }
    let limit = Limit::above_to(Unit::Percent, 0.0, 100.0);
    let Ok(Some(solids)) = read_entry(&liquid.solids, Kind::Solids, &limit) else { return };
    if let Some(density) = typical_density(liquid.substance, solids) {
        let rounded = (density * 10.0).round() / 10.0;
        liquid.density = Entry::preset(editable(rounded, DecimalMark::Point), Unit::KilogramPerCubicMetre);
    }
}

/// Chooses what a liquid is for. A release agent whose dose nobody has typed starts on both faces of the mat, and a liquid that is no
/// longer one starts on fibre again.
pub fn choose_role(draft: &mut Draft, id: LiquidId, role: Role) {
    let Some(liquid) = draft.liquid_mut(id) else { return };
    liquid.role = role;
    if !liquid.dose.is_blank() {
        return;
    }
    match (role, liquid.dose_way) {
        (Role::ReleaseAgent, way) if !way.is_on_faces() => {
            liquid.dose_way = DoseWay::LiquidOnFaces(Faces::Both);
            liquid.dose = Entry::empty(Unit::GramPerSquareMetre);
        }
        (Role::ReleaseAgent | Role::Other, _) => {}
        (_, DoseWay::LiquidOnFaces(_)) => {
            liquid.dose_way = DoseWay::SolidsOnFibre;
            liquid.dose = Entry::empty(Unit::Percent);
        }
        _ => {}
    }
}

/// Chooses what a liquid is made of, and fills the boxes that nobody has typed in with what is typical of it. A hardener salt whose
/// dose nobody has typed starts as a hardener on the solids of the first binder.
pub fn choose_substance(draft: &mut Draft, id: LiquidId, substance: Substance) {
    let binder = draft.liquids.iter().find(|liquid| liquid.role == Role::Binder && liquid.id != id);
    let binder = binder.map(|liquid| liquid.id);
    let Some(liquid) = draft.liquid_mut(id) else { return };
    liquid.substance = substance;
    let Some(typical) = typical(substance) else { return };
    let untouched = liquid.dose.preset && liquid.solids.preset;
    if untouched {
        liquid.role = typical.role;
    }
    if let Some(binder) = binder.filter(|_| liquid.dose.preset && substance.is_hardener_salt()) {
        liquid.role = Role::Hardener;
        liquid.dose_way = DoseWay::SolidsOnLiquid(binder);
    }
    for part in [LiquidField::Dose, LiquidField::Solids, LiquidField::Density] {
        // A dose means something else on another base.
        let same = match (typical.dose_way, liquid.dose_way) {
            (DoseWay::SolidsOnLiquid(_), DoseWay::SolidsOnLiquid(_)) => true,
            (typical, own) => typical == own,
        };
        if liquid.entry(part).preset && (part != LiquidField::Dose || same) {
            *liquid.entry_mut(part) = typical.entry(part).clone();
        }
    }
    follow_solids(liquid);
    if liquid.source.is_empty() {
        liquid.source = typical.source;
    }
}
