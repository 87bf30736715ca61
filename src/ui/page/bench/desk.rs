//! All that follows from the trial as typed.

use crate::domain::Draft;
use crate::domain::trial::finding::TrialPlace;
use crate::domain::trial::series::runs::of_run;
use crate::domain::trial::weigh_sheet::plan::plan;
use crate::domain::trial::weigh_sheet::sheet::make_out;
use crate::domain::trial::weigh_sheet::weighing::{Weighing, weigh};
use crate::domain::trial::{SeriesDraft, SheetDraft, TrialFinding, TrialProblem, WeighSheet};
use crate::record::content::trial::OpenTrial;
pub use crate::record::content::trial::outcome::{Basis, PlannedSeries, Tested};
use crate::ui::state::State;
use crate::ui::text::{BenchContext, Context, Message, words};
use leptos::prelude::*;

/// What comes of the weigh sheet.
#[derive(Clone, PartialEq)]
pub struct Made {
    /// The recipe, that of the run.
    pub recipe: Draft,
    /// The sheet as typed, that of the run.
    pub typed: SheetDraft,
    /// The sheet, the last one that could be made out.
    pub sheet: Option<WeighSheet>,
    /// Whether the entries now give none.
    pub old: bool,
    /// What there is to say.
    pub findings: Vec<TrialFinding>,
    /// The trial and the run that it belongs to.
    of: (u32, u32),
}

/// The page's view of the bench.
#[derive(Clone, Copy)]
pub struct Desk {
    /// The app's state.
    pub state: State,
    /// Recipe, sheet and series as typed.
    pub basis: Memo<Basis>,
    /// The series.
    pub planned: Memo<PlannedSeries>,
    /// The sheet.
    pub made: Memo<Made>,
    /// The batch being weighed.
    pub weighing: Memo<Option<Weighing>>,
    /// The boards.
    pub tested: Memo<Tested>,
}

impl Desk {
    /// All that follows the trial on the page.
    pub fn new(state: State) -> Self {
        let bench = state.bench;
        let basis = Memo::new(move |_| bench.open.with(|open| open.trial.basis()));
        let planned = Memo::new(move |_| basis.with(Basis::plan));
        let made = Memo::new(move |before: Option<&Made>| {
            let of = (bench.opening.get(), bench.run.get());
            basis.with(|basis| planned.with(|planned| make(basis, planned, of, before)))
        });
        let weighing = Memo::new(move |_| {
            let (run, batch) = bench.place();
            made.with(|made| {
                let sheet = made.sheet.as_ref()?;
                Some(bench.open.with(|open| match open.trial.batch(run, batch) {
                    Some(lines) => weigh(sheet, lines),
                    None => weigh(sheet, &Default::default()),
                }))
            })
        });
        let tested = Memo::new(move |_| planned.with(|planned| bench.open.with(|open| open.trial.tested(planned))));
        Self { state, basis, planned, made, weighing, tested }
    }

    /// What comes of the sheet of a run, whichever is shown.
    pub fn made_of_run(self, run: u32) -> Made {
        let opening = self.state.bench.opening.get_untracked();
        self.basis
            .with_untracked(|basis| self.planned.with_untracked(|planned| make(basis, planned, (opening, run), None)))
    }

    /// A finding in words; `recipe` is that of the run spoken of.
    pub fn message(self, finding: &TrialFinding, recipe: &Draft, sheet: &SheetDraft) -> Message {
        let state = self.state;
        let units = state.units.get();
        let (run, batch) = untrack(|| state.bench.place());
        state.currency.with(|currency| {
            state.bench.open.with_untracked(|OpenTrial { trial, .. }| {
                let none = SeriesDraft::default();
                let context = BenchContext {
                    plain: Context { units: &units, draft: recipe, currency },
                    sheet,
                    batch: trial.batch(run, batch),
                    recovered: trial.recovered(run, batch),
                    series: trial.series.as_ref().unwrap_or(&none),
                    boards: &trial.boards,
                    requirements: &trial.requirements,
                };
                words::bench::finding(finding, &context)
            })
        })
    }

    /// What words need, with the trial's recipe.
    pub fn with_context<T>(self, act: impl FnOnce(&Context<'_>) -> T) -> T {
        let units = self.state.units.get();
        self.state
            .currency
            .with(|currency| self.basis.with(|basis| act(&Context { units: &units, draft: &basis.recipe, currency })))
    }
}

fn make(basis: &Basis, planned: &PlannedSeries, of: (u32, u32), before: Option<&Made>) -> Made {
    let run = planned.series.as_ref().and_then(|series| series.run(u16::try_from(of.1).unwrap_or(0)));
    let (recipe, typed) = match (run, &basis.series) {
        (Some(run), Some(draft)) => of_run(&basis.recipe, &basis.sheet, draft, run),
        _ => (basis.recipe.clone(), basis.sheet.clone()),
    };
    let outcome = plan(&recipe, &typed);
    let mut findings = outcome.findings;
    let sheet = outcome.plan.and_then(|plan| {
        let made = make_out(plan);
        findings.extend(made.findings);
        made.sheet
    });
    let last = before.filter(|before| sheet.is_none() && before.of == of).and_then(|before| before.sheet.clone());
    let old = last.is_some();
    Made { recipe, typed, sheet: sheet.or(last), old, findings, of }
}

/// Whether a finding is at a box already.
pub fn at_box(finding: &TrialFinding) -> bool {
    matches!(finding.what, TrialProblem::Entry(_)) && !matches!(finding.place, TrialPlace::Recipe(_))
}
