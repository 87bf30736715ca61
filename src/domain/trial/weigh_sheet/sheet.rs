//! The weigh-out sheet: what to weigh, in order of addition, and what the rounded masses really give.

use crate::domain::chemistry::water::density as water_density;
use crate::domain::recipe::input::Liquid;
use crate::domain::trial::finding::{Finding, Place, What};
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, WaterPlace};
use crate::domain::trial::weigh_sheet::given::{Given, given};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::plan::{Balance, Plan, Spray};
use crate::domain::{DoseWay, Figure, LiquidFigure, LiquidId};
use crate::quantity::{Amount, Kind};
use uom::si::f64::{Area, Length, Mass, MassDensity, Ratio, ThermodynamicTemperature, Time, Volume};
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::degree_celsius;

/// A dose that rounding shifts by more than this share of itself is pointed out.
///
/// Common practice, no source.
pub const ROUNDING_LIMIT: f64 = 0.01;
/// Most batches that one sheet is split into.
pub const MOST_BATCHES: f64 = 100.0;

/// One mat and the board pressed from it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OneMat {
    /// Area A of the mat.
    pub area: Area,
    /// Oven-dry mass M·A.
    pub oven_dry: Mass,
    /// Resinated furnish to lay, with its moisture after the drying loss, M·(1+ω_mat)·A.
    pub moist: Mass,
    /// Raw board at board moisture, before sanding.
    pub raw_board: Mass,
    /// Finished board at board moisture, after sanding; its edges not trimmed.
    pub finished_board: Mass,
}

/// One line of the sheet, for one batch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// What is weighed.
    pub id: LineId,
    /// The exact mass.
    pub mass: Mass,
    /// The mass rounded to the balance's step.
    pub rounded: Mass,
    /// Volume of the rounded mass; `None` for fibre.
    pub volume: Option<Volume>,
    /// How long it takes to spray, with the water that thins it; `None` without a flow, for fibre, and
    /// for thinning water, which is sprayed with its liquid.
    pub spray_time: Option<Time>,
}

/// The weigh-out sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What it was made from.
    pub plan: Plan,
    /// One mat and its board.
    pub mat: OneMat,
    /// How many equal batches.
    pub batches: u32,
    /// The lines of one batch, in order of addition.
    pub lines: Vec<Line>,
    /// Everything that goes into the blender in one batch, exact masses.
    pub batch: Mass,
    /// Stops: the pressed thickness.
    pub stops: Length,
    /// Pressing time; `None` without a press factor.
    pub press_time: Option<Time>,
    /// Spray time of all lines of one batch; `None` without a flow, or without anything to spray.
    pub spray_time: Option<Time>,
    /// What the rounded masses really give.
    pub given: Given,
}

/// What comes of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct SheetOutcome {
    /// The sheet; `None` when its figures left the range of numbers.
    pub sheet: Option<Sheet>,
    /// What there is to say.
    pub findings: Vec<Finding>,
}

/// By how much a mass grows for the overage: with e of the moist mass 1 + e; with e of the oven-dry
/// mass, added moist, 1 + e/(1+ω).
#[must_use]
pub fn overage_factor(plan: &Plan, wet_per_dry: Ratio) -> Ratio {
    let one = Ratio::new::<ratio>(1.0);
    match plan.overage_of {
        OverageOf::Moist => one + plan.overage,
        OverageOf::OvenDry => one + plan.overage / wet_per_dry,
    }
}

impl Plan {
    /// By how much the fibre grows for the overage.
    #[must_use]
    pub fn fibre_factor(&self) -> Ratio {
        match self.overage_on {
            OverageOn::Furnish => self.furnish_factor(),
            OverageOn::Fibre => overage_factor(self, self.case.input.fibre_moisture.wet_per_dry()),
        }
    }

    /// By how much the liquids grow for the overage.
    #[must_use]
    pub fn furnish_factor(&self) -> Ratio {
        match self.overage_on {
            OverageOn::Furnish => overage_factor(self, self.case.solved.water.blender_out.wet_per_dry()),
            OverageOn::Fibre => Ratio::new::<ratio>(1.0),
        }
    }

    /// Share of the fibre that is weighed out and meets no liquid.
    pub(in crate::domain::trial) fn spilled(&self) -> Ratio {
        match self.overage_on {
            OverageOn::Furnish => Ratio::new::<ratio>(1.0),
            OverageOn::Fibre => self.fibre_factor(),
        }
    }

    /// The balance for a line.
    #[must_use]
    pub const fn balance(&self, id: LineId) -> Balance {
        match id {
            LineId::Fibre => self.fibre_balance,
            LineId::Liquid(_) | LineId::Thinning(_) | LineId::Water => self.liquid_balance,
        }
    }

    pub(in crate::domain::trial) fn liquid(&self, id: LiquidId) -> Option<&Liquid> {
        self.case.input.liquids.as_slice().iter().find(|liquid| liquid.id == id)
    }

    /// Mass of a line for all boards and batches together, overage and wall losses in it. Zero for a
    /// line that the recipe does not have.
    #[must_use]
    pub fn whole(&self, id: LineId) -> Mass {
        let solved = &self.case.solved;
        let boards = Ratio::new::<ratio>(f64::from(self.boards));
        let solids = boards * solved.mat.od * (self.length * self.width);
        let sprayed = self.furnish_factor() / (Ratio::new::<ratio>(1.0) - self.wall_loss);
        let flow = |liquid: LiquidId| solved.liquids.iter().find(|flow| flow.id == liquid);
        match id {
            LineId::Fibre => solids * (solved.fibre_wet / solved.solids) * self.fibre_factor(),
            LineId::Liquid(liquid) => {
                flow(liquid).map_or_else(Mass::default, |flow| solids * (flow.liquid / solved.solids) * sprayed)
            }
            LineId::Thinning(liquid) => {
                flow(liquid).map_or_else(Mass::default, |flow| solids * (flow.thinning / solved.solids) * sprayed)
            }
            LineId::Water => solids * (solved.water.dose / solved.solids) * sprayed,
        }
    }

    /// The lines in order of addition: fibre, then the recipe's liquids, each followed by the water that
    /// thins it, and the water by itself first or last of the sprayed ones. What has no mass is left out.
    #[must_use]
    pub fn order(&self) -> Vec<LineId> {
        let mut sprayed = Vec::new();
        for flow in &self.case.solved.liquids {
            sprayed.push(LineId::Liquid(flow.id));
            if self.case.is_thinned(flow.id) {
                sprayed.push(LineId::Thinning(flow.id));
            }
        }
        match self.water_place {
            WaterPlace::First => sprayed.insert(0, LineId::Water),
            WaterPlace::Last => sprayed.push(LineId::Water),
        }
        let has_mass = |id: &LineId| self.whole(*id).value > 0.0;
        std::iter::once(LineId::Fibre).chain(sprayed).filter(has_mass).collect()
    }

    /// Density of what a line weighs; `None` for fibre.
    #[must_use]
    pub fn density(&self, id: LineId) -> Option<MassDensity> {
        match id {
            LineId::Fibre => None,
            LineId::Liquid(liquid) => self.liquid(liquid).map(|liquid| liquid.density),
            LineId::Thinning(_) | LineId::Water => water_at_20c(),
        }
    }
}

/// Density of water at 20 °C.
pub(in crate::domain::trial) fn water_at_20c() -> Option<MassDensity> {
    water_density(ThermodynamicTemperature::new::<degree_celsius>(20.0)).ok()
}

/// Makes the sheet out.
#[must_use]
pub fn make_out(plan: Plan) -> SheetOutcome {
    let mut findings = Vec::new();
    let sheet = sheet(plan, &mut findings);
    match &sheet {
        Some(sheet) => examine(sheet, &mut findings),
        None if findings.is_empty() => findings.push(Finding::stop(Place::Sheet, What::OutOfRange)),
        None => {}
    }
    SheetOutcome { sheet, findings }
}

fn sheet(plan: Plan, findings: &mut Vec<Finding>) -> Option<Sheet> {
    let solved = &plan.case.solved;
    let (board, solved_mat) = (&plan.case.input.board, &solved.mat);
    let area: Area = plan.length * plan.width;
    let mat = OneMat {
        area,
        oven_dry: solved_mat.od * area,
        moist: solved_mat.wet * area,
        raw_board: solved_mat.raw_board * area,
        finished_board: board.density * board.thickness * area,
    };
    let order = plan.order();
    let total: Mass = order.iter().map(|id| plan.whole(*id)).sum();
    let needed = plan.capacity.map_or(1.0, |most| (total / most).value);
    // A rounding error is no second batch.
    let batches = (needed - 1e-9).ceil().max(1.0);
    if batches > MOST_BATCHES || batches.is_nan() {
        let whole = Amount::from_base(Kind::BenchMass, total.value);
        findings
            .push(Finding::stop(Place::Field(crate::domain::trial::Field::Capacity), What::TooManyBatches { whole }));
        return None;
    }
    let share = Ratio::new::<ratio>(1.0 / batches);
    let mut lines = Vec::new();
    for id in &order {
        let mass = plan.whole(*id) * share;
        let rounded = plan.balance(*id).round(mass);
        let volume = plan.density(*id).map(|density| rounded / density);
        lines.push(Line { id: *id, mass, rounded, volume, spray_time: None });
    }
    let times: Vec<Option<Time>> = lines.iter().map(|line| spray_time(&plan, line.id, &lines)).collect();
    for (line, time) in lines.iter_mut().zip(&times) {
        line.spray_time = *time;
    }
    let times: Vec<Time> = times.into_iter().flatten().collect();
    let spray_time = (!times.is_empty()).then(|| times.into_iter().sum());
    let stops = solved_mat.pressed_thickness;
    let press_time = plan.press_factor.map(|factor| stops * factor);
    let weighed = |id: LineId| lines.iter().find(|line| line.id == id).map_or_else(Mass::default, |line| line.rounded);
    let given = given(&plan, weighed);
    let batch = total * share;
    let sheet =
        Sheet { batches: batches as u32, batch, mat, lines, stops, press_time, spray_time, given, plan: plan.clone() };
    sheet.is_finite().then_some(sheet)
}

/// The time that a line takes to spray. A thinned liquid goes through the nozzle with its water.
fn spray_time(plan: &Plan, id: LineId, lines: &[Line]) -> Option<Time> {
    let parts: &[LineId] = match id {
        LineId::Fibre | LineId::Thinning(_) => return None,
        LineId::Water => &[LineId::Water],
        LineId::Liquid(liquid) => &[id, LineId::Thinning(liquid)],
    };
    let parts = lines.iter().filter(|line| parts.contains(&line.id));
    match plan.spray? {
        Spray::Volume(flow) => Some(parts.filter_map(|line| line.volume).sum::<Volume>() / flow),
        Spray::Mass(flow) => Some(parts.map(|line| line.rounded).sum::<Mass>() / flow),
    }
}

impl Sheet {
    /// The line of that name.
    #[must_use]
    pub fn line(&self, id: LineId) -> Option<&Line> {
        self.lines.iter().find(|line| line.id == id)
    }

    /// Boards from one batch.
    #[must_use]
    pub fn boards_per_batch(&self) -> f64 {
        f64::from(self.plan.boards) / f64::from(self.batches)
    }

    fn is_finite(&self) -> bool {
        let mat = &self.mat;
        let masses = [mat.oven_dry, mat.moist, mat.raw_board, mat.finished_board, self.batch];
        let times = [self.press_time, self.spray_time];
        let line = |line: &Line| {
            line.mass.is_finite()
                && line.rounded.is_finite()
                && line.volume.is_none_or(|volume| volume.is_finite())
                && line.spray_time.is_none_or(|time| time.is_finite())
        };
        masses.iter().all(|mass| mass.is_finite())
            && times.into_iter().flatten().all(|time| time.is_finite())
            && self.lines.iter().all(line)
            && self.given.is_finite()
    }
}

fn examine(sheet: &Sheet, findings: &mut Vec<Finding>) {
    if let Some(what) = too_wet(sheet) {
        findings.push(Finding::unusual(Place::Sheet, what));
    }
    if sheet.batches > 1 {
        let boards = Amount::from_base(Kind::Ratio, sheet.boards_per_batch());
        findings.push(Finding::note(Place::Sheet, What::Split { batches: sheet.batches, boards }));
    }
    for line in &sheet.lines {
        let least = sheet.plan.balance(line.id).least;
        if let Some(least) = least.filter(|least| line.mass < *least) {
            findings.push(Finding::unusual(Place::Line(line.id), below_least(sheet, line, least)));
        }
    }
    for dose in &sheet.given.doses {
        let deviation = dose.deviation.value;
        if deviation.abs() > ROUNDING_LIMIT {
            let wanted = Amount::from_base(Kind::Dose, dose.wanted.value);
            let what = What::RoundingShifts { wanted, given: Amount::from_base(Kind::Dose, dose.given.value) };
            findings.push(Finding::unusual(Place::Line(LineId::Liquid(dose.id)), what));
        }
    }
}

/// The excess water of one batch, where the recipe asks for a mat moisture.
fn too_wet(sheet: &Sheet) -> Option<What> {
    let solved = &sheet.plan.case.solved;
    let water = &solved.water;
    water.needed.filter(|_| water.excess.value > 0.0)?;
    let excess = sheet.given.furnish * (water.excess / solved.solids);
    let moisture = |share: Ratio| Amount::from_base(Kind::Moisture, share.value);
    Some(What::TooWet {
        excess: Amount::from_base(Kind::BenchMass, excess.value),
        mat: moisture(water.mat.dry_basis()),
        way_out: water.fibre_moisture_for_none.filter(|share| share.value >= 0.0).map(moisture),
    })
}

/// What mends a mass that is too small: more boards in the same number of batches, or a thinner liquid.
fn below_least(sheet: &Sheet, line: &Line, least: Mass) -> What {
    let plan = &sheet.plan;
    let grow = (least / line.mass).value;
    let boards = (f64::from(plan.boards) * grow - 1e-9).ceil();
    // More than the blender takes is no way out.
    let fits = plan.capacity.is_none_or(|most| {
        let larger = sheet.batch * Ratio::new::<ratio>(boards / f64::from(plan.boards));
        larger <= most * Ratio::new::<ratio>(1.0 + 1e-9)
    });
    let boards = (fits && boards <= crate::domain::trial::weigh_sheet::limit::MOST_BOARDS)
        .then(|| Amount::from_base(Kind::Count, boards));
    What::BelowLeast {
        mass: Amount::from_base(Kind::BenchMass, line.mass.value),
        least: Amount::from_base(Kind::BenchMass, least.value),
        boards,
        dilute: dilution(sheet, line, least),
    }
}

/// Solids to which a liquid would have to be thinned for its spray to reach the least mass, if the
/// water dose has that much water. Never for an isocyanate, which must not meet water before the
/// nozzle, nor for a liquid that is thinned already.
fn dilution(sheet: &Sheet, line: &Line, least: Mass) -> Option<Amount> {
    let LineId::Liquid(id) = line.id else { return None };
    let liquid = sheet.plan.liquid(id)?;
    if liquid.substance.is_isocyanate() || liquid.spray_solids.is_some() {
        return None;
    }
    let water = sheet.line(LineId::Water)?.mass;
    let solids = liquid.solids.ratio() * (line.mass / least);
    (least - line.mass <= water).then(|| Amount::from_base(Kind::Solids, solids.value))
}

/// A liquid's dose as the recipe enters it; `None` for a base without solids.
pub(in crate::domain::trial) fn dose_as_entered(plan: &Plan, id: LiquidId) -> Option<Amount> {
    plan.case.dose_in(id, dose_way(plan, id)?)
}

/// The way in which the recipe enters a dose.
fn dose_way(plan: &Plan, id: LiquidId) -> Option<DoseWay> {
    use crate::domain::recipe::input::Dosing;
    Some(match plan.liquid(id)?.dosing {
        Dosing::SolidsOnFibre(_) => DoseWay::SolidsOnFibre,
        Dosing::SolidsOnLiquid(_, base) => {
            DoseWay::SolidsOnLiquid(plan.case.input.liquids.as_slice().get(base).map(|liquid| liquid.id)?)
        }
        Dosing::LiquidOnFibre(_) => DoseWay::LiquidOnFibre,
        Dosing::LiquidPerBoard(_) => DoseWay::LiquidPerBoard,
    })
}

/// Dose of a liquid on the fibre, as the plan has it.
pub(in crate::domain::trial) fn wanted_on_fibre(plan: &Plan, id: LiquidId) -> Option<Ratio> {
    plan.case.figure(Figure::Liquid(id, LiquidFigure::SolidsOnFibre)).map(|dose| si!(Ratio, dose.base))
}
