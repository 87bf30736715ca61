//! What was really weighed, line by line, and what remains to be added so that the ratio holds.

use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::finding::What as RecipeWhat;
use crate::domain::recipe::limit::Limit;
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::weigh_sheet::actual::{ActualBatch, actual};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::sheet::{WeighLine, WeighSheet};
use crate::domain::trial::weigh_sheet::slip::{Beside, slips};
use crate::quantity::{Amount, Kind, Unit};
use serde::{Deserialize, Serialize};
use uom::si::f64::{Mass, Ratio};
use uom::si::ratio::ratio;

/// What may be typed as a weighed mass.
pub const LIMIT: Limit = Limit::from_to(Unit::Gram, 0.0, 1_000_000.0).optional();
/// All others must grow by more than this share before it is said.
///
/// Common practice, no source.
const GROWTH_LIMIT: f64 = 0.005;

/// The answer to the question that a mass raised.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// None yet.
    #[default]
    Open,
    /// The mass is right, however far it is off.
    Correct,
    /// The dose is accepted as it is: nothing is added on account of this line.
    Accept,
}

impl Answer {
    fn is_open(&self) -> bool {
        *self == Self::Open
    }
}

/// What was weighed of one line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct WeighedDraft {
    /// The line.
    pub line: LineId,
    /// Its mass as read off the balance. Several weighings may be entered as a sum: "961+21".
    pub mass: Entry,
    /// The answer to the question that it raised.
    #[serde(default, skip_serializing_if = "Answer::is_open")]
    pub answer: Answer,
}

/// What was weighed of one batch, in the order typed.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct BatchDraft {
    /// The lines weighed.
    pub lines: Vec<WeighedDraft>,
}

impl BatchDraft {
    /// What was typed for a line.
    #[must_use]
    pub fn entry(&self, line: LineId) -> Option<&Entry> {
        self.lines.iter().find(|weighed| weighed.line == line).map(|weighed| &weighed.mass)
    }

    /// The answer to the question that a line raised.
    #[must_use]
    pub fn answer(&self, line: LineId) -> Answer {
        self.lines.iter().find(|weighed| weighed.line == line).map(|weighed| weighed.answer).unwrap_or_default()
    }

    /// Enters a mass. An answer to an earlier one no longer holds.
    pub fn enter(&mut self, line: LineId, mass: Entry) {
        if let Some(place) = self.entry_mut(line) {
            *place = mass;
        }
        self.set_answer(line, Answer::Open);
    }

    /// Answers the question that a line raised.
    pub fn set_answer(&mut self, line: LineId, answer: Answer) {
        if let Some(weighed) = self.lines.iter_mut().find(|weighed| weighed.line == line) {
            weighed.answer = answer;
        }
    }

    /// Exchanges what was typed for two lines. Answers to the masses before no longer hold.
    pub fn swap(&mut self, one: LineId, other: LineId) {
        let entry = |line| self.entry(line).cloned().unwrap_or_else(|| Entry::empty(Unit::Gram));
        let (first, second) = (entry(one), entry(other));
        self.enter(one, second);
        self.enter(other, first);
    }

    /// Whether something was typed for every line.
    #[must_use]
    pub fn is_complete(&self, order: &[LineId]) -> bool {
        order.iter().all(|line| self.entry(*line).is_some_and(|mass| !mass.is_blank()))
    }

    /// Whether a text is more than one cell of a table.
    #[must_use]
    pub fn is_column(text: &str) -> bool {
        cells(text).nth(1).is_some()
    }

    /// Enters a column of cells, such as a paste from a table, from a line on: one cell a line, in the order of the sheet.
    /// A cell is never joined with the next. `false` if the text is a single cell, which is left to the box.
    pub fn paste(&mut self, order: &[LineId], from: LineId, text: &str) -> bool {
        if !Self::is_column(text) {
            return false;
        }
        let cells: Vec<&str> = cells(text).collect();
        for (line, cell) in order.iter().skip_while(|line| **line != from).zip(cells) {
            let unit = self.entry(*line).map_or(Unit::Gram, |entry| entry.unit);
            self.enter(*line, Entry::typed(cell, unit));
        }
        true
    }

    /// What was typed for a line, to type into; a new empty one where there was none.
    pub fn entry_mut(&mut self, line: LineId) -> Option<&mut Entry> {
        let at = self.lines.iter().position(|weighed| weighed.line == line).unwrap_or_else(|| {
            self.lines.push(WeighedDraft { line, mass: Entry::empty(Unit::Gram), answer: Answer::Open });
            self.lines.len() - 1
        });
        self.lines.get_mut(at).map(|weighed| &mut weighed.mass)
    }
}

/// The cells of a text, without the line break that a table ends with.
fn cells(text: &str) -> impl Iterator<Item = &str> {
    text.trim_end_matches(['\r', '\n', '\t']).split(['\n', '\t']).map(str::trim)
}

/// One line while it is weighed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeighedLine {
    /// The line.
    pub id: LineId,
    /// What the sheet planned, rounded to the balance's step.
    pub planned: Mass,
    /// What was weighed so far.
    pub weighed: Option<Mass>,
    /// What the line must come to now, so that the ratio to all weighed lines holds.
    pub target: Mass,
    /// What remains to be added, rounded to the balance's step; never negative.
    pub to_add: Mass,
}

/// A batch while it is weighed.
#[derive(Debug, Clone, PartialEq)]
pub struct Weighing {
    /// The lines, in order of addition.
    pub lines: Vec<WeighedLine>,
    /// By how much all lines must grow or shrink against the plan.
    pub scale: Ratio,
    /// What the batch comes to with all that remains to be added.
    pub batch: Mass,
    /// What the weighed masses give; `None` until every line was weighed.
    pub actual: Option<ActualBatch>,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
}

impl Weighing {
    /// Whether the mass of a line looks like a slip and waits for an answer.
    #[must_use]
    pub fn is_asked(&self, id: LineId) -> bool {
        let is_slip = |what: &TrialProblem| matches!(what, TrialProblem::LikelySlip { .. });
        self.findings.iter().any(|finding| finding.place == TrialPlace::Line(id) && is_slip(&finding.what))
    }

    /// The mass of a line that is computed with: as weighed, or as planned while it is not weighed or waits for an answer.
    #[must_use]
    pub fn mass_used(&self, id: LineId) -> Mass {
        let own = self.lines.iter().find(|line| line.id == id);
        let asked = self.is_asked(id);
        own.map_or_else(Mass::default, |line| line.weighed.filter(|_| !asked).unwrap_or(line.planned))
    }
}

/// Recomputes a batch from what was weighed so far.
///
/// What is in the blender cannot be taken out again, so the line that was weighed furthest above its
/// plan sets the scale k = max(weighed/planned); every line must come to k times its planned mass.
/// While nothing is weighed, k = 1. A first line that falls short makes the batch smaller, a later one
/// is topped up. A line weighed as 0 counts as not yet weighed.
///
/// A mass within the tolerance of its plan counts as the plan: it asks for nothing. One that looks like a slip sets no
/// scale until it is answered, and neither does one whose dose was accepted as it is.
#[must_use]
pub fn weigh(sheet: &WeighSheet, batch: &BatchDraft) -> Weighing {
    let mut findings = Vec::new();
    let read: Vec<Option<Mass>> = sheet.lines.iter().map(|line| read(batch, line.id, &mut findings)).collect();
    let beside: Vec<Beside> = sheet
        .lines
        .iter()
        .zip(&read)
        .map(|(line, weighed)| Beside { id: line.id, planned: line.mass, weighed: *weighed })
        .collect();
    let mut doubtful = Vec::new();
    for (line, slip) in beside.iter().zip(slips(&beside)) {
        let open = batch.answer(line.id) == Answer::Open;
        if let (Some(slip), Some(mass), true) = (slip, line.weighed, open) {
            let amount = |mass: Mass| Amount::from_base(Kind::BenchMass, mass.value);
            let what = TrialProblem::LikelySlip { planned: amount(line.planned), entered: amount(mass), slip };
            findings.push(TrialFinding::unusual(TrialPlace::Line(line.id), what));
            doubtful.push(line.id);
        }
    }
    let one = Ratio::new::<ratio>(1.0);
    let within =
        |line: &WeighLine, mass: Mass| (mass - line.rounded).abs() <= sheet.plan.tolerance(line.id, line.rounded);
    let ratio_of = |line: &WeighLine, mass: Mass| if within(line, mass) { one } else { mass / line.mass };
    let over = |(line, weighed): (&WeighLine, &Option<Mass>)| {
        let counts = !doubtful.contains(&line.id) && batch.answer(line.id) != Answer::Accept;
        weighed.filter(|_| counts).map(|mass| (line.id, ratio_of(line, mass)))
    };
    let furthest = sheet.lines.iter().zip(&read).filter_map(over).max_by(|(_, a), (_, b)| a.value.total_cmp(&b.value));
    let scale = furthest.map_or(one, |(_, scale)| scale);
    let lines: Vec<WeighedLine> = sheet
        .lines
        .iter()
        .zip(&read)
        .map(|(line, weighed)| {
            let settled = doubtful.contains(&line.id)
                || batch.answer(line.id) == Answer::Accept
                || (scale == one && weighed.is_some_and(|mass| within(line, mass)));
            let target = if settled { weighed.unwrap_or(line.mass) } else { line.mass * scale };
            let missing = target - weighed.unwrap_or_default();
            let to_add = sheet.plan.balance(line.id).round(if missing.value > 0.0 { missing } else { Mass::default() });
            WeighedLine { id: line.id, planned: line.rounded, weighed: *weighed, target, to_add }
        })
        .collect();
    let total = sheet.batch * scale;
    if let Some((id, scale)) = furthest {
        let first = sheet.lines.first().map(|line| line.id);
        // The first line may set the scale; a later one that does asks for more of what is in already.
        if Some(id) != first && others_grow(&lines, id) {
            let what = TrialProblem::WeighedOver {
                scale: Amount::from_base(Kind::Ratio, scale.value),
                accepted: if_accepted(sheet, &lines, id),
            };
            findings.push(TrialFinding::unusual(TrialPlace::Line(id), what));
        }
    }
    if let Some(most) = sheet.plan.capacity.filter(|most| total > *most * Ratio::new::<ratio>(1.0 + GROWTH_LIMIT)) {
        let mass = Amount::from_base(Kind::BenchMass, total.value);
        let capacity = Amount::from_base(Kind::BenchMass, most.value);
        findings.push(TrialFinding::unusual(TrialPlace::Sheet, TrialProblem::OverCapacity { mass, capacity }));
    }
    // What looks like a slip is not used before it is answered.
    let complete = doubtful.is_empty() && read.iter().all(Option::is_some);
    let weighed = |id: LineId| {
        lines.iter().find(|line| line.id == id).and_then(|line| line.weighed).unwrap_or_else(Mass::default)
    };
    let given = complete.then(|| actual(&sheet.plan, weighed)).filter(ActualBatch::is_finite);
    Weighing { lines, scale, batch: total, actual: given, findings }
}

/// The dose that a liquid comes to if nothing more is added on its account; `None` for what is no dose.
fn if_accepted(sheet: &WeighSheet, lines: &[WeighedLine], id: LineId) -> Option<Amount> {
    let LineId::Liquid(liquid) = id else { return None };
    let mass = |id: LineId| {
        let own = lines.iter().find(|line| line.id == id);
        own.map_or_else(Mass::default, |line| line.weighed.unwrap_or(line.planned))
    };
    let dose = actual(&sheet.plan, mass).dose(liquid)?.actual.value;
    crate::quantity::number::finite(dose).map(|dose| Amount::from_base(Kind::Dose, dose))
}

/// Whether a line that was weighed before must be topped up by more than the limit.
fn others_grow(lines: &[WeighedLine], id: LineId) -> bool {
    lines.iter().any(|line| {
        let short = line.weighed.map(|weighed| (line.target - weighed) / line.target);
        line.id != id && short.is_some_and(|short| short.value > GROWTH_LIMIT)
    })
}

fn read(batch: &BatchDraft, id: LineId, findings: &mut Vec<TrialFinding>) -> Option<Mass> {
    match read_mass(batch.entry(id)?) {
        Ok(mass) => mass.filter(|mass| *mass > 0.0).map(|mass| si!(Mass, mass)),
        Err(RecipeWhat::Missing) => None,
        Err(what) => {
            findings.push(TrialFinding::stop(TrialPlace::Line(id), TrialProblem::Entry(what)));
            None
        }
    }
}

/// A mass in the base unit, or a sum of masses such as "961+21"; `None` while blank. A unit behind one of them is that one's.
///
/// # Errors
/// What is wrong with the text, or with a part of the sum.
pub fn read_mass(entry: &Entry) -> Result<Option<f64>, RecipeWhat> {
    let parts: Vec<&str> = entry.text.split('+').collect();
    if parts.len() < 2 {
        return read_entry(entry, Kind::BenchMass, &LIMIT);
    }
    // A plus in front of the only number is a sign.
    let parts: Vec<&str> = match parts.as_slice() {
        [first, rest @ ..] if first.trim().is_empty() => rest.to_vec(),
        all => all.to_vec(),
    };
    let mut sum = 0.0;
    for part in parts {
        let part = Entry::typed(part, entry.unit);
        sum += read_entry(&part, Kind::BenchMass, &Limit { optional: false, ..LIMIT })?.unwrap_or_default();
    }
    let value = Amount::from_base(Kind::BenchMass, sum);
    if LIMIT.allows(sum) { Ok(Some(sum)) } else { Err(RecipeWhat::NotAllowed { value, limit: LIMIT, meant: None }) }
}
