//! The weigh sheet: what to weigh, in order of addition, and what the rounded masses really give.

use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::weigh_sheet::actual::{ActualBatch, actual};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::plan::{Plan, Spray};
use crate::quantity::{Amount, Kind};
use uom::si::f64::{Area, Length, Mass, Ratio, Time, Volume};
use uom::si::ratio::ratio;

/// A dose that rounding shifts by more than this share of itself is pointed out.
///
/// Common practice, no source.
pub const ROUNDING_LIMIT: f64 = 0.01;
/// Maximum number of batches that one sheet is split into.
pub const MAX_BATCHES: f64 = 100.0;

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
pub struct WeighLine {
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

/// The weigh sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct WeighSheet {
    /// What it was made from.
    pub plan: Plan,
    /// One mat and its board.
    pub mat: OneMat,
    /// How many equal batches.
    pub batches: u32,
    /// The lines of one batch, in order of addition.
    pub lines: Vec<WeighLine>,
    /// Everything that goes into the blender in one batch, exact masses.
    pub batch: Mass,
    /// Stops: the pressed thickness.
    pub stops: Length,
    /// Pressing time; `None` without a press factor.
    pub press_time: Option<Time>,
    /// Spray time of all lines of one batch; `None` without a flow, or without anything to spray.
    pub spray_time: Option<Time>,
    /// What the rounded masses really give.
    pub actual: ActualBatch,
}

/// What comes of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct SheetOutcome {
    /// The sheet; `None` when its figures left the range of numbers.
    pub sheet: Option<WeighSheet>,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
}

/// Makes the sheet out.
#[must_use]
pub fn make_out(plan: Plan) -> SheetOutcome {
    let mut findings = Vec::new();
    let sheet = sheet(plan, &mut findings);
    match &sheet {
        Some(sheet) => examine(sheet, &mut findings),
        None if findings.is_empty() => findings.push(TrialFinding::stop(TrialPlace::Sheet, TrialProblem::OutOfRange)),
        None => {}
    }
    SheetOutcome { sheet, findings }
}

fn sheet(plan: Plan, findings: &mut Vec<TrialFinding>) -> Option<WeighSheet> {
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
    if batches > MAX_BATCHES || batches.is_nan() {
        let whole = Amount::from_base(Kind::BenchMass, total.value);
        findings.push(TrialFinding::stop(
            TrialPlace::Field(crate::domain::trial::WeighField::Capacity),
            TrialProblem::TooManyBatches { whole },
        ));
        return None;
    }
    let share = Ratio::new::<ratio>(1.0 / batches);
    let mut lines = Vec::new();
    for id in &order {
        let mass = plan.whole(*id) * share;
        let rounded = plan.balance(*id).round(mass);
        let volume = plan.density(*id).map(|density| rounded / density);
        lines.push(WeighLine { id: *id, mass, rounded, volume, spray_time: None });
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
    let actual = actual(&plan, weighed);
    let batch = total * share;
    let sheet = WeighSheet {
        batches: batches as u32,
        batch,
        mat,
        lines,
        stops,
        press_time,
        spray_time,
        actual,
        plan: plan.clone(),
    };
    sheet.is_finite().then_some(sheet)
}

/// The time that a line takes to spray. A thinned liquid goes through the nozzle with its water.
fn spray_time(plan: &Plan, id: LineId, lines: &[WeighLine]) -> Option<Time> {
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

impl WeighSheet {
    /// The line of that name.
    #[must_use]
    pub fn line(&self, id: LineId) -> Option<&WeighLine> {
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
        let line = |line: &WeighLine| {
            line.mass.is_finite()
                && line.rounded.is_finite()
                && line.volume.is_none_or(|volume| volume.is_finite())
                && line.spray_time.is_none_or(|time| time.is_finite())
        };
        masses.iter().all(|mass| mass.is_finite())
            && times.into_iter().flatten().all(|time| time.is_finite())
            && self.lines.iter().all(line)
            && self.actual.is_finite()
    }
}

fn examine(sheet: &WeighSheet, findings: &mut Vec<TrialFinding>) {
    if let Some(what) = too_wet(sheet) {
        findings.push(TrialFinding::unusual(TrialPlace::Sheet, what));
    }
    if sheet.batches > 1 {
        let boards = Amount::from_base(Kind::Ratio, sheet.boards_per_batch());
        findings.push(TrialFinding::note(TrialPlace::Sheet, TrialProblem::Split { batches: sheet.batches, boards }));
    }
    for line in &sheet.lines {
        let minimum = sheet.plan.balance(line.id).minimum;
        if let Some(minimum) = minimum.filter(|minimum| line.mass < *minimum) {
            findings.push(TrialFinding::unusual(TrialPlace::Line(line.id), below_least(sheet, line, minimum)));
        }
    }
    for dose in &sheet.actual.doses {
        let deviation = dose.deviation.value;
        if deviation.abs() > ROUNDING_LIMIT {
            let target = Amount::from_base(Kind::Dose, dose.target.value);
            let what =
                TrialProblem::RoundingShifts { target, actual: Amount::from_base(Kind::Dose, dose.actual.value) };
            findings.push(TrialFinding::unusual(TrialPlace::Line(LineId::Liquid(dose.id)), what));
        }
    }
}

/// The excess water of one batch, where the recipe asks for a mat moisture.
fn too_wet(sheet: &WeighSheet) -> Option<TrialProblem> {
    let solved = &sheet.plan.case.solved;
    let water = &solved.water;
    water.needed.filter(|_| water.excess.value > 0.0)?;
    let excess = sheet.actual.furnish * (water.excess / solved.solids);
    let moisture = |share: Ratio| Amount::from_base(Kind::Moisture, share.value);
    Some(TrialProblem::TooWet {
        excess: Amount::from_base(Kind::BenchMass, excess.value),
        mat: moisture(water.mat.dry_basis()),
        way_out: water.fibre_moisture_for_none.filter(|share| share.value >= 0.0).map(moisture),
    })
}

/// What fixes a mass that is too small: more boards in the same number of batches, or a thinner liquid.
fn below_least(sheet: &WeighSheet, line: &WeighLine, minimum: Mass) -> TrialProblem {
    let plan = &sheet.plan;
    let grow = (minimum / line.mass).value;
    let boards = (f64::from(plan.boards) * grow - 1e-9).ceil();
    // More than the blender takes is no way out.
    let fits = plan.capacity.is_none_or(|most| {
        let larger = sheet.batch * Ratio::new::<ratio>(boards / f64::from(plan.boards));
        larger <= most * Ratio::new::<ratio>(1.0 + 1e-9)
    });
    let boards = (fits && boards <= crate::domain::trial::weigh_sheet::field::MAX_BOARDS)
        .then(|| Amount::from_base(Kind::Count, boards));
    TrialProblem::BelowMinimum {
        mass: Amount::from_base(Kind::BenchMass, line.mass.value),
        minimum: Amount::from_base(Kind::BenchMass, minimum.value),
        boards,
        dilute: dilution(sheet, line, minimum),
    }
}

/// Solids to which a liquid would have to be thinned for its spray to reach the least mass, if the
/// water dose has that much water. Never for an isocyanate, which must not meet water before the
/// nozzle, nor for a liquid that is thinned already.
fn dilution(sheet: &WeighSheet, line: &WeighLine, minimum: Mass) -> Option<Amount> {
    let LineId::Liquid(id) = line.id else { return None };
    let liquid = sheet.plan.liquid(id)?;
    if liquid.substance.is_isocyanate() || liquid.spray_solids.is_some() {
        return None;
    }
    let water = sheet.line(LineId::Water)?.mass;
    let solids = liquid.solids.ratio() * (line.mass / minimum);
    (minimum - line.mass <= water).then(|| Amount::from_base(Kind::Solids, solids.value))
}
