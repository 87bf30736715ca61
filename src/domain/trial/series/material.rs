//! The material that a whole series takes.

use crate::domain::trial::SheetDraft;
use crate::domain::trial::finding::{TrialFinding, TrialPlace, TrialProblem};
use crate::domain::trial::series::draft::SeriesDraft;
use crate::domain::trial::series::field::Of;
use crate::domain::trial::series::run::Run;
use crate::domain::trial::series::runs::{Series, of_run};
use crate::domain::trial::weigh_sheet::line_id::LineId;
use crate::domain::trial::weigh_sheet::plan::plan;
use crate::domain::trial::weigh_sheet::sheet::{WeighSheet, make_out};
use crate::domain::{Draft, LiquidId};
use uom::si::f64::{Mass, Ratio, Volume};
use uom::si::ratio::ratio;

/// The sheet of one run.
#[derive(Debug, Clone, PartialEq)]
pub struct RunSheet {
    /// The run.
    pub run: Run,
    /// Its sheet; `None` where it cannot be made out.
    pub sheet: Option<WeighSheet>,
    /// What there is to say about it.
    pub findings: Vec<TrialFinding>,
}

/// Something to be taken from the store.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Material {
    /// Moist fibre.
    Fibre,
    /// A liquid as delivered: of the binder system at that level, where one is a factor.
    Liquid(Option<u8>, LiquidId),
    /// Water, also what thins liquids.
    Water,
}

/// How much of a material a series takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Needed {
    /// The material.
    pub material: Material,
    /// Sum of all sheets, the margin added.
    pub mass: Mass,
    /// The same by volume; `None` for fibre.
    pub volume: Option<Volume>,
}

/// One sheet a run, in run order.
#[must_use]
pub fn sheets(recipe: &Draft, sheet: &SheetDraft, draft: &SeriesDraft, series: &Series) -> Vec<RunSheet> {
    let one = |run: &Run| {
        let (recipe, sheet) = of_run(recipe, sheet, draft, run);
        let planned = plan(&recipe, &sheet);
        let mut findings = planned.findings;
        let sheet = planned.plan.and_then(|plan| {
            let outcome = make_out(plan);
            findings.extend(outcome.findings);
            outcome.sheet
        });
        RunSheet { run: run.clone(), sheet, findings }
    };
    series.runs.iter().map(one).collect()
}

/// Runs whose sheet cannot be made out.
#[must_use]
pub fn unsolved(sheets: &[RunSheet]) -> Vec<TrialFinding> {
    let missing = sheets.iter().filter(|sheet| sheet.sheet.is_none());
    let what = |sheet: &RunSheet| TrialProblem::RunUnsolved { place: usize::from(sheet.run.place) };
    missing.map(|sheet| TrialFinding::stop(TrialPlace::Design, what(sheet))).collect()
}

/// What all sheets take together: every batch of every run as weighed, times 1 + margin. Fibre first,
/// then the liquids in order, water last. Runs without a sheet are not in it.
#[must_use]
pub fn needed(series: &Series, sheets: &[RunSheet]) -> Vec<Needed> {
    let system = series.factors.iter().position(|factor| factor.of == Of::System);
    let grow = Ratio::new::<ratio>(1.0) + series.margin;
    let mut all: Vec<Needed> = Vec::new();
    for RunSheet { run, sheet, .. } in sheets {
        let Some(sheet) = sheet else { continue };
        let level = system.and_then(|at| run.levels.get(at).copied());
        for line in &sheet.lines {
            let material = match line.id {
                LineId::Fibre => Material::Fibre,
                LineId::Liquid(id) => Material::Liquid(level, id),
                LineId::Thinning(_) | LineId::Water => Material::Water,
            };
            let times = grow * Ratio::new::<ratio>(f64::from(sheet.batches));
            let (mass, volume) = (line.rounded * times, line.volume.map(|volume| volume * times));
            match all.iter_mut().find(|needed| needed.material == material) {
                Some(needed) => {
                    needed.mass += mass;
                    needed.volume = needed.volume.zip(volume).map(|(sum, more)| sum + more);
                }
                None => all.push(Needed { material, mass, volume }),
            }
        }
    }
    // Liquids keep the order in which the sheets add them.
    let rank = |needed: &Needed| match needed.material {
        Material::Fibre => (0, None),
        Material::Liquid(level, _) => (1, level),
        Material::Water => (2, None),
    };
    all.sort_by_key(rank);
    all
}
