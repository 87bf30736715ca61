//! Solves the balance.
//!
//! Every solids flow is a sum a·F + c·S: a dose on fibre adds to a, a dose per volume of board to c,
//! since the board made per hour follows from the furnish S that itself contains the dose. With
//! A = Σa and C = Σc the furnish is S = F·(1+A)/(1−C), without iteration, in either direction.

use crate::domain::balance::cost::Cost;
use crate::domain::balance::machine::capacities;
use crate::domain::balance::solved::{AreaRate, LineRun, LiquidFlow, Losses, Mat, Solved, Use, WaterBalance};
use crate::domain::chemistry::water::heat_to_evaporate;
use crate::domain::recipe::input::{Board, Dosing, Feed, Input, Liquid, Liquids, MOST_LIQUIDS, WaterPlan};
use crate::quantity::Moisture;
use arrayvec::ArrayVec;
use std::marker::PhantomData;
use uom::ConstZero;
use uom::si::f64::{
    ArealMassDensity, AvailableEnergy, Length, MassRate, Ratio, SpecificVolume, Time, Velocity, VolumeRate,
};
use uom::si::ratio::ratio;

/// Why a recipe within all bounds has no balance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Unsolvable {
    /// The doses per volume of board would make up the whole board or more, 1 − C is not above 0; or the solids on its faces would.
    DosesFillBoard {
        /// The share of the board's oven-dry mass that these doses ask for: C, or that of the faces.
        share: Ratio,
    },
    /// The furnish would lose more water on its way to the former than it holds.
    DriesBelowZero {
        /// Furnish moisture as it leaves the blender.
        blender_out: Moisture,
    },
    /// The mat's temperature is outside the range of the water tables.
    MatTemperature,
    /// A figure left the range of numbers.
    OutOfRange,
}

/// Solids of a liquid of the furnish as a·F + c·S; none for one on the faces.
#[derive(Clone, Copy, Default)]
struct SolidsPart {
    /// a
    of_fibre: Ratio,
    /// c
    of_furnish: Ratio,
}

fn one() -> Ratio {
    Ratio::new::<ratio>(1.0)
}

/// Oven-dry fibre flow of a recipe that has none. Nothing that grows with it is shown, so it may be any: 100 kg/h.
const NOMINAL: MassRate = MassRate { value: 100.0 / 3_600.0, dimension: PhantomData, units: PhantomData };

/// What is left of a board of additives only, in which no fibre can be told from rounding.
fn no_fibre() -> Ratio {
    Ratio::new::<ratio>(1e-9)
}

/// How far below 0 % a mat moisture comes out by rounding when it is to be exactly 0 %.
fn moisture_rounding() -> Ratio {
    Ratio::new::<ratio>(1e-12)
}

/// Solves the balance of a recipe.
///
/// # Errors
/// [`Unsolvable`] where doses or losses contradict each other, though each is possible by itself.
pub fn solve(input: &Input) -> Result<Solved, Unsolvable> {
    let Input { board, line, liquids, .. } = input;
    let pressed_thickness = board.thickness + board.sand_top + board.sand_bottom;
    let raw_board = board.density * (board.thickness + board.surface_ratio * (board.sand_top + board.sand_bottom));
    let od_board = raw_board / board.moisture.wet_per_dry();
    // What is sprayed on the faces is in the board and not in the mat that the former lays.
    let on_faces: ArealMassDensity = liquids.as_slice().iter().filter_map(solids_on_faces).sum();
    if on_faces > od_board * (one() - no_fibre()) {
        return Err(Unsolvable::DosesFillBoard { share: on_faces / od_board });
    }
    let od = od_board - on_faces;

    let net = one() - line.reject;
    let volume_per_solids = net * line.area_yield * board.thickness / od;
    let parts = solids_of(liquids, volume_per_solids);
    let of_fibre: Ratio = parts.iter().map(|part| part.of_fibre).sum();
    let of_furnish: Ratio = parts.iter().map(|part| part.of_furnish).sum();
    // A board of additives only has no fibre to put them on.
    if of_furnish > one() - no_fibre() {
        return Err(Unsolvable::DosesFillBoard { share: of_furnish });
    }
    let furnish_per_fibre: Ratio = (one() + of_fibre) / (one() - of_furnish);

    let fibre = match input.feed {
        Feed::OvenDry(flow) => flow,
        Feed::Belt(reading) => reading / input.fibre_moisture.wet_per_dry(),
        Feed::LineSpeed(speed, width) => speed * width * od / net / furnish_per_fibre,
        Feed::PressFactor(factor, press) => {
            press.length / (factor * pressed_thickness) * press.width * od / net / furnish_per_fibre
        }
        Feed::None => NOMINAL,
    };
    let solids = fibre * furnish_per_fibre;
    let net_solids = solids * net;

    let finished_area = net_solids / od * line.area_yield;
    let finished_volume: VolumeRate = finished_area * board.thickness;
    let run = run_line(input, net_solids, od, pressed_thickness, finished_area, finished_volume);

    let mut flows = ArrayVec::<LiquidFlow, MOST_LIQUIDS>::new();
    for (liquid, part) in liquids.as_slice().iter().zip(&parts) {
        let amount = match solids_on_faces(liquid) {
            Some(on_faces) => on_faces * (net_solids / od),
            None => fibre * part.of_fibre + solids * part.of_furnish,
        };
        flows.push(flow_of(liquid, amount, &Whole { fibre, solids, od, finished_volume, board }));
    }

    let water = balance_water(input, fibre, solids, &flows)?;
    let wet = od * water.mat.wet_per_dry();
    let height = line.bulk_density.map(|bulk| wet / bulk);
    let mat = Mat {
        pressed_thickness,
        raw_board,
        od,
        on_faces,
        wet,
        fibre: od * (fibre / solids),
        water: od * water.mat.dry_basis(),
        running: line.width.map(|width| wet * width),
        height,
        compaction: height.map(|height| height / pressed_thickness),
    };
    let heat_per_water = heat_to_evaporate(line.mat_temperature).map_err(|_| Unsolvable::MatTemperature)?;
    let losses = lose(input, solids, &run, &mat, &flows, water.mat, heat_per_water);
    let usage = use_up(input, fibre, &water, &flows, &run);
    let capacities = match input.feed {
        Feed::None => ArrayVec::new(),
        _ => capacities(&input.limits, fibre, solids, run.speed, run.press_factor),
    };
    let fibre_wet = fibre * input.fibre_moisture.wet_per_dry();
    let solved = Solved { fibre, fibre_wet, solids, liquids: flows, water, mat, line: run, losses, usage, capacities };
    if solved.is_finite() { Ok(solved) } else { Err(Unsolvable::OutOfRange) }
}

/// Resolves the tree of bases, each base before what is dosed on it.
fn solids_of(liquids: &Liquids, volume_per_solids: SpecificVolume) -> ArrayVec<SolidsPart, MOST_LIQUIDS> {
    let mut parts: ArrayVec<SolidsPart, MOST_LIQUIDS> =
        liquids.as_slice().iter().map(|_| SolidsPart::default()).collect();
    for (at, liquid) in liquids.bases_first() {
        let solids = liquid.solids.ratio();
        parts[at] = match liquid.dosing {
            Dosing::SolidsOnFibre(dose) => SolidsPart { of_fibre: dose.ratio(), of_furnish: Ratio::ZERO },
            Dosing::LiquidOnFibre(dose) => SolidsPart { of_fibre: dose.ratio() * solids, of_furnish: Ratio::ZERO },
            Dosing::LiquidPerBoard(dose) => {
                SolidsPart { of_fibre: Ratio::ZERO, of_furnish: dose * solids * volume_per_solids }
            }
            Dosing::SolidsOnLiquid(dose, base) => {
                let (base, dose) = (parts[base], dose.ratio());
                SolidsPart { of_fibre: dose * base.of_fibre, of_furnish: dose * base.of_furnish }
            }
            Dosing::LiquidOnFaces(..) => SolidsPart::default(),
        };
    }
    parts
}

/// Solids per area of mat of a liquid that is sprayed on its faces; `None` for what goes into the furnish.
fn solids_on_faces(liquid: &Liquid) -> Option<ArealMassDensity> {
    liquid.dosing.on_faces().map(|dose| dose * liquid.solids.ratio())
}

/// What a liquid's flow is compared with.
struct Whole<'a> {
    fibre: MassRate,
    solids: MassRate,
    od: ArealMassDensity,
    finished_volume: VolumeRate,
    board: &'a Board,
}

fn flow_of(liquid: &Liquid, solids: MassRate, whole: &Whole<'_>) -> LiquidFlow {
    let delivered = solids / liquid.solids.ratio();
    let spray = liquid.spray_solids.map_or(delivered, |thinned| solids / thinned.ratio());
    let on_faces = liquid.dosing.on_faces().is_some();
    let share = if on_faces { Ratio::ZERO } else { solids / whole.solids };
    let per_volume = delivered / whole.finished_volume;
    LiquidFlow {
        id: liquid.id,
        on_faces,
        solids,
        liquid: delivered,
        volume: delivered / liquid.density,
        water: delivered - solids,
        thinning: spray - delivered,
        spray,
        share,
        solids_on_fibre: solids / whole.fibre,
        liquid_on_fibre: delivered / whole.fibre,
        in_mat: whole.od * share,
        per_volume,
        per_area: per_volume * whole.board.thickness,
        per_board_mass: per_volume / whole.board.density,
        cost: liquid.price.map(|price| price.of_use(per_volume)),
    }
}

fn balance_water(
    input: &Input,
    fibre: MassRate,
    solids: MassRate,
    flows: &[LiquidFlow],
) -> Result<WaterBalance, Unsolvable> {
    let furnish = flows.iter().filter(|flow| !flow.on_faces);
    let with_liquids: MassRate = furnish.map(|flow| flow.water + flow.thinning).sum();
    let on_hand = fibre * input.fibre_moisture.dry_basis() + with_liquids;
    let needed = match input.water {
        WaterPlan::ToMatMoisture(wanted) => Some((wanted.dry_basis() + input.drying_loss) * solids),
        _ => None,
    };
    let zero = MassRate::ZERO;
    let (dose, excess) = match (input.water, needed) {
        (WaterPlan::ToMatMoisture(_), Some(needed)) => (zero.max(needed - on_hand), zero.max(on_hand - needed)),
        (WaterPlan::OnFibre(dose), _) => (fibre * dose.ratio(), zero),
        (WaterPlan::Flow(flow), _) => (flow, zero),
        _ => (zero, zero),
    };
    let blender_out = (on_hand + dose) / solids;
    let mat = blender_out - input.drying_loss;
    let blender_out = Moisture::from_dry_basis(blender_out.get::<ratio>()).ok_or(Unsolvable::OutOfRange)?;
    let mat = if mat < Ratio::ZERO && mat > -moisture_rounding() { Ratio::ZERO } else { mat };
    let mat = Moisture::from_dry_basis(mat.get::<ratio>()).ok_or(Unsolvable::DriesBelowZero { blender_out })?;
    let fibre_moisture_for_none = needed.map(|needed| (needed - with_liquids) / fibre);
    Ok(WaterBalance { needed, on_hand, dose, excess, fibre_moisture_for_none, blender_out, mat })
}

fn run_line(
    input: &Input,
    net_solids: MassRate,
    od: ArealMassDensity,
    pressed_thickness: Length,
    finished_area: AreaRate,
    finished_volume: VolumeRate,
) -> LineRun {
    let Input { board, line, .. } = input;
    let width = line.width.filter(|_| input.feed != Feed::None);
    let speed: Option<Velocity> = width.map(|width| net_solids / (od * width));
    let press_time: Option<Time> = line.press_length.zip(speed).map(|(length, speed)| length / speed);
    LineRun {
        net_solids,
        speed,
        press_time,
        press_factor: press_time.map(|time| time / pressed_thickness),
        finished_area,
        finished_volume,
        finished_mass: finished_volume * board.density,
    }
}

fn lose(
    input: &Input,
    solids: MassRate,
    run: &LineRun,
    mat: &Mat,
    flows: &[LiquidFlow],
    mat_moisture: Moisture,
    heat_per_water: AvailableEnergy,
) -> Losses {
    let Input { board, line, .. } = input;
    let pressed_area = run.net_solids / mat.od;
    let od_density = board.density / board.moisture.wet_per_dry();
    let sanded = board.surface_ratio * (board.sand_top + board.sand_bottom);
    let surface_spray = line.face_water() * pressed_area;
    let exit = input.exit_moisture().dry_basis();
    // The solids on the faces leave the press with the board, and with its moisture.
    let on_faces = flows.iter().filter(|flow| flow.on_faces);
    let with_sprays: MassRate = on_faces.map(|flow| flow.water + flow.thinning - flow.solids * exit).sum();
    let press_vapour = run.net_solids * (mat_moisture.dry_basis() - exit) + surface_spray + with_sprays;
    Losses {
        reject: solids * line.reject,
        trim: line.width.zip(line.spread_width).map(|(width, spread)| run.net_solids * (spread / width - one())),
        sander_dust: od_density * sanded * pressed_area,
        offcuts: od_density * board.thickness * pressed_area * (one() - line.area_yield),
        transport_vapour: run.net_solids * input.drying_loss,
        surface_spray,
        press_vapour,
        heat_per_water,
        press_heat: press_vapour * heat_per_water,
    }
}

fn use_up(input: &Input, fibre: MassRate, water: &WaterBalance, flows: &[LiquidFlow], run: &LineRun) -> Use {
    let fibre_per_volume = fibre / run.finished_volume;
    let thinning: MassRate = flows.iter().map(|flow| flow.thinning).sum();
    let fibre_cost = input.fibre_price.map(|price| price.of_use(fibre_per_volume));
    let liquids_cost: Cost = flows.iter().filter_map(|flow| flow.cost).sum();
    Use {
        fibre_per_volume,
        fibre_per_area: fibre_per_volume * input.board.thickness,
        fibre_per_board_mass: fibre_per_volume / input.board.density,
        water_per_volume: (water.dose + thinning) / run.finished_volume,
        fibre_cost,
        cost: fibre_cost.unwrap_or_default() + liquids_cost,
    }
}
