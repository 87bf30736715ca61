//! From what was typed on the weigh sheet, and the recipe, to a plan that can be weighed out.

use crate::domain::balance::figure::Figure as RecipeFigure;
use crate::domain::recipe::check::{read_entry, unusual};
use crate::domain::recipe::draft::{Entry, FeedWay, WaterWay};
use crate::domain::recipe::finding::{Place as RecipePlace, What as RecipeWhat};
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::weigh_sheet::draft::{OverageOf, OverageOn, SheetDraft, SprayWay, ThicknessWay, WaterPlace};
use crate::domain::trial::weigh_sheet::field::WeighField;
use crate::domain::{Case, Draft, Grade, work_out};
use crate::quantity::{Amount, Unit};
use uom::si::f64::{InverseVelocity, Length, Mass, MassRate, Ratio, VolumeRate};

/// The flow of the spray.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spray {
    /// Volume per time.
    Volume(VolumeRate),
    /// Mass per time.
    Mass(MassRate),
}

/// A balance.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Balance {
    /// The step to which it shows; `None` for no rounding.
    pub step: Option<Mass>,
    /// The minimum mass worth weighing on it.
    pub minimum: Option<Mass>,
}

impl Balance {
    /// The nearest mass that the balance can show.
    #[must_use]
    pub fn round(&self, mass: Mass) -> Mass {
        match self.step {
            Some(step) => step * (mass / step).value.round(),
            None => mass,
        }
    }
}

/// What is to be weighed out: every number read, converted and within what physics allows.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// The recipe with the bench's own density, moisture and thickness, solved. Its flows are those of
    /// a nominal 1 t/h of oven-dry fibre and stand only in proportion to each other.
    pub case: Case,
    /// Length of the mat.
    pub length: Length,
    /// Width of the mat.
    pub width: Length,
    /// How many boards, all batches together.
    pub boards: u32,
    /// Overage e.
    pub overage: Ratio,
    /// Of which mass the overage is a share.
    pub overage_of: OverageOf,
    /// What the overage is weighed out of.
    pub overage_on: OverageOn,
    /// Share λ of every sprayed liquid that stays on the walls, below 1.
    pub wall_loss: Ratio,
    /// The capacity of the blender, moist.
    pub capacity: Option<Mass>,
    /// The balance for the fibre.
    pub fibre_balance: Balance,
    /// The balance for the liquids.
    pub liquid_balance: Balance,
    /// Overshoot that asks for nothing, a share of the mass; `None` for one step of the balance.
    pub overshoot: Option<Ratio>,
    /// Pressing time per pressed thickness φ.
    pub press_factor: Option<InverseVelocity>,
    /// The flow of the spray.
    pub spray: Option<Spray>,
    /// When the water is sprayed.
    pub water_place: WaterPlace,
}

/// What a check of a weigh sheet found.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanOutcome {
    /// The plan, when nothing stands in the way.
    pub plan: Option<Plan>,
    /// What there is to say, in the order of the page.
    pub findings: Vec<TrialFinding>,
}

/// What one box holds, in the base unit of its kind; `None` while blank.
///
/// # Errors
/// What is wrong with the text.
pub fn read_field(sheet: &SheetDraft, field: WeighField) -> Result<Option<f64>, RecipeWhat> {
    read_entry(sheet.entry(field), field.kind(), &sheet.limit(field))
}

/// Reads every number of the sheet and solves the recipe with them.
#[must_use]
pub fn plan(recipe: &Draft, sheet: &SheetDraft) -> PlanOutcome {
    let mut reader = Reader { sheet, findings: Vec::new() };
    let plan = reader.plan(recipe);
    let stopped = reader.findings.iter().any(|finding| finding.grade == Grade::Stop);
    PlanOutcome { plan: plan.filter(|_| !stopped), findings: reader.findings }
}

/// The recipe as it is made on the bench: with the board, moistures and thickness typed there, and
/// without the line and its loss of moisture. A water dose that is a flow on the line is the same dose on the fibre here.
#[must_use]
pub fn on_bench(recipe: &Draft, sheet: &SheetDraft) -> Draft {
    let mut draft = recipe.clone();
    if recipe.water_way == WaterWay::Flow
        && let Some(case) = work_out(recipe).case
    {
        let on_fibre = (case.solved.water.dose / case.solved.fibre).value;
        draft.water_way = WaterWay::OnFibre;
        draft.plain.water_on_fibre = Entry::typed(format!("{}", 100.0 * on_fibre), Unit::Percent);
    }
    if draft.water_way != WaterWay::Flow {
        draft.feed_way = FeedWay::OvenDry;
        draft.plain.fibre_flow = Entry::typed("1000", Unit::KilogramPerHour);
        for line_only in [&mut draft.plain.mat_width, &mut draft.plain.press_length] {
            line_only.text.clear();
        }
    }
    let plain = &mut draft.plain;
    for line_only in [
        &mut plain.spread_width,
        &mut plain.exit_moisture,
        &mut plain.mat_bulk_density,
        &mut plain.fibre_supply,
        &mut plain.blender_capacity,
        &mut plain.least_press_factor,
        &mut plain.top_line_speed,
    ] {
        line_only.text.clear();
    }
    // The line's loss of moisture is that of its conveyors and its former; on the bench it starts at none.
    plain.drying_loss = Entry::typed("0", Unit::Percent);
    if sheet.thickness_way == ThicknessWay::Pressed {
        plain.sand_top = Entry::typed("0", Unit::Millimetre);
        plain.sand_bottom = Entry::typed("0", Unit::Millimetre);
    }
    if !sheet.entry(WeighField::MatMoisture).is_blank() {
        draft.water_way = WaterWay::ToMatMoisture;
    }
    for field in WeighField::ALL {
        let entry = sheet.entry(*field);
        if let Some(own) = field.stands_for()
            && !entry.is_blank()
            && let Some(place) = draft.entry_mut(own)
        {
            *place = entry.clone();
        }
    }
    draft
}

struct Reader<'a> {
    sheet: &'a SheetDraft,
    findings: Vec<TrialFinding>,
}

impl Reader<'_> {
    /// The number of a box; what is wrong or unusual with it is put down.
    fn optional(&mut self, field: WeighField) -> Option<f64> {
        match read_field(self.sheet, field) {
            Ok(None) => None,
            Ok(Some(base)) => {
                if let Some(what) = unusual(Amount::from_base(field.kind(), base), &self.sheet.limit(field)) {
                    self.findings.push(TrialFinding::unusual(TrialPlace::Field(field), TrialProblem::Entry(what)));
                }
                Some(base)
            }
            Err(what) => {
                self.findings.push(TrialFinding::stop(TrialPlace::Field(field), TrialProblem::Entry(what)));
                None
            }
        }
    }

    fn mass(&mut self, field: WeighField) -> Option<Mass> {
        self.optional(field).map(|mass| si!(Mass, mass))
    }

    fn balance(&mut self, step: WeighField, minimum: WeighField) -> Balance {
        Balance { step: self.mass(step), minimum: self.mass(minimum) }
    }

    fn boards(&mut self) -> Option<u32> {
        let boards = self.optional(WeighField::Boards)?;
        if boards.fract() > 0.0 {
            self.findings.push(TrialFinding::stop(TrialPlace::Field(WeighField::Boards), TrialProblem::NotWhole));
            return None;
        }
        Some(boards as u32)
    }

    fn plan(&mut self, recipe: &Draft) -> Option<Plan> {
        let length = self.optional(WeighField::MatLength);
        let width = self.optional(WeighField::MatWidth);
        let boards = self.boards();
        for field in WeighField::ALL.iter().filter(|field| field.stands_for().is_some()) {
            self.optional(*field);
        }
        let overage = self.optional(WeighField::Overage);
        let wall_loss = self.optional(WeighField::WallLoss);
        let capacity = self.mass(WeighField::Capacity);
        let fibre_balance = self.balance(WeighField::FibreStep, WeighField::FibreMinimum);
        let liquid_balance = self.balance(WeighField::LiquidStep, WeighField::LiquidMinimum);
        let overshoot = self.optional(WeighField::Tolerance).map(|share| si!(Ratio, share));
        let typed_factor = self.optional(WeighField::PressFactor);
        let spray = match self.sheet.spray_way {
            SprayWay::Volume => self.optional(WeighField::SprayVolume).map(|flow| Spray::Volume(si!(VolumeRate, flow))),
            SprayWay::Mass => self.optional(WeighField::SprayMass).map(|flow| Spray::Mass(si!(MassRate, flow))),
        };
        let on_line = || work_out(recipe).case.and_then(|case| case.figure(RecipeFigure::PressFactor));
        let press_factor = match self.sheet.entry(WeighField::PressFactor).is_blank() {
            true => on_line().map(|factor| factor.base),
            false => typed_factor,
        };
        let case = self.case(recipe);
        Some(Plan {
            case: case?,
            length: si!(Length, length?),
            width: si!(Length, width?),
            boards: boards?,
            overage: si!(Ratio, overage?),
            overage_of: self.sheet.overage_of,
            overage_on: self.sheet.overage_on,
            wall_loss: si!(Ratio, wall_loss?),
            capacity,
            fibre_balance,
            liquid_balance,
            overshoot,
            press_factor: press_factor.map(|factor| si!(InverseVelocity, factor)),
            spray,
            water_place: self.sheet.water_place,
        })
    }

    /// Solves the recipe as it is made on the bench. What is only unusual in it is said on its own page.
    fn case(&mut self, recipe: &Draft) -> Option<Case> {
        let outcome = work_out(&on_bench(recipe, self.sheet));
        let typed_here = |place: RecipePlace| {
            let filled = |field: &&WeighField| !self.sheet.entry(**field).is_blank();
            let own = |field: &WeighField| field.stands_for().map(RecipePlace::Field);
            WeighField::ALL.iter().filter(filled).any(|field| own(field) == Some(place))
        };
        let told = |finding: &crate::domain::Finding| finding.grade == Grade::Stop && !typed_here(finding.place);
        let told: Vec<TrialFinding> = outcome
            .findings
            .iter()
            .filter(|finding| told(finding))
            .map(|finding| TrialFinding {
                grade: finding.grade,
                place: TrialPlace::Recipe(finding.place),
                what: TrialProblem::Entry(finding.what),
            })
            .collect();
        let stopped = told.iter().any(|finding| finding.grade == Grade::Stop);
        self.findings.extend(told);
        // What was typed here and is wrong was put down where its box was read.
        if outcome.case.is_none() && !stopped && !self.findings.iter().any(|finding| finding.grade == Grade::Stop) {
            self.findings.push(TrialFinding::stop(TrialPlace::Sheet, TrialProblem::RecipeUnsolved));
        }
        outcome.case
    }
}
