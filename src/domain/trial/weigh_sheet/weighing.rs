//! What was really weighed, line by line, and what remains to be added so that the ratio holds.

use crate::domain::recipe::check::read_entry;
use crate::domain::recipe::draft::Entry;
use crate::domain::recipe::finding::What as RecipeWhat;
use crate::domain::recipe::limit::Limit;
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::weigh_sheet::actual::{ActualBatch, actual};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::sheet::WeighSheet;
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

/// What was weighed of one line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct WeighedDraft {
    /// The line.
    pub line: LineId,
    /// Its mass as read off the balance.
    pub mass: Entry,
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

    /// What was typed for a line, to type into; a new empty one where there was none.
    pub fn entry_mut(&mut self, line: LineId) -> Option<&mut Entry> {
        let at = self.lines.iter().position(|weighed| weighed.line == line).unwrap_or_else(|| {
            self.lines.push(WeighedDraft { line, mass: Entry::empty(Unit::Gram) });
            self.lines.len() - 1
        });
        self.lines.get_mut(at).map(|weighed| &mut weighed.mass)
    }
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

/// Recomputes a batch from what was weighed so far.
///
/// What is in the blender cannot be taken out again, so the line that was weighed furthest above its
/// plan sets the scale k = max(weighed/planned); every line must come to k times its planned mass.
/// While nothing is weighed, k = 1. A first line that falls short makes the batch smaller, a later one
/// is topped up. A line weighed as 0 counts as not yet weighed.
#[must_use]
pub fn weigh(sheet: &WeighSheet, batch: &BatchDraft) -> Weighing {
    let mut findings = Vec::new();
    let read: Vec<Option<Mass>> = sheet.lines.iter().map(|line| read(batch, line.id, &mut findings)).collect();
    let over = |(line, weighed): (&crate::domain::trial::weigh_sheet::sheet::WeighLine, &Option<Mass>)| {
        weighed.map(|mass| (line.id, mass / line.mass))
    };
    let furthest = sheet.lines.iter().zip(&read).filter_map(over).max_by(|(_, a), (_, b)| a.value.total_cmp(&b.value));
    let scale = furthest.map_or_else(|| Ratio::new::<ratio>(1.0), |(_, scale)| scale);
    let lines: Vec<WeighedLine> = sheet
        .lines
        .iter()
        .zip(&read)
        .map(|(line, weighed)| {
            let target = line.mass * scale;
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
            let scale = Amount::from_base(Kind::Ratio, scale.value);
            findings.push(TrialFinding::unusual(TrialPlace::Line(id), TrialProblem::WeighedOver { scale }));
        }
    }
    if let Some(most) = sheet.plan.capacity.filter(|most| total > *most * Ratio::new::<ratio>(1.0 + GROWTH_LIMIT)) {
        let mass = Amount::from_base(Kind::BenchMass, total.value);
        let capacity = Amount::from_base(Kind::BenchMass, most.value);
        findings.push(TrialFinding::unusual(TrialPlace::Sheet, TrialProblem::OverCapacity { mass, capacity }));
    }
    let complete = read.iter().all(Option::is_some);
    let weighed = |id: LineId| {
        lines.iter().find(|line| line.id == id).and_then(|line| line.weighed).unwrap_or_else(Mass::default)
    };
    let actual = complete.then(|| actual(&sheet.plan, weighed)).filter(ActualBatch::is_finite);
    Weighing { lines, scale, batch: total, actual, findings }
}

/// Whether a line that was weighed before must be topped up by more than the limit.
fn others_grow(lines: &[WeighedLine], id: LineId) -> bool {
    lines.iter().any(|line| {
        let short = line.weighed.map(|weighed| (line.target - weighed) / line.target);
        line.id != id && short.is_some_and(|short| short.value > GROWTH_LIMIT)
    })
}

fn read(batch: &BatchDraft, id: LineId, findings: &mut Vec<TrialFinding>) -> Option<Mass> {
    match read_entry(batch.entry(id)?, Kind::BenchMass, &LIMIT) {
        Ok(mass) => mass.filter(|mass| *mass > 0.0).map(|mass| si!(Mass, mass)),
        Err(RecipeWhat::Missing) => None,
        Err(what) => {
            findings.push(TrialFinding::stop(TrialPlace::Line(id), TrialProblem::Entry(what)));
            None
        }
    }
}
