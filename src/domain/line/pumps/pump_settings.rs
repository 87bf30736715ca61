//! What every pump has to be set to for a recipe.

use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::pumps::curve::{Curve, SettingFor};
use crate::domain::line::pumps::dial::{dial, range_status};
use crate::domain::line::pumps::drift::{Drift, drift};
use crate::domain::line::pumps::help::Help;
use crate::domain::line::pumps::nozzles::{Fits, Opened, open};
use crate::domain::line::pumps::pump::{Pump, PumpId};
use crate::domain::line::pumps::range_status::RangeStatus;
use crate::domain::line::pumps::setting::{Setting, SettingRange, SettingUnit};
use crate::domain::line::tanks::draw::{drawn, water_density};
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::finding::Grade;
use crate::domain::recipe::input::{Liquid, WaterPlan};
use crate::quantity::{Amount, Kind, Solids};
use uom::ConstZero;
use uom::si::f64::{MassDensity, MassRate, Ratio, SpecificVolume, VolumeRate};

/// What the pumps have to do.
#[derive(Debug, Clone, PartialEq)]
pub struct PumpSettings {
    /// Oven-dry fibre flow F.
    pub fibre: MassRate,
    /// What the belt scale reads, G.
    pub fibre_wet: MassRate,
    /// The pumps that this recipe uses, in the order of the page.
    pub rows: Vec<PumpRow>,
    /// What there is to say.
    pub findings: Vec<LineFinding>,
}

/// What one pump has to do.
#[derive(Debug, Clone, PartialEq)]
pub struct PumpRow {
    /// The pump.
    pub pump: PumpId,
    /// The scale of its drive.
    pub unit: SettingUnit,
    /// What it delivers.
    pub fed: Fed,
    /// Share of that which it delivers.
    pub share: Ratio,
    /// Density of what it delivers.
    pub density: MassDensity,
    /// Flow wanted, by mass. Zero: the pump stands.
    pub mass: MassRate,
    /// Flow wanted, by volume.
    pub volume: VolumeRate,
    /// Its line at that density; `None` without a catch test that counts.
    pub curve: Option<Curve>,
    /// The setting; `None` without a line, when the pump stands, or when the line gives none from zero up.
    pub setting: Option<SettingFor>,
    /// The setting as the drive takes it; `None` where the pump must not run there.
    pub set_to: Option<Setting>,
    /// Where the setting lies.
    pub range_status: RangeStatus,
    /// Settings that are tested and allowed.
    pub usable: Option<SettingRange>,
    /// Where the setting lies between the lowest (0) and the highest (1) tested one; below 0 or above 1 when
    /// outside.
    pub place: Option<f64>,
    /// Fibre flows that it serves.
    pub reach: Option<FibreRange>,
    /// Nozzles to open.
    pub nozzles: Option<Opened>,
    /// Through the nozzles, by volume: with the thinning water, volumes added up.
    pub spray: VolumeRate,
    /// Mass per mass of moist fibre, as the belt scale reads it.
    pub per_fibre: Ratio,
    /// Volume per mass of moist fibre, as the belt scale reads it.
    pub volume_per_fibre: SpecificVolume,
    /// The last catch test against the one before, at this setting.
    pub drift: Option<Drift>,
}

/// The fibre flows, oven-dry, that a pump serves within its settings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FibreRange {
    /// Least.
    pub least: MassRate,
    /// Most.
    pub most: MassRate,
}

/// Works out the settings of all pumps for a solved recipe.
///
/// The draft must be the one that the case was solved from: it names the liquids.
#[must_use]
pub fn pump_settings(draft: &Draft, case: &Case, line: &CheckedLine) -> PumpSettings {
    let mut findings = Vec::new();
    let mut rows = Vec::new();
    for pump in &line.pumps {
        match pump.feeds.within(draft).and_then(|fed| row(pump, fed, case)) {
            Some(row) => {
                examine(pump, &row, case, &mut findings);
                rows.push(row);
            }
            None => {
                findings.push(LineFinding::new(Grade::Note, LinePlace::Pump(pump.id), LineFindingKind::NotInRecipe))
            }
        }
    }
    let served = |fed: Fed| rows.iter().any(|row| row.fed == fed);
    for flow in &case.solved.liquids {
        if flow.liquid > MassRate::ZERO && !served(Fed::Liquid(flow.id)) {
            findings.push(LineFinding::new(Grade::Unusual, LinePlace::Liquid(flow.id), LineFindingKind::NoPump));
        }
    }
    if case.solved.water.dose > MassRate::ZERO && !served(Fed::Water) {
        findings.push(LineFinding::new(Grade::Unusual, LinePlace::Water, LineFindingKind::NoPump));
    }
    findings.sort_by_key(|finding| finding.grade);
    PumpSettings { fibre: case.solved.fibre, fibre_wet: case.solved.fibre_wet, rows, findings }
}

/// The recipe as a line can run it.
///
/// # Errors
/// [`LineFindingKind::NoRecipe`] without a balance, [`LineFindingKind::NoFibreFlow`] for a recipe of a laboratory.
pub fn on_line(case: Option<&Case>) -> Result<&Case, LineFinding> {
    let case = case.ok_or(LineFinding::stop(LinePlace::Line, LineFindingKind::NoRecipe))?;
    if case.has_flow() { Ok(case) } else { Err(LineFinding::stop(LinePlace::Line, LineFindingKind::NoFibreFlow)) }
}

/// The same, where the recipe may have no balance and the mill no pumps.
///
/// # Errors
/// The one finding that stands in the way: one of [`on_line`], or [`LineFindingKind::NoPumps`].
pub fn try_pump_settings(draft: &Draft, case: Option<&Case>, line: &CheckedLine) -> Result<PumpSettings, LineFinding> {
    let case = on_line(case)?;
    if line.pumps.is_empty() {
        return Err(LineFinding::stop(LinePlace::Line, LineFindingKind::NoPumps));
    }
    Ok(pump_settings(draft, case, line))
}

/// What a pump has to deliver and its setting, without what a rate card or a trim does not show.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::domain::line) struct Bare {
    pub(in crate::domain::line) mass: MassRate,
    pub(in crate::domain::line) density: MassDensity,
    pub(in crate::domain::line) curve: Option<Curve>,
    pub(in crate::domain::line) setting: Option<Setting>,
    pub(in crate::domain::line) set_to: Option<Setting>,
    pub(in crate::domain::line) range_status: RangeStatus,
}

/// The bare setting of one pump; `None` when the recipe does not have what it feeds.
pub(in crate::domain::line) fn bare(pump: &Pump, fed: Fed, case: &Case) -> Option<Bare> {
    let (whole, density) = drawn(case, fed)?;
    let mass = whole * pump.share;
    let curve = pump.last().map(|last| last.curve.at_density(pump.metering, last.density, density));
    let runs = mass > MassRate::ZERO;
    let setting = curve.filter(|_| runs).and_then(|curve| curve.setting(mass));
    let range_status = match (&curve, setting) {
        (Some(curve), Some(setting)) => range_status(pump, curve, setting),
        // Not even a setting of zero gives so little.
        (Some(_), None) if runs => RangeStatus::BelowLimit,
        _ => RangeStatus::Within,
    };
    let set_to = setting.and_then(|setting| dial(pump, setting, range_status));
    Some(Bare { mass, density, curve, setting, set_to, range_status })
}

/// One pump of the sheet; `None` when the recipe does not have what it feeds.
#[must_use]
pub fn row(pump: &Pump, fed: Fed, case: &Case) -> Option<PumpRow> {
    let Bare { mass, density, curve, setting, set_to, range_status } = bare(pump, fed, case)?;
    let volume: VolumeRate = mass / density;
    let spray = volume + thinning(fed, case) * pump.share / water_density();
    let setting = curve.filter(|_| setting.is_some()).and_then(|curve| curve.setting_for(mass));
    let usable = curve.map(|curve| usable(pump, &curve));
    let reach = curve.zip(usable).and_then(|(curve, usable)| reach(&curve, usable, fed, mass, case));
    let place = curve.zip(setting).and_then(|(curve, setting)| {
        let tested = curve.tested();
        crate::quantity::number::finite((setting.setting.0 - tested.low.0) / (tested.high.0 - tested.low.0))
    });
    Some(PumpRow {
        pump: pump.id,
        unit: pump.unit,
        fed,
        share: pump.share,
        density,
        mass,
        volume,
        curve,
        setting,
        set_to,
        range_status,
        usable,
        place,
        reach,
        nozzles: pump.nozzles.and_then(|nozzles| open(&nozzles, spray)),
        spray,
        per_fibre: mass / case.solved.fibre_wet,
        volume_per_fibre: volume / case.solved.fibre_wet,
        drift: setting.and_then(|setting| drift(pump, setting.setting, density).into_iter().next()),
    })
}

/// Water that thins a liquid before its nozzles.
fn thinning(fed: Fed, case: &Case) -> MassRate {
    match fed {
        Fed::Liquid(id) => drawn(case, Fed::Thinning(id)).map_or(MassRate::ZERO, |(water, _)| water),
        Fed::Thinning(_) | Fed::Water | Fed::FaceWater => MassRate::ZERO,
    }
}

fn usable(pump: &Pump, curve: &Curve) -> SettingRange {
    let tested = curve.tested();
    let low = pump.least.map_or(tested.low.0, |least| tested.low.0.max(least.0));
    let high = pump.most.map_or(tested.high.0, |most| tested.high.0.min(most.0));
    SettingRange { low: Setting(low), high: Setting(high) }
}

/// Whether what is fed grows in proportion to the fibre.
fn follows_fibre(fed: Fed, case: &Case) -> bool {
    !(fed == Fed::Water && matches!(case.input.water, WaterPlan::Flow(_)))
}

/// Everything that follows the fibre grows in proportion to it, so the flow at a bound is F·L_bound/L.
fn reach(curve: &Curve, usable: SettingRange, fed: Fed, mass: MassRate, case: &Case) -> Option<FibreRange> {
    if mass <= MassRate::ZERO || usable.low > usable.high || !follows_fibre(fed, case) {
        return None;
    }
    let at = |setting| case.solved.fibre * (curve.flow(setting) / mass);
    let reach = FibreRange { least: at(usable.low), most: at(usable.high) };
    (reach.least.is_finite() && reach.most.is_finite()).then_some(reach)
}

fn examine(pump: &Pump, row: &PumpRow, case: &Case, findings: &mut Vec<LineFinding>) {
    let mut say = |grade, what| findings.push(LineFinding::new(grade, LinePlace::Pump(pump.id), what));
    if row.mass > MassRate::ZERO && row.curve.is_none() {
        say(Grade::Stop, if pump.faulty_test { LineFindingKind::FaultyTest } else { LineFindingKind::NotCalibrated });
    }
    if row.range_status != RangeStatus::Within {
        let fibre = |flow: MassRate| Amount::from_base(Kind::FibreFlow, flow.value);
        let what = LineFindingKind::OutOfReach {
            range_status: row.range_status,
            setting: row.setting.map(|setting| setting.setting.amount(pump.unit)),
            least_fibre: row.reach.map(|reach| fibre(reach.least)),
            most_fibre: row.reach.map(|reach| fibre(reach.most)),
            help: help(pump, row, case),
        };
        say(Grade::Unusual, what);
    }
    if let Some((opened, nozzles)) = row.nozzles.zip(pump.nozzles) {
        let flow = |flow: VolumeRate| Amount::from_base(Kind::PumpFlow, flow.value);
        let each = flow(opened.each);
        match opened.fits {
            Fits::Within => {}
            Fits::TooFew => say(Grade::Unusual, LineFindingKind::NozzlesTooFew { each, most: flow(nozzles.most) }),
            Fits::TooMany => say(Grade::Unusual, LineFindingKind::NozzlesTooMany { each, least: flow(nozzles.least) }),
            Fits::Between => say(Grade::Unusual, LineFindingKind::NozzlesBetween { open: opened.open }),
        }
    }
}

/// What would bring the pump back within its settings.
fn help(pump: &Pump, row: &PumpRow, case: &Case) -> Vec<Help> {
    let Some((curve, usable)) = row.curve.zip(row.usable) else { return Vec::new() };
    let mut help = Vec::new();
    let tested_only = matches!(row.range_status, RangeStatus::BelowTested | RangeStatus::AboveTested);
    if let Some(setting) = row.setting.filter(|_| tested_only) {
        help.push(Help::TestTo(setting.setting, pump.unit));
    }
    let low = matches!(row.range_status, RangeStatus::BelowTested | RangeStatus::BelowLimit);
    if let Some(reach) = row.reach {
        let fibre = if low { Help::FibreAtLeast(reach.least) } else { Help::FibreAtMost(reach.most) };
        help.push(fibre);
    }
    // At the bound the same solids come in another amount of liquid: s·L/L_bound. Never of an isocyanate, which has no water, and not
    // on the faces, where the dose is one of liquid and not of solids.
    let bound = curve.flow(if low { usable.low } else { usable.high });
    let liquid = |id| case.input.liquids.as_slice().iter().find(move |liquid| liquid.id == id);
    if let Fed::Liquid(id) = row.fed
        && bound > MassRate::ZERO
        && !liquid(id).is_some_and(|liquid| liquid.substance.is_isocyanate() || liquid.dosing.on_faces().is_some())
        && let Some(solids) = liquid(id).and_then(|liquid: &Liquid| {
            let factor: Ratio = row.mass / bound;
            Solids::new((liquid.solids.ratio() * factor).value)
        })
    {
        help.push(Help::Solids(solids));
    }
    help.push(Help::OtherPump(row.mass));
    help
}
