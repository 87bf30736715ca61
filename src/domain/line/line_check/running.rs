//! What really runs, from the readings of the line and a weighed piece of mat.

use crate::domain::balance::outcome::Case;
use crate::domain::line::book::CardRows;
use crate::domain::line::checked::{CheckedLine, Tolerances};
use crate::domain::line::finding::{LineFinding, LinePlace, LineWhat};
use crate::domain::line::line_check::correction::{FormerTrim, Trim, former_trim, trims};
use crate::domain::line::line_check::deviation::{Check, RunFigure, checks};
use crate::domain::line::line_check::diagnosis::{Culprit, Signs, culprits};
use crate::domain::line::line_check::reading::{Reading, Readings};
use crate::domain::line::pumps::pump::{Pump, PumpId};
use crate::domain::line::pumps::setting::Setting;
use crate::domain::line::pumps::settings_table::at;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::line::tanks::tank::drawn;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::finding::Grade;
use crate::domain::recipe::liquid::LiquidId;
use crate::quantity::Moisture;
use uom::ConstZero;
use uom::si::f64::{ArealMassDensity, MassDensity, MassRate, Ratio};
use uom::si::ratio::ratio;

/// Where a flow comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Known {
    /// Read at the line.
    Read,
    /// Not read: taken as the recipe wants it at this belt reading.
    Assumed,
}

/// One pump as it runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PumpRun {
    /// The pump.
    pub pump: PumpId,
    /// What it delivers.
    pub fed: Fed,
    /// By mass.
    pub mass: MassRate,
    /// Where that comes from.
    pub known: Known,
    /// Its setting, when that was read.
    pub setting: Option<Setting>,
}

/// One liquid as it runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LiquidRun {
    /// Its number within the recipe.
    pub id: LiquidId,
    /// Flow of all its pumps, as delivered.
    pub mass: MassRate,
    /// Whether all of that was read.
    pub known: Known,
    /// Solids.
    pub solids: MassRate,
    /// Dose really applied: solids per oven-dry fibre.
    pub on_fibre: Ratio,
    /// Dose of the recipe, on the same basis.
    pub wanted: Ratio,
    /// Relative deviation, on_fibre/wanted − 1; `None` when the recipe wants none.
    pub deviation: Option<Ratio>,
}

/// What really runs.
#[derive(Debug, Clone, PartialEq)]
pub struct Running {
    /// What the belt scale reads, G.
    pub fibre_wet: MassRate,
    /// Oven-dry fibre flow F = G/(1+ω_f).
    pub fibre: MassRate,
    /// The moisture that was read, ω_f.
    pub fibre_moisture: Moisture,
    /// The pumps.
    pub pumps: Vec<PumpRun>,
    /// The liquids, in the recipe's order.
    pub liquids: Vec<LiquidRun>,
    /// Dosed water.
    pub water: MassRate,
    /// Whether that was read.
    pub water_known: Known,
    /// Solids of the furnish.
    pub solids: MassRate,
    /// Furnish moisture as it leaves the blender, from the flows.
    pub furnish_moisture: Moisture,
    /// Mat moisture from the flows, less the recipe's drying loss.
    pub mat_moisture: Moisture,
    /// Mat moisture of the sample.
    pub sample_moisture: Option<Moisture>,
    /// The fibre moisture at which these flows give the mat moisture of the sample.
    pub implied_fibre_moisture: Option<Moisture>,
    /// Oven-dry mat weight of the sample.
    pub mat_od: Option<ArealMassDensity>,
    /// Board density that this mat weight gives, at board moisture.
    pub density: Option<MassDensity>,
    /// Every figure that is held against the recipe.
    pub checks: Vec<Check>,
    /// What brings the pumps back to the recipe at this fibre.
    pub trims: Vec<Trim>,
    /// What brings the mat weight back.
    pub former: Option<FormerTrim>,
    /// The likely reasons for what is off, the likeliest first.
    pub culprits: Vec<Culprit>,
    /// What there is to say.
    pub findings: Vec<LineFinding>,
}

/// Holds what runs against the recipe. `None` when the recipe has no balance at this fibre, or a figure
/// leaves the range of numbers.
///
/// Doses are solids per oven-dry fibre, F = G/(1+ω_f). A pump that was not read is taken to run as the
/// recipe wants at this belt reading, and so is the thinning water of a liquid without a pump of its own, in
/// proportion to the liquid. The board density is what the mat weight of the sample gives when it is pressed
/// to the recipe's thickness: ρ = M·(1+ω_b)/(t + k·a).
#[must_use]
pub fn run(
    draft: &Draft,
    case: &Case,
    line: &CheckedLine,
    tolerances: &Tolerances,
    readings: &Readings,
) -> Option<Running> {
    let wanted = at(case, CardRows::Belt, readings.belt, readings.moisture)?;
    let mut findings = Vec::new();
    let pumps: Vec<PumpRun> = line
        .pumps
        .iter()
        .filter_map(|pump| pump_run(pump, pump.feeds.within(draft)?, &wanted, readings, &mut findings))
        .collect();
    let fibre = wanted.solved.fibre;
    let liquids: Vec<LiquidRun> = wanted
        .input
        .liquids
        .as_slice()
        .iter()
        .filter_map(|liquid| {
            let (mass, known) = together(&pumps, Fed::Liquid(liquid.id), &wanted)?;
            let solids = mass * liquid.solids.ratio();
            let dose = case.solved.liquids.iter().find(|flow| flow.id == liquid.id)?.solids_on_fibre;
            let on_fibre = solids / fibre;
            let deviation = (dose.value > 0.0).then(|| on_fibre / dose - one());
            Some(LiquidRun { id: liquid.id, mass, known, solids, on_fibre, wanted: dose, deviation })
        })
        .collect();
    let thinning: MassRate = liquids.iter().map(|liquid| thinning(liquid, &pumps, &wanted)).sum();
    let (water, water_known) = together(&pumps, Fed::Water, &wanted)?;
    let with_liquids = liquids.iter().map(|liquid| liquid.mass - liquid.solids).sum::<MassRate>() + thinning;
    let solids = fibre + liquids.iter().map(|liquid| liquid.solids).sum::<MassRate>();
    let total = fibre * readings.moisture.dry_basis() + with_liquids + water;
    let furnish_moisture = Moisture::from_dry_basis((total / solids).value)?;
    let loss = case.input.drying_loss;
    // More cannot be lost than is there; a reading that says so is off, and zero is what is left.
    let mat_moisture = Moisture::from_dry_basis((total / solids - loss).value.max(0.0))?;
    let sample_moisture = readings.sample.and_then(|sample| sample.moisture);
    let implied_fibre_moisture = sample_moisture.and_then(|moisture| {
        // G − F + W = (ω + δ)·(F + Σm), solved for F; then ω_f = G/F − 1.
        let wet = moisture.dry_basis() + loss;
        let sprayed = solids - fibre;
        let fibre = (readings.belt + with_liquids + water - sprayed * wet) / (one() + wet);
        Moisture::from_dry_basis((readings.belt / fibre - one()).value)
    });
    let mat_od = readings.sample.map(|sample| {
        let moisture = sample.moisture.unwrap_or(mat_moisture);
        sample.mass / sample.area / moisture.wet_per_dry()
    });
    let board = &case.input.board;
    let pressed = board.thickness + board.surface_ratio * (board.sand_top + board.sand_bottom);
    let density: Option<MassDensity> = mat_od.map(|od| od * board.moisture.wet_per_dry() / pressed);
    let mut running = Running {
        fibre_wet: readings.belt,
        fibre,
        fibre_moisture: readings.moisture,
        pumps,
        liquids,
        water,
        water_known,
        solids,
        furnish_moisture,
        mat_moisture,
        sample_moisture,
        implied_fibre_moisture,
        mat_od,
        density,
        checks: Vec::new(),
        trims: Vec::new(),
        former: None,
        culprits: Vec::new(),
        findings,
    };
    running.checks = checks(&running, case, &wanted, tolerances);
    running.trims = trims(&running, line, &wanted);
    running.former = former_trim(&running, case);
    running.culprits = culprits(&Signs { running: &running, tolerances });
    running.is_finite().then_some(running)
}

fn one() -> Ratio {
    Ratio::new::<ratio>(1.0)
}

fn pump_run(
    pump: &Pump,
    fed: Fed,
    wanted: &Case,
    readings: &Readings,
    findings: &mut Vec<LineFinding>,
) -> Option<PumpRun> {
    let (whole, density) = drawn(wanted, fed)?;
    let reading = readings.pumps.iter().find(|(id, _)| *id == pump.id).map(|(_, reading)| *reading);
    let curve = pump.last().map(|last| last.curve.at_density(pump.metering, last.density, density));
    let read = match reading {
        Some(Reading::Mass(mass)) => Some(mass),
        Some(Reading::Volume(volume)) => Some(volume * density),
        Some(Reading::Setting(setting)) => {
            if curve.is_none() {
                findings.push(LineFinding::new(Grade::Unusual, LinePlace::Pump(pump.id), LineWhat::NotCalibrated));
            }
            curve.map(|curve| curve.flow(setting))
        }
        None => None,
    };
    let assumed = whole * pump.share;
    if read.is_none() && assumed > MassRate::ZERO {
        findings.push(LineFinding::new(Grade::Note, LinePlace::Pump(pump.id), LineWhat::Assumed));
    }
    let setting = match reading {
        Some(Reading::Setting(setting)) => Some(setting),
        _ => None,
    };
    let known = if read.is_some() { Known::Read } else { Known::Assumed };
    Some(PumpRun { pump: pump.id, fed, mass: read.unwrap_or(assumed), known, setting })
}

/// What all pumps of one thing deliver together, or the recipe's flow without one.
fn together(pumps: &[PumpRun], fed: Fed, wanted: &Case) -> Option<(MassRate, Known)> {
    let own: Vec<&PumpRun> = pumps.iter().filter(|pump| pump.fed == fed).collect();
    if own.is_empty() {
        return Some((drawn(wanted, fed)?.0, Known::Assumed));
    }
    let known = if own.iter().all(|pump| pump.known == Known::Read) { Known::Read } else { Known::Assumed };
    Some((own.iter().map(|pump| pump.mass).sum(), known))
}

fn thinning(liquid: &LiquidRun, pumps: &[PumpRun], wanted: &Case) -> MassRate {
    let fed = Fed::Thinning(liquid.id);
    if pumps.iter().any(|pump| pump.fed == fed && pump.known == Known::Read) {
        return pumps.iter().filter(|pump| pump.fed == fed).map(|pump| pump.mass).sum();
    }
    let recipe = wanted.solved.liquids.iter().find(|flow| flow.id == liquid.id);
    recipe
        .filter(|flow| flow.liquid > MassRate::ZERO)
        .map_or(MassRate::ZERO, |flow| flow.thinning * (liquid.mass / flow.liquid))
}

impl Running {
    /// The check of a figure.
    #[must_use]
    pub fn check(&self, figure: RunFigure) -> Option<&Check> {
        self.checks.iter().find(|check| check.figure == figure)
    }

    fn is_finite(&self) -> bool {
        let liquids = self.liquids.iter().flat_map(|liquid| [liquid.mass.value, liquid.on_fibre.value]);
        let plain = [self.fibre.value, self.water.value, self.solids.value];
        let optional = [self.mat_od.map(|od| od.value), self.density.map(|density| density.value)];
        liquids.chain(plain).chain(optional.into_iter().flatten()).all(f64::is_finite)
    }
}
