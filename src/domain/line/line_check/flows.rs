//! From readings to what runs, each reading taken as right.

use crate::domain::balance::outcome::Case;
use crate::domain::line::checked::CheckedLine;
use crate::domain::line::finding::{LineFinding, LineFindingKind, LinePlace};
use crate::domain::line::line_check::actual::{Actual, FlowSource, LiquidActual, PumpActual};
use crate::domain::line::line_check::reading::{MeterReading, Readings};
use crate::domain::line::pumps::pump::Pump;
use crate::domain::line::tanks::draw::drawn;
use crate::domain::line::tanks::feeds::Fed;
use crate::domain::recipe::draft::Draft;
use crate::domain::recipe::finding::Grade;
use crate::quantity::Moisture;
use uom::ConstZero;
use uom::si::f64::{MassDensity, MassRate, Ratio};
use uom::si::ratio::ratio;

/// What runs; `target` is the recipe at the fibre that was read. `None` where a figure leaves the range of numbers.
///
/// Doses are solids per oven-dry fibre, F = G/(1+ω_f). A pump that was not read is assumed to run at its target, and
/// so is the thinning water of a liquid without a pump of its own, in proportion to the liquid. The board density
/// is what the mat weight of the sample, with the solids on its faces, gives when it is pressed to the recipe's thickness:
/// ρ = M·(1+ω_b)/(t + k·a).
pub(super) fn actual(
    draft: &Draft,
    case: &Case,
    target: &Case,
    line: &CheckedLine,
    readings: &Readings,
    findings: &mut Vec<LineFinding>,
) -> Option<Actual> {
    let pumps: Vec<PumpActual> = line
        .pumps
        .iter()
        .filter_map(|pump| pump_actual(pump, pump.feeds.within(draft)?, target, readings, findings))
        .collect();
    let fibre = target.solved.fibre;
    let liquids: Vec<LiquidActual> = target
        .input
        .liquids
        .as_slice()
        .iter()
        .filter_map(|liquid| {
            let (mass, source) = together(&pumps, Fed::Liquid(liquid.id), target)?;
            let solids = mass * liquid.solids.ratio();
            let dose = case.solved.liquids.iter().find(|flow| flow.id == liquid.id)?.solids_on_fibre;
            let on_fibre = solids / fibre;
            let deviation = (dose.value > 0.0).then(|| on_fibre / dose - one());
            Some(LiquidActual { id: liquid.id, mass, source, solids, on_fibre, target: dose, deviation })
        })
        .collect();
    // What is sprayed on the faces runs as well, but is no part of the furnish.
    let on_faces = |id| target.liquid(id).is_some_and(|flow| flow.on_faces);
    let furnish: Vec<&LiquidActual> = liquids.iter().filter(|liquid| !on_faces(liquid.id)).collect();
    let thinning: MassRate = furnish.iter().map(|liquid| thinning(liquid, &pumps, target)).sum();
    let (water, water_source) = together(&pumps, Fed::Water, target)?;
    let with_liquids = furnish.iter().map(|liquid| liquid.mass - liquid.solids).sum::<MassRate>() + thinning;
    let solids = fibre + furnish.iter().map(|liquid| liquid.solids).sum::<MassRate>();
    let total = fibre * readings.moisture.dry_basis() + with_liquids + water;
    let furnish_moisture = Moisture::from_dry_basis((total / solids).value)?;
    // More cannot be lost than is there; a reading that says so is off, and zero is what is left.
    let mat_moisture = Moisture::from_dry_basis((total / solids - case.input.drying_loss).value.max(0.0))?;
    let mat_od = readings.sample.map(|sample| {
        let moisture = sample.moisture.unwrap_or(mat_moisture);
        sample.mass / sample.area / moisture.wet_per_dry()
    });
    let board = &case.input.board;
    let pressed = board.thickness + board.surface_ratio * (board.sand_top + board.sand_bottom);
    let on_faces = target.solved.mat.on_faces;
    let density: Option<MassDensity> = mat_od.map(|od| (od + on_faces) * board.moisture.wet_per_dry() / pressed);
    let flowing = |source, mass: MassRate| if mass > MassRate::ZERO { source } else { FlowSource::Read };
    let flows_source = furnish
        .iter()
        .map(|liquid| flowing(liquid.source, liquid.mass))
        .chain([flowing(water_source, water)])
        .max()
        .unwrap_or(FlowSource::Read);
    let actual = Actual {
        fibre_wet: readings.belt,
        fibre,
        fibre_moisture: readings.moisture,
        pumps,
        liquids,
        water,
        water_source,
        solids,
        furnish_moisture,
        mat_moisture,
        flows_source,
        sample_moisture: readings.sample.and_then(|sample| sample.moisture),
        mat_od,
        density,
        line_speed: readings.line_speed,
    };
    actual.is_finite().then_some(actual)
}

fn one() -> Ratio {
    Ratio::new::<ratio>(1.0)
}

fn pump_actual(
    pump: &Pump,
    fed: Fed,
    target: &Case,
    readings: &Readings,
    findings: &mut Vec<LineFinding>,
) -> Option<PumpActual> {
    let (whole, density) = drawn(target, fed)?;
    let reading = readings.pump(pump.id);
    let curve = pump.last().map(|last| last.curve.at_density(pump.metering, last.density, density));
    let metered = reading.and_then(|reading| reading.meter).map(|meter| match meter {
        MeterReading::Mass(mass) => mass,
        MeterReading::Volume(volume) => volume * density,
    });
    let setting = reading.and_then(|reading| reading.setting);
    let mut say = |grade, what| findings.push(LineFinding::new(grade, LinePlace::Pump(pump.id), what));
    if setting.is_some() && curve.is_none() {
        say(Grade::Unusual, LineFindingKind::NotCalibrated);
    }
    let by_line = curve.zip(setting).map(|(curve, setting)| curve.flow(setting));
    let expected = curve.zip(setting).and_then(|(curve, setting)| curve.prediction(setting));
    let assumed = whole * pump.share;
    let (mass, source) = match (metered, by_line) {
        (Some(mass), _) => (mass, FlowSource::Read),
        (None, Some(mass)) => (mass, FlowSource::Inferred),
        (None, None) => (assumed, FlowSource::Assumed),
    };
    if source == FlowSource::Assumed && assumed > MassRate::ZERO {
        say(Grade::Note, LineFindingKind::Assumed);
    }
    Some(PumpActual { pump: pump.id, fed, mass, source, metered, setting, by_line, expected })
}

/// What all pumps of one thing deliver together, or the recipe's flow without one.
fn together(pumps: &[PumpActual], fed: Fed, target: &Case) -> Option<(MassRate, FlowSource)> {
    let own: Vec<&PumpActual> = pumps.iter().filter(|pump| pump.fed == fed).collect();
    match own.iter().map(|pump| pump.source).max() {
        Some(source) => Some((own.iter().map(|pump| pump.mass).sum(), source)),
        None => Some((drawn(target, fed)?.0, FlowSource::Assumed)),
    }
}

fn thinning(liquid: &LiquidActual, pumps: &[PumpActual], target: &Case) -> MassRate {
    let fed = Fed::Thinning(liquid.id);
    if pumps.iter().any(|pump| pump.fed == fed && pump.source != FlowSource::Assumed) {
        return pumps.iter().filter(|pump| pump.fed == fed).map(|pump| pump.mass).sum();
    }
    let recipe = target.solved.liquids.iter().find(|flow| flow.id == liquid.id);
    recipe
        .filter(|flow| flow.liquid > MassRate::ZERO)
        .map_or(MassRate::ZERO, |flow| flow.thinning * (liquid.mass / flow.liquid))
}
