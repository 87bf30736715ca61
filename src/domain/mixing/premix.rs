//! What goes into one tank: parts of a glue, taken from a solved recipe.

use crate::domain::balance::outcome::Case;
use crate::domain::chemistry::water;
use crate::domain::mixing::draft::{MixDraft, PartKey, ShareWay};
use crate::domain::mixing::field::MixField;
use crate::domain::mixing::glue_batch::{self, Batch, GlueComponent, GlueError};
use crate::domain::mixing::outcome::{MixError, wanted};
use crate::domain::recipe::caution::Caution;
use crate::domain::recipe::draft::{Draft, Entry, LiquidDraft};
use crate::domain::recipe::liquid::{LiquidId, Role, Substance};
use crate::quantity::Unit;
use crate::quantity::format::{DecimalMark, editable};
use uom::si::f64::{MassDensity, MassRate, Ratio, ThermodynamicTemperature};
use uom::si::mass_rate::kilogram_per_second;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::degree_celsius;

/// What may go into the tank.
#[derive(Debug, Clone, PartialEq)]
pub struct PremixCandidate {
    /// The part.
    pub key: PartKey,
    /// The liquid that it is; `None` for water.
    pub liquid: Option<LiquidId>,
    /// What it is for; `None` for water.
    pub role: Option<Role>,
    /// What it is made of; `None` for water.
    pub substance: Option<Substance>,
    /// Whether it goes into the tank.
    pub in_tank: bool,
    /// Flow at which the recipe doses it, as delivered.
    pub flow: MassRate,
    /// Solids, by mass.
    pub solids: Ratio,
    /// Density.
    pub density: MassDensity,
}

/// What may go into the tank, in order of addition, water last; not what is sprayed on the faces. Without a choice the binders that
/// water does no harm to, their hardeners and scavengers go in, thinned as they are sprayed; wax and
/// the water dose stay out. A recipe without any thinned liquid has no thinning water to offer.
#[must_use]
pub fn tank(mix: &MixDraft, draft: &Draft, case: &Case) -> Vec<PremixCandidate> {
    let chosen = |key: &PartKey| mix.part(key).and_then(|part| part.in_tank);
    let mut parts = Vec::with_capacity(draft.liquids.len() + 2);
    let mut thinning = MassRate::new::<kilogram_per_second>(0.0);
    let (mut thinned, mut thinned_inside) = (false, false);
    for liquid in case.input.liquids.as_slice() {
        let Some((own, flow)) = draft.liquid(liquid.id).zip(case.liquid(liquid.id)) else { continue };
        if flow.on_faces {
            continue;
        }
        let key = key_of(own);
        let in_tank = chosen(&key).unwrap_or_else(|| goes_in(liquid.role, liquid.substance));
        if case.is_thinned(liquid.id) {
            thinned = true;
            if in_tank {
                thinned_inside = true;
                thinning += flow.thinning;
            }
        }
        parts.push(PremixCandidate {
            key,
            liquid: Some(liquid.id),
            role: Some(liquid.role),
            substance: Some(liquid.substance),
            in_tank,
            flow: flow.liquid,
            solids: liquid.solids.ratio(),
            density: liquid.density,
        });
    }
    let water = |key: PartKey, unless_chosen: bool, flow: MassRate| {
        let density = water::density(ThermodynamicTemperature::new::<degree_celsius>(20.0)).ok()?;
        let in_tank = chosen(&key).unwrap_or(unless_chosen);
        let solids = Ratio::new::<ratio>(0.0);
        Some(PremixCandidate { key, liquid: None, role: None, substance: None, in_tank, flow, solids, density })
    };
    parts.extend(thinned.then(|| water(PartKey::Thinning, thinned_inside, thinning)).flatten());
    parts.extend(water(PartKey::Water, false, case.solved.water.dose));
    parts
}

/// A liquid is known by its name, or by its number while it has none.
fn key_of(liquid: &LiquidDraft) -> PartKey {
    let name = liquid.name.trim();
    PartKey::Liquid(if name.is_empty() { format!("#{}", liquid.id.0) } else { name.to_owned() })
}

/// An isocyanate never does, whatever it is for.
const fn goes_in(role: Role, substance: Substance) -> bool {
    match role {
        Role::Binder | Role::Hardener | Role::Scavenger => !substance.is_isocyanate(),
        Role::Wax | Role::ReleaseAgent | Role::Other => false,
    }
}

/// The glue of the parts in the tank. Its parts are in the order of those candidates that go in.
///
/// # Errors
/// [`MixError`], with those of [`glue_batch::batch`], and [`GlueError::IsocyanateWithWater`].
pub fn batch(mix: &MixDraft, tank: &[PremixCandidate]) -> Result<Batch, MixError<GlueError>> {
    if wets_isocyanate(tank) {
        return Err(MixError::Refused(GlueError::IsocyanateWithWater));
    }
    let wanted = wanted(mix, mix.glue_way, MixField::GlueMass, MixField::GlueVolume)?;
    let parts = tank.iter().filter(|candidate| candidate.in_tank).map(|candidate| {
        let PremixCandidate { flow, solids, density, .. } = *candidate;
        Ok(match mix.share_way {
            ShareWay::Recipe => GlueComponent::from_flow(flow, solids, density),
            ShareWay::Typed => {
                let share = mix.share(&candidate.key).map_err(|_| MixError::Entry)?;
                GlueComponent { share: Ratio::new::<ratio>(share), solids, density }
            }
        })
    });
    let parts = parts.collect::<Result<Vec<_>, _>>()?;
    glue_batch::batch(&parts, wanted).map_err(MixError::Refused)
}

/// Fills in the parts by mass that nobody typed, in the recipe's proportions, to 100 parts of the
/// first part that flows.
pub fn fill_in_shares(mix: &mut MixDraft, tank: &[PremixCandidate], mark: DecimalMark) {
    let Some(first) = tank.iter().map(|candidate| candidate.flow).find(|flow| flow.value > 0.0) else { return };
    for candidate in tank {
        let part = mix.part_mut(&candidate.key);
        if part.share.is_blank() || part.share.preset {
            let share: Ratio = candidate.flow / first;
            // Four digits: what a scale for a tank can do.
            let rounded = four_digits(share.get::<ratio>() * 100.0);
            part.share = Entry::preset(editable(rounded, mark), Unit::One);
        }
    }
}

fn four_digits(value: f64) -> f64 {
    if value > 0.0 && value.is_finite() {
        let step = 10_f64.powf(value.log10().floor() - 3.0);
        (value / step).round() * step
    } else {
        0.0
    }
}

/// The cautions for what goes into the tank together.
#[must_use]
pub fn cautions(tank: &[PremixCandidate]) -> Vec<Caution> {
    let substance = |what: fn(Substance) -> bool| {
        tank.iter().any(|candidate| candidate.in_tank && candidate.substance.is_some_and(what))
    };
    let hardener = tank.iter().any(|candidate| candidate.in_tank && candidate.role == Some(Role::Hardener));
    let applies = |caution: &Caution| match caution {
        Caution::Isocyanate => substance(Substance::is_isocyanate),
        Caution::Formaldehyde => substance(Substance::has_formaldehyde),
        Caution::Alkaline => substance(|substance| substance == Substance::Pf),
        Caution::AcidCure => hardener || substance(Substance::is_hardener_salt),
        Caution::Oxidiser => substance(|substance| substance == Substance::AmmoniumNitrate),
        Caution::Ammonia => substance(|substance| substance == Substance::Pf) && substance(Substance::is_hardener_salt),
        Caution::Corrosion => substance(|substance| substance == Substance::AmmoniumChloride),
        _ => false,
    };
    Caution::ALL.iter().copied().filter(applies).collect()
}

/// Whether an isocyanate would be in one tank with something that brings water.
#[must_use]
fn wets_isocyanate(tank: &[PremixCandidate]) -> bool {
    let isocyanate = |candidate: &PremixCandidate| candidate.substance.is_some_and(Substance::is_isocyanate);
    let inside = || tank.iter().filter(|candidate| candidate.in_tank);
    inside().any(isocyanate)
        && inside().any(|candidate| !isocyanate(candidate) && candidate.solids.get::<ratio>() < 1.0)
}
